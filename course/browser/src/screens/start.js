// The start page: sign in, then the learner's assignments and the lessons.

/** @import { Render } from "../types.js" */

import { MINE } from "../logic/places.js";
import { ticketBox } from "../logic/ticket.js";
import { address } from "../page/address.js";
import { findAll, freshId, make, there } from "../page/dom.js";
import { takeOff, wear } from "../page/look.js";
import { openScreen } from "../page/screen.js";

/**
 * An assignment, and a module with its lesson, as twoshaft.jobsheet.overview gives them.
 *
 * @typedef {{
 *   task: string, missing: number, asked: number, unread: [question: string, why: string][],
 * }} Gap
 * @typedef {{
 *   name: string, title: string, state: string, detail: string, due: string, overdue: boolean,
 *   receipt: string, feedback: string[], notebooks: string[], can_get: boolean,
 *   can_hand_in: boolean, left: number | null, unread: number, gaps: Gap[],
 * }} Entry
 * @typedef {{
 *   module: string, title: string, lesson: string, count: string, next: string, entries: string[],
 *   marks: Record<string, string>,
 *   outcomes: [state: string, statement: string, missing: string, seen: string][],
 * }} ModuleLine
 */

const LATER = "This is done as soon as the connection is back.";

/** @type {Record<string, string>} */
const SHAPES = { "to get": "○", open: "◐", "handed in": "●", "changed since": "◑", feedback: "✓" };
/** @type {Record<string, string>} */
const WORDS = {
  "to get": "To get",
  open: "Open",
  "handed in": "Handed in",
  "changed since": "Changed after handing in",
  feedback: "Marked",
};

/**
 * @param {string} path
 * @param {string} text
 * @param {string} key
 */
const notebookLink = (path, text, key) =>
  make(
    "a",
    {
      href: address("lab/tree", path),
      target: "_blank",
      "data-twoshaft-open": path,
      "data-key": key,
      class: "ts-link",
    },
    text,
  );

/**
 * What is missing, and what cannot be read, task by task.
 *
 * @param {Gap[]} gaps
 */
function gapList(gaps) {
  return make(
    "ul",
    { class: "ts-gaps" },
    ...gaps.map(({ task, missing, asked, unread }) =>
      make(
        "li",
        {},
        `${task}: `,
        missing === asked ? "nothing answered" : missing ? `${missing} of ${asked} missing` : "",
        ...unread.map(([question, why]) =>
          make("span", {}, make("b", {}, "cannot be read: "), `“${question}” ${why}`),
        ),
      ),
    ),
  );
}

/**
 * Notes where the learner's exercises are, the latest attempt of each, for the links of a lesson.
 *
 * @param {Entry[]} entries
 */
function noteExercises(entries) {
  /** @param {Entry} entry */
  const attempt = ({ name }) => Number(name.split("-").at(-1));
  const paths = [...entries]
    .sort((one, other) => attempt(one) - attempt(other))
    .flatMap(({ notebooks }) => notebooks.map((path) => [path.split("/").pop() ?? "", path]));
  localStorage.setItem(MINE, JSON.stringify(Object.fromEntries(paths)));
  window.dispatchEvent(new Event("storage")); // this window's own bars hear nothing of it else
}

/**
 * What was pressed in this window and not answered yet. A kernel that goes takes it along: the next
 * one is asked again.
 *
 * @type {{ type: string } & Record<string, unknown> | null}
 */
let unanswered = null;

/** @type {Render} */
export function renderStart({ model, el }) {
  let chosen = "";
  const tickets = ticketBox(sessionStorage, localStorage, model.get("place"));
  let off = false; // the line is interrupted, or the kernel has gone
  /** @param {boolean} [interrupted] */
  const waits = (interrupted = true) => {
    off = interrupted;
    if (off && unanswered) said.textContent = LATER;
  };
  const screen = openScreen({ model, el }, { kind: "start", lost: waits, line: waits });
  const body = make("div", {});
  const said = make("p", { class: "ts-said", role: "status" });
  screen.show(screen.alert, said, body);
  /**
   * @param {string} type
   * @param {Record<string, unknown>} [more]
   */
  const ask = (type, more = {}) => {
    if (body.getAttribute("aria-busy") === "true" || (screen.isLost() && more.quietly)) return;
    if (!more.quietly) {
      unanswered = { type, ...more };
      body.setAttribute("aria-busy", "true");
      said.textContent = off ? LATER : "One moment.";
      screen.alert.textContent = "";
    }
    if (!screen.isLost()) model.send({ type, ...more });
  };
  const askAgain = () => {
    const left = unanswered;
    unanswered = null;
    if (left && (left.type === "sign-in" || model.get("me").id)) ask(left.type, left);
  };
  /**
   * @param {string} text
   * @param {string} key
   * @param {() => void} click
   * @param {boolean} [first]
   */
  const button = (text, key, click, first) =>
    make(
      "button",
      {
        type: "button",
        class: first ? "ts-button ts-first" : "ts-button",
        "data-key": key,
        onclick: click,
      },
      text,
    );

  function signInForm() {
    const who = freshId("who"),
      word = freshId("word");
    const list = make(
      "select",
      { id: who, class: "ts-box", "data-key": "who", required: true },
      make("option", { value: "" }, "Choose your name"),
      ...model
        .get("people")
        .map((/** @type {[string, string]} */ [id, name]) =>
          make("option", { value: id, selected: id === chosen }, name),
        ),
    );
    list.addEventListener("change", () => {
      chosen = list.value;
    });
    const box = make("input", {
      id: word,
      type: "text",
      class: "ts-box",
      autocomplete: "off",
      autocapitalize: "off",
      spellcheck: "false",
      maxlength: "80",
      "data-key": "word",
    });
    return make(
      "form",
      {
        class: "ts-sign-in",
        onsubmit: (event) => {
          event.preventDefault();
          ask("sign-in", { name: list.value, word: box.value });
        },
      },
      make("h2", {}, "Who is working?"),
      make("div", { class: "ts-pair" }, make("label", { for: who }, "Your name"), list),
      make(
        "div",
        { class: "ts-pair" },
        make("label", { for: word }, "Sign-in word from your slip"),
        box,
      ),
      make(
        "button",
        { type: "submit", class: "ts-button ts-first", "data-key": "sign-in" },
        "Sign in",
      ),
      make("p", { class: "ts-hint" }, model.get("kept")),
    );
  }

  /**
   * @param {Entry} entry
   * @param {string | undefined} mark
   */
  function assignment(entry, mark) {
    /** @param {string} what */
    const key = (what) => `${what}:${entry.name}`;
    const doing = make("div", { class: "ts-doing" });
    for (const path of entry.feedback.slice(0, 1)) {
      doing.append(
        make(
          "a",
          {
            href: address("files", path),
            target: "_blank",
            class: "ts-link",
            "data-key": key("feedback"),
          },
          "Read feedback",
        ),
      );
    }
    for (const path of entry.notebooks) {
      const text = entry.notebooks.length === 1 ? "Open" : `Open ${path.split("/").pop()}`;
      doing.append(notebookLink(path, text, key(`open ${path}`)));
    }
    if (entry.can_get) {
      doing.append(
        button(
          entry.notebooks.length ? "Get again" : "Get",
          key("get"),
          () => ask("get", { name: entry.name }),
          !entry.notebooks.length,
        ),
      );
    }
    if (entry.can_hand_in) {
      doing.append(
        button(entry.receipt ? "Hand in again" : "Hand in", key("hand in"), () =>
          ask("hand-in", { name: entry.name }),
        ),
      );
    }
    for (const node of doing.children)
      node.setAttribute("aria-label", `${node.textContent}: ${entry.title}`);
    const asking = model.get("asking") === entry.name;
    const begun = entry.receipt || entry.unread > 0;
    const row = make(
      "tr",
      {},
      make("th", { scope: "row" }, entry.title),
      make(
        "td",
        {},
        entry.due ? make("span", { class: "ts-due", "aria-hidden": "true" }, "Due ") : null,
        entry.due || "no date",
        entry.overdue ? make("span", { class: "ts-small-line" }, "date passed") : null,
      ),
      make(
        "td",
        entry.receipt ? { tabindex: -1, "data-key": key("receipt") } : {},
        make("span", { class: "ts-shape", "aria-hidden": "true" }, SHAPES[entry.state] || ""),
        make("b", {}, WORDS[entry.state] || entry.state),
        make("span", { class: "ts-small-line" }, entry.detail),
        mark ? make("span", { class: "ts-small-line" }, `Mark: ${mark}`) : null,
      ),
      make("td", {}, doing),
    );
    if (asking) return [row, make("tr", {}, make("td", { colspan: 4 }, question(entry)))];
    if (!begun || !entry.gaps.length) return [row];
    const lacks = make("td", { colspan: 4 }, make("b", {}, lacking(entry)), gapList(entry.gaps));
    return [row, make("tr", {}, lacks)];
  }

  /** @param {Entry} entry */
  const lacking = ({ left, unread }) =>
    there([
      left ? `${left} ${left === 1 ? "answer is" : "answers are"} missing` : null,
      unread ? `${unread} cannot be read` : null,
    ]).join(", ");

  /**
   * Asked before something is handed in: whether it is finished, and the learner's own.
   *
   * @param {Entry} entry
   */
  function question(entry) {
    const title = freshId("question");
    const doing = make("div", { class: "ts-doing" });
    for (const path of entry.notebooks) {
      doing.append(notebookLink(path, "Go on with it", `go on:${entry.name}`));
    }
    const lacks = lacking(entry);
    doing.append(
      button(
        lacks ? "It is my own work: hand in as it is" : "It is my own work: hand in",
        `hand in anyway:${entry.name}`,
        () => ask("hand-in", { name: entry.name, own: true }),
        !lacks,
      ),
    );
    return make(
      "div",
      {
        class: "ts-question",
        role: "group",
        tabindex: -1,
        "aria-labelledby": title,
        "data-key": "question",
      },
      make(
        "p",
        { id: title },
        make("b", {}, `${entry.title}: not handed in yet.${lacks ? ` ${lacks}.` : ""}`),
        lacks ? " An answer that is missing or cannot be read earns nothing." : null,
      ),
      lacks ? gapList(entry.gaps) : null,
      make("p", {}, "By handing in you state: ", make("b", {}, model.get("statement"))),
      doing,
    );
  }

  // Which outcomes are listed stays as it was when the page is drawn anew.
  const unfolded = new Set();
  /** @type {Record<string, string>} */
  const STATES = { met: "✓", enough: "◐", "not yet": "○" };

  /**
   * @param {ModuleLine} line
   * @param {Entry[]} entries
   */
  function moduleRows(line, entries) {
    const mine = line.entries
      .map((name) => entries.find((entry) => entry.name === name))
      .filter((entry) => entry !== undefined);
    const lesson = line.lesson
      ? notebookLink(line.lesson, `Lesson ${line.title}`, `lesson:${line.lesson}`)
      : make("span", { class: "ts-small-line" }, "no lesson here");
    const outcomes = make(
      "details",
      { open: unfolded.has(line.module) },
      make(
        "summary",
        { "data-key": `outcomes:${line.module}` },
        `Outcomes: ${line.count || "none"}`,
      ),
      make(
        "ul",
        {},
        ...line.outcomes.map(([state, statement, missing, seen]) =>
          make(
            "li",
            {},
            make("span", { class: "ts-shape", "aria-hidden": "true" }, STATES[state] || ""),
            make("b", {}, `${state}${missing && state === "enough" ? `, ${missing}` : ""}: `),
            statement,
            missing && state === "not yet" ? `. Still missing: ${missing}` : "",
            seen ? ` (${seen})` : "",
          ),
        ),
      ),
    );
    outcomes.addEventListener("toggle", () => {
      if (outcomes.open) unfolded.add(line.module);
      else unfolded.delete(line.module);
    });
    const rows = mine.flatMap((entry) => assignment(entry, line.marks[entry.name]));
    return make(
      "tbody",
      {},
      make(
        "tr",
        { class: "ts-module" },
        make(
          "th",
          { scope: "rowgroup", colspan: 4 },
          line.title,
          make("span", { class: "ts-assigned" }, mine.length ? "assigned" : "not assigned"),
        ),
      ),
      ...rows,
      make(
        "tr",
        {},
        make(
          "td",
          { colspan: 4 },
          lesson,
          make("p", { class: "ts-next" }, make("b", {}, "Next: "), line.next),
          outcomes,
        ),
      ),
    );
  }

  function work() {
    const me = model.get("me"),
      entries = model.get("entries");
    const table = make(
      "table",
      { class: "ts-table" },
      make(
        "thead",
        {},
        make(
          "tr",
          {},
          ...["Assignment", "Due", "State", "What you can do"].map((text) =>
            make("th", { scope: "col" }, text),
          ),
        ),
      ),
      ...model.get("modules").map((/** @type {ModuleLine} */ line) => moduleRows(line, entries)),
    );
    return make(
      "section",
      {},
      make(
        "div",
        { class: "ts-me" },
        make("h2", {}, `Working as ${me.name} (${me.id})`),
        me.ticket // there is none where the college's server says who works
          ? button("Not you? Sign out", "sign-out", () => {
              tickets.drop(); // whether or not a kernel hears of it
              ask("sign-out");
              document.dispatchEvent(new CustomEvent("twoshaft-signed-out"));
            })
          : null,
      ),
      entries.length ? null : make("p", {}, "Nothing is assigned yet."),
      table,
      button("Look again", "look", () => ask("look")),
    );
  }

  function lessons() {
    const signedIn = Boolean(model.get("me").id); // then those of the modules stand in the table
    const tabled = model.get("modules").map((/** @type {ModuleLine} */ line) => line.lesson);
    /** @type {[string, string][]} */
    const known = model.get("lessons");
    const list = known.filter(([path]) => !signedIn || !tabled.includes(path));
    if (!list.length) return null;
    return make(
      "section",
      {},
      make("h2", {}, signedIn ? "To look things up" : "Lessons"),
      make(
        "ul",
        { class: "ts-lessons" },
        ...list.map(([path, title]) => make("li", {}, notebookLink(path, title, `lesson:${path}`))),
      ),
    );
  }

  // A kernel that began anew does not know who was signed in; this window does.
  let knew = false;
  const ticket = model.get("me").id ? null : tickets.get();
  let resuming = ticket !== null;
  function noteWho() {
    const me = model.get("me");
    if (me.id) wear(model.get("look"));
    else takeOff();
    if (me.id) tickets.keep(me);
    else if (knew || (ticket && !resuming)) tickets.drop();
    knew = Boolean(me.id);
    noteExercises(me.id ? model.get("entries") : []);
  }

  let waiting = 0;
  let asked = "";
  const keyed = () => findAll(body, "[data-key]");
  /** @returns {HTMLInputElement | null} */
  const wordBox = () => body.querySelector("input[data-key=word]");
  function draw() {
    const held = keyed().find((node) => node === document.activeElement);
    const key = held?.dataset.key;
    body.removeAttribute("aria-busy");
    const signedIn = Boolean(model.get("me").id);
    said.textContent = model.get("said");
    screen.alert.textContent = model.get("trouble");
    const typed = wordBox()?.value;
    const form = resuming ? make("p", {}, "One moment.") : signInForm();
    body.replaceChildren(...there([signedIn ? work() : form, lessons()]));
    const box = wordBox();
    if (box && typed) box.value = typed;
    const before = asked;
    asked = model.get("asking");
    if (asked && asked !== before)
      keyed()
        .find((node) => node.dataset.key === "question")
        ?.focus();
    if (!key || (asked && asked !== before)) return;
    const again = keyed().find((node) => node.dataset.key === key);
    const name = key.split(":")[1];
    const here = keyed().filter((node) => name && node.dataset.key?.endsWith(`:${name}`));
    const receipt = here.find((node) => node.dataset.key?.startsWith("receipt"));
    const next = here.find((node) => node !== receipt);
    const near = key.startsWith("hand in anyway") ? (receipt ?? next) : next;
    const to = again ?? near ?? findAll(body, "a, button, select")[0];
    to?.focus({ preventScroll: true });
    // What was said stands above; where both do not fit, the place of the focus counts.
    said.scrollIntoView({ block: "nearest" });
    to?.scrollIntoView({ block: "nearest" });
  }
  // Several traits change at once: draw when all have arrived.
  const later = () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      const resumed = resuming;
      resuming = false;
      if (!resumed) unanswered = null;
      noteWho();
      draw();
      if (resumed) askAgain();
    }, 0);
  };
  model.on("change", later);
  noteWho();
  draw();
  if (ticket) model.send({ type: "resume", name: ticket.id, ticket: ticket.ticket });
  else askAgain();
  // Coming back from an exercise, the list shows what was answered there.
  const back = () => {
    if (!document.hidden && model.get("me").id) ask("look", { quietly: true });
  };
  const eye = new IntersectionObserver(([entry]) => {
    if (entry.isIntersecting) back();
  });
  eye.observe(el);
  document.addEventListener("visibilitychange", back);
  return () => {
    clearTimeout(waiting);
    model.off("change", later);
    eye.disconnect();
    document.removeEventListener("visibilitychange", back);
    screen.close();
  };
}
