// Tries the page's link unpacking with what a link may carry: valid texts, damaged ones, noise and bombs.
// Usage: node unpack.mjs SEED FIRST COUNT. Writes {count, failures, told} as JSON.

import { deflateRawSync } from "node:zlib";
import { pack, unpack } from "../js/links.js";

const MOST = 1 << 20;
const PREFIXES = ["l=", "c=", "d=", "o="]; // the last two as earlier builds made them
let PREFIX = "l=";
const [seed, first, count] = process.argv.slice(2).map(Number);

/** Random numbers below a limit, from seed and index alone. */
function below(index) {
  let state = Math.imul(seed + 1, 0x9e3779b1) ^ Math.imul(index + 1, 0x85ebca6b);
  return (limit) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4294967296) * limit);
  };
}

const base64 = (bytes) => Buffer.from(bytes).toString("base64url");
const ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
const STRANGE = [..."+/=%#&?<>\"' \n\0ü€😀\ud800"];
const letters = (below, list, most) => Array.from({ length: below(most) }, () => list[below(list.length)]).join("");
const bytes = (below, most) => Uint8Array.from({ length: below(most) }, () => below(256));

/** Texts as designs have them, and any other. */
function text(below) {
  if (below(2)) return JSON.stringify({ format: "finwright-design", version: below(9), designs: [{ title: letters(below, [...ALPHABET, ..."üß½ 😀"], 80) }] });
  return letters(below, [...ALPHABET, ..."{}[]\",:\\ \n\u0000ü€😀"], 300) || "x";
}

/** Whatever comes, the answer is a text that is neither empty nor longer than a link may hold. */
async function bounded(fragment) {
  const got = await unpack(fragment);
  if (typeof got !== "string" || got === "" || got.length > MOST) return `${JSON.stringify(fragment.slice(0, 120))}: ${typeof got} of ${got?.length}`;
  return "";
}

const kinds = [
  async (below) => {
    const sent = text(below);
    const got = await unpack(await pack(sent));
    return got === sent ? "" : `${JSON.stringify(sent)} comes as ${JSON.stringify(got)}`;
  },
  async (below) => {
    const fragment = await pack(text(below));
    const at = PREFIX.length + below(fragment.length - PREFIX.length);
    const change = [
      () => fragment.slice(0, at),
      () => fragment.slice(0, at) + ALPHABET[below(64)] + fragment.slice(at + 1),
      () => fragment.slice(0, at) + letters(below, [...ALPHABET, ...STRANGE], 20) + fragment.slice(at),
      () => fragment + fragment.slice(PREFIX.length),
    ];
    return bounded(change[below(change.length)]());
  },
  (below) => bounded(PREFIX + letters(below, [...ALPHABET], 400)),
  (below) => bounded(PREFIX + letters(below, [...ALPHABET, ...STRANGE], 200)),
  (below) => bounded(PREFIX + base64(bytes(below, 300))),
  (below) => bounded(PREFIX + base64(deflateRawSync(bytes(below, 300)))), // no UTF-8
  (below) => bounded(PREFIX + base64(Buffer.concat([deflateRawSync(text(below)), bytes(below, 40)]))),
];

/** A small link that unpacks to far more than a link may hold is refused. */
const packed = deflateRawSync(Buffer.alloc(3 * MOST, " "));
async function bomb(below) {
  const whole = below(2) ? packed : packed.subarray(0, packed.length - 1 - below(200));
  const got = await unpack(PREFIX + base64(whole));
  return got === "?" ? "" : `a bomb unpacks to ${got.length}`;
}

const told = [];
let failures = 0;
let at = "";
const failed = (why) => {
  failures++;
  if (told.length < 5) told.push(why);
};
process.on("unhandledRejection", (reason) => failed(`${at}: nobody caught ${reason}`));
for (let index = first; index < first + count; index++) {
  const next = below(index);
  at = `case ${index}`;
  PREFIX = PREFIXES[next(PREFIXES.length)];
  try {
    const why = await (index % 500 === 499 ? bomb(next) : kinds[index % kinds.length](next));
    if (why) failed(`${at}: ${why}`);
  } catch (error) {
    failed(`${at}: ${error}`);
  }
}
await new Promise((resolve) => setTimeout(resolve, 20)); // what nobody caught comes late
console.log(JSON.stringify({ count, failures, told }));
