// @ts-check
// Puts each popover beside the button that opens it. Opening, closing and Escape are the browser's. Until it is in its place
// it is not to be seen: a press would be aimed at where it does not stay.

const EDGE = 8; // px kept free at the window's edge

export function placePopovers() {
  document.addEventListener("beforetoggle", ({ target, newState }) => newState === "open" && see(target, false), true);
  document.addEventListener("toggle", place, true);
}

/** @param {EventTarget | null} popover @param {boolean} seen */
function see(popover, seen) {
  if (popover instanceof HTMLElement && popover.popover) popover.style.visibility = seen ? "" : "hidden"; // a dialog opens where it stays
}

/** @param {Event} event */
function place(event) {
  const popover = event.target;
  if (!(popover instanceof HTMLElement) || /** @type {ToggleEvent} */ (event).newState !== "open") return;
  see(popover, true);
  placeBeside(popover);
}

/** Puts an open popover where it has room; again when what it holds has come. @param {HTMLElement} popover */
export function placeBeside(popover) {
  const button = document.querySelector(`[popovertarget="${popover.id}"]`);
  if (!button) return;
  const from = button.getBoundingClientRect();
  const { width, height } = popover.getBoundingClientRect();
  const below = from.bottom + height + EDGE <= innerHeight || from.top < height + EDGE;
  const left = Math.max(EDGE, Math.min(from.left, innerWidth - width - EDGE));
  popover.style.left = `${left}px`;
  popover.style.top = `${below ? from.bottom : from.top - height}px`;
}
