// @ts-check
// What the browser keeps from visit to visit. Where it keeps nothing, everything else still works.

const DESIGN = "finwright.design";
const UNREADABLE = "finwright.design.unreadable";
const SHOP = "finwright.shop";
const THEME = "finwright.theme";

/** @typedef {"localStorage" | "sessionStorage"} Store of the browser, and of this tab alone */

/**
 * @param {string} key
 * @param {Store} [store]
 */
function read(key, store = "localStorage") {
  try {
    return globalThis[store].getItem(key) ?? "";
  } catch {
    return "";
  }
}

/**
 * @param {string} key
 * @param {string} text
 * @param {Store} [store]
 */
function write(key, text, store = "localStorage") {
  try {
    globalThis[store].setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/** A tab goes on with its own design, whatever another has kept since. */
export const savedDesign = () => read(DESIGN, "sessionStorage") || read(DESIGN);

/** For this tab alone, or for the next visit too. False when the browser does not keep it. @param {string} text @param {boolean} next */
export function keepDesign(text, next) {
  const here = write(DESIGN, text, "sessionStorage");
  return next ? write(DESIGN, text) : here;
}

/** A saved design that could not be read stays under a name of its own: the next autosave would write over it. @param {string} text */
export const keepUnreadable = (text) => write(UNREADABLE, text);

export const savedShop = () => read(SHOP);

/** @param {string} text */
export const keepShop = (text) => write(SHOP, text);

export const savedTheme = () => read(THEME);

/** @param {string} theme */
export const keepTheme = (theme) => write(THEME, theme);
