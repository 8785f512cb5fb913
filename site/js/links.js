// @ts-check
// Links: the text of a saved design after the # of the address, deflated and in URL-safe base64, so that no server sees it. What most designs
// say alike is taken as read (usual.js): a link is a fifth as long by that, and no mail breaks it.

export const INTERNAL = "l="; // a whole design
export const CUSTOMERS = "c="; // what may leave the house of one
const PLAIN = ["d=", "o="]; // the same, as earlier builds made them: nothing is taken as read
const KINDS = [INTERNAL, CUSTOMERS, ...PLAIN];
const PREFIX = 2; // letters
const MOST = 1 << 20; // bytes that a link may unpack to, against a hostile one
const DAMAGED = "?"; // no design file: the engine says so

/** Whether a link is for a customer. @param {string} fragment */
export const forCustomer = (fragment) => fragment.startsWith(CUSTOMERS) || fragment.startsWith("o=");

/** @param {string} text @param {string} [kind] @returns {Promise<string>} what goes after the # */
export async function pack(text, kind = INTERNAL) {
  const [{ deflateSync }, { usual }] = await Promise.all([import("fflate"), import("./usual.js")]);
  const encoder = new TextEncoder();
  const bytes = deflateSync(encoder.encode(text), { level: 9, dictionary: encoder.encode(usual) });
  const base64 = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  return kind + base64.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/**
 * What is taken as read, as a block that is not deflated: what follows it in a stream refers to it, so that the browser's own reader will do.
 * @param {string} fragment
 */
async function before(fragment) {
  if (PLAIN.some((kind) => fragment.startsWith(kind))) return { block: new Uint8Array(), length: 0 };
  const bytes = new TextEncoder().encode((await import("./usual.js")).usual);
  const head = [0, bytes.length & 0xff, bytes.length >> 8, ~bytes.length & 0xff, (~bytes.length >> 8) & 0xff];
  return { block: new Uint8Array([...head, ...bytes]), length: bytes.length };
}

/** @param {string} fragment @returns {Promise<string>} the text that was packed, or what is none */
export async function unpack(fragment) {
  try {
    const base64 = fragment.slice(PREFIX).replaceAll("-", "+").replaceAll("_", "/");
    const bytes = Uint8Array.from(atob(base64), (char) => char.charCodeAt(0));
    const { block, length } = await before(fragment);
    const reader = new Blob([block, bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
    const decoder = new TextDecoder();
    let text = "";
    let skipped = 0;
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      const known = Math.min(length - skipped, part.value.length);
      skipped += known;
      text += decoder.decode(part.value.subarray(known), { stream: true });
      if (text.length <= MOST) continue;
      reader.cancel();
      return DAMAGED;
    }
    return text || DAMAGED;
  } catch {
    return DAMAGED;
  }
}

/** What an address carries after #. */
export function fragment() {
  const carried = location.hash.slice(1);
  return KINDS.some((kind) => carried.startsWith(kind)) ? carried : "";
}

/** Once it is opened the address is plain, so that a reload does not undo later work. @param {string} carried */
export function dropFragment(carried) {
  if (fragment() === carried) history.replaceState(null, "", location.pathname + location.search);
}

let put = ""; // what this page put into the address itself

/** Takes a link of an earlier design out of the address, where this page put it: any other has come to be opened. */
export function withdrawLink() {
  if (put) dropFragment(put);
  put = "";
}

/** True when the clipboard took it; else the address line has it. @param {string} fragment */
export async function copyLink(fragment) {
  const url = new URL(location.href);
  url.hash = fragment;
  try {
    await navigator.clipboard.writeText(url.href);
    return true;
  } catch {
    history.replaceState(null, "", url);
    put = fragment;
    return false;
  }
}
