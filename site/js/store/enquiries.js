// @ts-check
// Enquiries that are kept, in a database of the browser's own: each as the text that the engine wrote of it, and apart from that what a list
// needs. Which one this tab has open, and what was typed and not read yet, is kept for the tab alone.

import { openDB } from "idb";
import { read, remove, write } from "./local.js";

const OPENS = 20000; // ms
const HERE = "finwright.enquiry"; // the one that is open
const DRAFT = "finwright.enquiry.draft";

/**
 * @typedef {import("../api.js").Summary} Summary
 * @typedef {{text: string, summary: Summary}} Kept
 */

/** @type {Promise<import("idb").IDBPDatabase> | null} */
let opening = null;

function database() {
  const forgetIt = () => (opening = null);
  opening ??= openDB("finwright-enquiries", 1, {
    upgrade(db) {
      db.createObjectStore("heads", { keyPath: "id" });
      db.createObjectStore("texts");
    },
    blocking(_old, _new, event) {
      forgetIt();
      /** @type {IDBDatabase} */ (event.target).close();
    },
    terminated: forgetIt,
  });
  opening.catch(forgetIt);
  return Promise.race([opening, new Promise((_, reject) => setTimeout(reject, OPENS, new Error("the database does not open")))]);
}

/**
 * Writes an enquiry over what this tab kept of it before.
 * @param {Kept} kept
 * @param {string} stored when that was written; empty: it was not
 * @returns {Promise<boolean>} whether it is kept: where another tab has gone on with the same, nothing is written
 */
export async function keepEnquiry({ text, summary }, stored) {
  const transaction = (await database()).transaction(["heads", "texts"], "readwrite");
  const [heads, texts] = [transaction.objectStore("heads"), transaction.objectStore("texts")];
  const found = await heads.get(summary.id);
  if (found && found.time !== stored) return false;
  await Promise.all([heads.put(summary), texts.put(text, summary.id), transaction.done]);
  return true;
}

/** Puts enquiries beside those that are there, all or none. @param {Kept[]} list */
export async function addEnquiries(list) {
  const transaction = (await database()).transaction(["heads", "texts"], "readwrite");
  const [heads, texts] = [transaction.objectStore("heads"), transaction.objectStore("texts")];
  await Promise.all([...list.flatMap(({ text, summary }) => [heads.add(summary), texts.add(text, summary.id)]), transaction.done]);
}

/** @param {string} id */
export async function dropEnquiry(id) {
  const transaction = (await database()).transaction(["heads", "texts"], "readwrite");
  await Promise.all([transaction.objectStore("heads").delete(id), transaction.objectStore("texts").delete(id), transaction.done]);
}

/** @returns {Promise<Summary[]>} */
export const enquiries = async () => (await database()).getAll("heads");

/** @param {string} id @returns {Promise<string>} empty: it is not there */
export const enquiryText = async (id) => (await (await database()).get("texts", id)) ?? "";

/** All that is kept, by name. @returns {Promise<Map<string, string>>} */
export async function enquiryTexts() {
  const store = (await database()).transaction("texts").store;
  const [ids, texts] = await Promise.all([store.getAllKeys(), store.getAll()]);
  return new Map(ids.map((/** @type {IDBValidKey} */ id, /** @type {number} */ i) => [String(id), texts[i]]));
}

/** @returns {{id: string, work: string}} work: the piece of work whose items it has become */
export function openHere() {
  const [id = "", work = ""] = read(HERE, "sessionStorage").split(" ");
  return { id, work };
}

/** @param {string} id @param {string} work @returns {string} empty, or the name of a note */
export const keepOpen = (id, work) => write(HERE, `${id} ${work}`, "sessionStorage");

/** What was typed and not read yet. */
export const draft = () => read(DRAFT, "sessionStorage");

/** @param {string} text @returns {string} empty, or the name of a note */
export function keepDraft(text) {
  if (text) return write(DRAFT, text, "sessionStorage");
  remove(DRAFT, "sessionStorage");
  return "";
}
