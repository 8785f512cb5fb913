// @ts-check
// The heads of the columns: what each is, its name, its verdict, and what is done with it.

import { keyed, write } from "../keyed.js";
import { newMark, setMark } from "../mark.js";

/**
 * @typedef {import("../api.js").ComparedColumn & {id: string, last: boolean, full: boolean, given: string}} Column
 *   last: no kept one stands right of it; full: no more can be kept; given: the name that it was given
 */

const RUNG = "rung-"; // before the number of a column, in the ID of a rung
const SIGNS = { left: "←", right: "→", remove: "×" };
const OF_HAND = ["base"];
const OF_KEPT = ["base", "take", "swap", "left", "right", "remove"];
const OF_RUNG = ["take", "keep"];

/** @param {number} column @param {boolean} stepped whether it is a rung of a ladder */
export const idOf = (column, stepped) => (stepped && column ? RUNG + column : String(column));

const columnOf = (/** @type {string} */ id) => Number(id.replace(RUNG, ""));

/** What a column is. @param {HTMLElement} root @param {string} id */
export function roleOf({ dataset }, id) {
  if (id === "0") return dataset.inHand ?? "";
  return (dataset[id.startsWith(RUNG) ? "rung" : "kept"] ?? "").replace("{place}", String(columnOf(id)));
}

/**
 * @param {HTMLTableRowElement} row
 * @param {HTMLElement} root holds the words
 * @param {Record<string, (column: number) => void>} acts
 * @param {(column: number, name: string) => void} rename
 */
export function createHeads(row, root, acts, rename) {
  row.append(document.createElement("td"));
  const text = (/** @type {string} */ name) => root.dataset[name] ?? "";

  /** @param {number} column */
  function entry(column) {
    const name = document.createElement("input");
    Object.assign(name, { type: "text", className: "moves", maxLength: 40, autocomplete: "off", spellcheck: false });
    name.setAttribute("aria-label", `${text("name")}, ${roleOf(root, String(column))}`);
    name.addEventListener("change", () => rename(column, name.value.trim()));
    return name;
  }

  /** @param {string} act @param {string} id */
  function press(act, id) {
    const sign = SIGNS[/** @type {keyof typeof SIGNS} */ (act)];
    const button = document.createElement("button");
    button.type = "button";
    button.dataset.act = act;
    button.dataset.testid = `option-${act}-${id}`;
    button.textContent = sign ?? text(act);
    button.title = text(sign ? act : `${act}Long`);
    if (sign) button.setAttribute("aria-label", button.title);
    button.addEventListener("click", () => acts[act](columnOf(id)));
    return button;
  }

  const show = keyed(row, (id) => {
    const rung = id.startsWith(RUNG);
    const column = columnOf(id);
    const cell = document.createElement("th");
    cell.scope = "col";
    const role = document.createElement("div");
    role.className = "role";
    role.append(document.createElement("small"), newMark("none", ""));
    const name = column && !rung ? entry(column) : document.createElement("b");
    name.dataset.testid = `option-name-${id}`;
    const presses = document.createElement("div");
    presses.className = "acts";
    presses.append(...(rung ? OF_RUNG : column ? OF_KEPT : OF_HAND).map((act) => press(act, id)));
    cell.append(role, name, presses);
    return cell;
  });

  /** @param {HTMLTableCellElement} cell @param {Column} column */
  function fill(cell, { full, id, last, given, name, base, state, mark, refused }) {
    const [role, title, presses] = cell.children;
    write(role.children[0], roleOf(root, id));
    if (title instanceof HTMLInputElement) {
      title.placeholder = name;
      if (document.activeElement !== title) title.value = given;
    } else write(title, name);
    setMark(role.children[1], state, mark);
    for (const button of /** @type {NodeListOf<HTMLButtonElement>} */ (presses.querySelectorAll("button"))) {
      const { act } = button.dataset;
      if (act === "base") button.setAttribute("aria-pressed", String(base));
      button.disabled = (act === "keep" && full) || (act === "left" && id === "1") || (act === "right" && last) || (act === "take" && refused !== "");
    }
  }

  return (/** @type {Column[]} */ columns) => show(columns, fill);
}
