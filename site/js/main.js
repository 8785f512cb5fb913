// @ts-check
// Wires the page: the engine answers, the parts show. First the figures, then what takes longer to load.

import { createAnswer } from "./answer.js";
import { asset } from "./assets.js";
import { createBusy } from "./busy.js";
import { createCard } from "./card.js";
import { brought, drop } from "./carried.js";
import { createCases } from "./cases.js";
import { createDeciding } from "./deciding.js";
import { createDesign, keyOf } from "./design.js";
import { createEarlier } from "./earlier.js";
import { createEngine, EngineError, EngineLost } from "./engine.js";
import { createFigures } from "./figures.js";
import { chooseFile, download, saveFile, today } from "./files.js";
import { createFolds } from "./folds.js";
import { createForm } from "./form.js";
import { createHeat } from "./heat.js";
import { createItems } from "./items.js";
import { alone, saveable } from "./job.js";
import { linkSameThings } from "./linked.js";
import { copyLink, CUSTOMERS, forCustomer, fragment, pack, unpack, withdrawLink } from "./links.js";
import { LoadFailure, whyMissing } from "./loader.js";
import { createMaking } from "./making.js";
import { createShop } from "./shop.js";
import { write } from "./keyed.js";
import { createKeep } from "./keep.js";
import { watchCopy, watchKeys } from "./keys.js";
import { createNotes } from "./notes.js";
import { createOffline } from "./offline.js";
import { placePopovers } from "./popovers.js";
import { createRoving } from "./roving.js";
import { createRows } from "./rows.js";
import { createSections } from "./sections.js";
import { createSheet } from "./sheet.js";
import { createEvenSpans, createSpans } from "./spans.js";
import { timed } from "./spent.js";
import { keepCurveNear, showContents } from "./phone.js";
import { createStatus } from "./status.js";
import { createSurvivors } from "./survivors.js";
import { leadToTerms } from "./terms.js";
import { createTheme } from "./theme.js";
import { createTools, programVersion } from "./tools.js";
import { createWays } from "./ways.js";
import { keepAtRest } from "./store/earlier.js";
import { newId, parsed } from "./store/local.js";
import { keepSeen, lastSeen } from "./store/seen.js";
import { keepEntered, keepWorking, parts, quarantine, quarantineSaved, working as workingCopy } from "./store/slot.js";
import * as trouble from "./trouble.js";
import { createWorking } from "./working.js";

const REMEMBERED = 700; // ms without a change until the page notes what it shows
const COPY = 20000; // ms until the copy for use without a network is made, painted or not

const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
const text = (/** @type {string} */ value, /** @type {string} */ field) => ({ op: "set", values: [{ field, text: value }] });

/** @type {(import("./sent.js").Received & {carried: string}) | null} what a customer's link brought, and the link */ let received = null;
/** The shop that is asked: a design that was sent has none, while it is in hand. */
const madeBy = () => (isReceived() ? /** @type {any} */ (received).shop : shop.text);
const isReceived = () => received !== null && design.history.job?.work === received.work;
/** @type {ReturnType<typeof import("./show.js").createShow> | null} */ let showing = null;

/** @type {import("./form.js").Asides} */ let asides = new Map();
let lastShown = ""; // the document, as text

const answer = createAnswer(document.body);
const busy = createBusy(at("busy"), () => engine.stop());
const engine = createEngine(busy.show);
const notes = createNotes(at("notes"));
const design = createDesign(engine, (live) => ({ ...sheet.area(live), axes: sheet.axes() }), { show, aside, answer: answered, keep, reason, failed });
const making = createMaking(at("making"), at("cards"), (command) => design.commit(command));
const shop = createShop(at("shop"), at("shop-open"), engine, () => sheet.lastGood(), () => design.refresh(), { tell: (name, why, open) => notes.tell("shop", name, why, open), done: (name) => notes.done("shop", name) }, reason);
const sections = createSections(at("sections"), (section) => showSection(section).catch(failed), () => showContents(at("figures"), at("plots")));
const opening = sections.current; // the section that the page comes with
const sheet = createSheet(at("drawing"), at("paper"), at("plots"), at("map-quantity"), engine, design, sections, (live) => ({
  shop: madeBy(),
  headline: ways.current === "show" && showing ? showing.headline : deciding.chosen,
  ...(sections.asks("making") ? { room: making.room(live), day: today() } : {}),
}), at("fit-axes"), { onFailure: notDrawn, onResize: () => laidOut(design.refresh()).catch(failed) });

const form = createForm(at("entries"), {
  enter: design.enter,
  // A half-typed text that cannot be read yet changes nothing.
  live: (field, value) => design.live(text(value, field), { accept: (view) => view.valid }),
  commit: (field, value) => design.commit(text(value, field)),
  step: (field, steps) => design.commit({ op: "set", values: [{ field, steps }] }),
  origin: (field, origin) => design.commit({ op: "origin", field, origin }),
});
const folds = createFolds(at("entries"));
folds.section(sections.current);
const spanCommand = (/** @type {number} */ index, /** @type {string} */ part, /** @type {string} */ value) => ({ op: "span", index, part, text: value });
const spans = createSpans(at("spans"), {
  enter: (index, part) => design.enter(`span ${index} ${part}`),
  live: (index, part, value) => design.live(spanCommand(index, part, value), { accept: (view) => view.valid }),
  commit: (index, part, value) => design.commit(spanCommand(index, part, value)),
  remove: (index) => design.commit({ op: "remove_span", index }),
});
at("add-span").addEventListener("click", () => design.commit({ op: "add_span" }));
const even = createEvenSpans(at("even-spans"), at("even-spans-error"), at("space-evenly"), (text) => design.commit({ op: "even_spans", text }));

const working = createWorking(
  at("working"),
  async (figure, section, of) => {
    await design.rest(); // a figure that was last seen may be pressed before there is an answer
    const document = of?.document ?? sheet.lastGood();
    return document ? engine.callLatest("working", "working", { document, figure, section, shop: madeBy() }) : null;
  },
  async (figure, of) => {
    const document = of?.document ?? sheet.lastGood();
    return document ? engine.callLatest("moves", "moves", { document, figure, shop: madeBy() }) : null;
  },
  (figure) => tools.copyFigure(figure),
  (figure, section, of) => copyLine({ figure }, section, of?.document),
  reason,
);
/**
 * A figure or a sentence as one line of plain text, which the engine writes.
 * @param {{figure: string} | {sentence: string}} what
 * @param {string} [section] whose it is
 * @param {import("./api.js").Document} [of] the design that it is of, if not the one in hand
 */
async function copyLine(what, section = sections.current, of = undefined) {
  await design.rest();
  const document = of ?? sheet.lastGood();
  const said = document && (await engine.callLatest("line", "line", { document, section, shop: madeBy(), ...what }).catch(() => null)); // of one that is gone by now there is nothing to copy
  if (said) await tools.copy(said.line);
}

const openWorking = (/** @type {string} */ id, /** @type {HTMLElement} */ opener) => working.open(id, opener, sections.current);
const figures = createFigures(at("headline"), at("groups"), at("cards"), openWorking, (full) => tools.marked(full));
const cases = createCases(at("cases"));
const heat = createHeat(at("resistances"), at("methods"), at("pairs").tBodies[0], at("methods-used"), openWorking, (command) => design.commit(command));
const status = createStatus(at("status"), {
  label: form.label,
  focus(field) {
    sections.reveal(at(`field-${field}`));
    form.focus(field);
  },
  show: sections.show,
}, (command) => design.commit(command), (sentence) => copyLine({ sentence }));
const survivors = createSurvivors(at("survivors"), (command) => design.commit(command));
const deciding = createDeciding(at("deciding"), () => design.refresh());
const tools = createTools(design, answer, {
  example: (id) => design.replace(async () => ({ reply: await engine.call("example", { id, ...sheet.area() }), looked: true })),
  async save() {
    await design.rest();
    await rows.noted(); // what leaves the page bears what it answered, and by whose prices
    const { job, document } = design.history.entry;
    const { text } = await engine.call("save", { job: saveable(job) });
    await saveFile(engine, "design", job.head.reference || document.title, text);
    return design.complete;
  },
  async link() {
    await design.rest();
    await rows.noted();
    const { text } = await engine.call("save", { job: alone(design.history.entry.document, design.history.job?.items.get(design.history.hand), design.history.job) });
    return copyLink(await pack(text));
  },
  /** Without a price: one is turned on in Show. */
  async customerLink() {
    await design.rest();
    const { inSight, usual } = await import("./sent.js");
    const { text } = await engine.call("send", { ...inSight(design.history.entry), picked: usual(today()), shop: madeBy() });
    return copyLink(await pack(text, CUSTOMERS));
  },
  async customerFile() {
    await design.rest();
    const { inSight, usual } = await import("./sent.js");
    await saveFor(await engine.call("send", { ...inSight(design.history.entry), picked: usual(today()), shop: madeBy() }));
  },
  async print() {
    await design.rest();
    await sheet.ready();
    window.print();
  },
});
/** The whole page in one file, with what was sent. @param {{text: string}} sent */
async function saveFor({ text }) {
  const { saveSingle } = await import("./single.js");
  const { job, document } = design.history.entry;
  const { filename } = await engine.call("filename", { kind: "page", name: job.head.reference || document.title, date: today() });
  await saveSingle(await pack(text, CUSTOMERS), filename);
}

createCard(at("card"), async () => {
  const document = sheet.lastGood();
  return document ? engine.callLatest("card", "card", { document, shop: madeBy() }) : null;
}, tools.copy);
at("pictures").addEventListener(
  "beforetoggle",
  async () => {
    const { createPictures } = await import("./pictures.js");
    createPictures(at("pictures"), {
      drawing: sheet.apart,
      plot: sheet.plotApart,
      title: () => at("design-title").value,
      rest: design.rest,
      marked: tools.marked,
      say: tools.say,
      failed,
    });
  },
  { once: true },
);
const marked = (/** @type {string} */ value) => ({ op: "mark", text: value });
const items = createItems(at("items"), at("items-open"), {
  take: design.take,
  add: (copy) => design.add(newId(), copy),
  remove: design.remove,
  mark: { live: (value) => design.live(marked(value)), commit: (value) => design.commit(marked(value)) },
  head: design.setHead,
});

/** The outlines that came with a customer's link. */
const sentOutlines = () => (isReceived() ? /** @type {import("./sent.js").Received} */ (received).told.beside.filter(({ od }) => od > 0).map(({ od, fin_od }) => ({ od, fin_od })) : []);
const keeping = createKeep(at("keep"), at("options-count"), design, engine, (ghosts, kept) => (sheet.behind(kept.length ? ghosts : sentOutlines(), kept) ? laidOut(design.refresh()) : undefined));
/** @type {{refresh: () => Promise<void>}[] | null} what is shown of options */ let options = null;

/** The design beside those that are kept; its script comes when it is first looked at. */
async function compare() {
  if (!sections.asks("compared")) return;
  const [{ createOptions }, { createSure }, { createTheirs }, { createFind }] = await Promise.all([import("./options.js"), import("./sure.js"), import("./theirs.js"), import("./find.js")]);
  options ??= [
    createOptions(at("options"), at("options-said"), design, {
      compare: (args) => engine.callLatest("compare", "compare", { ...args, shop: madeBy() }),
      open: (figure, from, section, of) => working.open(figure, from, section, of),
      copy: tools.copy,
      decides: deciding.ticked,
      reason,
    }),
    createSure(at("sure"), design, {
      sure: (slot, args) => engine.callLatest(slot, "sure", { ...args, shop: madeBy() }),
      draws: (list, onReply) => engine.batch("sure_draws", list.map((one) => ({ ...one, shop: madeBy() })), onReply),
      reason,
    }),
    createFind(at("find"), design, {
      ask: (method, args) => engine.call(method, { ...args, shop: madeBy() }),
      compare: (args) => engine.callLatest("find", "compare", { ...args, shop: madeBy() }),
      look: keeping.look,
      print: async () => {
        await design.rest();
        window.print();
      },
      chunks: (list, onReply) => engine.batch("search_chunk", list.map((one) => ({ ...one, shop: madeBy() })), onReply),
      today,
      shop: madeBy,
      reason,
    }),
    createTheirs(at("theirs"), design, (args) => engine.callLatest("theirs", "conventions", { ...args, shop: madeBy() })),
  ];
  await Promise.all(options.map((one) => one.refresh()));
}

/** @type {ReturnType<typeof createWays>} */
const ways = createWays(
  at("ways"),
  {
    async show() {
      const { createShow } = await import("./show.js");
      return (showing ??= createShow(at("show"), design, {
        leave: () => ways.leave(),
        send: (args) => engine.callLatest("send", "send", { ...args, shop: madeBy() }),
        steps: (args) => engine.callLatest("steps", "steps", { ...args, shop: madeBy() }),
        received: () => (isReceived() ? received : null),
        hold: (on) => sheet.holdScale(on || at("hold-scale").getAttribute("aria-pressed") === "true"),
        keep: at("keep"),
        link: async (/** @type {string} */ text) => at("said").dataset[(await copyLink(await pack(text, CUSTOMERS))) ? "linked" : "linkHere"],
        file: saveFor,
        print: async () => {
          await sheet.ready();
          window.print();
        },
        failed,
      }));
    },
  },
  failed,
);

/** @type {ReturnType<typeof import("./papers.js").createPapers> | null} */ let papers = null;

/** What goes out of the door; its script comes when it is first looked at. */
async function makePapers() {
  if (!sections.asks("papers")) return;
  const { createPapers } = await import("./papers.js");
  papers ??= createPapers(at("papers"), at("papers-sheet"), design, programVersion(), {
    paper: (args) => engine.callLatest("paper", "paper", { ...args, shop: madeBy() }),
    table: (args) => engine.call("paper_table", { ...args, shop: madeBy() }),
    find: (args) => engine.callLatest("paper_find", "paper_find", { ...args, shop: madeBy() }),
    savePaper: (args) => engine.call("paper_save", args),
    openPaper: (text) => engine.call("paper_open", { text }),
    findEarlier: async (args) => (await engine.batch("paper_find_earlier", [{ ...args, shop: madeBy() }]).done)[0],
    gather: () => rest.now(),
    goBack,
    learn: (args) => engine.call("paper_learn", { ...args, shop: madeBy() }),
    use: shop.use,
    draw: (args) => engine.call("paper_draw", { ...args, shop: madeBy() }),
    save: download,
    shop: () => shop.text,
    note: (name) => notes.tell("papers", name),
    print: () => at("print").click(),
    whole: () => answer.whole,
    reason,
  });
  await papers.refresh();
}

/** @type {{refresh: () => void} | null} */ let enquiry = null;

/** What a customer sent; its script comes when it is first looked at. */
async function enquire() {
  if (!sections.asks("enquiry")) return;
  const { createEnquiry } = await import("./enquiry.js");
  enquiry ??= createEnquiry(at("enquiry"), at("enquiry-open"), design, {
    ask: (method, args) => engine.call(method, args),
    rate: (list, onReply) => engine.batch("enquiry_rows", list.map((one) => ({ ...one, shop: madeBy() })), onReply),
    breaks: (list, onReply) => engine.batch("enquiry_breaks", list.map((one) => ({ ...one, shop: madeBy() })), onReply),
    read: (args, hear) => engine.batch("enquiry_read", [args], undefined, hear),
    sheet: (args) => engine.batch("enquiry_sheet", [args]),
    before: (args) => engine.batch("enquiry_before", [args]),
    open: (text) => engine.call("open", { text, ...sheet.area() }),
    shop: madeBy,
    papers: (name) => notes.tell("papers", name),
    copy: tools.copy,
    note: (name) => notes.tell("enquiry", name),
    reason,
  });
  enquiry.refresh();
}

const rows = createRows(engine, design, madeBy, at("changed"));

const rest = keepAtRest(
  async (document) => (await engine.callLatest("earlier", "svg", { document, sheet: { width: 320, height: 200 } }).catch(() => null))?.svg ?? "",
  (name) => notes.tell("earlier", name),
);
const earlier = createEarlier(at("earlier"), {
  shown: rest.now,
  save: (text, { kind, name }) => saveFile(engine, kind, name, text),
});
at("earlier-open").addEventListener("click", () => earlier.open("design", goBack));
at("shop-earlier").addEventListener("click", () => earlier.open("shop", shop.use));

/** @type {ReturnType<typeof import("./learn.js").createLearn> | null} the panel for a trainee, once it has been wanted */ let learn = null;

async function openLearn() {
  const { createLearn } = await import("./learn.js");
  learn ??= createLearn(design, {
    ask: (method, args) => engine.call(method, args),
    latest: (slot, method, args) => engine.callLatest(slot, method, args),
    area: () => sheet.area(),
    shop: () => shop.text,
    working: working.open,
    section: sections.show,
    async own() {
      await design.rest();
      return (await engine.call("save", { job: saveable(design.history.entry.job) })).text;
    },
    goBack,
    glossary: (from) => void openGlossary(null, from).catch(failed),
    closed() {
      at("learn-open").setAttribute("aria-expanded", "false");
      at("learn-open").focus();
      design.refresh().catch(failed);
    },
    reason,
  });
  at("learn-open").setAttribute("aria-expanded", "true");
  await learn.open();
}

/** @type {ReturnType<typeof import("./glossary.js").createGlossary> | null} */ let glossary = null;

/** @param {import("./glossary.js").Label | null} label @param {HTMLElement} from */
async function openGlossary(label, from) {
  const { createGlossary } = await import("./glossary.js");
  glossary ??= createGlossary(
    async () => (await engine.call("terms", {})).terms,
    async (label) => (await engine.call("term_of", label)).term,
    async (term) => (await engine.call("term_picture", { term, units: sheet.lastGood()?.units ?? "si" })).svg,
  );
  await glossary.open(label, from);
}
leadToTerms((label, from) => openGlossary(label, from).catch(failed));

/** Presses that lead to what the first program cannot do: who points at one, or comes to it by keys, is about to press it. */
const LEADS_ON = '#sections :is([data-making], [data-compared], [data-enquiry], [data-papers]), [data-way="show"], #learn-open';
const POINTED = 80; // ms on it; a pointer that goes by is not on its way there
const isOn = (/** @type {Element} */ press) => press.matches(":hover, :focus");
for (const kind of ["pointerover", "focusin"]) {
  document.addEventListener(kind, ({ target }) => {
    const press = target instanceof Element && target.closest(LEADS_ON);
    if (press) setTimeout(() => isOn(press) && engine.expect(), POINTED);
  });
}

const closeLearn = () => learn?.close();
at("learn-open").addEventListener("click", () => (learn?.isOpen ? closeLearn() : openLearn().catch(failed)));

/**
 * Of what an envelope waited with: what the engine takes with it, for the item in hand, and what is left for later.
 * @param {string} saved
 * @param {import("./design.js").Pending[]} pending
 */
function forHand(saved, pending) {
  const { item } = parsed(saved);
  const now = (/** @type {import("./design.js").Pending} */ one) => !one.reason && (one.item ?? item) === item;
  const asked = pending.filter(now);
  const anew = new Set(asked.map(({ command }) => keyOf(command))); // entered again before it was told what had been set aside
  return [asked, pending.filter((one) => !now(one) && !(one.reason && (one.item ?? item) === item && anew.has(keyOf(one.command))))];
}

/** Goes back to earlier work: what was entered and not answered is taken too, if it can be. @param {string} text */
async function goBack(text) {
  const { saved, pending } = parts(text);
  let [asked, left] = forHand(saved, pending);
  const ask = (/** @type {import("./api.js").Command[]} */ waiting) => engine.call("open", { text: saved, pending: waiting, ...sheet.area() });
  const reply = await ask(asked.map(({ command }) => command)).catch(orElse(() => ((left = pending), ask([]))));
  await design.replace(async () => ({ reply, looked: true, pending: left }));
}

chooseFile(at("open"), at("open-file"), (file) => design.replace(async () => ({ reply: await engine.call("open", { text: file, ...sheet.area() }) })));
const offline = createOffline(at("newer"));
createTheme(at("theme"), sheet.paint);
at("zoom").addEventListener("click", (/** @type {any} */ { target }) => target.dataset.zoom && sheet.zoom(target.dataset.zoom));
at("hold-scale").addEventListener("click", (/** @type {any} */ { currentTarget: button }) => {
  const on = button.getAttribute("aria-pressed") !== "true";
  button.setAttribute("aria-pressed", String(on));
  sheet.holdScale(on);
  laidOut(design.refresh()).catch(failed);
});
at("fit-axes").addEventListener("click", () => {
  sheet.releaseAxes();
  design.refresh().catch(failed);
  /** @type {HTMLElement} */ (document.querySelector("#plots .canvas:not([hidden] *)")).focus({ preventScroll: true }); // the press goes
});
const groups = [
  createRoving(at("tools"), "#tools > button, .pair > button"),
  createRoving(at("zoom"), "button"),
  createRoving(at("sections"), "button"),
  createRoving(at("status"), "#status > .more, #status > .line > button"),
  createRoving(at("headline"), ".name"),
  createRoving(at("groups"), ".name"),
  createRoving(at("cards"), ".name"),
  createRoving(at("methods"), "button"),
  createRoving(at("resistances"), "button"),
  createRoving(at("making-lines"), "button"),
];
placePopovers();
watchKeys(design);
watchCopy({ figure: (figure) => copyLine({ figure }), sentence: (sentence) => copyLine({ sentence }) });
linkSameThings(document.body);
keepCurveNear(at("entries"), at("plots"), at("decides"));

/**
 * A picture that fails takes nothing else with it.
 * @param {import("./design.js").Reply} reply
 * @param {import("./design.js").How} how
 */
function show({ document, view }, { settled, since, arrived = false }) {
  if (view.glimpse) return glimpsed(document, view, since);
  pictured(() => sheet.show(document, view, { settled, since })); // first: the painter asks for sizes, which is cheap until something changes
  form.show(view.fields);
  spans.show(view.spans);
  spans.aside(asides); // also beside a span that came back
  even.show(view.even);
  folds.show({ settled, arrived });
  if (view.valid) timed("figures", () => measured(view));
  follow(document, view);
  status.show(view, asides, arrived);
  tools.show(view);
  items.show({ ...design.history.entry, document });
  keeping.show(design.history.entry);
  sent(arrived);
  showing?.show(view, { settled, arrived });
  if (settled) {
    note();
    keeping.settled(design.history.entry).catch(failed);
    compare().catch(failed);
    makePapers().catch(failed);
    enquire().catch(failed);
    for (const reach of groups) reach();
  }
  pictured(() => making.draw(view.making));
  working.refresh();
  learn?.shown();
}

/** What the item in hand answers is kept with it. */
function note() {
  if (complete && !isReceived()) rows.settled();
}

const choices = () => ({ headline: deciding.chosen, section: opening });

let complete = false; // the design is shown with drawing and plots: what is only noted about it waits until then

let foreseen = false; // until the first answer

/** What can be seen before there is an answer. It bears the mark of what is asked. @param {import("./api.js").Page} view */
function foresee(view) {
  answer.early();
  foreseen = true;
  form.show(view.fields);
  status.show(view, asides); // it is in sight when it is answered, and keeps its room until then
  figures.show(view, () => sections.hideOthers(at("groups")));
  if (view.scene) sheet.foresee(view.scene).catch(() => {}); // told when it is needed
}

let remembering = 0;

/** Keeps what there is to see for when the page comes again, when a change has been rested from. */
function rememberSoon() {
  clearTimeout(remembering);
  remembering = window.setTimeout(() => remember().catch(() => {}), REMEMBERED); // what is not seen early is seen later
}

async function remember() {
  const document = sheet.lastGood();
  if (!document || !complete || !design.settled || !answer.whole) return;
  await keepSeen(choices, async () => (await engine.callLatest("seen", "seen", { document, ...sheet.seen(), ...choices() }))?.view ?? null);
}

/**
 * What moves under a hand that pulls; the rest is a few frames behind.
 * @param {import("./api.js").Document} document
 * @param {import("./api.js").Page} view
 * @param {number} [since]
 */
function glimpsed(document, view, since) {
  pictured(() => sheet.show(document, view, { settled: false, since }));
  timed("figures", () => {
    form.pulled(view.fields);
    figures.show(view, () => {});
    if (ways.current === "show") showing?.show(view, { settled: false });
    if (view.bars) heat.bars(view.bars);
  });
  learn?.shown();
}

/**
 * What a change took along is said until the next one; a design that is only shown again leaves it.
 * @param {import("./api.js").Document} document
 * @param {import("./api.js").Page} view
 */
function follow(document, { followed }) {
  const text = JSON.stringify(document);
  if (followed || text !== lastShown) write(at("followed"), followed);
  lastShown = text;
}

/** What a customer's link brought is shown as it was sent, and told so; what takes its place is not. @param {boolean} arrived */
function sent(arrived) {
  const yes = isReceived();
  if (document.body.toggleAttribute("data-received", yes)) {
    if (sections.asks("making") || sections.asks("compared")) sections.show(opening);
    notes.tell("received", "received", "", takeOver);
    if (arrived) sheet.behind(sentOutlines(), []);
  } else if (received) {
    notes.done("received", "received");
    drop(received.carried);
    if (arrived) sheet.behind([], []);
  }
}

/** What was sent is this page's own work from now on, and its own shop is asked. */
function takeOver() {
  if (!received) return;
  drop(received.carried);
  received = null;
  notes.done("received", "received");
  document.body.removeAttribute("data-received");
  design.keep();
  design.refresh().catch(failed);
}

/** @param {() => void} draw */
function pictured(draw) {
  try {
    draw();
  } catch (error) {
    notDrawn(/** @type {Error} */ (error));
  }
}

/** @param {Error} error */
function notDrawn(error) {
  console.error(error);
  tools.say("notDrawn");
}

/** @param {import("./api.js").Page} view */
function measured(view) {
  figures.show(view, () => sections.hideOthers(at("groups")), foreseen);
  foreseen = false;
  survivors.show(view.survivors);
  if (view.bars && view.methods && view.pairs) heat.show({ bars: view.bars, methods: view.methods, by_methods: view.by_methods ?? "", pairs: view.pairs });
  cases.show(view.cases);
  making.show(view.making);
  if (view.making) shop.name(view.making.shop);
}

/** What the engine did not take stays where it was typed. @param {import("./form.js").Asides} now */
function aside(now) {
  asides = now;
  form.aside(now);
  spans.aside(now);
  even.aside(now.get("even_spans"));
  tools.aside(now);
  items.aside(now);
  folds.show({ settled: true, arrived: false });
  if (design.view) status.show(design.view, now);
  for (const reach of groups) reach();
}

/** @param {import("./answer.js").State} state */
function answered(state) {
  answer.set(state);
  if (answer.whole && design.settled && design.view) write(at("summary"), design.view.summary);
}

/** @param {import("./design.js").Pending[]} pending @param {import("./history.js").Entry} [work] */
function keep(pending, work) {
  withdrawLink();
  tools.steps();
  if (work && isReceived()) return; // it is not this page's work until somebody takes it
  notes.tell("design", work ? keepWorking({ ...work, pending }) : keepEntered(pending));
  rememberSoon();
}

/** @param {Error} error */
function reason(error) {
  return error instanceof EngineError ? error.message : at("status").dataset.lost;
}

/** @param {string} section */
function showSection(section) {
  document.body.dataset.section = section;
  sheet.releaseAxes();
  folds.section(section);
  return laidOut(design.refresh());
}

/** While an entry cannot be used, the last tube that could be measured is shown as well. @param {Promise<void> | undefined} refreshed */
async function laidOut(refreshed) {
  await refreshed;
  if (design.view?.valid !== false) return;
  const measurable = sheet.lastGood();
  if (!measurable) return;
  const reply = await engine.callLatest("laidOut", "edit", { document: measurable, commands: [], ...sheet.area() });
  if (!reply || design.view.valid) return;
  measured(reply.view);
  pictured(() => making.draw(reply.view.making));
  pictured(() => sheet.show(measurable, reply.view, { settled: true }));
}

/** @param {Error} error */
function failed(error) {
  if (error instanceof EngineError) status.say(error.message);
  else if (!(error instanceof LoadFailure)) tools.say(error instanceof EngineLost ? "leftOut" : "crashed"); // of a load that failed the page says so by itself
  console.error(error);
}

/** A customer's link opens in Show; it stays in the address, so that a reload shows again what was sent. @param {string} carried @param {string} text */
async function receive(carried, text) {
  const { told, shop, ...reply } = await engine.call("receive", { text, ...sheet.area(), section: opening });
  received = { work: newId(), told, shop, document: JSON.stringify(reply.document), carried };
  ways.show("show");
  return { reply, looked: true, work: received.work };
}

/** A link opens over the design in hand, which undo brings back; only looked at, it is no work. @param {string} carried */
const openLink = (carried) =>
  design.replace(async () => {
    const text = await unpack(carried);
    try {
      if (forCustomer(carried)) return await receive(carried, text);
      const reply = await engine.call("open", { text, link: true, ...sheet.area() });
      drop(carried);
      notes.tell("link", "");
      return { reply, looked: true };
    } catch (error) {
      if (error instanceof LoadFailure) throw error; // it is tried again
      drop(carried);
      // Who was sent a design must not take the one that is here for it.
      if (error instanceof EngineError) notes.tell("link", error.key === "open.newer" ? quarantine("design", text) : "linkLeft", error.message);
      throw error;
    }
  });

/** What to do instead where there was an engine to answer. @template T @param {() => T} instead */
function orElse(instead) {
  return (/** @type {Error} */ error) => {
    if (error instanceof LoadFailure) throw error;
    return instead();
  };
}

/** The working copy, with what was entered and not answered; without that if it fails, then without the shop, and then without the copy. */
async function begin() {
  const { saved, pending, work, looked } = await workingCopy();
  const early = brought() || pending.length || asides.size ? null : lastSeen(saved !== "", choices());
  if (early) pictured(() => foresee(early));
  design.keep(); // what has been entered meanwhile
  await shop.start(); // first: the shop goes with every question
  const ask = (/** @type {{saved: string, pending: import("./api.js").Command[]}} */ args) => engine.call("start", { ...args, ...sheet.area(), first: true });
  let [asked, left] = forHand(saved, pending);
  let reply = await ask({ saved, pending: asked.map(({ command }) => command) })
    .catch(orElse(() => ((left = pending), ask({ saved, pending: [] }))))
    .catch(orElse(() => (shop.giveWay() ? ask({ saved, pending: [] }) : null)))
    .catch(orElse(() => null));
  if (!reply || reply.notice) {
    foreseen = false; // it is another design than the one that was seen
    reply ||= await ask({ saved: "", pending: [] });
    left = [];
    notes.tell("start", quarantineSaved(), reply.notice);
  }
  return { reply, work, looked: looked && pending.length === 0, pending: left };
}

async function draw() {
  const link = brought();
  const begun = design.replace(begin, { goesOn: true }); // at once: what is entered from now on comes after it
  await (link ? openLink(link) : begun);
  performance.mark("finwright:figures");
  await sheet.load().catch(async (error) => {
    trouble.show("part", error.reason ?? (await whyMissing()));
    console.error(error);
    await design.refresh(); // without pictures, but whole
  });
  performance.mark("finwright:drawn");
}

async function start() {
  try {
    await draw();
  } finally { // or as complete as it gets
    complete = true;
    if (design.view) note();
    rememberSoon();
  }
  const painted = Promise.resolve(sheet.loadPainter()).then((yes) => yes && performance.mark("finwright:painted"));
  await Promise.race([painted, new Promise((resolve) => setTimeout(resolve, COPY))]); // of a design that is refused nothing is painted
  await offline.keep();
}

// What nobody waited for is told all the same.
addEventListener("unhandledrejection", (event) => {
  event.preventDefault(); // failed writes it to the console
  failed(event.reason);
});

addEventListener("hashchange", () => {
  const link = fragment();
  if (link) openLink(link);
});

for (const link of /** @type {NodeListOf<HTMLAnchorElement>} */ (document.querySelectorAll("a[data-part-link]"))) link.href = asset(link.dataset.partLink ?? ""); // of a page that is one file

start();
