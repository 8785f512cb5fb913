// @ts-check
// Runs in the drawing's frame: starts the program that paints there.

import { asset } from "./assets.js";
import { compile, start } from "./loader.js";

// Ebitengine asks for animation frames without end, also when nothing is to be painted. Here it gets one for each
// message and each change of size, so that a drawing at rest costs nothing; and at once, so that what is painted goes
// out with the frame under way.
/** @type {FrameRequestCallback | null} */
let waiting = null;
let wanted = 2; // it starts with two

globalThis.requestAnimationFrame = (callback) => {
  waiting = callback;
  next();
  return 0;
};

function next() {
  if (!waiting || wanted === 0) return;
  wanted--;
  const callback = waiting;
  waiting = null;
  // Not before the program itself has heard the message.
  setTimeout(() => callback(performance.now()));
}

function want() {
  wanted = 1;
  next();
}

addEventListener("message", want);
addEventListener("resize", want);

// Ebitengine asks for gamepads in every frame, which costs milliseconds. The drawing takes no input.
Object.defineProperty(navigator, "getGamepads", { value: () => [] });

// Ebitengine reads the device's pixel ratio once.
matchMedia(`(resolution: ${devicePixelRatio}dppx)`).addEventListener("change", () => location.reload());

start(await compile(asset("canvas.wasm.gz")));
