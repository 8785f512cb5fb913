// @ts-check
// Undo is a list of documents and a place in it. Each stands among the other designs of its file.

import { newId } from "./store/local.js";

const LONGEST = 500;

/**
 * @template [D=import("./api.js").Document]
 * @typedef {{document: D, before: D[], after: D[], work: string, looked: boolean}} Entry
 *   document: the design in hand; before, after: the others of its file; work: which piece of work it belongs to, from its
 *   coming as a file, an example or a link until another takes its place; looked: as it came, not worked on
 */

/** @template D @typedef {ReturnType<typeof createHistory<D>>} History */

/** @template D of documents */
export function createHistory() {
  /** @type {Entry<D>[]} */
  let entries = [];
  let place = -1;

  /** @param {Entry<D>} entry */
  function put(entry) {
    entries = entries.slice(Math.max(0, place + 2 - LONGEST), place + 1);
    entries.push(entry);
    place = entries.length - 1;
  }

  return {
    get current() {
      return entries[place]?.document;
    },
    get entry() {
      return entries[place];
    },
    get canUndo() {
      return place > 0;
    },
    get canRedo() {
      return place < entries.length - 1;
    },

    /** Puts the next state of the current document after it; what was undone is gone. @param {D} document */
    push(document) {
      put({ ...entries[place], document, looked: false });
    },

    /**
     * Puts a document that came from elsewhere after the current one.
     * @param {{document: D, before?: D[], after?: D[]}} reply
     * @param {{work?: string, looked?: boolean}} [how]
     */
    arrive({ document, before = [], after = [] }, { work = newId(), looked = false } = {}) {
      const now = entries[place];
      if (now && JSON.stringify([now.before, now.document, now.after]) === JSON.stringify([before, document, after])) return;
      put({ document, before, after, work, looked });
    },
    undo() {
      if (place > 0) place--;
    },
    redo() {
      if (place < entries.length - 1) place++;
    },
  };
}
