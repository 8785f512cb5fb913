// @ts-check
// The drawing while something in it is pulled: some ten paths over the resting painting, which follows when the hand rests.
// They cost a tenth of a painting.

import { element, set } from "./overlay.js";

const FINE = 10; // units of a trace to a device pixel, as in ink.Fine
const TONES = ["ink", "grey", "faint"]; // the page's own; any other is a colour

/** @param {HTMLElement} root */
export function createTraced(root) {
  const sheet = element("svg", { class: "traced", "aria-hidden": "true" });
  const group = element("g");
  sheet.append(group);
  root.prepend(sheet);
  /** @type {SVGElement[]} */ const paths = [];

  return {
    /**
     * @param {import("./api.js").Trace[]} traces @param {number} ratio device pixels to one of the page
     * @param {import("./overlay.js").Transform} [t] where it is fitted in
     */
    show(traces, ratio, { k, x, y } = { k: 1, x: 0, y: 0 }) {
      set(group, { transform: `translate(${x} ${y}) scale(${k / (FINE * ratio)})` });
      while (paths.length < traces.length) {
        const path = element("path");
        group.append(path);
        paths.push(path);
      }
      paths.forEach((node, i) => {
        const { tone, fill, width, path } = traces[i] ?? { tone: "", fill: false, width: 0, path: "" };
        const colour = TONES.includes(tone) ? `var(--${tone})` : tone;
        set(node, { d: path, fill: fill ? colour : "none", stroke: width ? colour : "none", "stroke-width": width });
      });
      root.classList.add("pulled");
    },
    hide: () => root.classList.remove("pulled"),
  };
}
