// @ts-check
// What the page was opened to show: a link has it in the address, a page that is one file in itself. Either was written by somebody else: it
// is read as a link is.

import { textIn } from "./assets.js";
import { dropFragment, fragment } from "./links.js";
import { read, write } from "./store/local.js";

const TAKEN = "finwright.taken"; // key of what the file carried and this tab has done with

export function brought() {
  const carried = textIn("carried");
  return fragment() || (carried !== read(TAKEN, "sessionStorage") ? carried : "");
}

/** It is not opened again by a reload, so that this does not undo later work. @param {string} carried */
export function drop(carried) {
  dropFragment(carried);
  if (carried === textIn("carried")) write(TAKEN, carried, "sessionStorage");
}
