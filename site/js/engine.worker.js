// @ts-check
// One Go engine in a worker: {module} starts it, {id, method, args} is answered by {id, reply}. JSON goes through unread.

import { start } from "./loader.js";

/** @type {Promise<void>} */
let started;

self.onmessage = async ({ data: { module, id, method, args } }) => {
  try {
    if (module) started = start(module);
    await started;
    if (method) self.postMessage({ id, reply: globalThis.finwright.call(method, args) });
  } catch (error) {
    reportError(error);
  }
};
