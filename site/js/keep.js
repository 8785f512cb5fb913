// @ts-check
// What the browser keeps of the shop and the theme from visit to visit.

import { read, write } from "./store/local.js";

const SHOP = "finwright.shop";
const THEME = "finwright.theme";

export const savedShop = () => read(SHOP);

/** @param {string} text */
export const keepShop = (text) => write(SHOP, text);

export const savedTheme = () => read(THEME);

/** @param {string} theme */
export const keepTheme = (theme) => write(THEME, theme);
