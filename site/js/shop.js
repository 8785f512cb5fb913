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
  const [form, said, undo] = ["shop-form", "shop-said", "shop-undo"].map(at);
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
    onChange();
  }

  /** @type {Promise<unknown>} */ let turn = Promise.resolve();

  /**
   * Asks for a change, each of what the last one left; what is not taken is said where it belongs.
   * @param {import("./api.js").ShopCommand} command
   * @param {HTMLElement} [place]
   * @returns {Promise<boolean>}
   */
  function change(command, place = said) {
    said.textContent = "";
    const changed = turn.then(async () => {
      try {
        take(await engine.call("shop_edit", { shop: text, command }), { own: true, whole: false });
        return true;
      } catch (error) {
        place.textContent = words(error);
        return false;
      }
    });
    turn = changed;
    return changed;
  }

  /** @param {any} error */
  const words = (error) => (error instanceof EngineError ? (error.fields?.[0]?.message ?? error.message) : reason(error));

  function render() {
    const active = /** @type {HTMLElement | null} */ (document.activeElement)?.dataset?.path;
    form.replaceChildren(...(shown?.form.items ?? []).map((item) => element(item, null, 0)));
    if (active) form.querySelector(`[data-path="${active}"]`)?.focus();
  }

  /** @param {Item} item @param {Item | null} list that it is an item of @param {number} index @returns {HTMLElement} */
  function element(item, list, index) {
    const made = item.value ? value(item) : group(item);
    if (list) {
      const remove = press(form.dataset.remove, `${list.path}/-${index}`);
      remove.setAttribute("aria-label", (form.dataset.removeFrom ?? "").replace("{list}", list.label).replace("{item}", item.label));
      remove.className = "remove small";
      remove.addEventListener("click", async () => (await change({ op: "remove", path: list.path, index })) && render());
      (made instanceof HTMLDetailsElement ? made.lastElementChild : made)?.append(remove);
    }
    return made;
  }

  /** @param {string} label @param {string} path */
  function press(label, path) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = label;
    button.dataset.path = path;
    return button;
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
      const add = press(form.dataset.add, `${item.path}/+`);
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
    control.value = item.text;
    const error = document.createElement("p");
    error.className = "error";
    error.id = `shop-error-${item.path}`;
    error.setAttribute("role", "alert");
    control.setAttribute("aria-describedby", error.id);
    control.addEventListener("change", async () => {
      error.textContent = "";
      const taken = await change({ op: "set", path: item.path, text: control.value }, error);
      if (taken) control.removeAttribute("aria-invalid");
      else control.setAttribute("aria-invalid", "true");
      if (taken) item.text = control.value;
    });
    label.append(control);
    row.append(label, error);
    return row;
  }

  /** Takes another file into use. @param {string} file from the browser, from a file, or empty: the one that ships */
  async function use(file) {
    take(await engine.call("shop", { shop: file }), { own: file !== "", whole: true });
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
  at("shop-reset").addEventListener("click", () => load(""));
  undo.addEventListener("click", () => {
    texts.pop();
    load(texts.at(-1) ?? "");
  });
  at("shop-save").addEventListener("click", async () => {
    if (shown) await saveFile(engine, "shop", shown.form.name, shown.shop);
  });
  chooseFile(at("shop-file"), at("shop-input"), load);

  /** A file that stops the engine is put aside for the shop that ships. @param {string} [why] @returns {boolean} whether there was one */
  function giveWay(why = "") {
    if (!text) return false;
    const note = quarantine("shop", text);
    text = "";
    shown = null;
    form.replaceChildren();
    if (note === "setAside") keepShop("", false);
    tell(note === "setAside" ? "shopAside" : note, why);
    return true;
  }

  return {
    get text() {
      return text;
    },
    use,
    /** A kept file that cannot be used gives way to the shop that ships, and is put aside. */
    async start() {
      try {
        if (text) shown = await engine.call("shop", { shop: text });
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
