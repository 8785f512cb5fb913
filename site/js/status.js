// @ts-check
// One line that says what to look at: entries that cannot be used, else the one verdict on the design.

import { unfold } from "./folds.js";
import { hide, keyed, write } from "./keyed.js";
import { newMark, setMark } from "./mark.js";

const TOLD = 6000; // ms

/** @typedef {import("./api.js").ShownNotice} Notice */
/** @typedef {{label: string, focus: () => void}} Fault */

/** @param {HTMLElement | null} element */
function reach(element) {
  unfold(element);
  element?.focus();
}

/**
 * @param {HTMLElement} root
 * @param {{label: (field: string) => string, focus: (field: string) => void, show: (section: string) => void}} form
 * @param {(command: import("./api.js").Command) => void} onTake a change that a remark proposes was pressed
 * @param {(sentence: string) => void} onCopy a remark is to leave as a line
 */
export function createStatus(root, form, onTake, onCopy) {
  const find = (/** @type {string} */ selector) => /** @type {HTMLElement} */ (root.querySelector(selector));
  const [line, more, list] = [find(".line"), find(".more"), find("#remarks")];
  const says = root.dataset;
  const wrongs = JSON.parse(says.wrong ?? "[]"); // what is said of one entry at fault, of two, and so on

  /** A mark, a text, a text to press, a text after it, a change to press and what it does; made once, so that a press outlasts an answer. @param {HTMLElement} parent */
  function sentence(parent) {
    const [before, press, after, apply, effect] = ["span", "button", "span", "button", "span"].map((name) => document.createElement(name));
    const mark = newMark("none", "");
    let onPress = () => {};
    let onApply = () => {};
    for (const button of [press, apply]) button.setAttribute("type", "button");
    press.addEventListener("click", () => onPress());
    apply.addEventListener("click", () => onApply());
    apply.className = "moves";
    apply.dataset.testid = "remark-apply";
    effect.className = "grey";
    parent.replaceChildren(mark, before, press, after, apply, effect);
    /** @param {{state?: string, mark?: string, text?: string, jump?: string, focus?: () => void, more?: string, change?: import("./api.js").Change | null}} say */
    return ({ state = "none", mark: word = "", text = "", jump = "", focus = () => {}, more: rest = "", change = null }) => {
      setMark(mark, state, word);
      write(before, text);
      write(press, jump);
      write(after, rest);
      write(apply, change ? (says.apply ?? "").replace("{change}", change.text) : "");
      write(effect, change?.effect ?? "");
      for (const part of [before, press, after, apply, effect]) hide(/** @type {HTMLElement} */ (part), !part.textContent);
      onPress = focus;
      onApply = () => change && onTake(change.command);
    };
  }

  const say = sentence(line);
  line.querySelector("button")?.setAttribute("data-testid", "jump");
  say({ text: says.starting });

  /** A remark with the field it hangs on. @param {Notice} notice */
  function remark({ state, mark, text, field, change }) {
    return form.label(field) ? { state, mark, jump: text, focus: () => form.focus(field), change } : { state, mark, text, change };
  }

  /** The verdict leads to the entry that it hangs on, else to the section that it comes from. @param {import("./api.js").Ruling} ruling */
  function ruled({ state, mark, text, section, field, change }) {
    if (state === "good") return { state, mark, text };
    return { state, mark, jump: text, focus: () => (form.label(field) ? form.focus(field) : form.show(section)), change };
  }

  /** @type {WeakMap<Element, ReturnType<typeof sentence>>} */
  const sentences = new WeakMap();
  const showRemarks = keyed(list, () => {
    const item = document.createElement("li");
    sentences.set(item, sentence(item));
    const copy = document.createElement("button");
    copy.type = "button";
    copy.className = "copy";
    copy.textContent = says.copy ?? "";
    copy.dataset.testid = "remark-copy";
    copy.addEventListener("click", () => onCopy(item.dataset.said ?? ""));
    item.append(copy);
    return item;
  });

  /** @param {Fault[]} faults */
  function wrong(faults) {
    const [{ label, focus }] = faults;
    return { state: "no", mark: wrongs[faults.length - 1], jump: label, focus, more: says.stale };
  }

  /** @param {import("./api.js").Page} view @param {import("./form.js").Asides} asides @returns {Fault[]} */
  function faultsOf({ fields, spans }, asides) {
    /** @type {Fault[]} */ const faults = [];
    const title = asides.get("title");
    if (title) faults.push({ label: title.reason, focus: () => reach(document.getElementById("design-title")) });
    for (const { id, error } of fields) {
      if (error || asides.has(id)) faults.push({ label: form.label(id), focus: () => form.focus(id) });
    }
    spans.forEach((/** @type {any} */ span, /** @type {number} */ index) => {
      for (const part of ["centre", "width"]) {
        const label = asides.get(`span ${index} ${part}`)?.reason ?? span[part].error;
        if (label) faults.push({ label, focus: () => reach(document.querySelector(`[data-testid="span-${index}-${part}"]`)) });
      }
    });
    const even = asides.get("even_spans");
    if (even) faults.push({ label: even.reason, focus: () => reach(document.getElementById("even-spans")) });
    return faults;
  }

  let last = "";
  let until = 0; // a told text gives way to the next change, but not to the same answer at once

  return {
    /**
     * @param {import("./api.js").Page} view
     * @param {import("./form.js").Asides} asides what the engine did not take
     * @param {boolean} [fresh] whether what was told is over
     */
    show(view, asides, fresh = false) {
      const notices = view.notices ?? [];
      const faults = faultsOf(view, asides);
      const now = JSON.stringify([view.valid, faults, view.valid && [view.ruling, notices]]);
      if (now === last && !fresh && (until === 0 || performance.now() < until)) return;
      last = now;
      until = 0;
      const bad = faults.length > 0;
      root.classList.toggle("wrong", bad);
      root.classList.toggle("judged", !bad);
      hide(more, bad || notices.length < 2);
      if (bad) say(wrong(faults));
      else if (view.ruling) say(ruled(view.ruling));
      write(more, view.remarks);
      showRemarks(
        notices.map((/** @type {Notice} */ notice) => ({ ...notice, id: `${notice.field} ${notice.text}` })),
        (item, notice) => {
          sentences.get(item)?.(remark(notice));
          item.dataset.said = notice.text;
        },
      );
    },
    /** What the engine says instead of an answer. @param {string} text */
    say(text) {
      until = performance.now() + TOLD;
      root.classList.remove("judged");
      say({ text });
    },
  };
}
