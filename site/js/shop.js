// @ts-check
// The shop: its capability file, kept by the browser, edited, saved and opened. Empty text is the shop that ships. This is the file and
// what was done to it; how it is shown is shop/room.js.

import { EngineError } from "./engine.js";
import { chooseFile, saveFile, today } from "./files.js";
import { LoadFailure } from "./loader.js";
import { withOneMore, without } from "./shop/paths.js";
import { createRoom } from "./shop/room.js";
import { keepShop, savedShop } from "./store/shop.js";
import { quarantine } from "./store/slot.js";

const MOST = 500; // steps of undo
const FAULTS = 20; // of a file that are listed

/**
 * @typedef {import("./api.js").ShopReply} Reply
 * @typedef {Map<string, import("./shop/tables.js").Aside>} Asides
 * @typedef {{text: string, asides: Asides, whole: boolean}} Step  whole: a file that took the place of the one before
 */

/**
 * @param {HTMLDialogElement} dialog
 * @param {HTMLButtonElement} opener
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {() => import("./api.js").Document | null | undefined} order in hand
 * @param {() => void} onChange
 * @param {{tell: (name: string, why?: string, open?: () => void) => void, done: (name: string) => void}} notes what became of what is kept
 * @param {(error: Error) => string} reason why there is no answer
 */
export function createShop(dialog, opener, engine, order, onChange, { tell, done }, reason) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [said, undo, redo, lifted] = ["shop-said", "shop-undo", "shop-redo", "shop-lifted"].map(at);
  /** @type {Step[]} apart from the design's history: an undo here concerns the shop alone */ const steps = [{ text: savedShop(), asides: new Map(), whole: false }];
  let place = 0;
  /** @type {Reply | null} of the step in use */ let shown = null;
  /** @type {import("./shop/paths.js").Move[]} where paths led after each item that came or went */ const moves = [];
  /** @type {Promise<unknown>} */ let turn = Promise.resolve();

  const now = () => steps[place];
  const words = (/** @type {any} */ error) => (error instanceof EngineError ? (error.fields?.[0]?.message ?? error.message) : reason(error));
  const since = (/** @type {string} */ path, /** @type {number} */ then) => moves.slice(then).reduce((path, move) => path && move(path), path);
  const mapped = (/** @type {Asides} */ asides, /** @type {import("./shop/paths.js").Move} */ move) =>
    new Map([...asides].map(([path, aside]) => /** @type {const} */ ([move(path), aside])).filter(([path]) => path));

  /** What is done to the shop is done one after another, each on what the last one left. @template T @param {() => Promise<T>} act */
  function inTurn(act) {
    const done = turn.then(act);
    turn = done.catch(() => {});
    return done;
  }

  /** Another state of the shop. @param {Reply} reply @param {Step} step */
  function take(reply, step) {
    const same = step.text === now().text && ![...step.asides, ...now().asides].length;
    shown = reply;
    if (!same) {
      steps.length = place + 1;
      steps.push(step);
      if (steps.length > MOST) steps.shift();
      place = steps.length - 1;
    }
    told(step.whole);
  }

  /** @param {boolean} whole */
  function told(whole) {
    tell(keepShop(now().text, whole));
    undo.disabled = place === 0;
    redo.disabled = place === steps.length - 1;
    opener.textContent = shown?.form.name ?? "";
    if (whole) toConfirm(shown);
    room.show(shown, now().asides, moves.length);
    onChange();
  }

  /** Lists what has another meaning than in the version that saved the file. @param {Reply | null} reply */
  function toConfirm(reply) {
    const list = reply?.lifted ?? [];
    lifted.hidden = list.length === 0;
    lifted.querySelector("ul").replaceChildren(...list.map((text) => Object.assign(document.createElement("li"), { textContent: text })));
    if (list.length) tell("shopLifted", "", open);
    else done("shopLifted");
  }

  /**
   * Enters texts at once. What was refused before is tried again with them, since together they may hold; what is refused stays where it was typed.
   * @param {{path: string, text: string}[]} typed
   * @param {number} then what had been moved when they were typed
   */
  function enter(typed, then) {
    said.textContent = "";
    /** @type {Asides} */ const waiting = new Map(now().asides);
    for (const { path, text } of typed) waiting.set(since(path, then), { text, why: "" });
    room.show(shown, waiting, moves.length); // at once, as it was typed
    return inTurn(async () => {
      const fresh = typed.map(({ path, text }) => ({ path: since(path, then), text })).filter(({ path }) => path);
      const paths = new Set(fresh.map(({ path }) => path));
      const again = [...now().asides].filter(([path, { lost }]) => !lost && !paths.has(path)).map(([path, { text }]) => ({ path, text }));
      const lost = [...now().asides].filter(([path, aside]) => aside.lost && !paths.has(path));
      const entries = [...again, ...fresh];
      const { text } = now();
      try {
        const reply = await engine.call("shop_edit", { shop: text, command: { op: "enter", entries } });
        const typedAt = new Map(entries.map(({ path, text }) => [path, text]));
        const refused = reply.refused.map(({ field, message }) => /** @type {const} */ ([field, { text: typedAt.get(field) ?? "", why: message }]));
        take(reply, { text: reply.shop === shown?.shop ? text : reply.shop, asides: new Map([...lost, ...refused]), whole: false });
      } catch (error) {
        for (const { path, text } of fresh) now().asides.set(path, { text, why: words(error), lost: true });
        room.show(shown, now().asides, moves.length);
      }
    });
  }

  /**
   * Puts an item into a list or takes it out.
   * @param {"add" | "copy" | "remove"} op
   * @param {{list: string, index: number}} record
   * @param {number} then what had been moved when it was asked for
   */
  function change(op, { list, index }, then) {
    said.textContent = "";
    return inTurn(async () => {
      const [path, , last] = [since(list, then), 0, since(`${list}/${index}`, then)];
      if (!path || (op !== "add" && !last)) return false; // it has been taken out
      const n = op === "add" ? 0 : Number(last.split("/").pop());
      try {
        const reply = await engine.call("shop_edit", { shop: now().text, command: { op, path, index: n } });
        const move = op === "remove" ? without(path, n) : op === "copy" ? withOneMore(path, n) : (/** @type {string} */ path) => path;
        moves.push(move);
        take(reply, { text: reply.shop, asides: mapped(now().asides, move), whole: false });
        return true;
      } catch (error) {
        said.textContent = words(error);
        return false;
      }
    });
  }

  /** Takes another file into use. @param {string} file from the browser, from a file, or empty: the one that ships */
  async function use(file) {
    const reply = await engine.call("shop", { shop: file });
    take(reply, { text: file && reply.shop, asides: new Map(), whole: true });
  }

  /** Reads a whole file, and says what is wrong with it and where. @param {() => Promise<void>} act @param {string} [name] of the file */
  async function load(act, name = "") {
    said.textContent = "";
    try {
      await act();
    } catch (error) {
      const fields = (error instanceof EngineError && error.fields) || [];
      const lines = fields.slice(0, FAULTS).map(({ place, message }) => (place ? `${place}: ${message}` : message));
      if (fields.length > FAULTS) lines.push("…");
      const why = (lines.length > 1 ? lines : [words(error)]).map((text) => Object.assign(document.createElement("li"), { textContent: text }));
      const list = document.createElement("ul");
      list.append(...why);
      said.replaceChildren(name ? said.dataset.file.replace("{file}", name) : "", lines.length > 1 ? list : ` ${error instanceof EngineError ? error.message : words(error)}`);
    }
  }

  /** @param {() => number} to a step, when its turn has come */
  const goTo = (to) =>
    inTurn(() =>
      load(async () => {
        const next = to();
        if (next < 0 || next >= steps.length) return;
        const whole = steps[Math.max(place, next)].whole;
        const reply = await engine.call("shop", { shop: steps[next].text });
        place = next;
        shown = reply;
        told(whole);
      }),
    );
  const back = () => goTo(() => place - 1);
  const forth = () => goTo(() => place + 1);

  const room = createRoom(dialog, engine, {
    enter, change, undo: back, redo: forth,
    effect: () => {
      const document = order();
      const before = place > 0 && steps[place - 1].text !== now().text ? steps[place - 1].text : null;
      return document ? { document, shop: now().text, before, day: today() } : null;
    },
  });

  async function open() {
    const from = document.activeElement;
    shown ??= await engine.call("shop", { shop: now().text });
    if (document.activeElement !== from) return; // it took its time, and whoever asked is at something else by now
    room.show(shown, now().asides, moves.length);
    room.open();
  }
  opener.addEventListener("click", open);
  at("shop-confirm").addEventListener("click", () =>
    inTurn(async () => {
      toConfirm(null);
      if (!now().text || !shown) return;
      now().text = shown.shop; // of this version, so that it is not listed again
      tell(keepShop(now().text, false));
    }),
  );
  at("shop-reset").addEventListener("click", () => inTurn(() => load(() => use(""))));
  at("shop-begin").addEventListener("click", () =>
    inTurn(() =>
      load(async () => {
        const reply = await engine.call("shop_edit", { shop: "", command: { op: "begin", path: "" } });
        take(reply, { text: reply.shop, asides: new Map(), whole: true });
        room.first();
      }),
    ),
  );
  const files = at("shop-files"); // a menu where there is no room for its buttons
  files.addEventListener("click", () => files.matches(":popover-open") && files.hidePopover());
  undo.addEventListener("click", back);
  redo.addEventListener("click", forth);
  at("shop-save").addEventListener("click", async () => {
    room.finish();
    await turn;
    if (shown) await saveFile(engine, "shop", shown.form.name, shown.shop);
  });
  chooseFile(at("shop-file"), at("shop-input"), (file, name) => inTurn(() => load(() => use(file), name)));

  /** A file that stops the engine is put aside for the shop that ships. @param {string} [why] @returns {boolean} whether there was one */
  function giveWay(why = "") {
    const { text } = now();
    if (!text) return false;
    const note = quarantine("shop", text);
    steps[place] = { text: "", asides: new Map(), whole: false };
    shown = null;
    toConfirm(null);
    if (note === "setAside") keepShop("", false);
    tell(note === "setAside" ? "shopAside" : note, why);
    return true;
  }

  return {
    get text() {
      return now().text;
    },
    use: (/** @type {string} */ file) => inTurn(() => use(file)),
    /** A kept file that cannot be used gives way to the shop that ships, and is put aside. */
    async start() {
      try {
        if (now().text) toConfirm((shown = await engine.call("shop", { shop: now().text })));
      } catch (error) {
        if (error instanceof LoadFailure) throw error;
        giveWay(error instanceof EngineError ? error.message : "");
      }
    },
    giveWay,
    /** @param {string} name of the shop in use */
    name(name) {
      if (opener.textContent !== name) opener.textContent = name;
    },
  };
}
