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

/** The engine died or hung twice over one call, or was told to stop. Others go on; that call is not asked again. */
export class EngineLost extends Error {}

/** Batch work was cancelled. */
export class Cancelled extends Error {}

const TICK = 250; // ms
const SLOW = 5000; // ms until the user is told
const HUNG = 15000; // ms until the engine is started anew
const START = 60000; // ms for a worker to come to life
const TRIES = 2;

/**
 * A worker with one engine. It is started by the first call, and anew when it dies or does not answer. It answers in the
 * order it is asked, so the first call is always the one that it works on, and the one to blame.
 */
class Line {
  /** @param {(slow: boolean) => void} [onSlow] */
  constructor(onSlow = () => {}) {
    this.onSlow = onSlow;
    /** @type {Worker | null} */ this.worker = null;
    /** @type {Promise<Worker> | null} */ this.starting = null;
    this.ready = false;
    this.lastId = 0;
    /** @type {{id: number, method: string, args: string, tries: number, resolve: (data: any) => void, reject: (reason: Error) => void}[]} */
    this.calls = [];
    this.timer = 0;
    this.waited = 0; // ms that the first call has been at work, while somebody looks
  }

  /**
   * @param {string} method
   * @param {object} args
   * @returns {Promise<any>}
   */
  call(method, args) {
    return new Promise((resolve, reject) => {
      const call = { id: ++this.lastId, method, args: JSON.stringify(args), tries: 0, resolve, reject };
      this.calls.push(call);
      if (this.worker) this.post(call);
      else this.start();
    });
  }

  async start() {
    if (this.starting) return;
    const starting = (this.starting = startWorker());
    try {
      const worker = await starting;
      if (this.starting !== starting) return worker.terminate(); // ended before it began
      this.worker = worker;
      worker.onmessage = ({ data }) => (data.ready ? this.wake() : this.settle(data));
      worker.onerror = (event) => this.fail(event.message);
      worker.onmessageerror = () => this.fail("message");
      for (const call of this.calls) this.post(call);
    } catch (error) {
      if (this.starting !== starting) return;
      this.starting = null;
      this.end(/** @type {Error} */ (error));
    }
  }

  /** @param {{id: number, method: string, args: string}} call */
  post({ id, method, args }) {
    this.worker?.postMessage({ id, method, args });
    this.timer ||= window.setInterval(() => this.tick(), TICK);
  }

  wake() {
    this.ready = true;
    this.rest();
  }

  /** Ticks are counted, not time: a machine asleep and a tab out of sight make none. */
  tick() {
    if (document.visibilityState !== "visible") return;
    this.waited += TICK;
    if (!this.ready) return this.waited >= START && this.fail("start");
    if (this.waited === SLOW) this.onSlow(true);
    if (this.waited >= HUNG) this.fail("hung");
  }

  /** The first call is another one now, or there is none. */
  rest() {
    if (this.waited >= SLOW) this.onSlow(false);
    this.waited = 0;
    if (this.calls.length && this.worker) return;
    clearInterval(this.timer);
    this.timer = 0;
  }

  /** @param {{id: number, reply: string}} answer */
  settle({ id, reply }) {
    const place = this.calls.findIndex((call) => call.id === id);
    if (place < 0) return;
    const [{ resolve, reject }] = this.calls.splice(place, 1);
    this.rest();
    const { data, error } = JSON.parse(reply);
    if (error) reject(new EngineError(error));
    else resolve(data);
  }

  drop() {
    this.worker?.terminate();
    this.worker = null;
    this.starting = null;
    this.ready = false;
    this.rest();
  }

  /** The worker is dead or hangs: another one gets what is open, its first call only once more. @param {string} why */
  fail(why) {
    this.drop();
    const [first] = this.calls;
    if (!first) return;
    if (++first.tries >= TRIES) {
      this.calls.shift();
      first.reject(new EngineLost(`${first.method}: ${why}`));
    }
    if (this.calls.length) this.start();
  }

  /** Ends the worker and all that is open. @param {Error} reason */
  end(reason) {
    this.drop();
    for (const { reject } of this.calls.splice(0)) reject(reason);
  }
}

/** @param {(slow: boolean) => void} [onSlow] told when a call takes long, and when that is over */
export function createEngine(onSlow) {
  const line = new Line(onSlow);
  line.start();

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

    /** Gives up all that was asked, which rejects with EngineLost. */
    stop() {
      for (const slot of slots.values()) {
        slot.next?.resolve(null);
        slot.next = null;
      }
      line.end(new EngineLost("stopped"));
    },

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
        for (const worker of lines) worker.end(new Cancelled());
      };
      return { done: Promise.all(lines.map(work)).then(() => replies), cancel };
    },
  };
}
