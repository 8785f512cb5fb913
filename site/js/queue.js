// @ts-check
// One worker with an engine: calls in, answers out in their order. Who needs it: engine.js for the page, pool.js for lists.

import { startWorker } from "./worker.js";

/** @typedef {import("./api.js").Methods} Methods */

/** What the engine says of a request that it refuses: a message for the user, one for each field at fault, and what a number alone may be meant as. */
export class EngineError extends Error {
  /** @param {import("./api.js").Refusal} refusal */
  constructor({ message, key, fields = [], readings = [], elsewhere = false }) {
    super(message);
    this.elsewhere = elsewhere;
    this.key = key;
    this.fields = fields;
    this.readings = readings;
  }
}

/** The engine died or hung twice over one call, or was told to stop. Others go on; that call is not asked again. */
export class EngineLost extends Error {}

const TICK = 250; // ms
const SLOW = 5000; // ms until the user is told
const HUNG = 15000; // ms until the engine is started anew
const START = 60000; // ms for a worker to come to life
const TRIES = 2;

/**
 * It is started by the first call, and anew when it dies or does not answer. It answers in the order it is asked, so the
 * first open call is always the one that it works on, and the one to blame.
 *
 * One that begins with the first program grows: what that sends elsewhere is held until the whole engine is there, which takes over in
 * a worker of its own as soon as nothing else is open.
 */
export class Queue {
  /** @param {import("./worker.js").Program} program @param {(slow: boolean) => void} [onSlow] */
  constructor(program, onSlow = () => {}) {
    this.program = program;
    this.onSlow = onSlow;
    /** @type {Promise<Worker> | null} the whole engine on its way */ this.growing = null;
    /** @type {Worker | null} and come, while the first program has calls open */ this.grown = null;
    /** @type {Worker | null} */ this.worker = null;
    /** @type {Promise<Worker> | null} */ this.starting = null;
    this.ready = false;
    this.lastId = 0;
    /** @type {{id: number, method: string, args: string | string[], hear: (share: number) => void, tries: number, held: boolean, resolve: (data: any) => void, reject: (reason: unknown) => void}[]} */
    this.calls = [];
    this.timer = 0;
    this.waited = 0; // ms that the first call has been at work, while somebody looks
  }

  /**
   * @template {keyof Methods} M
   * @param {M} method
   * @param {Methods[M]["args"]} args
   * @returns {Promise<Methods[M]["reply"]>}
   */
  call(method, args) {
    return this.ask(method, JSON.stringify(args));
  }

  /**
   * Many calls of one method in one message each way. The first that is refused refuses them all.
   * @template {keyof Methods} M
   * @param {M} method
   * @param {Methods[M]["args"][]} list
   * @param {(share: number) => void} [hear] how much of one is done, where the engine says so
   * @returns {Promise<Methods[M]["reply"][]>}
   */
  callEach(method, list, hear) {
    return this.ask(method, list.map((args) => JSON.stringify(args)), hear);
  }

  /** @template T @param {string} method @param {string | string[]} args @param {(share: number) => void} [hear] @returns {Promise<T>} */
  ask(method, args, hear = () => {}) {
    return new Promise((resolve, reject) => {
      const call = { id: ++this.lastId, method, args, hear, tries: 0, held: this.grown !== null, resolve, reject };
      this.calls.push(call);
      if (call.held) return;
      if (this.worker) this.post(call);
      else this.start();
    });
  }

  async start() {
    if (this.starting) return;
    const starting = (this.starting = startWorker(this.program));
    try {
      const worker = await starting;
      if (this.starting !== starting) return worker.terminate(); // ended before it began
      this.take(worker);
    } catch (error) {
      if (this.starting !== starting) return;
      this.starting = null;
      this.end(/** @type {Error} */ (error));
    }
  }

  /** @param {Worker} worker that all open calls are for from now on */
  take(worker) {
    this.worker = worker;
    // A worker that has been ended may still be heard: what it says is no longer of this line.
    const mine = (/** @type {() => void} */ act) => this.worker === worker && act();
    worker.onmessage = ({ data }) => mine(() => (data.ready ? this.wake() : data.share ? this.goesOn(data.share) : this.settle(data)));
    worker.onerror = (event) => mine(() => this.fail(event.message));
    worker.onmessageerror = () => mine(() => this.fail("message"));
    for (const call of this.open) this.post(call);
  }

  get open() {
    return this.calls.filter(({ held }) => !held);
  }

  get waiting() {
    return this.calls.filter(({ held }) => held);
  }

  /** The whole engine will soon be wanted: it comes beside the first program, which goes on, and where it does not come nobody is told. */
  expect() {
    if (this.program === "first" && this.ready) this.grow();
  }

  /** The whole engine is wanted: what waits for it is refused if it does not come. @param {number} [tries] that are left @returns {Promise<void>} */
  async grow(tries = TRIES) {
    if (this.growing) return;
    const growing = (this.growing = startWorker("engine", () => this.waiting.length > 0));
    try {
      const worker = await growing;
      if (this.growing !== growing) return worker.terminate(); // ended before it came
      this.grown = worker;
      this.takeOver();
    } catch (error) {
      if (this.growing !== growing) return;
      this.growing = null;
      const { waiting } = this;
      if (tries > 1 && waiting.length) return this.grow(tries - 1);
      this.calls = this.open;
      for (const { reject } of waiting) reject(error);
    }
  }

  /** Never two at work: the first program ends what it has. */
  takeOver() {
    if (!this.grown || this.open.length) return;
    const worker = this.grown;
    this.drop();
    this.program = "engine";
    this.starting = Promise.resolve(worker);
    for (const call of this.calls) call.held = false;
    this.take(worker);
  }

  /** @param {{id: number, method: string, args: string | string[]}} call */
  post({ id, method, args }) {
    this.worker?.postMessage({ id, method, args });
    this.timer ||= window.setInterval(() => this.tick(), TICK);
  }

  wake() {
    this.ready = true;
    this.rest();
  }

  /** The first call takes long, and does not hang. @param {number} share that is done */
  goesOn(share) {
    this.rest();
    this.open[0]?.hear(share);
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
    if (this.open.length && this.worker) return;
    clearInterval(this.timer);
    this.timer = 0;
  }

  /** @param {{id: number, reply: string | string[]}} answer */
  settle({ id, reply }) {
    const place = this.calls.findIndex((call) => call.id === id);
    if (place < 0) return;
    const [call] = this.calls.splice(place, 1);
    try {
      call.resolve(typeof reply === "string" ? dataOf(reply) : reply.map(dataOf));
    } catch (error) {
      if (this.program === "first" && error instanceof EngineError && error.elsewhere) this.hold(call);
      else call.reject(error);
    }
    this.rest();
    this.takeOver();
  }

  /** @param {typeof this.calls[0]} call */
  hold(call) {
    call.held = true;
    this.calls.push(call);
    this.grow();
  }

  drop() {
    this.worker?.terminate();
    this.worker = this.starting = this.growing = this.grown = null;
    this.ready = false;
    this.rest();
  }

  /** The worker is dead or hangs: another one gets what is open, its first call only once more. @param {string} why */
  fail(why) {
    const [first] = this.open;
    this.grown?.terminate();
    this.drop();
    for (const call of this.calls) call.held = false; // the next one sends them where they belong
    if (first && ++first.tries >= TRIES) {
      this.calls.splice(this.calls.indexOf(first), 1);
      first.reject(new EngineLost(`${first.method}: ${why}`));
    }
    if (this.calls.length) this.start();
  }

  /** Ends the worker and all that is open. @param {Error} reason */
  end(reason) {
    this.grown?.terminate();
    this.drop();
    for (const { reject } of this.calls.splice(0)) reject(reason);
  }
}

/** @param {string} reply */
function dataOf(reply) {
  const { data, error } = JSON.parse(reply);
  if (error) throw new EngineError(error);
  return data;
}
