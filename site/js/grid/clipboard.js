// @ts-check
// Cells to the clipboard and from it, as spreadsheets do it.

import { cellsIn } from "./model.js";
import { fromTabbed, toTabbed } from "./tabbed.js";

/**
 * @typedef {import("./model.js").Model} Model
 * @typedef {import("./model.js").Block} Block
 * @typedef {import("./model.js").Change} Change
 */

/**
 * What texts change that are pasted onto a block: as many cells as there are texts, from its corner on, or all of it where there is one.
 * @param {Model} model
 * @param {Block} block
 * @param {string[][]} texts
 * @returns {{changes: Change[], lost: number, end: import("./moves.js").Place | null}}
 *   lost: how many had no room; end: the last cell of what was pasted onto, null: the block itself
 */
export function pasted(model, block, texts) {
  const { top, left } = block;
  const one = texts.length === 1 && texts[0].length === 1;
  const cells = one ? cellsIn(model, block).flat().map(({ row, column }) => ({ row, column, text: texts[0][0] })) : texts.flatMap((line, r) => line.map((text, c) => ({ row: top + r, column: left + c, text })));
  const room = cells.filter(({ row, column }) => column < model.columns.length && (row < model.rows.length || model.grows));
  const changes = room.map((cell) => ({ ...cell, key: cell.row < model.rows.length ? model.cell(cell.row, cell.column).key : "" })).filter(({ row, key }) => key || row >= model.rows.length);
  return { changes, lost: cells.length - changes.length, end: one ? null : { row: top + texts.length - 1, column: left + Math.max(...texts.map((line) => line.length)) - 1 } };
}

/** @param {Model} model @param {Block} block @returns {Change[]} that put what its first row says into all of it */
export function filled(model, block) {
  const [first, ...others] = cellsIn(model, block);
  return others.flatMap((row) => row.map((cell, column) => ({ ...cell, text: first[column].text, was: cell.text })).filter(({ key, text, was }) => key && text !== was));
}

/** @param {Model} model @param {Block} block @returns {Change[]} that leave nothing in it */
export const cleared = (model, block) => cellsIn(model, block).flat().filter(({ key, text }) => key && text).map(({ row, column, key }) => ({ row, column, key, text: "" }));

/**
 * @param {HTMLElement} host
 * @param {{cells: () => import("./model.js").Cell[][], copied: (count: number) => void, clear: () => void, paste: (texts: string[][]) => void}} act
 */
export function listenToClipboard(host, { cells, copied, clear, paste }) {
  for (const name of ["copy", "cut"]) {
    host.addEventListener(name, (event) => {
      const block = cells();
      /** @type {ClipboardEvent} */ (event).clipboardData?.setData("text/plain", toTabbed(block.map((row) => row.map(({ shown }) => shown))));
      event.preventDefault();
      copied(block.flat().length);
      if (name === "cut") clear();
    });
  }
  host.addEventListener("paste", (event) => {
    const text = event.clipboardData?.getData("text/plain");
    event.preventDefault();
    if (text) paste(fromTabbed(text));
  });
}
