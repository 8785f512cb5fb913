// @ts-check
// One Go engine in a worker. It starts from {module}; or from {packed}, followed by each {piece} of the program's file and an
// empty one: then it compiles, beside the page's thread, and answers {module} for the workers that come after it.
// {language} tells it what to speak. {id, method, args} is answered by {id, reply}, where args and reply may be
// lists, and an empty message by {ready} once the engine runs. Of a call that takes long the engine posts {share}, how much of it is done. JSON goes through unread.

import { compiled } from "./compiled.js";
import { start } from "./program.js";

/** @type {Promise<void>} */
let started;
/** @type {ReadableStreamDefaultController<Uint8Array>} */
let file;

/** @param {boolean} packed */
async function compile(packed) {
  const module = await compiled(new ReadableStream({ start: (controller) => void (file = controller) }), packed);
  self.postMessage({ module });
  return module;
}

// The page hears of errors alone.
self.addEventListener("unhandledrejection", ({ reason }) => reportError(reason));

self.onmessage = async ({ data: { module, packed, piece, language, id, method, args } }) => {
  if (piece) return piece.length ? file.enqueue(piece) : file.close();
  try {
    if (packed !== undefined) started = compile(packed).then(start);
    if (module) started = start(module);
    await started;
    if (language) globalThis.finwright.speak(language);
    /** @param {string} one */
    function answer(one) {
      const reply = globalThis.finwright.call(method, one);
      if (typeof reply !== "string") throw new Error("the program ended"); // it cannot say so itself
      return reply;
    }
    if (method) self.postMessage({ id, reply: typeof args === "string" ? answer(args) : args.map(answer) });
    else if (!module && !language && packed === undefined) self.postMessage({ ready: true });
  } catch (error) {
    reportError(error);
  }
};
