// @ts-check
// The drawing, or a plot in sight, as a picture for other programs: copied, or saved with points or with lines. Pictures are on white
// paper whatever the page is on, and bear the mark of what is not answered.

import { init, use } from "echarts/core";
import { SVGRenderer } from "echarts/renderers";
import { download, today } from "./files.js";
import { element } from "./overlay.js";
import { placeBeside } from "./popovers.js";

const FINE = 3; // pixels of a picture for each of the page's
const HEAD = 26; // px for what a plot says, above it
const MARGIN = 8; // px
const LONGEST = 60; // letters of a file's name
const DRAWING = "";

use([SVGRenderer]);

/** @typedef {{width: number, height: number, paint: (pen: CanvasRenderingContext2D) => Promise<void> | void, lines: () => string}} Picture  in px; lines: as SVG */

/**
 * @param {HTMLElement} root a popover
 * @param {{
 *   drawing: () => Promise<string | null>,
 *   plot: (id: string, ratio: number) => {under: HTMLCanvasElement, over: HTMLCanvasElement, whole: HTMLCanvasElement, option: any, width: number, height: number} | null,
 *   title: () => string,
 *   rest: () => Promise<void>,
 *   marked: (text: string) => string,
 *   say: (what: string) => void,
 *   failed: (error: Error) => void,
 * }} page
 */
export function createPictures(root, page) {
  const choice = /** @type {HTMLSelectElement} */ (root.querySelector("select"));
  const family = getComputedStyle(document.body).fontFamily;

  /** The plots in sight, each by what it answers. */
  function fill() {
    const plots = [.../** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("#plots .plot[data-plot]"))].filter((plot) => plot.checkVisibility());
    choice.replaceChildren(new Option(root.dataset.drawing, DRAWING), ...plots.map((plot) => new Option(saidOf(plot), plot.dataset.plot)));
    placeBeside(root);
  }

  const saidOf = (/** @type {Element} */ plot) => (plot.querySelector(".answer") ?? plot.querySelector("figcaption"))?.textContent?.trim() ?? "";

  /** @param {string} id @returns {Promise<Picture | null>} */
  async function take(id) {
    await page.rest();
    if (id === DRAWING) {
      const text = await page.drawing();
      return text ? drawn(text) : null;
    }
    const plot = document.querySelector(`#plots [data-plot="${id}"]`);
    const layers = page.plot(id, FINE);
    return plot && layers && plotted(page.marked(saidOf(plot)), layers);
  }

  /** @param {string} text an SVG document @returns {Picture} */
  function drawn(text) {
    const svg = /** @type {SVGSVGElement} */ (/** @type {unknown} */ (new DOMParser().parseFromString(text, "image/svg+xml").documentElement));
    const [, , wide, high] = (svg.getAttribute("viewBox") ?? "").split(" ").map(Number); // mm
    const scale = 96 / 25.4;
    svg.prepend(element("rect", { width: wide, height: high, fill: "#fff" }));
    return {
      width: wide * scale,
      height: high * scale,
      lines: () => new XMLSerializer().serializeToString(svg),
      // The page's letters are not to be had in a picture, but on a canvas they are.
      async paint(pen) {
        const bare = /** @type {SVGSVGElement} */ (svg.cloneNode(true));
        bare.querySelectorAll("text").forEach((part) => part.remove());
        pen.drawImage(await load(new XMLSerializer().serializeToString(bare)), 0, 0, wide * scale, high * scale);
        for (const part of svg.querySelectorAll("text")) {
          const [x, y] = ["x", "y"].map((name) => Number(part.getAttribute(name)) * scale);
          const turn = /rotate\((-?[\d.]+)/.exec(part.getAttribute("transform") ?? "");
          pen.save();
          pen.setTransform(pen.getTransform().translate(x, y).rotate(Number(turn?.[1] ?? 0)));
          const anchor = part.getAttribute("text-anchor");
          pen.textAlign = anchor === "middle" ? "center" : anchor === "end" ? "right" : "left";
          pen.font = `${part.hasAttribute("font-weight") || part.getAttribute("class") === "title" ? 600 : 400} ${Number(svg.getAttribute("font-size")) * scale}px ${family}`;
          pen.fillStyle = part.getAttribute("fill") ?? "#000";
          pen.fillText(part.textContent ?? "", 0, 0);
          pen.restore();
        }
      },
    };
  }

  /** @param {string} said @param {NonNullable<ReturnType<typeof page.plot>>} layers @returns {Picture} */
  function plotted(said, { under, over, whole, option, width, height }) {
    const [wide, high] = [width + 2 * MARGIN, height + HEAD + 2 * MARGIN];
    const base = MARGIN + HEAD * 0.6;
    return {
      width: wide,
      height: high,
      paint(pen) {
        pen.fillStyle = "#000";
        pen.font = `600 15px ${family}`;
        pen.fillText(said, MARGIN, base, wide - 2 * MARGIN);
        pen.drawImage(whole, MARGIN, MARGIN + HEAD, width, height);
      },
      lines() {
        const chart = init(null, null, { renderer: "svg", ssr: true, width, height });
        chart.setOption({ ...option, animation: false });
        const inner = chart.renderToSVGString(); // as text: the page's policy would take its styles for the page's own
        chart.dispose();
        const place = `x="${MARGIN}" y="${MARGIN + HEAD}"`;
        const layer = (/** @type {HTMLCanvasElement} */ canvas) => `<image ${place} width="${width}" height="${height}" href="${canvas.toDataURL("image/png")}"/>`;
        const title = element("text", { x: MARGIN, y: base, "font-size": 15, "font-weight": 600 });
        title.textContent = said;
        return [
          `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="0 0 ${wide} ${high}" font-family="${family.replaceAll('"', "")}">`,
          `<rect width="${wide}" height="${high}" fill="#fff"/>`,
          new XMLSerializer().serializeToString(title),
          layer(under),
          inner.replace("<svg ", `<svg ${place} `),
          layer(over),
          "</svg>",
        ].join("\n");
      },
    };
  }

  /** @param {Picture} picture @returns {Promise<Blob>} */
  async function points({ width, height, paint }) {
    const canvas = Object.assign(document.createElement("canvas"), { width: Math.round(width * FINE), height: Math.round(height * FINE) });
    const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d"));
    pen.fillStyle = "#fff";
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.scale(FINE, FINE);
    await paint(pen);
    return new Promise((resolve, reject) => canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("no picture"))), "image/png"));
  }

  const none = () => Promise.reject(new Error("no picture"));

  /** @type {Record<string, (picture: Promise<Picture | null>, name: string) => Promise<string>>} each says what became of it */
  const acts = {
    // The clipboard is asked within the press, and waits for the picture.
    copy: async (picture) => {
      try {
        await navigator.clipboard.write([new ClipboardItem({ "image/png": picture.then((it) => (it ? points(it) : none())) })]);
        return "pictured";
      } catch {
        return "notCopied";
      }
    },
    png: async (picture, name) => {
      const it = await picture;
      if (!it) return "notDrawn";
      download(await points(it), `${name}.png`, "image/png");
      return "saved";
    },
    svg: async (picture, name) => {
      const it = await picture;
      if (!it) return "notDrawn";
      download(it.lines(), `${name}.svg`, "image/svg+xml");
      return "saved";
    },
  };

  root.addEventListener("click", async ({ target }) => {
    const act = target instanceof HTMLElement ? acts[target.dataset.picture ?? ""] : undefined;
    if (!act) return;
    const words = [page.title(), choice.selectedOptions[0]?.text ?? ""].join(" ").match(/[\p{L}\p{N}]+/gu) ?? []; // what every file system takes
    const name = [words.join("-").slice(0, LONGEST), today()].join("-");
    root.hidePopover();
    try {
      page.say(await act(take(choice.value), name));
    } catch (error) {
      page.failed(/** @type {Error} */ (error));
    }
  });
  root.addEventListener("beforetoggle", (event) => /** @type {ToggleEvent} */ (event).newState === "open" && fill());
  fill();
}

/** @param {string} text an SVG document @returns {Promise<HTMLImageElement>} */
async function load(text) {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
  await image.decode();
  return image;
}
