// @ts-check
// How sure the design in hand is: what each tolerance does by itself, and draws of all together, which the pool of workers makes.
// The engine says all that is shown.

import { whole } from "./job.js";
import { hide, keyed, write } from "./keyed.js";
import { Cancelled } from "./pool.js";

/**
 * @typedef {import("./api.js").ShownSure} Sure
 * @typedef {import("./api.js").ShownBand} Band
 * @typedef {import("./api.js").ShownWidth} Width
 * @typedef {Pick<import("./api.js").SureArgs, "document" | "limits" | "seed">} Supposed
 * @typedef {{
 *   sure: (slot: string, args: Supposed & Pick<import("./api.js").SureArgs, "figure" | "outcomes">) => Promise<Sure | null>,
 *   draws: (list: (Supposed & {from: number, count: number})[], onReply: () => void) => {done: Promise<import("./api.js").Draws[]>, cancel: () => void},
 *   reason: (error: Error) => string,
 * }} Act
 */

/**
 * @param {HTMLElement} root
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {Act} act
 */
export function createSure(root, design, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(`sure-${id}`));
  const [figure, seed, draw, progress, absent, bands, told, older, widths, said, designs] = ["figure", "seed", "draw", "progress", "absent", "bands", "told", "older", "widths", "said", "designs"].map(at);
  /** @type {Record<string, string>} as typed, where it is not the house's */ const limits = {};
  /** @type {Sure | null} */ let shown = null;
  /** @type {{cancel: () => void} | null} */ let drawing = null;
  let drawn = ""; // what the widths in sight were drawn of

  figure.addEventListener("change", refresh);
  seed.addEventListener("change", () => {
    if (!seed.checkValidity() || !seed.value) seed.value = seed.defaultValue;
    refresh();
  });
  draw.addEventListener("click", () => (drawing ? drawing.cancel() : drawAll()));

  let typing = ""; // the band that is typed in, and whose answers are not yet of what stands there
  const rows = keyed(bands.tBodies[0], (id) => {
    const row = document.createElement("tr");
    row.dataset.testid = `band-${id}`;
    const name = document.createElement("th");
    name.scope = "row";
    name.append(document.createElement("span"), document.createElement("small"), document.createElement("small"));
    name.children[2].className = "wrong";
    name.children[2].id = `band-wrong-${id}`;
    const entry = document.createElement("input");
    Object.assign(entry, { type: "text", className: "moves", maxLength: 12, autocomplete: "off", spellcheck: false });
    entry.dataset.testid = `band-limit-${id}`;
    entry.setAttribute("aria-describedby", `band-wrong-${id}`);
    entry.addEventListener("input", () => (typing = id));
    entry.addEventListener("blur", () => (typing = ""));
    entry.addEventListener("change", () => {
      typing = "";
      if (entry.value.trim()) limits[id] = entry.value;
      else delete limits[id];
      refresh();
    });
    const cells = [0, 1, 2, 3].map(() => document.createElement("td"));
    cells[0].append(entry);
    const bar = document.createElement("span");
    bar.className = "bar";
    cells[2].append(bar);
    row.append(name, ...cells);
    return row;
  });

  /** @param {HTMLTableRowElement} row @param {Band} band */
  function fillBand({ cells }, { id, label, limit, wrong, note, low, high, left, right }) {
    const [name, , low_, bar, high_] = cells;
    write(name.children[0], label);
    write(name.children[1], note);
    write(name.children[2], wrong);
    const entry = /** @type {HTMLInputElement} */ (cells[1].firstElementChild);
    entry.setAttribute("aria-label", label);
    entry.toggleAttribute("aria-invalid", wrong !== "");
    if (typing !== id && (document.activeElement !== entry || !(id in limits))) entry.value = limit;
    write(low_, low);
    write(high_, high);
    const style = /** @type {HTMLElement} */ (bar.firstElementChild).style;
    style.setProperty("--left", String(left));
    style.setProperty("--right", String(right));
  }

  const line = (/** @type {number} */ cells, /** @type {string} */ kind) => (/** @type {string} */ id) => {
    const row = document.createElement("tr");
    row.dataset.testid = `${kind}-${id}`;
    const name = document.createElement("th");
    name.scope = "row";
    name.append(document.createElement("span"), " ", document.createElement("small"));
    row.append(name, ...Array.from({ length: cells }, () => document.createElement("td")));
    return row;
  };
  const widthRows = keyed(widths.tBodies[0], line(4, "width"));
  const designRows = keyed(designs.tBodies[0], line(5, "sure-design"));
  const sentences = keyed(said, () => document.createElement("li"));

  /** @param {HTMLTableRowElement} row @param {Omit<Width, "id"> & {meets?: string}} width */
  function fillWidth({ cells }, { label, unit, as, low, mid, high, meets }) {
    write(cells[0].children[0], label);
    write(cells[0].children[1], unit);
    [as, low, mid, high, meets].slice(0, cells.length - 1).forEach((text, i) => write(cells[i + 1], text ?? ""));
  }

  /** @returns {Supposed} */
  const supposed = () => ({ document: design.history.entry.document, limits: { ...limits }, seed: Number(seed.value) });
  const keyOf = (/** @type {Supposed} */ args) => JSON.stringify([args.document.fields, args.document.spans, args.limits, args.seed]);

  /** @param {Sure} reply */
  function fill(reply) {
    shown = reply;
    if (figure.options.length === 0) {
      for (const { id, label } of reply.figures) figure.append(new Option(label, id, id === "duty", id === "duty"));
    }
    write(absent, reply.absent);
    const held = bands.tBodies[0].contains(document.activeElement); // an entry that is typed in stays under the hand
    const places = new Map([...bands.tBodies[0].rows].map((row, i) => [row.dataset.testid?.slice("band-".length), i]));
    const order = held ? [...reply.bands].sort((a, b) => (places.get(a.id) ?? 0) - (places.get(b.id) ?? 0)) : reply.bands;
    rows(order, fillBand);
    hide(draw, !drawing && (reply.absent !== "" || reply.bands.some(({ wrong }) => wrong !== ""))); // what is drawn is what is entered
    hide(older, drawn === "" || drawn === keyOf(supposed()));
    told.classList.toggle("stands-older", !older.hidden);
  }

  async function refresh() {
    try {
      const reply = await act.sure("sure", { ...supposed(), figure: figure.value });
      if (reply) fill(reply);
    } catch (error) {
      write(absent, act.reason(/** @type {Error} */ (error)));
    }
  }

  /** @param {Supposed} args @param {Sure} plan @returns {Promise<Sure | null>} what their draws tell */
  async function drawOne(args, { draws, part }) {
    const list = [];
    for (let from = 0; from < draws; from += part) list.push({ ...args, from, count: part });
    const batch = act.draws(list, () => progress.value++);
    drawing = batch;
    const outcomes = (await batch.done).map(({ outcomes }) => outcomes);
    return act.sure("told", { ...args, figure: figure.value, outcomes });
  }

  /** Draws of the design in hand, and of those that its item keeps: the same seed gives each the same films. */
  async function drawAll() {
    if (!shown) return;
    const { job, hand } = design.history.entry;
    const args = supposed();
    const beside = (job.items.get(hand)?.kept ?? []).map((kept, i) => ({ name: kept.name || (root.dataset.kept ?? "").replace("{place}", String(i + 1)), document: whole(job.base, kept.design) }));
    const plan = shown;
    hide(progress, false);
    progress.max = Math.ceil(plan.draws / plan.part) * (1 + beside.length);
    progress.value = 0;
    write(draw, root.dataset.stop ?? "");
    try {
      const own = await drawOne(args, plan);
      if (!own) return;
      drawn = keyOf(args);
      widthRows(own.widths, fillWidth);
      sentences(own.said.map((text, i) => ({ id: String(i), text })), (item, { text }) => write(item, text));
      hide(told, false);
      hide(designs, true);
      const asked = figure.value;
      const wanted = (/** @type {Sure | null} */ one) => ({ ...one?.widths.find(({ id }) => id === asked), unit: "" });
      const [name, unit] = designs.tHead.rows[0].cells[0].children;
      const of = own.widths.find(({ id }) => id === asked);
      write(name, of?.label ?? "");
      write(unit, of?.unit ?? "");
      const list = [{ ...wanted(own), label: root.dataset.inHand ?? "", meets: own.meets, id: "0" }];
      for (const [i, { name, document }] of beside.entries()) {
        const one = await drawOne({ ...args, document }, plan);
        if (one) list.push({ ...wanted(one), label: one.absent ? `${name}: ${one.absent}` : name, meets: one.meets, id: String(i + 1) });
      }
      designRows(list, fillWidth);
      hide(designs, beside.length === 0);
      refresh();
    } catch (error) {
      if (!(error instanceof Cancelled)) write(absent, act.reason(/** @type {Error} */ (error)));
    } finally {
      drawing = null;
      hide(progress, true);
      write(draw, root.dataset.draw ?? "");
    }
  }

  return { refresh };
}
