// @ts-check
// Fetches, unpacks and starts Go programs.

import "wasm_exec";

/**
 * Compiles the program at url.
 * @param {string} url
 * @returns {Promise<WebAssembly.Module>}
 */
export async function compile(url) {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${response.status} ${url}`);
  const bytes = await response.arrayBuffer();
  const program = new Response(unpacked(bytes), { headers: { "Content-Type": "application/wasm" } });
  return WebAssembly.compileStreaming(program);
}

/**
 * Some hosts have the browser unpack the file on the way, others do not: the first two bytes tell.
 * @param {ArrayBuffer} bytes
 */
function unpacked(bytes) {
  const stream = new Blob([bytes]).stream();
  const [first, second] = new Uint8Array(bytes, 0, 2);
  const packed = first === 0x1f && second === 0x8b;
  return packed ? stream.pipeThrough(new DecompressionStream("gzip")) : stream;
}

/**
 * Starts a program. It has run to its first wait when the promise resolves. These programs never end by themselves,
 * so an end is reported as an error, which in a worker reaches the page.
 * @param {WebAssembly.Module} module
 */
export async function start(module) {
  const go = new Go();
  const instance = await WebAssembly.instantiate(module, go.importObject);
  go.run(instance).then(() => reportError(new Error("the program ended")));
}
