// @ts-check
// Keeps the page for use without a network. Browsers allow it only over https and on localhost.

/** Call it when the page is drawn, so that keeping a copy never delays the first one. */
export function keepOffline() {
  if (window.isSecureContext && "serviceWorker" in navigator) navigator.serviceWorker.register("sw.js");
}
