// @ts-check
// A grid of cells that is worked with like a spreadsheet. It knows nothing of what the cells mean: its owner shows it a model, hears
// what was entered, and shows the model that comes of it. One stop for Tab; the cell in hand is told by aria-activedescendant, so that
// of many rows those in sight are made.

import { cleared, filled, listenToClipboard, pasted } from "./clipboard.js";
import { edit } from "./editor.js";
import { listenToKeys } from "./keyboard.js";
import { called, cellsIn, EMPTY, lastOf } from "./model.js";
import { listenToPointer } from "./pointer.js";
import { createSelection } from "./selection.js";
import { createSheet } from "./sheet.js";
import { createTeller } from "./teller.js";

/**
 * @typedef {import("./moves.js").Place} Place
 * @typedef {import("./model.js").Model} Model
 * @typedef {import("./model.js").Change} Change
 * @typedef {{
 *   enter: (changes: Change[], model: Model) => Promise<unknown>,
 *   act: (what: import("./keyboard.js").Asked, at: Place) => void,
 *   focus: (at: Place) => void,
 * }} Act  enter: model: the one that the changes were made in
 */

/** @param {HTMLElement} host its data- attributes hold the words that it tells @param {Act} act */
export function createGrid(host, act) {
  host.tabIndex = 0;
  host.setAttribute("role", "grid");
  host.setAttribute("aria-multiselectable", "true");
  /** @type {Model} */ let model = EMPTY;
  /** @type {{finish: () => void} | null} */ let editor = null;
  const hand = createSelection();
  const say = createTeller(host);
  const sheet = createSheet(host, () => model, hand);
  const waiting = (/** @type {number} */ more) => (host.dataset.waiting = String(Number(host.dataset.waiting ?? 0) + more));

  /** @param {Place} to @param {boolean} [further] the block reaches there */
  function go(to, further = false) {
    hand.go(to, lastOf(model), further);
    sheet.fill();
    sheet.reveal();
    const { top, bottom, left, right } = hand.block;
    if (further) say("block", { rows: bottom - top + 1, columns: right - left + 1 });
    act.focus(hand.at);
  }

  /** @param {Change[]} changes @param {Model} [in_] @param {string} [word] that tells how many */
  async function enter(changes, in_ = model, word = "") {
    if (!changes.length) return;
    if (word) say(word, { count: changes.length });
    waiting(1);
    await act.enter(changes, in_).finally(() => waiting(-1));
    const wrong = changes.map(({ row, column }) => ({ row, column, why: model.rows[row] && model.columns[column] ? model.cell(row, column).error : "" })).filter(({ why }) => why);
    if (wrong.length) say("refused", { count: wrong.length, cell: called(model, wrong[0]), why: wrong[0].why });
  }

  /** @param {string | null} typed what the edit begins with; null: what is there */
  function begin(typed) {
    const [{ at }, in_, element] = [hand, model, sheet.inHand()];
    const cell = model.cell(at.row, at.column);
    if (!cell.key && typed === null) return act.act("press", at);
    if (!cell.key || !element) return;
    editor = edit(element, { ...cell, text: typed ?? cell.text, label: called(model, at), typed: typed !== null }, {
      done(text, { rows, columns }) {
        editor = null;
        if (!Number.isNaN(rows)) {
          host.focus({ preventScroll: true });
          go({ row: hand.at.row + rows, column: hand.at.column + columns });
        }
        if (text !== cell.text || cell.error) enter([{ ...at, key: cell.key, text }], in_);
      },
      left() {
        editor = null;
        host.focus({ preventScroll: true });
      },
    });
  }

  /** @param {string[][]} texts */
  function paste(texts) {
    const { block } = hand;
    const { changes, lost, end } = pasted(model, block, texts);
    if (end) {
      hand.beginAt({ row: block.top, column: block.left });
      go(end, true);
    }
    enter(changes, model, "pasted");
    if (lost) say("noRoom", { count: lost });
  }

  const clear = () => enter(cleared(model, hand.block), model, "cleared");

  listenToKeys(host, () => model, hand, {
    go, begin, clear,
    fill: () => enter(filled(model, hand.block), model, "pasted"),
    page: sheet.page,
    all() {
      hand.beginAt({ row: 0, column: 0 });
      go(lastOf(model), true);
    },
    other: (text) => enter([{ ...hand.at, key: model.cell(hand.at.row, hand.at.column).key, text }]),
    act: (what) => act.act(what, hand.at),
  });
  listenToClipboard(host, { cells: () => cellsIn(model, hand.block), copied: (count) => say("copied", { count }), clear, paste });
  listenToPointer(host, hand, { go, begin: () => begin(null), finish: () => editor?.finish(), editing: () => editor !== null });

  return {
    /** @param {Model} next */
    show(next) {
      const other = next.name !== model.name;
      const columns = other || next.columns.length !== model.columns.length;
      const counts = columns || next.rows.length !== model.rows.length;
      if (columns) editor?.finish();
      model = next;
      if (columns) sheet.lay();
      sheet.measure();
      if (other) host.scrollTop = host.scrollLeft = 0;
      if (counts) {
        hand.go(other ? { row: 0, column: 0 } : hand.at, lastOf(model), false);
        say("counts", { rows: model.rows.length, columns: model.columns.length });
      }
      sheet.fill();
    },
    /** The cell in hand. @returns {Place} */
    get at() {
      return hand.at;
    },
    /** @param {Place} to */
    go: (to) => go(to),
    focus: () => host.focus({ preventScroll: true }),
    /** What is being edited is handed over. */
    finish: () => editor?.finish(),
    say,
  };
}
