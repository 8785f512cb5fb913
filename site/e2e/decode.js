// Reads the code in a picture: node decode.js FILE, of a plain pixmap in three bytes a pixel, as pdftoppm writes it.
import { readFileSync } from "node:fs";
import jsQR from "jsqr";

const file = readFileSync(process.argv[2]);
const [head, width, height] = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 60).toString("latin1"));
const pixels = new Uint8ClampedArray(width * height * 4);
for (let from = head.length, to = 0; to < pixels.length; from += 3, to += 4) pixels.set([file[from], file[from + 1], file[from + 2], 255], to);
console.log((jsQR.default ?? jsQR)(pixels, Number(width), Number(height))?.data ?? "");
