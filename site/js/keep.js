// @ts-check
// What the browser keeps from visit to visit. Where it keeps nothing, everything else still works.

const DESIGN = "finwright.design";
const UNREADABLE = "finwright.design.unreadable";
const SHOP = "finwright.shop";
const THEME = "finwright.theme";

/** @param {string} key */
function read(key) {
  try {
    return localStorage.getItem(key) ?? "";
  } catch {
    return "";
  }
}

/**
 * @param {string} key
 * @param {string} text
 */
function write(key, text) {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

export const savedDesign = () => read(DESIGN);

/** False when the browser does not keep it. @param {string} text */
export const keepDesign = (text) => write(DESIGN, text);

/** A saved design that could not be read stays under a name of its own: the next autosave would write over it. @param {string} text */
export const keepUnreadable = (text) => write(UNREADABLE, text);

export const savedShop = () => read(SHOP);

/** @param {string} text */
export const keepShop = (text) => write(SHOP, text);

export const savedTheme = () => read(THEME);

/** @param {string} theme */
export const keepTheme = (theme) => write(THEME, theme);
