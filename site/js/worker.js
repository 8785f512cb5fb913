// @ts-check
// Starts a worker with an engine of its own.

import { asset } from "./assets.js";

export function startWorker() {
  const worker = new Worker(asset("js/engine.worker.js"), { type: "module" });
  worker.postMessage({ program: asset("engine.wasm.gz") });
  return worker;
}
