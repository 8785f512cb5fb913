// @ts-check
// Undo and redo by key. While a text is half typed they are the field's own, and over the design lies a dialog or a room with its own.

import { halfTyped } from "./form.js";

/** @param {{undo: () => void, redo: () => void}} design */
export function watchKeys(design) {
  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || halfTyped(document.activeElement) || document.querySelector(":modal, .room[open]")) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) design.undo();
    else if (key === "y" || key === "z") design.redo();
    else return;
    event.preventDefault();
  });
}
