// @ts-check
// What the page shows until its engine answers: the view that it was last left with, or, where there is neither saved work nor
// a choice of the user's, the one that the build has written into it. It is data, of which texts and paths are set as such.

import { versionOf } from "../assets.js";
import { parsed, read, SPARE, write } from "./local.js";
import { savedShop, shopMark } from "./shop.js";
import { mark } from "./slot.js";


/** @typedef {{headline: string[], section: string}} Choices */

/** Of which work, shop, build and language a view is. @param {Choices} choices */
const stamp = ({ headline, section }) => JSON.stringify([mark(), shopMark(), versionOf("engine.wasm.gz"), document.documentElement.lang, headline, section]);

/**
 * @param {boolean} saved whether this tab goes on with saved work
 * @param {Choices} choices
 * @returns {import("../api.js").Page | null}
 */
export function lastSeen(saved, choices) {
  if (saved) {
    const { of, view } = parsed(read(SPARE));
    return of === stamp(choices) ? view : null;
  }
  const first = /** @type {HTMLElement} */ (document.getElementById("first-view"));
  return savedShop() || choices.headline.length || choices.section !== first.dataset.section ? null : parsed(first.textContent ?? "");
}

/**
 * Keeps what is seen, if it is still of the work as that is kept when it comes. What cannot be kept is only not seen early.
 * @param {() => Choices} choices
 * @param {() => Promise<import("../api.js").Page | null>} ask
 */
export async function keepSeen(choices, ask) {
  const of = stamp(choices());
  const view = await ask();
  if (view?.glimpse && of === stamp(choices())) write(SPARE, JSON.stringify({ of, view }));
}
