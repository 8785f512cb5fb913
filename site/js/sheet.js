// @ts-check
// Drawing and plots: what is loaded after the first figures, and redrawn with every change.

import { asset, single } from "./assets.js";
import { letters } from "./letters.js";
import { timed } from "./spent.js";

const IDLE = 700; // ms without a change
const PAPER = { width: 700, height: 360 }; // px of the printer's drawing: as wide as A4 leaves, so that its scale is true

/**
 * @param {HTMLElement} drawingRoot
 * @param {HTMLElement} paper holds the drawing for the printer
 * @param {HTMLElement} plotsRoot
 * @param {HTMLSelectElement} mapQuantity
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {ReturnType<typeof import("./sections.js").createSections>} sections
 * @param {(live: boolean) => {shop: string}} more what else is asked of the engine
 * @param {HTMLElement} fit is pressed to fit the axes to the curves
 * @param {{onFailure: (error: Error) => void, onResize: () => void}} tell a picture could not be drawn; there is another room for it, or its scales may change
 */
export function createSheet(drawingRoot, paper, plotsRoot, mapQuantity, engine, design, sections, more, fit, { onFailure, onResize }) {
  const drawingScript = import("./drawing.js"); // they come while the engine starts
  drawingScript.catch(() => {}); // told when it is needed
  if (!single) {
    fetchEarly({ rel: "modulepreload", href: asset("js/plots.js") });
    fetchEarly({ rel: "preload", href: asset("charts.json"), as: "fetch", crossOrigin: "anonymous" });
  }
  /** @type {ReturnType<typeof import("./drawing.js").createDrawing> | null} */ let drawing = null;
  /** @type {Awaited<ReturnType<typeof import("./plots.js").createPlots>> | null} */ let plots = null;
  /** @type {{document: import("./api.js").Document, view: import("./api.js").Page} | null} */ let good = null; // the last document that could be measured, with its view
  let idle = 0;
  /** @type {Promise<void> | null} */ let plotted = null;
  let mapOf = ""; // what the map's bands show
  let unitsOf = "";
  let paperOf = ""; // what the printer's drawing shows
  /** @type {import("./api.js").Ghost[]} */ let ghosts = []; // outlines of what is kept beside the design
  /** @type {import("./api.js").Document[]} */ let kept = []; // the same whole
  let besideOf = ""; // what the plots show of it

  let [width, height, large] = [0, 0, 1]; // measured when there is something to draw: the first question does not wait for a layout
  const dark = () => matchMedia("(prefers-color-scheme: dark)").matches;
  const forced = matchMedia("(forced-colors: active)"); // then the system's paper holds, whatever was chosen
  const theme = () => (forced.matches ? undefined : document.documentElement.dataset.theme) ?? (dark() ? "dark" : "light");
  const behind = () => (ghosts.length > 0 ? { ghosts } : {});
  const size = () => ({ width: Math.round(width), height: Math.round(height), letters: large, ...behind() });

  const set = (/** @type {import("./api.js").Value[]} */ values) => ({ op: "set", values });

  const hand = {
    onPull: (/** @type {import("./api.js").Value[]} */ values, /** @type {Event} */ event) => design.live(set(values), { since: event.timeStamp, pulled: true }),
    onRelease: (/** @type {import("./api.js").Value[]} */ values, /** @type {Event} */ event) => design.commit(set(values), event.timeStamp),
    onCancel: design.cancel,
  };

  const painted = () => new Promise((resolve) => drawingRoot.addEventListener("painted", resolve, { once: true }));

  /** When the next frame has been drawn, plots and all. */
  const framed = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));

  /** From a pointer event until all is redrawn: the plots paint in the next frame. @param {number} start @param {Promise<unknown> | undefined} drawn */
  async function time(start, drawn) {
    await Promise.all([drawn, framed()]);
    performance.measure("finwright:drag", { start, end: performance.now() });
  }

  /** The bands cost more than one frame: they follow when a pull has ended. */
  async function loadMap() {
    if (!good || !plots || !sections.asks("map")) return;
    const now = JSON.stringify([good.document, mapQuantity.value, more(false).shop, plots.axes()]); // the units are the document's
    if (now === mapOf) return;
    mapOf = now;
    try {
      const map = await engine.callLatest("map", "map", { document: good.document, quantity: mapQuantity.value, shop: more(false).shop, axes: plots.axes() });
      if (map) plots.showMap(map);
    } catch (error) {
      mapOf = "";
      plots.dropMap();
      onFailure(/** @type {Error} */ (error));
    }
  }

  /** What is kept stands in the plots too; it follows when a pull has ended. */
  async function loadBeside() {
    if (!good || !plots) return;
    const asked = kept.length && good.view.plots?.length ? { designs: kept, section: sections.current, system: good.view.units, shop: more(false).shop, axes: plots.axes() } : null;
    const now = JSON.stringify(asked);
    if (now === besideOf) return;
    besideOf = now;
    const reply = asked && (await engine.callLatest("beside", "beside", asked));
    if (now === besideOf && (reply || !asked)) plots.beside(reply?.plots ?? []);
  }

  /** The drawing as a picture; null when a newer one has been asked for. @param {string} slot @param {import("./api.js").DrawingArea} sheet @param {{dark?: boolean, alone?: boolean}} how dark: its paper is; alone: for other programs */
  async function picture(slot, sheet, how) {
    if (!good) return null;
    const reply = await engine.callLatest(slot, "svg", { document: good.document, section: sections.current, sheet, ...how, shop: more(false).shop });
    return reply?.svg ?? null;
  }

  /** @returns {Promise<ReturnType<typeof import("./drawing.js").createDrawing>>} */
  async function begun() {
    const { createDrawing } = await drawingScript;
    if (drawing) return drawing;
    drawing = createDrawing(drawingRoot, {
      ...hand,
      onRest: onResize,
      requestSVG: () => picture("screen", size(), { dark: theme() === "dark" }),
      onFailure,
      controls: /** @type {Element} */ (document.getElementById("zoom")),
      above: [.../** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll(".decides, #status"))],
    });
    ({ width, height } = drawingRoot.getBoundingClientRect());
    large = letters();
    return drawing;
  }

  /** Keeps a picture ready for the printer, which does not wait; by then the bands are of what is shown, too. */
  async function ready() {
    clearTimeout(idle);
    await loadMap();
    const drawn = good?.document;
    const text = await picture("paper", { ...PAPER, ...behind() }, {}).catch(onFailure);
    if (!text || drawn !== good?.document) return;
    paper.replaceChildren(new DOMParser().parseFromString(text, "image/svg+xml").documentElement);
    paperOf = JSON.stringify(drawn);
  }

  function prepare() {
    clearTimeout(idle);
    idle = window.setTimeout(ready, IDLE);
  }

  mapQuantity.addEventListener("change", loadMap);
  addEventListener("beforeprint", () => plots?.print());
  addEventListener("afterprint", () => {
    plots?.printed();
    plots?.setTheme(theme());
  });
  new ResizeObserver(([{ contentRect }]) => {
    if (contentRect.width === 0) return; // hidden for the printer
    const before = JSON.stringify(size());
    ({ width, height } = contentRect);
    large = letters();
    if (plots && JSON.stringify(size()) !== before) onResize(); // before, the first drawing is yet to be asked for
  }).observe(drawingRoot);

  return {
    area: (live = false) => ({ sheet: (plots && drawing?.area(size(), theme() === "dark")) ?? null, section: sections.current, quantity: mapQuantity.value, ...more(live) }),
    /** The axes in sight hold, till another section comes or somebody asks for others. */
    axes: () => plots?.axes() ?? [],
    releaseAxes: () => plots?.release(),
    lastGood: () => good?.document,
    /** Shows other outlines behind the tube, from the next answer on. @param {import("./api.js").Ghost[]} list @param {import("./api.js").Document[]} designs whose they are @returns {boolean} whether they are others */
    behind(list, designs) {
      kept = designs;
      const others = JSON.stringify(list) !== JSON.stringify(ghosts);
      ghosts = list;
      if (others) paperOf = "";
      else loadBeside().catch(onFailure);
      return others;
    },
    ready,

    /** The drawing for other programs; null where there is none. */
    apart: () => picture("apart", { ...PAPER, ...behind() }, { alone: true }),
    /** A plot for other programs. @param {string} id @param {number} ratio */
    plotApart: (id, ratio) => plots?.apart(id, ratio) ?? null,

    /**
     * @param {import("./api.js").Document} document
     * @param {import("./api.js").Page} view
     * @param {{settled: boolean, since?: number}} how
     */
    show(document, view, { settled, since }) {
      if (good && !plots && JSON.stringify(document) !== JSON.stringify(good.document)) drawing?.forget(); // the first answer is of what was last seen, this is another tube
      if (view.valid) good = { document, view };
      if (!view.valid || !view.scene || !drawing || !plots) return; // an answer from before there was a sheet has no scene
      const drawn = view.scene.traces ? undefined : painted();
      const { scene } = view;
      timed("drawing", () => drawing?.show(scene));
      if (!view.glimpse) {
        if (unitsOf !== view.units) mapOf = ""; // charts of other units come empty
        unitsOf = view.units;
        timed("charts", () => plots?.patch(view.plots ?? [], view.units));
        fit.hidden = !plots.loose;
      } else timed("charts", () => plots?.move(view.rings ?? []));
      if (since !== undefined) time(since, drawn);
      if (JSON.stringify(document) !== paperOf) paper.replaceChildren(); // no drawing is better than another tube's
      if (settled) plotted = loadMap();
      if (settled) loadBeside().catch((error) => ((besideOf = ""), onFailure(error)));
      if (settled || since === undefined) prepare(); // what is pulled is not at rest
    },

    /** What the drawing was when the page was last left, until there is an answer. @param {import("./api.js").Scene} scene */
    async foresee(scene) {
      const there = await begun();
      if (!good) there.foresee(scene, size());
    },
    /** The sheet as it is to be seen when the page comes again. */
    seen: () => ({ sheet: { ...size(), traced: { k: 1, x: 0, y: 0, ratio: 1, dark: theme() === "dark" } }, shop: more(false).shop }),

    /** Brings what draws to life; resolves when all is drawn. */
    async load() {
      const [{ createPlots }] = await Promise.all([import("./plots.js"), begun()]);
      plots = await createPlots(plotsRoot, { onPlace: (values) => design.commit(set(values)), ...hand });
      plots.setTheme(theme());
      if (!good) return;
      const drawn = painted();
      // The figures have come in since the sheet was measured.
      await design.refresh();
      await Promise.all([plotted, drawn]);
    },

    /** Has the drawing painted instead of pictured: sharper to pull at, and too large to load before anything shows. */
    loadPainter: () => drawing?.loadPainter(),

    /** @param {"zoomIn" | "zoomOut" | "fit"} how */
    zoom: (how) => drawing?.[how](),

    /** @param {boolean} on */
    holdScale: (on) => drawing?.holdScale(on),

    /** Paper has changed. */
    paint() {
      plots?.setTheme(theme());
      drawing?.setTheme();
    },
  };
}

/** Fetches what is used later: to run the charts' script takes a while, in which the first figures would wait. @param {Partial<HTMLLinkElement>} what */
function fetchEarly(what) {
  document.head.append(Object.assign(document.createElement("link"), what));
}
