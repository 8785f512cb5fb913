// @ts-check
// The build serves every file under a name that changes with its content, and lists the names in the head of each page.

const meta = /** @type {HTMLMetaElement} */ (document.querySelector('meta[name="finwright-assets"]'));

/** @type {Record<string, string>} */
const served = JSON.parse(meta.content);

/** Whether this page has such a file. @param {string} name */
export const has = (name) => name in served;

/** The folder of the build: the page of another language than English lies in a folder of it. */
export const root = new URL(document.documentElement.dataset.root ?? "./", document.baseURI);

/**
 * Full address of a file named as in the sources, such as "engine.wasm.gz".
 * @param {string} name
 */
export function asset(name) {
  if (!(name in served)) throw new Error(`no such asset: ${name}`);
  return new URL(served[name], document.baseURI).href;
}
