// @ts-check
// Which figures stand side by side, beside those that decide, is the user's to pick. The choice stays in the browser.

import { keepPick, savedPick } from "../store/options.js";

/** @param {HTMLElement} root a box to tick for each figure, ticked where the house has it @param {() => void} onChange */
export function createPick(root, onChange) {
  const boxes = [.../** @type {NodeListOf<HTMLInputElement>} */ (root.querySelectorAll("input"))];
  const picked = () => boxes.filter(({ checked }) => checked).map(({ value }) => value);
  const saved = savedPick();
  if (boxes.some(({ value }) => saved.includes(value))) for (const box of boxes) box.checked = saved.includes(box.value);

  function change() {
    keepPick(boxes.every((box) => box.checked === box.defaultChecked) ? [] : picked());
    onChange();
  }
  root.addEventListener("change", change);
  root.querySelector("button")?.addEventListener("click", () => {
    for (const box of boxes) box.checked = box.defaultChecked;
    change();
  });
  return { picked };
}
