// @ts-check
// What the columns of a customer's table are taken for, each corrected by a choice.

/** @typedef {import("../api.js").ShownHead} Head @typedef {import("../api.js").HeadColumn} HeadColumn */

const UNITS = ["", "mm", "in", "m", "ft", "BWG", "fpi", "fins/m", "°C", "°F"];
const SKIP = " skip"; // no name of a field begins so

/** @param {HTMLElement} root @param {HTMLTableSectionElement} body @param {(columns: HeadColumn[]) => void} told */
export function createColumns(root, body, told) {
  /** @type {Head[]} */ let now = [];

  /** @param {number} i @param {Partial<HeadColumn>} other */
  function tell(i, other) {
    told(now.map(({ said, ...column }, k) => (k === i ? { ...column, ...other } : column)));
  }

  return (/** @type {import("../api.js").ShownEnquiry} */ { columns, names }) => {
    const fold = /** @type {HTMLElement} */ (body.closest("details"));
    fold.hidden = columns.length === 0;
    now = columns;
    const focus = document.activeElement instanceof HTMLElement && body.contains(document.activeElement) ? document.activeElement.dataset.testid : "";
    body.replaceChildren(
      ...columns.map((column, i) => {
        const line = document.createElement("tr");
        const head = document.createElement("th");
        head.scope = "row";
        head.textContent = column.head || String(i + 1);
        const field = document.createElement("select");
        field.className = "moves";
        field.dataset.testid = `enquiry-field-${i}`;
        field.setAttribute("aria-label", head.textContent);
        field.append(new Option(root.dataset.lines, ""), new Option(root.dataset.skip, SKIP), new Option(root.dataset.item, "mark"), ...names.map(({ id, label }) => new Option(label, id)));
        if (![...field.options].some(({ value }) => value === column.field)) field.append(new Option(column.head, column.field));
        field.value = column.skipped ? SKIP : column.field;
        field.addEventListener("change", () => tell(i, field.value === SKIP ? { skipped: true } : { skipped: false, guessed: false, field: field.value }));
        const unit = document.createElement("select");
        unit.className = "moves";
        unit.dataset.testid = `enquiry-unit-${i}`;
        unit.setAttribute("aria-label", `${head.textContent}, ${root.querySelector("#enquiry-columns th:nth-child(3)")?.textContent}`);
        unit.append(...[...new Set([...UNITS, column.unit ?? ""])].map((name) => new Option(name || "–", name)));
        unit.value = column.unit ?? "";
        unit.addEventListener("change", () => tell(i, { unit: unit.value }));
        line.append(head);
        for (const part of [field, unit]) line.insertCell().append(part);
        line.insertCell().textContent = column.said;
        return line;
      }),
    );
    if (focus) /** @type {HTMLElement | null} */ (body.querySelector(`[data-testid="${focus}"]`))?.focus();
  };
}
