// @ts-check
// The browser's two small stores, which are written at once: one for all tabs, one for this tab alone. Both may be full
// or barred; what then was not kept is told by the caller.

/** @typedef {"localStorage" | "sessionStorage"} Store */

/** Notes on a text that was not kept, by their names in the page. */
export const BARRED = "notKept";
export const FULL = "storageFull";

/** What is kept for comfort alone goes first where there is no room for what was entered: the key of what was last seen. */
export const SPARE = "finwright.seen";

/**
 * @param {string} key
 * @param {Store} [store]
 */
export function read(key, store = "localStorage") {
  try {
    return globalThis[store].getItem(key) ?? "";
  } catch {
    return "";
  }
}

/**
 * @param {string} key
 * @param {string} text
 * @param {Store} [store]
 * @returns {string} empty, or the name of a note
 */
export function write(key, text, store = "localStorage") {
  try {
    globalThis[store].setItem(key, text);
    return "";
  } catch (error) {
    if (/** @type {DOMException} */ (error).name !== "QuotaExceededError") return BARRED;
    if (key === SPARE || !read(SPARE)) return FULL;
    remove(SPARE);
    return write(key, text, store);
  }
}

/** @param {string} key @param {Store} [store] */
export function remove(key, store = "localStorage") {
  try {
    globalThis[store].removeItem(key);
  } catch {
    // Nothing is kept there.
  }
}

/** @param {string} prefix @returns {string[]} the keys that begin so */
export function keys(prefix) {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(prefix));
  } catch {
    return [];
  }
}

/** A name that no other tab and no other day will give. */
export const newId = () => Array.from(crypto.getRandomValues(new Uint8Array(8)), (byte) => byte.toString(16).padStart(2, "0")).join("");

/**
 * What a text says of itself, if it says anything.
 * @param {string} text
 * @returns {any}
 */
export function parsed(text) {
  try {
    const record = JSON.parse(text);
    return record && typeof record === "object" ? record : {};
  } catch {
    return {};
  }
}
