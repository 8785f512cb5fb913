// @ts-check
// What the last entry does to the order in hand, and what the number in hand would do, asked of the engine.

import { newMark, setMark } from "../mark.js";

const BESIDE = 2; // columns of numbers that have room beside a name
const PAUSE = 150; // ms on a cell before it is asked

/**
 * @param {HTMLTableElement} table
 * @param {HTMLElement} note
 * @param {ReturnType<typeof import("../engine.js").createEngine>} engine
 */
export function createEffect(table, note, engine) {
  let timer = 0;

  /** @param {import("../api.js").ShopEffect | null} effect */
  function show(effect) {
    table.hidden = !effect;
    note.textContent = effect?.note ?? note.dataset.none ?? "";
    const head = document.createElement("tr");
    head.append(document.createElement("td"), ...(effect?.columns ?? []).map((text) => cell("th", text)));
    const apart = (effect?.columns.length ?? 0) > BESIDE; // a name over its numbers
    const rows = (effect?.rows ?? []).flatMap(({ label, unit, cells }) => {
      const row = document.createElement("tr");
      const name = cell("th", label);
      name.scope = "row";
      if (unit) name.append(" ", Object.assign(document.createElement("small"), { textContent: unit }));
      const own = apart ? [Object.assign(document.createElement("tr"), { className: "apart" })] : [];
      if (apart) name.colSpan = cells.length + 1;
      for (const one of own) one.append(name);
      row.append(apart ? document.createElement("td") : name, ...cells.map(({ text, state, moved }) => {
        const one = cell("td", "");
        if (state !== "none") setMark(one.appendChild(newMark(state, text)), state, text);
        else one.textContent = text;
        one.classList.toggle("moved", moved);
        return one;
      }));
      return [...own, row];
    });
    table.replaceChildren(head, ...rows);
  }

  return {
    /** @param {() => import("../api.js").Methods["shop_effect"]["args"] | null} asked */
    ask(asked) {
      clearTimeout(timer);
      timer = window.setTimeout(async () => {
        const args = asked();
        try {
          const effect = args && (await engine.callLatest("effect", "shop_effect", args));
          if (effect || !args) show(effect);
        } catch {
          show(null); // the order's own entries say what is wrong with them
        }
      }, PAUSE);
    },
  };
}

/** @param {"th" | "td"} name @param {string} text */
function cell(name, text) {
  const made = /** @type {HTMLTableCellElement} */ (document.createElement(name));
  made.textContent = text;
  if (name === "th") made.scope = "col";
  return made;
}
