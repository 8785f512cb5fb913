// @ts-check
// How the items are made together: what it comes to, and the batches.

/** @typedef {import("../api.js").ShownGroups} Groups */

/** @param {HTMLElement} list @param {HTMLTableElement} table */
export function createGroups(list, table) {
  return (/** @type {Groups | null} */ groups) => {
    const { said = [], batches = [] } = groups ?? {};
    list.replaceChildren(...said.map((textContent) => Object.assign(document.createElement("li"), { textContent })));
    table.hidden = batches.length === 0;
    table.tBodies[0].replaceChildren(
      ...batches.map(({ line, set_up, items, change, saved }) => {
        const row = document.createElement("tr");
        for (const text of [items, set_up, line, change, saved]) row.insertCell().textContent = text;
        return row;
      }),
    );
  };
}
