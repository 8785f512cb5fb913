// @ts-check
// Puts the page together as one file: a shell (build/single.go) that has a place for each part, which is filled with the part's bytes as
// text, and one for what it carries. The build does it too, so nothing of a browser's is used here but what both have.

const place = /(<script type="application\/octet-stream" data-part="([^"]+)">)(<\/script>)/g;
const carries = '<script type="text/plain" data-part="carried"></script>';
const WORD = /^[\w=-]*$/; // of a link: nothing of it can be taken for markup

/** Names of the parts that a shell has places for. @param {string} shell */
export const partsOf = (shell) => Array.from(shell.matchAll(place), ([, , name]) => name);

/**
 * @param {string} shell
 * @param {Map<string, Uint8Array>} parts
 * @param {string} [carried] what a link has after its #
 * @returns {string[]} the file, in pieces: each part is long
 */
export function compose(shell, parts, carried = "") {
  if (!WORD.test(carried)) throw new Error("what is carried is no link");
  if (!shell.includes(carries)) throw new Error("the shell has no place for what is carried");
  const told = shell.replace(carries, carries.replace("><", `>${carried}<`));
  const pieces = [];
  let from = 0;
  for (const found of told.matchAll(place)) {
    const bytes = parts.get(found[2]);
    if (!bytes) throw new Error(`the page has no ${found[2]}`);
    const at = found.index + found[1].length;
    pieces.push(told.slice(from, at), base64(bytes));
    from = at;
  }
  return [...pieces, told.slice(from)];
}

const CHUNK = 3 * (1 << 13); // bytes: a whole number of threes, so that only the last piece is filled up

/** @param {Uint8Array} bytes */
function base64(bytes) {
  let text = "";
  for (let i = 0; i < bytes.length; i += CHUNK) text += btoa(String.fromCharCode(...bytes.subarray(i, i + CHUNK)));
  return text;
}
