// @ts-check
// A table as a workbook; the library comes with the first one that is wanted.

import writeXlsxFile from "write-excel-file/browser";

/** @param {import("../api.js").EnquiryTable} table @returns {Promise<Blob>} */
export function workbookOf({ heads, cells, rows }) {
  const made = cells.map(({ text, number }) => (number !== undefined ? { value: number, type: Number } : text ? { value: text, type: String } : null));
  const sheet = [heads.map((value) => ({ value, type: String, fontWeight: /** @type {const} */ ("bold") })), ...rows.map((row) => row.map((at) => made[at]))];
  return writeXlsxFile(sheet, { stickyRowsCount: 1, stickyColumnsCount: 1 }).toBlob();
}
