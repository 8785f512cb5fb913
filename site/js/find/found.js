// @ts-check
// What a search found, as a grid: the best, and what else is on the front. Of the design in hand there it says more, and presses look at
// it, keep it or take it over.

import { createGrid } from "../grid/grid.js";
import { createView } from "../grid/view.js";
import { write } from "../keyed.js";
import { createRoving } from "../roving.js";

/**
 * @typedef {import("../api.js").SearchTold} Told
 * @typedef {import("../api.js").SearchRow} Row
 * @typedef {{id: string, label: string, unit: string, means?: string}} Head
 * @typedef {"look" | "keep" | "take"} Press
 */

const RANGE = " range"; // no name of a field or a measure begins so

/** @param {HTMLElement} root its data- attributes hold the words @param {(id: string) => any} at parts of the page by name @param {{press: (what: Press, place: number) => void, pointed: (place: number) => void}} act */
export function createFound(root, at, act) {
  const [said, presses] = ["row", "presses"].map(at);
  /** @type {(Row & {best: boolean})[]} */ let rows = [];
  /** @type {Head[]} */ let heads = [];
  /** @type {number[]} the rows in sight */ let order = [];

  const grid = createGrid(at("grid"), {
    enter: async () => {}, // nothing is entered here
    act: (what) => what === "press" && press("look"),
    focus: inHand,
  });
  const view = createView((id) => at(id === "count" ? "shown" : id), root.dataset, look) /* the count is of the designs to look through */;
  for (const button of presses.children) button.addEventListener("click", () => press(/** @type {Press} */ (button.dataset.does)));
  const reach = createRoving(presses, "button");

  /** What stands in a column. @param {Row} row @param {number} column */
  const textOf = (row, column) => row.cells[column] ?? (row.outside && (root.dataset.outside ?? ""));

  /** @returns {import("../grid/model.js").Model} */
  function model() {
    const shown = view.heads(heads);
    return {
      name: heads.map(({ id }) => id).join(" "),
      columns: shown.map(({ id, label, unit }) => ({ key: id, parts: [unit ? `${label}, ${unit}` : label] })),
      rows: order.map((row) => ({ key: String(rows[row].place), parts: [rows[row].name] })),
      grows: false,
      cell(at, column) {
        const text = textOf(rows[order[at]], shown[column].at);
        return { key: "", text, shown: text, error: "", choices: [] };
      },
    };
  }

  /** The rows in sight. */
  function look() {
    order = view.rows({
      heads,
      count: rows.length,
      texts: (row) => [rows[row].name, ...heads.map((_, column) => textOf(rows[row], column))],
      is: (row, kind) => ({ best: rows[row].best, front: rows[row].front, within: !rows[row].outside })[/** @type {"front"} */ (kind)],
      order(id) {
        const column = heads.findIndex((head) => head.id === id);
        return (row) => rows[row].orders[column] ?? textOf(rows[row], column);
      },
    });
    grid.show(model());
    inHand();
  }

  const inSight = () => rows[order[grid.at.row]];

  function inHand() {
    const row = inSight();
    const head = view.heads(heads)[grid.at.column];
    at("grid").dataset.means = head?.means ?? ""; // F1 leads there
    for (const button of presses.children) button.disabled = !row;
    write(said, row ? [row.front && (root.dataset.onFront ?? ""), row.outside].filter(Boolean).join(" ") : "");
    if (row) act.pointed(row.place);
    reach();
  }

  /** @param {Press} what */
  function press(what) {
    const row = inSight();
    if (row) act.press(what, row.place);
  }

  return {
    /** @param {Told} told @param {boolean} anew another search */
    show({ columns, rows: best, beyond: front, measures }, anew) {
      rows = [...best.map((row) => ({ ...row, best: true })), ...front.map((row) => ({ ...row, best: false }))];
      heads = columns.map((head, i) => ({ ...head, means: i < columns.length - measures ? `field ${head.id}` : `text search.measure.${head.id}` }));
      if (rows.some(({ outside }) => outside)) heads.push({ id: RANGE, label: root.dataset.range ?? "", unit: "", means: "text page.find_outside" });
      if (anew) view.clear();
      view.show(heads);
      look();
    },
  };
}
