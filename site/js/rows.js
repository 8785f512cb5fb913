// @ts-check
// What an item answers, kept with it: when the page is at rest the row of the one in hand, with the day, the program and the
// shop. Opened later, what is answered otherwise than then is told.

import { versionOf } from "./assets.js";
import { today } from "./files.js";

const REST = 500; // ms without an answer
const CHUNK = 100; // items that are asked for together; of more than that, other workers than the page's
const MOST = 50; // lines of a list; how many more there are is said

const build = versionOf("engine.wasm.gz");

/**
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {() => string} shop the capability file
 * @param {HTMLElement} place where it is told what changed
 */
export function createRows(engine, design, shop, place) {
  const { history } = design;
  const [said, list, read] = ["p", "ul", "button"].map((part) => /** @type {HTMLElement} */ (place.querySelector(part)));
  let timer = 0;
  /** @type {import("./job.js").Job | null} */ let job = null;
  /** @type {import("./api.js").Compared[]} */ let found = [];
  /** @type {{done: Promise<unknown>, cancel: () => void} | null} */ let comparing = null;

  /** Asks for the row of the item in hand; none is taken while those of the job are still compared with what they were. */
  async function note() {
    const [id, document] = [history.hand, history.current];
    await comparing?.done.catch(() => {});
    if (!document || id !== history.hand || document !== history.current) return;
    const reply = await engine.callLatest("row", "rows", { documents: [document], shop: shop(), build, day: today() });
    if (reply && document === history.current) design.note([{ id, shown: reply.shown[0] }], reply.basis);
  }

  function tell() {
    const all = found.flatMap(({ changed }) => changed);
    place.hidden = all.length === 0;
    said.textContent = (said.dataset.text ?? "").replace("{count}", String(all.length));
    list.replaceChildren(
      ...all.slice(0, MOST).map(({ name, why, lines }) => {
        const line = document.createElement("li");
        const title = document.createElement("b");
        title.textContent = name;
        line.append(title, ` ${[...lines, why].join(" ")}`);
        return line;
      }),
    );
    if (all.length > MOST) list.append("…");
  }

  read.addEventListener("click", () => {
    for (const { changed, basis } of found) design.note(changed, basis);
    place.hidden = true;
  });

  /** Compares what a job's items answered when it was saved with what they answer now. */
  function compare() {
    comparing?.cancel();
    comparing = null;
    found = [];
    tell();
    if (!job) return;
    const { base, by, items } = job;
    const shown = [...items.values()].filter((item) => item.shown).map(({ at, kept, ...item }) => item);
    if (!shown.length) return;
    const ask = (/** @type {typeof shown} */ items) => ({ base, by, items, shop: shop(), build, day: today() });
    const hear = (/** @type {import("./api.js").Compared | null} */ reply) => {
      if (!reply?.changed.length || job !== history.job) return;
      found.push(reply);
      tell();
    };
    if (shown.length <= CHUNK) {
      const done = engine.callLatest("changed", "changed", ask(shown)).then(hear);
      comparing = { done, cancel() {} };
    } else {
      const chunks = Array.from({ length: Math.ceil(shown.length / CHUNK) }, (_, i) => shown.slice(i * CHUNK, (i + 1) * CHUNK));
      comparing = engine.batch("changed", chunks.map(ask), hear);
    }
    comparing.done.catch(() => {}); // it was cancelled, or there is no engine, which is told elsewhere
  }

  /** The item in hand has its row, or there is none to have: without an engine, or where it is in hand no more. */
  function noted() {
    clearTimeout(timer);
    return note().catch(() => {});
  }

  return {
    noted,

    /** What is in the history has been answered. */
    settled() {
      if (history.job !== job) {
        job = history.job;
        compare();
      }
      clearTimeout(timer);
      timer = window.setTimeout(noted, REST);
    },
  };
}
