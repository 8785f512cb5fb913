// @ts-check
// The shop's file, which all tabs share. Whoever writes over what another tab has written meanwhile keeps that too.

import { described, leave } from "./left.js";
import { newId, parsed, read, write } from "./local.js";

const SHOP = "finwright.shop";

let written = read(SHOP); // what this tab last saw there

/** What is kept: a record of this page, or the bare file that earlier versions kept. @param {string} kept */
function opened(kept) {
  const { shop = kept, id = newId(), revision = 0, time = new Date().toISOString() } = parsed(kept);
  return { shop, id, revision, time };
}

/** @param {ReturnType<typeof opened>} kept */
const asWork = ({ shop, ...more }) => described("shop", shop, more);

/** Empty: the one that ships. */
export const savedShop = () => opened(written).shop;

/** Names the shop as it was last written. */
export const shopMark = () => {
  const { id = "", revision = 0 } = parsed(written);
  return `${id} ${revision}`;
};

/**
 * @param {string} shop the file; empty: the one that ships
 * @param {boolean} whole it takes the place of the one before; else it is that one, changed
 * @returns {string} empty, or the name of a note
 */
export function keepShop(shop, whole) {
  const found = read(SHOP);
  const now = opened(found);
  const forked = found !== written;
  if (now.shop === shop) return "";
  const apart = forked || whole;
  const lost = apart && now.shop ? leave(asWork(now)) : "";
  if (lost) return lost;
  const text = JSON.stringify({ shop, id: apart ? newId() : now.id, revision: now.revision + 1, time: new Date().toISOString() });
  const failed = write(SHOP, text);
  if (!failed) written = text;
  return failed || (forked ? "shopForked" : "");
}

/** The shop in use; null when it is the one that ships. */
export function workedShop() {
  const now = opened(written);
  return now.shop && parsed(written).id ? asWork(now) : null;
}
