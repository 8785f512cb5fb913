// @ts-check
// One press keeps the design in hand beside its item. What is done with those that are kept comes with their table (options.js).

import { differences, whole } from "./job.js";
import { write } from "./keyed.js";

/**
 * @param {HTMLButtonElement} button
 * @param {HTMLElement} count of those that are kept
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {(ghosts: import("./api.js").Ghost[], designs: import("./api.js").Document[]) => Promise<void> | void} onGhosts the outlines of what is kept, and that itself, when it is other
 */
export function createKeep(button, count, design, engine, onGhosts) {
  const most = Number(button.dataset.most);
  let drawn = "[]"; // whose outlines are shown
  /** @type {import("./api.js").Document[]} that is looked at, behind that in hand, or none */ let looked = [];

  /** @param {import("./api.js").Document[]} designs */
  async function outline(designs) {
    const of = JSON.stringify(designs);
    if (of === drawn) return;
    drawn = of;
    try {
      const reply = designs.length ? await engine.callLatest("outlines", "outlines", { designs }) : { ghosts: [] };
      if (reply && of === drawn) await onGhosts(reply.ghosts, designs);
    } catch (error) {
      drawn = ""; // it is asked again
      throw error;
    }
  }

  button.addEventListener("click", () =>
    design.keepOptions((kept, document, base) => {
      const now = { name: "", design: differences(document, base) };
      const there = kept.some(({ design }) => JSON.stringify(design) === JSON.stringify(now.design));
      return there || kept.length >= most ? null : { kept: [...kept, now] };
    }),
  );

  /** What is kept, and looked at. @param {import("./history.js").Entry} entry */
  const settled = ({ job, hand }) => outline([...(job.items.get(hand)?.kept ?? []).map(({ design }) => whole(job.base, design)), ...looked]);

  return {
    /** @param {import("./history.js").Entry} entry */
    show({ job, hand }) {
      const kept = job.items.get(hand)?.kept ?? [];
      write(count, kept.length ? String(kept.length) : "");
      button.disabled = kept.length >= most;
    },

    /** What is in the history has been answered: what is kept beside it shows behind its drawing. @param {import("./history.js").Entry} entry */
    settled,

    /** Shows a design there that is not kept; null: none. @param {import("./api.js").Document | null} document */
    look(document) {
      looked = document ? [document] : [];
      return settled(design.history.entry);
    },
  };
}
