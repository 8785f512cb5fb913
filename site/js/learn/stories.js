// @ts-check
// Explanations that move: a number in a sentence is pulled, or stepped with the arrows, and drawing, curves and sentences follow.

import { hide, write } from "../keyed.js";
import { createWinding } from "./winding.js";

const STEP = 6; // px that a hand moves for one step of a number
const SVG = "http://www.w3.org/2000/svg";
/** @type {Record<string, number>} */
const KEYS = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 };

/** @typedef {import("../api.js").ShownStory} Story */

/**
 * @param {HTMLElement} root
 * @param {ReturnType<typeof import("../design.js").createDesign>} design
 * @param {import("../learn.js").Act} act
 */
export function createStories(root, design, act) {
  const part = (/** @type {string} */ name) => /** @type {any} */ (root.querySelector(`[data-part="${name}"]`));
  const winding = createWinding(root);
  let told = ""; // which one
  let on = false;
  let shape = ""; // of what stands there: while it is the same, numbers are only written over

  /** @param {string} field @param {number} steps */
  const stepped = (field, steps) => ({ op: "set", values: [{ field, steps }] });

  /** @param {string} field */
  function pull(field) {
    const number = document.createElement("span");
    number.className = "pull moves";
    number.tabIndex = 0;
    number.setAttribute("role", "slider");
    number.dataset.testid = `pull-${field}`;
    let from = 0;
    let steps = 0;
    let held = false;
    number.addEventListener("pointerdown", (event) => {
      number.setPointerCapture(event.pointerId);
      [from, steps, held] = [event.clientX, 0, true];
      event.preventDefault();
      number.focus();
    });
    number.addEventListener("pointermove", (event) => {
      const now = Math.round((event.clientX - from) / STEP);
      if (!held || now === steps) return;
      steps = now;
      if (steps) design.live(stepped(field, steps), { pulled: true, since: event.timeStamp, accept: (view) => view.valid });
      else design.cancel();
    });
    const release = () => {
      if (held && steps) design.commit(stepped(field, steps));
      held = false;
    };
    number.addEventListener("pointerup", release);
    number.addEventListener("lostpointercapture", release);
    number.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && held) {
        held = false;
        design.cancel();
      }
      const by = KEYS[event.key];
      if (!by || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      design.commit(stepped(field, by));
    });
    return number;
  }

  /** @param {Story["paragraphs"]} paragraphs */
  function sentences(paragraphs) {
    const now = JSON.stringify([told, paragraphs.map(({ pieces }) => pieces.map(({ field }) => field))]);
    if (now !== shape) {
      shape = now;
      part("text").replaceChildren(
        ...paragraphs.map(({ pieces }) => {
          const line = document.createElement("p");
          line.append(...pieces.map(({ field }) => (field ? pull(field) : document.createElement("span"))));
          return line;
        }),
      );
    }
    paragraphs.forEach(({ pieces }, i) =>
      pieces.forEach(({ text, field, label, now: value, low, high }, k) => {
        const piece = part("text").children[i].children[k];
        write(piece, text);
        if (!field) return;
        for (const [name, said] of Object.entries({ "aria-label": label, "aria-valuetext": text, "aria-valuenow": value, "aria-valuemin": low, "aria-valuemax": high })) piece.setAttribute(name, String(said));
      }),
    );
  }

  /** @param {Story["curve"]} curve */
  function draw(curve) {
    hide(part("curve"), !curve);
    if (!curve) return;
    part("curve").querySelector("svg").setAttribute("aria-label", curve.said);
    part("line").setAttribute("d", curve.path);
    part("dot").setAttribute("cy", String(curve.tip));
    part("edge").style.setProperty("--tip", String(curve.tip / 60));
    for (const name of /** @type {const} */ (["root", "edge", "gas"])) write(part(name), curve[name]);
  }

  /** @param {Story["bars"]} bars */
  function fillBars(bars) {
    hide(part("bars"), bars.length === 0);
    part("bars").replaceChildren(
      ...bars.map(({ label, share, said }) => {
        const row = document.createElement("li");
        const name = document.createElement("span");
        const bar = document.createElementNS(SVG, "svg");
        const rect = document.createElementNS(SVG, "rect");
        const value = document.createElement("b");
        name.textContent = label;
        value.textContent = said;
        bar.setAttribute("viewBox", "0 0 100 10");
        bar.setAttribute("preserveAspectRatio", "none");
        bar.setAttribute("aria-hidden", "true");
        rect.setAttribute("width", String(share * 100));
        rect.setAttribute("height", "10");
        bar.append(rect);
        row.append(name, bar, value);
        return row;
      }),
    );
  }

  async function fill() {
    const { document } = design;
    if (!on || !document) return;
    const reply = await act.latest("stories", "stories", { document, story: told, shop: act.shop() });
    if (!reply || !on) return;
    const asked = told;
    told ||= reply.stories[0].id;
    part("which").replaceChildren(
      ...(part("which").childElementCount === reply.stories.length ? part("which").children : reply.stories.map(choice)),
    );
    for (const press of part("which").children) press.setAttribute("aria-pressed", String(press.dataset.story === told));
    const story = reply.stories.find(({ id }) => id === told);
    if (!story) return;
    if (story.paragraphs.length === 0) {
      if (!asked) return fill(); // now it is known which
      return; // of a tube that cannot be computed the last words stand
    }
    sentences(story.paragraphs);
    draw(story.curve);
    fillBars(story.bars);
    winding.show(story.winding);
  }

  /** @param {Story} story */
  function choice({ id, title, section }) {
    const press = document.createElement("button");
    press.type = "button";
    press.dataset.story = id;
    press.dataset.testid = `story-${id}`;
    press.textContent = title;
    press.addEventListener("click", () => {
      told = id;
      act.section(section);
      fill();
    });
    return press;
  }

  return {
    async show() {
      on = true;
      await fill();
    },
    rest() {
      on = false;
      winding.stop();
    },
    shown: fill,
  };
}
