// @ts-check
// What of an enquiry is a guess, with a press for each of its two readings, and what else is to be asked.

import { keyed, write } from "../keyed.js";
import { createRoving } from "../roving.js";

/** @typedef {import("../api.js").ShownDoubt} Doubt @typedef {import("../api.js").Decision} Decision */

/** @param {HTMLElement} list @param {HTMLElement} asks @param {(decision: Decision) => void} decide */
export function createDoubts(list, asks, decide) {
  /** @type {Map<string, Doubt>} */ let now = new Map();
  const idOf = (/** @type {Doubt} */ { kind, field, text }) => `${kind} ${field} ${text}`;
  const rows = keyed(list, (id) => {
    const line = document.createElement("li");
    const acts = document.createElement("span");
    acts.className = "acts";
    for (const second of [false, true]) {
      const press = document.createElement("button");
      press.type = "button";
      press.dataset.testid = `enquiry-${second ? "second" : "first"}`;
      press.addEventListener("click", () => {
        const doubt = now.get(id);
        if (!doubt) return;
        const { items, field, kind, text } = doubt;
        const next = line.nextElementSibling ?? line.previousElementSibling;
        if (next instanceof HTMLElement) next.querySelector("button")?.focus(); // the pressed one goes
        decide({ items, field, kind, second, ...(text && { text }) });
      });
      acts.append(press);
    }
    line.append(document.createElement("p"), acts);
    return line;
  });
  const said = keyed(asks, () => document.createElement("li"));
  const reach = createRoving(list, "button");

  return (/** @type {import("../api.js").ShownEnquiry} */ enquiry) => {
    now = new Map(enquiry.doubts.map((doubt) => [idOf(doubt), doubt]));
    rows([...now].map(([id, doubt]) => ({ ...doubt, id })), (/** @type {HTMLElement} */ line, { said, first, second, kind }) => {
      line.dataset.kind = kind;
      write(/** @type {Element} */ (line.querySelector("p")), said);
      const [one, other] = line.querySelectorAll("button");
      write(one, first);
      write(other, second);
    });
    said(enquiry.asks.map((ask, i) => ({ ...ask, id: `${i} ${ask.said}` })), (line, ask) => {
      line.dataset.kind = ask.kind;
      write(line, ask.said);
    });
    reach();
  };
}
