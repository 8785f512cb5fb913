// @ts-check
// Runs Go programs.

import "wasm_exec";

/**
 * Starts a program. It has run to its first wait when the promise resolves. These programs never end by themselves,
 * so an end, and whatever breaks in them, is reported as an error, which in a worker reaches the page.
 * @param {WebAssembly.Module} module
 */
export async function start(module) {
  const go = new Go();
  const instance = await WebAssembly.instantiate(module, go.importObject);
  const ended = go.run(instance).then(() => new Error("the program ended"), (error) => error);
  ended.then(reportError);
}
