// @ts-check
// The way of looking for a meeting: the whole screen, the drawing, and few figures large enough to be read across a table. What is
// picked stays in the browser; a price is turned on each time. What is told beside the figures is what may leave the house (sent.js).

import { today } from "./files.js";
import { hide, write } from "./keyed.js";
import { inSight, usual } from "./sent.js";
import { createReadings } from "./show/figures.js";
import { fillLeave } from "./show/leave.js";
import { createSlides } from "./show/slides.js";
import { keepShown, savedShown } from "./store/show.js";

const PRICE = "price_tube";
const STILL = 800; // ms after the sheet has another size until its scales hold
const SAID = 5000; // ms a note stays
const HOLDS = 30; // days that a price holds, until somebody says otherwise
/** @type {Record<string, number>} */ const TURNS = { PageUp: -1, PageDown: 1, ArrowLeft: -1, ArrowRight: 1 };

/**
 * @param {HTMLElement} root
 * @param {ReturnType<typeof import("./design.js").createDesign>} design
 * @param {{
 *   leave: () => void,
 *   send: (args: Omit<import("./api.js").SendArgs, "shop">) => Promise<import("./api.js").Sent | null>,
 *   steps: (args: Omit<import("./api.js").StepsArgs, "shop">) => Promise<import("./api.js").Stepped | null>,
 *   received: () => import("./sent.js").Received | null,
 *   hold: (on: boolean) => void,
 *   keep: HTMLButtonElement,
 *   link: (text: string) => Promise<string>,
 *   file: (sent: {text: string}) => Promise<void>,
 *   print: () => Promise<void>,
 *   failed: (error: Error) => void,
 * }} act  link: puts a link where it can be sent from, and says where; file: saves the whole page with it; received: what a customer's link brought, while it is in hand; hold: the drawing's scales stay
 */
export function createShow(root, design, act) {
  const at = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
  const choose = at("show-choose");
  const controls = [.../** @type {NodeListOf<HTMLSelectElement & HTMLInputElement>} */ (choose.querySelectorAll("[name]"))];
  const valuesOf = (/** @type {string} */ name) => controls.filter((one) => one.name === name).map(({ value }) => value);
  const [price, until] = ["price", "until"].map((name) => /** @type {HTMLInputElement} */ (choose.querySelector(`[name="${name}"]`)));
  const readings = createReadings(/** @type {HTMLElement} */ (root.querySelector(".readings")));
  /** @type {import("./api.js").Told | null} */ let told = null;
  let toldOf = "";
  let place = 0; // which of the kept designs is in sight
  let on = false;
  let ours = false; // the whole screen was taken for this
  let still = 0;

  const set = (/** @type {import("./api.js").Value[]} */ values) => ({ op: "set", values });
  const slides = createSlides(/** @type {HTMLElement} */ (root.querySelector(".slides")), {
    live(values, since) {
      if (still) holdNow();
      design.live(set(values), { since, pulled: true });
    },
    commit: (values, since) => design.commit(set(values), since),
    steps: async () => (await act.steps({ document: design.history.entry.document, entries: entries() }))?.entries ?? null,
    failed: act.failed,
  });

  for (const [name, values] of Object.entries(savedShown())) {
    controls.filter((one) => one.name === name).forEach((one, i) => [...one.options].some(({ value }) => value === values[i]) && (one.value = values[i]));
  }
  until.value = inDays(HOLDS);

  /** The figures that are shown; one that is picked twice stands once. */
  const figures = () => act.received()?.told.figures.map(({ id }) => id) ?? [...new Set(valuesOf("figure"))];
  const entries = () => (act.received()?.told.entries ?? [...new Set(valuesOf("entry"))]).filter(Boolean);

  /** Whether it is the design as it was sent, so that what was told of it holds. */
  function asSent() {
    const received = act.received();
    return received !== null && JSON.stringify(design.history.current) === received.document;
  }

  function picked() {
    return { ...usual(today()), figures: figures(), entries: entries(), held: valuesOf("held")[0], price: price.checked && !act.received(), until: until.value };
  }

  /** From now on a higher fin is drawn higher. */
  function holdNow() {
    clearTimeout(still);
    still = 0;
    if (on) act.hold(true);
  }

  /** The sheet has come to another size, or has more to show: it takes the scales that it needs, and then keeps them. */
  function settleScale() {
    clearTimeout(still);
    act.hold(false);
    still = window.setTimeout(holdNow, STILL);
  }

  /** @param {import("./api.js").Page} view */
  function read(view) {
    const kept = told?.beside[place];
    /** @type {{id: string, label: string, value: string, unit: string, state: string, mark: string, absent?: string}[]} as it was sent, it has the figures that were */
    const list = asSent() ? (act.received()?.told.figures ?? []) : figures().flatMap((id) => view.headline?.filter((figure) => figure.id === id) ?? []);
    const shown = list.map(({ id, label, value, unit, state, mark, absent = "" }) => {
      const than = kept?.values[told?.figures.findIndex((one) => one.id === id) ?? -1];
      return { id, label, value: value || (absent && "–"), unit, state, mark, than: than ? (root.dataset.than ?? "").replace("{place}", String(place + 1)).replace("{value}", than) : "" };
    });
    const asked = act.received() ? (asSent() ? told?.price[0] : undefined) : price.checked ? view.headline?.find(({ id }) => id === PRICE) : undefined;
    if (asked) {
      const quoted = asked.state !== "no" && asked.value !== "";
      shown.push({ id: PRICE, label: asked.label, value: quoted ? asked.value : "–", unit: quoted ? asked.unit : "", state: asked.state, mark: asked.mark, than: "" });
    }
    readings.show(shown);
  }

  function say() {
    const received = act.received();
    const beside = told?.beside ?? [];
    place = Math.min(place, Math.max(0, beside.length - 1));
    write(at("show-refused"), told?.refused.join(" ") ?? "");
    const dated = (/** @type {string | undefined} */ text) => text?.replace("{day}", received?.told.day ?? "");
    const changed = received && !asSent() ? [dated(root.dataset.changed), received.told.price.length && root.dataset.other] : null;
    const parts = changed ?? [told?.term || (received && dated(root.dataset.sent))];
    const none = !received && price.checked && told && !told.price.length ? root.dataset.noPrice : "";
    write(at("show-term"), [...parts, none].filter(Boolean).join(" "));
    hide(at("show-kept"), beside.length === 0);
    write(/** @type {Element} */ (root.querySelector("#show-kept span")), (root.dataset.kept ?? "").replace("{place}", String(place + 1)).replace("{count}", String(beside.length)));
    const empty = told && !told.refused.length && !received ? root.dataset.empty : "";
    write(at("show-said"), beside[place]?.said ?? empty ?? "");
    write(at("show-held"), beside.length ? (told?.held ?? "") : "");
    if (told) fillLeave(at("leave"), design.history.current?.title ?? "", told);
  }

  /** What is told, of the design that is in the history. */
  async function ask() {
    const args = { ...inSight(design.history.entry), picked: picked() };
    const of = JSON.stringify([args, act.received()?.work, asSent()]);
    if (of !== toldOf) {
      toldOf = of;
      root.classList.add("asking"); // what is told is still of the design before
      const received = act.received();
      try {
        const reply = received && asSent() ? { told: received.told, text: "" } : await act.send(args);
        if (of !== toldOf) return null;
        if (!reply) {
          toldOf = ""; // another question came before it was put: that one, or the next, tells
          return null;
        }
        told = reply.told;
        root.classList.remove("asking");
      } catch (error) {
        [toldOf, told] = ["", null];
        root.classList.remove("asking");
        write(at("show-refused"), /** @type {Error} */ (error).message);
        at("leave").replaceChildren();
        return null;
      }
    }
    say();
    if (design.view) read(design.view);
    return told;
  }

  /** Leads on to the next kept design, or back. @param {number} by */
  function turn(by) {
    const count = told?.beside.length ?? 0;
    if (!count) return;
    place = (place + by + count) % count;
    say();
    if (design.view) read(design.view);
  }

  choose.addEventListener("change", (/** @type {Event} */ { target }) => {
    if (target !== price && target !== until) keepShown({ figure: valuesOf("figure"), entry: valuesOf("entry"), held: valuesOf("held") });
    settleScale(); // a figure more takes room from the drawing
    design.refresh().catch(act.failed);
  });
  at("show-kept").addEventListener("click", (/** @type {any} */ { target }) => target.dataset.turn && turn(Number(target.dataset.turn)));
  at("show-keep").addEventListener("click", () => {
    act.keep.click();
    place = Infinity; // the one that comes
    settleScale();
  });
  at("show-link").addEventListener("click", async () => {
    await design.rest();
    const reply = await act.send({ ...inSight(design.history.entry), picked: picked() }).catch(act.failed);
    if (!reply) return;
    write(at("show-done"), await act.link(reply.text));
    setTimeout(() => write(at("show-done"), ""), SAID);
  });
  at("show-file").addEventListener("click", async () => {
    await design.rest();
    const reply = await act.send({ ...inSight(design.history.entry), picked: picked() }).catch(act.failed);
    if (reply) await act.file(reply);
  });
  at("show-sheet").addEventListener("click", async () => {
    await design.rest();
    if (await ask()) await act.print();
  });
  at("show-leave").addEventListener("click", act.leave);
  addEventListener("resize", () => on && settleScale());

  // A presenter's keys: on and back. The one that would load the page anew in the middle of a meeting does nothing.
  document.addEventListener("keydown", (event) => {
    const { key, target } = event;
    if (!on || event.ctrlKey || event.metaKey || event.altKey || event.shiftKey || event.defaultPrevented) return;
    if (key === "F5") return event.preventDefault();
    const arrow = key.startsWith("Arrow");
    if (!TURNS[key] || !(target instanceof Element) || target.closest("#drawing, [popover]") || (arrow && target.matches("input, select"))) return;
    event.preventDefault();
    turn(TURNS[key]);
  });

  // Whoever gives the screen back with the browser's own key wants to leave; with a list open he wants to shut that.
  document.addEventListener("fullscreenchange", () => {
    const open = document.querySelector(":popover-open");
    if (!document.fullscreenElement && ours) open instanceof HTMLElement ? open.hidePopover() : act.leave();
    ours = document.fullscreenElement !== null && ours;
  });

  return {
    /** The figures that the engine is asked for. */
    get headline() {
      return [...figures(), ...(price.checked && !act.received() ? [PRICE] : [])];
    },

    enter() {
      on = true;
      price.checked = false;
      readings.release();
      root.focus({ preventScroll: true });
      settleScale();
      design.refresh().catch(act.failed);
      if (document.fullscreenElement || !document.fullscreenEnabled || navigator.userActivation?.isActive === false) return; // a link opens here without a press
      document.documentElement.requestFullscreen().then(
        () => (ours = true),
        () => {}, // a window is enough
      );
    },

    leave() {
      on = false;
      clearTimeout(still);
      still = 0;
      act.hold(false);
      if (ours) document.exitFullscreen().catch(() => {});
      ours = false;
      design.refresh().catch(act.failed);
    },

    /** @param {import("./api.js").Page} view @param {{settled: boolean, arrived?: boolean}} how */
    show(view, { settled, arrived = false }) {
      if (arrived) readings.release();
      write(at("show-title"), view.title);
      if (view.headline) read(view);
      if (!settled) return;
      at("show-keep").disabled = act.keep.disabled;
      ask().catch(act.failed);
      if (view.valid) slides.settled(view.fields, JSON.stringify([entries(), view.units, view.fields.find(({ id }) => id === "fin_type")?.typed, act.received()?.work]));
    },
  };
}

/** The day so many days from now, as 2026-11-27. @param {number} days */
function inDays(days) {
  const day = new Date();
  day.setDate(day.getDate() + days);
  return today(day);
}
