// The form of one task: every field with its prompt, its control and its saved state.
// The kernel keeps the answers; this shows them and sends what was typed.

/** @import { Answer, Field, Message, Render } from "../types.js" */

import { idsOf, kindOf, promptBox } from "../kinds.js";
import { clock } from "../logic/clock.js";
import { outbox, stillToSend } from "../logic/outbox.js";
import { make, shape } from "../page/dom.js";
import { focusStays } from "../page/focus.js";
import { wear } from "../page/look.js";
import { openScreen } from "../page/screen.js";
import { benchPanel } from "../parts/bench_readings.js";

const PATIENCE_MS = 5000;
const LOOK_MS = 2000;
const SIGNS = { saved: "●", unread: "▲", bad: "▲", wait: "◌", none: "○" };
const KEPT = "kept in this browser until it can be saved";

/**
 * One field.
 *
 * @param {Field} field
 * @param {(message: Message) => void} send
 * @param {ReturnType<typeof outbox>} unsent
 * @param {() => boolean} isOff whether the kernel is out of reach
 */
function fieldView(field, send, unsent, isOff) {
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
    unsent.put(field.name, value, state.revision ?? 0);
    ask(value);
  };
  /** @param {any} value */
  const ask = (value) => {
    turn += 1;
    tell("wait", isOff() ? KEPT : "saving");
    stopWaiting();
    waiting = window.setTimeout(() => tell("wait", KEPT), PATIENCE_MS);
    send({ type: "save", name: field.name, value, turn });
  };
  const control = kind.make(field, ids, commit, (changed, typed) => {
    if (changed) {
      unsent.put(field.name, typed, state.revision ?? 0);
      tell("wait", "not saved yet: press Enter or leave the box");
    } else if (waiting === null) {
      unsent.drop(field.name);
      show(state);
    }
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
    read.replaceChildren(state.read ? `read as ${state.read}` : "");
    if (keepStatus) return;
    if (state.error) {
      const { error, saved = "", note } = state;
      tell(
        "unread",
        `Look again: ${error} Kept as typed, ${clock(saved)}${note ? `; ${note}` : ""}.`,
      );
    } else if (state.saved && !state.blank) {
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
      if (!control.pending?.()) unsent.drop(field.name);
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
    /** The line to the kernel is interrupted, or the kernel has gone. */
    off() {
      clearTimeout(waiting ?? undefined);
      if (waiting !== null || control.pending?.()) tell("wait", KEPT);
    },
    /** Sends what was answered and never saved, here or in an earlier window. */
    catchUp() {
      const entry = unsent.get(field.name);
      if (!entry) return;
      if (stillToSend(entry, state)) {
        control.show({ ...state, value: entry.value, error: "" });
        ask(entry.value);
      } else unsent.drop(field.name);
    },
    flush: () => control.flush?.(),
    summary: () => ({
      answered: Boolean(state.saved) && !state.blank && !state.error && !state.short,
      unread: Boolean(state.error),
      trouble: inTrouble(),
      waiting: waiting !== null,
    }),
  };
}

/** @type {Render} */
export function renderForm({ model, el }) {
  /** @type {Field[]} */
  const fields = model.get("fields");
  /** @type {string} */
  const sheet = model.get("sheet");
  const unsent = outbox(window.localStorage, sheet);
  let interrupted = false;
  const isOff = () => interrupted || screen.isLost();
  const views = fields.map((field) => fieldView(field, send, unsent, isOff));
  const byName = new Map(views.map((view) => [view.name, view]));
  const header = make("p", { class: "ts-who" });
  const total = make("p", { class: "ts-total" });
  wear(model.get("look"));
  const screen = openScreen(
    { model, el },
    {
      kind: "form",
      lost() {
        for (const view of views) view.off();
        bench.lost();
        sumUp();
      },
      line(down) {
        interrupted = down;
        for (const view of views) down ? view.off() : view.catchUp();
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

  el.dataset.task = model.get("task_id");

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
    const unread = all.filter((one) => one.unread).length;
    const how = trouble
      ? `${trouble} not saved`
      : waiting
        ? isOff()
          ? "the rest kept in this browser"
          : "saving"
        : answered && !unread
          ? "all saved"
          : "";
    const parts = [
      `${answered} of ${views.length} answered`,
      unread ? `${unread} cannot be read` : "",
      how,
    ];
    total.textContent = parts.filter(Boolean).join(", ");
    const detail = { task: model.get("task_id"), answered, asked: views.length, unread };
    el.dispatchEvent(new CustomEvent("twoshaft-progress", { bubbles: true, detail }));
  }
  function showAll() {
    header.textContent = model.get("header");
    const states = model.get("states");
    for (const view of views) view.show(states[view.name]);
    sumUp();
  }

  let asked = 0;
  let again = 0;
  // Another window may have saved since. Who comes back soon is shown it a moment later.
  const look = () => {
    clearTimeout(again);
    if (document.visibilityState === "hidden") for (const view of views) view.flush();
    if (document.visibilityState !== "visible") return;
    const early = asked + LOOK_MS - Date.now();
    if (early > 0) {
      again = window.setTimeout(look, early);
      return;
    }
    asked = Date.now();
    screen.send({ type: "look" });
  };
  // The others are told at once; a window elsewhere finds out when it is looked at.
  const others = sheet ? new BroadcastChannel(`twoshaft-saved:${sheet}`) : null;
  others?.addEventListener("message", ({ data }) => {
    if (data === model.get("task_id")) screen.send({ type: "look" });
  });
  document.addEventListener("visibilitychange", look);
  window.addEventListener("focus", look);
  el.addEventListener("focusin", (event) => {
    if (!(event.relatedTarget instanceof Node && el.contains(event.relatedTarget))) look();
  });
  screen.follow("change:states change:header", showAll);
  screen.follow("msg:custom", (message) => {
    if (message.type === "saved") {
      byName.get(message.name)?.saved(message);
      others?.postMessage(model.get("task_id"));
    }
    if (message.type === "refused") byName.get(message.name)?.refused(message);
    sumUp();
  });
  screen.follow("msg:custom", bench.hear);
  screen.follow("change:bench", bench.show);
  showAll();
  for (const view of views) view.catchUp();
  sumUp();
  bench.show();
  screen.alert.textContent = model.get("notice");
  const unfocus = focusStays(el, `${sheet}/${model.get("task_id")}`);
  return () => {
    clearTimeout(again);
    unfocus();
    others?.close();
    screen.close();
    document.removeEventListener("visibilitychange", look);
    window.removeEventListener("focus", look);
  };
}
