// @ts-check
// A file that a customer sent as text: CSV or other text in any of the usual encodings, or the first sheet of a workbook.

const MOST = 20_000_000; // bytes of a text

/** A file that is not taken; its message is for the user. */
export class Refused extends Error {}

/**
 * @typedef {import("../api.js").Methods["enquiry_sheet"]} Sheet
 * @param {File} file
 * @param {DOMStringMap} words
 * @param {(args: Sheet["args"]) => Promise<Sheet["reply"]>} sheet
 * @param {(cancel: () => void) => void} begun hears how it is stopped
 * @returns {Promise<{text: string, notes: string[]}>}
 */
export async function textOf(file, words, sheet, begun) {
  const front = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  if (front[0] === 0x50 && front[1] === 0x4b && front[2] === 3 && front[3] === 4) {
    const { workbookOf } = await import("./workbook.js");
    const parts = await workbookOf(file, words, begun);
    return sheet(parts);
  }
  if (file.size > MOST) throw new Refused(words.large);
  return { text: decoded(new Uint8Array(await file.arrayBuffer()), words), notes: [] };
}

/** @param {Uint8Array} bytes @param {DOMStringMap} words */
function decoded(bytes, words) {
  const text = new TextDecoder(encodingOf(bytes)).decode(bytes);
  if (text.includes("\0")) throw new Refused(words.noText);
  return text;
}

/** UTF-16 says so at its front or by every other byte; what is no UTF-8 is taken for the single bytes of the West. @param {Uint8Array} bytes */
function encodingOf(bytes) {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return "utf-16le";
  if (a === 0xfe && b === 0xff) return "utf-16be";
  const front = bytes.subarray(0, 400);
  const empty = [0, 1].map((odd) => front.filter((byte, i) => byte === 0 && i % 2 === odd).length);
  if (empty[1] > front.length / 4 && empty[0] === 0) return "utf-16le";
  if (empty[0] > front.length / 4 && empty[1] === 0) return "utf-16be";
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}
