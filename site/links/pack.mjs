// Packs texts as the page does. Usage: node pack.mjs, a JSON list of texts on its input. Writes what each becomes, and what that unpacks to.
import { pack, unpack } from "../js/links.js";

let input = "";
for await (const part of process.stdin) input += part;
console.log(JSON.stringify(await Promise.all(JSON.parse(input).map(async (text) => ({ link: await pack(text), back: await unpack(await pack(text)) })))));
