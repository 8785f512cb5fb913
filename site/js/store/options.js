// @ts-check
// Which figures the user picked to stand side by side.

import { read, write } from "./local.js";

const PICKED = "finwright.options";

export const savedPick = () => read(PICKED).split(",");

/** @param {string[]} figures none: as the house has it */
export const keepPick = (figures) => write(PICKED, figures.join(","));
