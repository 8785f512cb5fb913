// @ts-check
// The tube in both systems of units, and what is asked for on the telephone: weight and area. Asked for when it is looked at.

import { placeBeside } from "./popovers.js";

/**
 * @param {HTMLElement} root a popover
 * @param {() => Promise<import("./api.js").Card | null>} ask
 * @param {(line: string) => void} onCopy
 */
export function createCard(root, ask, onCopy) {
  const [totals, body] = /** @type {HTMLTableElement} */ (root.querySelector("table")).tBodies;
  const lines = [.../** @type {NodeListOf<HTMLElement>} */ (root.querySelectorAll(".line"))];
  root.querySelectorAll("button").forEach((button, i) => button.addEventListener("click", () => onCopy(lines[i].textContent ?? "")));

  /** @param {HTMLTableSectionElement} body @param {import("./api.js").CardRow[]} rows */
  function fill(body, rows) {
    body.replaceChildren(
      ...rows.map(({ label, si, us, gauge }) => {
        const row = document.createElement("tr");
        const name = document.createElement("th");
        name.scope = "row";
        name.textContent = label;
        row.append(name);
        for (const text of [si, us, gauge ?? ""]) row.insertCell().textContent = text;
        return row;
      }),
    );
  }

  root.addEventListener("beforetoggle", async (event) => {
    if (/** @type {ToggleEvent} */ (event).newState !== "open") return;
    const card = await ask().catch(() => null); // of a tube that cannot be measured the page says why
    if (!card) return root.hidePopover();
    fill(totals, card.totals);
    fill(body, card.rows);
    lines[0].textContent = card.told;
    lines[1].textContent = card.line;
    placeBeside(root);
  });
}
