// @ts-check
// The design in hand beside those that its item keeps, or beside the rungs of a ladder: a column each. The engine says all that
// stands in the table.

import { differences, whole } from "./job.js";
import { hide, write } from "./keyed.js";
import { createHeads, idOf } from "./options/heads.js";
import { createLines, lineOfWords } from "./options/lines.js";
import { createPick } from "./options/pick.js";
import { createSaid } from "./options/said.js";
import { createRoving } from "./roving.js";

/**
 * @typedef {import("./api.js").Document} Document
 * @typedef {import("./api.js").Kept} Kept
 * @typedef {import("./api.js").ComparedLine} Line
 * @typedef {{
 *   compare: (args: Pick<import("./api.js").CompareArgs, "designs" | "names" | "base" | "held" | "money" | "ladder">) => Promise<import("./api.js").Comparison | null>,
 *   open: (figure: string, from: HTMLElement, section: string, of: {document: Document, name: string}) => void,
 *   copy: (text: string) => void,
 *   decides: () => string[],
 *   reason: (error: Error) => string,
 * }} Act
 */

/**
 * @param {HTMLElement} root
 * @param {HTMLElement} said
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {Act} act
 */
export function createOptions(root, said, design, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [ladder, held, holds, money, none, table, same] = ["options-ladder", "options-held", "options-holds", "options-money", "options-none", "options-table", "options-same"].map(at);
  const text = (/** @type {string} */ name) => root.dataset[name] ?? "";
  const most = Number(at("keep").dataset.most);
  /** @type {Map<string, number>} which column is the base, by the item */ const bases = new Map();
  /** @type {import("./api.js").Comparison | null} */ let shown = null;
  let whose = ""; // the item that is shown
  let stepped = false; // a ladder is shown, and not what is kept

  /** A design in the place of the one in hand, whose name, mark and units stay. @param {Document} now @param {Document} other */
  const inPlace = (now, { fields, spans }) => whole({ ...now, fields, spans }, {});

  /** What is done with the kept design in a column, of which the first is that in hand. @param {number} column @param {(kept: Kept[], place: number, now: Document, base: Document) => Document | void} change */
  const alter = (column, change) =>
    design.keepOptions((list, now, base) => {
      const kept = [...list];
      const place = column - 1;
      if (!kept[place]) return null; // it was taken out meanwhile
      const taken = change(kept, place, now, base);
      return { kept, ...(taken && { document: inPlace(now, taken) }) };
    });

  /** @param {number} column @param {number} by */
  function move(column, by) {
    const base = bases.get(whose) ?? 0;
    if (base === column) bases.set(whose, column + by);
    else if (base === column + by) bases.set(whose, column);
    alter(column, (kept, place) => void kept.splice(place + by, 0, ...kept.splice(place, 1)));
  }

  /** @type {Record<string, (column: number) => void>} */
  const acts = {
    base(column) {
      bases.set(whose, column);
      refresh();
    },
    take(column) {
      const stands = shown?.columns[column].document;
      design.keepOptions((kept, now) => (stands ? { kept: [...kept], document: inPlace(now, stands) } : null));
    },
    keep(column) {
      const stands = shown?.columns[column].document;
      design.keepOptions((kept, now, base) => (stands && kept.length < most ? { kept: [...kept, { name: "", design: differences(inPlace(now, stands), base) }] } : null));
    },
    swap: (column) =>
      alter(column, (kept, place, now, base) => {
        const { design } = kept[place];
        kept[place] = { name: "", design: differences(now, base) };
        return whole(base, design);
      }),
    left: (column) => move(column, -1),
    right: (column) => move(column, 1),
    remove(column) {
      bases.delete(whose);
      alter(column, (kept, place) => void kept.splice(place, 1));
    },
  };

  const heads = createHeads(table.tHead.insertRow(), root, acts, (column, name) => alter(column, (kept, place) => void (kept[place] = { ...kept[place], name })));
  const columnsNow = () => shown?.columns ?? [];
  const open = (/** @type {Line} */ line, /** @type {number} */ column, /** @type {HTMLElement} */ from) => act.open(line.id, from, line.worked, columnsNow()[column]);
  const parts = Object.fromEntries(["entries", "figures", "same"].map((name) => [name, table.querySelector(`[data-part="${name}"]`)]));
  const lines = Object.fromEntries(Object.entries(parts).map(([name, body]) => [name, createLines(body, { best: text("best"), moved: text("moved") }, columnsNow, open)]));
  const says = createSaid(said, root, () => design.rest().then(refresh), act.copy);
  const { picked } = createPick(at("options-pick"), () => shown && fill(shown));
  const groups = [table.tHead, parts.figures, parts.same, said].map((part) => createRoving(part, "button"));

  for (const choice of [ladder, held, money]) choice.addEventListener("change", refresh);
  same.addEventListener("click", () => {
    same.setAttribute("aria-expanded", String(same.getAttribute("aria-expanded") !== "true"));
    if (shown) fill(shown);
  });

  /** @param {import("./api.js").Comparison} reply */
  function fill(reply) {
    shown = reply;
    const kept = design.history.job.items.get(whose)?.kept ?? [];
    const columns = reply.columns.map((column, i, all) => ({
      ...column,
      id: idOf(i, stepped),
      last: i === all.length - 1,
      full: kept.length >= most,
      given: stepped ? column.name : (kept[i - 1]?.name ?? ""),
    }));
    heads(columns);
    lines.entries(reply.entries);
    const wanted = new Set([...act.decides(), ...picked()]);
    const inSight = reply.figures.filter(({ id }) => wanted.has(id));
    const folds = (/** @type {Line} */ line) => line.same && columns.length > 1; // of one alone all would be
    lines.figures([
      lineOfWords("line", text("line"), columns.map(({ line }) => line)),
      ...inSight.filter((line) => !folds(line)),
      lineOfWords("remarks", text("remarks"), columns.map(({ refused, why, outside }) => [refused || why, outside].filter(Boolean).join(" "))),
    ]);
    const folded = inSight.filter(folds);
    lines.same(same.getAttribute("aria-expanded") === "true" ? folded : []);
    hide(same, folded.length === 0);
    write(same, same.dataset.text.replace("{count}", String(folded.length)));
    write(holds, reply.held);
    says(columns);
    for (const reach of groups) reach();
  }

  /** @param {import("./history.js").Entry} entry @param {readonly Kept[]} kept */
  function asked({ hand, document, job }, kept) {
    const choices = { held: held.value, money: money.checked };
    if (ladder.value) return { ...choices, designs: [document], names: [""], base: 0, ladder: ladder.value };
    const designs = [document, ...kept.map(({ design }) => whole(job.base, design))];
    return { ...choices, designs, names: ["", ...kept.map(({ name }) => name)], base: Math.min(bases.get(hand) ?? 0, kept.length) };
  }

  async function refresh() {
    const { entry } = design.history;
    const kept = entry.job.items.get(entry.hand)?.kept ?? [];
    whose = entry.hand;
    none.hidden = ladder.value || kept.length > 0;
    const args = asked(entry, kept);
    try {
      const reply = await act.compare(args);
      if (!reply || whose !== entry.hand) return;
      stepped = "ladder" in args;
      fill(reply);
    } catch (error) {
      write(holds, act.reason(/** @type {Error} */ (error)));
    }
  }

  return { refresh };
}
