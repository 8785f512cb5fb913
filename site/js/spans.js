// @ts-check
// The bare spans: a list that grows and shrinks.

import { asideable, typed } from "./form.js";
import { write } from "./keyed.js";

/** @typedef {"centre" | "width"} Part */
const PARTS = /** @type {const} */ (["centre", "width"]);

const template = /** @type {HTMLTemplateElement} */ (document.getElementById("span-template"));

/**
 * @param {HTMLElement} root
 * @param {{enter: (index: number, part: string) => void, live: (index: number, part: string, text: string) => void, commit: (index: number, part: string, text: string) => void,
 *   remove: (index: number) => void}} change
 */
export function createSpans(root, change) {
  /** @type {ReturnType<typeof make>[]} */
  const rows = [];

  return {
    /** @param {import("./api.js").FormSpan[]} spans */
    show(spans) {
      for (const row of rows.splice(spans.length)) row.root.remove();
      while (rows.length < spans.length) {
        const row = make(rows.length, change);
        rows.push(row);
        root.append(row.root);
      }
      spans.forEach((span, index) => {
        write(rows[index].number, span.number);
        for (const part of PARTS) rows[index].entries[part].show(span[part]);
      });
    },
    /** @param {import("./form.js").Asides} asides */
    aside(asides) {
      rows.forEach(({ entries }, index) => {
        for (const part of PARTS) entries[part].aside(asides.get(`span ${index} ${part}`));
      });
    },
  };
}

/**
 * The one entry that puts so many bare spans in place of all. It is empty once it is done; what it would do by itself stands in it in grey.
 * @param {HTMLInputElement} input
 * @param {HTMLElement} error
 * @param {HTMLElement} press
 * @param {(text: string) => void} commit
 */
export function createEvenSpans(input, error, press, commit) {
  const entry = asideable(input, error);
  typed(input, { live: () => {}, commit });
  press.addEventListener("click", () => commit(input.value || input.placeholder));
  return {
    /** @param {string} sensible */
    show(sensible) {
      entry.show("", "");
      if (input.placeholder !== sensible) input.placeholder = sensible;
    },
    aside: entry.aside,
  };
}

/**
 * @param {number} index
 * @param {Parameters<typeof createSpans>[1]} change
 */
function make(index, change) {
  const span = /** @type {HTMLElement} */ (/** @type {Element} */ (template.content.firstElementChild).cloneNode(true));
  const find = (/** @type {string} */ selector) => /** @type {any} */ (span.querySelector(selector));
  find(".remove").dataset.testid = `span-${index}-remove`;
  find(".remove").addEventListener("click", () => change.remove(index));
  const entries = /** @type {Record<Part, {show: (entry: import("./api.js").SpanEntry) => void, aside: ReturnType<typeof asideable>["aside"]}>} */ ({});
  for (const part of PARTS) {
    const input = find(`input[data-part=${part}]`);
    const error = find(`p[data-part=${part}]`);
    input.dataset.testid = `span-${index}-${part}`;
    error.id = `span-${index}-${part}-error`;
    input.setAttribute("aria-describedby", error.id);
    typed(input, {
      enter: () => change.enter(index, part),
      live: (text) => change.live(index, part, text),
      commit: (text) => change.commit(index, part, text),
    });
    const { show, aside } = asideable(input, error, (text) => change.commit(index, part, text));
    entries[part] = {
      aside,
      show(entry) {
        show(entry.text, entry.error);
        if (input.title !== entry.typed) input.title = entry.typed;
      },
    };
  }
  return { root: span, number: find(".number"), entries };
}
