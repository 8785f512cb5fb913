// @ts-check
// What leaves the house, as the engine makes it (core/outgoing): for the screen of Show, the sheet to leave behind and the customer's link.

import { whole } from "./job.js";
import { savedShown } from "./store/show.js";

/** @typedef {import("./api.js").Picked} Picked */
/** @typedef {{work: string, told: import("./api.js").Told, shop: string, document: string}} Received  what a customer's link brought: the piece of work that it is, and its design as text */

/** What was picked, without a price. @param {string} day @returns {Picked} */
export function usual(day) {
  const { figure = [], entry = [], held = [] } = savedShown();
  return { figures: figure, entries: entry, held: held[0] ?? "", price: false, day, until: "" };
}

/** The design in hand and what is kept beside it, whole. @param {import("./history.js").Entry} entry */
export function inSight({ document, job, hand }) {
  return { document, kept: (job.items.get(hand)?.kept ?? []).map(({ design }) => whole(job.base, design)) };
}
