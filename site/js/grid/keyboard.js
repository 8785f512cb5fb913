// @ts-check
// A grid by keys.

import { lastOf } from "./model.js";
import { asked, moved } from "./moves.js";

/**
 * @typedef {import("./moves.js").Place} Place
 * @typedef {"add" | "copy" | "remove" | "undo" | "redo" | "press"} Asked  of the grid's owner; press: a cell in which nothing is entered
 */

/**
 * @param {HTMLElement} host
 * @param {() => import("./model.js").Model} shown
 * @param {ReturnType<typeof import("./selection.js").createSelection>} hand
 * @param {{
 *   go: (to: Place, further?: boolean) => void, page: () => number, begin: (typed: string | null) => void, clear: () => void, fill: () => void, all: () => void,
 *   other: (text: string) => void, act: (what: Asked) => void,
 * }} act  other: of two choices
 */
export function listenToKeys(host, shown, hand, { go, page, begin, clear, fill, all, other, act }) {
  host.addEventListener("keydown", (event) => {
    const model = shown();
    if (!model.rows.length) return;
    const to = moved(event, hand.at, lastOf(model), page());
    const what = asked(event);
    const { choices, text } = model.cell(hand.at.row, hand.at.column);
    if (to) go(to, event.shiftKey);
    else if (what === "edit") begin(null);
    else if (what === "clear") clear();
    else if (what === "fill") fill();
    else if (what === "all") all();
    else if (what) act(what);
    else if (event.key === "Escape" && hand.reaches) go(hand.at);
    else if (event.key === " " && choices.length === 2) other((choices.find(({ id }) => id !== text) ?? choices[0]).id);
    else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey) {
      begin(""); // the letter goes into what has the focus now, as do those of a script that composes them
      return event.stopPropagation();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  });
}
