// @ts-check
// Which design of a file is in hand. A file of one design asks nothing.

/**
 * @param {HTMLSelectElement} select
 * @param {(index: number) => void} take
 */
export function createHand(select, take) {
  let last = "";
  select.addEventListener("change", () => take(select.selectedIndex));
  return {
    /** @param {import("./history.js").Entry} entry */
    show({ before, document, after }) {
      const titles = [...before, document, ...after].map(({ title }, i) => `${i + 1} ${title || select.dataset.unnamed}`);
      select.hidden = titles.length === 1;
      const now = JSON.stringify(titles);
      if (now !== last) select.replaceChildren(...titles.map((title) => new Option(title)));
      last = now;
      select.selectedIndex = before.length;
    },
  };
}
