// @ts-check
// Fetches the files that the page loads by script, and compiles programs. What fails says why.

import { compiled } from "./compiled.js";

/** Why something could not be loaded: a reason that the page has a text for (see trouble.js). */
export class LoadFailure extends Error {
  /** @param {string} reason @param {string} detail */
  constructor(reason, detail) {
    super(`${reason}: ${detail}`);
    this.reason = reason;
    this.detail = detail;
  }
}

const PATIENCE = 60000; // ms without progress

/**
 * Compiles the program at url while it arrives.
 * @param {string} url
 * @param {{again?: boolean, onProgress?: (received: number, total: number) => void, build?: typeof compiled}} [how]
 *   again: it failed before, so that a copy kept by the browser is not trusted; total is 0 where the host does not tell;
 *   build: who compiles it
 * @returns {Promise<WebAssembly.Module>}
 */
export async function compile(url, { again = false, onProgress = () => {}, build = compiled } = {}) {
  if (!globalThis.WebAssembly) throw new LoadFailure("old", "no WebAssembly");
  const watch = new AbortController();
  const stalled = new Promise((_, reject) => watch.signal.addEventListener("abort", () => reject(new LoadFailure("stalled", url))));
  let timer = 0;
  const alive = () => {
    clearTimeout(timer);
    timer = setTimeout(() => watch.abort(), PATIENCE);
  };
  alive();
  const load = async () => {
    const response = await fetchFile(url, { cache: again ? "reload" : "default", signal: watch.signal });
    const total = response.headers.has("Content-Encoding") ? 0 : Number(response.headers.get("Content-Length"));
    const arrival = new Arrival(response, (received) => {
      alive();
      onProgress(received, total);
    });
    try {
      const packed = await arrival.packed();
      if (packed && !globalThis.DecompressionStream) throw new LoadFailure("old", "no DecompressionStream");
      return await build(arrival.stream(), packed);
    } catch (error) {
      if (error instanceof LoadFailure) throw error;
      throw new LoadFailure(arrival.cut ? "network" : "damaged", `${url}: ${error}`);
    }
  };
  try {
    return await Promise.race([load(), stalled]);
  } finally {
    clearTimeout(timer);
  }
}

/** A file on its way. */
class Arrival {
  /** @param {Response} response @param {(received: number) => void} onBytes */
  constructor(response, onBytes) {
    this.reader = /** @type {ReadableStream<Uint8Array>} */ (response.body).getReader();
    this.onBytes = onBytes;
    this.received = 0;
    this.cut = false; // whether it broke off
  }

  async read() {
    try {
      const piece = await this.reader.read();
      this.received += piece.value?.length ?? 0;
      this.onBytes(this.received);
      return piece;
    } catch (error) {
      this.cut = true;
      throw error;
    }
  }

  /** Some hosts have the browser unpack the file on the way, others do not: the first two bytes tell. */
  async packed() {
    this.first = await this.read();
    const [first, second] = this.first.value ?? [];
    return first === 0x1f && second === 0x8b;
  }

  /** @returns {ReadableStream<Uint8Array>} the whole file */
  stream() {
    let next = this.first;
    return new ReadableStream({
      pull: async (controller) => {
        next ??= await this.read();
        if (next.done) return controller.close();
        controller.enqueue(next.value);
        next = undefined;
      },
    });
  }
}

/**
 * Rejects with a LoadFailure where the file cannot be had.
 * @param {string} url
 * @param {RequestInit} [options]
 */
export async function fetchFile(url, options) {
  const response = await fetch(url, options).catch(() => null);
  if (response?.ok && response.body) return response;
  response?.body?.cancel();
  throw new LoadFailure(await whyMissing(), `${response?.status ?? "no answer"}, ${url}`);
}

/** Why a file of the page cannot be had: the host cannot be reached, it has another build by now, or it keeps this one file back. */
export async function whyMissing() {
  try {
    const response = await fetch(location.pathname, { cache: "no-store" }); // past the service worker too
    const page = new DOMParser().parseFromString(await response.text(), "text/html");
    const here = buildOf(document);
    const there = buildOf(page);
    if (!there) return "network"; // somebody else answered
    return there === here ? "missing" : "renewed";
  } catch {
    return "network";
  }
}

/** @param {Document} page */
const buildOf = (page) => /** @type {HTMLMetaElement | null} */ (page.querySelector('meta[name="finwright-build"]'))?.content;
