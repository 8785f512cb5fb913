// @ts-check
// The tables of a shop's file as grids show them: what was typed and not taken stands where it was typed, and a search leaves the rows
// that it finds.

/**
 * @typedef {import("../api.js").ShopTable} Table
 * @typedef {import("../api.js").ShopRecord} Record
 * @typedef {{text: string, why: string, lost?: boolean}} Aside  why: empty while the answer is on its way; lost: there was none
 * @typedef {import("../grid/grid.js").Model & {table: Table, places: number[], since: number}} Model
 *   places: of the rows that are shown, in the table; since: what had been moved by then
 */

const isPlace = (/** @type {string} */ step) => /^\d+$/.test(step);

/** @param {Table} table @param {number} row @param {number} column */
const sortOf = (table, row, column) => table.sorts[table.rows[row].cells[column].sort];

/** @param {Table} table @param {number} row @param {number} column @param {string} text */
function inWords(table, row, column, text) {
  return sortOf(table, row, column)?.choices.find(({ id }) => id === text)?.text ?? text;
}

/** @param {string} text @param {string} query */
const has = (text, query) => text.toLowerCase().includes(query);

/** The rows of a table that a search finds; all, if it is the table that it finds. @param {Table} table @param {string} query */
export function found(table, query) {
  const all = table.rows.map((_, row) => row);
  const heads = [table.label, table.of, ...table.columns.flatMap(({ parts }) => parts)];
  if (!query || heads.some((text) => has(text, query))) return all;
  return all.filter((row) => table.rows[row].parts.some((text) => has(text, query)) || table.rows[row].cells.some(({ text }, column) => has(inWords(table, row, column, text), query)));
}

/**
 * @param {Table} table
 * @param {{asides: Map<string, Aside>, query: string, since: number}} of
 * @returns {Model}
 */
export function modelOf(table, { asides, query, since }) {
  const places = found(table, query);
  const lists = new Set(table.rows.map(({ record }) => record?.list));
  return {
    name: table.id,
    table, places, since,
    columns: table.columns.map(({ parts }, i) => ({ key: String(i), parts })),
    rows: places.map((place) => ({ key: String(place), parts: table.rows[place].parts })),
    grows: places.length === table.rows.length && !table.across && (lists.size === 1 && !lists.has(undefined) ? true : isValues(table)),
    cell(row, column) {
      const place = places[row];
      const { path, text } = table.rows[place].cells[column];
      const aside = asides.get(path);
      const now = aside?.text ?? text;
      return { key: path, text: now, shown: inWords(table, place, column, now), quiet: now === "false", long: sortOf(table, place, column)?.long, error: aside?.why ?? "", choices: sortOf(table, place, column)?.choices ?? [] };
    },
  };
}

/** Whether a table's cells are values of lists themselves. @param {Table} table */
const isValues = (table) => table.rows[0]?.cells.some(({ path }) => isPlace(path.split("/").pop() ?? "")) ?? false;

/** Where a cell below the last row would be. @param {Table} table @param {number} row @param {number} column */
export function pathBelow(table, row, column) {
  const last = table.rows[table.rows.length - 1];
  const steps = last.cells[column].path.split("/");
  const at = last.record ? last.record.list.split("/").length : steps.length - 1;
  steps[at] = String(Number(steps[at]) + row - table.rows.length + 1);
  return steps.join("/");
}

/** What list the cell in hand belongs to, and at which place; null: to none. @param {Table} table @param {number} row @param {number} column @returns {Record | null} */
export function recordAt(table, row, column) {
  const record = table.across ? table.columns[column]?.record : table.rows[row]?.record;
  if (record) return record;
  const path = table.rows[row]?.cells[column]?.path ?? "";
  const [list, step] = [path.slice(0, path.lastIndexOf("/")), path.slice(path.lastIndexOf("/") + 1)];
  return isPlace(step) ? { list, index: Number(step), new: table.rows[row].cells[column].text === "" } : null;
}

/** What somebody noted of the thing that a cell says something of. @param {Table} table @param {number} row @param {number} column */
export function remarkAt(table, row, column) {
  const remarks = [...table.rows[row].cells, ...table.rows.map(({ cells }) => cells[column])].filter(({ sort }) => table.sorts[sort]?.long);
  const { path } = table.rows[row].cells[column];
  return remarks.find((one) => path.startsWith(one.path.slice(0, one.path.lastIndexOf("/") + 1)))?.text ?? "";
}

/** Where an item of a list stands in a table. @param {Table} table @param {string} list @param {number} index */
export function placeOf(table, list, index) {
  const is = (/** @type {Record | null} */ record) => record?.list === list && record.index === index;
  if (table.across) return { row: 0, column: table.columns.findIndex(({ record }) => is(record)) };
  const column = Math.max(0, table.rows[0]?.cells.findIndex(({ path }) => path.startsWith(`${list}/`)) ?? 0);
  const row = table.rows.findIndex(({ record, cells }) => is(record) || cells[column]?.path === `${list}/${index}`);
  return { row, column: table.rows[row]?.record ? 0 : column };
}
