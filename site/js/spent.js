// @ts-check
// Where the time of an answer goes. The bench asks for it, by an attribute of the page; else nothing is measured.

const asked = () => "timed" in document.documentElement.dataset;

/** @param {string} part @param {number} start */
const note = (part, start) => performance.measure(`finwright:part:${part}`, { start, end: performance.now() });

/**
 * @template T
 * @param {string} part
 * @param {() => T} work
 * @returns {T}
 */
export function timed(part, work) {
  if (!asked()) return work();
  const start = performance.now();
  const result = work();
  if (result instanceof Promise) result.then(() => note(part, start), () => {});
  else note(part, start);
  return result;
}
