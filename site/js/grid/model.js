// @ts-check
// What a grid is shown: heads, and a cell for each place when it is asked for.

/**
 * @typedef {import("./moves.js").Place} Place
 * @typedef {{key: string, text: string, shown: string, quiet?: boolean, long?: boolean, error: string, choices: {id: string, text: string}[]}} Cell
 *   key: empty: there is nothing to enter; text: as entered; shown: in words; quiet: it is to be seen less than the others; long: it may take
 *   several lines
 * @typedef {{key: string, parts: string[]}} Head  parts: of its name, the last is the thing
 * @typedef {{name: string, columns: Head[], rows: Head[], grows: boolean, cell: (row: number, column: number) => Cell}} Model
 *   grows: what is pasted below the last row makes more of them
 * @typedef {{row: number, column: number, key: string, text: string}} Change
 * @typedef {{top: number, bottom: number, left: number, right: number}} Block  all within
 */

/** @type {Model} */
export const EMPTY = { name: "", columns: [], rows: [], grows: false, cell: () => ({ key: "", text: "", shown: "", error: "", choices: [] }) };

/** @param {Model} model @returns {Place} */
export const lastOf = ({ rows, columns }) => ({ row: Math.max(0, rows.length - 1), column: Math.max(0, columns.length - 1) });

/** What a cell is called. @param {Model} model @param {Place} at */
export const called = ({ rows, columns }, { row, column }) => [...(rows[row]?.parts ?? []), ...(columns[column]?.parts ?? [])].join(", ");

/** The cells of a block, row by row. @param {Model} model @param {Block} block @returns {(Place & Cell)[][]} */
export function cellsIn(model, { top, bottom, left, right }) {
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (_, c) => ({ row: top + r, column: left + c, ...model.cell(top + r, left + c) })),
  );
}
