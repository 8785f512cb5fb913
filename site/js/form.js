// @ts-check
// The entries. What somebody is typing is theirs: nothing overwrites a text while the cursor is in it.

import { unfold } from "./folds.js";
import { hide, write } from "./keyed.js";

/** @typedef {Map<string, import("./design.js").Aside>} Asides */

const PAUSE = 120; // ms of quiet before a typed text is tried

/**
 * @param {HTMLFormElement} form
 * @param {{enter: (field: string) => void, live: (field: string, text: string) => void, commit: (field: string, text: string) => void,
 *   step: (field: string, steps: number) => void, origin: (field: string, origin: string) => void}} change
 */
export function createForm(form, change) {
  /** @type {Map<string, ReturnType<typeof row>>} */
  const rows = new Map();
  for (const element of form.querySelectorAll("[data-field]")) {
    const made = row(/** @type {HTMLElement} */ (element), change);
    rows.set(made.id, made);
  }
  form.addEventListener("submit", (event) => event.preventDefault());

  return {
    /** @param {import("./api.js").FormField[]} fields */
    show(fields) {
      for (const field of fields) rows.get(field.id)?.show(field);
    },
    /** What is pulled; what hangs on it follows when the hand rests. @param {import("./api.js").FormField[]} fields */
    pulled(fields) {
      for (const field of fields) rows.get(field.id)?.pulled(field);
    },
    /** What was set aside stays as it was typed. @param {Asides} asides */
    aside(asides) {
      for (const [id, row] of rows) row.aside(asides.get(id));
    },
    /** @param {string} id */
    focus(id) {
      const control = rows.get(id)?.control;
      unfold(control);
      control?.focus();
      control?.scrollIntoView({ block: "nearest" });
    },
    /** @param {string} id */
    label: (id) => rows.get(id)?.label ?? "",
  };
}

/**
 * @param {HTMLElement} root
 * @param {Parameters<typeof createForm>[1]} change
 */
function row(root, change) {
  const id = root.dataset.field ?? "";
  const find = (/** @type {string} */ selector) => /** @type {any} */ (root.querySelector(selector));
  /** @type {HTMLInputElement | HTMLSelectElement} */
  const control = find(".moves");
  /** @type {HTMLSelectElement} */
  const origin = find(".origin select");
  const [letter, error, watch, label, other, alone] = [".origin b", ".error", ".watch", ".label", ".other", ".alone"].map(find);

  if (control instanceof HTMLInputElement) {
    typed(control, { enter: () => change.enter(id), live: (text) => change.live(id, text), commit: (text) => change.commit(id, text) });
    control.addEventListener("keydown", (event) => {
      const steps = { ArrowUp: 1, ArrowDown: -1 }[event.key];
      if (!steps || halfTyped(control)) return;
      event.preventDefault();
      change.step(id, steps);
    });
  } else {
    control.addEventListener("change", () => change.commit(id, control.value));
    if (control.selectedIndex > 0) setTimeout(change.commit, 0, id, control.value); // it was chosen before this script had come
  }
  origin.addEventListener("change", () => change.origin(id, origin.value));
  // Tab goes from entry to entry: what belongs to one is reached from it.
  root.addEventListener("keydown", (event) => {
    if (event.target !== control || (event.key !== "F1" && event.key !== "F2")) return;
    event.preventDefault();
    if (event.key === "F1") label.click();
    else origin.focus();
  });
  origin.addEventListener("keydown", (event) => {
    if (event.key === "F2" || event.key === "Escape") control.focus();
  });
  const entry = asideable(control, error, (text) => change.commit(id, text));

  return {
    id,
    control,
    label: label.textContent,
    aside: entry.aside,
    /** @param {import("./api.js").FormField} field */
    pulled({ text, error, beside = "" }) {
      entry.show(text, error);
      if (other) write(other, beside);
    },
    /** @param {import("./api.js").FormField} field */
    show(field) {
      hide(root, !field.used);
      entry.show(field.text, field.error);
      const whole = control instanceof HTMLSelectElement ? (control.selectedOptions[0]?.text ?? "") : field.typed || field.auto;
      if (root.dataset.text !== whole) control.title = root.dataset.text = whole;
      if (root.dataset.origin !== field.origin || origin.value !== field.origin) {
        root.dataset.origin = origin.value = field.origin;
        letter.textContent = origin.selectedOptions[0].dataset.letter ?? "";
      }
      if (control instanceof HTMLInputElement && (field.auto || !field.text)) control.placeholder = field.auto;
      if (watch.textContent !== field.watch) watch.textContent = field.watch;
      if (!other) return;
      const { beside = "", unit = "" } = field;
      write(other, beside);
      if (!alone || alone.dataset.is === unit) return;
      alone.dataset.is = unit;
      hide(alone, !unit);
      alone.textContent = alone.dataset.unit.replace("{unit}", unit);
    },
  };
}

/**
 * Live while typing, committed on Enter or on leaving.
 * @param {HTMLInputElement} input
 * @param {{enter?: () => void, live: (text: string) => void, commit: (text: string) => void}} change  enter: a text has begun
 */
export function typed(input, { enter, live, commit }) {
  let timer = 0;
  const hand = () => {
    clearTimeout(timer);
    delete input.dataset.typing;
    // By Enter the cursor stays in the field, but the text has been handed over.
    input.dataset.shown = input.value;
    commit(input.value);
  };
  input.addEventListener("input", () => {
    input.dataset.typing = "";
    enter?.();
    clearTimeout(timer);
    timer = window.setTimeout(() => live(input.value), PAUSE);
  });
  // There is no change event for a text that is typed again as it was.
  const finish = () => halfTyped(input) && hand();
  input.addEventListener("change", finish);
  input.addEventListener("blur", finish);
  input.addEventListener("keydown", ({ key, isComposing }) => {
    if (key === "Enter" && !isComposing) finish();
    if (key !== "Escape" || !halfTyped(input)) return;
    input.value = input.dataset.shown ?? "";
    hand();
  });
  if (input.value === input.defaultValue) return;
  input.dispatchEvent(new Event("input")); // it was typed before this script had come
  if (input !== document.activeElement) setTimeout(finish);
}

/**
 * Shows text, unless somebody is at work in the field. A whole text that is marked stays marked: what is typed next takes its place.
 * @param {HTMLInputElement | HTMLSelectElement} control
 * @param {string} text
 */
export function put(control, text) {
  const entered = control instanceof HTMLInputElement && control === document.activeElement;
  if ((entered || control.dataset.typing !== undefined) && halfTyped(control)) return; // or it was left before this script had come
  control.dataset.shown = text;
  if (control.value === text) return;
  const marked = entered && control.selectionStart === 0 && control.selectionEnd === control.value.length;
  control.value = text;
  if (marked) control.select();
}

/** Whether the field holds a text that has not been handed over: undo is then the field's own. @param {Element | null} element */
export function halfTyped(element) {
  if (!(element instanceof HTMLInputElement) || element.matches("[type=range], [type=checkbox], [type=radio]")) return false; // nothing is typed there
  const { shown = "", typing } = element.dataset;
  return typing !== undefined || element.value !== shown;
}

/**
 * A control that shows what the engine answers, or keeps what was set aside. Where one of several readings is meant, they stand under its
 * error, to be pressed.
 * @param {HTMLInputElement | HTMLSelectElement} control
 * @param {HTMLElement} place of the error
 * @param {(text: string) => void} [commit] of a reading
 */
export function asideable(control, place, commit = () => {}) {
  /** @type {import("./design.js").Aside | undefined} */ let kept;
  let [text, error] = ["", ""];

  /** @type {HTMLElement | null} */ let presses = null;
  let offered = ""; // what they are

  function fill() {
    put(control, kept ? kept.text : text);
    setError(control, place, kept ? kept.reason : error);
    offer(kept?.readings ?? []);
  }

  /** @param {string[]} readings */
  function offer(readings) {
    if (readings.join("\n") === offered) return;
    offered = readings.join("\n");
    presses?.remove();
    presses = null;
    if (!offered) return;
    presses = document.createElement("div");
    presses.className = "readings";
    presses.role = "group";
    presses.setAttribute("aria-labelledby", place.id);
    for (const reading of readings) {
      const press = document.createElement("button");
      press.type = "button";
      press.className = "moves";
      press.textContent = reading;
      press.addEventListener("click", () => {
        commit(reading);
        control.focus();
      });
      presses.append(press);
    }
    place.after(presses);
  }

  return {
    /** @param {string} nextText @param {string} nextError */
    show(nextText, nextError) {
      [text, error] = [nextText, nextError];
      fill();
    },
    /** @param {import("./design.js").Aside | undefined} aside */
    aside(aside) {
      if (aside === kept) return;
      const taken = kept && !aside;
      kept = aside;
      if (!taken) return fill();
      setError(control, place, ""); // the text is being changed: an answer is on its way
      offer([]);
    },
  };
}

/**
 * @param {Element} control
 * @param {HTMLElement} place
 * @param {string} text
 */
function setError(control, place, text) {
  if (place.textContent !== text) place.textContent = text;
  if (text) control.setAttribute("aria-invalid", "true");
  else control.removeAttribute("aria-invalid");
}
