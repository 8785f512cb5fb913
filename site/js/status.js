// @ts-check
// One line that says what to look at: entries that cannot be used, else remarks on the design, else that all is usual.

import { newMark } from "./mark.js";

const TOLD = 6000; // ms

/**
 * @param {HTMLElement} root
 * @param {{label: (field: string) => string, focus: (field: string) => void}} form
 */
export function createStatus(root, form) {
  const find = (/** @type {string} */ selector) => /** @type {HTMLElement} */ (root.querySelector(selector));
  const [line, more, list] = [find(".line"), find(".more"), find("#remarks")];
  const says = root.dataset;

  /** A remark with the field it hangs on. @param {{state: string, mark: string, text: string, field: string}} notice */
  function remark({ state, mark, text, field }) {
    if (!form.label(field)) return [newMark(state, mark), text];
    const jump = document.createElement("button");
    jump.type = "button";
    jump.textContent = text;
    jump.addEventListener("click", () => form.focus(field));
    return [newMark(state, mark), jump];
  }

  /** @param {any[]} fields @param {any[]} spans */
  function wrong(fields, spans) {
    const bad = fields.filter(({ error }) => error);
    const inSpans = spans.flatMap(({ centre, width }) => [centre.error, width.error]).filter(Boolean);
    const count = bad.length + inSpans.length;
    const text = count === 1 ? says.single : says.several?.replace("{count}", String(count));
    const first = document.createElement("button");
    first.type = "button";
    first.dataset.testid = "jump";
    first.textContent = bad.length ? form.label(bad[0].id) : inSpans[0];
    first.addEventListener("click", () =>
      bad.length ? form.focus(bad[0].id) : /** @type {HTMLElement} */ (document.querySelector("#spans [aria-invalid]")).focus(),
    );
    return [newMark("no", text ?? ""), first, says.stale ?? ""];
  }

  let last = "";
  let until = 0; // a told text gives way to the next change, but not to the same answer at once

  return {
    /** @param {any} view */
    show(view) {
      const notices = view.notices ?? [];
      const now = JSON.stringify([view.valid, view.valid ? notices : [view.fields, view.spans]]);
      if (now === last && (until === 0 || performance.now() < until)) return;
      last = now;
      until = 0;
      root.classList.toggle("wrong", !view.valid);
      more.hidden = !view.valid || notices.length < 2;
      if (!view.valid) line.replaceChildren(...wrong(view.fields, view.spans));
      else if (notices.length) line.replaceChildren(...remark(notices[0]));
      else line.replaceChildren(says.calm ?? "");
      more.textContent = (says.all ?? "").replace("{count}", String(notices.length));
      list.replaceChildren(
        ...notices.map((/** @type {any} */ notice) => {
          const item = document.createElement("li");
          item.append(...remark(notice));
          return item;
        }),
      );
    },
    /** What the engine says instead of an answer. @param {string} text */
    say(text) {
      until = performance.now() + TOLD;
      line.replaceChildren(text);
    },
  };
}
