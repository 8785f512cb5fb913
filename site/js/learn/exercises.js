// @ts-check
// The exercises: a list with what is solved of it, and the one that is open. What is true, what is right and what solves it the engine
// finds, of the document in hand.

import { setFormula } from "../formula.js";
import { hide, write } from "../keyed.js";
import { newMark } from "../mark.js";
import { createRoving } from "../roving.js";
import { keepOwn, ownWork } from "../store/learn.js";

const LONGEST = 90; // letters of a sum that is shown in numbers

/**
 * @typedef {import("../api.js").ShownLesson} Lesson
 * @typedef {import("../store/learn.js").Progress} Progress
 */

/**
 * @param {HTMLElement} root
 * @param {ReturnType<typeof import("../design.js").createDesign>} design
 * @param {import("../learn.js").Act} act
 * @param {Progress} progress
 * @param {() => void} keep the progress
 */
export function createExercises(root, design, act, progress, keep) {
  const part = (/** @type {string} */ name) => /** @type {any} */ (root.querySelector(`[data-part="${name}"]`));
  const text = (/** @type {string} */ name) => root.dataset[name] ?? "";
  /** @type {Lesson[]} */ let lessons = [];
  /** @type {Lesson | undefined} */ let open;
  let units = "";
  let laid = ""; // the piece of work that the last exercise began; empty: none has since the page came
  let waits = ownWork() !== ""; // whether the trainee's own work does
  let hints = 0; // shown of the one that is open

  const reach = createRoving(part("list"), "button");
  const now = () => design.history.entry.document;
  const of = (/** @type {Lesson} */ { id }) => ({ lesson: id, units: now().units, shop: act.shop() });

  /** @param {HTMLElement} said @param {() => Promise<void>} ask */
  async function trying(said, ask) {
    write(said, "");
    try {
      await ask();
    } catch (error) {
      write(said, act.reason(/** @type {Error} */ (error)));
    }
  }

  function list() {
    const done = lessons.filter(({ id }) => progress.solved.includes(id)).length;
    write(part("progress"), text("progress").replace("{done}", String(done)).replace("{all}", String(lessons.length)));
    part("list").replaceChildren(
      ...lessons.map(({ id, title }, i) => {
        const row = document.createElement("li");
        const press = document.createElement("button");
        press.type = "button";
        press.dataset.testid = `lesson-${id}`;
        press.textContent = `${i + 1}  ${title}`;
        press.addEventListener("click", () => take(id));
        row.append(press);
        if (progress.solved.includes(id)) row.append(newMark("good", text("solved")));
        return row;
      }),
    );
    reach();
  }

  /** @param {string} id empty: the list */
  function take(id) {
    progress.at = id;
    progress.met ||= id !== "";
    keep();
    open = lessons.find((lesson) => lesson.id === id);
    hide(part("all"), Boolean(open));
    hide(part("one"), !open);
    if (!open) {
      list();
      return part("progress").focus();
    }
    fill(open);
    part("name").focus();
  }

  /** @param {Lesson} lesson */
  function fill(lesson) {
    const { id, title, question, guess, choices, task, asked, unit } = lesson;
    hints = 0;
    for (const [name, words] of Object.entries({ name: title, question, guess, task, asked, unit })) write(part(name), words);
    hide(part("typing"), !asked);
    for (const name of ["told", "on", "hint-1", "hint-2", "answer"]) hide(part(name), true);
    hide(part("hint"), false);
    part("checked").replaceChildren();
    for (const name of ["film", "verdict", "said", "unguessed"]) write(part(name), "");
    part("typed").value = "";
    part("choices").replaceChildren(
      ...choices.map((words, i) => {
        const label = document.createElement("label");
        const radio = document.createElement("input");
        radio.type = "radio";
        radio.name = "learn-guess";
        radio.value = String(i);
        radio.dataset.testid = `guess-${i}`;
        label.append(radio, ` ${words}`);
        return label;
      }),
    );
    part("guessing").disabled = false;
    hide(part("tell"), false);
    const at = lessons.indexOf(lesson);
    part("before").disabled = at === 0;
    part("after").disabled = at === lessons.length - 1;
    if (id in progress.guesses) tell(progress.guesses[id]);
    shown();
  }

  /** Tells what is true, once something has been guessed. @param {number} guess */
  const tell = (guess) =>
    trying(part("said"), async () => {
      const lesson = /** @type {Lesson} */ (open);
      const told = await act.ask("lesson_guess", { ...of(lesson), guess });
      if (open !== lesson) return;
      progress.guesses[lesson.id] = guess;
      keep();
      const radios = [...part("choices").querySelectorAll("input")];
      radios.forEach((radio, i) => {
        radio.checked = i === guess;
        radio.closest("label").toggleAttribute("data-true", i === told.place);
      });
      part("guessing").disabled = true;
      hide(part("tell"), true);
      write(part("told"), `${told.said} ${told.told}`);
      hide(part("told"), false);
    });

  async function putAside() {
    keepOwn(await act.own());
    waits = true;
  }

  /** Takes the tube of an exercise in hand; what was worked on waits. @param {boolean} solved */
  const begin = (solved) =>
    trying(part("said"), async () => {
      const lesson = /** @type {Lesson} */ (open);
      if (design.history.job?.work !== laid && (laid || !waits)) await putAside();
      await design.replace(async () => ({ reply: await act.ask("lesson_begin", { ...act.area(), lesson: lesson.id, units: now().units, solved }), looked: true }));
      laid = design.history.job?.work ?? "";
      act.section(lesson.section);
    });

  const check = () =>
    trying(part("said"), async () => {
      const lesson = /** @type {Lesson} */ (open);
      await design.rest();
      const { solved, lines, film } = await act.ask("lesson_check", { lesson: lesson.id, document: now(), typed: part("typed").value, shop: act.shop() });
      if (open !== lesson) return;
      part("checked").replaceChildren(
        ...lines.map(({ holds, text: words, found }) => {
          const row = document.createElement("li");
          const said = document.createElement("span");
          said.textContent = words;
          if (found) said.append(document.createElement("br"), Object.assign(document.createElement("span"), { className: "grey", textContent: found }));
          row.append(newMark(holds ? "good" : "watch", text(holds ? "holds" : "open")), said);
          return row;
        }),
      );
      write(part("film"), film);
      write(part("verdict"), text(solved ? "right" : "notYet"));
      hide(part("on"), !solved || lesson === lessons[lessons.length - 1]);
      part(solved ? "on" : "checked").scrollIntoView({ block: "nearest", behavior: "instant" }); // the press stands above it
      if (solved && !progress.solved.includes(lesson.id)) progress.solved.push(lesson.id);
      keep();
    });

  function hint() {
    if (!open) return;
    hints = Math.min(hints + 1, open.hints.length);
    write(part(`hint-${hints}`), open.hints[hints - 1]);
    hide(part(`hint-${hints}`), false);
    hide(part("hint"), hints === open.hints.length);
  }

  const answer = () =>
    trying(part("said"), async () => {
      const lesson = /** @type {Lesson} */ (open);
      const worked = await act.ask("lesson_answer", of(lesson));
      if (open !== lesson) return;
      write(part("worked"), worked.text);
      hide(part("right-number"), !worked.number);
      write(part("right-number"), `${lesson.asked}: ${worked.number}`);
      part("workings").replaceChildren(
        ...worked.workings.map(({ figure, label, numbers, result }) => {
          const row = document.createElement("li");
          const press = document.createElement("button");
          press.type = "button";
          press.className = "name";
          press.textContent = label;
          press.dataset.testid = `worked-${figure}`;
          press.addEventListener("click", () => act.working(figure, press, lesson.section, { document: worked.document, name: text("workedOf") }));
          const sum = document.createElement("span");
          sum.className = "formula";
          const comes = document.createElement("b");
          comes.className = "formula";
          setFormula(comes, result);
          if (numbers.length <= LONGEST) setFormula(sum, numbers);
          row.append(press, " ", comes, sum);
          return row;
        }),
      );
      hide(part("answer"), false);
      part("worked").focus();
    });

  /** What of the panel hangs on the design in hand. */
  function shown() {
    hide(part("own"), !waits);
    if (units && design.document && design.document.units !== units) show();
  }

  async function show() {
    if (!design.history.job) await design.rest();
    const asked = now().units;
    if (units === asked && lessons.length) return;
    units = asked;
    ({ lessons } = await act.ask("lessons", { units: asked }));
    const at = open?.id ?? progress.at;
    open = lessons.find(({ id }) => id === at);
    hide(part("all"), Boolean(open));
    hide(part("one"), !open);
    list();
    if (open) fill(open);
  }

  const press = (/** @type {string} */ name, /** @type {() => void} */ act) => part(name).addEventListener("click", act);
  const step = (/** @type {number} */ by) => () => take(lessons[lessons.findIndex((one) => one === open) + by]?.id ?? "");
  part("choices").addEventListener("change", () => write(part("unguessed"), ""));
  press("tell", async () => {
    const guessed = part("choices").querySelector("input:checked");
    write(part("unguessed"), guessed ? "" : text("guessFirst"));
    if (!guessed) return;
    await tell(Number(guessed.value));
    if (!part("told").hidden) part("told").focus(); // the press is gone
  });
  press("begin", () => begin(false));
  press("put", () => begin(true));
  press("hint", hint);
  press("work-out", answer);
  press("before", step(-1));
  press("after", step(1));
  press("on", step(1));
  press("back", () => take(""));
  press("own", async () => {
    const own = ownWork();
    keepOwn("");
    [laid, waits] = ["", false];
    if (own) await act.goBack(own);
    shown();
  });
  part("try").addEventListener("submit", (/** @type {Event} */ event) => {
    event.preventDefault();
    check();
  });

  return { show, shown };
}
