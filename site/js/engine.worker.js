// @ts-check
// One Go engine in a worker: {program} loads and starts it, {id, method, args} is answered by {id, reply}. JSON goes
// through unread.

import { compile, start } from "./loader.js";

/** @type {Promise<void>} */
let started;

self.onmessage = async ({ data: { program, id, method, args } }) => {
  try {
    if (program) started = compile(program).then(start);
    await started;
    if (method) self.postMessage({ id, reply: globalThis.finwright.call(method, args) });
  } catch (error) {
    reportError(error);
  }
};
