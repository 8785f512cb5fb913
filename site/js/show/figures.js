// @ts-check
// The figures that are read across a table: name, value, unit, the mark where it is not good, and what the kept design in sight has.

import { hide, keyed, write } from "../keyed.js";
import { newMark, setMark } from "../mark.js";

/** @typedef {{id: string, label: string, value: string, unit: string, state: string, mark: string, than: string}} Reading  than: of the kept design in sight */

const QUIET = ["none", "good"];

/** @param {HTMLElement} root */
export function createReadings(root) {
  /** @type {Map<string, number>} the most letters that a value had: it does not grow and shrink while it is pulled */ const widest = new Map();

  const place = keyed(root, (id) => {
    const tile = document.createElement("div");
    tile.className = "tile";
    tile.dataset.testid = `show-${id}`;
    const [name, amount, under] = ["name", "amount", "under"].map((className) => Object.assign(document.createElement("p"), { className }));
    amount.append(Object.assign(document.createElement("span"), { className: "value" }), " ", Object.assign(document.createElement("span"), { className: "unit" }));
    under.append(newMark("none", ""), Object.assign(document.createElement("span"), { className: "than" }));
    tile.append(name, amount, under);
    return tile;
  });

  return {
    /** @param {Reading[]} readings */
    show: (readings) =>
      place(readings, (/** @type {HTMLElement} */ tile, /** @type {Reading} */ { id, label, value, unit, state, mark, than }) => {
        const [name, amount, under] = tile.children;
        write(name, label);
        write(amount.children[0], value);
        write(amount.children[1], unit);
        setMark(under.children[0], QUIET.includes(state) ? "none" : state, mark);
        write(under.children[1], than);
        const most = Math.max(value.length, widest.get(id + unit) ?? 0);
        widest.set(id + unit, most);
        tile.style.setProperty("--letters", String(most));
      }),
    /** Another design or other units: the values may be set as large as they fit. */
    release: () => widest.clear(),
    hide: (/** @type {boolean} */ yes) => hide(root, yes),
  };
}
