// @ts-check
// Starts workers with an engine in each. They start from a blob, so that the policy of the page holds in them: a worker
// from an address has the policy that came with its script, and a plain host sends none.

import { asset } from "./assets.js";
import { compile, LoadFailure } from "./loader.js";

/**
 * What first.js begins and main.js goes on with, since each is bundled on its own.
 * @type {{module?: Promise<WebAssembly.Module>, script?: Promise<string>, worker?: Promise<Worker>}}
 */
const begun = (globalThis.begun ??= {});

/**
 * What is loaded once for all, and anew after a failure.
 * @template T
 * @param {string} key
 * @param {() => Promise<T>} load
 * @returns {Promise<T>}
 */
function once(key, load) {
  const all = /** @type {Record<string, Promise<T> | undefined>} */ (begun);
  return (all[key] ??= load().catch((error) => {
    delete all[key];
    throw error;
  }));
}

/** The compiled engine: fetched and compiled once for all workers, and anew after a failure. Rejects with a LoadFailure. */
export const engineModule = () => once("module", () => compile(asset("engine.wasm.gz")));

/** Address of the workers' script, as a blob. */
const workerScript = () =>
  once("script", async () => {
    const url = asset("js/engine.worker.js");
    const response = await fetch(url);
    if (!response.ok) throw new LoadFailure("missing", `${response.status} ${url}`);
    return URL.createObjectURL(new Blob([await response.text()], { type: "text/javascript" }));
  });

async function launch() {
  const module = engineModule();
  module.catch(() => {}); // told below, or by the script's failure
  const worker = new Worker(await workerScript());
  try {
    worker.postMessage({ module: await module });
  } catch (error) {
    worker.terminate();
    throw error;
  }
  return worker;
}

/** Has the first worker on its way before anybody asks for it. */
export function prepareWorker() {
  begun.worker = launch();
  begun.worker.catch(() => {}); // told to the one who asks for it
}

/**
 * A worker with an engine starting in it; it posts {ready: true} once the engine runs, then answers {id, method, args} by
 * {id, reply}. Rejects with a LoadFailure.
 * @returns {Promise<Worker>}
 */
export async function startWorker() {
  const first = begun.worker;
  delete begun.worker;
  const worker = await (first ?? launch());
  worker.postMessage({}); // asks whether it is ready: before now nobody would have heard
  return worker;
}
