// @ts-check
// Fetches, unpacks and starts Go programs.

import "wasm_exec";

/**
 * Compiles the program at url while it arrives.
 * @param {string} url
 * @returns {Promise<WebAssembly.Module>}
 */
export async function compile(url) {
  const response = await fetch(url);
  if (!response.ok || !response.body) throw new Error(`${response.status} ${url}`);
  const program = new Response(await unpacked(response.body), { headers: { "Content-Type": "application/wasm" } });
  return WebAssembly.compileStreaming(program);
}

/**
 * Some hosts have the browser unpack the file on the way, others do not: the first two bytes tell.
 * @param {ReadableStream<Uint8Array>} body
 */
async function unpacked(body) {
  const reader = body.getReader();
  let next = await reader.read();
  const [first, second] = next.value ?? [];
  const whole = new ReadableStream({
    async pull(controller) {
      if (next.done) return controller.close();
      controller.enqueue(next.value);
      next = await reader.read();
    },
  });
  const packed = first === 0x1f && second === 0x8b;
  return packed ? whole.pipeThrough(new DecompressionStream("gzip")) : whole;
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
