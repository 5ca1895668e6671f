// The simulated bench: a list of steps, the step in hand with its decisions, and the bench.

/** @import { Stage } from "../logic/steps.js" */
/** @import { Answer, Field, Message, Render } from "../types.js" */

import { idsOf, kindOf, promptBox } from "../kinds.js";
import { nextOpen, reached, stageOf, stepsOf } from "../logic/steps.js";
import {
  factRows,
  findAll,
  itemsOf,
  make,
  namedButton,
  optionsOf,
  shape,
  withOrder,
} from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/**
 * @typedef {{ marked: boolean, who: string, labels: Record<string, string>, stages: Stage[] }} Plan
 * @typedef {{
 *   step?: string, label: string, stands: boolean, plain: string[], cautions: string[],
 *   read: [string, string][], card: [string, string][], fields?: Field[],
 * }} Hand
 * @typedef {"hand" | "told" | "after"} Focus where the keyboard goes once the answer is here
 */

/** @type {Render} */
export function renderWholeBuild({ model, el }) {
  /** @type {Plan} */
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding" });
  const told = make("div", {
    class: "ts-happened ts-told",
    role: "status",
    tabindex: "-1",
    "aria-label": "What happened",
  });
  const stage = make(
    "select",
    { class: "ts-box ts-stage-choice", "aria-label": "Stage", onchange: () => paintSteps() },
    ...optionsOf(plan.stages.map(([id, name]) => [id, name])),
  );
  const next = namedButton(plan.marked ? "Next open step" : "Next ready step", () => take("next"));
  next.classList.add("ts-next");
  const steps = make("div", {
    class: "ts-buildlist",
    role: "toolbar",
    "aria-orientation": "vertical",
    "aria-label": "Steps of this stage",
    onkeydown: (event) => walk(event),
  });
  const keys = make(
    "details",
    { class: "ts-keys" },
    make("summary", {}, "Keys"),
    "Up and down walk through the steps, left and right change the stage, Enter takes a step in hand; Enter again does it.",
  );
  const hand = make("div", {
    class: "ts-hand",
    role: "group",
    "aria-label": "Step in hand",
    onkeydown: (event) => {
      if (event.key !== "Enter" || !event.target.matches("input[type=radio], .ts-number-box"))
        return;
      event.preventDefault();
      if (model.get("hand").stands) goOn();
      else doIt();
    },
  });
  const figure = make("div", { class: "ts-scroll ts-fit" });
  const facts = make("dl", { class: "ts-facts" });
  const wrong = make("ul", { class: "ts-sentences" });
  const wrongHead = make("p", { class: "ts-prompt" }, "Wrong so far");
  const outChoice = make("select", {
    class: "ts-box ts-before",
    "aria-label": "A step that stands",
  });
  const out = namedButton("Take out again", () => {
    if (outChoice.value) send({ type: "out", step: outChoice.value }, "hand");
  });
  const over = namedButton("Put the tools down", () => send({ type: "over" }, "told"));
  over.classList.add("ts-over");
  const record = make("div", {});
  const status = make("p", { class: "ts-status" });
  const details = make(
    "details",
    {
      ontoggle: () => {
        if (details.open !== Boolean(model.get("view").record))
          send({ type: "record", open: details.open });
      },
    },
    make("summary", {}, "Build record"),
    record,
  );
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("Which step comes next, and what does it need?", {
      first: next,
      begin: "press the lit button",
      who: plan.who,
    }),
    screen.alert,
    finding,
    status,
    told,
    make(
      "div",
      { class: "ts-build" },
      make(
        "div",
        { class: "ts-build-left" },
        make("div", { class: "ts-tools" }, stage, next),
        steps,
      ),
      make(
        "div",
        {},
        hand,
        make(
          "div",
          { class: "ts-tools" },
          make("span", { class: "ts-pair" }, outChoice, out),
          over,
        ),
      ),
    ),
    facts,
    wrongHead,
    wrong,
    details,
    make("details", {}, make("summary", {}, "How far each stage is"), figure),
    keys,
  );

  let turn = 0;
  /** @type {{ turn: number, focus: Focus } | null} */
  let focusAt = null;
  /**
   * @param {Message} message
   * @param {Focus | null} [focus]
   */
  function send(message, focus = null) {
    turn += 1;
    focusAt = focus && { turn, focus };
    el.setAttribute("aria-busy", "true");
    screen.send({ ...message, turn });
  }

  // ---- the steps of a stage
  let listed = "";
  /** @type {string | null} */
  let row = null; // the step of the list at which the keyboard comes in
  /** @type {"list" | "next"} */
  let route = "next"; // how the last step was taken in hand: from the list, or as the next one
  /** @param {string} step */
  const isOpen = (step) => !model.get("view").done.includes(step);
  const rowNodes = () => findAll(steps, "[data-step]");
  /** @param {string | null | undefined} step */
  const focusOn = (step) =>
    rowNodes()
      .find((node) => node.dataset.step === step)
      ?.focus();
  const place = () => ({ stages: plan.stages, stage: stage.value, step: row, isOpen });
  /**
   * @param {"list" | "next"} from
   * @param {string} [step]
   */
  function take(from, step) {
    route = from;
    send(from === "list" ? { type: "take", step } : { type: "next" }, "hand");
  }
  /**
   * Shows a step in the list, whichever stage it belongs to.
   *
   * @param {string} step
   */
  function turnTo(step) {
    stage.value = stageOf(plan.stages, step) ?? stage.value;
    row = step;
    paintSteps();
    focusOn(step);
  }
  /** @param {KeyboardEvent} event */
  function walk(event) {
    if (withOrder(event)) return;
    const to = reached(event.key, { ...place(), labels: plan.labels });
    if (!to) return;
    event.preventDefault();
    turnTo(to);
  }
  // Where hands go on once a step is done with: to the next one as it was taken, or to the tools.
  function onwards() {
    const to = nextOpen(place());
    if (!to) over.focus();
    else if (route === "next") next.focus();
    else turnTo(to);
  }
  function goOn() {
    const isDone = model.get("view").done.length >= Object.keys(plan.labels).length;
    if (route === "next" && !isDone) take("next");
    else onwards();
  }
  /** @param {string} step */
  function stateOf(step) {
    const { done, ready } = model.get("view");
    if (done.includes(step)) return { sign: "✓", word: "done" };
    if (ready.includes(step)) return { sign: "▸", word: "ready" };
    return { sign: "○", word: plan.marked ? "open" : "waits" };
  }
  function paintSteps() {
    const mine = stepsOf(plan.stages, stage.value);
    if (row === null || !mine.includes(row)) row = mine.find(isOpen) ?? mine[0];
    const inHand = model.get("hand").step;
    const now = JSON.stringify([stage.value, mine.map(stateOf), inHand]);
    if (now === listed) {
      for (const node of rowNodes()) node.tabIndex = node.dataset.step === row ? 0 : -1;
      return;
    }
    listed = now;
    const held = rowNodes().find((node) => node === document.activeElement)?.dataset.step;
    steps.replaceChildren(...mine.map((step) => rowOf(step, inHand)));
    if (held) focusOn(held);
  }
  /**
   * @param {string} step
   * @param {string | undefined} inHand
   */
  function rowOf(step, inHand) {
    const { sign, word } = stateOf(step);
    return make(
      "button",
      {
        type: "button",
        class: `ts-button ts-buildstep ts-buildstep-${word}`,
        "data-step": step,
        tabindex: step === row ? "0" : "-1",
        "aria-current": step === inHand ? "step" : false,
        "aria-label": `${plan.labels[step]}: ${word}`,
        onclick: () => {
          row = step;
          take("list", step);
        },
      },
      shape(sign),
      plan.labels[step],
    );
  }

  // ---- the step in hand
  let shownHand = "";
  /** @type {Map<string, ReturnType<typeof askView>>} */
  let views = new Map();
  /** @param {Field} field */
  function askView(field) {
    const ids = idsOf(field);
    const read = make("p", { class: "ts-read", id: ids.read, role: "status" });
    let sent = 0; // what is shown here is newer than answers to earlier messages
    /** @param {any} value */
    const commit = (value) => {
      send({ type: "set", name: field.name, value });
      sent = turn;
    };
    const control = kindOf(field).make(field, ids, commit, () => {});
    const element = promptBox(field, ids, null);
    element.append(control.element, read);
    element.dataset.field = field.name;
    return {
      element,
      flush: () => control.flush?.(),
      /**
       * @param {Answer | undefined} state
       * @param {number} at the turn that it answers
       */
      show(state = {}, at) {
        if (at < sent) return;
        control.show(state);
        const echo = state.read ? `read as ${state.read}` : "";
        read.textContent = state.error ? `▲ Look again: ${state.error}` : echo;
      },
    };
  }
  /** @param {[string, string][]} pairs */
  const rows = (pairs) => make("dl", { class: "ts-facts" }, ...factRows(pairs));
  function paintHand() {
    /** @type {Hand} */
    const now = model.get("hand");
    const key = JSON.stringify(now);
    if (key === shownHand) return;
    shownHand = key;
    hand.dataset.stands = String(Boolean(now.stands));
    views = new Map((now.fields ?? []).map((field) => [field.name, askView(field)]));
    if (!now.step) {
      const words = "No step in hand. Choose one from the list, or press the button above it.";
      hand.replaceChildren(make("p", { class: "ts-hint" }, words));
      return;
    }
    const done = namedButton(`Do it: ${now.label}`, doIt);
    done.classList.add("ts-do");
    const tools = now.stands
      ? [
          namedButton("Go on", goOn),
          namedButton("Take it out again", () => send({ type: "out", step: now.step }, "hand")),
        ]
      : [done];
    hand.replaceChildren(
      make("p", { class: "ts-prompt ts-hand-name", tabindex: "-1" }, now.label),
      ...now.plain.map((text) => make("p", { class: "ts-hint" }, text)),
      ...now.cautions.map((text) =>
        make("p", { class: "ts-caution" }, make("b", {}, "Take care: "), text),
      ),
      ...(now.read.length
        ? [make("p", { class: "ts-prompt" }, "Read at the bench"), rows(now.read)]
        : []),
      ...(now.card.length ? [rows(now.card)] : []),
      ...[...views.values()].map((view) => view.element),
      make("div", { class: "ts-tools" }, ...tools),
    );
    const home = stageOf(plan.stages, now.step);
    if (home) [stage.value, row] = [home, now.step];
  }
  function doIt() {
    for (const view of views.values()) view.flush();
    send({ type: "do" }, "after");
  }
  /** The control that the keyboard goes to. @returns {HTMLElement | undefined} */
  function firstControl() {
    const asked = model.get("view").asked_back;
    const box = findAll(hand, "[data-field]").find((node) => node.dataset.field === asked);
    const inside = box && findAll(box, "input:not(:disabled), select, button");
    const every = findAll(
      hand,
      ".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button",
    );
    return inside?.[0] ?? every[0];
  }

  function show() {
    const view = model.get("view");
    /** @type {string[]} */
    const said = view.told;
    finding.textContent = view.finding;
    status.textContent = view.status;
    status.hidden = !view.status;
    if (told.textContent !== said.join("")) {
      told.replaceChildren(...said.map((text) => make("p", {}, text)));
    }
    paintHand();
    paintSteps();
    for (const [name, one] of views) one.show(view.states[name], view.turn);
    if (figure.dataset.shown !== view.figure) {
      figure.innerHTML = view.figure;
      figure.dataset.shown = view.figure;
    }
    facts.replaceChildren(...factRows(view.facts));
    wrong.replaceChildren(
      ...itemsOf(view.faults.map((/** @type {[string, string]} */ [, text]) => text)),
    );
    wrongHead.hidden = wrong.hidden = !view.faults.length;
    showDone(view.done);
    record.innerHTML = view.record;
    details.open = Boolean(view.record);
    el.setAttribute("aria-busy", String(view.turn < turn));
    if (!focusAt || view.turn < focusAt.turn) return;
    const { focus } = focusAt;
    focusAt = null;
    if (focus === "told") told.focus();
    else if (focus === "after" && !model.get("hand").step) onwards();
    else (firstControl() ?? next).focus();
  }
  /** @param {string[]} done */
  function showDone(done) {
    outChoice.disabled = out.disabled = !done.length;
    if (outChoice.dataset.done === done.join(" ")) return;
    outChoice.dataset.done = done.join(" ");
    const lastFirst = [...done].reverse();
    outChoice.replaceChildren(...optionsOf(lastFirst.map((step) => [step, plan.labels[step]])));
  }
  screen.follow("change:view", show);
  show();
  return screen.close;
}
