// @ts-check
// The enquiries that are kept: searched, opened, removed and brought back, saved as one file and read from one.

import { EngineError } from "../engine.js";
import { download } from "../files.js";
import { hide, keyed, write } from "../keyed.js";
import { createRoving } from "../roving.js";
import { addEnquiries, dropEnquiry, enquiries, enquiryText, enquiryTexts } from "../store/enquiries.js";
import { FULL } from "../store/local.js";

const CELLS = /** @type {const} */ (["customer", "reference", "revision", "due", "state", "items", "price"]);

/**
 * @param {(id: string) => any} at parts of the page by name
 * @param {DOMStringMap} words
 * @param {{
 *   ask: <M extends "enquiry_list" | "enquiry_export" | "enquiry_import">(method: M, args: import("../api.js").Methods[M]["args"]) => Promise<import("../api.js").Methods[M]["reply"]>,
 *   units: () => import("../api.js").EnquiryArgs["units"],
 *   now: () => import("./kept.js").Open | null,
 *   keep: () => Promise<void>,
 *   open: (id: string) => Promise<unknown>,
 *   closed: (id: string) => void,
 *   note: (name: string) => void,
 *   changed: () => void,
 * }} act keep: writes the one that is open; closed: it is removed; changed: others are kept than before
 */
export function createList(at, words, { ask, units, now, keep, open, closed, note, changed }) {
  const [fold, count, search, said, list, told, undo, save, load, input] = ["kept", "kept-count", "search", "search-said", "list", "kept-told", "kept-undo", "export", "import", "import-input"].map(at);
  /** @type {import("../store/enquiries.js").Kept | null} */ let removed = null;
  let round = 0;

  const rows = keyed(list.tBodies[0], (id) => {
    const line = document.createElement("tr");
    for (const name of CELLS) line.insertCell().dataset.part = name;
    const acts = line.insertCell();
    for (const [name, act] of /** @type {[string, () => void][]} */ ([["open", () => open(id)], ["remove", () => remove(id)]])) {
      const press = Object.assign(document.createElement("button"), { type: "button", textContent: words[name] });
      press.dataset.testid = `enquiry-${name}`;
      press.addEventListener("click", act);
      acts.append(press);
    }
    return line;
  });
  const reach = createRoving(list, "button");

  /** @param {() => Promise<void>} work */
  async function tried(work) {
    try {
      await work();
    } catch (error) {
      if (error instanceof EngineError) return write(told, error.message);
      note(/** @type {DOMException} */ (error).name === "QuotaExceededError" ? FULL : "earlierFailed");
    }
  }

  /** Shows the list anew. */
  const show = () =>
    tried(async () => {
      const mine = ++round;
      const heads = await enquiries();
      write(count, heads.length ? String(heads.length) : "");
      if (!fold.open) return;
      const reply = await ask("enquiry_list", { heads, find: search.value, units: units() });
      if (mine !== round) return;
      write(said, reply.said);
      hide(list, reply.rows.length === 0);
      rows(reply.rows, (line, row) => {
        for (const name of CELLS) write(line.querySelector(`[data-part="${name}"]`), row[name]);
        line.dataset.enquiry = row.id;
        line.toggleAttribute("data-open", row.id === now()?.id);
        for (const press of line.querySelectorAll("button")) press.setAttribute("aria-label", `${press.textContent} ${row.name}`);
      });
      reach();
    });

  /** @param {string} id */
  const remove = (id) =>
    tried(async () => {
      if (now()?.id === id) await keep();
      const [text, heads] = await Promise.all([enquiryText(id), enquiries()]);
      const summary = heads.find((head) => head.id === id);
      const line = /** @type {HTMLElement} */ (list.querySelector(`[data-enquiry="${id}"]`));
      const [name = ""] = [line?.querySelector("button")?.getAttribute("aria-label")?.slice((words.open ?? "").length + 1)];
      await dropEnquiry(id);
      closed(id);
      removed = summary ? { text, summary } : null;
      write(told, (words.removed ?? "").replace("{name}", name));
      hide(undo, removed === null);
      undo.focus(); // the pressed one goes
      await show();
      changed();
    });

  undo.addEventListener("click", () =>
    tried(async () => {
      if (!removed) return;
      await addEnquiries([removed]);
      const { id } = removed.summary;
      removed = null;
      write(told, "");
      await show();
      changed();
      list.querySelector(`[data-enquiry="${id}"] button`)?.focus();
      hide(undo, true);
    }),
  );

  /** All that is kept, and the one that is open as it stands, also where the store keeps nothing. */
  async function all() {
    await keep();
    const texts = await enquiryTexts().catch(() => new Map());
    const open = now();
    if (open?.text) texts.set(open.id, open.text);
    return [...texts.values()];
  }

  save.addEventListener("click", () =>
    tried(async () => {
      const { text } = await ask("enquiry_export", { kept: await all() });
      download(text, "enquiries.json", "application/json");
    }),
  );
  load.addEventListener("click", () => input.click());
  input.addEventListener("change", () =>
    tried(async () => {
      const [file] = input.files ?? [];
      input.value = ""; // so that the same file can be chosen again
      if (!file) return;
      hide(undo, true);
      const reply = await ask("enquiry_import", { text: await file.text(), kept: await all(), units: units() });
      await addEnquiries(reply.added);
      write(told, reply.said);
      await show();
      changed();
    }),
  );
  search.addEventListener("input", show);
  fold.addEventListener("toggle", show);
  return { show };
}
