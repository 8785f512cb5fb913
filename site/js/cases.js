// @ts-check
// The bank in every state of the plant, a row each: what differs stands under its name, and why there are no figures.

import { keyed, write } from "./keyed.js";

/**
 * @param {HTMLTableElement} table
 */
export function createCases(table) {
  const units = [...table.querySelectorAll("thead small")];
  const showRows = keyed(table.tBodies[0], (id) => {
    const row = document.createElement("tr");
    row.dataset.testid = `case-${id}`;
    const name = document.createElement("th");
    name.scope = "row";
    name.append(document.createElement("span"), " ", document.createElement("small"));
    row.append(name, ...[1, 2, 3, 4].map(() => document.createElement("td")));
    return row;
  });

  /** @param {HTMLTableRowElement} row @param {import("./api.js").ShownCase} shown */
  function fill({ cells }, { label, differs, duty, drop, coldest, hottest }) {
    write(cells[0].children[0], label);
    write(cells[0].children[1], differs);
    [duty, drop, coldest, hottest].forEach((text, i) => write(cells[i + 1], text));
  }

  return {
    /** @param {import("./api.js").ShownCases | null} cases */
    show(cases) {
      if (!cases) return;
      [cases.duty, cases.drop, cases.metal, cases.metal].forEach((unit, i) => write(units[i], unit));
      showRows(cases.rows, fill);
    },
  };
}
