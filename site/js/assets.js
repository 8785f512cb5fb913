// @ts-check
// The build serves every file under a name that changes with its content, and lists the names in the head of each page. A page that is
// one file holds them itself, as text (single/compose.js); its drawing's frame, which is written into it, looks there too.

const page = document.URL === "about:srcdoc" ? parent.document : document;
const meta = /** @type {HTMLMetaElement} */ (page.querySelector('meta[name="finwright-assets"]'));

/** @type {Record<string, string>} */
const served = JSON.parse(meta.content);

/** Whether the page is one file, all of it. */
export const single = page.documentElement.dataset.single !== undefined;

/** Whether this page has such a file. @param {string} name */
export const has = (name) => name in served;

/** The folder of the build: the page of another language than English lies in a folder of it. */
export const root = new URL(document.documentElement.dataset.root ?? "./", document.baseURI);

/**
 * Full address of a file named as in the sources, such as "engine.wasm.gz".
 * @param {string} name
 */
export function asset(name) {
  const file = servedName(name);
  if (single) return (held[name] ??= URL.createObjectURL(new Blob([bytesOf(name)])));
  return new URL(file, document.baseURI).href;
}

/** The name that a file is served under, without its folder: it changes with the content. @param {string} name */
export const versionOf = (name) => servedName(name).split("/").pop() ?? "";

/** @param {string} name */
function servedName(name) {
  if (!(name in served)) throw new Error(`no such asset: ${name}`);
  return served[name];
}

/** @type {Record<string, string>} addresses of what was asked for */ const held = {};

/** What a page that is one file holds of a name. @param {string} name */
export function textIn(name) {
  return page.querySelector(`script[data-part="${name}"]`)?.textContent ?? "";
}

/** A part that is text itself. @param {string} name */
export const read = (name) => new TextDecoder().decode(bytesOf(name));

/** @param {string} name */
function bytesOf(name) {
  const letters = atob(textIn(name));
  const bytes = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; i++) bytes[i] = letters.charCodeAt(i);
  return bytes;
}
