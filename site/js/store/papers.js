// @ts-check
// What was answered on papers: whose they are, their numbers, dates and terms. It stays in this browser, beside the jobs; what belongs
// to a job, to an item or to one paper alone is kept apart, and of the jobs those that were answered last.

import { parsed, read, write } from "./local.js";

const KEY = "finwright.papers";
const MOST = 60; // jobs
const MOST_ITEMS = 2000; // that are answered for at once

/** What stands for all items of a job together: no item bears it. */
export const OF_ALL = "*";

/** @typedef {Record<string, string>} Answers */
/** @typedef {{job?: Answers, items?: Record<string, Answers>, papers?: Record<string, Answers>, extents?: Record<string, string>}} OfJob */

/** @returns {Record<string, OfJob>} by the piece of work, the last one last */
const all = () => parsed(read(KEY));

/** @param {string} work @param {string} item @param {string} kind @returns {Answers} */
export function answersOf(work, item, kind) {
  const { job, items, papers } = all()[work] ?? {};
  return { ...job, ...items?.[item], ...papers?.[`${item} ${kind}`] };
}

/** What was answered of an item alone. @param {string} work @param {string} item @returns {Answers} */
export const ownAnswers = (work, item) => all()[work]?.items?.[item] ?? {};

/** Whether a paper is of "all" items of a job, or of the one in hand: empty. @param {string} work @param {string} kind */
export const extentOf = (work, kind) => all()[work]?.extents?.[kind] ?? "";

/** @param {string} work @param {string} kind @param {string} extent */
export const keepExtent = (work, kind, extent) => keep(work, (now) => (now.extents = { ...now.extents, [kind]: extent }));

/** Gives many items one answer. @param {string} work @param {string[]} items @param {string} id @param {string} text */
export const answerAll = (work, items, id, text) =>
  keep(work, (now) => (now.items = { ...now.items, ...Object.fromEntries(items.slice(0, MOST_ITEMS).map((item) => [item, { ...now.items?.[item], [id]: text }])) }));

/**
 * @param {string} work @param {string} item @param {string} kind
 * @param {{id: string, of: string}} question
 * @param {string} text empty: it has no answer
 * @returns {string} empty, or the name of a note
 */
export function keepAnswer(work, item, kind, { id, of }, text) {
  const put = (/** @type {Answers} */ answers = {}) => {
    const { [id]: _, ...rest } = answers;
    return text ? { ...rest, [id]: text } : rest;
  };
  return keep(work, (now) => {
    if (of === "job") now.job = put(now.job);
    else if (of === "item") now.items = { ...now.items, [item]: put(now.items?.[item]) };
    else now.papers = { ...now.papers, [`${item} ${kind}`]: put(now.papers?.[`${item} ${kind}`]) };
  });
}

/** @param {string} work @param {(now: OfJob) => void} change @returns {string} empty, or the name of a note */
function keep(work, change) {
  const { [work]: now = {}, ...others } = all();
  change(now);
  const kept = Object.entries(others).slice(1 - MOST);
  return write(KEY, JSON.stringify(Object.fromEntries([...kept, [work, now]])));
}
