// @ts-check
// Presses that belong together are one stop of the Tab key: arrows go through them, Home and End to the first and last.

/** @type {Record<string, number>} */
const MOVES = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/**
 * @param {HTMLElement} root
 * @param {string} selector of the presses
 * @returns {() => void} to be called when there are others
 */
export function createRoving(root, selector) {
  /** @type {HTMLElement | null} */ let here = null;
  const all = () => /** @type {HTMLElement[]} */ ([...root.querySelectorAll(selector)]);
  const usable = (/** @type {HTMLElement} */ press) => !(/** @type {any} */ (press).disabled) && press.checkVisibility({ visibilityProperty: true });

  /** @param {HTMLElement | null} press */
  function stopAt(press) {
    here = press;
    for (const other of all()) {
      const stop = other === press ? 0 : -1;
      if (other.tabIndex !== stop) other.tabIndex = stop;
    }
  }

  root.addEventListener("focusin", ({ target }) => {
    if (target instanceof HTMLElement && target.matches(selector)) stopAt(target);
  });
  root.addEventListener("keydown", (event) => {
    if (!(event.target instanceof HTMLElement) || !event.target.matches(selector) || event.ctrlKey || event.metaKey || event.altKey) return;
    const presses = all().filter(usable);
    const at = presses.indexOf(event.target);
    const next = { Home: 0, End: presses.length - 1 }[event.key] ?? at + MOVES[event.key];
    if (!(next >= 0) || !presses[next]) return;
    event.preventDefault();
    presses[next].focus();
  });

  let due = false;
  /** Once a frame is laid out: what can be seen is asked of the browser, which would lay out the page for it at once. */
  return () => {
    if (due) return;
    due = true;
    requestAnimationFrame(() =>
      setTimeout(() => {
        due = false;
        stopAt(here && root.contains(here) && usable(here) ? here : (all().find(usable) ?? null));
      }),
    );
  };
}
