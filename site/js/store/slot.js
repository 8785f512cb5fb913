// @ts-check
// The working copy. Each tab has a slot of its own in the browser's store, written at once with every entry and before the
// engine is asked, so that nothing that was entered hangs on an answer. A slot belongs to the tab that holds its lock.

import { asset } from "../assets.js";
import { allLeft, described, leave, parsed } from "./left.js";
import { keys, newId, read, remove, write } from "./local.js";

const MINE = "finwright.slot"; // in the tab's own store: the name of its slot
const SLOT = "finwright.slot.";
const LOCK = "finwright.slot ";
const TRIES = 9; // a page that is being reloaded gives up its lock; a tab that this one is a copy of does not
const PAUSE = 50; // ms between them
const FORKED = "forked"; // a note: another tab writes to this slot

/**
 * @typedef {import("../history.js").Entry} Entry
 * @typedef {{saved: string, pending: import("../design.js").Pending[], work: string, looked: boolean}} Working
 *   saved: an envelope or empty; pending: commands that were entered and not answered; work: which piece of work it is;
 *   looked: not worked on, only looked at
 */

const { format = "", version = "" } = document.documentElement.dataset;
let slot = "";
let source = { id: "", left: "", text: "" }; // what this tab went on with: a slot, or work that was left
let written = ""; // what the slot held when this tab last looked
let revision = 0; // of the working copy
let branch = ""; // sets the work of this tab apart from that of the tab whose slot it shared

/** @param {string} id */
async function hold(id) {
  if (!navigator.locks) return true; // then a slot that two tabs write to is found when it is written
  for (let tried = 1; !(await lock(id)); tried++) {
    if (tried === TRIES) return false;
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
  }
  return true;
}

/** Whether the lock was to be had; that is no matter of how long the browser takes to say so. @param {string} id @returns {Promise<boolean>} */
const lock = (id) =>
  new Promise((resolve) => {
    const answer = (/** @type {Lock | null} */ had) => {
      resolve(had !== null);
      return had && new Promise(() => {}); // never settled: the lock ends with the page
    };
    navigator.locks.request(LOCK + id, { ifAvailable: true }, answer).catch(() => resolve(true)); // barred: as if there were none
  });

/** Once: what earlier versions of the page kept. */
function takeOver() {
  const OLD = "finwright.design";
  const last = read(OLD);
  const here = read(OLD, "sessionStorage");
  const unread = read(`${OLD}.unreadable`);
  if (unread && !leave(described("design", unread, { unread: true }))) remove(`${OLD}.unreadable`);
  if (last && (last === here || !leave(described("design", last)))) remove(OLD);
  if (!here || read(MINE, "sessionStorage")) return;
  const id = newId();
  if (!write(SLOT + id, here) && !write(MINE, id, "sessionStorage")) remove(OLD, "sessionStorage");
}

/** The last that was worked on, in whatever tab: its slot, or as what it was left. */
export function last() {
  const slots = keys(SLOT).map((key) => ({ id: key.slice(SLOT.length), left: "", text: read(key), ...dated(read(key)) }));
  const put = allLeft().filter(({ kind, unread }) => kind === "design" && !unread);
  const all = [...slots, ...put.map(({ id, text, time }) => ({ id: "", left: id, text, time, looked: false }))];
  return all.filter(({ looked }) => !looked).sort((a, b) => (a.time < b.time ? 1 : -1))[0] ?? { id: "", left: "", text: "" };
}

/** @param {string} text */
function dated(text) {
  const { time = "", looked = false } = parsed(text);
  return { time: String(time), looked };
}

/** @type {Promise<Working> | null} */
let begun = null;

/** What this tab goes on with: its own slot, or a copy of what was last worked on. */
export const working = () => (begun ??= begin());

/** @returns {Promise<Working>} */
async function begin() {
  takeOver();
  let mine = read(MINE, "sessionStorage");
  let owned = mine !== "" && (await hold(mine));
  const text = mine && read(SLOT + mine);
  source = text ? { id: mine, left: "", text } : last();
  if (!mine && source.id && navigator.locks && (await hold(source.id))) {
    mine = source.id;
    owned = true;
  }
  if (!owned) hold((mine = newId()));
  slot = mine;
  written = read(SLOT + slot);
  if (source.id) source.text = read(SLOT + source.id) || source.text; // its tab may have written while the lock was waited for
  const goesOn = source.id === slot;
  const { work = newId(), looked = false, ...more } = parsed(source.text);
  revision = Number(more.revision) || 0;
  return { ...parts(source.text), work: goesOn ? work : newId(), looked: !goesOn || looked };
}

/**
 * An envelope as this page writes it, apart from the commands that it waits with.
 * @param {string} text
 * @returns {{saved: string, pending: import("../design.js").Pending[]}}
 */
export function parts(text) {
  const { pending, ...envelope } = parsed(text);
  if (!Array.isArray(pending)) return { saved: text, pending: [] };
  return { saved: JSON.stringify(envelope), pending: pending.filter((one) => typeof one?.command?.op === "string") };
}

/** @type {WeakMap<object, string>} documents are never changed, so each is written out once */
const texts = new WeakMap();

/** @param {object} document */
function textOf(document) {
  const text = texts.get(document) ?? JSON.stringify(document);
  texts.set(document, text);
  return text;
}

/**
 * Writes the working copy, at once.
 * @param {Entry & {pending: import("../design.js").Pending[]}} state what the history holds, and the commands entered since that were not answered
 * @returns {string} empty, or the name of a note
 */
export function keepWorking({ document, before, after, work, looked, pending }) {
  let note = "";
  const found = read(SLOT + slot);
  if (found && found !== written) {
    slot = newId();
    hold(slot);
    branch = slot;
    written = "";
    note = FORKED;
  }
  const designs = [...before, document, ...after].map(textOf).join();
  const head = JSON.stringify({ format, version: Number(version), hand: before.length, work: work + branch, revision: ++revision, looked: looked && pending.length === 0 });
  const tail = JSON.stringify({ pending, name: document.title, time: new Date().toISOString(), build: asset("engine.wasm.gz").split("/").pop() });
  const text = `${head.slice(0, -1)},"designs":[${designs}],${tail.slice(1)}`;
  const put = workOf(written);
  const failed = (put && put.id !== work + branch && leave(put)) || write(SLOT + slot, text);
  if (failed) return failed;
  written = text;
  kept();
  return named() || note;
}

/** The tab has to find its slot again. @returns {string} empty, or the name of a note */
const named = () => (read(MINE, "sessionStorage") === slot ? "" : write(MINE, slot, "sessionStorage"));

let kept = () => {};

/** @param {() => void} listener called when the working copy has been written */
export const whenKept = (listener) => (kept = listener);

/** @param {string} text of a slot @returns {import("./left.js").Left | null} null when it is no work */
function workOf(text) {
  const { work, looked } = parsed(text);
  return work && !looked ? described("design", text, { id: work }) : null;
}

/** From its next change on, this tab's work is apart from that of another under the same name. */
export const fork = () => (branch = newId());

/** The working copy as it was written last; null when it is no work. */
export const worked = () => workOf(written);

/**
 * The working copies of tabs that have gone, as far as that can be told, the latest first.
 * @returns {Promise<{id: string, left: import("./left.js").Left | null}[]>}
 */
export async function orphans() {
  const { held = [] } = (await navigator.locks?.query().catch(() => null)) ?? {};
  const live = new Set(held.map(({ name }) => name));
  const gone = keys(SLOT).map((key) => key.slice(SLOT.length)).filter((id) => id !== slot && !live.has(LOCK + id));
  const found = gone.map((id) => ({ id, left: workOf(read(SLOT + id)), time: dated(read(SLOT + id)).time }));
  return found.sort((a, b) => (a.time < b.time ? 1 : -1));
}

/** @param {string} id of the slot of a tab that has gone */
export const dropSlot = (id) => remove(SLOT + id);

/**
 * What could not be read, or stopped the engine, goes to Earlier work as it is, so that it stops nothing again.
 * @param {"design" | "shop"} kind
 * @param {string} text
 * @returns {string} the name of a note
 */
export const quarantine = (kind, text) => leave(described(kind, text, { unread: true })) || "setAside";

/** The same for what this tab went on with. @returns {string} the name of a note */
export function quarantineSaved() {
  const { id, left, text } = source;
  const note = leave(described("design", text, { unread: true, ...(left && { id: left }) }));
  if (note) hold((slot = newId())); // it stays where it is
  else if (id === slot) remove(SLOT + id); // another tab's slot is that tab's
  written = read(SLOT + slot);
  return note || write(MINE, slot, "sessionStorage") || "setAside";
}
