// @ts-check
// The design in hand: one document from which everything shown follows. Every change is one command to the engine.
//
// commit() changes the history; live() only shows what a command would give, always starting from the history's current
// document, so that a pull or a typed word makes one step of undo however many answers it takes.

import { createHistory } from "./history.js";
import { keepWorking } from "./store/slot.js";

/**
 * @typedef {{document: any, view: any}} Reply
 * @typedef {{settled: boolean, since?: number}} How  settled: in the history, not a glimpse; since: time of the pointer event
 */

/**
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {(live?: boolean) => {sheet: object, quantity: string}} area what the drawing and the section are to show; live: for a glimpse
 * @param {{show: (reply: Reply, how: How) => void, failed: (error: Error) => void, told: (name: string) => void}} page
 */
export function createDesign(engine, area, page) {
  const history = createHistory();

  /** @type {Promise<void>} */
  let queue = Promise.resolve();
  /** @type {null | {key: string, command: object}} a live command that is not yet in the history */
  let pending = null;
  /** @type {object[]} */
  let asked = []; // commands that were entered and not answered
  let era = 0; // answers to live commands of an earlier era come too late
  /** @type {Reply | null} */
  let shown = null;

  /**
   * @param {Reply} reply
   * @param {How} how
   */
  function show(reply, how) {
    shown = reply;
    page.show(reply, how);
  }

  /** Work on the history goes one at a time, each on what the last one left. @param {() => Promise<void>} work */
  function next(work) {
    era++;
    pending = null;
    queue = queue.then(work).catch(page.failed);
    return queue;
  }

  /** Writes the working copy before the engine is asked, and after it has answered. */
  function keep() {
    if (!history.entry) return;
    const told = keepWorking({ ...history.entry, pending: pending ? [...asked, pending.command] : asked });
    if (told) page.told(told);
  }

  /** @param {object | null} command */
  async function edited(command) {
    return engine.call("edit", { document: history.current, commands: command ? [command] : [], ...area() });
  }

  return {
    history,
    get document() {
      return shown?.document;
    },
    get view() {
      return shown?.view;
    },

    /**
     * Takes a document that came whole: saved, opened, an example.
     * @param {() => Promise<Reply | null>} ask
     * @param {{work?: string, looked?: boolean}} [how]
     */
    replace: (ask, how) =>
      next(async () => {
        const reply = await ask();
        if (!reply) return;
        history.arrive(reply, how);
        keep();
        show(reply, { settled: true });
      }),

    /**
     * @param {object} command
     * @param {number} [since]
     */
    commit(command, since) {
      const done = next(async () => {
        try {
          const reply = await edited(command);
          if (!same(reply.document, history.current)) history.push(reply.document);
          show(reply, { settled: true, since });
        } finally {
          asked = asked.filter((one) => one !== command);
          keep();
        }
      });
      asked = [...asked, command];
      keep();
      return done;
    },

    /**
     * @param {string} key what is being changed; another key first commits what is pending
     * @param {object} command
     * @param {{since?: number, accept?: (view: any) => boolean}} [more]
     */
    async live(key, command, { since, accept = () => true } = {}) {
      if (pending && pending.key !== key) this.commit(pending.command);
      const mine = { key, command };
      pending = mine;
      keep();
      const began = era;
      await queue;
      if (pending !== mine || began !== era) return;
      try {
        const args = { document: history.current, commands: [command], ...area(true) };
        const reply = await engine.callLatest("live", "edit", args);
        if (reply && began === era && accept(reply.view)) show(reply, { settled: false, since });
      } catch (error) {
        page.failed(/** @type {Error} */ (error));
      }
    },

    /** Forgets what is pending and shows the history's document again. */
    cancel() {
      const done = next(async () => show(await edited(null), { settled: true }));
      keep();
      return done;
    },

    /** Shows the same document anew, for a sheet of another size. */
    async refresh() {
      const began = era;
      await queue;
      if (began !== era || pending || !history.current) return;
      const args = { document: history.current, commands: [], ...area() };
      const reply = await engine.callLatest("refresh", "edit", args);
      if (reply && began === era && !pending) show(reply, { settled: true });
    },

    undo: () =>
      next(async () => {
        history.undo();
        show(await edited(null), { settled: true });
        keep();
      }),
    redo: () =>
      next(async () => {
        history.redo();
        show(await edited(null), { settled: true });
        keep();
      }),
  };
}

/**
 * The engine writes the members of a document always in the same order.
 * @param {object} a
 * @param {object} b
 */
function same(a, b) {
  return JSON.stringify(a) === JSON.stringify(b);
}
