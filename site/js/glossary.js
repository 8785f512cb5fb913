// @ts-check
// What the words of the page mean: a list over the page, opened at a term. It is made when it is first wanted.

import { setFormula } from "./formula.js";
import { hide, write } from "./keyed.js";

/**
 * @typedef {import("./api.js").ShownTerm} Term
 * @typedef {{kind: string, id: string}} Label  what leads to a term (core/glossary)
 */

/**
 * @param {() => Promise<Term[]>} ask
 * @param {(label: Label) => Promise<string>} find the term of a label; empty: none
 * @param {(term: string) => Promise<string>} draw an SVG
 */
export function createGlossary(ask, find, draw) {
  const template = /** @type {HTMLTemplateElement} */ (document.getElementById("glossary-template"));
  const [style, made] = [...template.content.children].map((part) => part.cloneNode(true));
  const styled = new Promise((resolve) => style.addEventListener("load", resolve, { once: true }));
  const dialog = /** @type {HTMLDialogElement} */ (made);
  document.head.append(style);
  document.body.append(dialog);
  const part = (/** @type {string} */ name) => /** @type {any} */ (dialog.querySelector(`[data-part="${name}"]`));
  /** @type {Term[]} */ let terms = [];
  /** @type {HTMLElement | null} */ let opener = null;
  let shown = "";

  /** @param {string} id @param {string} [name] what it is called here */
  function press(id, name = terms.find((one) => one.id === id)?.name ?? id) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "name";
    button.textContent = name;
    button.dataset.testid = `term-${id}`;
    button.addEventListener("click", () => show(id, true));
    return button;
  }

  /** @param {string} sought what is looked for */
  function list(sought) {
    const has = (/** @type {Term} */ { name, is, symbols }) => [name, is, ...symbols].some((text) => text.toLocaleLowerCase().includes(sought.toLocaleLowerCase()));
    const found = terms.filter(has);
    const groups = [...new Set(found.map(({ group }) => group))];
    part("list").replaceChildren(
      ...groups.map((group) => {
        const section = document.createElement("section");
        const title = document.createElement("h3");
        const names = document.createElement("ul");
        title.textContent = group;
        names.append(
          ...found
            .filter((term) => term.group === group)
            .map(({ id }) => {
              const row = document.createElement("li");
              const name = press(id);
              if (id === shown) name.setAttribute("aria-current", "true");
              row.append(name);
              return row;
            }),
        );
        section.append(title, names);
        return section;
      }),
    );
    hide(part("none"), found.length > 0);
  }

  /** @param {string} id @param {boolean} [to] the focus goes to it */
  async function show(id, to = false) {
    const term = terms.find((one) => one.id === id);
    hide(part("term"), !term);
    if (!term) return;
    shown = id;
    write(part("name"), term.name);
    write(part("is"), term.is);
    hide(part("letters"), term.letters.length === 0);
    part("letters").replaceChildren(
      ...term.letters.map(({ letter, is, term: other }) => {
        const row = document.createElement("li");
        const symbol = document.createElement("b");
        setFormula(symbol, letter);
        row.append(symbol, " ", other ? press(other, is) : is);
        return row;
      }),
    );
    hide(part("see"), term.see.length === 0);
    part("others").replaceChildren(...term.see.map((other) => press(other)));
    for (const one of dialog.querySelectorAll("[aria-current]")) one.removeAttribute("aria-current");
    const listed = part("list").querySelector(`[data-testid="term-${id}"]`);
    listed?.setAttribute("aria-current", "true");
    listed?.scrollIntoView({ block: "nearest" });
    part("picture").hidden = true;
    if (to) part("name").focus();
    part("term").scrollIntoView({ block: "nearest" });
    if (!term.picture) return;
    const drawn = await draw(id);
    if (shown !== id) return;
    const picture = new DOMParser().parseFromString(drawn, "image/svg+xml").documentElement;
    picture.setAttribute("role", "img");
    picture.setAttribute("aria-label", term.name);
    part("picture").replaceChildren(picture);
    part("picture").hidden = false;
  }

  function close() {
    dialog.close();
    if (opener?.checkVisibility()) opener.focus();
  }
  part("close").addEventListener("click", close);
  dialog.addEventListener("cancel", (event) => {
    event.preventDefault();
    close();
  });
  part("sought").addEventListener("input", () => list(part("sought").value.trim()));

  return {
    /** @param {Label | null} label null: the whole list @param {HTMLElement | null} from gets the focus back */
    async open(label, from) {
      opener = from;
      if (!terms.length) terms = await ask();
      await styled;
      if (!dialog.open) dialog.showModal();
      const asked = label ? await find(label) : "";
      const term = terms.find(({ id }) => id === asked);
      shown = term?.id ?? "";
      part("sought").value = "";
      list("");
      hide(part("term"), true);
      if (term) await show(term.id, true);
      else part("sought").focus();
    },
  };
}
