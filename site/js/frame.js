// @ts-check
// Runs in the drawing's frame: starts the program that paints there.

import { asset } from "./assets.js";
import { compile } from "./loader.js";
import { start } from "./program.js";

// Ebitengine asks for animation frames without end, also when nothing is to be painted. Here it gets one for each scene
// and each change of size, so that a drawing at rest costs nothing; and at once, so that what is painted goes out with the
// rest of the page and no frame is drawn twice.
/** @type {FrameRequestCallback | null} */
let waiting = null;
let wanted = 2; // it starts with two

globalThis.requestAnimationFrame = (callback) => {
  waiting = callback;
  if (wanted > 0) setTimeout(next); // not within the program's own call
  return 0;
};

function next() {
  if (!waiting || wanted === 0) return;
  wanted--;
  const callback = waiting;
  waiting = null;
  callback(performance.now());
}

function want() {
  wanted = 1;
  next();
}

/** Called by the page around this frame. @param {object} scene */
globalThis.paint = (scene) => {
  if (!globalThis.take) return; // the program is not there yet
  globalThis.take(scene);
  want();
};

addEventListener("resize", want);

// Ebitengine asks for gamepads in every frame, which costs milliseconds. The drawing takes no input.
Object.defineProperty(navigator, "getGamepads", { value: () => [] });

// Ebitengine reads the device's pixel ratio once.
matchMedia(`(resolution: ${devicePixelRatio}dppx)`).addEventListener("change", () => location.reload());

// Whatever breaks here is the page's to make up for.
const failed = () => window.frameElement?.dispatchEvent(new Event("failed"));
addEventListener("error", failed);
addEventListener("unhandledrejection", failed);
document.addEventListener("webglcontextlost", failed, true);

compile(asset("canvas.wasm.gz")).then(start); // as a plain script it has nobody to wait for it
