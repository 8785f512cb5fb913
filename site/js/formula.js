// @ts-check
// Formulas come as text with an index after an underscore and an exponent after a caret: A_side, I_{2/3}, Re^0.6.

const raised = /([_^])(?:\{([^}]*)\}|\(([^)]*)\)|([−-]?[\p{L}\p{N}]+(?:[.,٫]\p{N}+)*))/u;

/**
 * @param {Element} element
 * @param {string} text
 */
export function setFormula(element, text) {
  element.replaceChildren(
    ...text.split(/([_^](?:\{[^}]*\}|\([^)]*\)|[−-]?[\p{L}\p{N}]+(?:[.,٫]\p{N}+)*))/u).map((part) => {
      const found = raised.exec(part);
      if (!found) return part;
      const index = document.createElement(found[1] === "_" ? "sub" : "sup");
      index.textContent = found[2] ?? found[3] ?? found[4];
      return index;
    }),
  );
}
