// @ts-check
// Links: the text of a saved design after the # of the address, deflated and in URL-safe base64, so that no server sees it.

export const INTERNAL = "d="; // a whole design
export const CUSTOMERS = "o="; // what may leave the house of one
const PREFIX = 2; // letters
const MOST = 1 << 20; // bytes that a link may unpack to, against a hostile one
const DAMAGED = "?"; // no design file: the engine says so

/** @param {string} text @param {string} [kind] @returns {Promise<string>} what goes after the # */
export async function pack(text, kind = INTERNAL) {
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  const base64 = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  return kind + base64.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** @param {string} fragment @returns {Promise<string>} the text that was packed, or what is none */
export async function unpack(fragment) {
  try {
    const base64 = fragment.slice(PREFIX).replaceAll("-", "+").replaceAll("_", "/");
    const bytes = Uint8Array.from(atob(base64), (char) => char.charCodeAt(0));
    const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
    const decoder = new TextDecoder();
    let text = "";
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      text += decoder.decode(part.value, { stream: true });
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
  return [INTERNAL, CUSTOMERS].some((kind) => carried.startsWith(kind)) ? carried : "";
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
