// @ts-check
// A text in squares that a camera reads.

import { encode } from "uqr";

const EDGE = 4; // squares of paper about it
const SVG = "http://www.w3.org/2000/svg";

/** @param {string} text */
export function codeOf(text) {
  const { data, size } = encode(text, { ecc: "M", border: EDGE, maxVersion: 6 });
  const picture = document.createElementNS(SVG, "svg");
  picture.setAttribute("viewBox", `0 0 ${size} ${size}`);
  picture.style.setProperty("--squares", String(size));
  const path = document.createElementNS(SVG, "path");
  path.setAttribute("d", data.map((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : "")).join("")).join(""));
  picture.append(path);
  return picture;
}
