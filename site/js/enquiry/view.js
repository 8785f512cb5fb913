// @ts-check
// Which items are in sight, in which order, and which columns: all of it of this look alone, nothing of what the items say.

/**
 * @typedef {import("../api.js").ShownEnquiry} Enquiry
 * @typedef {import("../api.js").EnquiryCell} Cell
 * @typedef {(item: number) => import("./ratings.js").Rated | undefined} RatedOf
 */

/** @param {(id: string) => any} at parts of the page by name @param {DOMStringMap} words @param {() => void} changed */
export function createView(at, words, changed) {
  const [find, only, sort, turned, columns, count] = ["find", "only", "sort", "turned", "picked", "count"].map(at);
  /** @type {Set<string>} of columns, by field */ const hidden = new Set();

  for (const control of [find, only, sort, turned]) control.addEventListener(control === find ? "input" : "change", changed);
  columns.addEventListener("change", (/** @type {Event} */ { target }) => {
    const { checked, value } = /** @type {HTMLInputElement} */ (target);
    if (checked) hidden.delete(value);
    else hidden.add(value);
    changed();
  });

  /** @param {Enquiry} enquiry @param {RatedOf} rated @param {number} i */
  function kinds({ items }, rated, i) {
    const row = rated(i)?.row;
    return { open: items[i].open > 0, unread: items[i].unread.length > 0, refused: items[i].refused !== "" || row?.state === "no", watch: row?.state === "watch" };
  }

  /** What items are ordered by: a number, or else a text. @param {Enquiry} enquiry @param {RatedOf} rated @returns {(i: number) => number | string} */
  function orderOf({ items, cells, heads }, rated) {
    if (sort.value === "price") return (i) => rated(i)?.row.price ?? 0;
    if (sort.value === "verdict") return (i) => rated(i)?.row.mark ?? "";
    const column = heads.findIndex(({ id }) => id === sort.value);
    return (i) => {
      const { si, shown } = cells[items[i].cells[column]];
      return si ?? shown;
    };
  }

  return {
    /** The heads of the columns in sight. @param {Enquiry} enquiry */
    heads: ({ heads }) => heads.map((head, at) => ({ ...head, at })).filter(({ id }) => !hidden.has(id)),

    /** The items in sight, in their order. @param {Enquiry} enquiry @param {RatedOf} rated @returns {number[]} */
    items(enquiry, rated) {
      const { items, cells } = enquiry;
      const words_ = find.value.trim().toLowerCase();
      const says = (/** @type {number} */ i) => [items[i].mark, items[i].source, ...items[i].cells.map((at) => cells[at].shown)].some((text) => text.toLowerCase().includes(words_));
      const list = items.map((_, i) => i).filter((i) => (!only.value || kinds(enquiry, rated, i)[/** @type {"open"} */ (only.value)]) && (!words_ || says(i)));
      if (sort.value) {
        const order = orderOf(enquiry, rated);
        const way = turned.checked ? -1 : 1;
        const by = new Map(list.map((i) => [i, order(i)]));
        list.sort((a, b) => way * compared(/** @type {number | string} */ (by.get(a)), /** @type {number | string} */ (by.get(b))) || a - b);
      }
      count.textContent = list.length < items.length ? (words.shownOf ?? "").replace("{shown}", String(list.length)).replace("{all}", String(items.length)) : "";
      return list;
    },

    /** Another enquiry, or one read anew: its columns. @param {Enquiry} enquiry */
    show({ heads }) {
      const chosen = sort.value;
      sort.replaceChildren(new Option(words.asCame, ""), new Option(words.verdict, "verdict"), new Option(words.price, "price"), ...heads.map(({ id, label }) => new Option(label, id)));
      sort.value = [...sort.options].some(({ value }) => value === chosen) ? chosen : "";
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
    },
  };
}

/** @param {number | string} a @param {number | string} b */
function compared(a, b) {
  if (typeof a === "number" && typeof b === "number") return a - b;
  if (typeof a !== typeof b) return typeof a === "number" ? -1 : 1; // what is no number stands last
  return String(a).localeCompare(String(b), undefined, { numeric: true });
}
