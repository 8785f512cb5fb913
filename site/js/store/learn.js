// @ts-check
// How far somebody has come in learning, in this browser; and, in this tab alone, the work that an exercise took the place of.

import { parsed, read, remove, write } from "./local.js";

const LEARN = "finwright.learn";
const OWN = "finwright.learn.own";

/** @typedef {{solved: string[], guesses: Record<string, number>, at: string, met: boolean}} Progress  guesses: places, by exercise; at: the exercise that is open; met: the panel has been seen */

/** @returns {Progress} */
export function savedProgress() {
  const { solved, guesses, at, met } = parsed(read(LEARN));
  return {
    solved: Array.isArray(solved) ? solved.filter((id) => typeof id === "string") : [],
    guesses: guesses && typeof guesses === "object" ? guesses : {},
    at: typeof at === "string" ? at : "",
    met: met === true,
  };
}

/** @param {Progress} progress */
export const keepProgress = (progress) => write(LEARN, JSON.stringify(progress));

/** The text of the job that was in hand before the first exercise; empty: none waits. */
export const ownWork = () => read(OWN, "sessionStorage");

/** @param {string} text empty: it has been gone back to */
export const keepOwn = (text) => (text ? write(OWN, text, "sessionStorage") : remove(OWN, "sessionStorage"));
