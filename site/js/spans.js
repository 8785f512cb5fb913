// @ts-check
// The bare spans: a list that grows and shrinks.

import { put, setError, typed } from "./form.js";

const template = /** @type {HTMLTemplateElement} */ (document.getElementById("span-template"));

/**
 * @param {HTMLElement} root
 * @param {{live: (index: number, part: string, text: string) => void, commit: (index: number, part: string, text: string) => void,
 *   remove: (index: number) => void}} change
 */
export function createSpans(root, change) {
  return {
    /** @param {{centre: {text: string, error: string}, width: {text: string, error: string}}[]} spans */
    show(spans) {
      while (root.children.length > spans.length) root.lastElementChild?.remove();
      while (root.children.length < spans.length) root.append(make(root.children.length, change));
      spans.forEach((span, index) => {
        for (const part of /** @type {const} */ (["centre", "width"])) {
          const find = (/** @type {string} */ kind) => /** @type {any} */ (root.children[index].querySelector(`${kind}[data-part=${part}]`));
          put(find("input"), span[part].text);
          setError(find("input"), find("p"), span[part].error);
        }
      });
    },
  };
}

/**
 * @param {number} index
 * @param {Parameters<typeof createSpans>[1]} change
 */
function make(index, change) {
  const span = /** @type {HTMLElement} */ (/** @type {Element} */ (template.content.firstElementChild).cloneNode(true));
  const find = (/** @type {string} */ selector) => /** @type {any} */ (span.querySelector(selector));
  find(".number").textContent = index + 1;
  find(".remove").dataset.testid = `span-${index}-remove`;
  find(".remove").addEventListener("click", () => change.remove(index));
  for (const part of ["centre", "width"]) {
    const input = find(`input[data-part=${part}]`);
    const error = find(`p[data-part=${part}]`);
    input.dataset.testid = `span-${index}-${part}`;
    error.id = `span-${index}-${part}-error`;
    input.setAttribute("aria-describedby", error.id);
    typed(input, (text) => change.live(index, part, text), (text) => change.commit(index, part, text));
  }
  return span;
}
