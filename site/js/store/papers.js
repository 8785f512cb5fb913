// @ts-check
// What was answered on papers: whose they are, their numbers, dates and terms. It stays in this browser, beside the jobs; what belongs
// to a job, to an item or to one paper alone is kept apart, and of the jobs those that were answered last.

import { parsed, read, write } from "./local.js";

const KEY = "finwright.papers";
const MOST = 60; // jobs

/** @typedef {Record<string, string>} Answers */
/** @typedef {{job?: Answers, items?: Record<string, Answers>, papers?: Record<string, Answers>}} OfJob */

/** @returns {Record<string, OfJob>} by the piece of work, the last one last */
const all = () => parsed(read(KEY));

/** @param {string} work @param {string} item @param {string} kind @returns {Answers} */
export function answersOf(work, item, kind) {
  const { job, items, papers } = all()[work] ?? {};
  return { ...job, ...items?.[item], ...papers?.[`${item} ${kind}`] };
}

/**
 * @param {string} work @param {string} item @param {string} kind
 * @param {{id: string, of: string}} question
 * @param {string} text empty: it has no answer
 * @returns {string} empty, or the name of a note
 */
export function keepAnswer(work, item, kind, { id, of }, text) {
  const { [work]: now = {}, ...others } = all();
  const put = (/** @type {Answers} */ answers = {}) => {
    const { [id]: _, ...rest } = answers;
    return text ? { ...rest, [id]: text } : rest;
  };
  if (of === "job") now.job = put(now.job);
  else if (of === "item") now.items = { ...now.items, [item]: put(now.items?.[item]) };
  else now.papers = { ...now.papers, [`${item} ${kind}`]: put(now.papers?.[`${item} ${kind}`]) };
  const kept = Object.entries(others).slice(1 - MOST);
  return write(KEY, JSON.stringify(Object.fromEntries([...kept, [work, now]])));
}
