// @ts-check
// Puts each popover beside the button that opens it. Opening, closing and Escape are the browser's.

const EDGE = 8; // px kept free at the window's edge

export function placePopovers() {
  document.addEventListener("toggle", place, true);
}

/** @param {Event} event */
function place(event) {
  const popover = event.target;
  if (!(popover instanceof HTMLElement) || /** @type {ToggleEvent} */ (event).newState !== "open") return;
  const button = document.querySelector(`[popovertarget="${popover.id}"]`);
  if (!button) return;
  const from = button.getBoundingClientRect();
  const { width, height } = popover.getBoundingClientRect();
  const below = from.bottom + height + EDGE <= innerHeight || from.top < height + EDGE;
  const left = Math.max(EDGE, Math.min(from.left, innerWidth - width - EDGE));
  popover.style.left = `${left}px`;
  popover.style.top = `${below ? from.bottom : from.top - height}px`;
}
