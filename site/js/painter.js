// @ts-check
// The page's side of the frame in which the drawing is painted. It may load anew at any time: then it gets everything again.

import { asset, read, single } from "./assets.js";

const PATIENCE = 30000; // ms until a frame that does not answer is given up
const TONES = ["paper", "ink", "grey"];

/** @param {HTMLElement} root */
export function createPainter(root) {
  const frame = document.createElement("iframe");
  frame.className = "paint";
  frame.tabIndex = -1;
  frame.setAttribute("aria-hidden", "true");
  /** @type {Record<string, any>} */
  const last = { transform: { k: 1, x: 0, y: 0 }, theme: colours(root) };
  let coming = false; // it has been asked for and has not answered
  let timer = 0;

  /** Its time counts from when there is something to paint. */
  function watch() {
    if (coming && last.ink) timer ||= window.setTimeout(fail, PATIENCE);
  }

  /** Paints before it returns. @param {Record<string, any>} scene what has changed of it */
  function send(scene) {
    Object.assign(last, scene);
    watch();
    try {
      /** @type {any} */ (frame.contentWindow)?.paint?.(scene); // one that is still loading asks for all when it is ready
    } catch (error) {
      console.error(error);
      fail();
    }
  }

  /** What has failed is not tried again before the next visit: the picture shows the same. */
  function fail() {
    arrived();
    frame.remove();
    root.dispatchEvent(new CustomEvent("unpainted"));
  }

  function arrived() {
    coming = false;
    clearTimeout(timer);
  }

  frame.addEventListener("failed", fail);
  frame.addEventListener("ready", () => {
    arrived();
    send(last);
  });
  frame.addEventListener("painted", () => {
    if (!last.ink) return;
    frame.classList.add("painted");
    root.dispatchEvent(new CustomEvent("painted"));
  });

  return {
    send,
    repaint: () => send({ theme: colours(root) }),

    /** Loads the frame. @returns {Promise<boolean>} whether it has painted, or never will */
    start: () =>
      new Promise((resolve) => {
        if (!canPaint()) return resolve(false);
        root.addEventListener("unpainted", () => resolve(false));
        root.addEventListener("painted", () => frame.classList.contains("painted") && resolve(true));
        if (single) frame.srcdoc = read("drawing.html");
        else frame.src = asset("drawing.html");
        root.prepend(frame);
        coming = true;
        watch();
      }),
  };
}

function canPaint() {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}

/** @param {HTMLElement} root */
function colours(root) {
  const style = getComputedStyle(root);
  return Object.fromEntries(TONES.map((tone) => [tone, style.getPropertyValue(`--${tone}`)]));
}
