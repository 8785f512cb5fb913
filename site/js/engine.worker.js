// @ts-check
// One Go engine in a worker: {module, language} starts it, {id, method, args} is answered by {id, reply}, where args and reply may be
// lists, and an empty message by {ready} once the engine runs. JSON goes through unread.

import { start } from "./program.js";

/** @type {Promise<void>} */
let started;

// The page hears of errors alone.
self.addEventListener("unhandledrejection", ({ reason }) => reportError(reason));

self.onmessage = async ({ data: { module, language, id, method, args } }) => {
  try {
    if (module) started = start(module).then(() => language && globalThis.finwright.speak(language));
    await started;
    /** @param {string} one */
    function answer(one) {
      const reply = globalThis.finwright.call(method, one);
      if (typeof reply !== "string") throw new Error("the program ended"); // it cannot say so itself
      return reply;
    }
    if (method) self.postMessage({ id, reply: typeof args === "string" ? answer(args) : args.map(answer) });
    else if (!module) self.postMessage({ ready: true });
  } catch (error) {
    reportError(error);
  }
};
