// @ts-check
// Zoom and pan of the sheet. A plain wheel scrolls the page unless the drawing has the focus; with Ctrl it zooms.

const CLOSEST = 12;
const STEP = 1.3;

/**
 * @param {SVGElement} overlay
 * @param {(transform: import("./overlay.js").Transform) => void} onChange
 */
export function createPan(overlay, onChange) {
  let t = { k: 1, x: 0, y: 0 };
  /** @type {Map<number, PointerEvent>} */
  const pointers = new Map();

  /** The sheet always covers its place. @param {number} k @param {number} x @param {number} y */
  function set(k, x, y) {
    const { width, height } = overlay.getBoundingClientRect();
    k = Math.min(CLOSEST, Math.max(1, k));
    t = { k, x: Math.min(0, Math.max(width * (1 - k), x)), y: Math.min(0, Math.max(height * (1 - k), y)) };
    overlay.classList.toggle("zoomed", k > 1);
    onChange(t);
  }

  /** Zooms by f with the place under the pointer held. @param {number} f @param {{clientX: number, clientY: number}} [at] */
  function zoom(f, at) {
    const { left, top, width, height } = overlay.getBoundingClientRect();
    const x = at ? at.clientX - left : width / 2;
    const y = at ? at.clientY - top : height / 2;
    const k = Math.min(CLOSEST, Math.max(1, t.k * f));
    set(k, x - ((x - t.x) * k) / t.k, y - ((y - t.y) * k) / t.k);
  }

  overlay.addEventListener(
    "wheel",
    (event) => {
      if (!event.ctrlKey && !overlay.contains(document.activeElement)) return;
      event.preventDefault();
      zoom(2 ** (-event.deltaY / (event.deltaMode === 1 ? 12 : 240)), event);
    },
    { passive: false },
  );

  overlay.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    pointers.set(event.pointerId, event);
    if (t.k > 1 || pointers.size > 1) overlay.setPointerCapture(event.pointerId);
  });
  overlay.addEventListener("pointermove", (event) => {
    const before = pointers.get(event.pointerId);
    if (!before) return;
    const others = [...pointers.values()].filter((p) => p !== before);
    pointers.set(event.pointerId, event);
    if (others.length === 0) return void (t.k > 1 && set(t.k, t.x + event.clientX - before.clientX, t.y + event.clientY - before.clientY));
    const far = (/** @type {PointerEvent} */ p) => Math.hypot(p.clientX - others[0].clientX, p.clientY - others[0].clientY);
    if (far(before) > 0) zoom(far(event) / far(before), others[0]);
  });
  for (const end of ["pointerup", "pointercancel", "lostpointercapture"]) {
    overlay.addEventListener(end, (event) => pointers.delete(/** @type {PointerEvent} */ (event).pointerId));
  }

  const zoomIn = () => zoom(STEP);
  const zoomOut = () => zoom(1 / STEP);
  const fit = () => set(1, 0, 0);
  /** @type {Record<string, () => void>} */
  const keys = { "+": zoomIn, "=": zoomIn, "-": zoomOut, 0: fit };
  overlay.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || !keys[event.key]) return;
    event.preventDefault();
    keys[event.key]();
  });

  return { zoomIn, zoomOut, fit, transform: () => t, keep: () => set(t.k, t.x, t.y) };
}
