// @ts-check
// One line that says what to look at: entries that cannot be used, else remarks on the design, else that all is usual.

import { keyed, write } from "./keyed.js";
import { newMark, setMark } from "./mark.js";

const TOLD = 6000; // ms

/** @typedef {{state: string, mark: string, text: string, field: string}} Notice */
/** @typedef {{label: string, focus: () => void}} Fault */

/**
 * @param {HTMLElement} root
 * @param {{label: (field: string) => string, focus: (field: string) => void}} form
 */
export function createStatus(root, form) {
  const find = (/** @type {string} */ selector) => /** @type {HTMLElement} */ (root.querySelector(selector));
  const [line, more, list] = [find(".line"), find(".more"), find("#remarks")];
  const says = root.dataset;

  /** @param {string} text @param {() => void} press @param {string} [testid] */
  function jump(text, press, testid = "") {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    if (testid) button.dataset.testid = testid;
    button.addEventListener("click", press);
    return button;
  }

  /** A remark with the field it hangs on. @param {Notice} notice */
  const remark = ({ state, mark, text, field }) => [newMark(state, mark), form.label(field) ? jump(text, () => form.focus(field)) : text];

  const showRemarks = keyed(list, (_, /** @type {Notice & {id: string}} */ notice) => {
    const item = document.createElement("li");
    item.append(...remark(notice));
    return item;
  });

  /** @param {Fault[]} faults */
  function wrong(faults) {
    const text = faults.length === 1 ? says.single : says.several?.replace("{count}", String(faults.length));
    const [{ label, focus }] = faults;
    return [newMark("no", text ?? ""), jump(label, focus, "jump"), says.stale ?? ""];
  }

  /** @param {any} view @param {import("./form.js").Asides} asides @returns {Fault[]} */
  function faultsOf({ fields, spans }, asides) {
    /** @type {Fault[]} */ const faults = [];
    for (const { id, error } of fields) {
      if (error || asides.has(id)) faults.push({ label: form.label(id), focus: () => form.focus(id) });
    }
    spans.forEach((/** @type {any} */ span, /** @type {number} */ index) => {
      for (const part of ["centre", "width"]) {
        const label = asides.get(`span ${index} ${part}`)?.reason ?? span[part].error;
        if (label) faults.push({ label, focus: () => /** @type {HTMLElement} */ (document.querySelector(`[data-testid="span-${index}-${part}"]`)).focus() });
      }
    });
    return faults;
  }

  let last = "";
  let until = 0; // a told text gives way to the next change, but not to the same answer at once

  return {
    /** @param {any} view @param {import("./form.js").Asides} asides what the engine did not take */
    show(view, asides) {
      const notices = view.notices ?? [];
      const faults = faultsOf(view, asides);
      const now = JSON.stringify([view.valid, faults, view.valid && notices]);
      if (now === last && (until === 0 || performance.now() < until)) return;
      last = now;
      until = 0;
      const bad = faults.length > 0;
      root.classList.toggle("wrong", bad);
      more.hidden = bad || notices.length < 2;
      if (bad) line.replaceChildren(...wrong(faults));
      else if (notices.length) line.replaceChildren(...remark(notices[0]));
      else line.replaceChildren(says.calm ?? "");
      write(more, (says.all ?? "").replace("{count}", String(notices.length)));
      showRemarks(
        notices.map((/** @type {Notice} */ notice) => ({ ...notice, id: `${notice.field} ${notice.text}` })),
        (item, { state, mark }) => setMark(item.firstElementChild, state, mark),
      );
    },
    /** What the engine says instead of an answer. @param {string} text */
    say(text) {
      until = performance.now() + TOLD;
      line.replaceChildren(text);
    },
  };
}
