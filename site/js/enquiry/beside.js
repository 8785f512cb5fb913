// @ts-check
// What the enquiry in hand is held against: another revision of it, cell by cell, and what was quoted before for the tube of an item.

import { hide, write } from "../keyed.js";
import { enquiries, enquiryText, enquiryTexts } from "../store/enquiries.js";

const REST = 400; // ms that an item is in hand before it is looked for

/** @typedef {import("../api.js").Methods} Methods */

/**
 * @param {(id: string) => any} at parts of the page by name
 * @param {{
 *   ask: <M extends "enquiry_compare" | "enquiry_list">(method: M, args: Methods[M]["args"]) => Promise<Methods[M]["reply"]>,
 *   before: (args: Methods["enquiry_before"]["args"]) => {done: Promise<Methods["enquiry_before"]["reply"][]>, cancel: () => void},
 *   units: () => Methods["enquiry_compare"]["args"]["units"],
 *   now: () => import("./kept.js").Open | null,
 *   item: () => Omit<Methods["enquiry_before"]["args"]["now"], "id" | "of" | "time"> | null,
 * }} act item: the one in hand, with its price
 */
export function createBeside(at, { ask, before, units, now, item }) {
  const [changes, other, said, table, quoted, found, quotes] = ["changes", "other", "changes-said", "changes-table", "quoted", "quoted-said", "quotes"].map(at);
  let timer = 0;
  let round = 0;
  /** @type {{cancel: () => void} | null} */ let running = null;

  /** @param {HTMLTableElement} table @param {{kind: string}[]} rows @param {string[]} cells */
  function fill(table, rows, cells) {
    hide(table, rows.length === 0);
    table.tBodies[0].replaceChildren(
      ...rows.map((/** @type {any} */ row) => {
        const line = document.createElement("tr");
        line.dataset.kind = row.kind;
        for (const name of cells) Object.assign(line.insertCell(), { textContent: row[name] }).dataset.part = name;
        return line;
      }),
    );
  }

  /** The other revisions of the one that is open, and what it says otherwise than the one that is chosen. */
  async function compare() {
    const mine = ++round;
    const open = now();
    const heads = open ? (await enquiries().catch(() => [])).filter(({ id, of }) => of === open.of && id !== open.id) : [];
    if (mine !== round) return;
    hide(changes, heads.length === 0);
    if (!open || !heads.length) return;
    const { rows } = await ask("enquiry_list", { heads, find: "", units: units() });
    const chosen = other.value;
    if (mine !== round) return;
    other.replaceChildren(...rows.map(({ id, name, state }) => new Option(`${name} (${state})`, id)));
    if (rows.some(({ id }) => id === chosen)) other.value = chosen;
    if (!changes.open || !open.text) return;
    const reply = await ask("enquiry_compare", { before: await enquiryText(other.value), after: open.text, units: units() });
    if (mine !== round) return;
    write(said, reply.said);
    write(table.caption, `${reply.before} → ${reply.after}`);
    fill(table, reply.rows, ["item", "what", "before", "after", "quantity", "price"]);
  }
  other.addEventListener("change", compare);
  changes.addEventListener("toggle", compare);

  /** What was quoted before for the item in hand, once it rests there. */
  function look() {
    clearTimeout(timer);
    timer = window.setTimeout(async () => {
      running?.cancel();
      const stands = item();
      const open = now();
      if (!quoted.open || !stands || !open) return;
      const texts = await enquiryTexts().catch(() => new Map());
      const batch = before({ now: { ...stands, id: open.id, of: open.of, time: "" }, kept: [...texts.values()] });
      running = batch;
      const [reply] = await batch.done.catch(() => []);
      if (!reply || running !== batch) return;
      write(found, reply.said);
      fill(quotes, reply.rows, ["enquiry", "item", "state", "day", "quantity", "price", "each", "differs"]);
    }, REST);
  }
  quoted.addEventListener("toggle", look);

  return { compare, look };
}
