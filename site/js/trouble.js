// @ts-check
// What keeps the page, or a part of it, from loading is said in lines of its own, and stays until it is solved.
// first.js and main.js each have a copy of this; the lines are in the page.

/** @typedef {"begin" | "page" | "engine" | "part"} Part what is troubled */

/**
 * @param {Part} part
 * @param {string} reason network, missing, damaged, stalled, renewed, old or disk; or again: it is being tried
 */
export function show(part, reason) {
  change((root) => {
    const says = root.dataset;
    const line = lineOf(root, part) ?? root.appendChild(document.createElement("p"));
    if (isFinal(line.dataset.reason)) return; // what came after it is its consequence
    line.dataset.part = part;
    line.dataset.reason = reason;
    const text = reason === "again" ? [says.again] : [says[part], says[reason], isFinal(reason) ? "" : part === "engine" ? says.next : says.reload];
    line.textContent = text.join(" ").trim();
  });
}

/** @param {Part} part */
export const solved = (part) => change((root) => lineOf(root, part)?.remove());

/**
 * How far the engine has come. A quick start shows none of it: the bar comes into sight after a second.
 * @param {number} received
 * @param {number} total
 */
export function progress(received, total) {
  onBar((bar) => {
    bar.hidden = false;
    if (total) Object.assign(bar, { max: total, value: received });
    else bar.removeAttribute("value");
  });
}

export const progressed = () => onBar((bar) => (bar.hidden = true));

/** No later try makes these untrue. @param {string | undefined} reason */
const isFinal = (reason) => reason === "old" || reason === "disk" || reason === "renewed";

/** @param {HTMLElement} root @param {Part} part @returns {HTMLElement | null} */
const lineOf = (root, part) => root.querySelector(`[data-part="${part}"]`);

/** @param {(root: HTMLElement) => void} act */
const change = (act) => whenThere("trouble", act);

/** @param {(bar: HTMLProgressElement) => void} act */
const onBar = (act) => whenThere("loading", act);

/** @type {(() => void)[]} what waits for the page, in its order */
const waiting = [];

/** The head's script comes before the page. @param {string} id @param {(element: any) => void} act */
function whenThere(id, act) {
  const now = () => {
    const element = document.getElementById(id);
    if (element) act(element);
  };
  if (document.readyState !== "loading" && !waiting.length) return now();
  if (!waiting.length) addEventListener("DOMContentLoaded", () => waiting.splice(0).forEach((one) => one()), { once: true });
  waiting.push(now);
}
