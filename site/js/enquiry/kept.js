// @ts-check
// The enquiry that is open is kept as it stands: its text, all that was settled, its heading, and what its items cost. Here it is written when
// something of it changes, opened again, copied, made the next revision.

import { today } from "../files.js";
import { hide, write } from "../keyed.js";
import { keepDraft, keepEnquiry, keepOpen, enquiryText } from "../store/enquiries.js";
import { FULL, newId } from "../store/local.js";

/**
 * @typedef {import("../api.js").EnquiryKeepArgs} Args
 * @typedef {import("../api.js").Letterhead} Heading
 * @typedef {Omit<Args, "id" | "of" | "time" | keyof Heading | "was" | "day"> & {priced: boolean}} Standing  what stands in the page
 * @typedef {{id: string, of: string, heading: Heading, stored: string, text: string, work: string}} Open
 *   stored: when it was written last; text: as it was then; work: whose items it has become
 */

const BLANK = { customer: "", reference: "", revision: "", due: "", state: "asked" };
const FIELDS = /** @type {const} */ (["customer", "reference", "revision", "due", "state"]);

/**
 * @param {(id: string) => any} at parts of the page by name
 * @param {DOMStringMap} words
 * @param {{
 *   ask: <M extends "enquiry_keep" | "enquiry_kept" | "enquiry_next">(method: M, args: import("../api.js").Methods[M]["args"]) => Promise<import("../api.js").Methods[M]["reply"]>,
 *   standing: () => Standing | null,
 *   show: (kept: import("../api.js").KeptEnquiry, work: string, shown: () => void) => Promise<unknown>,
 *   note: (name: string) => void,
 *   kept: () => void,
 * }} act standing: what is to be kept, null: nothing is read; show: lays an enquiry open, and says when it is read; kept: the enquiry has been written
 */
export function createKept(at, words, { ask, standing, show, note, kept }) {
  const [said, as, into, form] = ["heading-said", "as", "into", "heading"].map(at);
  /** @type {Open | null} */ let now = null;
  let due = false;
  /** @type {Promise<void> | null} */ let running = null;

  function showHeading() {
    for (const name of FIELDS) {
      const field = at(name);
      if (field.value !== (now?.heading[name] ?? "")) field.value = now?.heading[name] ?? "";
    }
    hide(form, now === null);
    hide(into, now === null);
  }

  /** Writes what stands in the page, if there is anything that is not kept. */
  async function once() {
    const stands = standing();
    if (!now || !stands) return;
    const open = now;
    const { priced, ...content } = stands;
    const args = { ...content, ...open.heading, of: open.of, day: priced ? today() : "", time: new Date().toISOString() };
    const written = (/** @type {string} */ id, /** @type {string} */ was) => ask("enquiry_keep", { ...args, id, ...(was && { was }) });
    let reply = await written(open.id, open.text);
    write(said, reply.told || said.textContent);
    if (reply.same && open.stored === reply.summary.time) return note("");
    open.text = reply.text;
    const there = await keepEnquiry(reply, open.stored);
    if (!there) {
      [open.id, open.text] = [newId(), ""];
      reply = await written(open.id, "");
      await keepEnquiry(reply, "");
      open.text = reply.text;
    }
    open.stored = reply.summary.time;
    if (now === open) note(keepOpen(open.id, open.work) || (there ? "" : "enquiryForked"));
    kept();
  }

  /** What changes while it is written is written after that. */
  function keep() {
    due = true;
    running ??= (async () => {
      while (due) {
        due = false;
        try {
          await once();
        } catch (error) {
          const { name } = /** @type {DOMException} */ (error);
          note(name === "QuotaExceededError" ? FULL : "earlierFailed");
        }
      }
      running = null;
    })();
    return running;
  }

  for (const name of FIELDS) {
    at(name).addEventListener("change", (/** @type {Event} */ { target }) => {
      if (!now) return;
      now.heading = { ...now.heading, [name]: /** @type {HTMLInputElement} */ (target).value };
      write(said, "");
      keep();
    });
  }

  /** @param {Open} open */
  function take(open) {
    now = open;
    write(said, "");
    showHeading();
  }

  /** What follows upon the one that is open: the same content under a name of its own. @param {boolean} copy */
  async function follow(copy) {
    if (!now) return;
    await keep(); // so that the one before is kept as it stands
    const { heading, of, work } = now;
    const next = await ask("enquiry_next", { ...heading, copy });
    const id = newId();
    take({ id, of: copy ? id : of, heading: next, stored: "", text: "", work });
    as.value = "open";
    write(said, copy ? "" : (words.revised ?? ""));
    at(copy ? "reference" : "text").focus();
    keep();
  }
  at("revise").addEventListener("click", () => follow(false));
  at("copy").addEventListener("click", () => follow(true));

  return {
    keep,
    /** The enquiry that is open. */
    get now() {
      return now;
    },

    /** Whether the text that is read next is that of the one that is open. */
    stays: () => now !== null && as.value === "open",

    /** A text has been read. @param {boolean} stays it is that of the one that is open */
    begun(stays) {
      as.value = "";
      const id = newId();
      if (!stays || !now) take({ id, of: id, heading: BLANK, stored: "", text: "", work: "" });
    },

    /** Its items have become those of a job, or are so no longer. @param {string} work */
    became(work) {
      if (!now || now.work === work) return;
      now.work = work;
      if (now.stored) keepOpen(now.id, work);
    },

    /** It is removed: what stands in the page is of none then, until something of it changes. @param {string} id */
    closed(id) {
      if (now?.id === id) Object.assign(now, { stored: "", text: "" });
    },

    /** Opens what is kept, as it was left. @param {string} id @param {string} [work] @returns {Promise<boolean>} whether it was there */
    async open(id, work = "") {
      await keep(); // it may be the one that is open
      const text = await enquiryText(id);
      if (!text) return false;
      const found = await ask("enquiry_kept", { text });
      const { of, customer, reference, revision, due, state, time } = found;
      await show(found, work, () => {
        take({ id, of, heading: { customer, reference, revision, due, state }, stored: time, text, work });
        as.value = "";
        keepOpen(id, work);
        keepDraft("");
      });
      return true;
    },
  };
}
