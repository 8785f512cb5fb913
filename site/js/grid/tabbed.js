// @ts-check
// Cells as text with tabs between them and a line a row, as spreadsheets copy and paste them: what holds a tab, a line's end or a
// quote stands in quotes, with its quotes doubled.

/** @param {string[][]} rows */
export const toTabbed = (rows) => rows.map((cells) => cells.map((text) => (/[\t\n\r"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)).join("\t")).join("\n");

/** @param {string} text @returns {string[][]} */
export function fromTabbed(text) {
  const [part, rows] = [/("(?:[^"]|"")*"(?=[\t\r\n]|$)|[^\t\r\n]*)(\t|\r\n|\r|\n|$)/y, /** @type {string[][]} */ ([[]])];
  for (let match = part.exec(text); match; match = part.exec(text)) {
    const [, cell, end] = match;
    rows[rows.length - 1].push(cell.length > 1 && cell.startsWith('"') && cell.endsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell);
    if (!end) break;
    if (end !== "\t") {
      if (part.lastIndex === text.length) break; // the last line's end begins no row
      rows.push([]);
    }
  }
  return rows;
}
