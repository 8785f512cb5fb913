// @ts-check
// Which rows are in sight, in which order, and which columns: all of it of this look alone, nothing of what the rows say.

/**
 * @typedef {{
 *   heads: {id: string, label: string}[],
 *   count: number,
 *   texts: (row: number) => string[],
 *   is: (row: number, kind: string) => boolean,
 *   order: (id: string) => (row: number) => number | string,
 * }} Looked  what is looked at. heads: of the columns; texts: what a row says; order: what rows are ordered by, a number or else a text
 */

/** @param {(id: string) => any} at parts of the page by name @param {DOMStringMap} words @param {() => void} changed */
export function createView(at, words, changed) {
  const [find, only, sort, turned, columns, count] = ["find", "only", "sort", "turned", "picked", "count"].map(at);
  /** @type {Set<string>} of columns */ const hidden = new Set();

  for (const control of [find, only, sort, turned]) control.addEventListener(control === find ? "input" : "change", changed);
  columns.addEventListener("change", (/** @type {Event} */ { target }) => {
    const { checked, value } = /** @type {HTMLInputElement} */ (target);
    if (checked) hidden.delete(value);
    else hidden.add(value);
    changed();
  });

  return {
    /** The heads of the columns in sight. @template {{id: string}} H @param {H[]} heads @returns {(H & {at: number})[]} */
    heads: (heads) => heads.map((head, at) => ({ ...head, at })).filter(({ id }) => !hidden.has(id)),

    /** The rows in sight, in their order. @param {Looked} looked @returns {number[]} */
    rows(looked) {
      const words_ = find.value.trim().toLowerCase();
      const says = (/** @type {number} */ row) => looked.texts(row).some((text) => text.toLowerCase().includes(words_));
      const list = Array.from({ length: looked.count }, (_, row) => row).filter((row) => (!only.value || looked.is(row, only.value)) && (!words_ || says(row)));
      if (sort.value) {
        const order = looked.order(sort.value);
        const way = turned.checked ? -1 : 1;
        const by = new Map(list.map((row) => [row, order(row)]));
        list.sort((a, b) => way * compared(/** @type {number | string} */ (by.get(a)), /** @type {number | string} */ (by.get(b))) || a - b);
      }
      count.textContent = list.length < looked.count ? (words.shownOf ?? "").replace("{shown}", String(list.length)).replace("{all}", String(looked.count)) : "";
      return list;
    },

    /** Other columns. @param {{id: string, label: string}[]} heads @param {{id: string, label: string}[]} [others] by which rows are ordered too */
    show(heads, others = []) {
      const chosen = sort.value;
      sort.replaceChildren(new Option(words.asCame, ""), ...[...others, ...heads].map(({ id, label }) => new Option(label, id)));
      sort.value = [...sort.options].some(({ value }) => value === chosen) ? chosen : "";
      const there = [...columns.querySelectorAll("input")].map((/** @type {HTMLInputElement} */ { value }) => value);
      if (JSON.stringify(there) === JSON.stringify(heads.map(({ id }) => id))) return;
      columns.replaceChildren(
        ...heads.map(({ id, label }) => {
          const box = Object.assign(document.createElement("input"), { type: "checkbox", value: id, checked: !hidden.has(id) });
          const name = document.createElement("label");
          name.append(box, " ", label);
          return name;
        }),
      );
    },

    /** All in sight again, as it came. */
    clear() {
      find.value = only.value = sort.value = "";
      turned.checked = false;
      hidden.clear();
      columns.replaceChildren();
    },
  };
}

/** @param {number | string} a @param {number | string} b */
function compared(a, b) {
  if (typeof a === "number" && typeof b === "number") return a - b;
  if (typeof a !== typeof b) return typeof a === "number" ? -1 : 1; // what is no number stands last
  return String(a).localeCompare(String(b), undefined, { numeric: true });
}
