// @ts-check
// Which figures decide is the user's to choose, as many as there is room for above the drawing. The choice stays in the browser.

import { keepHeadline, savedHeadline } from "./store/headline.js";

const ROOM = 8;

/**
 * @param {HTMLElement} root a box to tick for each figure, ticked where the house has it
 * @param {() => void} onChange
 */
export function createDeciding(root, onChange) {
  const boxes = [.../** @type {NodeListOf<HTMLInputElement>} */ (root.querySelectorAll("input"))];
  const house = /** @type {HTMLElement} */ (root.querySelector("button"));
  const ticked = () => boxes.filter(({ checked }) => checked).map(({ value }) => value);
  const isHouse = () => boxes.every((box) => box.checked === box.defaultChecked);

  function fill() {
    const full = ticked().length >= ROOM;
    for (const box of boxes) box.disabled = full ? !box.checked : box.checked && ticked().length === 1;
    house.toggleAttribute("disabled", isHouse());
  }

  function change() {
    fill();
    keepHeadline(isHouse() ? [] : ticked());
    onChange();
  }

  const saved = savedHeadline();
  if (boxes.some(({ value }) => saved.includes(value))) for (const box of boxes) box.checked = saved.includes(box.value);
  fill();
  root.addEventListener("change", change);
  house.addEventListener("click", () => {
    for (const box of boxes) box.checked = box.defaultChecked;
    change();
  });

  return {
    /** Those that do. */
    ticked,
    /** Empty where it is as the house has it. */
    get chosen() {
      return isHouse() ? [] : ticked();
    },
  };
}
