// @ts-check
// The drawing while something in it is pulled: some ten paths over the resting painting, which follows when the hand rests.
// They cost a tenth of a painting. The processor draws them: to hand hundreds of thin lines to a graphics card, or to the
// program that stands in for one, takes many times as long.

const FINE = 10; // units of a trace to a device pixel, as in ink.Fine
const TONES = ["ink", "grey", "faint"]; // the page's own; any other is a colour

/** @param {HTMLElement} root */
export function createTraced(root) {
  const sheet = document.createElement("canvas");
  sheet.className = "traced";
  sheet.setAttribute("aria-hidden", "true");
  root.prepend(sheet);
  const pen = /** @type {CanvasRenderingContext2D} */ (sheet.getContext("2d", { willReadFrequently: true }));

  return {
    /**
     * @param {import("./api.js").Trace[]} traces @param {number} ratio device pixels to one of the page that they were made for
     * @param {import("./overlay.js").Transform} [t] where it is fitted in
     */
    show(traces, ratio, { k, x, y } = { k: 1, x: 0, y: 0 }) {
      const [width, height] = [root.clientWidth, root.clientHeight].map((long) => Math.round(long * devicePixelRatio));
      if (sheet.width !== width || sheet.height !== height) Object.assign(sheet, { width, height });
      const colours = getComputedStyle(sheet);
      const scale = (k * devicePixelRatio) / (FINE * ratio);
      pen.setTransform(1, 0, 0, 1, 0, 0);
      pen.clearRect(0, 0, width, height);
      pen.setTransform(scale, 0, 0, scale, x * devicePixelRatio, y * devicePixelRatio);
      pen.lineJoin = "round";
      for (const { tone, fill, width: line, path } of traces) {
        pen.fillStyle = pen.strokeStyle = TONES.includes(tone) ? colours.getPropertyValue(`--${tone}`) : tone;
        pen.lineWidth = line;
        const drawn = new Path2D(path);
        if (fill) pen.fill(drawn, "evenodd");
        if (line) pen.stroke(drawn);
      }
      root.classList.add("pulled");
    },
    hide: () => root.classList.remove("pulled"),
  };
}
