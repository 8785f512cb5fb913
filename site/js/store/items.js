// @ts-check
// The items of a working copy, each under a key of its own, so that a change writes that one and no other. They make a set,
// which belongs to one working copy or to one piece of work that was left; its text names the set in place of the items.

import { plain } from "../job.js";
import { keys, newId, parsed, read, remove, write } from "./local.js";

const ITEM = "finwright.item.";

/** @typedef {import("../job.js").Item} Item */

const keyOf = (/** @type {string} */ set, /** @type {string} */ id) => `${ITEM}${set}.${id}`;

/** Its place goes before it, since a store has no order. @param {Item} item */
const textOf = (item) => `${item.at} ${JSON.stringify(plain(item))}`;

/** @param {string} text */
const jsonOf = (text) => text.slice(text.indexOf(" ") + 1);

/**
 * @param {string} set
 * @param {string} id
 * @param {Item | undefined} item none: it is taken out
 * @returns {string} empty, or the name of a note
 */
export function writeItem(set, id, item) {
  if (item) return write(keyOf(set, id), textOf(item));
  remove(keyOf(set, id));
  return "";
}

/**
 * Writes a whole list.
 * @param {import("../job.js").Job} job
 * @returns {{set: string, failed: string}} failed: empty, or the name of a note, and then nothing is left of it
 */
export function writeItems({ items }) {
  const set = newId();
  for (const item of items.values()) {
    const failed = writeItem(set, item.id, item);
    if (!failed) continue;
    dropItems(set);
    return { set: "", failed };
  }
  return { set, failed: "" };
}

/**
 * Makes a set hold a list, writing no more than what differs.
 * @param {string} set
 * @param {import("../job.js").Job} job
 * @returns {string} empty, or the name of a note
 */
export function syncItems(set, { items }) {
  const prefix = keyOf(set, "");
  for (const key of keys(prefix)) if (!items.has(key.slice(prefix.length))) remove(key);
  for (const item of items.values()) {
    const failed = read(keyOf(set, item.id)) === textOf(item) ? "" : writeItem(set, item.id, item);
    if (failed) return failed;
  }
  return "";
}

/** Forgets a set that no text names any more. @param {string} set */
export function dropItems(set) {
  if (!set) return;
  const left = keys("finwright.left.").map((key) => String(parsed(read(key)).text));
  const named = [...keys("finwright.slot.").map((key) => read(key)), ...left].map(setOf);
  if (!named.includes(set)) for (const key of keys(keyOf(set, ""))) remove(key);
}

/** Which set a text names, if any. @param {string} text @returns {string} */
export const setOf = (text) => String(parsed(text).set ?? "");

/** A text with the items themselves in place of their set: an envelope. @param {string} text */
export function composed(text) {
  const { set, ...head } = parsed(text);
  if (!set) return text;
  const items = keys(keyOf(set, "")).map((key) => read(key)).sort((a, b) => parseFloat(a) - parseFloat(b));
  return `${JSON.stringify(head).slice(0, -1)},"items":[${items.map(jsonOf).join()}]}`;
}

/** The item that a text says was in hand, and the base that it differs from. @param {string} text @returns {{base: import("../job.js").Document, item: Item} | undefined} */
export function inHand(text) {
  const { set, base, items = [], item: id } = parsed(text);
  if (!base) return undefined;
  const item = set ? parsed(jsonOf(read(keyOf(set, id)))) : (items.find((/** @type {Item} */ one) => one.id === id) ?? items[0]);
  return item?.design && { base, item };
}
