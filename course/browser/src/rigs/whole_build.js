// The simulated bench: a tray of steps with their parts, the step in hand with its decisions, and
// the unit in section, to whose places the parts are brought.

/** @import { Box } from "../logic/placing.js" */
/** @import { Stage } from "../logic/steps.js" */
/** @import { Answer, Field, Message, Render } from "../types.js" */

import { idsOf, kindOf, promptBox } from "../kinds.js";
import { placeAt, turned } from "../logic/placing.js";
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
import { photographs } from "../parts/photographs.js";
import { carried, copied, small } from "../parts/placing.js";
import { unitPicture } from "../parts/unit_picture.js";

/**
 * @typedef {{
 *   parts: string[], box: Box, moves: boolean, tool: [name: string | null, svg: string | null],
 * }} Tray what the picture shows of a step
 * @typedef {{
 *   marked: boolean, who: string, labels: Record<string, string>, stages: Stage[],
 *   tray: Record<string, Tray>,
 * }} Plan
 * @typedef {{
 *   step?: string, label: string, stands: boolean, plain: string[], cautions: string[],
 *   read: [string, string][], card: [string, string][], fields?: Field[], operations: string[],
 *   held: { field?: string, looks?: Record<string, [svg: string, box: Box]> },
 * }} Hand
 * @typedef {"hand" | "told" | "after"} Focus where the keyboard goes once the answer is here
 */

/** What a drawn tool takes up: `SIDE_PX` of plots/bench_tools.py. @type {Box} */
const TOOL = [-4, -4, 104, 104];

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
    {
      class: "ts-box ts-stage-choice",
      "aria-label": "Stage",
      onchange: () => {
        paintSteps();
        showRow();
      },
    },
    ...optionsOf(plan.stages.map(([id, name]) => [id, name])),
  );
  const own = photographs(model);
  const picture = unitPicture(model.get("picture"), {
    name: "The bench, in section",
    onChoose: (part) => {
      if (part) own.show("part", [part]);
    },
  });
  const inPicture = make("p", { class: "ts-hint ts-in-picture", role: "status" });
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
    "Up and down walk through the steps, left and right change the stage, Enter takes a step in hand; arrow keys or the figures 1 to 9 choose its way round and where a driver presses, Enter again puts it in its place. With a hand: carry the drawn part, gauge or driver to its place in the section.",
  );
  const hand = make("div", {
    class: "ts-hand",
    role: "group",
    "aria-label": "Step in hand",
    onkeydown: (event) => {
      if (chosenBy(event)) return;
      if (event.key !== "Enter" || !event.target.matches("input[type=radio], .ts-number-box"))
        return;
      event.preventDefault();
      if (model.get("hand").stands) goOn();
      else doIt();
    },
  });
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
  const bench = make(
    "div",
    { class: "ts-build" },
    make("div", { class: "ts-build-left" }, make("div", { class: "ts-tools" }, stage, next), steps),
    make("div", { class: "ts-build-hand" }, hand),
    make("div", { class: "ts-build-unit" }, ...picture.nodes, inPicture, own.node),
    make(
      "div",
      { class: "ts-tools ts-build-end" },
      make("span", { class: "ts-pair" }, outChoice, out),
      over,
    ),
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
    bench,
    facts,
    wrongHead,
    wrong,
    details,
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
    showRow();
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
    const rows = mine.map(rowOf);
    if (rows[0] !== steps.firstElementChild) steps.replaceChildren(...rows);
    const now = JSON.stringify([stage.value, mine.map(stateOf), inHand]);
    for (const node of rows) node.tabIndex = node.dataset.step === row ? 0 : -1;
    if (now === listed) return;
    listed = now;
    for (const node of rows) dressRow(node, inHand);
    toRow = inHand ?? row ?? "";
  }
  let toRow = ""; // the row that is to come into sight
  function showRow() {
    const current = toRow && rowNodes().find((node) => node.dataset.step === toRow);
    toRow = "";
    if (current) steps.scrollTop = current.offsetTop - steps.offsetTop - current.offsetHeight;
  }
  /** A step's row stays the same one: what is drawn in it is styled and laid out once. @type {Map<string, HTMLElement>} */
  const knownRows = new Map();
  /** @param {string} step */
  function rowOf(step) {
    const known = knownRows.get(step);
    if (known) return known;
    const node = make(
      "button",
      {
        type: "button",
        "data-step": step,
        onclick: () => {
          row = step;
          take("list", step);
        },
      },
      thumbOf(step),
      make("span", {}),
    );
    knownRows.set(step, node);
    return node;
  }
  /**
   * @param {HTMLElement} node
   * @param {string | undefined} inHand
   */
  function dressRow(node, inHand) {
    const step = String(node.dataset.step);
    const { sign, word } = stateOf(step);
    node.className = `ts-button ts-buildstep ts-buildstep-${word}`;
    node.setAttribute("aria-label", `${plan.labels[step]}: ${word}`);
    if (step === inHand) node.setAttribute("aria-current", "step");
    else node.removeAttribute("aria-current");
    node.lastElementChild?.replaceChildren(shape(sign), plan.labels[step]);
  }

  // ---- parts in the hand
  /**
   * A step's parts, drawn; empty where the picture shows none.
   *
   * @param {string} step
   * @param {number} wide at most [px]
   * @param {number} tall at most [px]
   */
  function drawn(step, wide, tall) {
    const tray = plan.tray[step];
    return tray ? small(copied(picture.drawing, tray.parts), tray.box, wide, tall) : null;
  }
  /** @type {(() => void)[]} */
  const letGoes = [];
  /** @param {string} step */
  function thumbOf(step) {
    const svg = drawn(step, 44, 30);
    const node = make("span", { class: "ts-thumb" }, svg ?? "");
    if (svg && plan.tray[step].moves) {
      carry(
        node,
        () => step,
        () => svg,
      );
    }
    return node;
  }
  /**
   * Lets a hand carry a step's parts to a place in the section, which does the step there.
   *
   * @param {HTMLElement} handle
   * @param {() => string} stepOf
   * @param {() => SVGSVGElement | null} held
   */
  function carry(handle, stepOf, held) {
    const letGo = carried(handle, {
      drawing: picture.drawing,
      held,
      begin: () => {
        const step = stepOf();
        if (model.get("hand").step === step) return;
        row = step;
        send({ type: "take", step });
      },
      drop: (at) => {
        const step = stepOf();
        for (const view of views.values()) view.flush();
        const part = placeAt(at, model.get("picture").boxes, plan.tray[step].parts);
        send({ type: "put", step, part }, "after");
      },
    });
    letGoes.push(letGo);
  }
  /**
   * A figure chooses the answer of that place in the list that the keyboard is in.
   *
   * @param {KeyboardEvent} event
   */
  function chosenBy(event) {
    const here = /** @type {HTMLElement} */ (event.target);
    if (withOrder(event) || !/^[1-9]$/.test(event.key) || !here.matches("input[type=radio]"))
      return false;
    const field = /** @type {HTMLElement} */ (here.closest("[data-field]"));
    const wanted = findAll(field, "input[type=radio]:not(:disabled)")[Number(event.key) - 1];
    event.preventDefault();
    wanted?.focus();
    wanted?.click();
    return true;
  }
  /** The way round that is chosen, and the list of those there are. */
  function waysInHand() {
    const inputs = /** @type {HTMLInputElement[]} */ (
      findAll(hand, '[data-field^="way-"] input[type=radio]')
    );
    return { inputs, now: inputs.find((one) => one.checked)?.value };
  }
  function turnIt() {
    const { inputs, now } = waysInHand();
    const to = turned(
      inputs.map((one) => one.value),
      now,
    );
    inputs.find((one) => one.value === to)?.click();
    showHeld();
  }
  const heldFrame = make("div", { class: "ts-held-frame" });
  const toolFrame = make("div", { class: "ts-tool-frame" });
  const turnButton = namedButton("Turn it", turnIt, "Turn it: the other way round");
  const toolName = make("p", { class: "ts-hint" });
  const heldBox = make("div", { class: "ts-held-box" }, heldFrame, turnButton, toolFrame, toolName);
  let heldNow = "";
  carry(
    heldFrame,
    () => model.get("hand").step,
    () => heldFrame.querySelector("svg"),
  );
  // a driver whose ring is asked is set down on that ring
  letGoes.push(
    carried(toolFrame, {
      drawing: picture.drawing,
      held: () => toolFrame.querySelector("svg"),
      drop: (at) => send({ type: "bear", step: model.get("hand").step, at }, "hand"),
    }),
  );
  // What is in the hand, as it is held.
  function showHeld() {
    /** @type {Hand} */
    const { step, held, stands } = model.get("hand");
    const { inputs, now } = waysInHand();
    turnButton.hidden = !inputs.length;
    const [tool, outline] = plan.tray[step ?? ""]?.tool ?? [];
    const moves = plan.tray[step ?? ""]?.moves;
    heldBox.hidden = !step || stands || !(moves || outline);
    toolName.textContent = (outline && tool) || "";
    toolFrame.hidden = !(moves && outline);
    if (!step || heldBox.hidden) return;
    const way = (held.field && now) || "";
    const key = `${step} ${way}`;
    if (key === heldNow) return;
    heldNow = key;
    if (outline) toolFrame.replaceChildren(small(outline, TOOL, 60, 60));
    const look = held.looks?.[way];
    const taken = look ?? (outline && !moves ? /** @type {const} */ ([outline, TOOL]) : null);
    heldFrame.replaceChildren(
      (taken ? small(taken[0], taken[1], 120, 84) : drawn(step, 120, 84)) ?? "",
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
    // sealant is laid on a face, which is drawn larger and takes the section's place
    bench.classList.toggle(
      "ts-build-face",
      (now.fields ?? []).some((one) => one.kind === "film"),
    );
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
    const shown = [...views.values()].map((view) => view.element);
    /** @param {HTMLElement} one */
    const isWay = (one) => String(one.dataset.field).startsWith("way-");
    hand.replaceChildren(
      make("p", { class: "ts-prompt ts-hand-name", tabindex: "-1" }, now.label),
      make(
        "div",
        { class: "ts-hand-row" },
        heldBox,
        make(
          "div",
          {},
          ...now.plain.map((text) => make("p", { class: "ts-hint" }, text)),
          ...now.cautions.map((text) =>
            make("p", { class: "ts-caution" }, make("b", {}, "Take care: "), text),
          ),
          ...shown.filter(isWay),
          ...(now.card.length && !shown.some(isWay) ? [rows(now.card)] : []),
        ),
      ),
      ...(now.read.length
        ? [make("p", { class: "ts-prompt" }, "Read at the bench"), rows(now.read)]
        : []),
      ...(now.card.length && shown.some(isWay) ? [rows(now.card)] : []),
      ...shown.filter((one) => !isWay(one)),
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
    paintHand(); // first: what held the keyboard goes, and the browser then styles all that has changed
    finding.textContent = view.finding;
    status.textContent = view.status;
    status.hidden = !view.status;
    if (told.textContent !== said.join("")) {
      told.replaceChildren(...said.map((text) => make("p", {}, text)));
    }
    paintSteps();
    for (const [name, one] of views) one.show(view.states[name], view.turn);
    showHeld();
    showUnit(view);
    facts.replaceChildren(...factRows(view.facts));
    wrong.replaceChildren(
      ...itemsOf(view.faults.map((/** @type {[string, string]} */ [, text]) => text)),
    );
    wrongHead.hidden = wrong.hidden = !view.faults.length;
    showDone(view.done);
    record.innerHTML = view.record;
    details.open = Boolean(view.record);
    el.setAttribute("aria-busy", String(view.turn < turn));
    // what asks where things are comes after all that moves them: the page is laid out once
    showRow();
    bringIntoSight(view);
    if (!focusAt || view.turn < focusAt.turn) return;
    const { focus } = focusAt;
    focusAt = null;
    if (focus === "told") told.focus();
    else if (focus === "after" && !model.get("hand").step) onwards();
    else (firstControl() ?? next).focus();
  }
  let shownUnit = "";
  let lookedAt = "";
  /** @param {any} view */
  function showUnit(view) {
    const now = JSON.stringify(view.build);
    if (now !== shownUnit) {
      shownUnit = now;
      picture.show(view.build);
      inPicture.textContent = view.build.words;
    }
  }
  /** @param {any} view */
  function bringIntoSight(view) {
    /** @type {Hand} */
    const { step, operations } = model.get("hand");
    const tool = view.build.tool;
    const at = `${step} ${tool ?? ""}`;
    if (step === undefined || at === lookedAt) return;
    lookedAt = at;
    const [first] = plan.tray[step]?.parts ?? [];
    if (tool) picture.moveTo({ x: tool[0], y: tool[1] });
    else if (first) picture.look(first);
    own.show("operation", operations);
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
  return () => {
    for (const letGo of letGoes) letGo();
    own.close();
    screen.close();
  };
}
