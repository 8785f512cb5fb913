// @ts-check
// A grid of cells that is worked with like a spreadsheet. It knows nothing of what the cells mean: its owner shows it a model, hears
// what was entered, and shows the model that comes of it. One stop for Tab; the cell in hand is told by aria-activedescendant, so that
// of many rows those in sight are made.

import { write } from "../keyed.js";
import { edit } from "./editor.js";
import { asked, moved } from "./moves.js";
import { fromTabbed, toTabbed } from "./tabbed.js";

const SPARE = 4; // rows made beyond each end of what is in sight
const MEASURED = 200; // rows that a column's width is taken from
const [NARROW, WIDE] = [8, 24]; // letters that a column has room for

/**
 * @typedef {import("./moves.js").Place} Place
 * @typedef {{key: string, text: string, shown: string, quiet?: boolean, error: string, choices: {id: string, text: string}[]}} Cell
 *   key: empty: there is nothing to enter; text: as entered; shown: in words; quiet: it is to be seen less than the others
 * @typedef {{key: string, parts: string[]}} Head  parts: of its name, the last is the thing
 * @typedef {{name: string, columns: Head[], rows: Head[], grows: boolean, cell: (row: number, column: number) => Cell}} Model
 *   grows: what is pasted below the last row makes more of them
 * @typedef {{row: number, column: number, key: string, text: string}} Change
 * @typedef {{
 *   enter: (changes: Change[], model: Model) => Promise<unknown>,
 *   act: (what: "add" | "copy" | "remove" | "undo" | "redo", at: Place) => void,
 *   focus: (at: Place) => void,
 * }} Act  enter: model: the one that the changes were made in
 */

/** @param {HTMLElement} host its data- attributes hold the words that it tells @param {Act} act */
export function createGrid(host, act) {
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
  const told = document.createElement("p");
  told.className = "unseen";
  told.setAttribute("role", "status");
  host.after(told);
  host.tabIndex = 0;
  host.setAttribute("role", "grid");
  host.setAttribute("aria-multiselectable", "true");

  /** @type {Model} */ let model = { name: "", columns: [], rows: [], grows: false, cell: () => ({ key: "", text: "", shown: "", error: "", choices: [] }) };
  /** @type {Map<number, HTMLElement>} rows that are made, by place */ const made = new Map();
  /** @type {Place} */ let at = { row: 0, column: 0 };
  /** @type {Place} where a block begins that reaches to the cell in hand */ let from = at;
  /** @type {{finish: () => void} | null} */ let editor = null;
  let height = 0; // px of a row

  const say = (/** @type {string} */ word, /** @type {Record<string, string | number>} */ values = {}) =>
    (told.textContent = Object.entries(values).reduce((text, [name, value]) => text.replace(`{${name}}`, String(value)), host.dataset[word] ?? word));
  const last = () => ({ row: Math.max(0, model.rows.length - 1), column: Math.max(0, model.columns.length - 1) });
  const waiting = (/** @type {number} */ more) => (host.dataset.waiting = String(Number(host.dataset.waiting ?? 0) + more));
  const called = (/** @type {Head | undefined} */ { parts } = { key: "", parts: [] }) => parts.join(", ");
  const block = () => ({
    top: Math.min(at.row, from.row), bottom: Math.max(at.row, from.row), left: Math.min(at.column, from.column), right: Math.max(at.column, from.column),
  });

  /** @param {HTMLElement} element @param {Head} of */
  function name(element, { parts }) {
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

  /** Columns anew. */
  function lay() {
    made.clear();
    body.replaceChildren();
    head.replaceChildren(make("columnheader", head), ...model.columns.map(() => make("columnheader", head)));
    head.firstElementChild?.append(Object.assign(document.createElement("span"), { className: "unseen", textContent: host.dataset.names ?? "" }));
    [...head.children].forEach((cell, i) => cell.setAttribute("aria-colindex", String(i + 1)));
  }

  /** How many there are, what they are called, and how wide a column is. */
  function measure() {
    host.setAttribute("aria-rowcount", String(model.rows.length + 1));
    host.setAttribute("aria-colcount", String(model.columns.length + 1));
    const longest = (/** @type {string[]} */ texts) => texts.reduce((most, text) => Math.max(most, text.length), 0);
    const rows = model.rows.slice(0, MEASURED);
    const widths = model.columns.map(({ parts }, column) => {
      const words = parts.flatMap((part) => part.split(/\s+/));
      return Math.max(NARROW, Math.min(WIDE, Math.max(longest(words), longest(parts) / 2, longest(rows.map((_, row) => model.cell(row, column).shown)))) + 2);
    });
    const first = Math.max(NARROW, longest(rows.map(({ parts }) => parts.join(" "))) + 1);
    host.style.setProperty("--columns", [`min(${first}ch, var(--names))`, ...widths.map((width) => `${width}ch`)].join(" "));
    model.columns.forEach((column, i) => name(/** @type {HTMLElement} */ (head.children[i + 1]), column));
  }

  /** @param {number} row */
  function newRow(row) {
    const element = make("row", body);
    element.setAttribute("aria-rowindex", String(row + 2));
    make("rowheader", element).setAttribute("aria-colindex", "1");
    model.columns.forEach((_, column) => {
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
    const { top, bottom, left, right } = block();
    element.style.transform = `translateY(${row * height}px)`;
    name(title, model.rows[row]);
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
    height = body.clientWidth ? parseFloat(getComputedStyle(body).getPropertyValue("--row")) * parseFloat(getComputedStyle(document.documentElement).fontSize) : height;
    body.style.height = `${model.rows.length * height}px`;
    const first = Math.max(0, Math.floor(host.scrollTop / height) - SPARE);
    const end = Math.min(model.rows.length, Math.ceil((host.scrollTop + host.clientHeight) / height) + SPARE);
    const wanted = new Set(Array.from({ length: Math.max(0, end - first) }, (_, i) => first + i));
    if (model.rows[at.row]) wanted.add(at.row);
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
    if (model.rows[at.row]) host.setAttribute("aria-activedescendant", `${host.id}-${at.row}-${at.column}`);
    else host.removeAttribute("aria-activedescendant");
  }

  /** @param {Place} to @param {boolean} [further] the block reaches there */
  function go(to, further = false) {
    const { row, column } = last();
    at = { row: Math.max(0, Math.min(row, to.row)), column: Math.max(0, Math.min(column, to.column)) };
    if (!further) from = at;
    fill();
    reveal();
    const { top, bottom, left, right } = block();
    if (further) say("block", { rows: bottom - top + 1, columns: right - left + 1 });
    act.focus(at);
  }

  function reveal() {
    const cell = made.get(at.row)?.children[at.column + 1];
    if (!(cell instanceof HTMLElement)) return;
    const [top, names] = [at.row * height, head.firstElementChild?.clientWidth ?? 0];
    const room = host.clientHeight - head.clientHeight;
    if (top < host.scrollTop) host.scrollTop = top;
    else if (top + height > host.scrollTop + room) host.scrollTop = top + height - room;
    if (cell.offsetLeft - names < host.scrollLeft) host.scrollLeft = cell.offsetLeft - names;
    else if (cell.offsetLeft + cell.offsetWidth > host.scrollLeft + host.clientWidth) host.scrollLeft = cell.offsetLeft + cell.offsetWidth - host.clientWidth;
    fill();
  }

  /** @param {Change[]} changes @param {Model} [in_] @param {string} [word] that tells how many */
  async function enter(changes, in_ = model, word = "") {
    if (!changes.length) return;
    if (word) say(word, { count: changes.length });
    waiting(1);
    await act.enter(changes, in_).finally(() => waiting(-1));
    const wrong = changes.map(({ row, column }) => ({ row, column, cell: model.rows[row] && model.columns[column] ? model.cell(row, column) : null })).filter(({ cell }) => cell?.error);
    const [one] = wrong;
    if (one?.cell) say("refused", { count: wrong.length, cell: `${called(model.rows[one.row])}, ${called(model.columns[one.column])}`, why: one.cell.error });
  }

  /** @param {string | null} typed what the edit begins with; null: what is there */
  function begin(typed) {
    const [cell, element, where, in_] = [model.cell(at.row, at.column), made.get(at.row)?.children[at.column + 1], at, model];
    if (!cell.key || !(element instanceof HTMLElement)) return;
    editor = edit(element, { text: typed ?? cell.text, label: `${called(model.rows[at.row])}, ${called(model.columns[at.column])}`, choices: cell.choices, typed: typed !== null }, {
      done(text, { rows, columns }) {
        editor = null;
        if (!Number.isNaN(rows)) {
          host.focus({ preventScroll: true });
          go({ row: at.row + rows, column: at.column + columns });
        }
        if (text !== cell.text || cell.error) enter([{ ...where, key: cell.key, text }], in_);
      },
      left() {
        editor = null;
        host.focus({ preventScroll: true });
      },
    });
  }

  /** The cells of the block. @returns {(Place & Cell)[][]} */
  function inBlock() {
    const { top, bottom, left, right } = block();
    return Array.from({ length: bottom - top + 1 }, (_, r) =>
      Array.from({ length: right - left + 1 }, (_, c) => ({ row: top + r, column: left + c, ...model.cell(top + r, left + c) })),
    );
  }

  /** Of a block as many texts as it has cells, or of one cell the same in all. @param {string[][]} texts */
  function paste(texts) {
    const { top, left } = block();
    const one = texts.length === 1 && texts[0].length === 1;
    const cells = one ? inBlock().flat().map((cell) => ({ ...cell, text: texts[0][0] })) : texts.flatMap((line, r) => line.map((text, c) => ({ row: top + r, column: left + c, text })));
    const room = cells.filter(({ row, column }) => column < model.columns.length && (row < model.rows.length || model.grows));
    const changes = room.map(({ row, column, text }) => ({ row, column, text, key: row < model.rows.length ? model.cell(row, column).key : "" })).filter(({ row, key }) => key || row >= model.rows.length);
    if (!one && texts[0]) {
      from = { row: top, column: left };
      go({ row: top + texts.length - 1, column: left + Math.max(...texts.map((line) => line.length)) - 1 }, true);
    }
    enter(changes, model, "pasted");
    if (changes.length < cells.length) say("noRoom", { count: cells.length - changes.length });
  }

  const clear = () => enter(inBlock().flat().filter(({ key, text }) => key && text).map(({ row, column, key }) => ({ row, column, key, text: "" })), model, "cleared");

  host.addEventListener("scroll", fill, { passive: true });
  host.addEventListener("keydown", (event) => {
    if (!model.rows.length) return;
    const to = moved(event, at, last(), Math.max(1, Math.floor(host.clientHeight / height) - 2));
    const what = asked(event);
    const { choices, text } = model.cell(at.row, at.column);
    if (to) go(to, event.shiftKey);
    else if (what === "edit") begin(null);
    else if (what === "clear") clear();
    else if (what === "all") {
      from = { row: 0, column: 0 };
      go(last(), true);
    } else if (what) act.act(what, at);
    else if (event.key === "Escape" && (from.row !== at.row || from.column !== at.column)) go(at);
    else if (event.key === " " && choices.length === 2) enter([{ ...at, key: model.cell(at.row, at.column).key, text: (choices.find(({ id }) => id !== text) ?? choices[0]).id }]);
    else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey) {
      begin(""); // the letter goes into what has the focus now, as do those of a script that composes them
      return event.stopPropagation();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  });
  for (const name of ["copy", "cut"]) {
    host.addEventListener(name, (event) => {
      const cells = inBlock();
      /** @type {ClipboardEvent} */ (event).clipboardData?.setData("text/plain", toTabbed(cells.map((row) => row.map(({ shown }) => shown))));
      event.preventDefault();
      say("copied", { count: cells.flat().length });
      if (name === "cut") clear();
    });
  }
  host.addEventListener("paste", (event) => {
    const text = event.clipboardData?.getData("text/plain");
    event.preventDefault();
    if (text) paste(fromTabbed(text));
  });

  /** @param {Event} event @returns {Place | null} */
  function pointedAt(event) {
    const cell = event.target instanceof Element && event.target.closest('[role="gridcell"]');
    if (!cell) return null;
    const [row, column] = cell.id.slice(host.id.length + 1).split("-").map(Number);
    return { row, column };
  }
  host.addEventListener("pointerdown", (event) => {
    const to = pointedAt(event);
    if (!to || event.button) return;
    const again = to.row === at.row && to.column === at.column && document.activeElement === host;
    editor?.finish();
    host.focus({ preventScroll: true });
    go(to, event.shiftKey);
    if (again && event.pointerType !== "mouse") begin(null);
    event.preventDefault(); // the focus stays where it was put
  });
  host.addEventListener("pointerover", (event) => {
    const to = event.pointerType === "mouse" && event.buttons === 1 && !editor && pointedAt(event);
    if (to) go(to, true);
  });
  host.addEventListener("dblclick", (event) => pointedAt(event) && begin(null));
  new ResizeObserver(fill).observe(host);

  return {
    /** @param {Model} next */
    show(next) {
      const other = next.name !== model.name;
      const columns = other || next.columns.length !== model.columns.length;
      const counts = columns || next.rows.length !== model.rows.length;
      if (columns) editor?.finish();
      model = next;
      if (columns) lay();
      measure();
      if (other) host.scrollTop = host.scrollLeft = 0;
      if (counts) {
        at = other ? { row: 0, column: 0 } : { row: Math.min(at.row, last().row), column: Math.min(at.column, last().column) };
        from = at;
        say("counts", { rows: model.rows.length, columns: model.columns.length });
      }
      fill();
    },
    /** The cell in hand. @returns {Place} */
    get at() {
      return at;
    },
    /** @param {Place} to */
    go: (to) => go(to),
    focus: () => host.focus({ preventScroll: true }),
    /** What is being edited is handed over. */
    finish: () => editor?.finish(),
    say,
  };
}
