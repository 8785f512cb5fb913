// @ts-check
// Work that was left: a file, an example or a link took its place, or it could not be read. It is put aside at once, as
// text and unread; from here it goes to Earlier work.

import { dropItems, setOf } from "./items.js";
import { keys, newId, parsed, read, remove, write } from "./local.js";

const LEFT = "finwright.left.";

/**
 * @typedef {{id: string, kind: "design" | "shop", name: string, time: string, version: number, revision: number, text: string, unread: boolean}} Left
 *   id: which piece of work; revision: how often it had been written; text: as it was kept, whatever it holds, or with the
 *   name of the set that holds its items; unread: this page could not read it
 */

/**
 * @param {Left["kind"]} kind
 * @param {string} text
 * @param {Partial<Left>} [more] what is known better than the text says
 * @returns {Left}
 */
export function described(kind, text, more) {
  const record = parsed(text);
  return {
    id: newId(),
    kind,
    name: String(record.name ?? record.base?.title ?? record.designs?.[0]?.title ?? ""),
    time: Date.parse(record.time) ? record.time : new Date().toISOString(),
    version: Number(record.version) || 0,
    revision: Number(record.revision) || 0,
    text,
    unread: false,
    ...more,
  };
}

/**
 * @param {Left} left
 * @returns {string} empty, or the name of a note
 */
export function leave(left) {
  const before = parsed(read(LEFT + left.id));
  const failed = write(LEFT + left.id, JSON.stringify(left));
  if (before.text) dropItems(setOf(before.text));
  return failed;
}

/** @returns {Left[]} */
export const allLeft = () => keys(LEFT).map((key) => parsed(read(key))).filter(({ id }) => id);

/** Unless more was put aside under its name since. @param {Left} left */
export function forget(left) {
  if (read(LEFT + left.id) !== JSON.stringify(left)) return;
  remove(LEFT + left.id);
  dropItems(setOf(left.text));
}
