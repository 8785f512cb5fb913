// Puts the page together as one file: node single.js shell into, then name and file of each part
import { readFileSync, writeFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { compose } from "../js/single/compose.js";

const [shell, into, ...named] = process.argv.slice(2);
const parts = new Map();
for (let i = 0; i < named.length; i += 2) parts.set(named[i], new Uint8Array(readFileSync(named[i + 1])));
writeFileSync(into, compose(gunzipSync(readFileSync(shell)).toString("utf8"), parts).join(""));
