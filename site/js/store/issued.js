// @ts-check
// Papers that went out, in the browser's database: each as it was issued, with the design, the shop's file and the answers that it was
// made of. What is kept is never written over, so it prints the same by every later program.

import { openDB } from "idb";

const OPENS = 20000; // ms

/**
 * @typedef {{id: string, work: string, item: string, kind: string, name: string, time: string, mark: string, program: string,
 *   paper: import("../api.js").Paper, document: import("../api.js").Document, several?: import("../api.js").SeveralArgs, shop: string, answers: Record<string, string>}} Issued
 */

/** @type {Promise<import("idb").IDBPDatabase> | null} */
let opening = null;

function database() {
  const forgetIt = () => (opening = null);
  opening ??= openDB("finwright-issued", 1, {
    upgrade(db) {
      db.createObjectStore("papers", { keyPath: "id" }).createIndex("work", ["work", "time"]);
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

/** Those of a piece of work, the last issued first. @param {string} work @returns {Promise<Issued[]>} */
export async function issuedOf(work) {
  const db = await database();
  return (await db.getAllFromIndex("papers", "work", IDBKeyRange.bound([work], [work, []]))).reverse();
}

/** Those that bear a fingerprint, of whatever job. @param {string} mark @returns {Promise<Issued[]>} */
export async function issuedMarked(mark) {
  const db = await database();
  const found = [];
  for (let cursor = await db.transaction("papers").store.openCursor(); cursor; cursor = await cursor.continue()) {
    if (cursor.value.mark === mark) found.push(cursor.value);
  }
  return found;
}

/** Keeps a paper. @param {Issued} issued @returns {Promise<boolean>} whether it was not there yet: what is issued stays as it is */
export async function issue(issued) {
  const db = await database();
  try {
    await db.add("papers", issued);
    return true;
  } catch (error) {
    if (/** @type {DOMException} */ (error).name === "ConstraintError") return false;
    throw error;
  }
}
