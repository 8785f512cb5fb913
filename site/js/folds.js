// @ts-check
// Groups of entries fold: what is rarely changed is a line that says what is in it. A group that somebody opened or folded stays so;
// of the others the table says in which sections they are open (core/field/groups.go). Tab goes to the heads of what is folded and
// to the entries of what is open; from head to head go the arrows.

import { write } from "./keyed.js";
import { keepFolds, savedFolds } from "./store/folds.js";

/** @typedef {ReturnType<typeof group>} Group */

/** Opens the group in which an element lies folded, as the browser does for what it finds there. @param {Element | null | undefined} element */
export function unfold(element) {
  element?.closest(".group .in[hidden]")?.dispatchEvent(new Event("beforematch", { bubbles: true }));
}

/** @param {HTMLElement} form */
export function createFolds(form) {
  const groups = [.../** @type {NodeListOf<HTMLElement>} */ (form.querySelectorAll(".group"))].map(group);
  const kept = savedFolds();
  let told = new Set(); // of what is wrong: a group opens for it once
  let begun = false;

  /** @param {Group} group @param {boolean} open */
  function set(group, open) {
    if (open === group.open) return;
    group.set(open);
    stops();
  }

  /** Where all are open the first is a stop, so that each can be folded by keys. */
  function stops() {
    const shown = groups.filter(({ shown }) => shown);
    const folded = shown.filter(({ open }) => !open);
    for (const { head } of shown) head.tabIndex = -1;
    for (const { head } of folded.length ? folded : shown.slice(0, 1)) head.tabIndex = 0;
  }

  for (const group of groups) {
    const turn = () => {
      set(group, !group.open);
      kept[group.id] = group.open;
      keepFolds(kept);
    };
    group.head.addEventListener("click", turn);
    group.says.addEventListener("click", turn);
    group.inside.addEventListener("beforematch", () => set(group, true));
    group.head.addEventListener("keydown", (event) => {
      const shown = groups.filter(({ shown }) => shown);
      const move = { ArrowDown: 1, ArrowUp: -1, Home: -shown.length, End: shown.length }[event.key];
      if (!move) return;
      event.preventDefault();
      shown[Math.max(0, Math.min(shown.length - 1, shown.indexOf(group) + move))].head.focus();
    });
  }

  return {
    /** @param {string} section */
    section(section) {
      for (const group of groups) group.set(kept[group.id] ?? group.openIn(section));
      stops();
    },
    /** After an answer. @param {{settled: boolean, arrived: boolean}} how  arrived: it is of another design */
    show({ settled, arrived }) {
      for (const group of groups) {
        const came = group.use();
        if (came && begun && !arrived) group.set(true); // by a choice that was made just now
        group.say();
      }
      if (settled) {
        const wrong = groups.flatMap(({ wrong }) => wrong());
        for (const control of wrong) if (!told.has(control)) unfold(control);
        told = new Set(wrong);
      }
      begun = true;
      stops();
    },
  };
}

/** @param {HTMLElement} root */
function group(root) {
  const find = (/** @type {string} */ selector) => /** @type {HTMLElement} */ (root.querySelector(selector));
  const [head, says, inside] = [".fold", ".says", ".in"].map(find);
  const { group: id = "", open: opens = "" } = root.dataset;
  const controls = () => /** @type {(HTMLInputElement | HTMLSelectElement)[]} */ ([...inside.querySelectorAll(":is(.field:not([hidden]), .span) .moves")]);
  let open = head.ariaExpanded === "true";

  const text = (/** @type {HTMLInputElement | HTMLSelectElement} */ control) =>
    control instanceof HTMLSelectElement ? (control.selectedOptions[0]?.text ?? "") : control.value || control.placeholder;
  const label = (/** @type {HTMLElement} */ control) => control.closest(".field")?.querySelector(".label")?.textContent ?? "";

  /** What is in it, in short: each value once; and in full. */
  function say() {
    const filled = open ? [] : controls().filter(text);
    write(says, [...new Set(filled.map(text))].join(" · "));
    const full = filled.map((control) => `${label(control)} ${text(control)}`.trim()).join("\n");
    if (says.title !== full) says.title = full;
  }

  return {
    id,
    head,
    says,
    inside,
    say,
    get open() {
      return open;
    },
    get shown() {
      return !root.hidden && root.dataset.unused === undefined;
    },
    openIn: (/** @type {string} */ section) => opens.split(" ").includes(section),
    wrong: () => [.../** @type {NodeListOf<HTMLElement>} */ (inside.querySelectorAll("[aria-invalid]"))],
    /** @param {boolean} next */
    set(next) {
      open = next;
      head.ariaExpanded = String(open);
      says.hidden = open;
      if (open) inside.removeAttribute("hidden");
      else inside.setAttribute("hidden", "until-found");
      say();
    },
    /** Whether it has come into use. */
    use() {
      const [was, is] = [root.dataset.unused === undefined, controls().length > 0];
      root.toggleAttribute("data-unused", !is);
      return is && !was;
    },
  };
}
