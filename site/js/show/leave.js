// @ts-check
// The sheet to leave behind: what was told, for the printer. The drawing is the printer's own (sheet.js) and stands under it.

/**
 * @param {HTMLElement} root
 * @param {string} title of the design
 * @param {import("../api.js").Told} told
 */
export function fillLeave(root, title, told) {
  /** @param {string} tag @param {string} text @param {string} [className] */
  const part = (tag, text, className = "") => Object.assign(document.createElement(tag), { textContent: text, className });
  const figures = document.createElement("dl");
  for (const { label, value, unit, mark, state } of [...told.figures, ...told.price]) {
    const pair = document.createElement("div");
    pair.append(part("dt", label), part("dd", `${value} ${unit}`.trim()), part("dd", state === "good" ? "" : mark, "mark"));
    figures.append(pair);
  }
  root.replaceChildren(
    part("h1", title),
    part("p", (root.dataset.day ?? "").replace("{day}", told.day), "day"),
    part("p", told.tube, "tube"),
    ...told.refused.map((text) => part("p", text, "refused")),
    figures,
    ...(told.term ? [part("p", told.term)] : []),
    ...told.beside.map(({ said }) => part("p", said)),
    ...(told.beside.length ? [part("p", told.held, "held")] : []),
  );
}
