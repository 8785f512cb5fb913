// @ts-check
// What cannot wait for the page: its theme, so that a chosen one never flashes in the other, and the engine, which loads
// while the page is read and laid out.

import { prepareWorker } from "./worker.js";

try {
  const theme = localStorage.getItem("finwright.theme");
  if (theme) document.documentElement.dataset.theme = theme;
} catch {
  // Storage is barred: the theme follows the system.
}

prepareWorker();
