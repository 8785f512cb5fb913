// @ts-check
// The design in hand: one document from which everything shown follows. Every change is one command to the engine.
//
// commit() changes the history; live() only shows what a command would give, always starting from the history's current
// document, so that a pull or a typed word makes one step of undo however many answers it takes.
//
// While something is pulled most answers are glimpses: what moves under the hand, and nothing of what hangs on it. A whole one
// comes between them once a second, and when the hand rests.
//
// What the engine cannot take is set aside: it stays where it was typed, with its reason, and the rest goes on without it.

import { EngineError, EngineLost } from "./engine.js";
import { createHistory } from "./history.js";
import { after, differences } from "./job.js";
import { LoadFailure } from "./loader.js";
import { timed } from "./spent.js";

const REST = 100; // ms without a move until all is shown of what is pulled
const LISTS = 100; // ms from one glimpse with all figures in sight to the next: they are read no faster
const WHOLE = 1000; // ms from one whole answer to the next while it is moved on: it costs the page as much as ten glimpses

/**
 * @typedef {import("./api.js").Reply & Partial<Pick<import("./api.js").Opened, "job" | "item">>} Reply
 *   steps: what each of several commands but the last gave; job, item: the job that it came with, and which of its items it is
 * @typedef {{settled: boolean, since?: number, arrived?: boolean}} How
 *   settled: in the history, not a glimpse; since: time of the pointer event; arrived: a document that came whole
 * @typedef {import("./api.js").Command} Command
 * @typedef {{command: Command, text: string, reason: string, readings: string[], lost: boolean}} Aside  readings: texts of which one is meant
 * @typedef {{command: Command, item?: string, reason?: string, readings?: string[], lost?: boolean}} Pending  item: that it is meant for, if not the one in hand; with a reason: set aside
 * @typedef {{reply: Reply, work?: string, looked?: boolean, pending?: Pending[]}} Arrival
 *   work, looked: as in the history; pending: what it waited with that the reply does not hold
 * @typedef {{commands: Command[], item?: string, since?: number, after?: Promise<void>, work?: () => Promise<void>, whole?: boolean, moves?: boolean, done?: () => void}} Job
 *   item: that it takes in hand; after: a glimpse of the same; work: something else than commands; whole: it brings another document, so that what follows is not of this one; moves: it has changed the history, so that what is shown is no longer what is entered
 */

/**
 * @typedef {{key: string, seen: Command, command: Command, pulled: boolean, shown: boolean, asked: boolean, sent: boolean, committed: boolean, accept: (view: import("./api.js").Page) => boolean, answer: Promise<void>}} Glimpse
 *   seen: the command as it was given, command: as it is asked (see placed); pulled: by a hand that moves on; asked: it waits for its answer, sent to the engine or not yet; committed: it is to be a step of the history as well
 */

/**
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {(live?: boolean) => Omit<import("./api.js").EditArgs, "document" | "commands">} area what the drawing and the section are to show; live: for a glimpse
 * @param {{
 *   show: (reply: Reply, how: How) => void,
 *   aside: (asides: Map<string, Aside>) => void,
 *   answer: (state: import("./answer.js").State) => void,
 *   keep: (pending: Pending[], work?: import("./history.js").Entry) => void,
 *   reason: (error: Error) => string,
 *   failed: (error: Error) => void,
 * }} page  keep is called before the engine is asked, without work as long as none has come; reason says in words why a command was set aside
 */
export function createDesign(engine, area, page) {
  const history = createHistory();
  /** @type {Job[]} */ const waiting = [];
  /** @type {Job | null} */ let running = null;
  /** @type {Promise<void>} */ let drained = Promise.resolve();
  /** @type {null | Glimpse} a live command that is not yet in the history */
  let glimpse = null;
  let typing = ""; // the key of a text that has not been tried yet
  let era = 0; // answers to live commands of an earlier era come too late
  let broken = false; // what should be shown got no answer
  let refreshing = 0; // questions for the same document in another section or size
  /** @type {Map<string, Aside>} */ const asides = new Map();
  /** @type {Map<string, [string, Aside][]>} what is set aside in items that are not in hand */ const elsewhere = new Map();
  /** @type {Reply | null} */ let shown = null;
  let [wholeAt, listedAt] = [0, 0]; // when all was last shown, and all figures
  let resting = 0; // timer of a hand that does not move

  function publish() {
    const lost = broken || [...asides.values()].some((aside) => aside.lost);
    if (lost) page.answer("lost");
    else if (asides.size) page.answer("refused");
    else if (running || waiting.length || refreshing || glimpse?.asked) page.answer("asked");
    else if (typing || (glimpse && !glimpse.shown)) page.answer("entered");
    else page.answer(shown?.view.valid ? "answered" : "refused");
  }

  /** @param {Reply} reply @param {How} how */
  function show(reply, how) {
    if (reply.view.glimpse) shown = { document: reply.document, view: { .../** @type {Reply} */ (shown).view, ...moved(reply.view) } };
    else [shown, wholeAt] = [reply, performance.now()];
    if (reply.view.groups) listedAt = performance.now(); // what was asked may have given way to a newer question
    try {
      page.show(reply, how);
      broken = false;
    } catch (error) {
      broken = true; // who knows what is in sight
      page.failed(/** @type {Error} */ (error));
    }
    if (!broken && !asides.size && reply.view.valid) page.answer("answered"); // if only until the next line: so long as answers come, nothing is late
    publish();
  }

  function keep() {
    let item = history.hand || undefined;
    const other = line().findIndex(({ whole }) => whole);
    const ours = other < 0 ? line() : line().slice(0, other);
    const open = ours.flatMap((job) => {
      item = job.item ?? item;
      return job.commands.map((command) => ({ command, item }));
    });
    const of = (/** @type {string} */ item) => (/** @type {Aside} */ { command, reason, readings, lost }) => ({ command, item, reason, lost, ...(readings.length > 0 && { readings }) });
    const aside = [...asides.values()].map(of(history.hand));
    const others = [...elsewhere].flatMap(([item, list]) => list.map(([, one]) => of(item)(one)));
    const typed = other < 0 && glimpse && textOf(glimpse.command) !== null ? [{ command: glimpse.command, item }] : [];
    page.keep([...open, ...typed, ...aside, ...others], history.job && history.entry);
  }

  const line = () => (running ? [running, ...waiting] : waiting);

  /** The item that is in hand when all that waits is done, as far as that can be told: an undo brings its own when its turn comes. */
  const aim = () => line().findLast(({ item }) => item)?.item ?? history.hand;

  /** @param {string} key @param {Command} command @param {Error} error */
  function setAside(key, command, error) {
    const readings = readingsOf(error);
    asides.set(key, { command, text: textOf(command) ?? "", reason: page.reason(error), readings, lost: !(error instanceof EngineError) });
    if (!readings.length) console.error(error); // to be asked is no fault
    page.aside(asides);
  }

  /** @param {string} [key] without it, all */
  function takeBack(key) {
    const had = asides.size;
    if (key === undefined) asides.clear();
    else asides.delete(key);
    if (asides.size !== had) page.aside(asides);
  }

  /** Changes the history; what is set aside stays with its item. @param {() => void} change */
  function turn(change) {
    const from = history.hand;
    change();
    const to = history.hand;
    if (from === to) return;
    elsewhere.set(from, [...asides]);
    asides.clear();
    for (const [key, aside] of elsewhere.get(to) ?? []) asides.set(key, aside);
    elsewhere.delete(to);
    if (!elsewhere.get(from)?.length) elsewhere.delete(from);
    page.aside(asides);
  }

  /** What was set aside at a bare span goes with it, and moves with those behind it. @param {number} index */
  function spanRemoved(index) {
    const moved = [...asides].flatMap(([key, aside]) => {
      const { command } = aside;
      const at = command.index ?? 0;
      if (command.op !== "span" || at < index) return [[key, aside]];
      if (at === index) return [];
      const next = { ...command, index: at - 1 };
      return [[keyOf(next), { ...aside, command: next }]];
    });
    if (!asides.size) return;
    asides.clear();
    for (const [key, aside] of /** @type {[string, Aside][]} */ (moved)) asides.set(key, aside);
    page.aside(asides);
  }

  /** What was set aside at bare spans goes with them. */
  function spansReplaced() {
    const gone = [...asides].filter(([, { command }]) => command.op === "span");
    for (const [key] of gone) asides.delete(key);
    if (gone.length) page.aside(asides);
  }

  /** A command for a bare span by its place in sight, for the place that it has once the removals that wait are done; null: it goes itself. @param {Command} command */
  function placed(command) {
    if (command.op !== "span" && command.op !== "remove_span") return command;
    let { index = 0 } = command;
    for (const { op, index: gone = 0 } of line().flatMap(({ commands }) => commands)) {
      if (op !== "remove_span") continue;
      if (gone === index) return null;
      if (gone < index) index--;
    }
    return { ...command, index };
  }

  const isAside = (/** @type {string} */ key, /** @type {Command} */ command) => same(asides.get(key)?.command, command);

  /** Work on the history goes one at a time, each on what the last one left. @param {Job} job @returns {Promise<void>} when it is done */
  function next(job) {
    era++;
    glimpse = null;
    waiting.push(job);
    keep();
    publish();
    if (!running) drained = drain();
    return new Promise((resolve) => (job.done = resolve));
  }

  async function drain() {
    for (let job = waiting.shift(); job; job = waiting.shift()) {
      running = job;
      publish();
      try {
        await (job.work ?? (() => edit(/** @type {Job} */ (job))))();
      } catch (error) {
        const none = error instanceof LoadFailure || !history.current; // no engine, or nothing to go on from: the next change tries again
        broken ||= none || !answers(error) || Boolean(job.moves);
        page.failed(/** @type {Error} */ (error));
        if (none) {
          waiting.unshift(job);
          break;
        }
      }
      job.done?.();
    }
    running = null;
    if (history.current) keep();
    publish();
  }

  /** @param {Command[]} commands @returns {Promise<Reply>} */
  const edited = (commands) => engine.call("edit", { document: /** @type {import("./api.js").Document} */ (history.current), commands, ...area() });

  /** @param {Job} job */
  async function edit(job) {
    await job.after;
    const { since } = job;
    const commands = job.commands.filter((command) => !isAside(keyOf(command), command));
    if (!commands.length) return;
    try {
      const reply = await edited(commands);
      for (const document of [...(reply.steps ?? []), reply.document]) {
        if (!same(document, history.current)) history.push(document);
      }
      job.commands = []; // done: a page that goes on from here must not do them twice
      for (const { op, index = 0 } of commands) {
        if (op === "remove_span") spanRemoved(index);
        if (op === "even_spans") spansReplaced();
      }
      keep();
      show(reply, { settled: true, since });
    } catch (error) {
      if (!answers(error)) throw error;
      const [command] = commands;
      // Of several commands asked together each is asked alone, to find the one at fault.
      if (commands.length > 1) return void waiting.unshift(...commands.map((one) => ({ commands: [one] })));
      if (textOf(command) !== null) return setAside(keyOf(command), command, /** @type {Error} */ (error));
      // What was pulled or pressed has no place of its own to stay in.
      page.failed(/** @type {Error} */ (error));
      waiting.unshift(again());
    }
  }

  /** Shows the history's document as it now is. @param {() => void} [change] of the history, when its turn comes @returns {Job} */
  function again(change) {
    /** @type {Job} */
    const job = {
      commands: [],
      moves: true,
      async work() {
        if (change) {
          turn(change);
          keep();
        }
        change = undefined; // once, also where it must be asked again
        show(await edited([]), { settled: true });
      },
    };
    return job;
  }

  /** Whether something of that key waits, or is being typed. @param {string} key */
  const entered = (key) => glimpse?.key === key || waiting.some(({ commands }) => commands.some((command) => keyOf(command) === key));

  /** @param {string} id @returns {Job} */
  function taking(id) {
    return {
      commands: [],
      item: id,
      async work() {
        const document = history.designOf(id);
        if (!document) return; // it was taken out meanwhile
        const reply = await engine.call("edit", { document, commands: [], ...area() }).catch((error) => {
          waiting.unshift(again()); // the list shows the one that stays in hand
          throw error;
        });
        turn(() => history.hold(id));
        keep();
        show(reply, { settled: true });
      },
    };
  }

  /** What was entered and not answered before the page was last left, to be asked now; what was set aside is so again. @param {Pending[]} pending */
  function resumed(pending) {
    /** @type {Job[]} */ const jobs = [];
    let hand = history.hand;
    for (const { command, item = history.hand, reason, readings = [], lost = false } of pending) {
      if (reason) {
        if (item === history.hand && entered(keyOf(command))) continue; // while the page loaded
        const aside = { command, text: textOf(command) ?? "", reason, readings, lost };
        if (item === history.hand) asides.set(keyOf(command), aside);
        else elsewhere.set(item, [...(elsewhere.get(item) ?? []), [keyOf(command), aside]]);
        continue;
      }
      if (item !== hand) jobs.push(taking((hand = item)));
      jobs.push({ commands: [command] });
    }
    page.aside(asides);
    return jobs;
  }

  /**
   * @param {Glimpse} mine
   * @param {number} [since]
   * @param {boolean} [whole]
   */
  async function look(mine, since, whole = !mine.pulled || performance.now() - wholeAt > WHOLE) {
    const began = era;
    clearTimeout(resting);
    if (!running && waiting.length) drained = drain(); // there was no engine
    await drained;
    if (glimpse !== mine || !history.current) return;
    mine.sent = true;
    const lists = performance.now() - listedAt > LISTS;
    try {
      const args = { document: history.current, commands: [mine.command], ...area(true), ...(!whole && { glimpse: true, lists }) };
      const reply = await timed("engine", () => engine.callLatest("live", "edit", args));
      mine.asked = false;
      if (began !== era) return;
      if (!reply) return;
      mine.shown = mine.accept(reply.view);
      if (!mine.shown) return publish();
      show(reply, { settled: false, since });
      if (reply.view.glimpse) resting = window.setTimeout(() => glimpse === mine && look(mine, undefined, true), REST);
    } catch (error) {
      mine.asked = false;
      if (glimpse !== mine && !mine.committed) return;
      if (readingsOf(error).length) return publish(); // more may be typed: it is asked when it is handed over
      if (answers(error) && textOf(mine.command) !== null) {
        setAside(keyOf(mine.command), mine.command, /** @type {Error} */ (error));
        if (glimpse === mine) glimpse = null;
        keep(); // with its reason, so that it is not asked again after a reload
      } else page.failed(/** @type {Error} */ (error));
      publish();
    }
  }

  return {
    history,
    get document() {
      return shown?.document;
    },
    get view() {
      return shown?.view;
    },

    /** Whether nothing of what was entered waits or is set aside, in any item. */
    get complete() {
      return asides.size + elsewhere.size + line().length === 0;
    },

    /** Whether something is set aside in an item that is not in hand. @param {string} id */
    unread: (id) => elsewhere.has(id),

    /** Whether what is shown is in the history, and no glimpse. */
    get settled() {
      return shown !== null && same(shown.document, history.current);
    },

    /** Resolves when all that was entered has been answered, or been set aside; where there was no engine it is tried again. */
    rest() {
      if (!running && waiting.length) drained = drain();
      return drained;
    },

    /**
     * Takes a document that came whole: saved, opened, an example.
     * @param {() => Promise<Arrival>} ask
     * @param {{goesOn?: boolean}} [how] goesOn: it is what the page was last left with, and what is entered meanwhile belongs to it
     */
    replace(ask, { goesOn = false } = {}) {
      /** @type {Job} */
      const job = {
        commands: [],
        whole: !goesOn,
        async work() {
          const { reply, pending = [], ...how } = await ask();
          elsewhere.clear();
          takeBack();
          history.arrive(reply, how);
          job.whole = false;
          waiting.unshift(...resumed(pending));
          keep();
          show(reply, { settled: true, arrived: true });
        },
      };
      return next(job);
    },

    /** Takes another item of the job in hand. @param {string} id */
    take: (id) => (id === aim() ? Promise.resolve() : next(taking(id))),

    /** Puts an item into the job, behind the one in hand, and takes it in hand. @param {string} id @param {boolean} copy of the one in hand; else as the job's base */
    add(id, copy) {
      const adding = again(() => {
        const { job, document } = history.entry;
        const design = copy ? differences({ ...document, mark: "" }, job.base) : {};
        history.add({ id, at: after(job, /** @type {import("./job.js").Item} */ (job.items.get(history.hand))), design });
      });
      return next({ ...adding, item: id });
    },

    /**
     * Changes what the item in hand keeps beside its design, when its turn comes, and the design with it.
     * @param {(kept: readonly import("./api.js").Kept[], document: import("./api.js").Document, base: import("./api.js").Document) => {kept: import("./api.js").Kept[], document?: import("./api.js").Document} | null} change  null: nothing is changed
     */
    keepOptions: (change) =>
      next(
        again(() => {
          const { job, document, hand } = history.entry;
          const next = change(job.items.get(hand)?.kept ?? [], document, job.base);
          if (next) history.keep(next.kept, next.document);
        }),
      ),

    /** Takes the item in hand out of the job. */
    remove() {
      if (!history.job) return Promise.resolve();
      const gone = aim();
      const { order, items } = history.job;
      const place = order.indexOf(gone);
      const to = order[place + 1] ?? order[place - 1];
      if (place < 0 || !to) return Promise.resolve();
      return next({
        commands: [],
        item: to,
        async work() {
          const document = history.designOf(to);
          if (history.hand !== gone || !document || !items.has(gone)) return;
          const reply = await engine.call("edit", { document, commands: [], ...area() });
          turn(() => history.remove(to));
          elsewhere.delete(gone);
          keep();
          show(reply, { settled: true });
        },
      });
    },

    /** Notes what items answered. @param {Parameters<typeof history.note>[0]} list @param {import("./api.js").Basis} basis */
    note(list, basis) {
      history.note(list, basis);
      if (history.entry.changed.size) keep();
    },

    /** What the job says of itself: a part of it, since another may be on its way. @param {Partial<import("./api.js").Head>} part */
    setHead: (part) =>
      next({
        commands: [],
        async work() {
          history.setHead({ ...history.job.head, ...part });
          keep();
          if (shown) show(shown, { settled: true });
        },
      }),

    /**
     * @param {Command} seen
     * @param {number} [since]
     */
    async commit(seen, since) {
      const key = keyOf(seen);
      const command = placed(seen);
      if (typing === key) typing = "";
      if (!command) return publish();
      if (isAside(key, seen)) {
        glimpse = null;
        keep();
        return publish(); // it has been asked as often as it should
      }
      takeBack(key);
      let after;
      if (glimpse?.asked && glimpse.sent && same(glimpse.command, command)) {
        glimpse.committed = true;
        after = glimpse.answer;
      }
      const last = waiting.at(-1);
      if (!last || last.work || after) return next({ commands: [command], since, after });
      const merged = merge(last.commands.at(-1), command);
      if (merged) last.commands.splice(-1, 1, merged);
      else last.commands.push(command);
      last.since = since;
      era++;
      glimpse = null;
      keep();
      if (!running) drained = drain(); // there was no engine
    },

    /** A text is being typed and has not been tried. @param {string} key */
    enter(key) {
      typing = key;
      publish();
    },

    /**
     * @param {Command} seen of another key than the last: commits first what is pending
     * @param {{since?: number, pulled?: boolean, accept?: (view: import("./api.js").Page) => boolean}} [more]
     */
    async live(seen, { since, pulled = false, accept = () => true } = {}) {
      const key = keyOf(seen);
      if (typing === key) typing = "";
      if (glimpse && glimpse.key !== key) this.commit(glimpse.seen);
      const command = placed(seen);
      if (!command || isAside(key, seen)) return publish();
      takeBack(key);
      if (!glimpse) wholeAt = performance.now(); // what is in sight is of where it was taken hold of
      /** @type {Glimpse} */
      const mine = { key, seen, command, pulled, shown: false, asked: true, sent: false, committed: false, accept, answer: Promise.resolve() };
      glimpse = mine;
      if (textOf(command) !== null) keep();
      publish();
      mine.answer = look(mine, since);
      await mine.answer;
    },

    /** Forgets what is pending and shows the history's document again. */
    cancel: () => next(again()),

    /** Shows the same document anew, for a sheet of another size. */
    async refresh() {
      refreshing++;
      publish();
      try {
        let began;
        do {
          began = era; // what was asked meanwhile was asked for the old size
          await drained;
        } while (began !== era);
        if (!history.current) return;
        if (glimpse) return await look(glimpse);
        const reply = await engine.callLatest("refresh", "edit", { document: history.current, commands: [], ...area() });
        if (reply && began === era && !glimpse) show(reply, { settled: true });
      } catch (error) {
        broken = true;
        page.failed(/** @type {Error} */ (error));
      } finally {
        refreshing--;
        publish();
      }
    },

    /** What was set aside goes first. */
    undo() {
      const set = asides.size > 0;
      takeBack();
      return next(again(set ? undefined : history.undo));
    },
    redo: () => next(again(history.redo)),

    /** Writes what waits: where it goes to is known only now. */
    keep,
  };
}

/** What a glimpse says anew of a view. @param {import("./api.js").Page} view @returns {Partial<import("./api.js").Page>} */
const moved = ({ title, headline, groups, bars, scene }) => ({ title, headline, ...(groups && { groups }), ...(bars && { bars }), scene });

/** Whether it was the engine that answered so, and not its absence. @param {unknown} error */
const answers = (error) => error instanceof EngineError || error instanceof EngineLost;

/** What a number alone may be meant as, where the engine asks. @param {unknown} error @returns {string[]} */
const readingsOf = (error) => (error instanceof EngineError ? error.readings : []);

/** What a command changes: of two with one key the later counts. @param {Command} command */
export function keyOf({ op, values = [], index, part, field }) {
  switch (op) {
    case "set":
      return values.map((value) => value.field).join();
    case "span":
      return `span ${index} ${part}`;
    case "origin":
      return `origin ${field}`;
  }
  return op;
}

/** The text that a command brings from a field, or null. @param {Command} command @returns {string | null} */
function textOf({ op, values = [], text }) {
  if (op === "set") return values.length === 1 ? (values[0].text ?? null) : null;
  return text ?? null;
}

/**
 * One command for two that wait, or null where each is a step of its own. Keys held down come faster than answers.
 * @param {Command | undefined} first
 * @param {Command} second
 */
function merge(first, second) {
  if (!first || first.op !== "set" || second.op !== "set" || keyOf(first) !== keyOf(second)) return null;
  const [before, after] = [first.values?.[0], second.values?.[0]];
  if (!before || !after?.steps || second.values?.length !== 1) return second;
  if (before.steps) return { op: "set", values: [{ field: after.field, steps: before.steps + after.steps }] };
  return null;
}

/**
 * The engine writes the members of a document always in the same order.
 * @param {object | undefined} a
 * @param {object | undefined} b
 */
function same(a, b) {
  return JSON.stringify(a) === JSON.stringify(b);
}
