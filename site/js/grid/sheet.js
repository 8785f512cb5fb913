// @ts-check
// The sheet of a grid: its head, and of its many rows those in sight.

import { write } from "../keyed.js";
import { nameHead, widthsOf } from "./heads.js";

const SPARE = 4; // rows made beyond each end of what is in sight

/**
 * @typedef {import("./moves.js").Place} Place
 * @typedef {import("./model.js").Model} Model
 */

/**
 * @param {HTMLElement} host that scrolls
 * @param {() => Model} shown
 * @param {ReturnType<typeof import("./selection.js").createSelection>} hand
 */
export function createSheet(host, shown, hand) {
  const make = (/** @type {string} */ role, /** @type {HTMLElement} */ parent) => {
    const part = document.createElement("div");
    part.setAttribute("role", role);
    return parent.appendChild(part);
  };
  const sheet = host.appendChild(document.createElement("div"));
  sheet.className = "cells";
  sheet.setAttribute("role", "presentation");
  const head = make("row", sheet);
  head.className = "head";
  head.setAttribute("aria-rowindex", "1");
  const body = make("rowgroup", sheet);
  body.className = "body";
  /** @type {Map<number, HTMLElement>} rows that are made, by place */ const made = new Map();
  let height = 0; // px of a row

  /** @param {number} row */
  function newRow(row) {
    const element = make("row", body);
    element.setAttribute("aria-rowindex", String(row + 2));
    make("rowheader", element).setAttribute("aria-colindex", "1");
    shown().columns.forEach((_, column) => {
      const cell = make("gridcell", element);
      cell.id = `${host.id}-${row}-${column}`;
      cell.setAttribute("aria-colindex", String(column + 2));
      cell.append(document.createElement("span"));
    });
    return element;
  }

  /** @param {HTMLElement} element @param {number} row */
  function fillRow(element, row) {
    const [title, ...cells] = /** @type {HTMLElement[]} */ ([...element.children]);
    const [model, at, { top, bottom, left, right }] = [shown(), hand.at, hand.block];
    element.style.transform = `translateY(${row * height}px)`;
    nameHead(title, model.rows[row]);
    const before = model.rows[row - 1]?.parts.slice(0, -1).join("\n");
    element.classList.toggle("again", row > 0 && before !== "" && before === model.rows[row].parts.slice(0, -1).join("\n"));
    cells.forEach((cell, column) => {
      const { key, shown, quiet = false, error } = model.cell(row, column);
      write(/** @type {HTMLElement} */ (cell.firstElementChild), shown);
      if (cell.dataset.key !== key) cell.dataset.key = key;
      cell.title = error || shown;
      fault(cell, error);
      if (key) cell.removeAttribute("aria-readonly");
      else cell.setAttribute("aria-readonly", "true");
      cell.classList.toggle("quiet", quiet);
      cell.classList.toggle("active", row === at.row && column === at.column);
      cell.setAttribute("aria-selected", String(row >= top && row <= bottom && column >= left && column <= right));
    });
  }

  /** What is wrong with a cell is read with it. @param {HTMLElement} cell @param {string} error */
  function fault(cell, error) {
    const there = cell.querySelector(".unseen");
    if (!error) {
      there?.remove();
      return cell.removeAttribute("aria-invalid");
    }
    const why = there ?? Object.assign(document.createElement("span"), { className: "unseen" });
    write(why, `. ${error}`);
    if (!there) cell.firstElementChild?.after(why);
    cell.setAttribute("aria-invalid", "true");
  }

  /** Makes and fills the rows in sight, and the one in hand wherever it is. */
  function fill() {
    if (!host.clientHeight) return;
    const { rows } = shown();
    const { at } = hand;
    height = body.clientWidth ? parseFloat(getComputedStyle(body).getPropertyValue("--row")) * parseFloat(getComputedStyle(document.documentElement).fontSize) : height;
    body.style.height = `${rows.length * height}px`;
    const first = Math.max(0, Math.floor(host.scrollTop / height) - SPARE);
    const end = Math.min(rows.length, Math.ceil((host.scrollTop + host.clientHeight) / height) + SPARE);
    const wanted = new Set(Array.from({ length: Math.max(0, end - first) }, (_, i) => first + i));
    if (rows[at.row]) wanted.add(at.row);
    for (const [row, element] of made) {
      if (wanted.has(row)) continue;
      element.remove();
      made.delete(row);
    }
    for (const row of [...wanted].sort((a, b) => a - b)) {
      const element = made.get(row) ?? newRow(row);
      made.set(row, element);
      fillRow(element, row);
    }
    if (rows[at.row]) host.setAttribute("aria-activedescendant", `${host.id}-${at.row}-${at.column}`);
    else host.removeAttribute("aria-activedescendant");
  }

  const inHand = () => {
    const cell = made.get(hand.at.row)?.children[hand.at.column + 1];
    return cell instanceof HTMLElement ? cell : null;
  };

  host.addEventListener("scroll", fill, { passive: true });
  new ResizeObserver(fill).observe(host);

  return {
    fill, inHand,
    /** Columns anew. */
    lay() {
      made.clear();
      body.replaceChildren();
      head.replaceChildren(make("columnheader", head), ...shown().columns.map(() => make("columnheader", head)));
      head.firstElementChild?.append(Object.assign(document.createElement("span"), { className: "unseen", textContent: host.dataset.names ?? "" }));
      [...head.children].forEach((cell, i) => cell.setAttribute("aria-colindex", String(i + 1)));
    },
    /** How many there are, what they are called, and how wide a column is. */
    measure() {
      const model = shown();
      host.setAttribute("aria-rowcount", String(model.rows.length + 1));
      host.setAttribute("aria-colcount", String(model.columns.length + 1));
      host.style.setProperty("--columns", widthsOf(model));
      model.columns.forEach((column, i) => nameHead(/** @type {HTMLElement} */ (head.children[i + 1]), column));
    },
    /** Scrolls to the cell in hand. */
    reveal() {
      const cell = inHand();
      if (!cell) return;
      const [top, names] = [hand.at.row * height, head.firstElementChild?.clientWidth ?? 0];
      const room = host.clientHeight - head.clientHeight;
      if (top < host.scrollTop) host.scrollTop = top;
      else if (top + height > host.scrollTop + room) host.scrollTop = top + height - room;
      if (cell.offsetLeft - names < host.scrollLeft) host.scrollLeft = cell.offsetLeft - names;
      else if (cell.offsetLeft + cell.offsetWidth > host.scrollLeft + host.clientWidth) host.scrollLeft = cell.offsetLeft + cell.offsetWidth - host.clientWidth;
      fill();
    },
    /** Rows that a page key moves by. */
    page: () => Math.max(1, Math.floor(host.clientHeight / height) - 2),
  };
}
