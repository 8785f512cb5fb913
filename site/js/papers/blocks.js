// @ts-check
// Lays a paper out: the blocks that core makes, one form after the other, as a sheet that prints.

import { setFormula } from "../formula.js";
import { codeOf } from "./code.js";

/**
 * @typedef {import("../api.js").Paper} Paper
 * @typedef {import("../api.js").Block} Block
 * @typedef {import("../api.js").Pair} Pair
 * @typedef {import("../api.js").Table} Table
 */

/** @param {string} name @param {string} [text] @param {string} [of] its class @returns {HTMLElement} */
function made(name, text = "", of = "") {
  const element = document.createElement(name);
  if (text) element.textContent = text;
  if (of) element.className = of;
  return element;
}

const FEW = 10; // rows that stand on one sheet
const SHORT = 10; // letters that stand on one line: a mark is not broken at its dash

/** @param {Pair[]} list @param {string} of */
function pairs(list, of) {
  const box = made("dl", "", of);
  for (const { label, value, note, figure } of list) {
    const one = made("div");
    if (figure) one.dataset.tells = figure;
    one.append(made("dt", label), made("dd", value));
    if (note) one.append(made("dd", note, "note"));
    box.append(one);
  }
  return box;
}

/** @param {Block} block */
function table({ text, table }) {
  const { columns, rows, sum } = /** @type {Table} */ (table);
  const box = /** @type {HTMLTableElement} */ (made("table"));
  if (text) box.append(made("caption", text));
  const heads = box.createTHead().insertRow();
  for (const { label, number, open } of columns) {
    const head = made("th", label, [number && "number", open && "open"].filter(Boolean).join(" "));
    head.setAttribute("scope", "col");
    heads.append(head);
  }
  const body = box.createTBody();
  for (const row of rows) {
    const line = body.insertRow();
    row.forEach((cell, i) => {
      const { number, open, formula } = columns[i];
      const one = made(i ? "td" : "th", formula ? "" : cell, [number && "number", open && "open", cell && cell.length <= SHORT && "short"].filter(Boolean).join(" "));
      if (formula) setFormula(one, cell);
      line.append(one);
    });
    line.cells[0].setAttribute("scope", "row");
  }
  if (rows.length <= FEW) box.classList.add("few");
  if (sum) body.lastElementChild?.classList.add("sum");
  return box;
}

/** @param {Block} block */
function drawing({ drawing }) {
  const { svg = "", text = "" } = drawing ?? {};
  const box = made("figure");
  if (svg) box.append(new DOMParser().parseFromString(svg, "image/svg+xml").documentElement);
  if (text) box.append(made("figcaption", text));
  return box;
}

/** @param {Block} block */
function lines({ text, lines = [] }, /** @type {string} */ of) {
  const box = made("div", "", of);
  for (const line of text ? [text, ...lines] : lines) box.append(made("p", line));
  return box;
}

/** @type {Record<string, (block: Block) => HTMLElement>} */
const forms = {
  heading: ({ text }) => made("h3", text),
  text: (block) => lines(block, "text"),
  caution: (block) => lines(block, "caution"),
  pairs: ({ pairs: list = [] }) => pairs(list, "pairs"),
  blanks: ({ pairs: list = [] }) => pairs(list, "blanks"),
  hold: (block) => lines(block, "hold"),
  table,
  drawing,
  code({ text = "" }) {
    const box = made("figure", "", "code");
    box.append(codeOf(text));
    return box;
  },
  new_sheet: () => made("div", "", "new-sheet"),
};

/** @param {HTMLElement} root @param {Paper} paper */
export function layOut(root, { kind, title, status, across, head, blocks }) {
  const top = made("header");
  top.append(made("h2", title), made("p", status, "status-word"), pairs(head, "head-of"));
  const parts = [top];
  let part = made("section");
  for (const block of blocks) {
    if (block.form === "heading") part = made("section"); // a head stays with what it is of
    if (!part.parentNode && !parts.includes(part)) parts.push(part);
    part.append(forms[block.form](block));
  }
  if (across) parts.push(made("p", across, "across"));
  root.dataset.kind = kind;
  root.replaceChildren(...parts);
}
