// @ts-check
// Whether what is shown belongs to what is entered. It stands in data-answer at once, for print, copy and announcements,
// and is shown as grey only when it lasts, so that fast answers do not flicker.

/** @typedef {"entered" | "asked" | "answered" | "refused" | "lost"} State  DEVELOPERS.md draws how one follows from another */

const LASTS = 300; // ms until what waits for an answer is greyed

/** @param {HTMLElement} root */
export function createAnswer(root) {
  let timer = 0;

  /** @param {boolean} stale */
  function grey(stale) {
    clearTimeout(timer);
    timer = 0;
    root.classList.toggle("stale", stale);
  }

  return {
    /** Whether every figure in sight belongs to the entries in sight. */
    get whole() {
      return root.dataset.answer === "answered";
    },
    /** What is in sight is of an earlier time: it is grey from the first, not black before. */
    early: () => grey(true),
    /** @param {State} state */
    set(state) {
      root.dataset.answer = state;
      if (state === "answered") grey(false);
      else if (state === "refused" || state === "lost") grey(true);
      else if (!timer && !root.classList.contains("stale")) timer = window.setTimeout(grey, LASTS, true);
    },
  };
}
