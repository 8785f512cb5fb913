// @ts-check
// The items of an enquiry as a grid shows them: what each says, the verdict and the price.

import { whole } from "../job.js";

/**
 * @typedef {import("../api.js").ShownEnquiry} Enquiry
 * @typedef {import("../grid/model.js").Model & {named: (field: string, text: string) => string, means: string[], aside: number}} Model  named: the choice that a text names; means: of each column, the text that its meaning is found by; aside: columns before those of what items say
 */

const NONE = "–"; // no price

/**
 * @param {Enquiry | null} enquiry
 * @param {{order: number[], heads: (import("../api.js").EnquiryName & {at: number})[], root: HTMLElement, rated: (i: number) => import("./ratings.js").Rated | undefined, held: import("../job.js").Job | null, broken: boolean}} of
 *   order: the items in sight; heads: the columns, and where they are among those of all; held: the job whose items these have become; broken: prices in other quantities are there
 * @returns {Model}
 */
export function modelOf(enquiry, { order, heads, root, rated, held, broken }) {
  const aside = broken ? 3 : 2;
  const { items = [], cells = [] } = enquiry ?? {};
  const choicesOf = (/** @type {string} */ field) => enquiry?.heads.find(({ id }) => id === field)?.choices ?? [];

  /** What the job's item says, where it is one. @param {number} row @param {string} field */
  function heldText(row, field) {
    const item = held?.items.get(String(row + 1));
    return item && held ? whole(held.base, item.design).fields[field]?.text : undefined;
  }

  return {
    name: "enquiry",
    columns: [{ key: "verdict", parts: [root.dataset.verdict ?? ""] }, { key: "price", parts: [root.dataset.price ?? ""] }, ...(broken ? [{ key: "breaks", parts: [root.dataset.breaks ?? ""] }] : []), ...heads.map(({ id, label }) => ({ key: id, parts: [label] }))],
    aside,
    means: ["page.enquiry_verdict", "page.enquiry_price", ...(broken ? ["page.enquiry_breaks"] : []), ...heads.map(({ means }) => means)],
    rows: order.map((i) => ({ key: String(i), parts: [items[i].mark] })),
    grows: false,
    named: (field, text) => choicesOf(field).find((choice) => choice.id === text || choice.text.toLowerCase() === text.trim().toLowerCase())?.id ?? text,
    cell(at, column) {
      const row = order[at];
      const none = { key: "", error: "", choices: [], text: "" };
      const found = rated(row)?.row;
      if (column === 0 && items[row].refused) return { ...none, shown: root.dataset.notMade ?? "", quiet: false };
      if (column === 0) {
        const grave = found && ["no", "watch"].includes(found.state) ? found.refused || found.why : "";
        return { ...none, shown: found?.mark ?? "", quiet: !grave };
      }
      if (column === 1) {
        const sure = items[row].open ? ` (${root.dataset.provisional})` : "";
        const refused = !found?.shown || found.state === "no" || items[row].refused;
        return { ...none, shown: refused ? NONE : `${found.shown}${sure}` };
      }
      if (column < aside) return { ...none, shown: (items[row].refused ? "" : rated(row)?.breaks) || NONE };
      const { field, text, shown, why } = cells[items[row].cells[heads[column - aside].at]];
      const now = heldText(row, field);
      const choices = choicesOf(field);
      if (now !== undefined && now !== text) return { key: "", text: now, shown: choices.find(({ id }) => id === now)?.text ?? now, error: "", choices };
      return { key: held ? "" : field, text, shown, error: held ? "" : why, choices };
    },
  };
}

/**
 * What of the grid goes into a table: its items and columns in sight, as they are.
 * @param {Enquiry} enquiry
 * @param {Model} model
 * @param {number[]} order
 * @param {(i: number) => import("./ratings.js").Rated | undefined} rated
 * @returns {Omit<import("../api.js").EnquiryTableArgs, "shop">}
 */
export function tableOf(enquiry, model, order, rated) {
  /** @type {Map<string, number>} */ const places = new Map();
  /** @type {import("../api.js").EnquiryCell[]} */ const cells = [];
  const columns = model.columns.slice(model.aside).map(({ key }) => key);
  const items = order.map((i, row) => {
    const { mark, open, refused } = enquiry.items[i];
    const { row: found, breaks = "" } = rated(i) ?? {};
    const priced = found?.shown && found.state !== "no" && !refused;
    return {
      mark,
      ...(breaks && !refused && { breaks }),
      verdict: model.cell(row, 0).shown,
      ...(priced && { price: found.price }),
      ...(open > 0 && { provisional: true }),
      cells: columns.map((field, column) => {
        const { text, shown } = model.cell(row, model.aside + column);
        const key = `${field} ${text} ${shown}`;
        if (!places.has(key)) places.set(key, cells.push({ field, text, shown, why: "" }) - 1);
        return /** @type {number} */ (places.get(key));
      }),
    };
  });
  return { columns, cells, items, units: enquiry.base.units };
}
