// @ts-check
// One section at a time beside and below the drawing. Their table is the engine's (core/report): the page is built with a
// button for each, which bears what it asks for. A later section adds an entry there and its parts to the page, nothing here.

/**
 * @param {HTMLElement} nav
 * @param {(section: string) => Promise<void>} onShow resolves when it has been answered
 * @param {() => () => void} onPress one was pressed, if only the one that is in sight; goes again to where it went
 */
export function createSections(nav, onShow, onPress) {
  const buttons = [.../** @type {NodeListOf<HTMLButtonElement>} */ (nav.querySelectorAll("[data-section]"))];
  let current = buttons[0].dataset.section ?? "";

  /** Hides what belongs to other sections. @param {ParentNode} [root] */
  function hideOthers(root = document) {
    for (const part of /** @type {NodeListOf<HTMLElement>} */ (root.querySelectorAll("[data-of]"))) {
      part.hidden = part.dataset.of !== current;
    }
  }

  /** @param {string} section */
  function show(section) {
    if (section === current) return null;
    current = section;
    for (const button of buttons) button.setAttribute("aria-pressed", String(button.dataset.section === section));
    hideOthers();
    return onShow(section);
  }

  for (const button of buttons) {
    button.addEventListener("click", () => {
      const { top } = button.getBoundingClientRect();
      const shown = show(button.dataset.section ?? "");
      // A section has entries of its own, which may come above the button: that stays under the finger.
      scrollBy({ top: button.getBoundingClientRect().top - top, behavior: "instant" });
      const again = onPress();
      const stays = scrollY;
      shown?.then(() => scrollY === stays && again()); // entries have come in above what was gone to
    });
  }
  hideOthers();
  return {
    get current() {
      return current;
    },
    /** Whether the section in sight asks for it. @param {"map" | "making" | "compared" | "enquiry" | "papers"} what */
    asks: (what) => buttons.some(({ dataset }) => dataset.section === current && what in dataset),
    hideOthers,
    show,
    /** Brings forward the section that an element belongs to. @param {Element} element */
    reveal: (element) => {
      const of = /** @type {HTMLElement | null} */ (element.closest("[data-of]"))?.dataset.of;
      if (of) show(of);
    },
  };
}
