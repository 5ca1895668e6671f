// Lifting: five sliders and a grip, the lift drawn, the limit and the index said.

/** @import { Render } from "../types.js" */

import { freshId, make, optionsOf } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/** @type {Render} */
export function renderLifting({ model, el }) {
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const working = make("p", { class: "tsl-sum" });
  const drawing = make("div", { class: "tsl-drawing" });
  const controls = new Map();
  /** @type {[string, string, string, number, number, number][]} */
  const sliders = plan.sliders;
  const rows = sliders.map(([name, words, unit, low, high, step]) => {
    const id = freshId(name.replace("_", "-"));
    const figure = make("output", { class: "tsl-figure", for: id });
    const slider = make("input", {
      id,
      type: "range",
      min: low,
      max: high,
      step,
      oninput: () => {
        say();
        screen.send({ type: "set", name, value: Number(slider.value) });
      },
    });
    const say = () => {
      figure.textContent = `${slider.value} ${unit}`;
      slider.setAttribute("aria-valuetext", `${slider.value} ${unit === "°" ? "degrees" : unit}`);
    };
    controls.set(name, { slider, say });
    return make("div", { class: "tsl-row" }, make("label", { for: id }, words), slider, figure);
  });
  const grip = make(
    "select",
    {
      class: "ts-box",
      "aria-label": "Grip",
      onchange: () => screen.send({ type: "set", name: "grip", value: grip.value }),
    },
    ...optionsOf(plan.grips),
  );
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("Is this lift safe by hand?", {
      first: controls.values().next().value?.slider,
      begin: "set the load",
    }),
    screen.alert,
    finding,
    make(
      "div",
      { class: "tsl-sliders", role: "group", "aria-label": "The lift" },
      ...rows,
      make("div", { class: "tsl-row" }, make("span", {}, "Grip"), grip),
    ),
    drawing,
    working,
    make(
      "p",
      { class: "ts-keys" },
      "Dashed: where the load goes. The figure is drawn for the eye; only the distances count.",
    ),
  );
  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    working.textContent = view.sum;
    drawing.innerHTML = view.drawing;
    for (const [name, { slider, say }] of controls) {
      if (document.activeElement !== slider) slider.value = view.sizes[name];
      say();
    }
    grip.value = view.sizes.grip;
  }
  screen.follow("change:view", show);
  show();
  return screen.close;
}
