// @ts-check
// Good, watch and no: a shape and a word.

import { write } from "./keyed.js";

/**
 * @param {Element} element with an svg use and a .word
 * @param {string} state
 * @param {string} word
 */
export function setMark(element, state, word) {
  const plain = state === "none" || !word;
  if (element.hasAttribute("hidden") !== plain) element.toggleAttribute("hidden", plain);
  if (element.getAttribute("data-state") !== state) element.setAttribute("data-state", state);
  if (plain) return;
  const [use, place] = [element.querySelector("use"), element.querySelector(".word")];
  const href = `#mark-${state}`;
  if (use && use.getAttribute("href") !== href) use.setAttribute("href", href); // what it uses is copied each time
  if (place) write(place, word);
}

/**
 * A new mark, for lists.
 * @param {string} state
 * @param {string} word
 */
export function newMark(state, word) {
  const template = /** @type {HTMLTemplateElement} */ (document.getElementById("figure-template"));
  const mark = /** @type {Element} */ (template.content.querySelector(".state")?.cloneNode(true));
  setMark(mark, state, word);
  return mark;
}
