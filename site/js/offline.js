// @ts-check
// Keeps the page for use without a network, and offers a newer build when all of it is there. Browsers allow it only over
// https and on localhost.

import { root, single } from "./assets.js";

const family = `finwright ${root.pathname} `;
const build = document.querySelector('meta[name="finwright-build"]')?.getAttribute("content");
const able = !single && window.isSecureContext && "serviceWorker" in navigator && Boolean(navigator.locks);

const SOON = 15000; // ms until a newer build that has been asked for is left to the next visit

/**
 * Call it at once: it holds the copy that the page comes from.
 * @param {HTMLElement} offer holds a text and a button, which leads to the newer build
 */
export function createOffline(offer) {
  /** @type {ServiceWorkerRegistration | null} */ let registration = null;
  const [text, button] = /** @type {NodeListOf<HTMLElement>} */ (offer.querySelectorAll("span, button"));
  /** @param {string | undefined} said @param {boolean} press whether it is to be had now */
  function say(said, press) {
    text.textContent = said ?? "";
    button.hidden = !press;
    offer.hidden = false;
  }
  const show = () => say(offer.dataset.ready, true);
  let reloading = false;
  function reload() {
    if (!reloading) location.reload();
    reloading = true;
  }

  if (able) {
    navigator.locks.request(family + build, { mode: "shared" }, () => new Promise(() => {})).catch(() => {}); // as long as the page is open: sw.js
    let controlled = navigator.serviceWorker.controller !== null;
    navigator.serviceWorker.addEventListener("controllerchange", () => {
      if (controlled) show(); // another tab has taken the newer build
      controlled = true;
    });
  }

  button.addEventListener("click", () => {
    const next = registration?.waiting;
    if (!next) return reload();
    const signal = AbortSignal.timeout(SOON);
    // Either tells that it serves from now on.
    navigator.serviceWorker.addEventListener("controllerchange", reload, { signal });
    next.addEventListener("statechange", () => next.state === "activated" && reload(), { signal });
    signal.addEventListener("abort", () => say(offer.dataset.later, false)); // a reload by itself would come at a bad time
    next.postMessage("");
  });

  function ready() {
    if (registration?.waiting && registration.active) show(); // a first copy has none before it
  }

  return {
    /** Call it when the page is drawn, so that keeping a copy never delays the first one. */
    async keep() {
      if (!able) return;
      registration = await navigator.serviceWorker.register(new URL("sw.js", root), { updateViaCache: "none" }).catch(() => null); // barred: the page is as good without a copy
      if (!registration) return;
      registration.addEventListener("updatefound", () => registration?.installing?.addEventListener("statechange", ready));
      registration.installing?.addEventListener("statechange", ready);
      ready();
      // A page that stays open for days asks when it is looked at again.
      document.addEventListener("visibilitychange", () => {
        if (!document.hidden) registration?.update().catch(() => {}); // without a network there is nothing newer
      });
    },
  };
}
