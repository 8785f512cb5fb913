// @ts-check
// What leads from a label to the glossary: a press in each entry's meaning and in the working, the names of correlations and fin types, and
// symbols of a working. Any element may bear data-term, as "kind id", and is pressed. The label of a control may bear data-means: its words are
// pressed, but for those of a tick, which they tick; and F1 leads there from the control.

/** @param {(label: import("./glossary.js").Label, from: HTMLElement) => void} open */
export function leadToTerms(open) {
  const template = /** @type {HTMLTemplateElement} */ (document.getElementById("term-template"));
  document.addEventListener(
    "beforetoggle",
    ({ target, newState }) => {
      if (newState !== "open" || !(target instanceof HTMLElement) || !target.id.startsWith("help-") || target.querySelector(":scope > .term")) return;
      const press = /** @type {HTMLElement} */ (template.content.firstElementChild?.cloneNode(true));
      press.dataset.term = `field ${target.id.slice(5)}`;
      target.append(press);
    },
    true,
  );

  /** @param {string} term @param {HTMLElement} from */
  function lead(term, from) {
    const [kind, id] = term.split(" ");
    open({ kind, id }, from);
  }

  document.addEventListener("click", (event) => {
    const at = /** @type {HTMLElement} */ (event.target);
    const label = at.parentElement;
    if (label instanceof HTMLLabelElement && at.matches("[data-means]:not(.tick) > span")) {
      event.preventDefault(); // the control is not what was pressed
      return lead(label.dataset.means ?? "", label.control ?? label);
    }
    const press = at.closest("[data-term]");
    if (!(press instanceof HTMLElement)) return;
    const popover = press.closest("[popover]");
    const opener = popover && document.querySelector(`[popovertarget="${popover.id}"]`);
    lead(press.dataset.term ?? "", opener instanceof HTMLElement ? opener : press);
  });
  document.addEventListener("keydown", (event) => {
    const at = event.target;
    if (event.key !== "F1" || event.defaultPrevented || !(at instanceof HTMLElement)) return;
    const means = /** @type {HTMLElement | null} */ (at.closest("[data-means]"))?.dataset.means;
    if (!means) return;
    event.preventDefault();
    lead(means, at);
  });
}
