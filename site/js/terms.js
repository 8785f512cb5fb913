// @ts-check
// What leads from a label to the glossary: a press in each entry's meaning and in the working, the names of correlations and fin types, and
// symbols of a working. Any element may bear data-term, as "kind id".

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
  document.addEventListener("click", (event) => {
    const press = /** @type {HTMLElement} */ (event.target).closest("[data-term]");
    if (!(press instanceof HTMLElement)) return;
    const [kind, id] = (press.dataset.term ?? "").split(" ");
    const popover = press.closest("[popover]");
    const label = popover && document.querySelector(`[popovertarget="${popover.id}"]`);
    open(/** @type {any} */ ({ kind, id }), label instanceof HTMLElement ? label : press);
  });
}
