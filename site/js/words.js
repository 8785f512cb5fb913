// @ts-check
// The texts over the painted sheet. Closer to, a view's title and scale stay in sight, and a text that they or the frame
// would cut is not shown.

import { keyed, write } from "./keyed.js";
import { element, onScreen, PX_PER_MM, set } from "./overlay.js";

const DIMENSION = "dim-"; // begins the ID of a dimension's text
const FAMILY = "Barlow Semi Condensed"; // that the texts were laid out for
const PLAIN = /^[ -~Ø–]*$/; // letters of which it is known how wide they are
const CAPITAL = 0.8; // height of capitals and figures, of the letters
const INSET = 8; // px between the frame and a heading that stays

/**
 * @typedef {import("./api.js").Scene} Scene
 * @typedef {import("./api.js").Text} Text
 * @typedef {import("./overlay.js").Transform} Transform
 * @typedef {{x: number, y: number}} Place
 * @typedef {{left: number, top: number, right: number, bottom: number}} Box
 */

/** @param {SVGElement} parent @param {Element} controls lie over the sheet: nothing is written under them */
export function createWords(parent, controls) {
  const place = keyed(parent, make, false);
  const loaded = () => [...document.fonts].some(({ family, status }) => family.includes(FAMILY) && status === "loaded");
  let shipped = loaded();
  let spaced = false; // the reader has set letters or words further apart than the page
  /** @type {WeakMap<Element, Text>} */ const texts = new WeakMap();
  const fitAll = () => {
    for (const node of parent.children) fit(/** @type {SVGTextElement} */ (node), /** @type {Text} */ (texts.get(node)));
  };
  document.fonts.addEventListener("loadingdone", () => {
    if (!shipped && (shipped = loaded())) fitAll();
  });
  watchSpacing(parent, (yes) => {
    spaced = yes;
    fitAll();
  });

  /** Letters of another family, or set apart, are pressed into the room that the text has. @param {SVGTextElement} node @param {Text} text */
  function fit(node, text) {
    node.removeAttribute("textLength");
    if (shipped && !spaced && PLAIN.test(text.text)) return;
    const room = text.width * PX_PER_MM;
    if (node.getComputedTextLength() > room) node.setAttribute("textLength", String(room));
  }

  return (/** @type {Scene} */ scene, /** @type {Transform} */ t, /** @type {string} */ pulled) => {
    set(parent, { "font-size": `${scene.letters * PX_PER_MM}px` });
    const closer = t.k > 1 ? inFrame(scene, t, placeOf(controls, /** @type {SVGElement} */ (parent.ownerSVGElement))) : null;
    place(scene.texts, (/** @type {SVGTextElement} */ node, /** @type {Text} */ text) => {
      texts.set(node, text);
      const at = closer ? closer(text) : onScreen(t, text.x, text.y);
      set(node, { display: at ? "inline" : "none" });
      if (!at) return;
      set(node, {
        class: text.field && text.field === pulled ? `${text.class} pulled` : text.class,
        "text-anchor": text.anchor,
        transform: `translate(${at.x} ${at.y}) rotate(${text.rotate})`,
      });
      if (node.textContent === text.text) return;
      write(node, text.text);
      fit(node, text);
    });
  };
}

/**
 * Tells when a reader's own style sets letters or words apart: an unseen text changes its width then, and by nothing else that its family
 * does not explain.
 * @param {Element} parent @param {(spaced: boolean) => void} onChange
 */
function watchSpacing(parent, onChange) {
  const probe = document.createElement("span");
  probe.className = "unseen probe";
  probe.textContent = "0 0";
  probe.setAttribute("aria-hidden", "true");
  document.body.append(probe);
  let was = false;
  new ResizeObserver(() => {
    const { letterSpacing, wordSpacing } = getComputedStyle(probe);
    const now = [letterSpacing, wordSpacing].some((space) => parseFloat(space) > 0);
    if (now !== was) onChange((was = now));
  }).observe(probe);
}

/** @param {string} id */
function make(id) {
  const of = id.startsWith(DIMENSION) && { "data-dimension": id.slice(DIMENSION.length) };
  return element("text", { "data-testid": id, lengthAdjust: "spacingAndGlyphs", ...of });
}

/**
 * Where a text stands on a sheet that is seen closer to, or null where it is not shown.
 * @param {Scene} scene @param {Transform} t @param {Box} controls
 * @returns {(text: Text) => Place | null}
 */
function inFrame(scene, t, controls) {
  const frame = { left: 0, top: 0, right: scene.width * PX_PER_MM, bottom: scene.height * PX_PER_MM };
  /** @type {Map<string, Place | null>} */ const headings = new Map();
  const taken = [controls];
  const high = CAPITAL * scene.letters * PX_PER_MM;
  for (const view of scene.views) {
    const from = onScreen(t, view.x, view.y);
    const to = onScreen(t, view.x + view.width, view.y + view.height);
    const corner = { x: Math.max(from.x, INSET), y: Math.max(from.y, INSET) };
    for (const text of scene.texts.filter(({ id }) => id === `title-${view.id}` || id === `scale-${view.id}`)) {
      const at = { x: corner.x + (text.x - view.x) * PX_PER_MM, y: corner.y + (text.y - view.y) * PX_PER_MM };
      const box = boxOf(text, at, high);
      const seen = box.right < Math.min(to.x, frame.right) && box.bottom < Math.min(to.y, frame.bottom) && !overlap(box, controls);
      headings.set(text.id, seen ? at : null);
      if (seen) taken.push(box);
    }
  }
  return (text) => {
    const heading = headings.get(text.id);
    if (heading !== undefined) return heading;
    const at = onScreen(t, text.x, text.y);
    const box = boxOf(text, at, high);
    const whole = box.left >= frame.left && box.top >= frame.top && box.right <= frame.right && box.bottom <= frame.bottom;
    return whole && !taken.some((other) => overlap(box, other)) ? at : null;
  };
}

/** @param {Element} element @param {Element} over @returns {Box} of an element, as it lies over another */
function placeOf(element, over) {
  const { left, top, right, bottom } = element.getBoundingClientRect();
  const { left: x, top: y } = over.getBoundingClientRect();
  return { left: left - x, top: top - y, right: right - x, bottom: bottom - y };
}

/** @param {Text} text @param {Place} at @param {number} high @returns {Box} */
function boxOf(text, { x, y }, high) {
  const long = text.width * PX_PER_MM;
  const before = { start: 0, middle: long / 2, end: long }[/** @type {"start" | "middle" | "end"} */ (text.anchor)];
  if (text.rotate === 0) return { left: x - before, top: y - high, right: x - before + long, bottom: y };
  return { left: x - high, top: y + before - long, right: x, bottom: y + before }; // read from the right
}

/** @param {Box} a @param {Box} b */
function overlap(a, b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
