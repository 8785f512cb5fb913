// @ts-check
// Starts workers with an engine in each. They start from a blob, so that the policy of the page holds in them: a worker
// from an address has the policy that came with its script, and a plain host sends none.

import { asset, has } from "./assets.js";
import { compile, fetchFile, LoadFailure } from "./loader.js";
import { progress, progressed, show, solved } from "./trouble.js";

/** @typedef {"first" | "engine"} Program  the first is a part of the engine: smaller, and there sooner */

/**
 * What first.js begins and main.js goes on with, since each is bundled on its own; script: address of the blob;
 * failed: it is not the first try.
 * @type {{script?: string, modules: Partial<Record<Program, Promise<WebAssembly.Module>>>, language?: Promise<string>, worker?: Promise<Worker>, failed?: boolean}}
 */
const begun = (globalThis.begun ??= { modules: {} });

/**
 * A program, for all workers: the first one compiles it, so that the page's thread has nothing to do with it, and it is
 * fetched and compiled anew after a failure. Rejects with a LoadFailure.
 * @param {Program} program
 * @param {Worker} worker
 * @param {Promise<never>} broken
 * @param {(received: number, total: number) => void} onProgress
 */
async function give(program, worker, broken, onProgress) {
  const { modules } = begun;
  if (!has(`${program}.wasm.gz`)) program = "engine"; // a page that is one file has no use for a part of it
  if (modules[program]) return worker.postMessage({ module: await modules[program] });
  const build = (/** @type {ReadableStream<Uint8Array>} */ file, /** @type {boolean} */ packed) => compiledIn(worker, file, packed);
  const module = (modules[program] = Promise.race([broken, compile(asset(`${program}.wasm.gz`), { again: begun.failed, onProgress, build })]));
  module.catch(() => delete modules[program]);
  await module;
}

/** @param {Worker} worker @param {ReadableStream<Uint8Array>} file @param {boolean} packed @returns {Promise<WebAssembly.Module>} */
async function compiledIn(worker, file, packed) {
  const module = new Promise((resolve) => (worker.onmessage = ({ data }) => resolve(data.module)));
  worker.postMessage({ packed });
  const reader = file.getReader();
  for (;;) {
    const { done, value = new Uint8Array() } = await reader.read();
    worker.postMessage({ piece: value }, [value.buffer]);
    if (done) break;
  }
  const dead = new Promise((_, reject) => setTimeout(() => reject(new LoadFailure("damaged", "no answer")), COMPILED));
  return Promise.race([module, dead]);
}

const COMPILED = 30000; // ms for a worker that has the whole file; one that died says nothing

/** Rejects when something breaks in a worker, from its first line on. @param {Worker} worker @returns {Promise<never>} */
function breaking(worker) {
  const broken = new Promise((_, reject) => worker.addEventListener("error", ({ message }) => reject(new LoadFailure("damaged", message))));
  broken.catch(() => {}); // once it has started, what breaks is the line of calls' to hear
  return /** @type {Promise<never>} */ (broken);
}

/** What the engine is to speak where it is not English; fetched while the engine loads, or again with it. */
function language() {
  if (!has("language.txt")) return undefined;
  begun.language ??= fetchFile(asset("language.txt"))
    .then((response) => response.text())
    .catch((error) => {
      begun.language = undefined;
      throw error;
    });
  return begun.language;
}

/** What keeps a worker from starting is said in the page until one starts, if somebody waits. @param {Program} program @param {() => boolean} waits */
async function launch(program, waits) {
  if (begun.failed && waits()) show("engine", "again");
  /** @type {Worker | undefined} */ let worker;
  try {
    worker = new Worker(begun.script ?? ""); // before the program is there: it starts while that loads
    const broken = breaking(worker);
    const [texts] = await Promise.race([broken, Promise.all([language(), give(program, worker, broken, (received, total) => waits() && progress(received, total))])]);
    if (texts) worker.postMessage({ language: texts });
    begun.failed = false;
    solved("engine");
    return worker;
  } catch (error) {
    worker?.terminate();
    const failure = error instanceof LoadFailure ? error : new LoadFailure("missing", String(error));
    if (waits()) {
      begun.failed = true;
      show("engine", failure.reason);
    }
    throw failure;
  } finally {
    progressed();
  }
}

/** Has the first worker on its way before anybody asks for it. @param {string} script of all workers */
export function prepareWorker(script) {
  begun.script = URL.createObjectURL(new Blob([script], { type: "text/javascript" }));
  begun.worker = launch("first", () => true);
  begun.worker.catch(() => {}); // told to the one who asks for it
}

/**
 * A worker with a program starting in it; it posts {ready: true} once the engine runs, then answers {id, method, args} by
 * {id, reply}. Rejects with a LoadFailure.
 * @param {Program} program
 * @param {() => boolean} [waits] whether somebody does by now: else it comes without a word, or not
 * @returns {Promise<Worker>}
 */
export async function startWorker(program, waits = () => true) {
  const first = program === "first" ? begun.worker : undefined;
  if (first) begun.worker = undefined;
  const worker = await (first ?? launch(program, waits)).catch(({ reason, detail }) => {
    throw new LoadFailure(reason, detail); // the class in first.js is another one of the same name
  });
  worker.postMessage({}); // asks whether it is ready: before now nobody would have heard
  return worker;
}
