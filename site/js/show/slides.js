// @ts-check
// Sliders over the standard steps of entries. A slider is the browser's own, so that it is pulled, touched and stepped as any other.

import { keyed, write } from "../keyed.js";

/** @typedef {import("../api.js").Steps} Steps */
/** @typedef {import("../api.js").Value[]} Values */

/**
 * @param {HTMLElement} root
 * @param {{live: (values: Values, since: number) => void, commit: (values: Values, since: number) => void, steps: () => Promise<Steps[] | null>, failed: (error: Error) => void}} act
 */
export function createSlides(root, act) {
  /** @type {Steps[]} */ let list = [];
  let sliding = ""; // the entry that is in a hand
  let asked = ""; // for which entries and units the steps are

  /** @param {string} id @param {HTMLInputElement} input @returns {Values | null} */
  function values(id, input) {
    const text = list.find((steps) => steps.id === id)?.texts[Number(input.value)];
    return text === undefined ? null : [{ field: id, text }];
  }

  /** What it stands at is said at once, before there is an answer. @param {HTMLElement} slide @param {Steps} steps */
  function say(slide, { shown }) {
    const input = /** @type {HTMLInputElement} */ (slide.querySelector("input"));
    const text = shown[Number(input.value)] ?? "";
    write(/** @type {Element} */ (slide.querySelector("output")), text);
    input.setAttribute("aria-valuetext", text);
  }

  const place = keyed(root, (id) => {
    const slide = document.createElement("div");
    slide.className = "slide";
    const [label, output, input] = [document.createElement("label"), document.createElement("output"), document.createElement("input")];
    Object.assign(input, { type: "range", min: "0", step: "1", id: `slide-${id}` });
    input.dataset.testid = `slide-${id}`;
    label.htmlFor = input.id;
    output.dataset.testid = `slid-${id}`;
    output.setAttribute("aria-hidden", "true"); // the slider says it
    input.addEventListener("input", (event) => {
      sliding = id;
      const steps = list.find((one) => one.id === id);
      if (steps) say(slide, steps);
      const to = values(id, input);
      if (to) act.live(to, event.timeStamp);
    });
    input.addEventListener("change", (event) => {
      sliding = "";
      const to = values(id, input);
      if (to) act.commit(to, event.timeStamp);
    });
    slide.append(label, output, input);
    return slide;
  });

  /** @param {import("../api.js").FormField[]} fields */
  function fill(fields) {
    const typed = (/** @type {string} */ id) => fields.find((field) => field.id === id)?.typed ?? "";
    place(list, (/** @type {HTMLElement} */ slide, /** @type {Steps} */ steps) => {
      const input = /** @type {HTMLInputElement} */ (slide.querySelector("input"));
      write(slide.children[0], steps.label);
      input.max = String(steps.texts.length - 1);
      slide.style.setProperty("--steps", String(steps.texts.length - 1));
      const at = steps.texts.indexOf(typed(steps.id));
      if (sliding !== steps.id && at >= 0) input.value = String(at);
      say(slide, steps);
    });
    return list.every(({ id, texts }) => texts.includes(typed(id)));
  }

  return {
    /** What is in the history has been answered. @param {import("../api.js").FormField[]} fields @param {string} of what the steps hang on beside the entry itself */
    async settled(fields, of) {
      if (sliding || (fill(fields) && of === asked)) return;
      asked = of;
      try {
        const next = await act.steps();
        if (!next || of !== asked) return;
        list = next.filter(({ texts }) => texts.length > 1);
        fill(fields);
      } catch (error) {
        asked = "";
        act.failed(/** @type {Error} */ (error));
      }
    },
  };
}
