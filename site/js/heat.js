// @ts-check
// What the heat section shows beside figures and plots: who holds the heat back, and every correlation with its range.

import { newMark } from "./mark.js";

/**
 * @typedef {{figure: string, label: string, text: string, share: number}} Bar
 * @typedef {{id: string, label: string, of: string, value: string, unit: string, state: string, mark: string, used: boolean, why: string[]}} Method
 */

/**
 * @param {HTMLElement} bars
 * @param {HTMLTableElement} table
 * @param {HTMLElement} used names the correlations in use where the curves are
 * @param {(figure: string, opener: HTMLElement) => void} onOpen a bar was pressed
 */
export function createHeat(bars, table, used, onOpen) {
  /** @param {Bar} bar */
  function resistance({ figure, label, text, share }) {
    const part = document.createElement("button");
    part.type = "button";
    part.dataset.layer = figure;
    part.dataset.testid = `bar-${figure}`;
    part.style.flexGrow = String(share);
    part.title = `${label} ${text}`;
    const name = document.createElement("span");
    name.textContent = label;
    const value = document.createElement("b");
    value.textContent = text;
    part.append(name, " ", value);
    part.addEventListener("click", () => onOpen(figure, part));
    return part;
  }

  /** @param {Method} method */
  function row({ id, label, of, value, unit, state, mark, used, why }) {
    const row = table.insertRow();
    row.dataset.testid = `method-${id}`;
    row.classList.toggle("used", used);
    row.title = why.join("\n");
    const name = document.createElement("th");
    name.scope = "row";
    name.textContent = label;
    name.title = of;
    row.append(name);
    row.insertCell().textContent = `${value} ${unit}`;
    row.insertCell().append(newMark(state, mark));
    if (!why.length) return;
    const reason = table.insertRow().insertCell();
    reason.colSpan = 3;
    reason.className = "why";
    reason.textContent = why.join("; ");
  }

  return {
    /** @param {{bars: Bar[], methods: Method[]}} view */
    show({ bars: layers, methods }) {
      bars.replaceChildren(...layers.filter(({ share }) => share > 0).map(resistance));
      table.replaceChildren();
      methods.forEach(row);
      used.textContent = [...new Set(methods.filter((method) => method.used).map(({ label }) => label))].join(", ");
    },
    /** @param {boolean} stale */
    setStale(stale) {
      bars.classList.toggle("stale", stale);
      table.classList.toggle("stale", stale);
    },
  };
}
