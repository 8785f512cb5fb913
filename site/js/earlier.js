// @ts-check
// The list of earlier work, of designs or of shops, from which one is gone back to or saved as a file.

import { EngineError } from "./engine.js";
import { earlier, earlierText } from "./store/earlier.js";

/** @typedef {import("./store/earlier.js").Head} Head */

/**
 * @param {HTMLDialogElement} dialog
 * @param {{shown: () => Promise<void>, save: (text: string, head: Head) => void}} act shown: has put aside what is in hand
 */
export function createEarlier(dialog, { shown, save }) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [list, said, row] = ["earlier-list", "earlier-said", "earlier-row"].map(at);
  /** @type {Intl.DateTimeFormat} */ let when; // made when it is needed: that takes longer than most of the page's start

  /** @param {Head} head @param {(text: string) => Promise<unknown>} take */
  function item(head, take) {
    const made = row.content.firstElementChild.cloneNode(true);
    const part = (/** @type {string} */ name) => made.querySelector(`[data-part="${name}"]`);
    made.dataset.work = head.id;
    part("name").textContent = head.name || list.dataset.unnamed;
    part("time").textContent = when.format(new Date(head.time));
    part("time").dateTime = head.time;
    part("version").textContent = list.dataset.version.replace("{version}", head.version);
    part("unread").hidden = !head.unread;
    part("picture").hidden = !head.picture;
    if (head.picture) part("picture").src = `data:image/svg+xml,${encodeURIComponent(head.picture)}`;
    const press = (/** @type {string} */ name, /** @type {(text: string) => Promise<void>} */ act) =>
      part(name).addEventListener("click", async () => act(await earlierText(head.id)));
    press("take", async (text) => {
      try {
        await take(text);
        dialog.close();
      } catch (error) {
        if (!(error instanceof EngineError)) throw error;
        said.textContent = error.message;
      }
    });
    press("save", async (text) => save(text, head));
    return made;
  }

  at("earlier-close").addEventListener("click", () => dialog.close());

  return {
    /** @param {Head["kind"]} kind @param {(text: string) => Promise<unknown>} take */
    async open(kind, take) {
      when ??= new Intl.DateTimeFormat(document.documentElement.lang, { dateStyle: "medium", timeStyle: "short" });
      said.textContent = "";
      list.replaceChildren();
      dialog.showModal();
      try {
        await shown();
        list.replaceChildren(...(await earlier(kind)).map((head) => item(head, take)));
        said.textContent = list.childElementCount ? "" : list.dataset.none;
      } catch {
        said.textContent = list.dataset.failed;
      }
    },
  };
}
