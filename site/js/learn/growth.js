// @ts-check
// What growth does: the tube as it was cut and, below it, as it is while the head runs along. Where everything is when the head has come to
// each zone the engine says.

import { write } from "../keyed.js";

const SVG = "http://www.w3.org/2000/svg";
const RUN = 4; // turns of the picture in which the head runs over the whole tube
const REST = 1; // and that it rests then
const [CUT, OFF, HIGH] = [6, 28, 10]; // where the two tubes lie, and how high they are

/** @typedef {NonNullable<NonNullable<import("../api.js").ShownStory["winding"]>["grows"]>} Grows */

/** @param {HTMLElement} root */
export function createGrowth(root) {
  const part = (/** @type {string} */ name) => /** @type {any} */ (root.querySelector(`[data-part="${name}"]`));
  const svg = part("growth-picture");
  /** @type {Grows | null} */ let shown = null;

  /** @param {string} kind @param {string} d */
  function path(kind, d) {
    const element = document.createElementNS(SVG, "path");
    element.setAttribute("class", kind);
    element.setAttribute("d", d);
    return element;
  }

  /** @param {string[]} zones @param {number[]} edges @param {number} y */
  const tube = (zones, edges, y) => zones.map((zone, i) => path(zone || "end", `M${edges[i]} ${y}H${edges[i + 1]}v${HIGH}H${edges[i]}Z`));

  /** Lies over what has no fins yet. @param {number} from @param {number} to @param {number} y */
  const ahead = (from, to, y) => path("ahead", `M${from} ${y}H${to}v${HIGH}H${from}Z`);

  return {
    /** @param {number} turns of the picture */
    place(turns) {
      if (!shown) return;
      const { zones, cut, states } = shown;
      const share = (turns % (RUN + REST)) / RUN;
      const head = share < 1 ? share * cut[zones.length] : cut[zones.length];
      const at = zones.findIndex((_, i) => head < cut[i + 1]);
      const edges = at < 0 ? states[zones.length] : states[at].map((place, i) => place + ((states[at + 1][i] - place) * (head - cut[at])) / (cut[at + 1] - cut[at]));
      const from = head + edges[zones.length] - cut[zones.length]; // it has moved on with all beyond
      svg.replaceChildren(
        ...tube(zones, cut, CUT),
        ahead(0, cut[zones.length], CUT),
        ...cut.map((place, i) => path("moved", `M${place} ${CUT + HIGH}L${edges[i]} ${OFF}`)),
        ...tube(zones, edges, OFF),
        ahead(from, edges[zones.length], OFF),
        path("head", `M${from} ${OFF + HIGH}l-3 5h6Z`),
      );
    },
    /** @param {Grows | null} grows null: the tube does not */
    show(grows) {
      part("growth").hidden = !grows;
      shown = grows;
      if (!grows) return;
      svg.setAttribute("aria-label", grows.said);
      write(part("growth-before"), grows.before);
      write(part("growth-after"), grows.after);
      write(part("growth-said"), grows.said);
    },
  };
}
