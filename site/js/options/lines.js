// @ts-check
// The lines of the table: an entry or a figure, with a cell for each column.

import { keyed, write } from "../keyed.js";

/** @typedef {import("../api.js").ComparedLine} Line */

/** A line of words that are no figure. @param {string} id @param {string} label @param {string[]} values @returns {Line} */
export const lineOfWords = (id, label, values) => ({
  id,
  label,
  unit: "",
  same: false,
  means: "",
  worked: "",
  cells: values.map((value) => ({ value, against: "", best: false, refused: false, moved: false, absent: "" })),
});

/**
 * @param {HTMLElement} body of the table
 * @param {{best: string, moved: string}} words
 * @param {() => import("../api.js").ComparedColumn[]} columns that stand there
 * @param {(line: Line, column: number, from: HTMLElement) => void} open a value is pressed, for its working
 */
export function createLines(body, words, columns, open) {
  const show = keyed(body, (id) => {
    const row = document.createElement("tr");
    row.dataset.testid = `compared-${id}`;
    row.dataset.dimension = id; // lit with its entry
    const name = document.createElement("th");
    name.scope = "row";
    name.append(document.createElement("span"), " ", Object.assign(document.createElement("span"), { className: "unit" }));
    row.append(name);
    return row;
  });

  function newCell() {
    const cell = document.createElement("td");
    for (const [tag, name] of [["span", "best"], ["span", "value"], ["small", "against"]]) cell.append(Object.assign(document.createElement(tag), { className: name }));
    return cell;
  }

  /** A sign, and the same in a word for those who do not see it. @param {HTMLElement} to @param {string} sign @param {string} word */
  function sign(to, sign, word) {
    to.textContent = sign;
    if (sign) to.append(Object.assign(document.createElement("span"), { className: "unseen", textContent: word }));
  }

  /** @param {HTMLElement} to @param {Line} line @param {number} column @param {string} said what it is the value of */
  function pressable(to, line, column, said) {
    const had = to.querySelector("button");
    const press = had ?? document.createElement("button");
    press.type = "button";
    press.onclick = () => open(line, column, press);
    write(press, line.cells[column].value);
    press.setAttribute("aria-label", `${line.label}, ${said}: ${line.cells[column].value} ${line.unit}`);
    if (!had) to.replaceChildren(press);
  }

  /** @param {HTMLTableRowElement} row @param {Line} line */
  function fill(row, line) {
    const { label, unit, means, worked, cells } = line;
    write(row.cells[0].children[0], label);
    if (means) row.dataset.means = /** @type {HTMLElement} */ (row.cells[0].children[0]).dataset.term = means; // pressed, or by F1 from a value
    write(row.cells[0].children[1], unit);
    while (row.cells.length > cells.length + 1) row.deleteCell(-1);
    while (row.cells.length <= cells.length) row.append(newCell());
    cells.forEach(({ value, against, best, refused, moved, absent }, i) => {
      const cell = row.cells[i + 1];
      const column = columns()[i];
      const [mark, amount, beside] = /** @type {HTMLElement[]} */ ([...cell.children]);
      sign(mark, best ? "◆" : refused ? "✕" : "", best ? words.best : column.mark);
      if (worked && value) pressable(amount, line, i, column.name);
      else amount.textContent = value || (absent && "–");
      amount.title = absent;
      write(beside, moved ? words.moved : against);
      cell.classList.toggle("moved", moved);
      cell.classList.toggle("of-base", column.base);
    });
  }

  return (/** @type {Line[]} */ lines) => show(lines, fill);
}
