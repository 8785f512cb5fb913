// @ts-check
// One section at a time beside and below the drawing. A later section adds a button and its parts, nothing here.

/**
 * @param {HTMLElement} nav
 * @param {(section: string) => void} onShow
 */
export function createSections(nav, onShow) {
  const buttons = [.../** @type {NodeListOf<HTMLButtonElement>} */ (nav.querySelectorAll("[data-section]"))];

  /** @param {string} section */
  function show(section) {
    for (const button of buttons) button.setAttribute("aria-pressed", String(button.dataset.section === section));
    for (const part of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("[data-of]"))) {
      part.hidden = part.dataset.of !== section;
    }
    onShow(section);
  }

  for (const button of buttons) button.addEventListener("click", () => show(button.dataset.section ?? ""));
}
