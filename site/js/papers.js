// @ts-check
// What goes out of the door: a paper is chosen and its entries are filled in; the engine says all that stands on it.

import { chooseFile, today } from "./files.js";
import { differences, whole } from "./job.js";
import { hide, keyed, write } from "./keyed.js";
import { layOut } from "./papers/blocks.js";
import { earlier, earlierText } from "./store/earlier.js";
import { issue, issuedMarked, issuedOf } from "./store/issued.js";
import { answersOf, extentOf, keepAnswer, keepExtent, OF_ALL, ownAnswers } from "./store/papers.js";

/**
 * @typedef {import("./api.js").PaperArgs} Args
 * @typedef {import("./api.js").Papered} Papered
 * @typedef {import("./api.js").ShownQuestion} Question
 * @typedef {{
 *   paper: (args: Omit<Args, "shop">) => Promise<Papered | null>,
 *   table: (args: Omit<import("./api.js").TableArgs, "shop">) => Promise<import("./api.js").Tabled>,
 *   savePaper: (args: import("./api.js").PaperSaveArgs) => Promise<import("./api.js").PaperSaved>,
 *   openPaper: (text: string) => Promise<import("./api.js").IssuedPaper>,
 *   findEarlier: (args: Omit<import("./api.js").EarlierMarkArgs, "shop">) => Promise<import("./api.js").MarkedAt>,
 *   gather: () => Promise<void>,
 *   goBack: (text: string) => Promise<unknown>,
 *   find: (args: {text: string, designs: import("./api.js").Document[], program: string}) => Promise<import("./api.js").MarkedAt | null>,
 *   learn: (args: Omit<import("./api.js").LearnArgs, "shop">) => Promise<import("./api.js").Learned>,
 *   use: (shop: string) => Promise<void>,
 *   draw: (args: Omit<import("./api.js").DrawingArgs, "shop">) => Promise<import("./api.js").DrawingOut>,
 *   save: (text: BlobPart, name: string, type: string) => void,
 *   note: (name: string) => void,
 *   shop: () => string,
 *   print: () => void,
 *   whole: () => boolean,
 *   reason: (error: Error) => string,
 * }} Act
 */

const MOST = 200; // items of a paper, and one more by which the engine knows that there are too many

/**
 * @param {HTMLElement} root
 * @param {HTMLElement} sheet
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {string} program its version
 * @param {Act} act
 */
export function createPapers(root, sheet, design, program, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(`papers-${id}`));
  const [kind, extent, units, size, asks, print, table, mark, found, take, issuing, issued, said] = ["kind", "extent", "units", "size", "asks", "print", "table", "mark", "found", "take", "issue", "issued", "said"].map(at);
  /** @type {Papered | null} */ let shown = null;
  let whose = ""; // the item and the paper that are shown
  let foundItem = "";
  let foundWork = ""; // the text of earlier work
  let looked = 0; // how often was looked for a fingerprint
  /** @type {import("./store/issued.js").Issued[]} those of this job */ let gone = [];
  /** @type {import("./store/issued.js").Issued | null} that is shown in place of the one that could be made now */ let kept = null;

  const named = () => {
    const { job, hand } = design.history;
    const many = !extent.parentElement.hidden && extent.value === "all";
    return { job, hand, many, item: many ? OF_ALL : hand, key: `${job.work} ${many ? OF_ALL : hand} ${kind.value}` };
  };

  /** Whether it may be of all items, and is. */
  function reach() {
    const { job } = design.history;
    const many = job.order.length > 1 && kind.selectedOptions[0].hasAttribute("data-several");
    hide(extent.parentElement, !many);
    extent.value = many ? extentOf(job.work, kind.value) : "";
    const all = extent.options[1];
    write(all, all.dataset.text.replace("{count}", String(job.order.length)));
  }

  /** The items, as their paper is asked for. */
  function several() {
    const { job, hand } = named();
    const { document } = design.history.entry;
    return {
      base: job.base,
      items: job.order.slice(0, MOST + 1).map((id) => {
        const item = /** @type {import("./job.js").Item} */ (job.items.get(id));
        const here = id === hand;
        return { design: here ? differences(document, job.base) : item.design, kept: [...(item.kept ?? [])], answers: ownAnswers(job.work, id), stale: here ? !act.whole() : design.unread(id) };
      }),
    };
  }

  const sized = () => (document.body.dataset.sheet = size.value);

  /** What the paper is asked with. */
  function asked() {
    const { entry } = design.history;
    const { job, hand, many, item } = named();
    const kept = many ? [] : (job.items.get(hand)?.kept ?? []);
    const { reference, due } = job.head;
    /** @type {Record<string, string>} */ const answers = { ...(reference && { reference }), ...(due && { due }), ...answersOf(job.work, item, kind.value) };
    return {
      document: entry.document,
      kind: kind.value,
      units: units.value || entry.document.units,
      answers,
      day: today(),
      program,
      stale: !many && !act.whole(),
      ...(many && { several: several() }),
      beside: kept.map(({ design }) => whole(job.base, design)),
      names: kept.map(({ name }) => name),
    };
  }

  const showAsks = keyed(asks, (id, /** @type {Question} */ question) => {
    const label = document.createElement("label");
    label.className = question.many ? "entry many" : "entry";
    label.dataset.means = `text paper.ask.${id}`;
    const control = document.createElement(question.choices ? "select" : question.many ? "textarea" : "input");
    control.className = "moves";
    control.dataset.testid = `papers-${id}`;
    if (control instanceof HTMLSelectElement) control.append(...(question.choices ?? []).map(({ id, label }) => new Option(label, id)));
    else if (control instanceof HTMLTextAreaElement) Object.assign(control, { rows: 2, maxLength: 4000 });
    else Object.assign(control, { type: question.day ? "date" : "text", max: "9999-12-31", maxLength: 400, autocomplete: "off", spellcheck: false });
    control.addEventListener("change", () => {
      const { job, item } = named();
      act.note(keepAnswer(job.work, item, kind.value, question, control.value.trim()));
      refresh();
    });
    label.append(Object.assign(document.createElement("span"), { textContent: question.label }), " ", control);
    return label;
  });

  /** @param {Args["answers"]} answers @param {Question[]} questions */
  function fillAsks(answers, questions) {
    showAsks(questions, (label, question) => {
      const control = label.querySelector(".moves");
      const text = answers[question.id] ?? (question.choices ? question.choices[0].id : question.day ? (question.else ?? "") : "");
      if (control.value !== text && document.activeElement !== control) control.value = text;
      if ("placeholder" in control) control.placeholder = question.else ?? "";
    });
  }

  /** What was issued is shown as it was, whatever the design has become. @param {Pick<Papered, "paper" | "mark">} what */
  function lay({ paper }) {
    layOut(sheet, paper);
    sheet.toggleAttribute("data-issued", kept !== null);
    sheet.toggleAttribute("data-several", named().many);
  }

  /** @param {Papered} reply */
  function fill(reply) {
    shown = reply;
    lay(kept ?? reply);
    write(said, kept ? said.dataset.kept.replace("{time}", kept.time.slice(0, 16).replace("T", " ")) : "");
    issuing.disabled = kept !== null;
    hide(keeping, kept === null);
    propose(kept ? [] : (reply.proposals ?? []));
    const tables = (kept ?? reply).paper.blocks.filter(({ form }) => form === "table");
    const options = (/** @type {string} */ format) => tables.map(({ text, table }, i) => new Option(text || (table?.columns ?? []).map(({ label }) => label).join(", "), `${format} ${i}`));
    const groups = ["csv", "xlsx"].map((format) => {
      const group = Object.assign(document.createElement("optgroup"), { label: format.toUpperCase() });
      group.append(...options(format));
      return group;
    });
    table.replaceChildren(new Option(table.dataset.file, ""), ...groups);
    table.disabled = tables.length === 0;
  }

  const [learns, learned] = ["learn", "learned"].map(at);
  const showLearns = keyed(learns, (thing, /** @type {import("./api.js").ShownProposal} */ { why }) => {
    const line = document.createElement("li");
    const press = Object.assign(document.createElement("button"), { type: "button", textContent: learns.dataset.accept, disabled: why !== "" });
    press.dataset.testid = `papers-accept-${thing}`;
    press.addEventListener("click", async () => {
      try {
        await act.use((await act.learn({ ...asked(), thing: /** @type {any} */ (thing) })).shop);
        write(learned, learns.dataset.accepted);
      } catch (error) {
        write(learned, act.reason(/** @type {Error} */ (error)));
      }
    });
    line.append(document.createElement("span"), " ", press);
    return line;
  });

  /** What the shop may learn is its owner's to accept. @param {import("./api.js").ShownProposal[]} list */
  function propose(list) {
    hide(learns, list.length === 0);
    showLearns(list.map((one) => ({ ...one, id: one.thing })), (line, { said, why }) => {
      write(line.querySelector("span"), [said, why].filter(Boolean).join(" "));
      /** @type {HTMLButtonElement} */ (line.querySelector("button")).disabled = why !== "";
    });
  }

  async function refresh() {
    reach();
    const args = asked();
    const { key } = named();
    try {
      const reply = await act.paper(args);
      if (!reply || key !== named().key) return;
      if (key !== whose) asks.replaceChildren(), showAsks([], () => {});
      whose = key;
      fillAsks(args.answers, reply.asks);
      fill(reply);
    } catch (error) {
      shown = null;
      sheet.textContent = act.reason(/** @type {Error} */ (error));
    }
  }

  /** Lists what was issued of this job. */
  async function list() {
    const { work } = design.history.job;
    const now = await issuedOf(work).catch(() => []); // without a database nothing was issued
    if (work !== design.history.job.work) return;
    gone = now;
    const value = kept && gone.some(({ id }) => id === kept?.id) ? kept.id : "";
    issued.replaceChildren(new Option(issued.dataset.now, ""), ...gone.map(({ id, name }) => new Option(name, id)));
    issued.value = value;
    kept = gone.find(({ id }) => id === value) ?? null;
    hide(issued.parentElement, gone.length === 0);
  }

  async function send() {
    if (!shown || !act.whole()) return;
    if (shown.not_yet) return write(said, shown.not_yet);
    const { answers, document, several } = asked();
    const { job, item } = named();
    const { number, revision } = answers;
    const name = [shown.paper.title, number, revision, answers.date ?? today()].join(" · ");
    const one = { id: JSON.stringify([job.work, kind.value, number, revision]), work: job.work, item, kind: kind.value, name, time: new Date().toISOString(), mark: shown.mark, program, paper: shown.paper, document, ...(several && { several }), shop: act.shop(), answers };
    try {
      const fresh = await issue(one);
      await list();
      write(said, fresh ? said.dataset.done.replace("{name}", name) : said.dataset.again);
    } catch (error) {
      write(said, said.dataset.failed);
      console.error(error);
    }
  }
  issuing.addEventListener("click", send);

  const [keeping, opening, input] = ["save", "open", "open-file"].map(at);
  keeping.addEventListener("click", async () => {
    if (!kept) return;
    const { id, work, ...one } = kept;
    try {
      const { name, text } = await act.savePaper({ issued: one, day: one.time.slice(0, 10) });
      act.save(text, name, "application/json");
    } catch (error) {
      write(said, act.reason(/** @type {Error} */ (error)));
    }
  });
  chooseFile(opening, input, async (text) => {
    try {
      const one = await act.openPaper(text);
      const { job } = design.history;
      // One that was opened stands beside those that were issued here, also where these bear its number.
      const came = { ...one, id: JSON.stringify(["file", job.work, one.mark, one.time, one.kind, one.answers.number, one.answers.revision]), work: job.work };
      const unkept = await issue(came).then(() => false, () => true);
      await list();
      kept = gone.find(({ id }) => id === came.id) ?? came;
      issued.value = kept.id;
      await refresh();
      write(said, (unkept ? said.dataset.unkept : said.dataset.opened).replace("{name}", one.name));
    } catch (error) {
      write(said, act.reason(/** @type {Error} */ (error)));
    }
  });
  issued.addEventListener("change", () => {
    kept = gone.find(({ id }) => id === issued.value) ?? null;
    refresh();
  });

  extent.addEventListener("change", () => act.note(keepExtent(design.history.job.work, kind.value, extent.value)));
  for (const choice of [kind, extent, units]) {
    choice.addEventListener("change", () => {
      kept = null;
      issued.value = "";
      write(learned, "");
      refresh();
    });
  }
  size.addEventListener("change", sized);
  sized();
  print.addEventListener("click", act.print);
  for (const button of /** @type {NodeListOf<HTMLElement>} */ (root.querySelectorAll("[data-drawing]"))) {
    const format = button.dataset.drawing ?? "";
    button.addEventListener("click", async () => {
      try {
        const { name, text } = await act.draw({ ...asked(), format });
        act.save(text, name, format === "svg" ? "image/svg+xml" : "image/vnd.dxf");
      } catch (error) {
        write(found, act.reason(/** @type {Error} */ (error)));
      }
    });
  }
  table.addEventListener("change", async () => {
    if (!table.value) return;
    const [format, at] = table.value.split(" ");
    table.value = "";
    try {
      const [{ name, csv, sheet }, { workbookOf }] = await Promise.all([
        act.table({ ...asked(), table: Number(at), ...(format === "xlsx" && { format }), ...(kept && { issued: kept.paper }) }),
        import("./enquiry/xlsx.js"),
      ]);
      const book = sheet && (await workbookOf(sheet));
      act.save(book ?? csv, name, book?.type ?? "text/csv");
    } catch (error) {
      write(found, act.reason(/** @type {Error} */ (error)));
    }
  });

  /** Looks through earlier work, the last first, until something bears the fingerprint. @param {string} text @param {() => boolean} current */
  async function findEarlier(text, current) {
    await act.gather(); // what was just left is there too
    for (const { id, name, time } of await earlier("design").catch(() => [])) {
      const work = await earlierText(id);
      if (!current()) return "";
      const reply = await act.findEarlier({ text, work, program });
      if (!current()) return "";
      if (!reply.found) continue;
      foundWork = work;
      return found.dataset.earlier.replace("{name}", name).replace("{time}", time.slice(0, 10)).replace("{said}", reply.said);
    }
    return "";
  }

  async function find() {
    [foundItem, foundWork] = ["", ""];
    hide(take, true);
    const mine = ++looked;
    const current = () => mine === looked;
    if (!mark.value.trim()) return write(found, "");
    const { job, hand } = design.history;
    const ids = [hand, ...job.order.filter((id) => id !== hand)];
    const designs = ids.map((id, i) => (i ? whole(job.base, /** @type {any} */ (job.items.get(id)).design) : design.history.entry.document));
    const text = mark.value;
    try {
      const reply = await act.find({ text, designs, program });
      if (!reply || !current()) return;
      const out = await issuedMarked(text.trim().toLowerCase()).catch(() => []); // without a database nothing was issued
      const told = out.map(({ name, time }) => found.dataset.issued.replace("{name}", name).replace("{time}", time.slice(0, 10)));
      if (reply.read && !reply.found) {
        write(found, [reply.said, ...told, found.dataset.looking].join(" "));
        told.push(await findEarlier(text, current));
      }
      if (!current()) return;
      write(found, [reply.said, ...told].filter(Boolean).join(" "));
      foundItem = reply.at > 0 ? ids[reply.at] : "";
      hide(take, !foundItem && !foundWork);
    } catch (error) {
      if (current()) write(found, act.reason(/** @type {Error} */ (error)));
    }
  }
  mark.addEventListener("input", find);
  take.addEventListener("click", () => (foundItem ? design.take(foundItem) : foundWork && act.goBack(foundWork)));

  // Behind the page's own listener, which names the design on each sheet.
  addEventListener("beforeprint", () => {
    if (document.body.dataset.section !== "papers" || !shown) return;
    const { paper, mark } = kept ?? shown;
    document.documentElement.style.setProperty("--foot-name", JSON.stringify(paper.foot));
    document.documentElement.style.setProperty("--foot-made", JSON.stringify(mark));
  });

  return {
    /** Shows the paper of the design in hand. */
    async refresh() {
      await list();
      await refresh();
      if (mark.value) await find();
    },
  };
}
