// @ts-check
// A grid by mouse, pen or finger: a press takes a cell in hand, a pull the block from there on; twice, or a tap on the cell in hand, edits it.

/** @typedef {import("./moves.js").Place} Place */

/**
 * @param {HTMLElement} host
 * @param {ReturnType<typeof import("./selection.js").createSelection>} hand
 * @param {{go: (to: Place, further: boolean) => void, begin: () => void, finish: () => void, editing: () => boolean}} act
 */
export function listenToPointer(host, hand, { go, begin, finish, editing }) {
  /** @param {Event} event @returns {Place | null} */
  function pointedAt(event) {
    const cell = event.target instanceof Element && event.target.closest('[role="gridcell"]');
    if (!cell) return null;
    const [row, column] = cell.id.slice(host.id.length + 1).split("-").map(Number);
    return { row, column };
  }
  host.addEventListener("pointerdown", (event) => {
    const to = pointedAt(event);
    if (!to || event.button) return;
    const again = to.row === hand.at.row && to.column === hand.at.column && document.activeElement === host;
    finish();
    host.focus({ preventScroll: true });
    go(to, event.shiftKey);
    if (again && event.pointerType !== "mouse") begin();
    event.preventDefault(); // the focus stays where it was put
  });
  host.addEventListener("pointerover", (event) => {
    const to = event.pointerType === "mouse" && event.buttons === 1 && !editing() && pointedAt(event);
    if (to) go(to, true);
  });
  host.addEventListener("dblclick", (event) => pointedAt(event) && begin());
}
