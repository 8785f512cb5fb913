// @ts-check
// Paper light, dark, or as the system has it.

import { keepTheme, savedTheme } from "./store/theme.js";

/**
 * @param {HTMLSelectElement} select
 * @param {() => void} onChange colours have changed
 */
export function createTheme(select, onChange) {
  select.value = savedTheme() || "auto";
  select.addEventListener("change", () => {
    const theme = select.value === "auto" ? "" : select.value;
    if (theme) document.documentElement.dataset.theme = theme;
    else delete document.documentElement.dataset.theme;
    keepTheme(theme);
    onChange();
  });
  for (const query of ["(prefers-color-scheme: dark)", "(forced-colors: active)"]) matchMedia(query).addEventListener("change", onChange);
}
