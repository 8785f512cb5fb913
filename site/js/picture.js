// @ts-check
// The drawing as the engine's SVG, while nothing else paints it.

/**
 * @param {HTMLElement} root
 * @param {() => Promise<string | null>} requestSVG
 */
export function createPicture(root, requestSVG) {
  root.classList.add("as-picture");
  /** @type {Element | null} */
  let picture = null;
  let ended = false;

  /** @param {import("./api.js").Scene} scene @param {import("./overlay.js").Transform} t */
  function zoomTo(scene, { k, x, y }) {
    if (!picture) return;
    const perPixel = scene.width / (root.clientWidth * k);
    picture.setAttribute("viewBox", `${-x * perPixel} ${-y * perPixel} ${scene.width / k} ${scene.height / k}`);
  }

  return {
    zoomTo,
    /** @param {import("./api.js").Scene} scene @param {import("./overlay.js").Transform} transform */
    async show(scene, transform) {
      const drop = () => picture?.remove(); // none is better than another tube's
      const text = await requestSVG().catch((error) => {
        drop();
        throw error;
      });
      if (!text || ended) return;
      drop();
      const next = document.importNode(new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true);
      next.classList.add("picture");
      next.removeAttribute("width");
      next.removeAttribute("height");
      next.setAttribute("aria-hidden", "true");
      root.prepend(next);
      picture = next;
      zoomTo(scene, transform);
      root.dispatchEvent(new CustomEvent("painted"));
    },
    end() {
      ended = true;
      picture?.remove();
      root.classList.remove("as-picture");
    },
  };
}
