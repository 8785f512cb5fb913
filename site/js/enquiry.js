// @ts-check
// What a customer sent: pasted or opened, read by the engine, its guesses settled by presses, its items rated by the pool and made the
// items of the job. The engine says all that stands here; what is settled and typed is kept beside the text, and the whole is read anew.

import { createBeside } from "./enquiry/beside.js";
import { createColumns } from "./enquiry/columns.js";
import { createDoubts } from "./enquiry/doubts.js";
import { modelOf, tableOf } from "./enquiry/model.js";
import { Refused, textOf } from "./enquiry/file.js";
import { createGroups } from "./enquiry/groups.js";
import { createKept } from "./enquiry/kept.js";
import { createList } from "./enquiry/list.js";
import { lookedAt } from "./enquiry/looked.js";
import { createRatings } from "./enquiry/ratings.js";
import { createGrid } from "./grid/grid.js";
import { createView } from "./grid/view.js";
import { download, today } from "./files.js";
import { hide, write } from "./keyed.js";
import { Cancelled } from "./pool.js";
import { draft, keepDraft, openHere } from "./store/enquiries.js";
import { newId } from "./store/local.js";
import { keepMapped, mappedOf } from "./store/mapping.js";
import { answerAll } from "./store/papers.js";

/**
 * @typedef {import("./api.js").Methods} Methods
 * @typedef {import("./api.js").ShownEnquiry} Enquiry
 * @typedef {Pick<import("./api.js").EnquiryArgs, "columns" | "decided" | "edits">} Settled  what was told, settled and typed since the text was read first
 * @typedef {{
 *   ask: <M extends "enquiry_totals" | "enquiry_job" | "enquiry_beside" | "enquiry_group" | "enquiry_table" | "enquiry_csv" | "enquiry_keep" | "enquiry_kept" | "enquiry_next" | "enquiry_list" | "enquiry_compare" | "enquiry_export" | "enquiry_import">(method: M, args: Methods[M]["args"]) => Promise<Methods[M]["reply"]>,
 *   rate: import("./enquiry/ratings.js").Rate,
 *   breaks: import("./enquiry/ratings.js").Break,
 *   read: (args: Methods["enquiry_read"]["args"], hear: (share: number) => void) => {done: Promise<Enquiry[]>, cancel: () => void},
 *   sheet: (args: Methods["enquiry_sheet"]["args"]) => {done: Promise<Methods["enquiry_sheet"]["reply"][]>, cancel: () => void},
 *   before: (args: Methods["enquiry_before"]["args"]) => {done: Promise<Methods["enquiry_before"]["reply"][]>, cancel: () => void},
 *   open: (text: string) => Promise<import("./design.js").Reply>,
 *   shop: () => string,
 *   papers: (name: string) => void,
 *   copy: (text: string) => void,
 *   note: (name: string) => void,
 *   reason: (error: Error) => string,
 * }} Act
 */

const SHOWN = 100_000; // letters that stand in the box: more would hold the page up

/** @param {HTMLElement} root @param {HTMLElement} beside @param {ReturnType<typeof import("./design.js").createDesign>} design @param {Act} act */
export function createEnquiry(root, beside, design, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(`enquiry-${id}`));
  const [text, wrong, read, file, input, progress, stop, answer, row, make, take, more, csv, xlsx, group, totals, left, letter, said, notes, told] = ["text", "wrong", "read", "file", "file-input", "progress", "stop", "answer", "row", "make", "take", "beside", "csv", "xlsx", "group", "totals", "left", "letter", "said", "notes", "told"].map(at);
  /** @type {Enquiry | null} */ let shown = null;
  /** @type {Settled[]} */ let steps = [{}];
  let place = 0; // of them
  let source = ""; // the text that was read
  let taken = ""; // the work whose items these are
  let units = design.history.current?.units ?? "si"; // that it is read in
  let priced = false; // every item that can be is
  /** @type {Settled & {units: string, text: string}} of what is shown: while another text is read it is still that */ let readAs = { units, text: "" };
  const ratings = createRatings(act.rate, act.breaks);
  /** @type {{cancel: () => void} | null} */ let running = null;
  let round = 0;
  /** @type {number[]} the items in sight */ let order = [];
  /** @type {string[]} what each item alone adds to the price of all, where they were grouped */ let adds = [];

  const job = () => (taken && design.history.job?.work === taken ? design.history.job : null);

  const grid = createGrid(at("grid"), {
    async enter(changes) {
      const edits = changes.filter(({ key }) => key).map(({ row, key, text }) => ({ item: order[row], field: key, text: model().named(key, text) }));
      const before = (steps[place].edits ?? []).filter((old) => !edits.some(({ item, field }) => old.item === item && old.field === field));
      await settle({ edits: [...before, ...edits] });
    },
    act(what) {
      if (what === "undo" && place > 0) go(place - 1);
      if (what === "redo" && place < steps.length - 1) go(place + 1);
    },
    focus: inHand,
  });
  const model = () => modelOf(shown, { order, heads: shown ? view.heads(shown.heads) : [], root, rated: ratings.at, held: job(), broken: ratings.broken() });
  const view = createView(at, root.dataset, look);
  const columns = createColumns(root, at("columns").tBodies[0], (list) => {
    keepMapped(list);
    settle({ columns: list });
  });
  const doubts = createDoubts(at("doubts"), at("asks"), (decision) => settle({ decided: [...(steps[place].decided ?? []), decision] }));

  /** What of an item is kept as quoted. @param {number} i */
  function quoteOf(i) {
    const { mark, open, refused } = /** @type {Enquiry} */ (shown).items[i];
    const found = ratings.at(i);
    const price = found?.row.shown && found.row.state !== "no" && !refused ? { price: found.row.price } : {};
    return { mark, tubes: found?.tally.tubes ?? 0, ...price, ...(open > 0 && { provisional: true }) };
  }

  /** What is to be kept: all that is read, and what it costs. */
  function standing() {
    if (!shown) return null;
    const { of, ...designs } = priced ? ratings.all() : { of: [], entries: [], designs: [] };
    const items = of.map((design, i) => ({ ...quoteOf(i), design })).filter(({ design }) => design >= 0);
    return { ...readAs, base: shown.base, ...designs, items, shop: act.shop(), priced };
  }

  /** The item in hand, as it would be kept alone. */
  function standingItem() {
    const i = order[grid.at.row];
    if (!shown || i === undefined || !ratings.at(i)) return null;
    const heading = { customer: "", reference: "", revision: "", due: "", state: "asked" };
    return { ...heading, units: readAs.units, text: "", ...ratings.one(i), items: [{ ...quoteOf(i), design: 0 }], day: today(), shop: act.shop() };
  }

  const kept = createKept(at, root.dataset, {
    ask: act.ask,
    standing,
    show: (found, work, shown) => lay(found, work, shown),
    note: act.note,
    kept: () => {
      list.show();
      against.compare();
    },
  });
  const list = createList(at, root.dataset, {
    ask: act.ask,
    units: () => design.history.current?.units ?? "si",
    now: () => kept.now,
    keep: kept.keep,
    open: kept.open,
    closed: kept.closed,
    note: act.note,
    changed: () => against.compare(),
  });
  const against = createBeside(at, { ask: act.ask, before: act.before, units: () => design.history.current?.units ?? "si", now: () => kept.now, item: standingItem });

  const showGroups = createGroups(at("group-said"), at("batches"));

  /** @param {import("./api.js").ShownGroups | null} found */
  function grouped(found) {
    showGroups(found);
    adds = found?.adds ?? [];
    inHand();
  }

  /** The items in sight. */
  function look() {
    if (!shown) return;
    order = view.rows(lookedAt(shown, ratings.at));
    grid.show(model());
    inHand();
  }

  /** One thing more is settled. @param {Settled} more */
  function settle(more) {
    steps.splice(place + 1, steps.length, { ...steps[place], ...more });
    return go(place + 1);
  }

  /** @param {number} to */
  function go(to) {
    place = to;
    taken = "";
    return readAll();
  }

  /** @param {() => Promise<void>} work */
  async function busy(work) {
    running?.cancel();
    const mine = ++round;
    hide(progress, false);
    hide(stop, false);
    try {
      await work();
      write(wrong, "");
    } catch (error) {
      if (!(error instanceof Cancelled) && mine === round) write(wrong, error instanceof Refused ? error.message : act.reason(/** @type {Error} */ (error)));
    } finally {
      if (mine === round) {
        running = null;
        hide(progress, true);
        hide(stop, true);
      }
    }
  }

  /**
   * @param {() => void} [heard] hears that a text has been read, before its items are rated
   * @param {Promise<void>} [before] what has to be done before that is shown
   */
  const readAll = (heard, before) =>
    busy(async () => {
      progress.removeAttribute("value");
      progress.max = 1;
      running = act.read({ text: source, units, ...steps[place] }, (share) => (progress.value = share));
      const mine = round;
      const [reply] = await /** @type {ReturnType<Act["read"]>} */ (running).done;
      if (mine !== round) return;
      let found = reply;
      const told = place === 0 && steps.length === 1 && !steps[0].columns ? mappedOf(reply.columns) : undefined;
      if (told) {
        steps[0] = { columns: told };
        write(notes, root.dataset.mapped ?? "");
        running = act.read({ text: source, units: reply.base.units, columns: told }, () => {});
        [found] = await /** @type {ReturnType<Act["read"]>} */ (running).done;
      }
      await before;
      if (mine !== round) return;
      [shown, priced, readAs] = [found, false, { units, text: source, ...steps[place] }];
      heard?.();
      kept.keep(); // before it is rated: that may take long
      show();
      await rateAll();
    });

  /** Rates what has no row yet, and sums all. */
  async function rateAll() {
    if (!shown) return;
    const { base, items } = shown;
    const other = ratings.of(shown, job(), act.shop());
    if (other) grouped(null);
    const fresh = other || !priced;
    priced = !fresh;
    const mine = round;
    running = ratings.run((done, of) => {
      progress.max = Math.max(1, of);
      progress.value = done;
    });
    await /** @type {ReturnType<Act["rate"]>} */ (running).done;
    if (mine !== round || !shown) return;
    priced = true;
    if (fresh) kept.keep();
    look();
    const open = items.filter((item) => item.open > 0).length; // also of items of the job: that settles nothing
    const reply = await act.ask("enquiry_totals", { ...ratings.tallies(), provisional: open, units: base.units, shop: act.shop() });
    if (mine !== round) return;
    totals.tBodies[0].replaceChildren(
      ...reply.totals.map(({ id, label, value, unit, note }) => {
        const line = document.createElement("tr");
        line.dataset.total = id;
        const head = document.createElement("th");
        head.scope = "row";
        head.textContent = label;
        const amount = line.insertCell();
        line.prepend(head);
        amount.className = "value";
        amount.append(value, " ", Object.assign(document.createElement("small"), { textContent: unit }));
        line.insertCell().textContent = note;
        return line;
      }),
    );
    inHand();
  }

  function show() {
    if (!shown) return;
    hide(answer, false);
    write(said, shown.said);
    doubts(shown);
    columns(shown);
    view.show(shown.heads, ["verdict", "price"].map((id) => ({ id, label: root.dataset[id] ?? "" })));
    look();
    hide(letter, shown.letter === "");
    hide(left, shown.left.length === 0);
    left.querySelector("ul").replaceChildren(...shown.left.map(({ row, text }) => Object.assign(document.createElement("li"), { textContent: `${row}: ${text}` })));
  }

  /** What is said of the item in hand. */
  function inHand() {
    const item = shown?.items[order[grid.at.row]];
    at("grid").dataset.means = `text ${model().means[grid.at.column] ?? ""}`; // F1 leads there
    take.disabled = !item || !job();
    more.disabled = !item;
    write(told, "");
    against.look();
    if (!item) return write(row, "");
    const verdict = ratings.at(order[grid.at.row])?.row;
    const unread = item.unread.length ? (root.dataset.unread ?? "").replace("{words}", item.unread.map((word) => `“${word}”`).join(", ")) : "";
    const why = shown ? model().cell(grid.at.row, grid.at.column).error : "";
    write(row, [why, item.refused, verdict?.refused || verdict?.why, adds[order[grid.at.row]], (root.dataset.words ?? "").replace("{words}", item.source), unread].filter(Boolean).join(" "));
  }

  /**
   * Reads a text; what is open stays so where it cannot be read.
   * @param {{text: string, units: typeof units, work: string, steps: Settled[]}} other
   * @param {() => void} heard hears that it has been read
   */
  async function turnTo(other, heard) {
    const before = { source, units, taken, steps, place };
    [source, units, taken, steps, place] = [other.text, other.units, other.work, other.steps, other.steps.length - 1];
    let done = false;
    view.clear();
    write(notes, "");
    await readAll(() => {
      done = true;
      ratings.forget();
      heard();
    }, kept.keep()); // what is open, as it stands
    if (!done) ({ source, units, taken, steps, place } = before);
  }

  /** @param {string} came */
  function begin(came) {
    const stays = kept.stays() || (kept.now !== null && came === source);
    const units = design.history.current?.units ?? "si";
    return turnTo({ text: came, units, work: "", steps: [{}] }, () => {
      kept.begun(stays);
      keepDraft("");
    });
  }

  /** Lays what is kept open, as it was left. @param {import("./api.js").KeptEnquiry} found @param {string} work @param {() => void} heard */
  function lay({ text: came, units, columns = [], decided, edits }, work, heard) {
    text.value = came.length > SHOWN ? "" : came;
    return turnTo({ text: came, units: units, work, steps: [{ columns, decided, edits }] }, heard);
  }

  read.disabled = false; // the script has come
  read.addEventListener("click", () => begin(text.value));
  text.addEventListener("keydown", (/** @type {KeyboardEvent} */ event) => {
    if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    begin(text.value);
  });
  text.addEventListener("input", () => keepDraft(text.value));
  text.addEventListener("paste", (/** @type {ClipboardEvent} */ event) => {
    const came = event.clipboardData?.getData("text/plain") ?? "";
    if (came.length <= SHOWN) return;
    event.preventDefault();
    text.value = "";
    begin(came);
  });
  stop.addEventListener("click", () => running?.cancel());
  file.addEventListener("click", () => input.click());
  input.addEventListener("change", async () => {
    const [came] = input.files ?? [];
    input.value = ""; // so that the same file can be chosen again
    if (!came) return;
    /** @type {{text: string, notes: string[]} | undefined} */ let opened_;
    await busy(async () => {
      progress.removeAttribute("value");
      const opened = await textOf(came, root.dataset, (args) => {
        const batch = act.sheet(args);
        running = batch;
        return batch.done.then(([reply]) => reply);
      }, (cancel) => (running = { cancel }));
      opened_ = opened;
    });
    if (!opened_) return;
    text.value = opened_.text.length > SHOWN ? "" : opened_.text;
    await begin(opened_.text);
    write(notes, opened_.notes.join(" "));
  });
  letter.addEventListener("click", () => shown && act.copy(shown.letter));
  more.addEventListener("click", async () => {
    const i = order[grid.at.row];
    if (!shown || i === undefined) return;
    const { said } = await act.ask("enquiry_beside", { ...ratings.one(i), shop: act.shop() });
    if (order[grid.at.row] === i) write(told, said.join(" "));
  });
  at("breaks").addEventListener("click", () =>
    busy(async () => {
      if (!shown) return;
      const mine = round;
      running = ratings.breaks((done, of) => {
        progress.max = Math.max(1, of);
        progress.value = done;
      });
      await /** @type {ReturnType<Act["breaks"]>} */ (running).done;
      if (mine === round) look();
    }),
  );
  group.addEventListener("click", () =>
    busy(async () => {
      if (!shown) return;
      const { base, items } = shown;
      const mine = round;
      const works = ratings.works(today(), (done, of) => {
        progress.max = Math.max(1, of);
        progress.value = done;
      });
      running = works;
      const found = await works.done;
      const reply = await act.ask("enquiry_group", { ...found, marks: items.map(({ mark }) => mark), day: today(), units: base.units, shop: act.shop() });
      if (mine === round) grouped(reply);
    }),
  );
  const table = () => ({ ...tableOf(/** @type {Enquiry} */ (shown), model(), order, ratings.at), shop: act.shop() });
  csv.addEventListener("click", async () => {
    if (!shown) return;
    const reply = await act.ask("enquiry_csv", table());
    download(reply.text, "enquiry.csv", "text/csv");
  });
  xlsx.addEventListener("click", async () => {
    if (!shown) return;
    const [{ workbookOf }, reply] = await Promise.all([import("./enquiry/xlsx.js"), act.ask("enquiry_table", table())]);
    const book = await workbookOf(reply);
    download(book, "enquiry.xlsx", book.type);
  });
  make.addEventListener("click", async () => {
    const from = shown;
    if (!from) return;
    const { reference = "", revision = "", due = "" } = kept.now?.heading ?? {};
    const head = { reference, revision, received: "", due };
    const { text } = await act.ask("enquiry_job", { base: from.base, designs: from.items.map((_, i) => ratings.read(from, i)), head });
    const work = newId();
    await design.replace(async () => ({ reply: await act.open(text), work }));
    if (design.history.job?.work === work) {
      taken = work;
      kept.became(work);
      const open = from.items.flatMap((item, i) => (item.open > 0 ? [String(i + 1)] : []));
      if (open.length) act.papers(answerAll(work, open, "standing", "provisional")); // their prices rest on what is not settled
      write(said, `${from.said} ${root.dataset.made}`);
    }
    refresh();
  });
  take.addEventListener("click", () => job() && design.take(String(order[grid.at.row] + 1)));

  /** The job may have changed, or the shop. */
  function refresh() {
    if (!shown || running) return;
    look();
    busy(rateAll);
  }

  (async () => {
    await list.show();
    const typed = draft();
    const { id, work } = openHere();
    if (id && !shown) await kept.open(id, work).catch(() => act.note("earlierFailed"));
    if (typed && !text.value) text.value = typed;
  })();

  return { refresh };
}
