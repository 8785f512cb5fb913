// @ts-check
// By which conventions a figure comes out that another party printed. The engine tries them.

import { hide, keyed, write } from "./keyed.js";

/**
 * @param {HTMLElement} root
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {(args: Pick<import("./api.js").ConventionsArgs, "document" | "quantity" | "text">) => Promise<import("./api.js").ShownConventions | null>} ask
 */
export function createTheirs(root, design, ask) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(`theirs-${id}`));
  const [quantity, text, wrong, said, readings] = ["quantity", "text", "wrong", "said", "readings"].map(at);
  quantity.addEventListener("change", refresh);
  text.addEventListener("input", refresh);

  const rows = keyed(readings.tBodies[0], (id) => {
    const row = document.createElement("tr");
    row.dataset.testid = `reading-${id}`;
    row.append(...[0, 1, 2].map(() => document.createElement("td")));
    return row;
  });

  async function refresh() {
    const reply = await ask({ document: design.history.entry.document, quantity: quantity.value, text: text.value.trim() });
    if (!reply) return;
    if (quantity.options.length === 0) for (const { id, label } of reply.quantities) quantity.append(new Option(label, id));
    write(wrong, reply.wrong);
    text.toggleAttribute("aria-invalid", reply.wrong !== "");
    write(said, reply.said);
    hide(readings, reply.readings.length === 0);
    rows(
      reply.readings.map((one, i) => ({ ...one, id: String(i) })),
      ({ cells }, { value, by, miss }) => [value, by, miss || root.dataset.fits].forEach((words, i) => write(cells[i], words)),
    );
  }

  return { refresh };
}
