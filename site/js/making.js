// @ts-check
// What the making section shows: lines and rules beside the drawing, pictures below it.

import { keyed, write } from "./keyed.js";
import { letters } from "./letters.js";
import { newMark, setMark } from "./mark.js";

/**
 * @typedef {import("./api.js").ShownVerdict} Verdict
 * @typedef {import("./api.js").MakingLine} MakingLine
 * @typedef {import("./api.js").Picture} Picture
 * @typedef {import("./api.js").MakingSection} Making
 */

const LINE_CHOSEN_HERE = { op: "set", values: [{ field: "line", text: "" }] };

const NO_STEP = { tubes: "", time: "", cost: "", note: "", when: "" }; // the head of those of one time

/**
 * @param {HTMLElement} root
 * @param {HTMLElement} cards
 * @param {(command: import("./api.js").Command) => void} onCommand
 */
export function createMaking(root, cards, onCommand) {
  const at = (/** @type {string} */ id) => /** @type {HTMLElement} */ (document.getElementById(id));
  const [answer, lines, names, cautions, table, breaks, steps, checks, promise, budget] = ["making-answer", "making-lines", "line-names", "making-cautions", "verdicts", "breaks", "steps", "checks", "promise", "budget"].map(at);
  /** @type {WeakMap<Element, import("./api.js").Command>} what each button does */
  const commands = new WeakMap();
  /** @type {Map<string, HTMLElement>} */
  const figures = new Map();
  for (const figure of /** @type {NodeListOf<HTMLElement>} */ (cards.querySelectorAll("[data-picture]"))) figures.set(figure.dataset.picture ?? "", figure);

  /** A button that does the command that it bears when it is pressed, whatever it bore before. @param {string} testid */
  function choice(testid = "") {
    const button = document.createElement("button");
    button.type = "button";
    if (testid) button.dataset.testid = testid;
    button.addEventListener("click", () => {
      const command = commands.get(button);
      if (command) onCommand(command);
    });
    return button;
  }

  const showLines = keyed(lines, () => {
    const row = document.createElement("div");
    const text = document.createElement("span");
    text.className = "grey";
    row.append(choice(), newMark("none", ""), text);
    return row;
  });

  /** @param {HTMLElement} row @param {MakingLine & {pressed: boolean}} line */
  function fillLine(row, { name, state, mark, text, used, pressed, command }) {
    const [button, sign, words] = row.children;
    commands.set(button, command);
    button.setAttribute("aria-pressed", String(pressed));
    write(button, name);
    setMark(sign, state, mark);
    write(words, text);
    row.classList.toggle("used", used);
  }

  const showVerdicts = keyed(table, (rule) => {
    const body = document.createElement("tbody");
    const row = body.insertRow();
    row.dataset.testid = `rule-${rule}`;
    body.dataset.means = `text shop.rule.${rule}`;
    const name = document.createElement("th");
    name.scope = "row";
    name.dataset.term = body.dataset.means;
    row.append(name);
    for (let i = 0; i < 4; i++) row.insertCell();
    row.cells[4].append(newMark("none", ""), document.createElement("span"));
    const cell = body.insertRow().insertCell();
    cell.colSpan = 5;
    cell.className = "why";
    const apply = choice(`apply-${rule}`);
    apply.className = "moves";
    const effect = document.createElement("span");
    effect.className = "grey";
    cell.append(document.createElement("span"), " ", apply, " ", effect);
    return body;
  });

  /** @param {HTMLTableSectionElement} body @param {Verdict} verdict */
  function fillVerdict({ rows: [row, more] }, { label, state, mark, value, limit, margin, why, change }) {
    row.dataset.state = state;
    [label, value, limit, margin].forEach((text, i) => write(row.cells[i], text));
    const [sign, word] = row.cells[4].children;
    setMark(sign, state, mark);
    write(word, state === "none" ? mark : "");
    const [reason, apply, effect] = /** @type {HTMLElement[]} */ ([...more.cells[0].children]);
    more.hidden = !why && !change;
    write(reason, why);
    apply.hidden = effect.hidden = !change;
    if (!change) return;
    commands.set(apply, change.command);
    write(apply, (root.dataset.apply ?? "").replace("{change}", change.text));
    write(effect, change.effect);
  }

  const showCautions = keyed(cautions, () => document.createElement("li"));

  /** @type {Map<string, {list: HTMLElement, show: typeof showCautions}>} cautions that stand by a group of figures, by its id */
  const byGroup = new Map();

  /** The list at the end of a group of figures; null where the page has no such group yet. @param {string} id */
  function cautionsAt(id) {
    let found = byGroup.get(id);
    const group = cards.querySelector(`[data-group="${id}"], [data-cautions="${id}"]`);
    if (!found && group) {
      const list = document.createElement("ul");
      list.className = "cautions";
      group.append(list);
      byGroup.set(id, (found = { list, show: keyed(list, () => document.createElement("li")) }));
    }
    return found ?? null;
  }

  /** @param {import("./api.js").ShownCaution[]} list */
  function spreadCautions(list) {
    const ids = new Set(list.map(({ at }) => at).filter((id) => id && cautionsAt(id)));
    for (const id of new Set([...ids, ...byGroup.keys()])) cautionsAt(id)?.show(list.filter(({ at }) => at === id), fillCaution);
    showCautions(list.filter(({ at }) => !ids.has(at)), fillCaution);
  }

  /** @param {HTMLElement} item @param {import("./api.js").ShownCaution} caution */
  function fillCaution(item, { head, texts }) {
    if (!head) return write(item, texts[0]);
    if (item.dataset.texts === texts.join("\n")) return;
    item.dataset.texts = texts.join("\n");
    const list = document.createElement("ul");
    list.append(...texts.map((text) => Object.assign(document.createElement("li"), { textContent: text })));
    item.replaceChildren(Object.assign(document.createElement("b"), { textContent: head }), list);
  }

  /** Rows of two lines: cells after a name, and what is said of them below. @param {HTMLElement} to @param {number} cells @param {string} name */
  const twoLined = (to, cells, name) =>
    keyed(to, (id) => {
      const body = document.createElement("tbody");
      const row = body.insertRow();
      row.dataset.testid = `${name}-${id}`;
      const head = document.createElement("th");
      head.scope = "row";
      row.append(head);
      for (let i = 0; i < cells; i++) row.insertCell();
      const note = body.insertRow().insertCell();
      note.colSpan = cells + 1;
      note.className = "why";
      return body;
    });

  /** @param {HTMLTableSectionElement} body @param {string[]} texts @param {string} note */
  function fillTwo({ rows: [row, more] }, texts, note) {
    texts.forEach((text, i) => write(row.cells[i], text));
    more.hidden = !note;
    write(more.cells[0], note);
  }

  const showSteps = twoLined(steps, 3, "step");
  const showPromise = twoLined(promise, 2, "promise");
  const showChecks = twoLined(checks, 0, "check");

  const showBreaks = twoLined(breaks, 2, "break");

  /** @param {HTMLTableSectionElement} body @param {import("./api.js").MakingBreak} item */
  function fillBreak(body, { tubes, per_tube, price, note, ordered }) {
    body.rows[0].classList.toggle("used", ordered);
    fillTwo(body, [tubes, per_tube, price], note);
  }

  let named = ""; // the lines that the entry offers

  /** @param {Picture} picture */
  function draw({ id, svg, alt }) {
    const figure = figures.get(id);
    if (!figure || figure.dataset.svg === svg) return;
    figure.dataset.svg = svg;
    figure.hidden = !svg;
    if (!svg) return figure.replaceChildren();
    const picture = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
    picture.setAttribute("role", "img");
    picture.setAttribute("aria-label", alt);
    figure.replaceChildren(picture);
  }

  return {
    /** What the pictures may take; while something is pulled only the tube's own is drawn. @param {boolean} pulled */
    room: (pulled) => ({ letters: letters(), wide: Math.floor(figures.get("length")?.parentElement?.clientWidth ?? 0), card: pulled ? 0 : Math.floor(cards.querySelector("section")?.clientWidth ?? 0) }),

    /** @param {Making | null} making */
    show(making) {
      if (!making) return;
      write(answer, making.answer);
      const held = root.contains(document.activeElement);
      const auto = { id: "", name: lines.dataset.auto ?? "", state: "none", mark: "", text: "", used: false, pressed: making.auto, command: LINE_CHOSEN_HERE };
      const offered = making.lines.map((line) => ({ ...line, id: line.name, pressed: line.used && !making.auto }));
      showLines([auto, ...offered], fillLine);
      const now = offered.map(({ name }) => name);
      if (named !== now.join("\n")) names.replaceChildren(...now.map((name) => new Option("", name)));
      named = now.join("\n");
      spreadCautions(making.cautions);
      const timed = making.work_steps.flatMap((step, i, all) => (step.when === all[i - 1]?.when ? [step] : [{ ...NO_STEP, id: step.when, name: step.when }, step]));
      showSteps(timed, (body, { name, tubes, time, cost, note, when }) => (body.classList.toggle("head", !when), fillTwo(body, [name, tubes, time, cost], note)));
      write(/** @type {HTMLElement} */ (promise.firstElementChild), making.promise.title);
      promise.hidden = !making.promise.title;
      promise.classList.toggle("bare", making.promise.rows.length === 0);
      showPromise(making.promise.rows, (body, { name, days, day, note }) => fillTwo(body, [name, days, day], note));
      write(budget, making.budget);
      budget.hidden = !making.budget;
      showChecks(making.checks, (body, { name, find }) => fillTwo(body, [name], find));
      write(/** @type {HTMLElement} */ (breaks.firstElementChild), making.breaks.title);
      showBreaks(making.breaks.rows, fillBreak);
      showVerdicts(making.verdicts.map((verdict) => ({ ...verdict, id: verdict.rule })), fillVerdict);
      // What was pressed has done its work and is gone: the answer takes the focus.
      if (held && !root.contains(document.activeElement?.checkVisibility() ? document.activeElement : null)) answer.focus();
    },
    /** @param {Making | null} making */
    draw: (making) => making?.pictures.forEach(draw),
  };
}
