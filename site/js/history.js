// @ts-check
// Undo: a list of steps and a place in it. A step holds what it changed, as it was and as it is now, and nothing of the rest:
// it costs the same in a job of one item and of thousands.

import { differences, jobOf, put, whole } from "./job.js";
import { newId } from "./store/local.js";

const LONGEST = 500;

/**
 * @typedef {import("./job.js").Document} Document
 * @typedef {import("./job.js").Item} Item
 * @typedef {import("./job.js").Job} Job
 * @typedef {{job: Job, hand: string, looked: boolean}} State  hand: the item in hand; looked: as it came, not worked on
 * @typedef {{state: State, item?: Item | null, head?: Job["head"]}} Side  item: null where there is none
 * @typedef {{id: string, was: Side, now: Side}} Step  id: of the item that it changed
 * @typedef {State & {document: Document, changed: Set<string>}} Entry
 *   document: of the item in hand; changed: the IDs of items that the store has not yet, which takes them out
 */

/** @typedef {ReturnType<typeof createHistory>} History */

export function createHistory() {
  /** @type {Step[]} */ let steps = [];
  let place = 0; // so many steps are done
  /** @type {State | null} */ let state = null;
  /** @type {Set<string>} */ let changed = new Set();
  /** @type {WeakMap<Item, Document>} */ const laidOut = new WeakMap();

  const item = () => state?.job.items.get(state.hand);

  /** @param {string} id @returns {Document | undefined} */
  function designOf(id) {
    const found = state?.job.items.get(id);
    if (!state || !found) return undefined;
    const document = laidOut.get(found) ?? whole(state.job.base, found.design);
    laidOut.set(found, document);
    return document;
  }

  /** @param {Step} step */
  function take(step) {
    steps.length = place;
    steps.push(step);
    if (steps.length > LONGEST) steps.shift();
    place = steps.length;
    go(step.id, step.now);
  }

  /** @param {string} id @param {Side} side */
  function go(id, { state: to, item, head }) {
    if (to.job !== state?.job) changed = new Set();
    state = to;
    if (head) state.job.head = head;
    if (item === undefined) return;
    put(state.job, id, item);
    changed.add(id);
  }

  return {
    designOf,
    /** The design in hand. */
    get current() {
      return designOf(this.hand);
    },
    /** @returns {Entry} */
    get entry() {
      return { .../** @type {State} */ (state), document: /** @type {Document} */ (this.current), changed };
    },
    get hand() {
      return state?.hand ?? "";
    },
    get job() {
      return /** @type {Job} */ (state?.job);
    },
    get canUndo() {
      return place > 0;
    },
    get canRedo() {
      return place < steps.length;
    },

    /** Puts the next state of the design in hand after it; what was undone is gone. @param {Document} document */
    push(document) {
      const [was, here] = [/** @type {Item} */ (item()), /** @type {State} */ (state)];
      const { shown, ...rest } = was; // that is what it answered before
      const now = { ...rest, design: differences(document, here.job.base) };
      laidOut.set(now, document);
      take({ id: was.id, was: { state: here, item: was }, now: { state: { ...here, looked: false }, item: now } });
    },

    /**
     * Another list of what the item in hand keeps beside its design, and with it another design.
     * @param {readonly import("./api.js").Kept[]} list
     * @param {Document} [document]
     */
    keep(list, document) {
      const [was, here] = [/** @type {Item} */ (item()), /** @type {State} */ (state)];
      const { kept, shown, ...rest } = was;
      const now = { ...rest, ...(document && { design: differences(document, here.job.base) }), ...(list.length > 0 && { kept: [...list] }), ...(!document && shown && { shown }) };
      laidOut.set(now, document ?? /** @type {Document} */ (this.current));
      take({ id: was.id, was: { state: here, item: was }, now: { state: { ...here, looked: false }, item: now } });
    },

    /** Puts an item into the list and in hand. @param {Item} item */
    add(item) {
      const here = /** @type {State} */ (state);
      take({ id: item.id, was: { state: here, item: null }, now: { state: { ...here, hand: item.id, looked: false }, item } });
    },

    /** Takes the item in hand out of the list, and another in hand. @param {string} next */
    remove(next) {
      const here = /** @type {State} */ (state);
      take({ id: here.hand, was: { state: here, item: item() }, now: { state: { ...here, hand: next, looked: false }, item: null } });
    },

    /** @param {Job["head"]} head */
    setHead(head) {
      const here = /** @type {State} */ (state);
      take({ id: "", was: { state: here, head: here.job.head }, now: { state: { ...here, looked: false }, head } });
    },

    /**
     * Notes with items what they answered, which is no step.
     * @param {{id: string, shown: import("./api.js").Shown}[]} list
     * @param {import("./api.js").Basis} basis that they were all found by
     */
    note(list, basis) {
      if (!state) return;
      const { job } = state;
      for (const { id, shown } of list) {
        const was = job.items.get(id);
        if (!was) continue;
        const by = placeIn(job.by, basis);
        if (was.shown && JSON.stringify({ ...was.shown, day: "" }) === JSON.stringify({ ...shown, by, day: "" })) continue; // it has answered so before
        const now = { ...was, shown: { ...shown, by } };
        const document = laidOut.get(was);
        if (document) laidOut.set(now, document);
        put(job, id, now);
        changed.add(id);
      }
    },

    /** Takes another item in hand, which is no step: undo brings back in hand what it changes. @param {string} id */
    hold(id) {
      if (state) state = { ...state, hand: id };
    },

    /**
     * Puts what came from elsewhere in the place of the job.
     * @param {{document: Document, job?: import("./api.js").Job, item?: string}} reply
     * @param {{work?: string, looked?: boolean}} [how]
     */
    arrive({ document, job, item: hand }, { work = newId(), looked = false } = {}) {
      const came = jobOf({ document, job }, work);
      const here = hand ?? came.order[0];
      const { shown, ...item } = /** @type {Item} */ (came.items.get(here));
      const design = differences(document, came.base);
      const held = { ...item, design, ...(shown && JSON.stringify(whole(came.base, item.design)) === JSON.stringify(document) && { shown }) };
      came.items.set(here, held);
      laidOut.set(held, document);
      const next = { job: came, hand: here, looked };
      if (!state) go("", { state: next });
      else if (!sameJob(state, next)) take({ id: "", was: { state }, now: { state: next } });
    },

    undo() {
      if (!place) return;
      const step = steps[--place];
      go(step.id, step.was);
    },
    redo() {
      if (place === steps.length) return;
      const step = steps[place++];
      go(step.id, step.now);
    },
  };
}

/** @param {Job["by"]} by @param {import("./api.js").Basis} basis */
function placeIn(by, basis) {
  const text = JSON.stringify(basis);
  const place = by.findIndex((one) => JSON.stringify(one) === text);
  return place < 0 ? by.push(basis) - 1 : place;
}

/** Whether nothing new came. @param {State} a @param {State} b */
function sameJob(a, b) {
  const [one, other] = [a, b].map(({ hand, job: { head, base, order, items } }) => [hand, head, base, order.map((id) => ({ ...items.get(id), at: 0 }))]);
  return JSON.stringify(one) === JSON.stringify(other);
}
