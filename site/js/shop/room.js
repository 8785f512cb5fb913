// @ts-check
// The room in which a shop is described: its subjects at the left, the table of one of them, and what the entry in hand does to the
// order. It lies over the whole page, which waits behind it.

import { createGrid } from "../grid/grid.js";
import { createEffect } from "./effect.js";
import { found, modelOf, pathBelow, placeOf, recordAt, remarkAt } from "./tables.js";

/**
 * @typedef {import("../api.js").ShopTable} Table
 * @typedef {import("../api.js").ShopReply} Reply
 * @typedef {{
 *   enter: (typed: {path: string, text: string}[], since: number) => Promise<void>,
 *   change: (op: "add" | "copy" | "remove", record: {list: string, index: number}, since: number) => Promise<boolean>,
 *   undo: () => void, redo: () => void,
 *   effect: () => {document: import("../api.js").Document, shop: string, before: string | null, day: string} | null,
 * }} Act
 */

/** @param {HTMLDialogElement} dialog @param {ReturnType<typeof import("../engine.js").createEngine>} engine @param {Act} act */
export function createRoom(dialog, engine, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [tabs, choice, search, title, entry, hint, error, none] = ["shop-tabs", "shop-subject", "shop-search", "shop-title", "shop-entry", "shop-hint", "shop-error", "shop-none"].map(at);
  const [add, copy, remove, value, remark, term] = ["shop-add", "shop-copy", "shop-remove", "shop-value", "shop-remark", "shop-term"].map(at);
  const notes = at("notes");
  const effect = createEffect(at("shop-effect"), at("shop-effect-note"), engine);
  /** @type {Table[]} */ let tables = [];
  /** @type {Map<string, import("./tables.js").Aside>} */ let asides = new Map();
  let since = 0;
  let current = ""; // the table in sight
  /** @type {import("./tables.js").Model | null} */ let model = null;
  /** @type {{list: string, index: number} | null} an item that is to be in hand when it has come */ let wanted = null;

  const query = () => search.value.trim().toLowerCase();
  const grid = createGrid(at("shop-grid"), {
    enter(changes, in_) {
      const { table, places, since } = /** @type {import("./tables.js").Model} */ (in_);
      const path = (/** @type {import("../grid/grid.js").Change} */ { row, column, key }) => key || pathBelow(table, row - places.length + table.rows.length, column);
      return act.enter(changes.map((change) => ({ path: path(change), text: change.text })), since);
    },
    act: (what) => (what === "undo" ? act.undo() : what === "redo" ? act.redo() : what !== "press" && list(what)),
    focus: () => inHand(),
  });

  /** What the list of the cell in hand gets or loses. @param {"add" | "copy" | "remove"} what */
  async function list(what) {
    const record = recordInHand();
    if (!model || !record || (record.new && what !== "add")) return;
    const { list, index } = record;
    const items = model.table.across ? model.table.columns : model.table.rows;
    const last = items.reduce((most, { record: r }) => (r?.list === list && !r.new ? Math.max(most, r.index) : most), -1);
    const at = grid.at;
    wanted = what === "remove" ? null : { list, index: what === "copy" ? index + 1 : last + 1 };
    const done = await act.change(what, record, model.since);
    wanted = null;
    if (done && what === "remove") grid.go(at);
  }

  const recordInHand = () => (model?.places.length ? recordAt(model.table, model.places[grid.at.row], grid.at.column) : null);

  /** Says what is in hand. */
  function inHand() {
    const { row, column } = grid.at;
    const there = model?.places.length && model.columns.length ? model : null;
    const cell = there?.cell(row, column);
    const sort = there ? there.table.sorts[there.table.rows[there.places[row]].cells[column].sort] : null;
    const heads = there ? [there.columns[column].parts, there.rows[row].parts] : [];
    if (there?.table.rows[there.places[row]].record) heads.reverse(); // the thing, and then what is said of it
    const of = there ? [there.table.of, there.table.label, ...heads.flat()] : [];
    entry.textContent = [...new Set(of.filter(Boolean))].join(" · ");
    const unit = sort?.kind && sort.unit ? entry.dataset.unit.replace("{unit}", sort.unit) : "";
    hint.textContent = sort?.kind ? `${entry.dataset.takes} ${sort.hint}. ${unit}`.trim() : (sort?.choices.length ? entry.dataset.choose : "");
    error.textContent = cell?.error ?? "";
    value.textContent = cell?.shown ?? "";
    const said = there && !sort?.long ? remarkAt(there.table, there.places[row], column) : "";
    remark.hidden = !said;
    remark.querySelector("span").textContent = said;
    const record = recordInHand();
    add.disabled = !record;
    copy.disabled = remove.disabled = !record || record.new;
    const path = cell?.key ?? "";
    term.hidden = !path;
    term.dataset.term = at("shop-grid").dataset.means = `shop ${path}`;
    effect.ask(() => {
      const args = dialog.open ? act.effect() : null;
      return args && { ...args, path };
    });
  }

  /** The subjects that the search finds. */
  function listed() {
    const shown = tables.filter((table) => found(table, query()).length);
    none.hidden = shown.length > 0;
    if (!shown.some(({ id }) => id === current)) current = shown[0]?.id ?? current;
    const of = (/** @type {Table} */ { id }, /** @type {string} */ path) => shapeOf(path) === id || shapeOf(path.slice(0, path.lastIndexOf("/"))) === id || (id === "" && !path.includes("/"));
    const wrong = new Set([...asides].filter(([, { why }]) => why).map(([path]) => tables.find((table) => table.rows.some(({ cells }) => cells.some((cell) => cell.path === path)))?.id ?? tables.find((table) => of(table, path))?.id));
    tabs.replaceChildren(
      ...shown.map((table) => {
        const tab = document.createElement("button");
        tab.type = "button";
        tab.id = `shop-tab-${tables.indexOf(table)}`;
        tab.setAttribute("role", "tab");
        tab.setAttribute("aria-controls", "shop-table");
        tab.setAttribute("aria-selected", String(table.id === current));
        tab.tabIndex = table.id === current ? 0 : -1;
        tab.dataset.table = table.id;
        tab.classList.toggle("part", table.of !== "");
        tab.append(table.label);
        if (wrong.has(table.id)) tab.append(Object.assign(document.createElement("span"), { className: "wrong", textContent: ` ${tabs.dataset.wrong}` }));
        return tab;
      }),
    );
    choice.replaceChildren(...shown.map((table) => new Option(`${table.of ? "– " : ""}${table.label}${wrong.has(table.id) ? ` (${tabs.dataset.wrong})` : ""}`, table.id, false, table.id === current)));
    choice.value = current;
  }

  /** Shows the table in sight. */
  function fill() {
    const table = tables.find(({ id }) => id === current);
    if (!table) return;
    const held = tabs.contains(document.activeElement);
    listed();
    const chosen = tables.find(({ id }) => id === current) ?? table;
    if (held) tabs.querySelector('[aria-selected="true"]')?.focus();
    at("shop-table").setAttribute("aria-labelledby", `shop-tab-${tables.indexOf(chosen)}`);
    at("shop-grid").setAttribute("aria-label", chosen.label);
    model = modelOf(chosen, { asides, query: query(), since });
    grid.show(model);
    if (wanted) {
      const place = placeOf(chosen, wanted.list, wanted.index);
      const row = model.places.indexOf(place.row);
      if (row >= 0 && place.column >= 0) {
        grid.go({ row, column: place.column });
        wanted = null;
      }
    }
    inHand();
  }

  /** @param {string} id */
  function turnTo(id) {
    if (id === current) return;
    grid.finish();
    current = id;
    fill();
  }

  tabs.addEventListener("click", (/** @type {any} */ { target }) => {
    const tab = target.closest("[data-table]");
    if (tab) turnTo(tab.dataset.table);
  });
  tabs.addEventListener("keydown", (/** @type {KeyboardEvent} */ event) => {
    const list = /** @type {HTMLElement[]} */ ([...tabs.children]);
    const now = list.findIndex((tab) => tab.getAttribute("aria-selected") === "true");
    const to = { ArrowDown: now + 1, ArrowRight: now + 1, ArrowUp: now - 1, ArrowLeft: now - 1, Home: 0, End: list.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    turnTo(list[Math.max(0, Math.min(list.length - 1, to))].dataset.table ?? "");
    tabs.querySelector('[aria-selected="true"]')?.focus();
  });
  choice.addEventListener("change", () => turnTo(choice.value));
  search.addEventListener("input", () => {
    grid.finish();
    fill();
  });
  for (const [button, what] of /** @type {const} */ ([[add, "add"], [copy, "copy"], [remove, "remove"]])) button.addEventListener("click", () => (grid.finish(), list(what)));
  at("shop-close").addEventListener("click", close);
  document.addEventListener("keydown", (event) => {
    if (!dialog.open || document.querySelector(":modal") || !(event.ctrlKey || event.metaKey) || event.altKey || event.target === search) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) act.undo();
    else if (key === "y" || key === "z") act.redo();
    else return;
    event.preventDefault();
  });

  /** What lies behind the room cannot be worked with. @param {boolean} waits */
  function behind(waits) {
    for (const part of /** @type {Iterable<HTMLElement>} */ (document.body.children)) if (!(part instanceof HTMLDialogElement)) part.inert = waits;
  }

  function close() {
    grid.finish();
    behind(false);
    at("notes-place").append(notes);
    dialog.close();
  }

  return {
    open() {
      if (dialog.open) return;
      at("shop-notes").append(notes);
      dialog.show();
      behind(true);
      grid.focus();
      fill();
    },
    finish: () => grid.finish(),
    /** The first subject. */
    first() {
      search.value = "";
      turnTo(tables[0]?.id ?? "");
    },
    /** @param {Reply | null} reply @param {Map<string, import("./tables.js").Aside>} now what was typed and not taken @param {number} then what has been moved */
    show(reply, now, then) {
      if (!reply) return;
      [tables, asides, since] = [reply.form.tables, now, then];
      title.textContent = reply.form.name;
      if (!tables.some(({ id }) => id === current)) current = tables[0].id;
      fill();
    },
  };
}

/** A path without the places in lists. @param {string} path */
const shapeOf = (path) => path.split("/").map((step) => (/^\d+$|^=/.test(step) ? "*" : step)).join("/");
