// @ts-check
// The items of an enquiry as a grid shows them: what each says, the verdict and the price.

import { whole } from "../job.js";

/**
 * @typedef {import("../api.js").ShownEnquiry} Enquiry
 * @typedef {import("../grid/model.js").Model & {named: (field: string, text: string) => string}} Model  named: the choice that a text names
 */

const NONE = "–"; // no price
const ASIDE = 2; // columns before those of what items say

/**
 * @param {Enquiry | null} enquiry
 * @param {{root: HTMLElement, rated: (i: number) => import("./ratings.js").Rated | undefined, held: import("../job.js").Job | null}} of
 *   held: the job whose items these have become
 * @returns {Model}
 */
export function modelOf(enquiry, { root, rated, held }) {
  const heads = enquiry?.heads ?? [];
  const { items = [], cells = [] } = enquiry ?? {};
  const choicesOf = (/** @type {string} */ field) => heads.find(({ id }) => id === field)?.choices ?? [];

  /** What the job's item says, where it is one. @param {number} row @param {string} field */
  function heldText(row, field) {
    const item = held?.items.get(String(row + 1));
    return item && held ? whole(held.base, item.design).fields[field]?.text : undefined;
  }

  return {
    name: "enquiry",
    columns: [{ key: "verdict", parts: [root.dataset.verdict ?? ""] }, { key: "price", parts: [root.dataset.price ?? ""] }, ...heads.map(({ id, label }) => ({ key: id, parts: [label] }))],
    rows: items.map(({ mark }, i) => ({ key: String(i), parts: [mark] })),
    grows: false,
    named: (field, text) => choicesOf(field).find((choice) => choice.id === text || choice.text.toLowerCase() === text.trim().toLowerCase())?.id ?? text,
    cell(row, column) {
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
      const { field, text, shown, why } = cells[items[row].cells[column - ASIDE]];
      const now = heldText(row, field);
      const choices = choicesOf(field);
      if (now !== undefined && now !== text) return { key: "", text: now, shown: choices.find(({ id }) => id === now)?.text ?? now, error: "", choices };
      return { key: held ? "" : field, text, shown, error: held ? "" : why, choices };
    },
  };
}

/**
 * The grid as rows of texts, with its heads: the price as a number, its currency in its head, and whether it is provisional beside it.
 * @param {Model} model
 * @param {HTMLElement} root
 * @param {(i: number) => import("./ratings.js").Rated | undefined} rated
 */
export function tableOf(model, root, rated) {
  const unit = model.rows.map((_, row) => rated(row)?.row.shown.split(" ").at(-1)).find(Boolean) ?? "";
  const heads = model.columns.flatMap(({ key, parts }) => (key === "price" ? [`${parts.join(" ")} [${unit}]`, root.dataset.provisional ?? ""] : parts.join(" ")));
  return [
    [root.dataset.item ?? "", ...heads],
    ...model.rows.map(({ parts }, row) => [
      ...parts,
      ...model.columns.flatMap(({ key }, column) => {
        const { shown } = model.cell(row, column);
        if (key !== "price") return shown;
        const sure = shown.includes(root.dataset.provisional ?? " ") ? (root.dataset.provisional ?? "") : "";
        return shown === NONE ? ["", ""] : [String(rated(row)?.row.price ?? ""), sure];
      }),
    ]),
  ];
}
