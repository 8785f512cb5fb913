// @ts-check
// The drawing: a painted sheet, and over it the texts and grips. A picture stands in for the sheet until the program that
// paints has come, and for good where nothing can paint.

import { createGrips } from "./grips.js";
import { element, PX_PER_MM } from "./overlay.js";
import { createPainter } from "./painter.js";
import { createPan } from "./pan.js";
import { createPicture } from "./picture.js";
import { createTraced } from "./traced.js";
import { createWords } from "./words.js";

const LEGIBLE = 0.8; // of its size, of a drawing made for another sheet: smaller, its texts would lie on one another
const SAME = 0.99; // the same: smaller, it is no longer to the scale that it says
const NO_FIN = -1; // only while the pitch is pulled must its grip stay at one fin

/**
 * @param {HTMLElement} root
 * @param {{
 *   onPull: (values: import("./grips.js").Value[], event: Event) => void,
 *   onRelease: (values: import("./grips.js").Value[], event: Event) => void,
 *   onCancel: () => void,
 *   onRest: () => void,
 *   requestSVG: () => Promise<string | null>,
 *   onFailure: (error: Error) => void,
 *   above: HTMLElement[],
 *   controls: Element,
 *   onTransform?: (transform: import("./overlay.js").Transform) => void,
 * }} page  requestSVG gives the last scene as a picture, or null if a newer one is on its way
 */
export function createDrawing(root, page) {
  root.classList.add("drawing");
  const overlay = /** @type {SVGSVGElement} */ (element("svg", { class: "overlay", tabindex: 0, role: "group" }));
  overlay.setAttribute("aria-label", root.closest("[aria-label]")?.getAttribute("aria-label") ?? "");
  const words = /** @type {SVGElement} */ (element("g", { class: "words" }));
  const handles = element("g", { class: "grips" });
  overlay.append(words, handles);
  root.append(overlay);

  /** @type {import("./api.js").Scene | null} */ let scene = null;
  /** @type {ReturnType<typeof createPicture> | null} */ let picture = createPicture(root, page.requestSVG);
  const showWords = createWords(words, page.controls);
  const grips = createGrips(handles, { ...page, onChange: placeOverlay, onHold });
  const traced = createTraced(root);
  /** @type {import("./api.js").Scales | undefined} */ let kept; // by a press, until the next one
  const painter = createPainter(root);
  const pan = createPan(overlay, (transform) => {
    placeOverlay();
    traced.hide(); // it lies as the sheet lay
    painter.send({ transform });
    if (scene) picture?.zoomTo(scene, transform);
    page.onTransform?.(transform);
  });

  root.addEventListener("painted", traced.hide);

  // The painter has died: the picture takes its place again.
  root.addEventListener("unpainted", () => {
    if (picture) return;
    picture = createPicture(root, page.requestSVG);
    if (scene) picture.show(scene, pan.transform()).catch(page.onFailure);
  });

  /** Its room keeps its size and place under the hand, whatever the lines above it come to say. @param {boolean} held */
  function onHold(held) {
    const { width, height } = root.getBoundingClientRect();
    Object.assign(root.style, held ? { width: `${width}px`, height: `${height}px` } : { width: "", height: "" });
    for (const line of page.above) Object.assign(line.style, held ? { height: `${line.getBoundingClientRect().height}px`, overflow: "hidden" } : { height: "", overflow: "" });
  }

  /** Places what lies over the sheet. */
  function placeOverlay() {
    if (!scene) return;
    showWords(scene, pan.transform(), grips.pulled());
    grips.show(scene, pan.transform());
  }

  return {
    /** @param {import("./api.js").Scene} next */
    show(next) {
      const resized = scene && (scene.width !== next.width || scene.height !== next.height);
      scene = next;
      if (scene.traces) traced.show(scene.traces, devicePixelRatio);
      else {
        painter.send({ ink: scene.ink });
        picture?.show(scene, pan.transform()).catch(page.onFailure);
      }
      if (resized) pan.keep();
      else placeOverlay();
    },
    /**
     * A drawing that was made before, for a sheet of another size perhaps: then it is fitted in, without the texts that no longer hold or fit.
     * @param {import("./api.js").Scene} made @param {{width: number, height: number}} room
     */
    foresee(made, room) {
      if (scene) return;
      const [wide, high] = [made.width * PX_PER_MM, made.height * PX_PER_MM];
      const k = Math.min(room.width / wide, room.height / high, 1);
      const t = { k, x: (room.width - wide * k) / 2, y: (room.height - high * k) / 2 };
      const texts = made.texts.filter(({ class: kind }) => k > LEGIBLE && (k > SAME || kind !== "scale"));
      showWords({ ...made, texts }, t, "");
      traced.show(made.traces ?? [], 1, t);
    },
    /** What was foreseen holds no longer. */
    forget() {
      if (scene) return;
      traced.hide();
      words.replaceChildren();
    },
    /** Loads the program that paints; true when it has taken over from the picture. */
    async loadPainter() {
      if (!(await painter.start())) return false;
      picture?.end();
      picture = null;
      return true;
    },
    /** Colours have changed. */
    setTheme() {
      painter.repaint();
      if (scene && !scene.traces) picture?.show(scene, pan.transform()).catch(page.onFailure);
    },
    /**
     * The sheet as the engine is to draw on it: what is held keeps its scales, and while a grip is pulled what is painted waits.
     * @param {{width: number, height: number}} size @param {boolean} dark
     */
    area(size, dark) {
      const pulled = grips.hold();
      const hold = pulled ?? grips.stepped() ?? kept;
      return { ...size, ...(hold && { hold }), ...(pulled && { traced: { ...pan.transform(), ratio: devicePixelRatio, dark } }) };
    },
    /** Keeps the scales that are shown whatever the tube, or lets them go. @param {boolean} on */
    holdScale(on) {
      kept = on && scene ? { ...scene.scales, fin: NO_FIN } : undefined;
    },
    zoomIn: pan.zoomIn,
    zoomOut: pan.zoomOut,
    fit: pan.fit,
  };
}
