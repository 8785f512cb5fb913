// @ts-check
// What lies over the painted sheet, as SVG: crisp at any zoom, and reachable by key.

/** @typedef {{k: number, x: number, y: number}} Transform */

export const PX_PER_MM = 96 / 25.4;
const SVG = "http://www.w3.org/2000/svg";

/**
 * @param {string} name
 * @param {Record<string, string | number>} attributes
 */
export function element(name, attributes = {}) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  return made;
}

/** Sets what is not so already: the browser lays out anew what is set, changed or not. @param {Element} node @param {Record<string, string | number>} attributes */
export function set(node, attributes) {
  for (const [name, value] of Object.entries(attributes)) {
    if (node.getAttribute(name) !== String(value)) node.setAttribute(name, String(value));
  }
}

/**
 * Sheet millimetres to CSS pixels.
 * @param {Transform} t
 * @param {number} x
 * @param {number} y
 */
export function onScreen(t, x, y) {
  return { x: x * PX_PER_MM * t.k + t.x, y: y * PX_PER_MM * t.k + t.y };
}
