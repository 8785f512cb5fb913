// @ts-check
// Says that an answer takes long, and lets it be given up.

/**
 * @param {HTMLElement} root holds a button
 * @param {() => void} onStop
 */
export function createBusy(root, onStop) {
  root.querySelector("button")?.addEventListener("click", onStop);
  return {
    /** @param {boolean} slow */
    show(slow) {
      root.hidden = !slow;
    },
  };
}
