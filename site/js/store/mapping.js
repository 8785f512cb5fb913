// @ts-check
// What the columns of tables were taken for, by their heads: who sends the same form again finds it read as it was told last.

import { read, write } from "./local.js";

const MAPPED = "finwright.mapped";
const MOST = 40; // forms, the oldest goes

/** @typedef {import("../api.js").HeadColumn} HeadColumn @typedef {[heads: string, columns: HeadColumn[]]} Form */

/** @returns {Form[]} */
function forms() {
  try {
    const saved = JSON.parse(read(MAPPED) || "[]");
    return Array.isArray(saved) ? saved.filter((form) => Array.isArray(form) && typeof form[0] === "string" && Array.isArray(form[1])) : [];
  } catch {
    return [];
  }
}

const nameOf = (/** @type {{head: string}[]} */ columns) => JSON.stringify(columns.map(({ head }) => head));

/** What a table's columns were told to be, if they ever were. @param {{head: string}[]} columns @returns {HeadColumn[] | undefined} */
export const mappedOf = (columns) => forms().find(([heads]) => heads === nameOf(columns))?.[1];

/** @param {HeadColumn[]} columns */
export function keepMapped(columns) {
  const heads = nameOf(columns);
  const plain = columns.map((column) => ({ ...column, examples: [] })); // a customer's figures are kept no longer than the enquiry
  return write(MAPPED, JSON.stringify([...forms().filter(([other]) => other !== heads), [heads, plain]].slice(-MOST)));
}
