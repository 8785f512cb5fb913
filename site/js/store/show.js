// @ts-check
// What the user picked to be shown to a customer. Whether a price is shown is not kept: it is turned on each time.

import { read, write } from "./local.js";

const SHOWN = "finwright.show";

/** @returns {Record<string, string[]>} by the names of the choices; none: as the house has it */
export function savedShown() {
  try {
    const saved = JSON.parse(read(SHOWN) || "{}");
    return saved && typeof saved === "object" ? saved : {};
  } catch {
    return {};
  }
}

/** @param {Record<string, string[]>} picked */
export const keepShown = (picked) => write(SHOWN, JSON.stringify(picked));
