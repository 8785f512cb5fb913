// @ts-check
// Earlier work: the last designs and shops that were worked on, in the browser's database. Their texts are kept unread, so
// no later version has to change what is kept here. Heads and texts lie apart: a list needs the heads alone.

import { openDB } from "idb";
import { whole } from "../job.js";
import { composed, inHand } from "./items.js";
import { allLeft, forget } from "./left.js";
import { FULL, parsed, read, write } from "./local.js";
import { workedShop } from "./shop.js";
import { dropSlot, fork, last, orphans, whenKept, worked } from "./slot.js";

const MOST = 50; // of each kind
const SLOTS = 20; // working copies of tabs that have gone: a browser may bring such a tab back
const OPENS = 20000; // ms
const REST = 3000; // ms without a change
const LONG = 200; // items: a longer job stays in its slot alone until it is left or the list is opened, as it is written whole here
const ASKED = "finwright.persist";

/**
 * @typedef {import("./left.js").Left} Left
 * @typedef {Omit<Left, "text"> & {picture: string}} Head
 */

/** @type {Promise<import("idb").IDBPDatabase> | null} */
let opening = null;

function database() {
  const forgetIt = () => (opening = null);
  opening ??= openDB("finwright", 1, {
    upgrade(db) {
      db.createObjectStore("heads", { keyPath: "id" }).createIndex("dated", ["kind", "time"]);
      db.createObjectStore("texts");
    },
    blocking(_old, _new, event) {
      forgetIt();
      /** @type {IDBDatabase} */ (event.target).close();
    },
    terminated: forgetIt,
  });
  opening.catch(forgetIt);
  return inTime(opening);
}

/** A database that does not answer is one that cannot be used. @template T @param {Promise<T>} promise @returns {Promise<T>} */
const inTime = (promise) => Promise.race([promise, new Promise((_, reject) => setTimeout(reject, OPENS, new Error("the database does not open")))]);

const all = (/** @type {string} */ kind) => IDBKeyRange.bound([kind], [kind, []]);

/** The name under which work is kept whose own name another tab has taken further. @param {{id: string, time: string}} left */
const aside = ({ id, time }) => `${id} ${time}`;

/** @param {Left} left */
async function isKept(left) {
  const db = await database();
  const found = await db.get("heads", left.id);
  return (found?.time === left.time && found.revision === left.revision) || (await db.getKey("heads", aside(left))) !== undefined;
}

/**
 * Writes one piece of work over what was kept of it before. When another tab has gone on with the same, both are kept.
 * @param {Left} left
 * @param {string} picture an SVG, or empty
 * @returns {Promise<string>} empty, or the name of a note
 */
async function keepEarlier({ text, ...left }, picture) {
  const transaction = (await database()).transaction(["heads", "texts"], "readwrite");
  const [heads, texts] = [transaction.objectStore("heads"), transaction.objectStore("texts")];
  /** @type {Head | undefined} */
  const found = await heads.get(left.id);
  const clash = found !== undefined && found.revision >= left.revision && found.time !== left.time;
  const id = clash ? aside(left) : left.id;
  heads.put({ ...left, id, picture: picture || (found?.picture ?? "") });
  texts.put(composed(text), id);
  const ids = await heads.index("dated").getAllKeys(all(left.kind));
  for (const old of ids.slice(0, -MOST)) {
    heads.delete(old);
    texts.delete(old);
  }
  await transaction.done;
  return clash ? "forked" : "";
}

/** @param {Left["kind"]} kind @returns {Promise<Head[]>} the latest first */
export const earlier = async (kind) => (await (await database()).getAllFromIndex("heads", "dated", all(kind))).reverse();

/** @param {string} id @returns {Promise<string>} */
export const earlierText = async (id) => (await (await database()).get("texts", id)) ?? "";

/**
 * Moves what was put aside at once to where it can be found, and what tabs left that have gone. The last work of all stays
 * for the next tab.
 * @param {(left: Left) => Promise<string>} keep
 */
async function gather(keep) {
  const notes = [];
  const next = last();
  for (const left of allLeft()) {
    notes.push(await keep(left));
    if (left.id !== next.left) forget(left);
  }
  for (const [i, { id, left }] of (await orphans()).entries()) {
    if (left) notes.push(await keep(left));
    if (i >= SLOTS && id !== next.id) dropSlot(id);
  }
  return notes;
}

/** The design that was in hand, of whatever version. @param {string} text @returns {import("../job.js").Document | undefined} */
function shownOf(text) {
  const { designs, hand = 0 } = parsed(text);
  const found = inHand(text);
  return found ? whole(found.base, found.item.design) : designs?.[hand];
}

/** Once, when there is something to lose. */
function persist() {
  if (read(ASKED) || !navigator.storage?.persist || write(ASKED, "asked")) return;
  navigator.storage.persist().catch(() => {}); // then the browser may drop what it keeps, as it always could
}

/**
 * Keeps what is worked on among the earlier work, whenever the page is at rest.
 * @param {(document: import("../api.js").Document) => Promise<string>} picture an SVG, or empty
 * @param {(name: string) => void} tell
 */
export function keepAtRest(picture, tell) {
  let timer = 0;
  /** @param {boolean} [asked] */
  async function keep(asked = false) {
    const one = async (/** @type {Left} */ left) => {
      if (await isKept(left)) return "";
      const document = left.unread || left.kind === "shop" ? undefined : shownOf(left.text);
      return keepEarlier(left, document ? await picture(document) : "");
    };
    try {
      const [design, shop] = [worked(), workedShop()];
      const notes = await gather(one);
      for (const now of [design, shop]) {
        const long = now === design && !asked && parsed(now?.text ?? "").count > LONG;
        const note = now && !long && (await one(now));
        if (note) notes.push(note);
        if (note && now === design) fork();
      }
      if (design) persist();
      tell(notes.find(Boolean) ?? "");
    } catch (error) {
      tell(/** @type {DOMException} */ (error).name === "QuotaExceededError" ? FULL : "earlierFailed");
    }
  }
  whenKept(() => {
    clearTimeout(timer);
    timer = window.setTimeout(keep, REST);
  });
  return { now: () => keep(true) };
}
