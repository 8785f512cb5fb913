// @ts-check
// The plots of the page: ECharts shows the options that the build has written, with the data that the engine sends, and a
// click or an arrow key says where the design shall go. Every number and text comes from the engine.

import { LineChart, ScatterChart } from "echarts/charts";
import { AxisPointerComponent, GridComponent } from "echarts/components";
import { init, setPlatformAPI, use } from "echarts/core";
import { CanvasRenderer } from "echarts/renderers";
import { asset } from "./assets.js";
import { Bands } from "./bands.js";
import { Beside } from "./beside.js";
import { letters } from "./letters.js";
import { Rings } from "./rings.js";

use([LineChart, ScatterChart, GridComponent, AxisPointerComponent, CanvasRenderer]);

// Thin lines redrawn with every move of the pointer: the processor draws them in a fraction of the time that it takes to
// hand them to a graphics card, the more so where there is none.
setPlatformAPI({
  createCanvas() {
    const canvas = document.createElement("canvas");
    setClose(/** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d", { willReadFrequently: true }))); // the chart library gets this one
    return canvas;
  },
});

/**
 * A canvas takes the spacing of letters and words from its element, where a reader's own style may have set it; the library measures texts without. They
 * are set as they are measured. What a context is told holds from its next font on.
 * @param {CanvasRenderingContext2D} pen
 */
function setClose(pen) {
  const { get, set } = /** @type {Required<PropertyDescriptor>} */ (Object.getOwnPropertyDescriptor(CanvasRenderingContext2D.prototype, "font"));
  Object.defineProperty(pen, "font", {
    get,
    set(font) {
      pen.letterSpacing = pen.wordSpacing = "0px";
      set.call(pen, font);
    },
  });
}

/**
 * @typedef {{id: string, option: any, dark: any, ring: {accent: string, paper: string}}} Plot a chart's option without data, for light and for dark paper, and what its ring is printed in
 * @typedef {import("./api.js").Update} Update
 * @typedef {Omit<Update["patch"], "title">} Change
 * @typedef {import("./api.js").Map} FieldMap
 * @typedef {import("./api.js").Value} Value
 */

const PAPER = { width: 400, height: 250, ratio: 3 }; // px of a chart for the printer, two side by side on A4, and how fine

/** @type {Record<string, [right: number, up: number]>} */
const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowDown: [0, -1], ArrowUp: [0, 1] };

/**
 * What is to become of values at a place: it was pressed, is being pulled to, was let go at, or is given up.
 * @typedef {{onPlace: (values: Value[]) => void, onPull: (values: Value[], event: Event) => void, onRelease: (values: Value[], event: Event) => void, onCancel: () => void}} Hand
 */

/** One chart, under the sentence that it answers with. */
class Chart {
  /**
   * @param {HTMLElement} root the figure, with an element "canvas" for the chart
   * @param {Plot} plot
   * @param {Hand} hand
   * @param {string} keys what is said of its keys
   */
  constructor(root, plot, hand, keys) {
    this.root = root;
    this.plot = plot;
    this.hand = hand;
    this.area = /** @type {HTMLElement} */ (root.querySelector(".canvas"));
    this.area.tabIndex = 0;
    this.area.setAttribute("role", plot.id === "map" ? "application" : "slider"); // on a map the keys go two ways
    this.area.setAttribute("aria-describedby", `keys-${plot.id}`);
    const told = document.createElement("p");
    told.className = "keys";
    told.id = `keys-${plot.id}`;
    told.textContent = keys;
    this.area.after(told);
    this.answer = document.createElement("p");
    this.answer.className = "answer";
    this.area.before(this.answer);
    this.held = document.createElement("p");
    this.held.className = "held";
    this.area.after(this.held);
    this.bands = new Bands(this.area);
    this.rings = new Rings(this.area, plot.id !== "map", (gridIndex, event) => this.take(gridIndex, event));
    const chart = document.createElement("div");
    this.reading = document.createElement("p"); // in the place of the answer, where it covers no curve
    this.reading.className = "reading";
    this.reading.setAttribute("aria-hidden", "true"); // the figures say the same of the design
    this.reading.hidden = true;
    this.answer.after(this.reading);
    this.area.append(chart);
    this.beside = new Beside(this.area);

    this.shown = false; // whether the chart has the plot's option, and axes
    /** @type {Update | null} */ this.update = null;
    /** @type {import("./api.js").Axes | null} those in sight, which hold until they are released */ this.axes = null;
    this.units = "";
    this.pulling = -1; // the panel whose ring is pulled
    this.pulled = false; // what the pointer does now ends a pull, and is no press
    /** @type {HTMLCanvasElement | undefined} */ this.paper;
    /** @type {FieldMap | null} the whole map, while updates say only where its ring is */ this.map = null;
    this.dark = false;
    /** @type {Record<"xAxis" | "yAxis", string[][]>} the ticks of each axis as the engine printed them */
    this.ticks = { xAxis: [], yAxis: [] };
    /** @type {Map<string, string>} what the chart shows: the data of each series, and under "" the axes */
    this.drawn = new Map();

    this.chart = this.start(chart);
    this.area.addEventListener("keydown", (event) => {
      const arrow = arrows[event.key];
      const values = arrow && this.nudged(...arrow);
      if (!values?.length) return;
      event.preventDefault();
      this.hand.onPlace(values);
    });
    this.area.addEventListener("keydown", ({ key }) => key === "Escape" && this.pulling >= 0 && this.letGo() && this.hand.onCancel());
    this.area.addEventListener("pointermove", (event) => {
      if (this.pulling < 0) return;
      this.pulled = true;
      this.hand.onPull(this.valuesNear(event), event);
    });
    this.area.addEventListener("pointerup", (event) => {
      if (this.pulling < 0) return;
      const values = this.valuesNear(event);
      this.letGo();
      if (this.pulled) this.hand.onRelease(values, event);
    });
    this.area.addEventListener("lostpointercapture", () => this.pulling >= 0 && this.letGo() && this.hand.onCancel());
    // A finger that is lifted points nowhere.
    for (const end of ["touchend", "touchcancel", "pointerleave"]) this.area.addEventListener(end, () => this.leave());
    new ResizeObserver(() => this.resize()).observe(this.area);
  }

  /** @param {HTMLElement} element */
  start(element) {
    const chart = init(element);
    const canvas = chart.getZr();
    canvas.on("mousemove", ({ offsetX, offsetY }) => {
      canvas.setCursorStyle(this.valuesAt(offsetX, offsetY) ? "crosshair" : "default");
    });
    canvas.on("click", ({ offsetX, offsetY }) => {
      const values = this.valuesAt(offsetX, offsetY);
      if (values && !this.pulled) this.hand.onPlace(values);
    });
    chart.on("rendered", () => this.stand(chart));
    chart.on("updateAxisPointer", (/** @type {any} */ { axesInfo, dataIndex }) => this.read(axesInfo.length ? dataIndex : undefined));
    return chart;
  }

  /** A chart keeps the pixel ratio that it started with: a new one starts where the old one stood. */
  renew() {
    const element = this.chart.getDom();
    this.chart.dispose();
    this.chart = this.start(element);
    this.show();
    this.resize();
  }

  /**
   * What the curves say at a sample.
   * @param {number | undefined} index
   */
  read(index) {
    const text = (index !== undefined && this.update?.readings?.[index]) || "";
    this.reading.hidden = !text;
    this.reading.textContent = text;
  }

  /** Nothing is pointed at any more. */
  leave() {
    this.chart.dispatchAction({ type: "updateAxisPointer", currTrigger: "leave" });
    this.read(undefined);
  }

  /** @param {number} gridIndex @param {PointerEvent} event */
  take(gridIndex, event) {
    if (event.button !== 0 || this.pulling >= 0) return;
    event.preventDefault();
    this.area.focus({ focusVisible: false });
    this.area.setPointerCapture(event.pointerId);
    this.area.dataset.pulling = "";
    this.pulling = gridIndex;
    this.pulled = false;
    this.leave();
  }

  letGo() {
    this.pulling = -1;
    delete this.area.dataset.pulling;
    setTimeout(() => (this.pulled = false)); // the press that ends the pull has been by then
    return true;
  }

  /** The values that the pulled ring would have under the pointer, or where its panel ends. @param {PointerEvent} event */
  valuesNear({ clientX, clientY }) {
    const gridIndex = this.pulling;
    const { left, top } = this.area.getBoundingClientRect();
    const place = this.rings.nearest(this.chart, gridIndex, clientX - left, clientY - top);
    const [across, up] = this.chart.convertFromPixel({ gridIndex }, place);
    return this.values(across, up);
  }

  /**
   * The values at a pixel, or null outside the plot.
   * @param {number} x
   * @param {number} y
   */
  valuesAt(x, y) {
    if (!this.shown || !this.update) return null;
    for (let gridIndex = 0; gridIndex < this.plot.option.grid.length; gridIndex++) {
      if (!this.chart.containPixel({ gridIndex }, [x, y])) continue;
      const [across, up] = this.chart.convertFromPixel({ gridIndex }, [x, y]);
      return this.values(across, up);
    }
    return null;
  }

  /**
   * The value one step of an axis from the design.
   * @param {number} right
   * @param {number} up
   */
  nudged(right, up) {
    const place = right ? this.update?.x : this.update?.y;
    if (!place?.steps) return null;
    return [{ field: place.field, number: place.steps[right + up > 0 ? 1 : 0], unit: place.unit }];
  }

  /**
   * @param {number} across
   * @param {number} up
   */
  values(across, up) {
    const { x, y } = /** @type {Update} */ (this.update);
    /** @type {Value[]} */
    const values = [];
    if (x) values.push({ field: x.field, number: across, unit: x.unit });
    if (y) values.push({ field: y.field, number: up, unit: y.unit });
    return values;
  }

  /** @param {Plot} plot @param {string} units */
  setPlot(plot, units) {
    this.plot = plot;
    this.units = units;
    this.shown = false; // till the update in its units comes
    this.axes = null;
    this.map = null; // its numbers may be in other units
    this.bands.clear();
  }

  /** Draws everything anew, in the next frame: the option by itself would be drawn for nothing. */
  show() {
    const latest = this.update;
    if (!this.shown || !latest) return;
    const option = this.dark ? this.plot.dark : this.plot.option;
    for (const axes of /** @type {const} */ (["xAxis", "yAxis"])) {
      option[axes].forEach((/** @type {any} */ axis, /** @type {number} */ i) => {
        axis.axisLabel.formatter = (/** @type {number} */ _, /** @type {number} */ tick) => this.ticks[axes][i][tick] ?? "";
      });
    }
    this.drawn.clear();
    this.chart.setOption(option, { notMerge: true, lazyUpdate: true });
    if (this.map) this.patch(this.map);
    this.patch(latest);
  }

  /**
   * @param {Update} update
   * @param {boolean} [lazyUpdate] whether it may wait for the next frame
   */
  patch(update, lazyUpdate = true) {
    this.update = update;
    this.area.setAttribute("aria-label", update.label);
    this.held.textContent = update.held;
    this.place(update.x);
    this.root.dataset.across = update.x?.field ?? "";
    this.root.dataset.up = update.y?.field ?? "";
    const { title, ...option } = update.patch;
    if (!this.shown) {
      if (!option.xAxis) return; // a map's ring alone: the map is on its way
      this.shown = true;
      this.show();
    }
    this.note(title, option);
    if (option.xAxis && option.yAxis) this.hold(update, option.xAxis, option.yAxis);
    this.rings.show(update.rings, this.chart, option);
    const undrawn = this.undrawn(option);
    if (undrawn || !lazyUpdate) this.chart.setOption(undrawn ?? {}, { lazyUpdate, silent: true });
  }

  /** Says to what the slider is set. @param {Update["x"]} x */
  place(x) {
    if (!x || this.area.role !== "slider") return;
    this.area.setAttribute("aria-valuenow", String(x.at));
    this.area.setAttribute("aria-valuetext", x.said);
  }

  /** @param {Update} update @param {{min: number, max: number}[]} along @param {{min: number, max: number}[]} up */
  hold({ id, x }, along, up) {
    const ends = (/** @type {{min: number, max: number}} */ { min, max }) => /** @type {[number, number]} */ ([min, max]);
    if (id === "map") return; // the curves beside it say what of the same fields is in sight
    this.area.setAttribute("aria-valuemin", String(along[0].min));
    this.area.setAttribute("aria-valuemax", String(along[0].max));
    this.axes = { id, units: this.units, field: x?.field ?? "", x: ends(along[0]), y: up.map(ends) };
  }

  /**
   * What of an option the chart does not show yet, or null: a pull along one axis leaves most lines as they are, and the
   * chart library spends more on a line that has not changed than it costs to find that out.
   * @param {Change} option
   */
  undrawn({ series, ...axes }) {
    const scale = JSON.stringify(axes);
    const changed = series.filter(({ id, data }) => {
      const text = JSON.stringify(data);
      if (this.drawn.get(id) === text) return false;
      this.drawn.set(id, text);
      return true;
    });
    const moved = this.drawn.get("") !== scale;
    this.drawn.set("", scale);
    if (!moved && !changed.length) return null;
    return { ...(moved && axes), series: changed };
  }

  /**
   * Keeps what the chart does not show by itself.
   * @param {Update["patch"]["title"]} title
   * @param {Change} option
   */
  note(title, option) {
    this.answer.textContent = title.text;
    for (const axes of /** @type {const} */ (["xAxis", "yAxis"])) {
      option[axes]?.forEach((axis, i) => (this.ticks[axes][i] = axis.texts));
    }
  }

  /** Puts what stands in the chart where its axes are now; one made anew has none before its option. @param {Chart["chart"]} chart */
  stand(chart) {
    if (!this.shown) return;
    this.rings.place(chart);
    this.beside.place(chart, this.rings.widths, this.rings.heights);
  }

  /** What is kept beside the design. @param {import("./api.js").BesidePanel[]} panels */
  keep(panels) {
    this.beside.show(panels);
    this.stand(this.chart);
  }

  /** Moves the ring alone. @param {import("./api.js").Update["rings"]} rings */
  move(rings) {
    if (this.shown) this.rings.show(rings, this.chart);
  }

  /** @param {FieldMap} map */
  showMap(map) {
    this.map = map;
    this.patch(map, false); // the bands take their place from the axes
    this.bands.show(map, this.chart);
  }

  dropMap() {
    this.map = null;
    this.bands.clear();
    this.show();
  }

  /** A picture for the printer, which does not wait: the same whatever the window is, and finer than a screen. */
  print() {
    if (!this.shown || !this.area.offsetParent) return;
    this.paper = this.layers(PAPER).whole;
    this.paper.className = "paper";
    this.area.append(this.paper);
    this.resize();
  }

  /**
   * What the chart consists of, at another size: what lies under it, its option, what lies over it, and all of it in one.
   * @param {{width: number, height: number, ratio: number}} size
   */
  layers({ width, height, ratio }) {
    const [under, over, whole] = [0, 1, 2].map(() => Object.assign(document.createElement("canvas"), { width: Math.round(width * ratio), height: Math.round(height * ratio) }));
    const [below, above, pen] = [under, over, whole].map((canvas) => /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d")));
    this.chart.resize({ width, height }); // at once, with all that was to wait for a frame
    this.bands.paint(this.chart, ratio);
    if (this.map) below.drawImage(this.bands.sheet, 0, 0);
    this.beside.paint(above, this.chart, ratio, this.rings.widths, this.rings.heights, this.plot.ring.paper);
    this.rings.paint(above, this.chart, ratio, this.plot.ring);
    for (const layer of [under, this.chart.getRenderedCanvas({ pixelRatio: ratio }), over]) pen.drawImage(layer, 0, 0);
    return { under, over, whole, option: this.chart.getOption(), width, height };
  }

  /** Apart from the page, on white paper and at the size that it has in sight. @param {number} ratio pixels for each of the page's */
  apart(ratio) {
    if (!this.shown) return null;
    const dark = this.dark;
    this.dark = false;
    this.show();
    const layers = this.layers({ width: this.chart.getWidth(), height: this.chart.getHeight(), ratio });
    this.dark = dark;
    this.show();
    this.resize();
    return layers;
  }

  resize() {
    this.chart.resize();
    this.bands.paint(this.chart);
    this.stand(this.chart);
  }
}

const LENGTHS = new Set(["fontSize", "lineHeight", "margin", "nameGap", "padding", "left", "right", "top", "bottom"]); // of an option, which hold texts

/** An option for texts that are so much larger: what holds them grows with them. @param {any} option @param {number} by @param {string} [key] @returns {any} */
function enlarged(option, by, key = "") {
  if (Array.isArray(option)) return option.map((part) => enlarged(part, by, key));
  if (option && typeof option === "object") return Object.fromEntries(Object.entries(option).map(([name, part]) => [name, enlarged(part, by, name)]));
  return LENGTHS.has(key) && Number.isFinite(+option) ? option * by : option; // a share of the chart stays a share
}

/** @type {Promise<Record<string, Plot[]>>} the options of all charts, by units: they come with this script, while the engine starts */
const loaded = loadOptions();
loaded.catch(() => {}); // told when they are needed

async function loadOptions() {
  const url = asset("charts.json");
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${response.status} ${url}`);
  return response.json();
}

/**
 * Brings the figures of root to life, each with its first update: it names its plot in data-plot and holds an element
 * "canvas".
 *
 * A click calls onPlace with the values at that place, in the units of the axes. An arrow key calls it with the
 * design's own value moved by one step of the axis: left and right along x, up and down along y where y is an input.
 * A ring that is pulled calls onPull and onRelease with the values at the pointer.
 *
 * @param {HTMLElement} root
 * @param {Hand} hand
 */
export async function createPlots(root, hand) {
  const options = await loaded;
  let units = ""; // whose options are set
  let dark = false;
  /** @type {Map<string, Chart>} */
  const figures = new Map();

  /** @param {string} id */
  function figure(id) {
    const known = figures.get(id);
    if (known) return known;
    const made = new Chart(/** @type {HTMLElement} */ (root.querySelector(`[data-plot="${id}"]`)), optionOf(id), hand, (id === "map" ? root.dataset.mapKeys : root.dataset.keys) ?? "");
    made.dark = dark;
    made.units = units;
    figures.set(id, made);
    return made;
  }

  let large = letters();
  const optionOf = (/** @type {string} */ id) => {
    const plot = /** @type {Plot} */ (options[units].find((one) => one.id === id));
    return { ...plot, option: enlarged(plot.option, large), dark: enlarged(plot.dark, large) };
  };

  /** @param {number} by of the usual size */
  function enlarge(by) {
    if (by === large) return;
    large = by;
    for (const [id, figure] of figures) {
      figure.plot = optionOf(id);
      figure.show();
    }
  }
  addEventListener("resize", () => enlarge(letters()));

  const watchPixelRatio = () => {
    matchMedia(`(resolution: ${devicePixelRatio}dppx)`).addEventListener(
      "change",
      () => {
        for (const figure of figures.values()) figure.renew();
        watchPixelRatio();
      },
      { once: true },
    );
  };
  watchPixelRatio();

  return {
    /**
     * What a change of the design changes.
     * @param {Update[]} updates
     * @param {string} system the units they are in
     */
    patch(updates, system) {
      if (units !== system) {
        units = system;
        for (const [id, figure] of figures) figure.setPlot(optionOf(id), system);
      }
      for (const update of updates) figure(update.id).patch(update);
    },

    /** Those in sight, for the engine to hold. */
    axes: () => [...figures.values()].flatMap(({ axes }) => axes ?? []),
    /** The next curves have axes of their own. */
    release() {
      for (const figure of figures.values()) figure.axes = null;
    },
    /** Whether axes are wider than the curves ask for. */
    get loose() {
      return [...figures.values()].some(({ axes, update }) => axes && update?.loose);
    },

    /** A chart in sight apart from the page. @param {string} id @param {number} ratio */
    apart: (id, ratio) => figures.get(id)?.apart(ratio) ?? null,

    /** What is kept beside the design. @param {import("./api.js").BesidePlot[]} list */
    beside(list) {
      for (const [id, figure] of figures) figure.keep(list.find((plot) => plot.id === id)?.panels ?? []);
    },

    /** While something is pulled. @param {import("./api.js").Rings[]} moved */
    move(moved) {
      for (const { id, rings } of moved) figures.get(id)?.move(rings);
    },

    /** @param {string} name "light" or "dark" */
    setTheme(name) {
      dark = name === "dark";
      for (const figure of figures.values()) {
        figure.dark = dark;
        figure.show();
      }
    },

    /** Has a picture of each chart in sight ready for the printer. Paper is white, whatever the screen is. */
    print() {
      enlarge(1); // as its size
      this.setTheme("light");
      for (const figure of figures.values()) figure.print();
    },

    /** The printer is done. */
    printed() {
      for (const figure of figures.values()) figure.paper?.remove();
      enlarge(letters());
    },

    /** @param {FieldMap} map */
    showMap(map) {
      figures.get(map.id)?.showMap(map);
    },

    /** Its next answer failed: no map is better than another tube's. */
    dropMap() {
      figures.get("map")?.dropMap();
    },
  };
}
