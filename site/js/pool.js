// @ts-check
// Long lists of calls, spread over a few workers beside the page's own, which never waits for them. The workers share the
// one compiled program. They take turns at the batches, a chunk at a time.

import { Queue } from "./queue.js";

/** @typedef {import("./api.js").Methods} Methods */

/** A batch was cancelled. */
export class Cancelled extends Error {}

const SIZE = 2; // workers, where there are as many cores
const CHUNK = 16; // calls at most in a message: a message costs little beside them, and no other batch waits long

/** Its workers start with the first batch. */
export function createPool() {
  /** @type {Queue[] | null} */ let idle = null;
  /** @type {{work: (queue: Queue) => Promise<void>, more: () => boolean}[]} what has chunks left, the next in turn first */
  const batches = [];

  function deal() {
    idle ??= Array.from({ length: Math.min(SIZE, navigator.hardwareConcurrency) }, () => new Queue("engine"));
    while (idle.length && batches.length) {
      const [batch] = batches.splice(0, 1);
      if (!batch.more()) continue; // it has ended
      const [queue] = idle.splice(0, 1);
      batch.work(queue).finally(() => {
        idle?.push(queue);
        deal();
      });
      if (batch.more()) batches.push(batch);
    }
  }

  /**
   * Calls a method for each of a list. onReply sees each answer as it comes; done has them all in the list's order. The
   * first call that is refused ends the batch. Cancelling gives up no worker: a chunk under way is finished unheard.
   * @template {keyof Methods} M
   * @param {M} method
   * @param {Methods[M]["args"][]} list
   * @param {(data: Methods[M]["reply"], index: number) => void} [onReply]
   * @param {(share: number) => void} [hear] how much of a call that takes long is done
   * @returns {{done: Promise<Methods[M]["reply"][]>, cancel: () => void}}
   */
  return function batch(method, list, onReply, hear) {
    /** @type {Methods[M]["reply"][]} */ const replies = [];
    let given = 0;
    let answered = 0;
    let cancel = () => {};

    /** @type {Promise<Methods[M]["reply"][]>} */
    const done = new Promise((resolve, reject) => {
      let over = false;
      /** @param {unknown} reason */
      const end = (reason) => {
        over = true;
        given = list.length;
        reject(reason);
      };
      cancel = () => end(new Cancelled());
      const more = () => given < list.length;

      /** @param {Queue} queue */
      async function work(queue) {
        const first = given;
        const chunk = list.slice(first, first + Math.min(CHUNK, Math.ceil((list.length - first) / (2 * SIZE)))); // small at the end, so that all end together
        given += chunk.length;
        try {
          const data = await queue.callEach(method, chunk, hear);
          for (const [i, reply] of data.entries()) {
            if (over) return;
            replies[first + i] = reply;
            answered++;
            onReply?.(reply, first + i);
          }
          if (answered === list.length) resolve(replies);
        } catch (error) {
          end(error);
        }
      }

      if (!list.length) return resolve(replies);
      batches.push({ work, more });
      deal();
    });
    return { done, cancel };
  };
}
