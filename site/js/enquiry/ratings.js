// @ts-check
// What decides of each item: rated by the pool, once for all items that have one design, and not again while it stays as it is.

import { differences, whole } from "../job.js";

/**
 * @typedef {import("../api.js").ShownEnquiry} Enquiry
 * @typedef {import("../api.js").Differences} Differences
 * @typedef {import("../job.js").Job} Job
 * @typedef {{row: import("../api.js").ShownPriced, tally: import("../api.js").Tally, breaks?: string}} Rated  breaks: what a tube costs in other quantities, where that was asked for
 * @typedef {(list: Omit<import("../api.js").EnquiryRowsArgs, "shop">[], onReply: (reply: import("../api.js").Methods["enquiry_breaks"]["reply"], index: number) => void) => {done: Promise<unknown>, cancel: () => void}} Break
 * @typedef {(list: Omit<import("../api.js").EnquiryRowsArgs, "shop">[], onReply: (reply: import("../api.js").Methods["enquiry_rows"]["reply"], index: number) => void) => {done: Promise<unknown>, cancel: () => void}} Rate
 */

const [LEAST, MOST] = [4, 50]; // items that are rated at a time

/** @param {Rate} rate @param {Break} price in other quantities */
export function createRatings(rate, price) {
  /** @type {Map<string, Rated>} by key, for one shop and one system of units */ const known = new Map();
  let judgedBy = "";
  /** @type {Enquiry | null} */ let shown = null;
  /** @type {Job | null} whose items these are */ let held = null;
  /** @type {string[]} of the items; empty: it is no longer in the job */ let keys = [];
  /** @type {WeakMap<object, string>} of designs of the job */ const keysOfJob = new WeakMap();

  /** An item as the customer's words have it. @param {Enquiry} enquiry @param {number} i @returns {Differences} */
  function read({ entries, designs, items }, i) {
    const { design, mark, title } = items[i];
    return { ...(title && { title }), mark, fields: Object.fromEntries(designs[design].map((at) => [entries[at].field, { text: entries[at].text, origin: entries[at].origin }])) };
  }

  /** That of the job, once they are its items. @param {number} i @returns {Differences | null} */
  function designOf(i) {
    if (!shown || !held) return shown && read(shown, i);
    const item = held.items.get(String(i + 1));
    return item ? differences(whole(held.base, item.design), shown.base) : null;
  }

  /** @param {number} i */
  function keyInJob(i) {
    const item = held?.items.get(String(i + 1));
    if (!item) return "";
    const key = keysOfJob.get(item.design) ?? keyOf(Object.entries(designOf(i)?.fields ?? {}).map(([field, { text }]) => `${field} ${text}`), designOf(i)?.spans);
    keysOfJob.set(item.design, key);
    return key;
  }

  /** An item of each design. @returns {[key: string, item: number][]} */
  function firsts() {
    const first = new Map(keys.map((key, i) => [key, i]));
    first.delete("");
    return [...first];
  }

  /**
   * @template R
   * @param {[key: string, item: number][]} list
   * @param {{day?: string}} more
   * @param {(done: number, of: number) => void} hear
   * @param {(list: Omit<import("../api.js").EnquiryRowsArgs, "shop">[], onReply: (reply: R, index: number) => void) => {done: Promise<unknown>, cancel: () => void}} ask
   * @param {(key: string, reply: R, i: number) => void} put
   */
  function inChunks(list, more, hear, ask, put) {
    const size = Math.min(MOST, Math.max(LEAST, Math.ceil(list.length / 8)));
    const chunks = Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
    const base = /** @type {Enquiry} */ (shown).base;
    let done = 0;
    hear(0, list.length);
    return ask(chunks.map((chunk) => ({ base, ...more, ...shared(chunk.map(([, i]) => designOf(i) ?? {})) })), (reply, index) => {
      chunks[index].forEach(([key], i) => put(key, reply, i));
      hear((done += chunks[index].length), list.length);
    });
  }

  return {
    designOf, read,

    /** What is to be rated from now on. @param {Enquiry} enquiry @param {Job | null} job @param {string} shop @returns {boolean} whether it is something else */
    of(enquiry, job, shop) {
      const by = JSON.stringify([enquiry.base.units, shop]);
      const before = judgedBy;
      if (by !== before) known.clear();
      [shown, held, judgedBy] = [enquiry, job, by];
      const texts = enquiry.entries.map(({ field, text }) => `${field} ${text}`);
      const ofDesigns = job ? [] : enquiry.designs.map((list) => keyOf(list.map((at) => texts[at])));
      const was = keys;
      keys = enquiry.items.map(({ design }, i) => (job ? keyInJob(i) : ofDesigns[design]));
      return by !== before || keys.length !== was.length || keys.some((key, i) => key !== was[i]);
    },
    /** @param {number} i */
    at: (i) => known.get(keys[i]),
    forget: () => known.clear(),

    /** Rates what has no row yet. @param {(done: number, of: number) => void} hear */
    run(hear) {
      const missing = firsts().filter(([key]) => !known.has(key));
      return inChunks(missing, {}, hear, rate, (key, { rows, tallies }, i) => known.set(key, { row: rows[i], tally: tallies[i] }));
    },

    /** Prices in other quantities what is priced and has not been yet. @param {(done: number, of: number) => void} hear */
    breaks(hear) {
      const missing = firsts().filter(([key]) => known.has(key) && known.get(key)?.breaks === undefined);
      return inChunks(missing, {}, hear, price, (key, { breaks }, i) => {
        const found = known.get(key);
        if (found) known.set(key, { ...found, breaks: breaks[i] });
      });
    },
    /** Whether any item has been. */
    broken: () => keys.some((key) => known.get(key)?.breaks !== undefined),

    /** What items have in common that are made together: each tally once, and which of them an item has. @param {string} day @param {(done: number, of: number) => void} hear */
    works(day, hear) {
      /** @type {Map<string, import("../api.js").Tally>} */ const found = new Map();
      const { done, cancel } = inChunks(firsts(), { day }, hear, rate, (key, { tallies }, i) => found.set(key, tallies[i]));
      const places = () => new Map([...found.keys()].map((key, at) => [key, at]));
      return {
        cancel,
        done: done.then(() => {
          const at = places();
          return { tallies: [...found.values()], items: keys.map((key, i) => (shown?.items[i].refused ? -1 : (at.get(key) ?? -1))) };
        }),
      };
    },

    /** The designs of all items, each once, and which of them an item has; -1: it is no longer in the job. */
    all() {
      const list = firsts();
      const places = new Map(list.map(([key], at) => [key, at]));
      return { ...shared(list.map(([, i]) => designOf(i) ?? {})), of: keys.map((key) => places.get(key) ?? -1) };
    },

    /** An item alone, as it is asked for. @param {number} i @returns {Omit<import("../api.js").EnquiryRowsArgs, "shop">} */
    one: (i) => ({ base: /** @type {Enquiry} */ (shown).base, ...shared([designOf(i) ?? {}]) }),

    /** What the items add to the totals: each tally once, with how many there are of it, and how many are not made here. */
    tallies() {
      /** @type {Map<string, number>} */ const counts = new Map();
      let refused = 0;
      keys.forEach((key, i) => {
        if (shown?.items[i].refused && key) refused++;
        else if (known.has(key)) counts.set(key, (counts.get(key) ?? 0) + 1);
      });
      return { tallies: [...counts.keys()].map((key) => /** @type {Rated} */ (known.get(key)).tally), counts: [...counts.values()], refused };
    },
  };
}

/** Designs as they are asked for: each entry once. @param {Differences[]} list */
function shared(list) {
  /** @type {Map<string, number>} */ const places = new Map();
  /** @type {import("../api.js").EnquiryEntry[]} */ const entries = [];
  const designs = list.map(({ fields = {}, units, spans }) => ({
    entries: Object.entries(fields).map(([field, { text, origin }]) => {
      const key = `${field} ${origin} ${text}`;
      if (!places.has(key)) places.set(key, entries.push({ field, text, origin }) - 1);
      return /** @type {number} */ (places.get(key));
    }),
    ...(units && { units }),
    ...(spans && { spans }),
  }));
  return { entries, designs };
}

/** What a design says, as one text: designs of one text are rated alike. @param {string[]} entries @param {import("../api.js").Span[]} [spans] */
const keyOf = (entries, spans = []) => [...entries].sort().join("\n") + JSON.stringify(spans);
