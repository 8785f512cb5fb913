// @ts-check
// The winding, slow: strip from the coil through the rolls onto the tube. It runs when it is told to, stands still at once, goes on by quarter
// turns, and never runs by itself. How fast things turn against each other the engine says.

import { write } from "../keyed.js";
import { createGrowth } from "./growth.js";

const SVG = "http://www.w3.org/2000/svg";
const [MIDDLE, AXIS] = [112, 72]; // of the tube seen from its end
const [FIRST, LAST] = [196, 296]; // where the fin is laid in the view from the side, and how far that goes
const ROLLS = 52; // where strip passes them
const TICKS = 9; // between marks on the strip, which show that it runs
const QUARTER = 0.25;

/** @typedef {NonNullable<import("../api.js").ShownStory["winding"]>} Winding */

/** @param {HTMLElement} root */
export function createWinding(root) {
  const part = (/** @type {string} */ name) => /** @type {any} */ (root.querySelector(`[data-part="${name}"]`));
  const svg = part("winding-picture");
  const growth = createGrowth(root);
  /** @type {Winding | null} */ let shown = null;
  let turns = 0;
  let before = 0; // time of the last frame; 0: it stands
  let size = "";
  /** @type {Record<string, SVGElement>} what moves */ let moving = {};

  /** @param {string} name @param {Record<string, string | number>} attributes @param {...SVGElement} inside */
  function draw(name, attributes, ...inside) {
    const element = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
    element.append(...inside);
    return element;
  }

  const circle = (/** @type {string} */ kind, /** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ r) => draw("circle", { class: kind, cx: x, cy: y, r });
  const path = (/** @type {string} */ kind, /** @type {string} */ d) => draw("path", { class: kind, d });

  /** @param {Winding} w */
  function fromItsEnd(w) {
    const [inner, outer] = [AXIS + w.tube, AXIS + w.tip];
    const half = (inner + outer) / 2;
    const ticks = draw("g", { class: "ticks" });
    for (let x = ROLLS - 2 * TICKS; x < MIDDLE + TICKS; x += TICKS) ticks.append(path("tick", `M${x} ${inner}V${outer}`));
    moving.strip = ticks;
    moving.tube = draw("g", {}, path("spoke", `M${MIDDLE} ${AXIS - w.bore}V${AXIS - w.tip}`), path("spoke", `M${MIDDLE} ${AXIS + w.bore}V${AXIS + w.tube}`));
    moving.coil = draw("g", {}, ...[0, 60, 120].map((by) => draw("path", { class: "spoke", d: "M5 50H41", transform: `rotate(${by} 23 50)` })));
    return draw(
      "g", {},
      circle("thin", 23, 50, 20), circle("thin", 23, 50, 15), circle("thin", 23, 50, 6), moving.coil,
      path("run", `M3 50C3 ${half} 12 ${half} 24 ${half}`),
      path("fin", `M24 ${half - 1}L${ROLLS - 6} ${inner}H${MIDDLE}V${outer}H${ROLLS - 6}L24 ${half + 1}Z`),
      draw("g", { "clip-path": "url(#winding-strip)" }, ticks),
      path("fin", `M${MIDDLE} ${AXIS - w.tip}A${w.tip} ${w.tip} 0 1 0 ${MIDDLE} ${outer}A${w.tip} ${w.tip} 0 1 0 ${MIDDLE} ${AXIS - w.tip}ZM${MIDDLE} ${AXIS - w.tube}A${w.tube} ${w.tube} 0 1 1 ${MIDDLE} ${inner}A${w.tube} ${w.tube} 0 1 1 ${MIDDLE} ${AXIS - w.tube}Z`),
      path("metal", `M${MIDDLE - w.tube} ${AXIS}a${w.tube} ${w.tube} 0 1 0 ${2 * w.tube} 0a${w.tube} ${w.tube} 0 1 0 ${-2 * w.tube} 0ZM${MIDDLE - w.bore} ${AXIS}a${w.bore} ${w.bore} 0 1 0 ${2 * w.bore} 0a${w.bore} ${w.bore} 0 1 0 ${-2 * w.bore} 0Z`),
      moving.tube,
      path("rolls", `M${ROLLS - 4} ${inner - 3}H${ROLLS + 4}L${ROLLS + 8} ${outer + 3}H${ROLLS - 8}Z`),
    );
  }

  /** @param {Winding} w */
  function fromItsSide(w) {
    const fins = draw("g", {});
    for (const side of [-1, 1]) {
      const at = (/** @type {number} */ r) => AXIS + side * r;
      for (let i = 0; i * w.pitch < LAST - FIRST + w.pitch; i++) {
        const x = FIRST + i * w.pitch;
        fins.append(path("blade", `M${x - w.root / 2} ${at(w.tube - w.groove)}H${x + w.root / 2}L${x + w.edge / 2} ${at(w.tip)}H${x - w.edge / 2}Z`));
        if (w.foot) fins.append(path("blade", `M${x} ${at(w.tube)}h${w.foot}v${side * w.root}h${-w.foot}Z`));
      }
    }
    moving.fins = fins;
    return draw(
      "g", {},
      ...[-1, 1].map((side) => path("metal", `M180 ${AXIS + side * w.bore}H${LAST}V${AXIS + side * w.tube}H180Z`)),
      path("axis", `M176 ${AXIS}H${LAST}`),
      draw("g", { "clip-path": "url(#winding-side)" }, fins),
      path("axis", `M${FIRST} ${AXIS - w.tip - 8}V${AXIS + w.tip + 8}`),
    );
  }

  /** @param {Winding} w */
  function build(w) {
    moving = {};
    const clip = (/** @type {string} */ id, /** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ width, /** @type {number} */ height) =>
      draw("clipPath", { id }, draw("rect", { x, y, width, height }));
    svg.replaceChildren(clip("winding-strip", ROLLS - 6, 0, MIDDLE - ROLLS + 6, 160), clip("winding-side", FIRST - w.root, 0, LAST - FIRST, 160), fromItsEnd(w), fromItsSide(w));
  }

  function place() {
    if (!shown) return;
    const angle = -360 * turns; // the strip comes from below on the left
    moving.tube.setAttribute("transform", `rotate(${angle} ${MIDDLE} ${AXIS})`);
    moving.coil.setAttribute("transform", `rotate(${-angle * shown.coil} 23 50)`);
    moving.strip.setAttribute("transform", `translate(${(turns * shown.strip) % TICKS} 0)`);
    moving.fins.setAttribute("transform", `translate(${(turns % 1) * shown.pitch} 0)`);
    growth.place(turns);
  }

  /** @param {number} now */
  function frame(now) {
    if (!before || !shown || !svg.checkVisibility()) return stop();
    turns += (now - before) / 1000 / shown.turn;
    before = now;
    place();
    requestAnimationFrame(frame);
  }

  function stop() {
    before = 0;
    write(part("winding-run"), root.dataset.run ?? "");
  }

  part("winding-run").addEventListener("click", () => {
    if (before) return stop();
    before = performance.now();
    write(part("winding-run"), root.dataset.pause ?? "");
    requestAnimationFrame(frame);
  });
  part("winding-step").addEventListener("click", () => {
    stop();
    turns += QUARTER;
    place();
  });
  const calm = matchMedia("(prefers-reduced-motion: reduce)");
  const calmed = () => {
    part("winding-run").hidden = calm.matches;
    if (calm.matches) stop();
  };
  calm.addEventListener("change", calmed);
  calmed();

  return {
    stop,
    /** @param {Winding | null} winding null: nothing is wound */
    show(winding) {
      part("winding").hidden = !winding;
      shown = winding;
      if (!winding) return stop();
      svg.setAttribute("aria-label", winding.said);
      growth.show(winding.grows);
      const now = JSON.stringify(winding);
      if (now !== size) build(winding);
      size = now;
      place();
    },
  };
}
