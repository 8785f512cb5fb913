// @ts-check
// The line of tools above the sheet: name, units, undo, examples, files, link.

import { put, typed } from "./form.js";

const SAID = 5000; // ms a note stays

/**
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {{example: (id: string) => void, save: () => Promise<void>, link: () => Promise<boolean>}} act
 */
export function createTools(design, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [title, said, undo, redo, examples] = ["design-title", "said", "undo", "redo", "examples"].map(at);
  const units = [.../** @type {NodeListOf<HTMLButtonElement>} */ (document.querySelectorAll("[data-units]"))];
  let timer = 0;

  /** @param {string} what name of a text in the page @param {string} [value] */
  function say(what, value = "") {
    said.textContent = said.dataset[what].replace("{value}", value);
    clearTimeout(timer);
    timer = window.setTimeout(() => (said.textContent = ""), SAID);
  }

  const named = (/** @type {string} */ text) => ({ op: "title", text });
  typed(title, (text) => design.live("title", named(text)), (text) => design.commit(named(text)));
  for (const button of units) {
    button.addEventListener("click", () => design.commit({ op: "units", system: button.dataset.units }));
  }
  undo.addEventListener("click", design.undo);
  redo.addEventListener("click", design.redo);
  examples.addEventListener("click", (/** @type {any} */ { target }) => target.dataset.example && act.example(target.dataset.example));
  at("save").addEventListener("click", async () => {
    await act.save();
    say("saved");
  });
  at("link").addEventListener("click", async () => say((await act.link()) ? "linked" : "linkHere"));

  return {
    say,
    /** @param {any} view */
    show(view) {
      put(title, view.title);
      for (const button of units) button.setAttribute("aria-pressed", String(button.dataset.units === view.units));
      undo.disabled = !design.history.canUndo;
      redo.disabled = !design.history.canRedo;
    },
    /** Copies all digits of a figure. @param {string} id */
    async copyFigure(id) {
      const amount = /** @type {HTMLElement | null} */ (document.querySelector(`[data-figure="${id}"] .amount`));
      const full = amount?.dataset.full;
      if (!full) return;
      await navigator.clipboard.writeText(full);
      say("copied", full);
    },
  };
}
