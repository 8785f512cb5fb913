// @ts-check
// One press keeps the design in hand beside its item. What is done with those that are kept comes with their table (options.js).

import { differences } from "./job.js";
import { write } from "./keyed.js";

/**
 * @param {HTMLButtonElement} button
 * @param {HTMLElement} count of those that are kept
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 */
export function createKeep(button, count, design) {
  const most = Number(button.dataset.most);

  button.addEventListener("click", () =>
    design.keepOptions((kept, document, base) => {
      const now = { name: "", design: differences(document, base) };
      const there = kept.some(({ design }) => JSON.stringify(design) === JSON.stringify(now.design));
      return there || kept.length >= most ? null : { kept: [...kept, now] };
    }),
  );

  return {
    /** @param {import("./history.js").Entry} entry */
    show({ job, hand }) {
      const kept = job.items.get(hand)?.kept?.length ?? 0;
      write(count, kept ? String(kept) : "");
      button.disabled = kept >= most;
    },
  };
}
