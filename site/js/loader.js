// @ts-check
// Fetches and compiles programs.

/** Why a program could not be loaded: the name of a text of the page. */
export class LoadFailure extends Error {
  /** @param {string} reason @param {string} detail */
  constructor(reason, detail) {
    super(`${reason}: ${detail}`);
    this.reason = reason;
  }
}

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
