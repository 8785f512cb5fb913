// @ts-check
// The parts of a workbook that its first sheet needs, out of the packed file. They are inflated as a stream by the browser and counted: what
// unpacks to more than there may be is given up at once. Nothing but these parts is read, and no link is followed.

import { Refused } from "./file.js";

const MOST = 50_000_000; // bytes in all, unpacked
const MOST_PACKED = 100_000_000;
const DIRECTORY = 5_000_000; // bytes of the list of entries

/** @typedef {{method: number, packed: number, at: number}} Entry */

/**
 * @param {File} file
 * @param {DOMStringMap} words
 * @param {(cancel: () => void) => void} begun hears how it is stopped
 */
export async function workbookOf(file, words, begun) {
  const refuse = () => new Refused(words.large);
  if (file.size > MOST_PACKED) throw refuse();
  let left = MOST;
  let stopped = false;
  begun(() => (stopped = true));
  const entries = await entriesOf(file, words);

  /** @param {string} name @returns {Promise<string>} empty where there is none */
  async function part(name) {
    const entry = entries.get(name);
    if (!entry) return "";
    const head = new DataView(await file.slice(entry.at, entry.at + 30).arrayBuffer());
    if (head.byteLength < 30 || head.getUint32(0, true) !== 0x04034b50 || ![0, 8].includes(entry.method)) throw new Refused(words.noText);
    const from = entry.at + 30 + head.getUint16(26, true) + head.getUint16(28, true);
    const packed = file.slice(from, from + entry.packed).stream();
    const reader = (entry.method ? packed.pipeThrough(new DecompressionStream("deflate-raw")) : packed).getReader();
    const decoder = new TextDecoder();
    let text = "";
    for (;;) {
      const { done, value } = await reader.read().catch(() => {
        throw new Refused(words.noText);
      });
      if (done) return text + decoder.decode();
      left -= value.byteLength;
      if (left < 0 || stopped) {
        reader.cancel().catch(() => {});
        throw refuse();
      }
      text += decoder.decode(value, { stream: true });
    }
  }

  const [book, links] = [await part("xl/workbook.xml"), await part("xl/_rels/workbook.xml.rels")];
  const sheet = await part(sheetOf(book, links));
  if (!sheet) throw new Refused(words.noText);
  return { sheet, texts: await part("xl/sharedStrings.xml"), styles: await part("xl/styles.xml") };
}

/** Where the first sheet lies. @param {string} book @param {string} links */
function sheetOf(book, links) {
  const id = /<(?:\w+:)?sheet\b[^>]*?\br:id="([^"]+)"/.exec(book)?.[1] ?? "";
  const link = [...links.matchAll(/<(?:\w+:)?Relationship\b[^>]*>/g)].map(([tag]) => tag).find((tag) => tag.includes(`Id="${id}"`));
  const target = /\bTarget="([^"]+)"/.exec(link ?? "")?.[1] ?? "worksheets/sheet1.xml";
  return target.startsWith("/") ? target.slice(1) : `xl/${target}`;
}

/** The list of entries at the end of the file. @param {File} file @param {DOMStringMap} words */
async function entriesOf(file, words) {
  const wrong = () => new Refused(words.noText);
  const tailAt = Math.max(0, file.size - 66_000);
  const tail = new DataView(await file.slice(tailAt).arrayBuffer());
  let end = tail.byteLength - 22;
  while (end >= 0 && tail.getUint32(end, true) !== 0x06054b50) end--;
  if (end < 0) throw wrong();
  const [size, at] = [tail.getUint32(end + 12, true), tail.getUint32(end + 16, true)];
  if (size > DIRECTORY || at + size > file.size) throw wrong();
  const list = new DataView(await file.slice(at, at + size).arrayBuffer());
  const decoder = new TextDecoder();
  /** @type {Map<string, Entry>} */ const entries = new Map();
  for (let i = 0; i + 46 <= list.byteLength && list.getUint32(i, true) === 0x02014b50; ) {
    const [name, extra, note] = [28, 30, 32].map((place) => list.getUint16(i + place, true));
    if (i + 46 + name > list.byteLength) throw wrong();
    entries.set(decoder.decode(new Uint8Array(list.buffer, i + 46, name)), { method: list.getUint16(i + 10, true), packed: list.getUint32(i + 20, true), at: list.getUint32(i + 42, true) });
    i += 46 + name + extra + note;
  }
  return entries;
}
