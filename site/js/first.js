// @ts-check
// What cannot wait for the page: its theme, so that a chosen one never flashes in the other; the engine, which loads while
// the page is read and laid out; and that somebody says so when a script of the page fails to come. The build writes it so
// that browsers can read it which cannot read the rest; for one that is older still, the page says by itself that
// nothing has begun.

import { single } from "./assets.js";
import { whyMissing } from "./loader.js";
import { show, solved } from "./trouble.js";
import { prepareWorker } from "./worker.js";

try {
  const theme = localStorage.getItem("finwright.theme");
  if (theme) document.documentElement.dataset.theme = theme;
} catch {
  // Storage is barred: the theme follows the system.
}

addEventListener(
  "error",
  async ({ target, error }) => {
    if (target instanceof HTMLScriptElement) show("page", await whyMissing());
    else if (target instanceof HTMLLinkElement && target.rel === "stylesheet") show("part", await whyMissing());
    else if (error instanceof SyntaxError && globalThis.begun.worker) show("page", "old"); // nobody took it: the page's script does not run
  },
  true,
);

if (location.protocol === "file:" && !single) show("page", "disk");
else prepareWorker(WORKER);

document.documentElement.dataset.begun = "";
solved("begin");
