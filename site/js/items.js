// @ts-check
// The items of the job: a list from which one is taken in hand, and what the job says of itself. Of a long list only the rows
// in sight are made, so that ten thousand items cost what a screenful does. A job of one item shows no list unless asked.

import { asideable, put, typed } from "./form.js";
import { placeOf } from "./job.js";
import { keyed, write } from "./keyed.js";

const SPARE = 4; // rows made beyond each end of what is in sight
const STEPS = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 };

/**
 * @typedef {{take: (id: string) => void, add: (copy: boolean) => void, remove: () => void, mark: {live: (text: string) => void, commit: (text: string) => void},
 *   head: (part: Partial<import("./api.js").Head>) => void}} Act
 */

/** @param {HTMLElement} panel @param {HTMLButtonElement} opener @param {Act} act */
export function createItems(panel, opener, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const [list, space, template, count, mark, remove] = ["items-list", "items-space", "items-row", "items-count", "items-mark", "items-remove"].map(at);
  const heads = [.../** @type {NodeListOf<HTMLInputElement>} */ (panel.querySelectorAll("[data-head]"))];
  const marked = asideable(mark, document.createElement("p")); // the status line says what is wrong
  /** @type {import("./history.js").Entry | null} */ let entry = null;
  let opened = false; // by the user, whatever the job
  let active = 0; // the row that the keys have come to
  let height = 0; // px of a row

  const rows = keyed(space, (id) => {
    const row = template.content.firstElementChild.cloneNode(true);
    row.id = `item-${id}`;
    row.addEventListener("click", () => act.take(id));
    return row;
  }, false);

  /** Makes and fills the rows in sight. */
  function fill() {
    if (!entry || panel.hidden) return;
    const { job, hand } = entry;
    height ||= parseFloat(getComputedStyle(list).getPropertyValue("--row")) * parseFloat(getComputedStyle(document.documentElement).fontSize);
    const first = Math.max(0, Math.floor(list.scrollTop / height) - SPARE);
    const last = Math.min(job.order.length, Math.ceil((list.scrollTop + list.clientHeight) / height) + SPARE);
    space.style.height = `${job.order.length * height}px`;
    rows(
      job.order.slice(first, last).map((id, i) => ({ id, place: first + i })),
      (row, { id, place }) => {
        const { mark, name, quantity } = inWords(job, id);
        row.style.transform = `translateY(${place * height}px)`;
        row.setAttribute("aria-posinset", String(place + 1));
        row.setAttribute("aria-setsize", String(job.order.length));
        row.setAttribute("aria-selected", String(id === hand));
        row.classList.toggle("active", place === active);
        const part = (/** @type {string} */ of) => row.querySelector(`[data-part="${of}"]`);
        write(part("mark"), mark || list.dataset.unmarked.replace("{place}", place + 1));
        write(part("name"), name || list.dataset.unnamed);
        write(part("quantity"), quantity);
        row.title = name;
      },
    );
    list.setAttribute("aria-activedescendant", `item-${job.order[active]}`);
  }

  /** @param {number} place */
  function reveal(place) {
    active = place;
    const top = place * height;
    if (top < list.scrollTop) list.scrollTop = top;
    else if (top + height > list.scrollTop + list.clientHeight) list.scrollTop = top + height - list.clientHeight;
  }

  list.addEventListener("scroll", fill, { passive: true });
  list.addEventListener("keydown", (/** @type {KeyboardEvent} */ event) => {
    if (!entry) return;
    const { order } = entry.job;
    const ends = { Home: 0, End: order.length - 1 };
    const to = event.key in ends ? ends[/** @type {"Home" | "End"} */ (event.key)] : active + (STEPS[/** @type {keyof typeof STEPS} */ (event.key)] ?? 0);
    if (event.key === "Enter" || event.key === " ") act.take(order[active]);
    else if (to === active && !(event.key in ends)) return;
    else reveal(Math.max(0, Math.min(order.length - 1, to)));
    event.preventDefault();
    fill();
  });
  opener.addEventListener("click", () => {
    opened = Boolean(panel.hidden);
    panel.hidden = !opened;
    opener.setAttribute("aria-expanded", String(opened));
    if (entry && opened) reveal(placeOf(entry.job, held(entry)));
    fill();
  });
  at("items-add").addEventListener("click", () => act.add(false));
  at("items-copy").addEventListener("click", () => act.add(true));
  remove.addEventListener("click", act.remove);
  typed(mark, act.mark);
  for (const input of heads) {
    input.addEventListener("change", () => input.validity.valid && act.head({ [input.name]: input.value }));
  }
  new ResizeObserver(fill).observe(list);

  return {
    /** @param {import("./history.js").Entry} next */
    show(next) {
      const place = placeOf(next.job, held(next));
      const many = next.job.order.length > 1;
      if (next.job !== entry?.job) {
        panel.hidden = !(opened || many);
        if (!panel.hidden) list.scrollTop = 0; // of a hidden list it would have the whole page laid out, to no end
      } else if (many && next.job.order.length !== Number(count.dataset.count)) panel.hidden = false;
      const moved = next.hand !== entry?.hand || next.job !== entry?.job;
      entry = next;
      opener.setAttribute("aria-expanded", String(!panel.hidden));
      write(count, many ? String(next.job.order.length) : "");
      count.dataset.count = next.job.order.length;
      remove.disabled = !many;
      marked.show(next.document.mark ?? "", "");
      for (const input of heads) put(input, next.job.head[/** @type {keyof import("./api.js").Head} */ (input.name)]);
      fill();
      if (!moved || panel.hidden) return;
      reveal(place);
      fill();
    },
    /** @param {import("./form.js").Asides} asides */
    aside: (asides) => marked.aside(asides.get("mark")),
  };
}

/** @param {import("./history.js").Entry} entry */
const held = ({ job, hand }) => /** @type {import("./job.js").Item} */ (job.items.get(hand));

/** What a row says: read off the differences, since the designs are not laid out. @param {import("./job.js").Job} job @param {string} id */
function inWords({ base, items }, id) {
  const { design } = /** @type {import("./job.js").Item} */ (items.get(id));
  const quantity = design.fields?.quantity ?? base.fields.quantity;
  return { mark: design.mark ?? base.mark ?? "", name: design.title ?? base.title, quantity: quantity.text };
}
