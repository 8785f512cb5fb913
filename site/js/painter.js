// @ts-check
// The page's side of the frame in which the drawing is painted. It may load anew at any time: then it gets everything again.

const PATIENCE = 30000; // ms until a frame that does not answer is given up
const TONES = ["paper", "ink", "grey"];

/**
 * @param {HTMLElement} root
 * @param {() => void} onFailure the frame cannot paint
 */
export function createPainter(root, onFailure) {
  const frame = document.createElement("iframe");
  frame.className = "paint";
  frame.tabIndex = -1;
  frame.setAttribute("aria-hidden", "true");
  /** @type {Record<string, any>} */
  const last = { transform: { k: 1, x: 0, y: 0 }, theme: colours(root) };

  /** Paints before it returns. @param {Record<string, any>} scene what has changed of it */
  function send(scene) {
    Object.assign(last, scene);
    /** @type {any} */ (frame.contentWindow)?.paint?.(scene); // one that is still loading asks for all when it is ready
  }

  function give() {
    clearTimeout(timer);
    frame.remove();
    onFailure();
  }

  frame.addEventListener("ready", () => {
    clearTimeout(timer);
    send(last);
  });
  frame.addEventListener("painted", () => {
    if (!last.ink) return;
    frame.classList.add("painted");
    root.dispatchEvent(new CustomEvent("painted"));
  });

  const timer = setTimeout(give, PATIENCE);
  if (canPaint()) {
    frame.src = "drawing.html";
    root.prepend(frame);
  } else {
    queueMicrotask(give);
  }

  return { send, repaint: () => send({ theme: colours(root) }) };
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
