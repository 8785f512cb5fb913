// @ts-check
// The panel for a trainee: exercises, explanations that move, and what words mean. It is made when it is first wanted, with its style.

import { createExercises } from "./learn/exercises.js";
import { createStories } from "./learn/stories.js";
import { createRoving } from "./roving.js";
import { keepProgress, savedProgress } from "./store/learn.js";

/**
 * @typedef {import("./api.js").Document} Document
 * @typedef {{
 *   ask: <M extends keyof import("./api.js").Methods>(method: M, args: any) => Promise<import("./api.js").Methods[M]["reply"]>,
 *   latest: <M extends keyof import("./api.js").Methods>(slot: string, method: M, args: any) => Promise<import("./api.js").Methods[M]["reply"] | null>,
 *   area: () => object,
 *   shop: () => string,
 *   working: (figure: string, from: HTMLElement, section: string, of?: {document: Document, name: string}) => void,
 *   section: (id: string) => void,
 *   own: () => Promise<string>,
 *   goBack: (text: string) => Promise<void>,
 *   glossary: (from: HTMLElement) => void,
 *   closed: () => void,
 *   reason: (error: Error) => string,
 * }} Act  own: the text of the job in hand; closed: the press that opens the panel takes the focus
 */

/**
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {Act} act
 */
export function createLearn(design, act) {
  const template = /** @type {HTMLTemplateElement} */ (document.getElementById("learn-template"));
  const [style, panel] = /** @type {HTMLElement[]} */ ([...template.content.children].map((part) => part.cloneNode(true)));
  const styled = new Promise((resolve) => style.addEventListener("load", resolve, { once: true }));
  document.head.append(style);
  document.querySelector(".answers")?.before(panel);
  const part = (/** @type {string} */ name) => /** @type {any} */ (panel.querySelector(`[data-part="${name}"]`));

  const progress = savedProgress();
  function keep() {
    keepProgress(progress);
    part("first").hidden = progress.met;
  }
  const exercises = createExercises(part("exercises"), design, act, progress, keep);
  const stories = createStories(part("stories"), design, act);
  const tabs = [...panel.querySelectorAll("[data-tab]")];
  const roving = createRoving(part("tabs"), "button");

  /** @param {string} name */
  function turnTo(name) {
    for (const tab of tabs) {
      const on = tab.getAttribute("data-tab") === name;
      tab.setAttribute("aria-pressed", String(on));
      part(tab.getAttribute("data-tab") ?? "").hidden = !on;
    }
    if (name === "stories") stories.show();
    else stories.rest();
  }
  part("tabs").addEventListener("click", (/** @type {any} */ { target }) => target.dataset.tab && turnTo(target.dataset.tab));
  part("glossary").addEventListener("click", () => act.glossary(part("glossary")));
  part("close").addEventListener("click", close);
  part("first").hidden = progress.met;

  function close() {
    panel.hidden = true;
    stories.rest();
    delete document.body.dataset.learning;
    progress.met = true;
    keep();
    act.closed();
  }

  turnTo("exercises");

  return {
    async open() {
      await styled;
      document.body.dataset.learning = "";
      panel.hidden = false;
      roving();
      await exercises.show();
      part("title").focus();
    },
    close,
    get isOpen() {
      return !panel.hidden;
    },
    /** Another design is shown. */
    shown() {
      if (panel.hidden) return;
      exercises.shown();
      stories.shown().catch(() => {}); // the last words stand
    },
  };
}
