// What fails in a day of faults: it stands in the page before the page's own scripts, and reads what is in sight for the
// judge. Nothing of it is part of the page.
(() => {
  if (window !== top) return;
  const plain = { setTimeout: setTimeout.bind(globalThis), clearTimeout: clearTimeout.bind(globalThis), setInterval: setInterval.bind(globalThis), now: Date.now, Worker, Date };
  const day = (globalThis.day = {
    storage: sessionStorage.getItem("faults") ?? "", // "", "full" or "barred"; outlasts a reload
    saved: "", // the working copy as last written; empty: what was last written was not taken
    shop: "", // as the engine was last asked
    deafTo: "", // a text that the engine never gets over
    said: [], // what the page said in passing
    refused: [], // what the engine said instead of an answer
    waiting: 0, // faults to come
    asleep: false,
    hidden: false,
  });

  // Storage.
  const { getItem, setItem, removeItem } = Storage.prototype;
  /** A working copy with the item in hand, which lies beside it. @param {string} text */
  function withItem(text) {
    const { set, item, ...head } = JSON.parse(text);
    const kept = getItem.call(localStorage, `finwright.item.${set}.${item}`);
    return JSON.stringify({ ...head, items: [JSON.parse(kept.slice(kept.indexOf(" ")))] });
  }
  for (const [method, act] of Object.entries({ getItem, setItem, removeItem })) {
    Storage.prototype[method] = function (key, ...rest) {
      const refused = day.storage === "barred" || (day.storage === "full" && method === "setItem");
      const slot = key.startsWith("finwright.slot.");
      if (method === "setItem" && (slot || key.startsWith("finwright.item."))) {
        if (refused) day.saved = "";
        else if (slot) day.saved = withItem(rest[0]);
      }
      if (refused) throw new DOMException("made by the test", day.storage === "full" ? "QuotaExceededError" : "SecurityError");
      return act.call(this, key, ...rest);
    };
  }
  const open = IDBFactory.prototype.open;
  IDBFactory.prototype.open = function (...args) {
    if (day.storage) throw new DOMException("made by the test", "UnknownError");
    return open.apply(this, args);
  };

  // Workers. Each hears of its fault in its own queue, so that what was asked before it is answered.
  const faulty = `self.addEventListener("message", (event) => {
    const { fault } = event.data;
    if (!fault) return;
    event.stopImmediatePropagation();
    if (fault === "close") close();
    else if (fault === "throw") throw new Error("made by the test");
    else Atomics.wait(new Int32Array(new WebAssembly.Memory({ initial: 1, maximum: 1, shared: true }).buffer), 0, 0);
  });`;
  const createObjectURL = URL.createObjectURL;
  URL.createObjectURL = (blob) => createObjectURL.call(URL, blob.type === "text/javascript" ? new Blob([faulty, blob], { type: blob.type }) : blob);
  const workers = new Set();
  const calls = new Map();
  const post = plain.Worker.prototype.postMessage;
  function strike(worker, fault) {
    post.call(worker, { fault });
    if (fault !== "throw") worker.dead = true;
  }
  globalThis.Worker = class extends plain.Worker {
    constructor(...args) {
      super(...args);
      workers.add(this);
      this.addEventListener("message", ({ data: { id, reply } }) => {
        if (!reply) return;
        const { error } = JSON.parse(reply);
        if (error?.elsewhere) return; // it waits for the whole engine
        calls.delete(id);
        if (error) day.refused.push(error.message);
      });
    }
    postMessage(message, ...rest) {
      if (message.method) {
        calls.set(message.id, message.method);
        const { shop } = JSON.parse(message.args);
        if (shop !== undefined && ["edit", "start", "example"].includes(message.method)) day.shop = shop;
        if (day.deafTo && message.args.includes(day.deafTo)) strike(this, "hang");
      }
      post.call(this, message, ...rest);
    }
    terminate() {
      workers.delete(this);
      calls.clear();
      super.terminate();
    }
  };

  // Clocks. The watch over the engine counts ticks: while a worker is dead they come faster.
  const held = new Map();
  globalThis.setTimeout = (act, ms, ...rest) => {
    const run = () => act(...rest);
    const id = plain.setTimeout(() => (day.asleep ? held.set(id, run) : run()), ms);
    return id;
  };
  globalThis.clearTimeout = (id) => {
    held.delete(id);
    plain.clearTimeout(id);
  };
  globalThis.setInterval = (act, ms, ...rest) => {
    let since = 0;
    return plain.setInterval(() => {
      if (day.asleep) return;
      since += 10;
      if (since < ms && ![...workers].some(({ dead }) => dead)) return;
      since = 0;
      act(...rest);
    }, 10);
  };
  let shift = 0; // ms
  globalThis.Date = class extends plain.Date {
    constructor(...args) {
      if (args.length) super(...args);
      else super(plain.now() + shift);
    }
    static now = () => plain.now() + shift;
  };
  const now = Performance.prototype.now;
  Performance.prototype.now = function () {
    return now.call(this) + shift;
  };

  // Tabs.
  Object.defineProperty(document, "visibilityState", { get: () => (day.hidden ? "hidden" : "visible") });
  Object.defineProperty(document, "hidden", { get: () => day.hidden });
  function look(hidden) {
    day.hidden = hidden;
    document.dispatchEvent(new Event("visibilitychange"));
  }

  const frame = () => document.querySelector("iframe.paint");
  function wake() {
    day.asleep = false;
    for (const [id, run] of [...held]) {
      held.delete(id);
      run();
    }
  }
  const store = (fault) => () => setItem.call(sessionStorage, "faults", (day.storage = fault));
  const faults = {
    close: () => workers.forEach((worker) => strike(worker, "close")),
    throw: () => workers.forEach((worker) => strike(worker, "throw")),
    hang: () => workers.forEach((worker) => strike(worker, "hang")),
    full: store("full"),
    barred: store("barred"),
    mend: store(""),
    unframe: () => frame()?.remove(),
    context: () => frame()?.contentDocument?.querySelector("canvas")?.getContext("webgl2")?.getExtension("WEBGL_lose_context")?.loseContext(),
    ahead: () => (shift += 3600000),
    back: () => (shift -= 7200000),
    hide: () => look(true),
    show: () => look(false),
    sleep: () => (day.asleep = true),
    wake,
    reload: () => location.reload(),
  };
  /** A fault, some time from now. */
  day.later = (fault, ms) => {
    if (ms === 0) return void faults[fault]();
    day.waiting++;
    plain.setTimeout(() => {
      day.waiting--;
      if (!day.old) faults[fault](); // a page that is being left has had its day
    }, ms);
  };

  // What is said is gone after some seconds.
  document.addEventListener("DOMContentLoaded", () => {
    for (const id of ["said", "shop-said"]) {
      const place = document.getElementById(id);
      const note = () => place?.textContent.trim() && day.said.push(place.textContent.trim());
      if (place) new MutationObserver(note).observe(place, { childList: true, characterData: true, subtree: true });
    }
  });

  /** Resolves when nothing is on its way: the state has stood still a while and every question has its answer. What is in sight at that moment is day.sight. */
  day.rest = async () => {
    let still = 0;
    let last = "";
    for (let polls = 0; still < (last === "answered" ? 10 : 25); polls++) {
      await new Promise((resolve) => plain.setTimeout(resolve, 20));
      const state = document.body.dataset.answer;
      const told = document.querySelector('#trouble [data-part="engine"]')?.checkVisibility(); // then nothing waits for an engine any more
      const open = !told && [...calls.values()].some((method) => method !== "map" && method !== "svg");
      still = state === last && state !== "asked" && !open && !day.waiting && document.getElementById("busy").hidden ? still + 1 : 0;
      last = state;
      if (polls > 2000) throw new Error(`no rest: ${state}, open ${JSON.stringify([...calls.values()])}, faults to come ${day.waiting}, busy ${!document.getElementById("busy").hidden}, asleep ${day.asleep}`);
    }
    day.sight = day.read();
    return true;
  };

  const text = (element) => element?.textContent.trim() ?? "";
  const shown = (element) => (element.checkVisibility() ? element.innerText.replace(/\s+/g, " ").trim() : "");
  const figure = (root) => ({
    id: root.dataset.figure,
    value: text(root.querySelector(".value")),
    unit: text(root.querySelector(".unit")),
    mark: root.querySelector(".state").hasAttribute("hidden") ? "" : text(root.querySelector(".word")),
  });
  const entry = (control, error) => ({ value: control.value, typed: control.value === "" ? "" : control.title || control.value, error: text(error) });
  /** What is in sight. */
  day.read = () => {
    const all = (selector, root = document) => [...root.querySelectorAll(selector)];
    return {
      state: document.body.dataset.answer,
      stale: document.body.matches(".stale"),
      section: document.querySelector("#sections [aria-pressed=true]").dataset.section,
      units: document.querySelector("[data-units][aria-pressed=true]")?.dataset.units ?? "",
      title: document.getElementById("design-title").value,
      summary: text(document.getElementById("summary")),
      status: shown(document.querySelector("#status .line")),
      notes: all("[data-note]").map(({ firstChild }) => text(firstChild)),
      half: all("input.moves").some(({ value, dataset }) => dataset.shown !== undefined && value !== dataset.shown),
      trouble: text(document.getElementById("trouble")),
      headline: all("#headline .figure").map(figure),
      listed: all("#groups .figure, #cards .figure").filter((root) => root.checkVisibility()).map(figure),
      fields: all("[data-field]").map((root) => {
        const control = root.querySelector(".moves");
        const { value, typed, error } = entry(control, root.querySelector(".error"));
        return {
          id: root.dataset.field, value, error, used: !root.hidden,
          typed: control instanceof HTMLSelectElement ? value : typed,
          origin: root.dataset.origin ?? "", watch: text(root.querySelector(".watch")),
        };
      }),
      spans: all("#spans .span").map((root) => {
        const part = (name) => entry(root.querySelector(`input[data-part=${name}]`), root.querySelector(`p[data-part=${name}]`));
        return { centre: part("centre"), width: part("width") };
      }),
      verdicts: all("#verdicts tbody").filter((body) => body.checkVisibility()).map(({ rows: [row] }) => [...row.cells].slice(0, 4).map(text)),
      grips: all(".grip").map((node) => ({ id: node.dataset.testid.slice(5), value: node.getAttribute("aria-valuetext") })),
      shop: day.shop, saved: day.saved, said: day.said, refused: day.refused,
    };
  };

  /** What a copy of the first figure would take along. */
  day.copy = () => {
    const value = document.querySelector("#headline .amount");
    if (!value?.dataset.full) return "";
    getSelection().selectAllChildren(value);
    const event = new ClipboardEvent("copy", { clipboardData: new DataTransfer(), bubbles: true, cancelable: true });
    value.dispatchEvent(event);
    getSelection().removeAllRanges();
    return event.clipboardData.getData("text/plain");
  };
})();
