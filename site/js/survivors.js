// @ts-check
// Which fin types would bear a temperature that refuses the one in hand, each to be taken by a press.

import { keyed, write } from "./keyed.js";
import { newMark, setMark } from "./mark.js";

/** @typedef {import("./api.js").ShownSurvivor} Survivor */

/**
 * @param {HTMLElement} root
 * @param {(command: import("./api.js").Command) => void} onTake
 */
export function createSurvivors(root, onTake) {
  /** @type {WeakMap<Element, import("./api.js").Command>} */
  const commands = new WeakMap();
  const show = keyed(/** @type {Element} */ (root.querySelector("ul")), (id) => {
    const row = document.createElement("li");
    const take = document.createElement("button");
    take.type = "button";
    take.className = "moves";
    take.dataset.testid = `survivor-${id}`;
    take.addEventListener("click", () => {
      const command = commands.get(take);
      if (command) onTake(command);
    });
    row.append(take, document.createElement("span"), newMark("none", ""));
    return row;
  });

  /** @param {HTMLElement} row @param {Survivor} survivor */
  function fill(row, { text, state, mark, change }) {
    const [take, said, sign] = row.children;
    commands.set(take, change.command);
    write(take, change.text);
    write(said, text);
    setMark(sign, state, mark);
  }

  return {
    /** @param {Survivor[] | undefined} survivors */
    show(survivors = []) {
      root.hidden = survivors.length === 0;
      show(survivors, fill);
    },
  };
}
