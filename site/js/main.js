// @ts-check
// Wires the page: the engine answers, the parts show. First the figures, then what takes longer to load.

import { createDesign } from "./design.js";
import { createEngine, EngineError } from "./engine.js";
import { createFigures } from "./figures.js";
import { chooseFile, download } from "./files.js";
import { createForm } from "./form.js";
import { createHeat } from "./heat.js";
import { copyLink, pack, takeFragment, unpack } from "./links.js";
import { LoadFailure, whyMissing } from "./loader.js";
import { createMaking } from "./making.js";
import { createShop } from "./shop.js";
import { watchKeys } from "./keys.js";
import { keepOffline } from "./offline.js";
import { placePopovers } from "./popovers.js";
import { createSections } from "./sections.js";
import { createSheet } from "./sheet.js";
import { createSpans } from "./spans.js";
import { createStatus } from "./status.js";
import { createTheme } from "./theme.js";
import { createTools } from "./tools.js";
import { quarantine, quarantineSaved, working as workingCopy } from "./store/slot.js";
import * as trouble from "./trouble.js";
import { createWorking } from "./working.js";

const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
const text = (/** @type {string} */ value, /** @type {string} */ field) => ({ op: "set", values: [{ field, text: value }] });

const engine = createEngine();
const design = createDesign(engine, (live) => sheet.area(live), { show, failed, told: (name) => tools.say(name) });
const making = createMaking(at("making"), at("cards"), (command) => design.commit(command));
const shop = createShop(at("shop"), at("shop-open"), engine, () => design.refresh());
const inShop = (/** @type {string} */ section) => ({ shop: shop.text, ...(section === "making" ? { section } : {}) });
const sheet = createSheet(at("drawing"), at("paper"), at("plots"), at("map-quantity"), engine, design, (section, live) => ({
  shop: shop.text,
  ...(section === "making" ? { room: making.room(live) } : {}),
}));

const form = createForm(at("entries"), {
  // A half-typed text that cannot be read yet changes nothing.
  live: (field, value) => design.live(field, text(value, field), { accept: (view) => view.valid }),
  commit: (field, value) => design.commit(text(value, field)),
  step: (field, steps) => design.commit({ op: "set", values: [{ field, steps }] }),
  origin: (field, origin) => design.commit({ op: "origin", field, origin }),
});
const spanCommand = (/** @type {number} */ index, /** @type {string} */ part, /** @type {string} */ value) => ({ op: "span", index, part, text: value });
const spans = createSpans(at("spans"), {
  live: (index, part, value) => design.live(`span ${index} ${part}`, spanCommand(index, part, value), { accept: (view) => view.valid }),
  commit: (index, part, value) => design.commit(spanCommand(index, part, value)),
  remove: (index) => design.commit({ op: "remove_span", index }),
});
at("add-span").addEventListener("click", () => design.commit({ op: "add_span" }));

const working = createWorking(
  at("working"),
  (figure) => engine.callLatest("working", "working", { document: sheet.lastGood(), figure, ...inShop(sheet.section) }),
  (figure) => tools.copyFigure(figure),
);
const openWorking = (/** @type {string} */ id, /** @type {HTMLElement} */ opener) => working.open(id, opener).catch(failed);
const figures = createFigures(at("headline"), at("groups"), at("cards"), openWorking);
const heat = createHeat(at("resistances"), at("methods"), at("methods-used"), openWorking);
const sections = createSections(at("sections"), (section) => turn(section).catch(failed));
const status = createStatus(at("status"), {
  label: form.label,
  focus(field) {
    sections.reveal(at(`field-${field}`));
    form.focus(field);
  },
});
const tools = createTools(design, {
  example: (id) => design.replace(() => engine.call("example", { id, ...sheet.area() }), { looked: true }),
  async save() {
    const { text, filename } = await engine.call("save", { documents: [design.document] });
    download(text, filename);
  },
  async link() {
    const { text } = await engine.call("save", { documents: [design.document] });
    return copyLink(await pack(text));
  },
});

chooseFile(at("open"), at("open-file"), (file) => design.replace(() => engine.call("open", { text: file, ...sheet.area() })));
createTheme(at("theme"), sheet.paint);
at("zoom").addEventListener("click", (/** @type {any} */ { target }) => target.dataset.zoom && sheet.zoom(target.dataset.zoom));
placePopovers();
watchKeys(design);

/**
 * @param {{document: any, view: any}} reply
 * @param {{settled: boolean, since?: number}} how
 */
function show({ document, view }, { settled, since }) {
  sheet.show(document, view, { settled, since }); // first: it asks for sizes, which is cheap until something changes
  form.show(view.fields);
  spans.show(view.spans);
  if (view.valid) measured(view);
  figures.setStale(!view.valid);
  heat.setStale(!view.valid);
  making.setStale(!view.valid);
  status.show(view);
  tools.show(view);
  if (!settled) return;
  at("summary").textContent = view.summary;
  working.refresh();
}

/** @param {any} view */
function measured(view) {
  figures.show(view);
  if (view.bars) heat.show(view);
  making.show(view.making);
  if (view.making) shop.name(view.making.shop);
  sections.sort(at("groups"));
}

/** Shows another section; while an entry cannot be used, with the last tube that could be measured. @param {string} section */
async function turn(section) {
  document.body.dataset.section = section;
  sheet.turn(section);
  if (design.view?.valid !== false) return;
  const measurable = sheet.lastGood();
  const reply = await engine.callLatest("turn", "edit", { document: measurable, commands: [], ...sheet.area() });
  if (!reply || design.view.valid) return;
  measured(reply.view);
  sheet.show(measurable, reply.view, { settled: true, stale: true });
}

/** @param {Error} error */
function failed(error) {
  if (error instanceof EngineError) status.say(error.message);
  else if (!(error instanceof LoadFailure)) tools.say("crashed"); // of a load that failed the page says so by itself
  console.error(error);
}

/** A link opens over the design in hand, which undo brings back; only looked at, it is no work. @param {string} fragment */
async function openLink(fragment) {
  const text = await unpack(fragment);
  const ask = () => engine.call("open", { text, link: true, ...sheet.area() });
  await design.replace(
    () =>
      ask().catch((/** @type {any} */ error) => {
        if (error.key === "open.newer") tools.say(quarantine("design", text));
        throw error;
      }),
    { looked: true },
  );
}

/** What to do instead where there was an engine to answer. @template T @param {() => T} instead */
function answered(instead) {
  return (/** @type {Error} */ error) => {
    if (error instanceof LoadFailure) throw error;
    return instead();
  };
}

/** The working copy, with what was entered and not answered; without that if it fails; and without the copy if that fails too. */
async function start(link = takeFragment()) {
  const { saved, pending, work, looked, told } = await workingCopy();
  const ask = (/** @type {object} */ args) => engine.call("start", { ...args, ...sheet.area() });
  let notice = "";
  await design.replace(
    async () => {
      let reply = await ask({ saved, pending }).catch(answered(() => ask({ saved, pending: [] }))).catch(answered(() => null));
      if (reply && !reply.notice) return reply;
      reply ??= await ask({ saved: "", pending: [] });
      notice = reply.notice;
      tools.say(quarantineSaved());
      return reply;
    },
    { work, looked: looked && pending.length === 0 },
  );
  if (!design.view) return void addEventListener("change", () => start(link), { once: true }); // the page says what is missing
  if (told) tools.say(told);
  if (link) await openLink(link);
  if (notice) status.say(notice);
  await shop.start(status.say);
  performance.mark("finwright:figures");
  await sheet.load().catch(async (error) => {
    trouble.show("part", error.reason ?? (await whyMissing()));
    console.error(error);
  });
  performance.mark("finwright:drawn");
  if (await sheet.quicken()) performance.mark("finwright:painted");
  keepOffline();
}

addEventListener("hashchange", () => {
  const link = takeFragment();
  if (link) openLink(link);
});

start();
