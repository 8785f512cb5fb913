// @ts-check
// Lists that are shown anew with every answer keep the elements that stay: a press, the focus and a selection outlast it.

/**
 * @param {Element} parent what it holds already stays first
 * @param {(id: string, item: any) => Element} make
 * @param {boolean} [ordered] whether the elements stand in the order of the items; to move one costs it the pointer
 */
export function keyed(parent, make, ordered = true) {
  /** @type {Map<string, Element>} */
  const kept = new Map();
  const first = parent.children.length;
  return (/** @type {any[]} each with an id */ items, /** @type {(element: any, item: any) => void} */ fill) => {
    const now = new Set(items.map(({ id }) => id));
    for (const [id, old] of kept) {
      if (now.has(id)) continue;
      old.remove();
      kept.delete(id);
    }
    items.forEach((item, index) => {
      let node = kept.get(item.id);
      if (!node) kept.set(item.id, (node = make(item.id, item)));
      const there = ordered ? parent.children[first + index] : node.parentNode && node;
      if (there !== node) parent.insertBefore(node, there ?? null);
      fill(node, item);
    });
  };
}

/** Leaves alone what is hidden already, or shown. @param {HTMLElement} element @param {boolean} yes */
export function hide(element, yes) {
  if (element.hidden !== yes) element.hidden = yes;
}

/** Leaves the text alone when it is the same, and a selection in it too; a text in place of another is laid out sooner than a new one. @param {Element} element @param {string} text */
export function write(element, text) {
  const [first, second] = element.childNodes;
  if (first instanceof Text && !second && text) {
    if (first.data !== text) first.data = text;
  } else if (element.textContent !== text) element.textContent = text;
}
