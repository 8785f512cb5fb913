// @ts-check
// Which theme was chosen.

import { read, write } from "./local.js";

const THEME = "finwright.theme";

export const savedTheme = () => read(THEME);

/** @param {string} theme */
export const keepTheme = (theme) => write(THEME, theme);
