// @ts-check
// Undo, redo and copy by key. While a text is half typed they are the field's own, and over the design lies a dialog or a room with its own.

import { halfTyped } from "./form.js";

/** @param {{undo: () => void, redo: () => void}} design */
export function watchKeys(design) {
  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || halfTyped(document.activeElement) || document.querySelector("dialog:modal, .room[open]")) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) design.undo();
    else if (key === "y" || key === "z") design.redo();
    else return;
    event.preventDefault();
  });
}

/**
 * Nothing is marked, and what has the focus can be said in a line: the name of a figure, a chart under its answer, the verdict.
 * @param {{figure: (id: string) => void, sentence: (text: string) => void}} copy
 */
export function watchCopy(copy) {
  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.key.toLowerCase() !== "c") return;
    const at = document.activeElement;
    if (!at || at instanceof HTMLInputElement || getSelection()?.toString()) return;
    const figure = at.closest(".figure");
    const sentence = (at.matches(".plot .canvas") ? at.closest(".plot")?.querySelector(".answer") : at.closest(".status .line"))?.textContent;
    if (figure instanceof HTMLElement) copy.figure(figure.dataset.figure ?? "");
    else if (sentence) copy.sentence(sentence);
    else return;
    event.preventDefault();
  });
}
