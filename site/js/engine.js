// @ts-check
// The page's side of the engine: method and arguments in, a promise of the data out.

import { EngineLost, Queue } from "./queue.js";
import { createPool } from "./pool.js";

export { EngineError, EngineLost } from "./queue.js";
export { Cancelled } from "./pool.js";

/** @typedef {import("./api.js").Methods} Methods */

/** @param {(slow: boolean) => void} [onSlow] told when a call takes long, and when that is over */
export function createEngine(onSlow) {
  const queue = new Queue("first", onSlow);
  queue.start();

  /**
   * @typedef {{args: any, resolve: (data: any) => void, reject: (reason: unknown) => void}} Waiting
   * @type {Map<string, {next: Waiting | null}>}
   */
  const slots = new Map();

  return {
    /**
     * @template {keyof Methods} M
     * @param {M} method
     * @param {Methods[M]["args"]} args
     * @returns {Promise<Methods[M]["reply"]>}
     */
    call: (method, args) => queue.call(method, args),

    /** What the first program cannot do will soon be asked. */
    expect: () => queue.expect(),

    /** Gives up all that was asked, which rejects with EngineLost. */
    stop() {
      for (const slot of slots.values()) {
        slot.next?.resolve(null);
        slot.next = null;
      }
      queue.end(new EngineLost("stopped"));
    },

    /**
     * For input that comes faster than answers: each slot of a method has one call running and at most one waiting. A newer
     * call takes the place of the waiting one, whose promise resolves to null. So answers never overtake each other,
     * and while the input goes on there is still something to show.
     * @template {keyof Methods} M
     * @param {string} slot
     * @param {M} method
     * @param {Methods[M]["args"]} args
     * @returns {Promise<Methods[M]["reply"] | null>}
     */
    callLatest(slot, method, args) {
      const key = `${method} ${slot}`;
      const running = slots.get(key);
      if (running) {
        running.next?.resolve(null);
        return new Promise((resolve, reject) => (running.next = { args, resolve, reject }));
      }
      /** @type {{next: Waiting | null}} */ const state = { next: null };
      slots.set(key, state);
      return queue.call(method, args).finally(() => {
        slots.delete(key);
        const { next } = state;
        if (next) this.callLatest(slot, method, next.args).then(next.resolve, next.reject);
      });
    },

    batch: createPool(),
  };
}
