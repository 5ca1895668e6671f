// Shim bench: a support in section, the shim from the shelf, a dial indicator, and heat.

/** @import { Render } from "../types.js" */

import { latestOnly } from "../logic/turns.js";
import { button, make } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { dialGauge, picker, settingAxis, slider } from "../parts/gauges.js";

/** @type {Render} */
export function renderShims({ model, el }) {
  const about = model.get("about");
  let state = model.get("shown").state;
  const dial = dialGauge();
  const axis = about.readingsOnly ? null : settingAxis(about);
  const finding = make("p", { class: "ts-finding", role: "status" });
  const words = make("div", {});
  const asks = latestOnly((wanted, turn) => screen.send({ type: "set", state: wanted, turn }));
  /** @param {Record<string, any>} part */
  const change = (part) => {
    state = { ...state, ...part };
    asks.ask(state);
  };
  // A ring that was moved takes its rollers off the rib again.
  /**
   * @param {0 | 1} n which shim
   * @param {string} mm
   */
  const fit = (n, mm) => {
    const shims = [...state.shims];
    shims[n] = mm;
    change({ shims: shims.filter(Boolean), turns: 0 });
  };
  /**
   * @param {string} text
   * @param {() => void} action
   * @param {string} on
   */
  const press = (text, action, on) => button(text, action, { "aria-pressed": on });
  const turn = button("Turn the shaft ten times", () => change({ turns: state.turns + 10 }));
  const pull = press("Pull the shaft away", () => change({ side: "away" }), "true");
  const push = press("Push it to the dial", () => change({ side: "towards" }), "false");
  const plunger = picker("Plunger", about.plungers, state.plunger, (mm) => change({ plunger: mm }));
  /** @type {HTMLElement[]} */
  const tools = [
    make("div", { class: "ts-tools" }, about.rolls ? turn : null, plunger.row, pull, push),
  ];
  if (!about.readingsOnly) {
    const first = picker("Shim", about.shelf, state.shims[0], (mm) => fit(0, mm));
    const second = about.second
      ? picker("and", [["", "no second shim"], ...about.shelf], state.shims[1] ?? "", (mm) =>
          fit(1, mm),
        )
      : null;
    tools.unshift(make("div", { class: "ts-tools" }, first.row, second?.row));
    tools.push(
      slider("Warm the unit", {
        min: 0,
        max: 100,
        step: 1,
        value: state.warmth,
        onInput: (warmth) => change({ warmth }),
        words: (share) =>
          share
            ? `case ${Math.round((about.caseRise * share) / 100)} K warmer`
            : "cold, as at the bench",
      }).row,
    );
  }
  const screen = openScreen({ model, el }, { kind: "rig" });
  const section = make("div", {
    class: "tsg-wide",
    tabindex: "0",
    role: "group",
    "aria-label": "Half section",
  });
  section.innerHTML = about.section;
  const parts = [
    about.readingsOnly
      ? screen.asks("How far does the shaft move?", {
          first: about.rolls ? turn : push,
          begin: about.rolls ? "turn the shaft" : "push the shaft",
          who: "Take your readings here; write them in the form.",
        })
      : screen.asks("Which shim gives the setting that you want?", {
          first: tools[0].querySelector("select"),
          begin: "choose a shim",
        }),
    screen.alert,
    about.readingsOnly && section,
    make(
      "div",
      { class: "tsg-beside" },
      !about.readingsOnly && section,
      make(
        "div",
        { class: "tsg-gauge" },
        dial.node,
        make("div", {}, "Dial at the shaft's right end, one mark 0.01 mm"),
      ),
      about.readingsOnly && make("div", { class: "tsg-side" }, ...tools, finding),
    ),
    ...(about.readingsOnly ? [] : [...tools, finding]),
    axis &&
      make(
        "div",
        {},
        make("p", { class: "ts-hint" }, "Setting of the pair. Triangle: cold. Ring: now."),
        make(
          "div",
          { class: "tsg-wide", tabindex: "0", role: "group", "aria-label": "Axis of settings" },
          axis.node,
        ),
      ),
    words,
  ];
  screen.show(...parts.filter(Boolean));
  function show() {
    const shown = model.get("shown");
    if (!asks.waiting) state = shown.state;
    dial.set(shown.dial, shown.dialWords);
    pull.setAttribute("aria-pressed", String(shown.state.side === "away"));
    push.setAttribute("aria-pressed", String(shown.state.side === "towards"));
    finding.textContent = shown.finding;
    if (axis) {
      axis.set(shown.cold, shown.warm, shown.words.join(" "));
      words.replaceChildren(
        ...shown.words.map((/** @type {string} */ text) => make("p", {}, text)),
      );
    }
    asks.answered(shown.turn);
  }
  const refused = () => asks.free();
  screen.follow("change:shown", show);
  screen.follow("msg:custom", refused);
  show();
  return screen.close;
}
