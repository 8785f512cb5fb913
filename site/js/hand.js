// @ts-check
// Which item of a job is in hand. A job of one item asks nothing.

/**
 * @param {HTMLSelectElement} select
 * @param {(id: string) => void} take
 */
export function createHand(select, take) {
  let last = "";
  select.addEventListener("change", () => take(select.value));
  return {
    /** @param {import("./history.js").Entry} entry */
    show({ job, hand }) {
      const titles = job.order.map((id, i) => [id, `${i + 1} ${job.items.get(id)?.design.title ?? (job.base.title || select.dataset.unnamed)}`]);
      select.hidden = titles.length === 1;
      const now = JSON.stringify(titles);
      if (now !== last) select.replaceChildren(...titles.map(([id, title]) => new Option(title, id)));
      last = now;
      select.value = hand;
    },
  };
}
