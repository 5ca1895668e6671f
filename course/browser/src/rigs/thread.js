// Thread and friction chooser: set a thread, its state, a torque and a tool; see the clamp band.

/** @import { Render } from "../types.js" */

import { factRows, freshId, make, optionsOf, setAll } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/** @type {Render} */
export function renderThread({ model, el }) {
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const band = make("div", { class: "tsj-band" });
  const section = make("div", { class: "tsj-section" });
  const facts = make("dl", { class: "ts-facts" });
  /** @type {string | null} */
  let awaited = null; // the choice whose answer is on its way
  /** @type {Record<string, string | number> | null} */
  let waiting = null; // what was chosen since: a slider moves faster than answers come
  /**
   * @param {string} name
   * @param {string | number} value
   */
  const choose = (name, value) => {
    waiting = { ...waiting, [name]: value };
    if (awaited === null) sendNext();
  };
  function sendNext() {
    awaited = freshId("choice");
    screen.send({ type: "choose", chosen: waiting, turn: awaited });
    waiting = null;
  }
  const grid = make("div", { class: "tsj-settings" });
  /**
   * @template {HTMLElement} T
   * @param {string} words
   * @param {T} control
   * @param {HTMLElement} [after]
   */
  const row = (words, control, after) => {
    const id = freshId("set");
    control.id = id;
    grid.append(
      make("label", { for: id }, words),
      make("span", { class: "tsj-slide" }, control, after),
    );
    return control;
  };
  /**
   * @param {string} name
   * @param {string} words
   * @param {readonly (string | [string, string])[]} options
   */
  const select = (name, words, options) =>
    row(
      words,
      make(
        "select",
        { class: "ts-box", onchange: (event) => choose(name, event.target.value) },
        ...optionsOf(options.map((one) => (typeof one === "string" ? [one, one] : one))),
      ),
    );
  /**
   * @param {string} name
   * @param {string} words
   * @param {HTMLElement} figure
   */
  const slide = (name, words, figure) =>
    row(
      words,
      make("input", {
        type: "range",
        oninput: (event) => choose(name, Number(event.target.value)),
      }),
      figure,
    );

  const boxes = {
    group: select("group", "Bolt of the unit", plan.groups),
    thread: select("thread", "Thread", plan.threads),
    strength: select("strength", "Strength class", plan.classes),
    state: select("state", "State of the thread", plan.states),
    tool: select("tool", "Tool", plan.tools),
  };
  const torqueFigure = make("output", { class: "tsj-figure" });
  const torque = slide("torque_nm", "Torque", torqueFigure);
  const engagementFigure = make("output", { class: "tsj-figure" });
  const engagement = slide("engagement_mm", "Thread that meets", engagementFigure);

  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("What gives way first?", {
      first: torque,
      begin: "set the torque",
    }),
    screen.alert,
    finding,
    band,
    make("div", { class: "tsj-bench" }, grid, section),
    facts,
  );

  /**
   * @param {HTMLInputElement} range
   * @param {number} low
   * @param {number} high
   * @param {number} step
   * @param {number} value
   * @param {string} words
   */
  const setRange = (range, low, high, step, value, words) => {
    setAll(range, { min: low, max: high, step });
    if (awaited === null) range.value = String(value); // never under a moving hand
    range.setAttribute("aria-valuetext", words);
  };
  function show() {
    const view = model.get("view");
    if (awaited !== null && view.turn !== awaited) return;
    awaited = null;
    if (waiting !== null) sendNext();
    const { chosen } = view;
    finding.textContent = view.finding;
    band.innerHTML = view.band;
    section.innerHTML = view.section;
    facts.replaceChildren(...factRows(view.facts));
    for (const [name, box] of Object.entries(boxes)) box.value = chosen[name];
    setRange(torque, 1, view.topTorque, 0.5, chosen.torque_nm, view.torqueText);
    torqueFigure.textContent = view.torqueText;
    setRange(
      engagement,
      view.lowEngagement,
      view.topEngagement,
      0.5,
      chosen.engagement_mm,
      view.engagementText,
    );
    engagementFigure.textContent = view.engagementText;
  }
  screen.follow("change:view", show);
  show();
  return screen.close;
}
