// @ts-check
// A cell that is being edited: a text, or a choice out of a list. Enter and Tab hand it over and move on, Escape leaves it as it was;
// whoever goes elsewhere has handed it over too. A long text is edited in lines; Shift+Enter begins one.

const LINES = 5; // of a long text in sight

/**
 * @param {HTMLElement} cell
 * @param {{text: string, label: string, long?: boolean, choices: {id: string, text: string}[], typed: boolean}} of  typed: a choice is named, not picked
 * @param {{done: (text: string, move: {rows: number, columns: number}) => void, left: () => void}} act
 */
export function edit(cell, { text, label, long = false, choices, typed }, { done, left }) {
  const control = document.createElement(choices.length && !typed ? "select" : long ? "textarea" : "input");
  let open = true;
  let pointed = false;

  /** @param {number} rows @param {number} columns */
  function hand(rows, columns) {
    if (!open) return;
    open = false;
    const { value } = control;
    away();
    done(value, { rows, columns });
  }

  function away() {
    cell.querySelector("datalist")?.remove();
    control.remove();
  }

  control.className = "editor";
  control.setAttribute("aria-label", label);
  if (control instanceof HTMLSelectElement) {
    if (!choices.some(({ id }) => id === text)) control.add(new Option(text, text)); // also what is no choice stays as it was typed
    for (const { id, text: name } of choices) control.add(new Option(name, id));
    control.addEventListener("pointerdown", () => (pointed = true));
    control.addEventListener("change", () => pointed && hand(0, 0));
  } else {
    if (control instanceof HTMLTextAreaElement) control.rows = LINES;
    control.autocomplete = "off";
    control.spellcheck = false;
    if (choices.length) {
      const names = document.createElement("datalist");
      names.id = `${cell.id}-names`;
      names.append(...choices.map((choice) => new Option("", choice.text)));
      control.setAttribute("list", names.id);
      cell.append(names);
    }
  }
  control.value = text;
  control.addEventListener("keydown", (event) => {
    if (/** @type {KeyboardEvent} */ (event).isComposing) return;
    const { key, shiftKey } = /** @type {KeyboardEvent} */ (event);
    event.stopPropagation(); // the keys are the text's
    const step = shiftKey ? -1 : 1;
    if (key === "Enter" && shiftKey && control instanceof HTMLTextAreaElement) control.setRangeText("\n", control.selectionStart, control.selectionEnd, "end");
    else if (key === "Enter") hand(step, 0);
    else if (key === "Tab") hand(0, step);
    else if (key === "Escape" && open) {
      open = false;
      away();
      left();
    } else return;
    event.preventDefault();
  });
  for (const name of ["copy", "cut", "paste", "pointerdown", "dblclick"]) control.addEventListener(name, (event) => event.stopPropagation());
  control.addEventListener("blur", () => hand(NaN, NaN)); // it does not take the focus back
  cell.append(control);
  control.focus();
  if (!(control instanceof HTMLSelectElement)) control.setSelectionRange(text.length, text.length);
  return { finish: () => hand(NaN, NaN) };
}
