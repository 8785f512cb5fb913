// @ts-check
// Work that was left: by a file, an example or a link that took its place, or because it could not be read. It is put
// aside at once, as text and unread.

import { keys, newId, read, remove, write } from "./local.js";

const LEFT = "finwright.left.";

/**
 * @typedef {{id: string, kind: "design" | "shop", name: string, time: string, version: number, text: string, unread: boolean}} Left
 *   text: as it was kept, whatever it holds; unread: this program could not read it
 */

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

/**
 * @param {Left["kind"]} kind
 * @param {string} text
 * @param {{unread?: boolean, id?: string}} [more]
 * @returns {string} empty, or what is to be told
 */
export function leave(kind, text, { unread = false, id } = {}) {
  const said = parsed(text);
  /** @type {Left} */
  const left = {
    id: id ?? newId(),
    kind,
    name: String(said.name ?? said.designs?.[0]?.title ?? ""),
    time: String(said.time ?? new Date().toISOString()),
    version: Number(said.version) || 0,
    text,
    unread,
  };
  return write(LEFT + left.id, JSON.stringify(left));
}

/** @returns {Left[]} */
export const allLeft = () => keys(LEFT).map((key) => parsed(read(key))).filter(({ id }) => id);

/** @param {string} id */
export const forget = (id) => remove(LEFT + id);
