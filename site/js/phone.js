// @ts-check
// What a phone's window has no room for at once is brought together.

const PHONE = matchMedia("(max-width: 43.9rem)");

/**
 * Scrolls to what a section shows: to its curves from those of another one, else to its figures.
 * @param {HTMLElement} figures
 * @param {HTMLElement} curves
 * @returns {() => void} goes there again
 */
export function showContents(figures, curves) {
  if (!PHONE.matches) return () => {};
  const to = curves.getBoundingClientRect().top < innerHeight / 2 ? curves : figures;
  const go = () => to.scrollIntoView({ block: "start" });
  go();
  return go;
}

/**
 * While one is at an entry, its curve stands under the figures that decide; it goes when one is at another, or is done.
 * @param {HTMLElement} entries
 * @param {HTMLElement} plots
 * @param {HTMLElement} strip of the figures that decide
 */
export function keepCurveNear(entries, plots, strip) {
  /** @type {HTMLElement | null} */ let near = null;

  /** @param {HTMLElement | null} plot */
  function show(plot) {
    if (plot === near) return;
    near?.classList.remove("near");
    near = plot;
    if (!plot) return;
    document.documentElement.style.setProperty("--strip", `${strip.offsetHeight}px`);
    plot.classList.add("near");
  }

  /** @param {Element} at */
  function curveOf(at) {
    const field = at.closest("[data-field]")?.getAttribute("data-field");
    const of = (/** @type {string} */ axis) => [.../** @type {NodeListOf<HTMLElement>} */ (plots.querySelectorAll(`[data-${axis}="${field}"]`))];
    return [...of("across"), ...of("up")].find((plot) => plot === near || plot.checkVisibility()) ?? null;
  }

  addEventListener("focusin", ({ target }) => {
    if (!(target instanceof Element) || near?.contains(target)) return;
    const curve = PHONE.matches && entries.contains(target) ? curveOf(target) : null;
    show(curve);
    // When the finger has gone: what moves under it is not what it presses.
    if (curve) setTimeout(() => near === curve && target.scrollIntoView({ block: "nearest" }));
  });
  addEventListener("focusout", ({ relatedTarget, target }) => {
    // A press on what takes no focus; to another window one comes back.
    if (!relatedTarget && document.hasFocus() && target instanceof Element && !near?.contains(target)) setTimeout(() => document.activeElement === document.body && show(null));
  });
  PHONE.addEventListener("change", () => show(null));
}
