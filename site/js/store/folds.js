// @ts-check
// Which groups of entries somebody opened or folded; of all others the page decides.

import { parsed, read, write } from "./local.js";

const FOLDS = "finwright.folds";

/** @returns {Record<string, boolean>} whether it is open, by group */
export const savedFolds = () => parsed(read(FOLDS));

/** @param {Record<string, boolean>} folds */
export const keepFolds = (folds) => write(FOLDS, JSON.stringify(folds));
