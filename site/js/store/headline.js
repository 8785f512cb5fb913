// @ts-check
// Which figures the user chose to decide by.

import { read, write } from "./local.js";

const HEADLINE = "finwright.headline";

export const savedHeadline = () => read(HEADLINE).split(",");

/** @param {string[]} figures none: as the house has it */
export const keepHeadline = (figures) => write(HEADLINE, figures.join(","));
