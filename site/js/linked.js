// @ts-check
// The same thing in several places: what the pointer or the focus is on is lit wherever else it stands, as an entry, a dimension,
// a figure, a part of the bar or an axis of a plot.

const PLACES = ["data-field", "data-figure", "data-layer", "data-dimension", "data-across", "data-up"];
const ANY = PLACES.map((name) => `[${name}]`).join();

/** The names of the thing that an element is or lies in. @param {EventTarget | null} target @returns {string[]} */
function namesOf(target) {
  const place = target instanceof Element ? target.closest(ANY) : null;
  return place ? PLACES.flatMap((name) => place.getAttribute(name) || []) : [];
}

/** @param {HTMLElement} root */
export function linkSameThings(root) {
  /** @type {Element[]} */ let lit = [];
  let last = "";

  /** @param {EventTarget | null} target */
  function light(target) {
    const names = namesOf(target);
    const now = names.join();
    if (now === last) return;
    last = now;
    for (const element of lit) element.removeAttribute("data-lit");
    const places = names.flatMap((name) => PLACES.map((place) => `[${place}="${name}"]`)).join();
    lit = places ? [...root.querySelectorAll(places)] : [];
    if (lit.length < 2) lit = []; // alone it has nothing to be found by
    for (const element of lit) element.setAttribute("data-lit", "");
  }

  root.addEventListener("pointerover", ({ target, buttons }) => buttons || light(target)); // not while something is pulled
  root.addEventListener("pointerleave", () => light(null));
  root.addEventListener("focusin", ({ target }) => light(target));
  root.addEventListener("focusout", () => light(null));
}
