// @ts-check
// Ways of looking at the same job. To work is the first, and what the page is laid out for; another is entered and left by a
// press or by its key, left by Escape too, and loads when it is first entered. The buttons are the list of them: each bears the
// name that the body has in data-way while it is on (style sheets look at that), and its key in aria-keyshortcuts.

import { halfTyped } from "./form.js";

const WORK = "work";
const OVER = "dialog:modal, :popover-open, .room[open], .grip.pulled"; // Escape is theirs first; what fills the whole screen is modal too

/** @typedef {{enter: () => void, leave: () => void}} Way  enter: its parts are in sight; leave: they are about to go */

/**
 * @param {HTMLElement} root
 * @param {Record<string, () => Promise<Way>>} load each by its name
 * @param {(error: Error) => void} failed
 */
export function createWays(root, load, failed) {
  const buttons = [.../** @type {NodeListOf<HTMLButtonElement>} */ (root.querySelectorAll("[data-way]"))];
  const { dataset } = document.body;
  /** @type {Map<string, Way>} */ const loaded = new Map();
  let wanted = WORK; // what was asked for last: a way may be on its way
  /** @type {() => void} */ let restore = () => {};

  /** @param {string} id */
  async function go(id) {
    if (id === wanted) return;
    wanted = id;
    const way = loaded.get(id) ?? (await load[id]?.());
    if (way) loaded.set(id, way);
    if (wanted !== id || dataset.way === id) return;
    if (dataset.way === WORK) restore = kept();
    loaded.get(dataset.way ?? "")?.leave();
    dataset.way = id;
    for (const button of buttons) button.setAttribute("aria-pressed", String(button.dataset.way === id));
    if (id === WORK) restore();
    else scrollTo({ top: 0, behavior: "instant" });
    way?.enter();
  }

  const show = (/** @type {string} */ id) =>
    go(id).catch((error) => {
      wanted = dataset.way ?? WORK;
      failed(error);
    });
  for (const button of buttons) button.addEventListener("click", () => show(button.dataset.way ?? WORK));
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey || document.querySelector(OVER)) return;
      const id = buttons.find((button) => button.getAttribute("aria-keyshortcuts") === event.key)?.dataset.way;
      if (!id && (event.key !== "Escape" || wanted === WORK || halfTyped(document.activeElement))) return;
      event.preventDefault();
      event.stopPropagation();
      show(id && id !== wanted ? id : WORK);
    },
    true,
  );
  return {
    show,
    leave: () => show(WORK),
    get current() {
      return dataset.way ?? WORK;
    },
  };
}

/** What is out of sight forgets how far it was scrolled, and the focus. */
function kept() {
  const at = document.activeElement;
  const scrolled = [document.documentElement, ...document.querySelectorAll("body *")].filter(({ scrollTop }) => scrollTop > 0).map((of) => /** @type {const} */ ([of, of.scrollTop]));
  return () => {
    for (const [of, top] of scrolled) of.scrollTo({ top, behavior: "instant" });
    if (at instanceof HTMLElement) at.focus({ preventScroll: true });
  };
}
