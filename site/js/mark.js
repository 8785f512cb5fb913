// @ts-check
// Good, watch and no: a shape and a word.

/**
 * @param {Element} element with an svg use and a .word
 * @param {string} state
 * @param {string} word
 */
export function setMark(element, state, word) {
  const plain = state === "none" || !word;
  element.toggleAttribute("hidden", plain);
  element.setAttribute("data-state", state);
  if (plain) return;
  element.querySelector("use")?.setAttribute("href", `#mark-${state}`);
  const place = element.querySelector(".word");
  if (place && place.textContent !== word) place.textContent = word;
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
