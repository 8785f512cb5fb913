// @ts-check
// Grips: what can be pulled in the drawing, by pointer, touch and key. A grip says itself how many units of its field a
// millimetre of sheet is worth; the engine rounds what comes of it.

import { keyed, write } from "./keyed.js";
import { element, onScreen, PX_PER_MM, set } from "./overlay.js";

const REST = 700; // ms after the last answer to a key until scales may change
const NONE = 3000; // ms after a key without an answer
const LEAP = 10; // steps with Shift or by page
/** @type {Record<string, number>} */
const KEYS = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: LEAP, PageDown: -LEAP };
/** @type {Record<string, "min" | "max">} */
const ENDS = { Home: "min", End: "max" };

/**
 * @typedef {import("./api.js").Value} Value
 * @typedef {import("./api.js").Scene} Scene
 * @typedef {import("./api.js").Grip} Grip
 * @typedef {{grip: Grip, scales: import("./api.js").Scales, k: number, x: number, y: number, number: number}} Pull
 */

/**
 * @param {Element} parent
 * @param {{onPull: (values: Value[], event: Event) => void, onRelease: (values: Value[], event: Event) => void,
 *   onCancel: () => void, onChange: () => void, onHold: (held: boolean) => void, onRest: () => void}} page  onRest: keys have come to rest
 */
export function createGrips(parent, page) {
  /** @type {Scene} */ let scene; // before it there are no grips
  /** @type {Pull | null} */ let pull = null;
  /** @type {import("./api.js").Scales | undefined} */ let stepped; // those at which the first of several keys found the drawing
  let rest = 0;
  let zoom = 1;

  const find = (/** @type {string} */ id) => scene.grips.find((grip) => grip.id === id);

  /** @param {Pull} p @param {PointerEvent} event */
  function pulledTo({ grip, k, x, y }, event) {
    const along = ((event.clientX - x) * grip.axis[0] + (event.clientY - y) * grip.axis[1]) / (PX_PER_MM * k);
    return Math.min(grip.max, Math.max(grip.min, grip.value + along * grip.per_mm));
  }

  function letGo() {
    const ended = pull;
    pull = null;
    page.onHold(false);
    page.onChange();
    return ended;
  }

  /** From key to key the drawing keeps its scales, and eases when they rest. */
  function step() {
    stepped ??= scene.scales;
    restAfter(NONE);
  }

  /** @param {number} time */
  function restAfter(time) {
    clearTimeout(rest);
    rest = window.setTimeout(() => {
      stepped = undefined;
      page.onRest();
    }, time);
  }

  /** @param {Pull} p @returns {Value[]} */
  const values = (p) => [{ field: p.grip.field, number: p.number, unit: p.grip.unit }];

  /** @param {string} id */
  function make(id) {
    const node = /** @type {SVGGElement} */ (element("g", { class: "grip", role: "slider", tabindex: 0, "data-testid": `grip-${id}` }));
    node.append(
      element("circle", { class: "reach", r: 14 }),
      element("path", { class: "handle", d: "M-8 0L-2.5 -5V5ZM8 0L2.5 -5V5Z" }),
      element("text", { class: "value", y: -16, "text-anchor": "middle" }),
    );
    node.addEventListener("pointerdown", (event) => {
      if (event.button !== 0 || pull) return;
      const grip = find(id);
      if (!grip) return;
      pull = { grip, scales: scene.scales, k: zoom, x: event.clientX, y: event.clientY, number: grip.value };
      node.setPointerCapture(event.pointerId);
      node.focus({ focusVisible: false });
      event.stopPropagation();
      event.preventDefault();
      page.onHold(true);
      page.onChange();
    });
    // A finger on a grip does not scroll the page; of touch-action within a drawing browsers take no notice.
    node.addEventListener("touchstart", (event) => event.preventDefault(), { passive: false });
    node.addEventListener("pointermove", (event) => {
      if (!pull || pull.grip.id !== id) return;
      pull.number = pulledTo(pull, event);
      page.onPull(values(pull), event);
    });
    node.addEventListener("pointerup", (event) => {
      if (!pull || pull.grip.id !== id) return;
      pull.number = pulledTo(pull, event);
      const ended = /** @type {Pull} */ (letGo());
      if (ended.number !== ended.grip.value) page.onRelease(values(ended), event);
    });
    node.addEventListener("lostpointercapture", () => {
      if (pull?.grip.id !== id) return;
      letGo();
      page.onCancel();
    });
    node.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && pull) {
        letGo();
        page.onCancel();
        return;
      }
      const steps = KEYS[event.key] * (event.shiftKey && Math.abs(KEYS[event.key]) === 1 ? LEAP : 1);
      const end = ENDS[event.key];
      if ((!steps && !end) || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      event.stopPropagation();
      const grip = find(id);
      if (!grip) return;
      step();
      page.onRelease([end ? { field: grip.field, number: grip[end], unit: grip.unit } : { field: grip.field, steps: steps * grip.steps }], event);
    });
    return node;
  }

  const place = keyed(parent, make, false); // one that is pulled stays where it is

  return {
    /** The scales to draw at while a grip is pulled, so that the drawing stays under the pointer. */
    hold: () => pull?.scales,
    /** The same while keys step. */
    stepped: () => stepped,
    pulled: () => pull?.grip.field ?? "",

    /** @param {Scene} next @param {import("./overlay.js").Transform} t */
    show(next, t) {
      if (stepped && scene !== next) restAfter(REST);
      scene = next;
      zoom = t.k;
      if (pull && !find(pull.grip.id)) {
        letGo(); // it has gone under the hand
        page.onCancel();
      }
      place(scene.grips, (node, grip) => {
        const { x, y } = onScreen(t, grip.x, grip.y); // on the line as drawn, also where the pointer is ahead of the answers
        node.classList.toggle("pulled", pull?.grip.id === grip.id);
        const [, handle, value] = node.children;
        const [right, down] = grip.axis;
        set(handle, { transform: `matrix(${right} ${down} ${-down} ${right} 0 0)` });
        write(value, grip.value_text);
        set(node, {
          transform: `translate(${x} ${y})`, "data-dimension": grip.field, "aria-label": grip.label,
          "aria-valuemin": grip.min, "aria-valuemax": grip.max, "aria-valuenow": grip.value, "aria-valuetext": grip.value_text,
        });
      });
    },
  };
}
