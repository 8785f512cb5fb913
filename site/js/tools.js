// @ts-check
// The line of tools above the sheet: name, units, undo, examples, files, link.

import { versionOf } from "./assets.js";
import { today } from "./files.js";
import { asideable, typed } from "./form.js";

const SAID = 5000; // ms a note stays

/** What stands on the margin of each sheet of paper, where only a style sheet can write. @param {string} place @param {string} text */
function onEachPage(place, text) {
  document.documentElement.style.setProperty(`--foot-${place}`, JSON.stringify(text));
}

/** The version of the program, as it stands in its file's name. */
export const programVersion = () => versionOf("engine.wasm.gz").split(".").at(-3) ?? "";

/**
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {{whole: boolean}} answer whether the figures belong to the entries
 * @param {{example: (id: string) => void, save: () => Promise<boolean>, link: () => Promise<boolean>, customerLink: () => Promise<boolean>, customerFile: () => Promise<void>, print: () => Promise<void>}} act
 */
export function createTools(design, answer, act) {
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

  const entry = asideable(title, document.createElement("p")); // the status line says what is wrong
  const named = (/** @type {string} */ text) => ({ op: "title", text });
  typed(title, { live: (text) => design.live(named(text)), commit: (text) => design.commit(named(text)) });
  for (const button of units) {
    button.addEventListener("click", () => design.commit({ op: "units", system: button.dataset.units }));
  }
  undo.addEventListener("click", design.undo);
  redo.addEventListener("click", design.redo);
  examples.addEventListener("click", (/** @type {any} */ { target }) => target.dataset.example && act.example(target.dataset.example));
  at("save").addEventListener("click", async () => {
    say((await act.save()) ? "saved" : "savedWithout");
  });
  at("link").addEventListener("click", async () => say((await act.link()) ? "linked" : "linkHere"));
  at("customer-link").addEventListener("click", async () => say((await act.customerLink()) ? "linked" : "linkHere"));
  at("customer-file").addEventListener("click", async () => {
    await act.customerFile();
    say("filed");
  });
  at("print").addEventListener("click", act.print);
  const [printed, whose] = [at("printed"), at("whose")];
  const version = programVersion();
  addEventListener("beforeprint", () => {
    const { head: { reference = "", revision = "" } = {} } = design.history.job ?? {};
    printed.textContent = printed.dataset.said.replace("{day}", today());
    onEachPage("name", [title.value, reference, revision].filter(Boolean).join(" · "));
    onEachPage("made", printed.dataset.foot.replace("{day}", today()).replace("{version}", version));
  });

  /** A figure that does not belong to the entries in sight leaves with that said. @param {string} full */
  const marked = (full) => (answer.whole ? full : `${full} (${said.dataset.unanswered})`);

  /** @param {string} text */
  async function copy(text) {
    try {
      await navigator.clipboard.writeText(marked(text));
    } catch {
      return say("notCopied");
    }
    say("copied", marked(text));
  }

  return {
    say,
    marked,
    /** @param {import("./api.js").Page} view */
    show(view) {
      if (view.whose) whose.textContent = view.whose;
      entry.show(view.title, "");
      for (const button of units) button.setAttribute("aria-pressed", String(button.dataset.units === view.units));
    },
    /** What can be undone is known before the answer. */
    steps() {
      undo.disabled = !design.history.canUndo;
      redo.disabled = !design.history.canRedo;
    },
    /** @param {import("./form.js").Asides} asides */
    aside: (asides) => entry.aside(asides.get("title")),
    /** Copies all digits of a figure. @param {string} id */
    async copyFigure(id) {
      await design.rest();
      const amount = /** @type {HTMLElement | null} */ (document.querySelector(`[data-figure="${id}"] .amount`));
      const full = amount?.dataset.full;
      if (full) await copy(full);
    },
    copy,
  };
}
