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
  let id = 0;
  let ready = false;
  /** @type {Record<string, any>} */
  const last = { transform: { k: 1, x: 0, y: 0 }, theme: colours(root) };

  /** @param {Record<string, any>} message */
  function send(message) {
    Object.assign(last, message);
    if (ready) frame.contentWindow?.postMessage({ type: "scene", id: ++id, ...message }, location.origin);
  }

  function give() {
    removeEventListener("message", hear);
    clearTimeout(timer);
    frame.remove();
    onFailure();
  }

  /** @param {MessageEvent} event */
  function hear({ source, origin, data }) {
    if (source !== frame.contentWindow || origin !== location.origin) return;
    if (data.type === "ready") {
      clearTimeout(timer);
      ready = true;
      send(last);
    }
    if (data.type === "painted" && last.ink && data.id > 0) {
      frame.classList.add("painted");
      root.dispatchEvent(new CustomEvent("painted", { detail: data.id }));
    }
  }

  const timer = setTimeout(give, PATIENCE);
  addEventListener("message", hear);
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
