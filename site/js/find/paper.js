// @ts-check
// A search on paper: what core tells of it, and the picture as it stands on the page.

import { layOut } from "../papers/blocks.js";

/** @param {HTMLElement} host @param {import("../api.js").Paper} paper @param {SVGElement} picture @param {() => Promise<void>} print */
export function printOn(host, paper, picture, print) {
  layOut(host, paper);
  const copy = /** @type {SVGElement} */ (picture.cloneNode(true));
  for (const name of ["tabindex", "role", "aria-describedby", "data-testid"]) copy.removeAttribute(name);
  for (const mark of copy.querySelectorAll(".here")) mark.classList.remove("here");
  host.querySelector("figure")?.prepend(copy);
  document.body.dataset.printing = "find";
  const printed = new AbortController();
  const { signal } = printed;
  const foot = () => document.documentElement.style.setProperty("--foot-name", JSON.stringify(paper.foot));
  addEventListener("beforeprint", foot, { signal }); // behind the page's own, which names the design
  const over = () => {
    printed.abort();
    delete document.body.dataset.printing;
    host.replaceChildren();
  };
  for (const name of ["afterprint", "pointerdown", "keydown"]) addEventListener(name, over, { signal }); // some browsers go on while they print
  return print();
}
