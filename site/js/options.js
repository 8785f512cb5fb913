// @ts-check
// The design in hand beside those that its item keeps: a column each. The engine says all that stands in the table.

import { differences, whole } from "./job.js";
import { hide, keyed, write } from "./keyed.js";
import { newMark, setMark } from "./mark.js";
import { createRoving } from "./roving.js";
import { keepPick, savedPick } from "./store/options.js";

/**
 * @typedef {import("./api.js").ComparedColumn} Column
 * @typedef {import("./api.js").ComparedLine} Line
 * @typedef {{
 *   compare: (args: Pick<import("./api.js").CompareArgs, "designs" | "names" | "base" | "held" | "money" | "ladder">) => Promise<import("./api.js").Comparison | null>,
 *   open: (figure: string, from: HTMLElement, section: string, of: {document: import("./api.js").Document, name: string}) => void,
 *   copy: (text: string) => void,
 *   decides: () => string[],
 *   reason: (error: Error) => string,
 * }} Act
 */

const RUNG = "rung-"; // before the number of a column, in the ID of its head

const placeOf = (/** @type {string} */ id) => Number(id.replace(RUNG, ""));

/**
 * @param {HTMLElement} root
 * @param {HTMLElement} said
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {Act} act
 */
export function createOptions(root, said, design, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [ladder, held, holds, money, none, table, same, pick] = ["options-ladder", "options-held", "options-holds", "options-money", "options-none", "options-table", "options-same", "options-pick"].map(at);
  const text = (/** @type {string} */ name) => root.dataset[name] ?? "";
  const part = (/** @type {string} */ name) => table.querySelector(`[data-part="${name}"]`);
  const head = table.tHead.insertRow();
  head.append(document.createElement("td"));
  /** @type {Map<string, number>} which column is the base, by the item */ const bases = new Map();
  /** @type {import("./api.js").Comparison | null} */ let shown = null;
  let whose = ""; // the item that is shown
  let stepped = false; // a ladder is shown, and not what is kept
  const most = Number(at("keep").dataset.most);

  const boxes = [.../** @type {NodeListOf<HTMLInputElement>} */ (pick.querySelectorAll("input"))];
  const saved = savedPick();
  if (boxes.some(({ value }) => saved.includes(value))) for (const box of boxes) box.checked = saved.includes(box.value);
  const picked = () => boxes.filter(({ checked }) => checked).map(({ value }) => value);
  function rows() {
    keepPick(boxes.every((box) => box.checked === box.defaultChecked) ? [] : picked());
    if (shown) fill(shown);
  }
  pick.addEventListener("change", rows);
  pick.querySelector("button").addEventListener("click", () => {
    for (const box of boxes) box.checked = box.defaultChecked;
    rows();
  });
  ladder.addEventListener("change", refresh);
  held.addEventListener("change", refresh);
  money.addEventListener("change", refresh);
  same.addEventListener("click", () => {
    same.setAttribute("aria-expanded", String(same.getAttribute("aria-expanded") !== "true"));
    if (shown) fill(shown);
  });

  /** What is done with the kept design in a column, of which the first is that in hand. @param {number} column @param {(kept: import("./api.js").Kept[], place: number, document: import("./api.js").Document, base: import("./api.js").Document) => import("./api.js").Document | void} change */
  const alter = (column, change) =>
    design.keepOptions((list, now, base) => {
      const kept = [...list];
      const place = column - 1;
      if (!kept[place]) return null; // it was taken out meanwhile
      const taken = change(kept, place, now, base);
      return { kept, ...(taken && { document: whole({ ...now, fields: taken.fields, spans: taken.spans }, {}) }) };
    });

  /** @type {Record<string, (column: number) => void>} */
  const acts = {
    base(column) {
      bases.set(whose, column);
      refresh();
    },
    take,
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
    keep,
  };
  const ofHand = ["base"];
  const ofKept = ["base", "take", "swap", "left", "right", "remove"];
  const ofRung = ["take", "keep"];

  /** Keeps a rung. @param {number} column */
  function keep(column) {
    const stands = shown?.columns[column].document;
    design.keepOptions((kept, now, base) => (!stands || kept.length >= most ? null : { kept: [...kept, { name: "", design: differences(whole({ ...now, fields: stands.fields, spans: stands.spans }, {}), base) }] }));
  }

  /** @param {number} column */
  function take(column) {
    const stands = shown?.columns[column].document;
    design.keepOptions((kept, now) => (stands ? { kept: [...kept], document: whole({ ...now, fields: stands.fields, spans: stands.spans }, {}) } : null));
  }

  /** @param {number} column @param {number} by */
  function move(column, by) {
    const base = bases.get(whose) ?? 0;
    if (base === column) bases.set(whose, column + by);
    else if (base === column + by) bases.set(whose, column);
    alter(column, (kept, place) => void kept.splice(place + by, 0, ...kept.splice(place, 1)));
  }

  const heads = keyed(head, (id) => {
    const rung = id.startsWith(RUNG);
    const column = placeOf(id);
    const cell = document.createElement("th");
    cell.scope = "col";
    const role = document.createElement("div");
    role.className = "role";
    role.append(document.createElement("small"), newMark("none", ""));
    const name = column && !rung ? document.createElement("input") : document.createElement("b");
    if (name instanceof HTMLInputElement) {
      Object.assign(name, { type: "text", className: "moves", maxLength: 40, autocomplete: "off", spellcheck: false });
      name.setAttribute("aria-label", `${text("name")}, ${text("kept").replace("{place}", id)}`);
      name.addEventListener("change", () => alter(column, (kept, place) => void (kept[place] = { ...kept[place], name: name.value.trim() })));
    }
    name.dataset.testid = `option-name-${id}`;
    const presses = document.createElement("div");
    presses.className = "acts";
    for (const one of rung ? ofRung : column ? ofKept : ofHand) {
      const button = document.createElement("button");
      button.type = "button";
      button.dataset.act = one;
      button.dataset.testid = `option-${one}-${id}`;
      const sign = { left: "←", right: "→", remove: "×" }[one];
      button.textContent = sign ?? text(one);
      button.title = text(sign ? one : `${one}Long`);
      if (sign) button.setAttribute("aria-label", button.title);
      button.addEventListener("click", () => acts[one](column));
      presses.append(button);
    }
    cell.append(role, name, presses);
    return cell;
  });

  const roleOf = (/** @type {string} */ id) => (id === "0" ? text("inHand") : text(id.startsWith(RUNG) ? "rung" : "kept").replace("{place}", String(placeOf(id))));

  /** @param {HTMLTableCellElement} cell @param {Column & {id: string, last: boolean, full: boolean, given: string}} column */
  function fillHead(cell, { full, id, last, given, name, base, state, mark, refused }) {
    const [role, title, presses] = cell.children;
    write(role.children[0], roleOf(id));
    if (title instanceof HTMLInputElement) {
      title.placeholder = name;
      if (document.activeElement !== title) title.value = given;
    } else write(title, name);
    setMark(role.children[1], state, mark);
    cell.classList.toggle("refused", refused !== "" || state === "no");
    for (const button of /** @type {NodeListOf<HTMLButtonElement>} */ (presses.querySelectorAll("button"))) {
      const { act } = button.dataset;
      if (act === "base") button.setAttribute("aria-pressed", String(base));
      button.disabled = (act === "keep" && full) || (act === "left" && id === "1") || (act === "right" && last) || (act === "take" && refused !== "");
    }
  }

  const lineOf = (/** @type {string} */ id) => {
    const row = document.createElement("tr");
    row.dataset.testid = `compared-${id}`;
    const name = document.createElement("th");
    name.scope = "row";
    name.append(document.createElement("span"), " ", document.createElement("span"));
    name.lastElementChild?.classList.add("unit");
    row.append(name);
    return row;
  };
  const lists = { entries: keyed(part("entries"), lineOf), figures: keyed(part("figures"), lineOf), same: keyed(part("same"), lineOf) };

  function newCell() {
    const cell = document.createElement("td");
    const [best, value, against] = ["span", "span", "small"].map((name) => document.createElement(name));
    best.className = "best";
    value.className = "value";
    against.className = "against";
    cell.append(best, value, against);
    return cell;
  }

  /** @param {HTMLTableRowElement} row @param {Line} line */
  function fillLine(row, { id, label, unit, worked, cells }) {
    const name = row.cells[0];
    row.dataset.dimension = id; // lit with its entry
    write(name.children[0], label);
    write(name.children[1], unit);
    while (row.cells.length > cells.length + 1) row.deleteCell(-1);
    while (row.cells.length <= cells.length) row.append(newCell());
    cells.forEach(({ value, against, best, refused, moved, absent }, i) => {
      const cell = row.cells[i + 1];
      const [sign, amount, beside] = /** @type {HTMLElement[]} */ ([...cell.children]);
      sign.textContent = best ? "◆" : refused ? "✕" : "";
      if (best || refused) sign.append(Object.assign(document.createElement("span"), { className: "unseen", textContent: best ? text("best") : (shown?.columns[i].mark ?? "") }));
      const had = amount.querySelector("button");
      if (worked && value) {
        const press = had ?? document.createElement("button");
        press.type = "button";
        press.onclick = () => shown && act.open(id, press, worked, { document: shown.columns[i].document, name: nameOf(i) });
        write(press, value);
        press.setAttribute("aria-label", `${label}, ${nameOf(i)}: ${value} ${unit}`);
        if (!had) amount.replaceChildren(press);
      } else amount.textContent = value || (absent && "–");
      amount.title = absent;
      write(beside, moved ? text("moved") : against);
      cell.classList.toggle("moved", moved);
      cell.classList.toggle("of-base", Boolean(shown?.columns[i].base));
    });
  }

  const nameOf = (/** @type {number} */ i) => shown?.columns[i].name ?? "";

  const says = keyed(said, () => {
    const item = document.createElement("li");
    const [name, sentence, followed, instead] = ["b", "p", "ul", "p"].map((tag) => document.createElement(tag));
    const copy = document.createElement("button");
    copy.type = "button";
    copy.textContent = said.dataset.copy ?? "";
    copy.addEventListener("click", async () => {
      await design.rest();
      await refresh(); // what leaves is of what is entered
      if (!instead.hidden) act.copy(instead.firstChild?.textContent ?? "");
    });
    followed.className = "cautions";
    instead.append("", " ", copy);
    item.append(name, sentence, followed, instead);
    return item;
  });

  /** @param {HTMLElement} item @param {Column & {id: string, given: string}} column */
  function fillSaid(item, { id, given, said, followed, instead, outside }) {
    const [title, sentence, list, send] = /** @type {HTMLElement[]} */ ([...item.children]);
    write(title, [roleOf(id), given].filter(Boolean).join(": "));
    write(sentence, [said, outside].filter(Boolean).join(" "));
    list.replaceChildren(...followed.map((one) => Object.assign(document.createElement("li"), { textContent: one })));
    /** @type {Text} */ (send.firstChild).data = instead;
    hide(send, !instead);
  }

  /** @param {import("./api.js").Comparison} reply */
  function fill(reply) {
    shown = reply;
    const { columns, entries, figures } = reply;
    const kept = design.history.job.items.get(whose)?.kept ?? [];
    const named = columns.map((column, i) => ({
      ...column,
      id: stepped && i ? RUNG + i : String(i),
      last: i === columns.length - 1,
      full: kept.length >= most,
      given: stepped ? column.name : (kept[i - 1]?.name ?? ""),
    }));
    heads(named, fillHead);
    const wanted = new Set([...act.decides(), ...picked()]);
    const inSight = figures.filter(({ id }) => wanted.has(id));
    lists.entries(entries, fillLine);
    const folds = (/** @type {Line} */ line) => line.same && columns.length > 1; // of one alone all would be
    lists.figures([makers(columns), ...inSight.filter((line) => !folds(line)), remarks(columns)], fillLine);
    const folded = inSight.filter(folds);
    const open = same.getAttribute("aria-expanded") === "true";
    lists.same(open ? folded : [], fillLine);
    hide(same, folded.length === 0);
    write(same, same.dataset.text.replace("{count}", String(folded.length)));
    write(holds, reply.held);
    says(named.filter(({ said }) => said), fillSaid);
    for (const reach of groups) reach();
  }

  const words = (/** @type {string} */ value) => ({ value, against: "", best: false, refused: false, moved: false, absent: "" });
  const lineOfWords = (/** @type {string} */ id, /** @type {string} */ label, /** @type {string[]} */ values) => ({ id, label, unit: "", same: false, worked: "", cells: values.map(words) });
  const makers = (/** @type {Column[]} */ columns) => lineOfWords("line", text("line"), columns.map(({ line }) => line));
  const remarks = (/** @type {Column[]} */ columns) => lineOfWords("remarks", text("remarks"), columns.map(({ refused, why, outside }) => [refused || why, outside].filter(Boolean).join(" ")));

  const groups = [createRoving(table.tHead, "button"), createRoving(part("figures"), "button"), createRoving(part("same"), "button"), createRoving(said, "button")];

  async function refresh() {
    const { job, hand, document: inHand } = design.history.entry;
    const kept = job.items.get(hand)?.kept ?? [];
    whose = hand;
    const step = ladder.value;
    none.hidden = step || kept.length > 0;
    const base = Math.min(bases.get(hand) ?? 0, kept.length);
    const args = step ? { designs: [inHand], names: [""], base: 0, held: held.value, money: money.checked, ladder: step } : { designs: [inHand, ...kept.map(({ design }) => whole(job.base, design))], names: ["", ...kept.map(({ name }) => name)], base, held: held.value, money: money.checked };
    try {
      const reply = await act.compare(args);
      if (!reply || whose !== hand) return;
      stepped = step !== "";
      fill(reply);
    } catch (error) {
      write(holds, act.reason(/** @type {Error} */ (error)));
    }
  }

  return { refresh };
}
