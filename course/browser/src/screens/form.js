// The form of one task: every field with its prompt, its control and its saved state.
// The kernel keeps the answers; this shows them and sends what was typed.

/** @import { Answer, Field, Message, Render } from "../types.js" */

import { idsOf, kindOf, promptBox } from "../kinds.js";
import { clock } from "../logic/clock.js";
import { make, shape } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { benchPanel } from "../parts/bench_readings.js";

const PATIENCE_MS = 5000;
const LOOK_MS = 2000;
const SIGNS = { saved: "●", bad: "▲", wait: "◌", none: "○" };

/**
 * One field.
 *
 * @param {Field} field
 * @param {(message: Message) => void} send
 */
function fieldView(field, send) {
  const kind = kindOf(field);
  const ids = idsOf(field);
  const read = make("p", { class: "ts-read", id: ids.read });
  const status = make("p", { class: "ts-status", id: ids.status, role: "status" });
  let turn = 0;
  /** @type {number | null} */
  let waiting = null;
  /** @type {Answer} */
  let state = {};
  const stopWaiting = () => {
    clearTimeout(waiting ?? undefined);
    waiting = null;
  };
  /** @param {any} value */
  const commit = (value) => {
    turn += 1;
    tell("wait", "saving");
    stopWaiting();
    waiting = window.setTimeout(
      () =>
        tell("wait", "not saved yet: the notebook is busy; your answer is sent and waits its turn"),
      PATIENCE_MS,
    );
    send({ type: "save", name: field.name, value, turn });
  };
  const control = kind.make(field, ids, commit, (changed) => {
    if (changed) tell("wait", "not saved yet: press Enter or leave the box");
    else if (waiting === null) show(state);
  });
  const element = promptBox(field, ids, ids.status);
  if (kind.status === "above") element.append(status, control.element, read);
  else element.append(control.element, read, status);

  /**
   * @param {keyof typeof SIGNS} how
   * @param {string} text
   */
  function tell(how, text) {
    status.className = `ts-status ts-status-${how}`;
    if (status.dataset.text === text) return;
    status.dataset.text = text;
    status.replaceChildren(shape(SIGNS[how]), ` ${text}`);
  }
  /**
   * @param {Answer | undefined} next
   * @param {boolean} [keepStatus]
   */
  function show(next, keepStatus = false) {
    state = next ?? {};
    control.show(state);
    read.replaceChildren();
    read.className = "ts-read";
    if (state.error) {
      read.classList.add("ts-error");
      read.append(shape("▲"), make("b", {}, "Look again: "), state.error);
    } else if (state.read) read.append(`read as ${state.read}`);
    if (keepStatus) return;
    if (state.saved && !state.blank) {
      tell("saved", `saved ${clock(state.saved)}${state.note ? `; ${state.note}` : ""}`);
    } else tell("none", kind.blank ?? "not answered yet");
  }
  const inTrouble = () => status.classList.contains("ts-status-bad");
  return {
    name: field.name,
    element,
    /** @param {Answer | undefined} next */
    show(next) {
      if (waiting !== null) return; // what is shown here is newer than what the kernel knows
      show(next, inTrouble());
    },
    /** @param {any} message */
    saved(message) {
      if (message.turn !== turn) return; // a later change is on its way
      stopWaiting();
      show(message.state);
    },
    /** @param {any} message */
    refused(message) {
      if (message.turn !== turn) return;
      stopWaiting();
      control.refused();
      tell("bad", `not saved: ${message.reason}`);
    },
    lost() {
      clearTimeout(waiting ?? undefined);
      if (waiting !== null || control.pending?.()) {
        tell("bad", "not saved: the notebook's engine has stopped");
      }
      control.setDisabled(true);
    },
    flush: () => control.flush?.(),
    summary: () => ({
      answered: Boolean(state.saved) && !state.blank,
      trouble: inTrouble(),
      waiting: waiting !== null,
    }),
  };
}

/** @type {Render} */
export function renderForm({ model, el }) {
  /** @type {Field[]} */
  const fields = model.get("fields");
  const views = fields.map((field) => fieldView(field, send));
  const byName = new Map(views.map((view) => [view.name, view]));
  const header = make("p", { class: "ts-who" });
  const total = make("p", { class: "ts-total" });
  const screen = openScreen(
    { model, el },
    {
      kind: "form",
      lost() {
        for (const view of views) view.lost();
        bench.lost();
        sumUp();
      },
    },
  );
  const bench = benchPanel(model, screen.send, () => {
    el.dispatchEvent(new CustomEvent("twoshaft-redraw", { bubbles: true }));
  });
  screen.show(
    make("div", { class: "ts-top" }, header, total),
    screen.alert,
    bench.element,
    ...views.map((view) => view.element),
  );

  /** @param {Message} message */
  function send(message) {
    screen.send(message);
    sumUp();
  }
  function sumUp() {
    const all = views.map((view) => view.summary());
    const answered = all.filter((one) => one.answered).length;
    const trouble = all.filter((one) => one.trouble).length;
    const waiting = all.some((one) => one.waiting);
    const how = trouble ? `, ${trouble} not saved` : waiting ? ", saving" : ", all saved";
    const quiet = !trouble && !waiting && !answered;
    total.textContent = `${answered} of ${views.length} answered${quiet ? "" : how}`;
  }
  function showAll() {
    header.textContent = model.get("header");
    const states = model.get("states");
    for (const view of views) view.show(states[view.name]);
    sumUp();
  }

  let asked = 0;
  // Another window may have saved since.
  const look = () => {
    if (document.visibilityState === "hidden") for (const view of views) view.flush();
    if (document.visibilityState !== "visible" || Date.now() - asked < LOOK_MS) return;
    asked = Date.now();
    model.send({ type: "look" });
  };
  document.addEventListener("visibilitychange", look);
  el.addEventListener("focusin", (event) => {
    if (!(event.relatedTarget instanceof Node && el.contains(event.relatedTarget))) look();
  });
  screen.follow("change:states change:header", showAll);
  screen.follow("msg:custom", (message) => {
    if (message.type === "saved") byName.get(message.name)?.saved(message);
    if (message.type === "refused") byName.get(message.name)?.refused(message);
    sumUp();
  });
  screen.follow("msg:custom", bench.hear);
  screen.follow("change:bench", bench.show);
  showAll();
  bench.show();
  screen.alert.textContent = model.get("notice");
  return () => {
    screen.close();
    document.removeEventListener("visibilitychange", look);
  };
}
