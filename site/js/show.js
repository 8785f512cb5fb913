// @ts-check
// The way of looking for a meeting: the whole screen, the drawing, and few figures large enough to be read across a table.

/**
 * @param {HTMLElement} root
 * @param {{leave: () => void}} act
 * @returns {import("./ways.js").Way}
 */
export function createShow(root, act) {
  root.querySelector("#show-leave")?.addEventListener("click", act.leave);
  let ours = false; // the whole screen was taken for this

  // Whoever gives the screen back with the browser's own key wants to leave.
  document.addEventListener("fullscreenchange", () => {
    if (!document.fullscreenElement && ours) act.leave();
    ours = document.fullscreenElement !== null && ours;
  });

  return {
    enter() {
      root.focus({ preventScroll: true });
      if (document.fullscreenElement || !document.fullscreenEnabled) return;
      document.documentElement.requestFullscreen().then(
        () => (ours = true),
        () => {}, // a window is enough
      );
    },
    leave() {
      if (ours) document.exitFullscreen().catch(() => {});
      ours = false;
    },
  };
}
