// @ts-check
// What the differences are in words, and a sentence of each to send.

import { hide, keyed, write } from "../keyed.js";
import { roleOf } from "./heads.js";

/**
 * @param {HTMLElement} list
 * @param {HTMLElement} root holds the words
 * @param {() => Promise<void>} renew what leaves is of what is entered
 * @param {(text: string) => void} copy
 */
export function createSaid(list, root, renew, copy) {
  const show = keyed(list, () => {
    const item = document.createElement("li");
    const [name, sentence, followed, send, instead] = ["b", "p", "ul", "p", "span"].map((tag) => document.createElement(tag));
    const press = document.createElement("button");
    press.type = "button";
    press.textContent = list.dataset.copy ?? "";
    press.addEventListener("click", async () => {
      await renew();
      if (!send.hidden) copy(instead.textContent ?? "");
    });
    followed.className = "cautions";
    send.append(instead, " ", press);
    item.append(name, sentence, followed, send);
    return item;
  });

  /** @param {HTMLElement} item @param {import("./heads.js").Column} column */
  function fill(item, { id, given, said, followed, instead, outside }) {
    const [name, sentence, list, send] = /** @type {HTMLElement[]} */ ([...item.children]);
    write(name, [roleOf(root, id), given].filter(Boolean).join(": "));
    write(sentence, [said, outside].filter(Boolean).join(" "));
    list.replaceChildren(...followed.map((one) => Object.assign(document.createElement("li"), { textContent: one })));
    write(send.children[0], instead);
    hide(send, !instead);
  }

  return (/** @type {import("./heads.js").Column[]} */ columns) => show(columns.filter(({ said }) => said), fill);
}
