// @ts-check
// The names of a grid's columns and rows, and how wide its columns are.

const MEASURED = 200; // rows that a column's width is taken from
const [NARROW, WIDE] = [8, 30]; // letters that a column has room for

/** @typedef {import("./model.js").Model} Model */

/** @param {HTMLElement} element @param {import("./model.js").Head} of */
export function nameHead(element, { parts }) {
  const whole = parts.slice(0, -1);
  if (element.dataset.name === parts.join("\n")) return;
  element.dataset.name = parts.join("\n");
  element.title = parts.join(", ");
  const spans = [...whole.map((text) => [text, "of"]), [parts[parts.length - 1] ?? "", ""]].map(([text, kind]) => {
    const span = document.createElement("span");
    span.textContent = text;
    span.className = kind;
    return span;
  });
  element.replaceChildren(...spans.flatMap((span, i) => (i ? [" ", span] : [span])));
}

/** The columns of a sheet, in CSS. @param {Model} model */
export function widthsOf(model) {
  const longest = (/** @type {string[]} */ texts) => texts.reduce((most, text) => Math.max(most, text.length), 0);
  const rows = model.rows.slice(0, MEASURED);
  const widths = model.columns.map(({ parts }, column) => {
    const words = parts.flatMap((part) => part.split(/\s+/));
    return Math.max(NARROW, Math.min(WIDE, Math.max(longest(words), longest(parts) / 2, longest(rows.map((_, row) => model.cell(row, column).shown)))) + 2);
  });
  const first = Math.max(NARROW, longest(rows.map(({ parts }) => parts.join(" "))) + 3);
  return [`min(${first}ch, var(--names))`, ...widths.map((width) => `calc(${width}ch + 0.75rem)`)].join(" ");
}
