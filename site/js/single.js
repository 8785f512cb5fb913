// @ts-check
// Saves the whole page as one file, with what may leave the house of the design in hand: who gets it opens it by a double click. It is put
// together from the parts that the browser has of the page already; only its shell is fetched, once.

import { asset } from "./assets.js";
import { download } from "./files.js";
import { fetchFile } from "./loader.js";
import { compose, partsOf } from "./single/compose.js";

const SHELL = "single.html.gz";

/** @param {string} carried what a customer's link has after its # @param {string} filename */
export async function saveSingle(carried, filename) {
  const packed = (await fetchFile(asset(SHELL))).body;
  const shell = await new Response(/** @type {ReadableStream<any>} */ (packed).pipeThrough(new DecompressionStream("gzip"))).text();
  const names = partsOf(shell);
  const parts = await Promise.all(names.map(async (name) => new Uint8Array(await (await fetchFile(asset(name))).arrayBuffer())));
  download(compose(shell, new Map(names.map((name, i) => [name, parts[i]])), carried), filename, "text/html");
}
