// @ts-check
// The shop: its capability file, kept by the browser, edited value by value, saved and opened. Empty text is the shop that ships.

import { EngineError } from "./engine.js";
import { chooseFile, saveFile } from "./files.js";
import { LoadFailure } from "./loader.js";
import { keepShop, savedShop } from "./store/shop.js";
import { quarantine } from "./store/slot.js";

const MOST = 500; // steps of undo

/**
 * @typedef {import("./api.js").ShopItem} Item
 * @typedef {import("./api.js").ShopReply} Reply
 */

/**
 * @param {HTMLDialogElement} dialog
 * @param {HTMLButtonElement} opener
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {() => void} onChange
 * @param {(name: string, why?: string) => void} tell what became of what is kept
 * @param {(error: Error) => string} reason why there is no answer
 */
export function createShop(dialog, opener, engine, onChange, tell, reason) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [form, said, undo, lifted] = ["shop-form", "shop-said", "shop-undo", "shop-lifted"].map(at);
  /** @type {string} */ let text = savedShop();
  const texts = [text]; // apart from the design's history: an undo here concerns the shop alone
  /** @type {Reply | null} */ let shown = null;
  /** @type {Set<string>} paths laid open */
  const open = new Set();

  /** @param {Reply} reply @param {{own: boolean, whole: boolean}} how own: not the shop that ships; whole: not the one before, changed */
  function take(reply, { own, whole }) {
    shown = reply;
    text = own ? reply.shop : "";
    tell(keepShop(text, whole));
    if (texts.at(-1) !== text) texts.push(text);
    if (texts.length > MOST) texts.shift();
    undo.disabled = texts.length === 1;
    opener.textContent = reply.form.name;
    if (whole) toConfirm(reply);
    onChange();
  }

  /** Lists what has another meaning than in the version that saved the file. @param {Reply | null} reply */
  function toConfirm(reply) {
    const list = reply?.lifted ?? [];
    lifted.hidden = list.length === 0;
    lifted.querySelector("ul").replaceChildren(...list.map((text) => Object.assign(document.createElement("li"), { textContent: text })));
    if (list.length) tell("shopLifted");
  }

  /** @type {Promise<unknown>} */ let turn = Promise.resolve();
  /** @type {((path: string) => string)[]} where a path led after each item that was taken out of a list; empty: nowhere */
  const moves = [];

  /** What is done to the shop is done one after another, each on what the last one left. @template T @param {() => Promise<T>} act */
  function inTurn(act) {
    const done = turn.then(act);
    turn = done.catch(() => {});
    return done;
  }

  /**
   * Asks for a change; what is not taken is said where it belongs.
   * @param {import("./api.js").ShopCommand} command
   * @returns {Promise<boolean>}
   */
  function change({ path: from, ...command }) {
    said.textContent = "";
    const since = moves.length;
    return inTurn(async () => {
      const path = moves.slice(since).reduce((path, move) => path && move(path), from);
      if (!path) return false; // its row has been taken out
      const control = command.op === "set" ? find(path) : null;
      try {
        take(await engine.call("shop_edit", { shop: text, command: { ...command, path } }), { own: true, whole: false });
        if (control) control.dataset.taken = command.text;
        mark(control, "");
        return true;
      } catch (error) {
        if (control) mark(control, words(error));
        else said.textContent = words(error);
        return false;
      }
    });
  }

  /** @param {string} path @returns {HTMLInputElement | HTMLSelectElement | null} */
  const find = (path) => form.querySelector(`[data-path="${path}"]`);

  /** Says why a text is not taken. @param {HTMLElement | null} control @param {string} reason empty: it is */
  function mark(control, reason) {
    if (!control) return;
    at(`shop-error-${control.dataset.path}`).textContent = reason;
    if (reason) control.setAttribute("aria-invalid", "true");
    else control.removeAttribute("aria-invalid");
  }

  /** @param {any} error */
  const words = (error) => (error instanceof EngineError ? (error.fields?.[0]?.message ?? error.message) : reason(error));

  /** Makes the rows anew; a text that was typed and not taken stays, with the reason. @param {(path: string) => string} [moved] */
  function render(moved = (path) => path) {
    const active = /** @type {HTMLElement | null} */ (document.activeElement)?.dataset?.path;
    const controls = /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll("[data-taken]")]);
    const left = controls.filter(({ value, dataset }) => value !== dataset.taken).map(({ value, dataset: { path = "", tried } }) => ({
      ...{ path: moved(path), value, tried, reason: at(`shop-error-${path}`).textContent, focused: path === active },
    }));
    const laidOpen = [...open].map(moved);
    open.clear();
    for (const path of laidOpen) open.add(path);
    form.replaceChildren(...(shown?.form.items ?? []).map((item) => element(item, null, 0)));
    if (active) find(active)?.focus();
    for (const { path, value, tried, reason, focused } of left) {
      const control = path && find(path);
      if (!control) continue;
      control.value = value;
      control.dataset.tried = tried;
      mark(control, reason);
      if (focused) control.focus();
    }
  }

  /** Takes an item out of a list; those behind it move up. @param {string} list @param {number} index */
  async function remove(list, index) {
    /** @param {string} path */
    const moved = (path) => {
      if (!path.startsWith(`${list}/`)) return path;
      const [place, ...rest] = path.slice(list.length + 1).split("/");
      if (Number(place) === index) return "";
      return [list, Number(place) > index ? Number(place) - 1 : place, ...rest].join("/");
    };
    if (!(await change({ op: "remove", path: list, index }))) return;
    render(moved);
    moves.push(moved);
  }

  /** @param {Item} item @param {Item | null} list that it is an item of @param {number} index @returns {HTMLElement} */
  function element(item, list, index) {
    const made = item.value ? value(item) : group(item);
    if (list) {
      const press = button(form.dataset.remove, `${list.path}/-${index}`);
      press.setAttribute("aria-label", (form.dataset.removeFrom ?? "").replace("{list}", list.label).replace("{item}", item.label));
      press.className = "remove small";
      press.addEventListener("click", () => remove(list.path, index));
      (made instanceof HTMLDetailsElement ? made.lastElementChild : made)?.append(press);
    }
    return made;
  }

  /** @param {string} label @param {string} path */
  function button(label, path) {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = label;
    made.dataset.path = path;
    return made;
  }

  /** @param {Item} item */
  function group(item) {
    const details = document.createElement("details");
    details.open = open.has(item.path);
    details.addEventListener("toggle", () => (details.open ? open.add(item.path) : open.delete(item.path)));
    const summary = document.createElement("summary");
    summary.textContent = item.label;
    summary.dataset.path = item.path;
    const body = document.createElement("div");
    body.append(...(item.items ?? []).map((inner, i) => element(inner, item.list ? item : null, i)));
    if (item.list) {
      const add = button(form.dataset.add, `${item.path}/+`);
      add.setAttribute("aria-label", (form.dataset.addTo ?? "").replace("{list}", item.label));
      add.addEventListener("click", async () => (await change({ op: "add", path: item.path })) && render());
      body.append(add);
    }
    details.append(summary, body);
    return details;
  }

  /** @param {Item} item */
  function value(item) {
    const row = document.createElement("div");
    row.className = "value";
    const label = document.createElement("label");
    label.append(item.label, " ");
    const control = document.createElement(item.choices ? "select" : "input");
    control.className = "moves";
    control.dataset.path = item.path;
    control.dataset.testid = `shop-${item.path}`;
    control.title = item.hint;
    for (const { id, text: name } of item.choices ?? []) /** @type {HTMLSelectElement} */ (control).add(new Option(name, id));
    if (control instanceof HTMLInputElement) {
      control.autocomplete = "off";
      control.spellcheck = false;
    }
    control.value = control.dataset.taken = control.dataset.tried = item.text;
    const error = document.createElement("p");
    error.className = "error";
    error.id = `shop-error-${item.path}`;
    error.setAttribute("role", "alert");
    control.setAttribute("aria-describedby", error.id);
    const hand = () => {
      if (control.value === control.dataset.tried) return;
      control.dataset.tried = control.value;
      error.textContent = "";
      change({ op: "set", path: item.path, text: control.value });
    };
    control.addEventListener("change", hand);
    control.addEventListener("blur", hand); // of a row that was made anew under the cursor nothing is heard of a change
    label.append(control);
    row.append(label, error);
    return row;
  }

  /** Takes another file into use. @param {string} file from the browser, from a file, or empty: the one that ships */
  async function use(file) {
    take(await engine.call("shop", { shop: file }), { own: file !== "", whole: true });
    form.replaceChildren();
    render();
  }

  /** Reads a whole file, and says what is wrong with it. @param {string} file */
  async function load(file) {
    said.textContent = "";
    try {
      await use(file);
    } catch (error) {
      said.textContent = words(error);
    }
  }

  opener.addEventListener("click", async () => {
    shown ??= await engine.call("shop", { shop: text });
    if (!form.childElementCount) render(); // once: what could not be read stays with its error
    dialog.showModal();
  });
  at("shop-close").addEventListener("click", () => dialog.close());
  at("shop-confirm").addEventListener("click", () =>
    inTurn(async () => {
      toConfirm(null);
      if (!text || !shown) return;
      text = shown.shop; // of this version, so that it is not listed again
      tell(keepShop(text, false));
    }),
  );
  at("shop-reset").addEventListener("click", () => inTurn(() => load("")));
  undo.addEventListener("click", () =>
    inTurn(async () => {
      if (texts.length === 1) return;
      texts.pop();
      await load(texts[texts.length - 1]);
    }),
  );
  at("shop-save").addEventListener("click", async () => {
    if (shown) await saveFile(engine, "shop", shown.form.name, shown.shop);
  });
  chooseFile(at("shop-file"), at("shop-input"), (file) => inTurn(() => load(file)));

  /** A file that stops the engine is put aside for the shop that ships. @param {string} [why] @returns {boolean} whether there was one */
  function giveWay(why = "") {
    if (!text) return false;
    const note = quarantine("shop", text);
    text = "";
    shown = null;
    toConfirm(null);
    form.replaceChildren();
    if (note === "setAside") keepShop("", false);
    tell(note === "setAside" ? "shopAside" : note, why);
    return true;
  }

  return {
    get text() {
      return text;
    },
    use: (/** @type {string} */ file) => inTurn(() => use(file)),
    /** A kept file that cannot be used gives way to the shop that ships, and is put aside. */
    async start() {
      try {
        if (text) toConfirm((shown = await engine.call("shop", { shop: text })));
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
