// @ts-check
// Formulas come as text with an index after an underscore, A_side or I_{2/3}, and a power after a roof, r^1.5.

const part = /([_^])(?:\{([^}]*)\}|([\p{L}\p{Nd}.]*[\p{L}\p{Nd}]))/gu;

/**
 * @param {Element} element
 * @param {string} text
 */
export function setFormula(element, text) {
  /** @type {(string | Element)[]} */
  const pieces = [];
  let from = 0;
  for (const found of text.matchAll(part)) {
    const piece = document.createElement(found[1] === "_" ? "sub" : "sup");
    piece.textContent = found[2] ?? found[3];
    pieces.push(text.slice(from, found.index), piece);
    from = found.index + found[0].length;
  }
  element.replaceChildren(...pieces, text.slice(from));
}
