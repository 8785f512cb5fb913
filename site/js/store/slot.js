// @ts-check
// The working copy. Each tab has a slot of its own in the browser's store, written at once with every entry and before the
// engine is asked, so that nothing that was entered hangs on an answer. A slot belongs to the tab that holds its lock. It holds
// what belongs to all items; each of these has a key of its own, and only those that changed are written.

import { versionOf } from "../assets.js";
import { composed, dropItems, setOf, syncItems, writeItem, writeItems } from "./items.js";
import { allLeft, described, leave } from "./left.js";
import { keys, newId, parsed, read, remove, write } from "./local.js";

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
let name = ""; // of the piece of work that it goes on with
let written = ""; // what the slot held when this tab last looked
/** @type {import("../job.js").Job | null} */ let stored = null; // whose items its set holds
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

/** Names the working copy as it was last written. */
export const mark = () => `${slot} ${revision}`;

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
  name = goesOn ? work : newId();
  return { ...parts(source.text), work: name, looked: !goesOn || looked };
}

/**
 * Writes what was entered before there is a job to write, beside what this tab goes on with.
 * @param {import("../design.js").Pending[]} pending
 * @returns {string} empty, or the name of a note
 */
export function keepEntered(pending) {
  if (!slot || !pending.length || read(SLOT + slot) !== written) return ""; // it is not known yet, there is nothing, another tab has written
  const { pending: before = [], ...went } = parsed(source.id === slot ? source.text : composed(source.text));
  if (source.text && !went.format && !before.length) return ""; // it could not be read, and stays as it is until it is put aside
  const text = JSON.stringify({ ...went, ...(went.format && { work: name }), looked: false, revision: ++revision, pending: [...before, ...pending], time: new Date().toISOString() });
  const failed = write(SLOT + slot, text);
  if (!failed) written = text;
  return failed || named();
}

/**
 * An envelope as this page writes it, with its items, apart from the commands that it waits with.
 * @param {string} text
 * @returns {{saved: string, pending: import("../design.js").Pending[]}}
 */
export function parts(text) {
  const { pending, ...envelope } = parsed(text);
  if (!Array.isArray(pending)) return { saved: composed(text), pending: [] };
  return { saved: envelope.format ? composed(JSON.stringify(envelope)) : "", pending: pending.filter((one) => typeof one?.command?.op === "string") };
}

/**
 * Writes the working copy, at once: the items that changed, then the rest, which names them.
 * @param {Entry & {pending: import("../design.js").Pending[]}} state what the history holds, and the commands entered since that were not answered
 * @returns {string} empty, or the name of a note
 */
export function keepWorking({ job, hand, document, looked, changed, pending }) {
  let note = "";
  const found = read(SLOT + slot);
  if (found && found !== written) {
    slot = newId();
    hold(slot);
    branch = slot;
    written = "";
    note = FORKED;
  }
  const work = job.work + branch;
  const put = workOf(written);
  const left = put && put.id !== work ? put : null; // its items stay as they are
  const { set, failed } = (left && because(leave(left))) || writeChanged(job, changed, !left);
  if (failed) return failed;
  const text = JSON.stringify({
    ...{ format, version: Number(version), item: hand, work, revision: ++revision, looked: looked && pending.length === 0 },
    ...{ head: job.head, base: job.base, by: job.by, set, count: job.order.length, pending },
    ...{ name: document.title, time: new Date().toISOString(), build: versionOf("engine.wasm.gz") },
  });
  const refused = write(SLOT + slot, text);
  if (refused) {
    dropItems(set);
    return refused;
  }
  dropItems(set === setOf(written) ? "" : setOf(written));
  written = text;
  stored = job;
  changed.clear();
  kept();
  return named() || note;
}

const because = (/** @type {string} */ failed) => failed && { set: "", failed };

/**
 * @param {import("../job.js").Job} job
 * @param {Set<string>} changed
 * @param {boolean} mine whether the set that the slot names is this tab's to write in
 * @returns {{set: string, failed: string}}
 */
function writeChanged(job, changed, mine) {
  const set = mine ? setOf(written) : "";
  if (!set || !sameBase(job)) return writeItems(job);
  if (job !== stored) return { set, failed: syncItems(set, job) };
  for (const id of changed) {
    const failed = writeItem(set, id, job.items.get(id));
    if (failed) return { set, failed };
  }
  return { set, failed: "" };
}

/** Whether the items in the set differ from the base that they would then be kept with. @param {import("../job.js").Job} job */
const sameBase = (job) => job === stored || JSON.stringify(job.base) === JSON.stringify(parsed(written).base);

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
export function dropSlot(id) {
  const set = setOf(read(SLOT + id));
  remove(SLOT + id);
  dropItems(set);
}

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
  const note = leave(described("design", composed(text), { unread: true, ...(left && { id: left }) }));
  if (note) hold((slot = newId())); // it stays where it is
  else if (id === slot) dropSlot(id); // another tab's slot is that tab's
  written = read(SLOT + slot);
  return note || write(MINE, slot, "sessionStorage") || "setAside";
}
