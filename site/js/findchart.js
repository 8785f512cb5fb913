// @ts-check
// Designs that were found, as marks in a picture of two measures. A mark is told when it is pointed at or gone to by keys, and pressed
// it is taken. Where each mark stands the engine says, from 0 to 1.

import { write } from "./keyed.js";

const SVG = "http://www.w3.org/2000/svg";
const WIDE = 440;
const HIGH = 300;
const LEFT = 64;
const BELOW = 44;
const RIGHT = 12;
const ABOVE = 10;

/** @type {Record<string, string>} */
const SHAPES = { front: "M0 -4 4 0 0 4 -4 0Z", best: "M-2 0A2 2 0 1 0 2 0 2 2 0 1 0 -2 0Z", hand: "M-6 0A6 6 0 1 0 6 0 6 6 0 1 0 -6 0Z", kept: "M-5 -5H5V5H-5Z" };

/** @param {HTMLElement} root @param {(place: number) => void} onTake */
export function createChart(root, onTake) {
  const svg = /** @type {SVGSVGElement} */ (/** @type {unknown} */ (root.querySelector("svg")));
  const told = /** @type {HTMLElement} */ (root.querySelector("p"));
  svg.setAttribute("viewBox", `0 0 ${WIDE} ${HIGH}`);
  /** @type {import("./api.js").SearchPoint[]} from the left on */ let points = [];
  let here = -1;

  const across = (/** @type {number} */ part) => LEFT + part * (WIDE - LEFT - RIGHT);
  const up = (/** @type {number} */ part) => HIGH - BELOW - part * (HIGH - BELOW - ABOVE);

  /** @param {string} name @param {Record<string, string | number>} attributes @param {string} [text] */
  function add(name, attributes, text) {
    const element = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
    if (text) element.textContent = text;
    svg.append(element);
    return element;
  }

  /** @param {number} index */
  function tell(index) {
    here = index;
    for (const mark of svg.querySelectorAll(".mark")) mark.classList.toggle("here", Number(/** @type {SVGElement} */ (mark).dataset.index) === index);
    const point = points[index];
    write(told, point ? [root.dataset[point.kind], point.text].filter(Boolean).join(": ") : (root.dataset.keys ?? ""));
  }

  const indexOf = (/** @type {EventTarget | null} */ target) => (target instanceof SVGElement && target.classList.contains("mark") ? Number(target.dataset.index) : -1);
  svg.addEventListener("pointerover", ({ target }) => indexOf(target) >= 0 && tell(indexOf(target)));
  svg.addEventListener("click", ({ target }) => indexOf(target) >= 0 && take(indexOf(target)));
  svg.addEventListener("keydown", (event) => {
    const next = { ArrowRight: here + 1, ArrowUp: here + 1, ArrowLeft: here - 1, ArrowDown: here - 1, Home: 0, End: points.length - 1 }[event.key];
    if (event.key === "Enter") take(here);
    else if (next === undefined || !points.length) return;
    else tell(Math.min(Math.max(next, 0), points.length - 1));
    event.preventDefault();
  });

  /** @param {number} index */
  function take(index) {
    const place = points[index]?.place ?? -1;
    if (place >= 0) onTake(place);
  }

  return {
    /** The design in hand elsewhere is seen, and told when somebody goes on from it. @param {number} place */
    mark(place) {
      here = points.findIndex((point) => point.place === place);
      for (const mark of svg.querySelectorAll(".mark")) {
        const is = Number(/** @type {SVGElement} */ (mark).dataset.index) === here;
        mark.classList.toggle("here", is);
        if (is) svg.append(mark); // over the others
      }
    },
    /** @param {import("./api.js").SearchChart} chart */
    show({ x, y, points: found }) {
      points = [...found].sort((a, b) => a.x - b.x || a.y - b.y);
      svg.replaceChildren();
      add("path", { class: "axis", d: `M${LEFT} ${ABOVE}V${HIGH - BELOW}H${WIDE - RIGHT}` });
      for (const { at, text } of x.ticks) {
        add("path", { class: "axis", d: `M${across(at)} ${HIGH - BELOW}v5` });
        add("text", { x: across(at), y: HIGH - BELOW + 18, "text-anchor": "middle" }, text);
      }
      for (const { at, text } of y.ticks) {
        add("path", { class: "axis", d: `M${LEFT} ${up(at)}h-5` });
        add("text", { x: LEFT - 8, y: up(at) + 4, "text-anchor": "end" }, text);
      }
      add("text", { x: across(0.5), y: HIGH - 6, "text-anchor": "middle" }, x.label);
      add("text", { x: 12, y: up(0.5), "text-anchor": "middle", transform: `rotate(-90 12 ${up(0.5)})` }, y.label);
      const order = ["best", "front", "kept", "hand"]; // the later over the earlier
      for (const [index, { kind, x: part, y: high }] of [...points.entries()].sort((a, b) => order.indexOf(a[1].kind) - order.indexOf(b[1].kind))) {
        add("path", { class: `mark ${kind}`, d: SHAPES[kind], transform: `translate(${across(part)} ${up(high)})`, "data-index": index });
      }
      tell(-1);
    },
  };
}
