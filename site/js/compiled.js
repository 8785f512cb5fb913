// @ts-check
// Compiles a program while it comes.

/**
 * @param {ReadableStream<Uint8Array>} file
 * @param {boolean} packed by gzip
 * @returns {Promise<WebAssembly.Module>}
 */
export async function compiled(file, packed) {
  const bytes = packed ? file.pipeThrough(/** @type {any} */ (new DecompressionStream("gzip"))) : file;
  const program = new Response(bytes, { headers: { "Content-Type": "application/wasm" } });
  if (WebAssembly.compileStreaming) return WebAssembly.compileStreaming(program);
  return WebAssembly.compile(await program.arrayBuffer());
}
