// @ts-check
// What happened to somebody's work and is not to be missed: a line for each, which stays until it is read or solved.

const PASSING = ["notKept", "storageFull", "earlierFailed", "linkLeft"]; // solved when it works again

/** @param {HTMLElement} root */
export function createNotes(root) {
  const { read = "" } = root.dataset;

  /** @param {string} text @param {() => void} act */
  function press(text, act) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    button.addEventListener("click", act);
    return button;
  }

  return {
    /**
     * @param {string} of what it happened to
     * @param {string} name of a text in the page; empty: what was in the way of it is solved
     * @param {string} [why]
     * @param {() => void} [open] what is to be done about it, which the text "<name>Open" asks for
     */
    tell(of, name, why = "", open) {
      const find = (/** @type {string} */ text) => root.querySelector(`[data-note="${of} ${text}"]`);
      if (!name) for (const passing of PASSING) find(passing)?.remove();
      if (!name || find(name)) return;
      const line = root.appendChild(document.createElement("p"));
      line.dataset.note = `${of} ${name}`;
      line.append(`${why} ${root.dataset[name]}`.trim(), ...(open ? [" ", press(root.dataset[`${name}Open`] ?? "", open)] : []), " ", press(read, () => line.remove()));
    },
    /** What was told is done. @param {string} of @param {string} name */
    done: (of, name) => root.querySelector(`[data-note="${of} ${name}"]`)?.remove(),
  };
}
