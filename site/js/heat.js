// @ts-check
// What the heat section shows beside figures and plots: who holds the heat back, and every correlation with its range.

import { keyed, write } from "./keyed.js";
import { newMark, setMark } from "./mark.js";

/**
 * @typedef {{figure: string, label: string, text: string, share: number}} Bar
 * @typedef {import("./api.js").ShownAsked} Pair
 * @typedef {{id: string, label: string, of: string, text: string, state: string, mark: string, used: boolean, why: string, take: import("./api.js").Change | null}} Method
 */

/**
 * @param {HTMLElement} bars
 * @param {HTMLTableElement} table
 * @param {HTMLTableSectionElement} compared what is found beside what is wanted
 * @param {HTMLElement} used names the correlations in use where the curves are
 * @param {(figure: string, opener: HTMLElement) => void} onOpen a bar was pressed
 * @param {(command: import("./api.js").Command) => void} onTake a correlation was pressed that is to be used
 */
export function createHeat(bars, table, compared, used, onOpen, onTake) {
  /** @type {WeakMap<Element, import("./api.js").Command>} */
  const commands = new WeakMap();

  const [shares, names] = ["shares", "names"].map((name) => {
    const row = document.createElement("div");
    row.className = name;
    bars.append(row);
    return row;
  });
  const showShares = keyed(shares, () => document.createElement("i"));
  const showNames = keyed(names, (/** @type {string} */ figure) => {
    const part = document.createElement("button");
    part.type = "button";
    part.dataset.layer = figure;
    part.dataset.testid = `bar-${figure}`;
    part.append(document.createElement("i"), document.createElement("span"), " ", document.createElement("b"));
    part.addEventListener("click", () => onOpen(figure, part));
    return part;
  });

  /** @param {HTMLElement} part @param {Bar} bar */
  function fillName(part, { label, text }) {
    write(part.children[1], label);
    write(part.children[2], text);
  }

  const showMethods = keyed(table, (id, /** @type {Method} */ { state, mark }) => {
    const body = document.createElement("tbody");
    const row = body.insertRow();
    row.dataset.testid = `method-${id}`;
    const name = document.createElement("th");
    name.scope = "row";
    row.append(name, document.createElement("td"), document.createElement("td"));
    row.cells[2].append(newMark(state, mark));
    const take = document.createElement("button");
    take.type = "button";
    take.className = "moves";
    take.dataset.testid = `take-${id}`;
    take.addEventListener("click", () => {
      const command = commands.get(take);
      if (command) onTake(command);
    });
    const title = document.createElement("button");
    title.type = "button";
    title.className = "name";
    title.dataset.term = `method ${id}`;
    title.dataset.testid = `name-${id}`;
    name.append(title, " ", take);
    const reason = body.insertRow().insertCell();
    reason.colSpan = 3;
    reason.className = "why";
    return body;
  });

  /** @param {HTMLTableSectionElement} body @param {Method} method */
  function fillMethod({ rows: [row, more] }, { label, of, text, state, mark, used: now, why, take }) {
    row.classList.toggle("used", now);
    row.title = why;
    const [name, number, range] = row.cells;
    name.title = of;
    const [title, press] = /** @type {HTMLElement[]} */ ([...name.children]);
    write(title, label);
    write(press, table.dataset.apply ?? "");
    press.hidden = !take;
    if (take) {
      commands.set(press, take.command);
      press.title = take.text;
    }
    write(number, text);
    setMark(/** @type {Element} */ (range.firstElementChild), state, mark);
    write(more.cells[0], why);
    more.hidden = !why;
  }

  const showPairs = keyed(compared, (id, /** @type {Pair} */ { state, mark }) => {
    const row = document.createElement("tr");
    row.dataset.testid = `pair-${id}`;
    const name = document.createElement("th");
    name.scope = "row";
    row.append(name, ...[1, 2, 3, 4].map(() => document.createElement("td")));
    row.cells[4].append(newMark(state, mark));
    return row;
  });

  /** @param {HTMLTableRowElement} row @param {Pair} pair */
  function fillPair({ cells }, { label, found, wanted, over, state, mark }) {
    [label, found, wanted, over].forEach((text, i) => write(cells[i], text));
    setMark(/** @type {Element} */ (cells[4].firstElementChild), state, mark);
  }

  /** @param {Bar[]} layers */
  function bar(layers) {
    const parts = layers.filter(({ share }) => share > 0).map((layer) => ({ ...layer, id: layer.figure }));
    showShares(parts, (part, { share }) => (part.style.flexGrow = String(share)));
    showNames(parts, fillName);
  }

  return {
    bars: bar,
    /** @param {{bars: Bar[], methods: Method[], by_methods: string, pairs: Pair[]}} view */
    show({ bars: layers, methods, by_methods: named, pairs }) {
      showPairs(pairs, fillPair);
      bar(layers);
      showMethods(methods, fillMethod);
      write(used, named);
    },
  };
}
