// @ts-check
// A job: a head and items. The design of an item is held as its differences from the job's base, here as in the engine
// (core/document); only the one in hand is laid out whole. Items are never changed, only replaced; the job itself is.

/**
 * @typedef {import("./api.js").Document} Document
 * @typedef {import("./api.js").Differences} Differences
 * @typedef {Readonly<import("./api.js").Item & {at: number}>} Item  at: orders the items, with room between any two
 * @typedef {{head: import("./api.js").Head, base: Document, items: Map<string, Item>, order: string[], by: import("./api.js").Basis[], work: string}} Job
 *   order: the IDs as they stand in the list; work: which piece of work it is, from its coming as a file, an example or a
 *   link until another takes its place
 */

const NO_HEAD = { reference: "", revision: "", received: "", due: "" };

/** @param {Document} document @param {Document} base @returns {Differences} */
export function differences(document, base) {
  /** @type {Differences} */ const found = {};
  if (document.title !== base.title) found.title = document.title;
  if ((document.mark ?? "") !== (base.mark ?? "")) found.mark = document.mark ?? "";
  if (document.units !== base.units) found.units = document.units;
  const fields = Object.entries(document.fields).filter(([id, { text, origin }]) => text !== base.fields[id]?.text || origin !== base.fields[id]?.origin);
  if (fields.length) found.fields = Object.fromEntries(fields);
  if (JSON.stringify(document.spans) !== JSON.stringify(base.spans)) found.spans = document.spans;
  return found;
}

/** The design that differs so from its base, its members in the order of the engine. @param {Document} base @param {Differences} differences @returns {Document} */
export function whole(base, { title = base.title, mark = base.mark, units = base.units, fields, spans = base.spans }) {
  return { title, ...(mark && { mark }), units, fields: { ...base.fields, ...fields }, spans };
}

/**
 * @param {{document: Document, job?: import("./api.js").Job}} reply  without a job: of one item
 * @param {string} work
 * @returns {Job}
 */
export function jobOf({ document, job }, work) {
  const { head = NO_HEAD, base = document, items = [{ id: "1", design: {} }], by = [] } = job ?? {};
  return { head, base, work, by: [...by], order: items.map(({ id }) => id), items: new Map(items.map((item, at) => [item.id, { ...item, at }])) };
}

/** The job as it is saved. @param {Job} job @returns {import("./api.js").Job} */
export function saveable({ head, base, by, items, order }) {
  return { head, base, by, items: order.map((id) => plain(/** @type {Item} */ (items.get(id)))) };
}

/** @param {Item} item @returns {import("./api.js").Item} */
export function plain({ at, ...item }) {
  return item;
}

/** A design alone, as a job, with what it keeps beside it, what it answered and whose prices these were. @param {Document} document @param {Item} [item] @param {Job} [job] that it is an item of */
export function alone(document, item, job) {
  const { by = [], base = document } = job ?? {};
  const { shown, kept } = item ?? {};
  const beside = kept?.map(({ name, design }) => ({ name, design: differences(whole(base, design), document) }));
  const items = [{ id: "1", design: {}, ...(beside && { kept: beside }), ...(shown && { shown: { ...shown, by: 0 } }) }];
  return saveable(jobOf({ document, job: { head: NO_HEAD, base: document, items, by: shown ? [by[shown.by]] : [] } }, ""));
}

/** Puts an item in the place of the one of its ID, or into the list, or takes it out. @param {Job} job @param {string} id @param {Item | null} item */
export function put(job, id, item) {
  const had = job.items.get(id);
  if (had && !item) job.order.splice(placeOf(job, had), 1);
  if (!had && item) job.order.splice(placeOf(job, item), 0, id);
  if (item) job.items.set(id, item);
  else job.items.delete(id);
}

/** The place of an item in the list, or the one that it would take: found by halves. @param {Job} job @param {{at: number}} item */
export function placeOf({ order, items }, { at }) {
  let [low, high] = [0, order.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (/** @type {Item} */ (items.get(order[middle])).at < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Where an item goes that is to stand right after another. @param {Job} job @param {Item} item */
export function after(job, item) {
  const next = job.items.get(job.order[placeOf(job, item) + 1]);
  return next ? (item.at + next.at) / 2 : item.at + 1;
}
