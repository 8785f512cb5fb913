// @ts-check
// Formulas come as text with an index after an underscore: A_side, I_{2/3}.

const index = /_(?:\{([^}]*)\}|([\p{L}\p{N}]+))/u;

/**
 * @param {Element} element
 * @param {string} text
 */
export function setFormula(element, text) {
  element.replaceChildren(
    ...text.split(/(_(?:\{[^}]*\}|[\p{L}\p{N}]+))/u).map((part) => {
      const found = index.exec(part);
      if (!found) return part;
      const sub = document.createElement("sub");
      sub.textContent = found[1] ?? found[2];
      return sub;
    }),
  );
}
