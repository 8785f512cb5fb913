// @ts-check
// Figures: name, value, unit, mark. They are made once and then only rewritten, since a pull rewrites them with every move.

import { hide, write } from "./keyed.js";
import { setMark } from "./mark.js";

/**
 * @typedef {import("./api.js").ShownFigure} Figure
 * @typedef {import("./api.js").ShownGroup} Group
 */

const template = /** @type {HTMLTemplateElement} */ (document.getElementById("figure-template"));

/**
 * @param {HTMLElement} headline
 * @param {HTMLElement} groups
 * @param {HTMLElement} cards holds the homes of groups that do not stand with the others, by data-home
 * @param {(id: string, opener: HTMLElement) => void} onOpen a figure's name was pressed
 * @param {(text: string) => string} copied what goes out for a figure's digits
 */
export function createFigures(headline, groups, cards, onOpen, copied) {
  const top = list(headline, "figure");
  /** @type {Map<string, {figures: ReturnType<typeof list>, title: HTMLElement}>} */
  const lists = new Map();

  for (const root of [headline, groups, cards]) {
    root.addEventListener("click", (event) => {
      const name = /** @type {HTMLElement} */ (event.target).closest(".name");
      const figure = name?.closest(".figure");
      if (figure instanceof HTMLElement && name instanceof HTMLElement) onOpen(figure.dataset.figure ?? "", name);
    });
    // What is copied from a value is all its digits.
    root.addEventListener("copy", (event) => {
      const node = getSelection()?.anchorNode;
      const value = (node instanceof Element ? node : node?.parentElement)?.closest(".amount");
      const full = value instanceof HTMLElement ? value.dataset.full : "";
      if (!full || !event.clipboardData || getSelection()?.toString().includes("\n")) return;
      event.clipboardData.setData("text/plain", copied(full));
      event.preventDefault();
    });
  }

  /** @param {Group} group @param {Set<string>} above */
  function groupList(group, above) {
    let found = lists.get(group.id);
    if (!found) {
      const section = document.createElement("section");
      const title = document.createElement("h3");
      const body = document.createElement("div");
      section.dataset.group = group.id;
      section.append(title, body);
      const home = cards.querySelector(`[data-home="${group.id}"]`);
      if (!home) section.dataset.of = group.section;
      (home ?? groups).append(section);
      found = { title, figures: list(body, "figure", "listed", above) };
      lists.set(group.id, found);
    }
    return found;
  }

  /** @type {import("./api.js").Page | null} whose groups wait for the frame that has the first figures */ let waiting = null;

  /** @param {import("./api.js").Page} view */
  function showGroups(view) {
    const above = new Set(view.headline?.map(({ id }) => id));
    for (const group of view.groups ?? []) {
      const { title, figures } = groupList(group, above);
      write(title, group.title);
      figures.show(group.figures);
    }
  }

  return {
    /**
     * Those that decide come first: the lists of the first answer are made when these are in sight.
     * @param {import("./api.js").Page} view @param {() => void} listed @param {boolean} [early] it is the first answer, after what was last seen: what it has not judged yet stands, as of then
     */
    show(view, listed, early = false) {
      top.show(view.headline ?? [], early);
      if (lists.size) {
        showGroups(view);
        return listed();
      }
      if (!waiting) {
        requestAnimationFrame(() =>
          setTimeout(() => {
            const latest = /** @type {import("./api.js").Page} */ (waiting);
            waiting = null;
            showGroups(latest);
            listed();
          }),
        );
      }
      waiting = view;
    },
  };
}

/**
 * @param {HTMLElement} root
 * @param {string} name of test ids
 * @param {string} [other] of test ids of figures that stand in the headline too
 * @param {Set<string>} [above]
 */
function list(root, name, other = name, above = new Set()) {
  /** @type {Map<string, ReturnType<typeof make>>} */
  const made = new Map();
  let order = "";

  return {
    /** @param {Figure[]} figures @param {boolean} [early] */
    show(figures, early = false) {
      const now = figures.map(({ id }) => id).join();
      const roots = figures.map((figure) => {
        let parts = made.get(figure.id);
        if (!parts) made.set(figure.id, (parts = make(figure.id, above.has(figure.id) ? other : name)));
        const stands = early && figure.absent !== "" && parts.root.isConnected;
        parts.root.classList.toggle("older", stands);
        if (!stands) parts.show(figure);
        return parts.root;
      });
      if (now === order) return;
      order = now;
      root.replaceChildren(...roots);
    },
  };
}

/**
 * @param {string} id
 * @param {string} name
 */
function make(id, name) {
  const root = /** @type {HTMLElement} */ (/** @type {Element} */ (template.content.firstElementChild).cloneNode(true));
  const part = (/** @type {string} */ selector) => /** @type {HTMLElement} */ (root.querySelector(selector));
  const [label, amount, value, unit, mark, rests] = [".name", ".amount", ".value", ".unit", ".state", ".rests"].map(part);
  root.dataset.figure = id;
  root.dataset.testid = `${name}-${id}`;
  value.dataset.testid = `${name}-${id}-value`;
  return {
    root,
    /** @param {Figure} figure */
    show(figure) {
      write(label, figure.label);
      write(value, figure.absent || figure.value);
      write(unit, figure.unit);
      value.classList.toggle("absent", figure.absent !== "");
      if (amount.dataset.full !== figure.full) amount.dataset.full = figure.full;
      write(rests, figure.beside);
      const silent = !figure.beside || name === "listed"; // what stands in the headline says it there
      hide(rests, silent);
      if (root.title !== figure.basis) root.title = figure.basis;
      setMark(mark, figure.state, figure.mark);
      if (mark.title !== figure.tests) mark.title = figure.tests;
    },
  };
}
