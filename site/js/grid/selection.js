// @ts-check
// The cell in hand, and the block that reaches from it to where it was begun.

/** @typedef {import("./moves.js").Place} Place */

export function createSelection() {
  /** @type {Place} */ let at = { row: 0, column: 0 };
  /** @type {Place} where the block begins */ let from = at;

  /** @param {Place} place @param {Place} last @returns {Place} the nearest that there is */
  const within = ({ row, column }, last) => ({ row: Math.max(0, Math.min(last.row, row)), column: Math.max(0, Math.min(last.column, column)) });

  return {
    get at() {
      return at;
    },
    /** Whether the block is more than the cell in hand. */
    get reaches() {
      return from.row !== at.row || from.column !== at.column;
    },
    /** @returns {import("./model.js").Block} */
    get block() {
      return { top: Math.min(at.row, from.row), bottom: Math.max(at.row, from.row), left: Math.min(at.column, from.column), right: Math.max(at.column, from.column) };
    },
    /** @param {Place} to @param {Place} last the last cell @param {boolean} further the block reaches there */
    go(to, last, further) {
      at = within(to, last);
      if (!further) from = at;
    },
    /** @param {Place} place */
    beginAt: (place) => (from = place),
  };
}
