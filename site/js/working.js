// @ts-check
// "Show the working": a figure laid open, beside the drawing, and kept up while dimensions are pulled.

import { setFormula } from "./formula.js";

/**
 * @typedef {import("./api.js").Working} Working
 * @typedef {{document: import("./api.js").Document, name: string}} Of another design than the one in hand, and what it is called
 */

const REST = 200; // ms without a change until it is asked what moves a figure

/**
 * @param {HTMLDialogElement} dialog
 * @param {(figure: string, section: string, of?: Of) => Promise<Working | null>} ask resolves to null when a newer question has taken its place
 * @param {(figure: string, of?: Of) => Promise<{moves: import("./api.js").ShownMove[]} | null>} askMoves what moves it: many designs are rated for it
 * @param {(figure: string) => void} copy all its digits
 * @param {(figure: string, section: string, of?: Of) => void} copyLine
 * @param {(error: Error) => string} reason in words why there is no answer
 */
export function createWorking(dialog, ask, askMoves, copy, copyLine, reason) {
  const part = (/** @type {string} */ name) => /** @type {HTMLElement} */ (dialog.querySelector(`[data-part=${name}]`));
  const find = (/** @type {string} */ id) => /** @type {HTMLElement} */ (dialog.querySelector(`#${id}`));
  const explained = new Set(dialog.dataset.symbols?.split(" "));
  let figure = "";
  let section = "";
  /** @type {Of | undefined} */ let design;
  /** @type {HTMLElement | null} */
  let opener = null;

  const details = /** @type {HTMLDetailsElement} */ (dialog.querySelector("details"));
  let resting = 0;

  /** Asked for where it is looked at, and when the design has come to rest. */
  function fillMoves() {
    clearTimeout(resting);
    if (details.open) resting = window.setTimeout(showMoves, REST);
  }

  async function showMoves() {
    const asked = figure;
    const moves = (await askMoves(asked, design).catch(() => null))?.moves ?? [];
    if (asked !== figure) return;
    part("moves").replaceChildren(...moves.map(moveRow));
    part("unmoved").hidden = moves.length > 0;
  }
  details.addEventListener("toggle", fillMoves);

  async function fill() {
    fillMoves();
    const [asked, of] = [figure, design];
    try {
      const working = await ask(asked, section, of);
      if (!working || asked !== figure || of !== design) return;
      show(working);
    } catch (error) {
      // It stays open, and says that what it showed no longer holds.
      if (asked === figure) show({ title: find("working-title").textContent ?? "", absent: reason(/** @type {Error} */ (error)) });
    }
  }

  /** @param {Partial<Working>} working */
  function show(working) {
    find("working-title").textContent = working.title ?? "";
    for (const name of /** @type {const} */ (["symbols", "numbers", "result"])) setFormula(part(name), working[name] ?? "");
    for (const name of /** @type {const} */ (["meaning", "absent", "basis", "source", "valid"])) part(name).textContent = working[name] ?? "";
    part("remarks").textContent = (working.remarks ?? []).join(" ");
    part("where").replaceChildren(...(working.where ?? []).map((where) => symbolRow(where, explained.has(where.symbol))));
    for (const row of dialog.querySelectorAll("dl > div")) {
      row.toggleAttribute("hidden", !row.querySelector("dd")?.textContent);
    }
    part("absent").hidden = !working.absent;
  }

  function close() {
    dialog.close();
    if (opener?.checkVisibility()) opener.focus();
  }

  find("working-close").addEventListener("click", close);
  find("working-copy").addEventListener("click", () => copy(figure));
  find("working-line").addEventListener("click", () => copyLine(figure, section, design));
  dialog.addEventListener("keydown", (event) => {
    if (event.key === "Escape") close();
  });

  return {
    /**
     * @param {string} id
     * @param {HTMLElement} from gets the focus back
     * @param {string} of the section that it is a figure of, in which it stays when another is shown
     * @param {Of} [other]
     */
    async open(id, from, of, other) {
      figure = id;
      section = of;
      find("working-term").dataset.term = `figure ${id}`;
      design = other;
      find("working-of").textContent = other?.name ?? "";
      find("working-copy").hidden = Boolean(other); // the digits at hand are those of the design in hand
      opener = from;
      await fill();
      if (!dialog.open) dialog.show();
      dialog.scrollTop = 0;
      find("working-close").focus();
    },
    /** The design has changed. */
    refresh() {
      if (dialog.open) fill();
    },
  };
}

/** @param {import("./api.js").ShownMove} move */
function moveRow({ field, label, change, effect }) {
  const row = document.createElement("tr");
  row.dataset.dimension = field; // lit with the entry
  const name = document.createElement("th");
  name.scope = "row";
  name.textContent = label;
  row.append(name);
  for (const text of [change, effect]) row.insertCell().textContent = text;
  return row;
}

/** @param {import("./api.js").Where} where @param {boolean} explained by the glossary */
function symbolRow({ symbol, name, value, si }, explained) {
  const row = document.createElement("tr");
  const cells = [document.createElement("th"), ...[name, value, si].map(() => document.createElement("td"))];
  cells[0].scope = "row";
  [symbol, name, value, si].forEach((text, i) => setFormula(cells[i], text));
  if (explained) {
    const press = document.createElement("button");
    press.type = "button";
    press.className = "term";
    press.dataset.term = `symbol ${symbol}`;
    press.append(...cells[0].childNodes);
    cells[0].append(press);
  }
  row.append(...cells);
  return row;
}
