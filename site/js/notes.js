// @ts-check
// What happened to somebody's work and is not to be missed: a line for each, which stays until it is read or solved.

const PASSING = ["notKept", "storageFull", "earlierFailed", "linkLeft"]; // solved when it works again

/** @param {HTMLElement} root */
export function createNotes(root) {
  const { read = "" } = root.dataset;

  /** @param {HTMLElement} line @param {string} text */
  function fill(line, text) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = read;
    button.addEventListener("click", () => line.remove());
    line.replaceChildren(text, " ", button);
  }

  return {
    /**
     * @param {string} of what it happened to
     * @param {string} name of a text in the page; empty: what was in the way of it is solved
     * @param {string} [why]
     */
    tell(of, name, why = "") {
      const find = (/** @type {string} */ text) => root.querySelector(`[data-note="${of} ${text}"]`);
      if (!name) for (const passing of PASSING) find(passing)?.remove();
      if (!name || find(name)) return;
      const line = root.appendChild(document.createElement("p"));
      line.dataset.note = `${of} ${name}`;
      fill(line, `${why} ${root.dataset[name]}`.trim());
    },
  };
}
