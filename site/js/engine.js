// @ts-check
// The page's side of the engine: method and arguments in, a promise of the data out.

import { startWorker } from "./worker.js";

/** What the engine says of a request that it refuses: a message for the user, and one for each field at fault. */
export class EngineError extends Error {
  /** @param {{message: string, key?: string, fields?: {field: string, message: string}[]}} reply */
  constructor({ message, key = "", fields = [] }) {
    super(message);
    this.key = key;
    this.fields = fields;
  }
}

/** The engine itself failed. What was asked of it is lost; the next call starts it anew. */
export class EngineCrash extends Error {}

/** Batch work was cancelled. */
export class Cancelled extends Error {}

/** A worker with one engine. It starts at the first call, and again at the first call after a crash or a stop. */
class Line {
  constructor() {
    /** @type {Promise<Worker> | null} */
    this.worker = null;
    this.lastId = 0;
    /** @type {Map<number, {resolve: (data: any) => void, reject: (reason: Error) => void}>} */
    this.pending = new Map();
  }

  async start() {
    const worker = await startWorker();
    worker.onmessage = ({ data: { ready, id, reply } }) => ready || this.settle(id, JSON.parse(reply));
    worker.onerror = (event) => this.stop(new EngineCrash(event.message));
    return worker;
  }

  /**
   * @param {string} method
   * @param {object} args
   * @returns {Promise<any>}
   */
  async call(method, args) {
    const starting = (this.worker ??= this.start());
    const id = ++this.lastId;
    const reply = new Promise((resolve, reject) => this.pending.set(id, { resolve, reject }));
    starting.then(
      (worker) => worker.postMessage({ id, method, args: JSON.stringify(args) }),
      (error) => this.worker === starting && this.stop(error),
    );
    return reply;
  }

  /**
   * @param {number} id
   * @param {{data?: any, error?: {message: string}}} reply
   */
  settle(id, { data, error }) {
    const waiting = this.pending.get(id);
    this.pending.delete(id);
    if (error) waiting?.reject(new EngineError(error));
    else waiting?.resolve(data);
  }

  /** @param {Error} reason */
  stop(reason) {
    this.worker?.then((worker) => worker.terminate()).catch(() => {});
    this.worker = null;
    const lost = [...this.pending.values()];
    this.pending.clear();
    for (const { reject } of lost) reject(reason);
  }
}

export function createEngine() {
  const line = new Line();

  /** @type {Map<string, {next: null | {args: object, resolve: (data: any) => void, reject: (reason: any) => void}}>} */
  const slots = new Map();

  /** @type {Line[]} */
  let pool = [];

  return {
    /**
     * @param {string} method
     * @param {object} args
     * @returns {Promise<any>}
     */
    call: (method, args) => line.call(method, args),

    /**
     * For input that comes faster than answers: each slot of a method has one call running and at most one waiting. A newer
     * call takes the place of the waiting one, whose promise resolves to null. So answers never overtake each other,
     * and while the input goes on there is still something to show.
     * @param {string} slot
     * @param {string} method
     * @param {object} args
     * @returns {Promise<any>}
     */
    callLatest(slot, method, args) {
      const key = `${method} ${slot}`;
      const running = slots.get(key);
      if (running) {
        running.next?.resolve(null);
        return new Promise((resolve, reject) => (running.next = { args, resolve, reject }));
      }
      const state = { next: null };
      slots.set(key, state);
      return line.call(method, args).finally(() => {
        slots.delete(key);
        const next = /** @type {any} */ (state.next);
        if (next) this.callLatest(slot, method, next.args).then(next.resolve, next.reject);
      });
    },

    /**
     * Spreads calls of one method over the pool's workers, which start with the first batch.
     * The interactive worker never waits for them. onReply sees each answer as it comes.
     * @param {string} method
     * @param {object[]} list
     * @param {(data: any, index: number) => void} [onReply]
     * @returns {{done: Promise<any[]>, cancel: () => void}}
     */
    batch(method, list, onReply) {
      if (pool.length === 0) {
        const size = Math.min(2, navigator.hardwareConcurrency);
        pool = Array.from({ length: size }, () => new Line());
      }
      const lines = pool;
      /** @type {any[]} */
      const replies = [];
      let given = 0;
      const work = async (/** @type {Line} */ worker) => {
        while (given < list.length) {
          const index = given++;
          replies[index] = await worker.call(method, list[index]);
          onReply?.(replies[index], index);
        }
      };
      const cancel = () => {
        given = list.length;
        for (const worker of lines) worker.stop(new Cancelled());
      };
      return { done: Promise.all(lines.map(work)).then(() => replies), cancel };
    },
  };
}
