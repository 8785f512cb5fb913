// @ts-check
// What a grid tells a reader that cannot be seen: the words stand in the data- attributes of its host.

/** @param {HTMLElement} host */
export function createTeller(host) {
  const told = document.createElement("p");
  told.className = "unseen";
  told.setAttribute("role", "status");
  host.after(told);
  /** @param {string} word @param {Record<string, string | number>} [values] */
  return (word, values = {}) =>
    (told.textContent = Object.entries(values).reduce((text, [name, value]) => text.replace(`{${name}}`, String(value)), host.dataset[word] ?? word));
}
