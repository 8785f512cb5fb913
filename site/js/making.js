// @ts-check
// What the making section shows: lines and rules beside the drawing, pictures below it.

import { newMark } from "./mark.js";

/**
 * @typedef {{text: string, command: object}} Change
 * @typedef {{rule: string, label: string, state: string, mark: string, value: string, limit: string, margin: string, why: string, change: Change | null}} Verdict
 * @typedef {{name: string, state: string, mark: string, text: string, used: boolean, command: object}} Line
 * @typedef {{id: string, svg: string, alt: string}} Picture
 * @typedef {{answer: string, lines: Line[], auto: boolean, verdicts: Verdict[], cautions: string[], pictures: Picture[], shop: string}} Making
 */

const LINE_CHOSEN_HERE = { op: "set", values: [{ field: "line", text: "" }] };

/**
 * @param {HTMLElement} root
 * @param {HTMLElement} cards
 * @param {(command: object) => void} onCommand
 */
export function createMaking(root, cards, onCommand) {
  const at = (/** @type {string} */ id) => /** @type {HTMLElement} */ (document.getElementById(id));
  const [answer, lines, names, cautions, table] = ["making-answer", "making-lines", "line-names", "making-cautions", "verdicts"].map(at);
  const body = /** @type {HTMLTableSectionElement} */ (table);
  /** @type {Map<string, HTMLElement>} */
  const figures = new Map();
  for (const figure of /** @type {NodeListOf<HTMLElement>} */ (cards.querySelectorAll("[data-picture]"))) figures.set(figure.dataset.picture ?? "", figure);

  /** @param {string} text @param {boolean} pressed @param {object} command */
  function choice(text, pressed, command) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    button.setAttribute("aria-pressed", String(pressed));
    button.addEventListener("click", () => onCommand(command));
    return button;
  }

  /** @param {Line} line @param {boolean} auto */
  function lineRow(line, auto) {
    const row = document.createElement("div");
    const mark = newMark(line.state, line.mark);
    const text = document.createElement("span");
    text.className = "grey";
    text.textContent = line.text;
    row.append(choice(line.name, line.used && !auto, line.command), mark, text);
    row.classList.toggle("used", line.used);
    return row;
  }

  /** @param {Verdict} verdict */
  function verdictRows({ rule, label, state, mark, value, limit, margin, why, change }) {
    const row = body.insertRow();
    row.dataset.testid = `rule-${rule}`;
    row.dataset.state = state;
    const name = document.createElement("th");
    name.scope = "row";
    name.textContent = label;
    row.append(name);
    for (const text of [value, limit, margin]) row.insertCell().textContent = text;
    const last = row.insertCell();
    if (state === "none") last.textContent = mark;
    else last.append(newMark(state, mark));
    if (!why && !change) return;
    const more = body.insertRow();
    const cell = more.insertCell();
    cell.colSpan = 5;
    cell.className = "why";
    cell.textContent = why;
    if (!change) return;
    const apply = choice(`${root.dataset.apply} ${change.text}`, false, change.command);
    apply.removeAttribute("aria-pressed");
    apply.className = "moves";
    apply.dataset.rule = rule;
    apply.dataset.testid = `apply-${rule}`;
    cell.append(" ", apply);
  }

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
    room: (pulled) => ({ wide: Math.floor(figures.get("length")?.parentElement?.clientWidth ?? 0), card: pulled ? 0 : Math.floor(cards.querySelector("section")?.clientWidth ?? 0) }),

    /** @param {Making | null} making */
    show(making) {
      if (!making) return;
      answer.textContent = making.answer;
      const auto = choice(lines.dataset.auto ?? "", making.auto, LINE_CHOSEN_HERE);
      const focused = document.activeElement;
      const held = focused instanceof HTMLElement && body.contains(focused) ? focused.dataset.rule : undefined;
      const inLines = lines.contains(focused);
      lines.replaceChildren(auto, ...making.lines.map((line) => lineRow(line, making.auto)));
      names.replaceChildren(...making.lines.map((line) => new Option("", line.name)));
      cautions.replaceChildren(
        ...making.cautions.map((text) => {
          const item = document.createElement("li");
          item.textContent = text;
          return item;
        }),
      );
      body.replaceChildren();
      making.verdicts.forEach(verdictRows);
      // What was pressed is gone: the next of its kind, or the answer, takes the focus.
      if (held !== undefined) /** @type {HTMLElement} */ (body.querySelector(`[data-rule="${held}"]`) ?? answer).focus();
      if (inLines) /** @type {HTMLElement | null} */ (lines.querySelector("[aria-pressed=true]"))?.focus();
      making.pictures.forEach(draw);
    },
    /** @param {boolean} stale */
    setStale(stale) {
      root.classList.toggle("stale", stale);
      cards.classList.toggle("stale", stale);
    },
  };
}
