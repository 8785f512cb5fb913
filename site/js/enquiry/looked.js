// @ts-check
// The items of an enquiry as a look at them goes by: what each says, of which kinds it is, and what it is ordered by.

/**
 * @param {import("../api.js").ShownEnquiry} enquiry
 * @param {(item: number) => import("./ratings.js").Rated | undefined} rated
 * @returns {import("../grid/view.js").Looked}
 */
export function lookedAt({ items, cells, heads }, rated) {
  return {
    heads,
    count: items.length,
    texts: (i) => [items[i].mark, items[i].source, ...items[i].cells.map((at) => cells[at].shown)],
    is(i, kind) {
      const row = rated(i)?.row;
      const kinds = { open: items[i].open > 0, unread: items[i].unread.length > 0, refused: items[i].refused !== "" || row?.state === "no", watch: row?.state === "watch" };
      return kinds[/** @type {"open"} */ (kind)];
    },
    order(id) {
      if (id === "price") return (i) => rated(i)?.row.price ?? 0;
      if (id === "verdict") return (i) => rated(i)?.row.mark ?? "";
      const column = heads.findIndex((head) => head.id === id);
      return (i) => {
        const { si, shown } = cells[items[i].cells[column]];
        return si ?? shown;
      };
    },
  };
}
