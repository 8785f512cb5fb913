// @ts-check
// Looks through every design of a grid: what may vary, what must hold and what is wanted are entered, the pool looks, and what is found
// stands in a grid and as a picture of two measures. The engine reads, counts and says all of it.

import { createFound } from "./find/found.js";
import { printOn } from "./find/paper.js";
import { createChart } from "./findchart.js";
import { differences, whole } from "./job.js";
import { hide, write } from "./keyed.js";
import { Cancelled } from "./pool.js";
import { EngineError } from "./queue.js";

/**
 * @typedef {import("./api.js").Problem} Problem
 * @typedef {import("./api.js").FoundPart} FoundPart
 * @typedef {import("./api.js").SearchTold} Told
 * @typedef {import("./api.js").Methods} Methods
 * @typedef {<M extends "search_form" | "search_size" | "search_start" | "search_merge" | "search_told" | "search_binds" | "search_designs" | "search_paper">(method: M, args: Omit<Methods[M]["args"], "shop">) => Promise<Methods[M]["reply"]>} Ask
 * @typedef {{
 *   ask: Ask,
 *   chunks: (list: Omit<Methods["search_chunk"]["args"], "shop">[], onReply: (part: FoundPart) => void) => {done: Promise<FoundPart[]>, cancel: () => void},
 *   compare: (args: Omit<Methods["compare"]["args"], "shop">) => Promise<Methods["compare"]["reply"] | null>,
 *   look: (document: import("./api.js").Document | null) => Promise<void> | void,
 *   print: () => Promise<void>,
 *   today: () => string,
 *   shop: () => string,
 *   reason: (error: Error) => string,
 * }} Act  look: at a design behind that in hand; null: at none
 */

// Designs at a time: a few where there are few, so that the bar moves; at most some tenths of a second where each has to be rated, so
// that a stop is heard.
const LEAST = 400;
const MOST = 4000;
const PARTS = 256;
const GLANCE = 150; // designs of a first look, which comes within half a second

/**
 * @param {HTMLDetailsElement} root
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {Act} act
 */
export function createFind(root, design, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(`find-${id}`));
  const [axes, musts, wanted, outside, go, progress, count, said, older, answer, told, binds, bound, across, up, print, paper] = ["axes", "musts", "wanted", "outside", "go", "progress", "count", "said", "older", "answer", "told", "binds", "bound", "x", "y", "print", "paper"].map(at);
  /** @type {{cancel: () => void} | null} */ let looking = null;
  /** @type {{problem: Problem, part: FoundPart, of: string, document: import("./api.js").Document} | null} what is shown */ let found = null;
  let lookedAt = -1; // the place of the design behind that in hand
  let shownOf = ""; // the question whose answer the grid shows
  let built = false;
  let stopped = false;
  const goesOn = () => {
    if (stopped) throw new Cancelled();
  };

  root.addEventListener("toggle", refresh);
  root.addEventListener("change", ({ target }) => {
    if (target === across || target === up) tell();
    else if (root.open && !answer.contains(/** @type {Node} */ (target))) size();
  });
  go.addEventListener("click", () => (looking ? looking.cancel() : look()));
  binds.addEventListener("click", bind);
  print.addEventListener("click", async () => {
    if (!found) return;
    const { problem: asked, part, document } = found;
    const reply = await act.ask("search_paper", { document, problem: asked, part, older: !older.hidden });
    await printOn(paper, reply, /** @type {SVGElement} */ (root.querySelector(".findchart svg")), act.print);
  });

  const labelled = (/** @type {string} */ text, /** @type {HTMLElement} */ control) => {
    const label = document.createElement("label");
    label.append(text, " ", control);
    return label;
  };
  const option = (/** @type {{id: string, label: string}} */ { id, label }) => new Option(label, id);

  /** @param {Methods["search_form"]["reply"]} form */
  function build(form) {
    for (const { field, label, typed, choices = [], on } of form.axes) {
      const row = document.createElement("div");
      row.dataset.field = field;
      const tick = document.createElement("input");
      Object.assign(tick, { type: "checkbox", checked: on });
      tick.dataset.testid = `find-vary-${field}`;
      const name = labelled("", tick);
      name.append(label);
      name.className = "tick";
      name.dataset.means = `field ${field}`;
      const wrong = document.createElement("small");
      wrong.className = "wrong";
      wrong.id = `find-wrong-${field}`;
      if (choices.length) {
        const list = document.createElement("div");
        list.className = "choices";
        for (const { id, label } of choices) {
          const one = document.createElement("input");
          Object.assign(one, { type: "checkbox", value: id, checked: id === typed });
          const item = labelled("", one);
          item.append(label);
          list.append(item);
        }
        row.append(name, list, wrong);
      } else {
        const entry = document.createElement("input");
        Object.assign(entry, { type: "text", className: "moves", maxLength: 200, autocomplete: "off", spellcheck: false, value: typed });
        entry.setAttribute("aria-label", label);
        entry.setAttribute("aria-describedby", wrong.id);
        entry.dataset.testid = `find-axis-${field}`;
        entry.addEventListener("input", () => (tick.checked = true));
        row.append(name, entry, wrong);
      }
      axes.append(row);
    }
    for (const { id, label, means, typed, choices } of form.musts) {
      const row = document.createElement("div");
      row.dataset.field = `must.${id}`;
      const control = document.createElement(choices ? "select" : "input");
      control.className = "moves";
      control.dataset.testid = `find-must-${id}`;
      if (control instanceof HTMLSelectElement) control.append(new Option("–", ""), ...(choices ?? []).map(option));
      else Object.assign(control, { type: "text", maxLength: 40, autocomplete: "off", spellcheck: false });
      control.value = typed;
      const wrong = document.createElement("small");
      wrong.className = "wrong";
      const name = labelled("", control);
      name.prepend(Object.assign(document.createElement("span"), { textContent: label }));
      name.dataset.means = `text ${means}`;
      row.append(name, wrong);
      musts.append(row);
    }
    [...wanted.querySelectorAll("select")].forEach((select, i) => {
      if (i > 0) select.append(new Option("–", ""));
      select.append(...form.wanted.map(option));
      select.value = i === 0 ? "price" : "";
    });
    built = true;
  }

  /** @returns {Problem} */
  function problem() {
    const varied = [...axes.children].filter((row) => row.querySelector("input").checked);
    const list = varied.map((row) => {
      const choices = row.querySelector(".choices");
      const field = row.dataset.field;
      if (!choices) return { field, typed: row.querySelector("input[type=text]").value };
      return { field, texts: [...choices.querySelectorAll("input:checked")].map((/** @type {HTMLInputElement} */ one) => one.value) };
    });
    const must = Object.fromEntries([...musts.children].map((row) => [row.dataset.field.slice("must.".length), row.querySelector(".moves").value.trim()]).filter(([, text]) => text));
    const wants = [...wanted.querySelectorAll("select")].map(({ value }) => value).filter((value, i, all) => value && all.indexOf(value) === i);
    return { axes: list, must, wanted: wants, outside: outside.checked, day: act.today() };
  }
  const inHand = () => design.history.entry.document;
  const keyOf = (/** @type {Problem} */ asked) => JSON.stringify([inHand().fields, inHand().spans, inHand().units, asked, act.shop()]);

  /** Each fault stands at its entry; what has none stands where the count does. @param {Error | null} error */
  function blame(error) {
    const fields = error instanceof EngineError ? error.fields : [];
    const rows = [...axes.children, ...musts.children];
    const left = new Map(fields.map(({ field, message }) => [field, message]));
    for (const row of rows) {
      const why = left.get(row.dataset.field) ?? "";
      left.delete(row.dataset.field);
      write(row.querySelector(".wrong"), why);
      row.querySelector(".moves")?.toggleAttribute("aria-invalid", why !== "");
    }
    if (error) write(count, left.size || fields.length === 0 ? [...left.values()][0] ?? act.reason(error) : "");
    go.disabled = error !== null && !looking;
  }

  /** How many designs that makes. */
  async function size() {
    try {
      const reply = await act.ask("search_size", { document: inHand(), problem: problem() });
      blame(null);
      write(count, reply.said);
      return reply;
    } catch (error) {
      blame(/** @type {Error} */ (error));
      return null;
    } finally {
      stand();
    }
  }

  /** What was found of another job, shop or question says so. */
  function stand() {
    hide(older, !found || found.of === keyOf(problem()));
    answer.classList.toggle("stands-older", !older.hidden);
  }

  /** @param {Problem} asked @param {number} all @param {(part: FoundPart) => Promise<void> | void} [onPart] */
  async function run(asked, all, onPart) {
    const args = { document: inHand(), problem: asked };
    const glance = await act.ask("search_start", { ...args, sights: GLANCE });
    goesOn();
    await onPart?.(glance.first);
    const { hurdle } = await act.ask("search_start", args);
    goesOn();
    const list = [];
    const size = Math.min(Math.max(Math.ceil(all / PARTS), LEAST), MOST);
    for (let from = 0; from < all; from += size) list.push({ ...args, hurdle, from, to: Math.min(all, from + size) });
    progress.max = all;
    progress.value = 0;
    /** @type {FoundPart[]} */ let waiting = [];
    /** @type {Promise<void> | null} */ let merging = null;
    const merge = async (/** @type {boolean} */ last) => {
      const parts = waiting;
      waiting = [];
      const merged = await act.ask("search_merge", { ...args, parts, last });
      waiting.unshift(merged);
      if (!last) await onPart?.(merged);
    };
    const batch = act.chunks(list, (part) => {
      waiting.push(part);
      progress.value += part.seen;
      merging ??= merge(false).finally(() => (merging = null));
    });
    looking = { cancel: () => ((stopped = true), batch.cancel()) };
    try {
      await batch.done;
    } finally {
      await /** @type {Promise<void> | null} */ (merging)?.catch(() => {});
    }
    await merge(true);
    return waiting[0];
  }

  /** Something that takes long, with the bar and a press that stops it. @param {() => Promise<void>} work */
  async function long(work) {
    looking = { cancel: () => (stopped = true) }; // heard when the engine has answered
    stopped = false;
    write(go, root.dataset.stop ?? "");
    hide(progress, false);
    try {
      await work();
    } catch (error) {
      if (!(error instanceof Cancelled)) blame(/** @type {Error} */ (error));
    } finally {
      looking = null;
      hide(progress, true);
      write(go, root.dataset.go ?? "");
    }
  }

  async function look() {
    const asked = problem();
    const sized = await size();
    if (!sized) return;
    await long(async () => {
      const of = keyOf(asked);
      const document = inHand();
      hide(bound, true);
      const shown = async (/** @type {FoundPart} */ part) => {
        found = { problem: asked, part, of, document };
        await tell();
      };
      await shown(await run(asked, sized.count, shown));
      hide(binds, Boolean(found && found.part.passed > 0));
    });
  }

  /** Where nothing holds: by how much each thing alone would have to give, and the nearest design. */
  async function bind() {
    if (!found) return;
    const { problem: asked, document, of } = found;
    await long(async () => {
      const sized = await act.ask("search_size", { document, problem: asked });
      const lines = [];
      for (const give of sized.gives) {
        const with_ = { ...asked, give };
        const part = await run(with_, sized.count);
        lines.push((await act.ask("search_binds", { document, problem: with_, part })).said);
        bound.replaceChildren(...lines.map((text) => Object.assign(globalThis.document.createElement("li"), { textContent: text })));
        hide(bound, false);
      }
      const nearest = { ...asked, give: "all" };
      found = { problem: nearest, part: await run(nearest, sized.count), of, document };
      await tell();
    });
  }

  const chart = createChart(/** @type {HTMLElement} */ (root.querySelector(".findchart")), (place) => adopt(place, false));
  const found_ = createFound(root, at, { press, pointed: (place) => chart.mark(place) });

  /** Shows what was found. */
  async function tell() {
    if (!found) return;
    const { problem: asked, part, of, document } = found;
    const { job, hand } = design.history.entry;
    const marks = [inHand(), ...(job.items.get(hand)?.kept ?? []).map((kept) => whole(job.base, kept.design))];
    const reply = await act.ask("search_told", { document, problem: asked, part, marks, x: across.value, y: up.value });
    const { columns, measures: asked_, picture } = reply;
    write(said, reply.said.join(" "));
    for (const [select, scale, other] of [[across, picture.x, 0], [up, picture.y, 1]]) {
      const measures = columns.slice(columns.length - asked_);
      if (select.options.length !== measures.length || [...select.options].some((/** @type {HTMLOptionElement} */ one, /** @type {number} */ i) => one.value !== measures[i].id)) select.replaceChildren(...measures.map(option));
      select.value = scale.id || measures[other]?.id;
    }
    hide(answer, false); // a grid that is hidden has no rows
    chart.show(picture);
    found_.show(reply, shownOf !== of);
    shownOf = of;
    stand();
  }

  /** Looks at a design that was found, keeps it or takes it over. @param {import("./find/found.js").Press} what @param {number} place */
  function press(what, place) {
    return what === "look" ? lookAt(place) : adopt(place, what === "keep");
  }

  /** A design stands behind that in hand, and is told against it; the same once more, and it goes. @param {number} place */
  async function lookAt(place) {
    if (!found) return;
    lookedAt = lookedAt === place ? -1 : place;
    if (lookedAt < 0) return lookAway();
    const { documents } = await act.ask("search_designs", { document: found.document, problem: found.problem, places: [place] });
    const one = { ...inHand(), fields: documents[0].fields, spans: documents[0].spans };
    await act.look(one);
    const reply = await act.compare({ designs: [inHand(), one], names: ["", root.dataset.this ?? ""], base: 0, held: "nothing", money: true });
    if (reply && lookedAt === place) write(told, reply.columns[1].said);
  }

  function lookAway() {
    lookedAt = -1;
    write(told, "");
    return act.look(null);
  }

  /** Takes a design in hand, or keeps it beside. @param {number} place @param {boolean} beside */
  async function adopt(place, beside) {
    if (!found || place < 0) return;
    const { documents } = await act.ask("search_designs", { document: found.document, problem: found.problem, places: [place] });
    const [one] = documents;
    await lookAway();
    await design.keepOptions((list, now, base) => {
      const next = whole({ ...now, fields: one.fields, spans: one.spans }, {});
      if (!beside) return { kept: [...list], document: next };
      return list.length >= Number(root.dataset.most) ? null : { kept: [...list, { name: "", design: differences(next, base) }] };
    });
  }

  async function refresh() {
    if (!root.open) return;
    try {
      if (!built) build(await act.ask("search_form", { document: inHand() }));
      await size();
    } catch (error) {
      write(count, act.reason(/** @type {Error} */ (error)));
    }
  }

  return { refresh };
}
