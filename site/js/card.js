// @ts-check
// The tube in both systems of units, asked for when it is looked at.

/**
 * @param {HTMLElement} root a popover
 * @param {() => Promise<import("./api.js").Card | null>} ask
 * @param {(line: string) => void} onCopy
 */
export function createCard(root, ask, onCopy) {
  const [body] = /** @type {HTMLTableElement} */ (root.querySelector("table")).tBodies;
  const line = /** @type {HTMLElement} */ (root.querySelector(".line"));
  root.querySelector("button")?.addEventListener("click", () => onCopy(line.textContent ?? ""));
  root.addEventListener("beforetoggle", async (event) => {
    if (/** @type {ToggleEvent} */ (event).newState !== "open") return;
    const card = await ask().catch(() => null); // of a tube that cannot be measured the page says why
    if (!card) return root.hidePopover();
    body.replaceChildren(
      ...card.rows.map(({ label, si, us, gauge }) => {
        const row = document.createElement("tr");
        const name = document.createElement("th");
        name.scope = "row";
        name.textContent = label;
        row.append(name);
        for (const text of [si, us, gauge ?? ""]) row.insertCell().textContent = text;
        return row;
      }),
    );
    line.textContent = card.line;
  });
}
