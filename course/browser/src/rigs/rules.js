// Rules around a step: choose a step, see what comes before it and after it, go on from box to box.

/** @import { Render } from "../types.js" */

import { closest, findAll, itemsOf, make, optionsOf } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/** @type {Render} */
export function renderRules({ model, el }) {
  /** @type {[string, string][]} */
  const steps = model.get("steps");
  const names = new Map(steps);
  const near = make("div", {
    class: "ts-scroll tsf-near",
    tabindex: "0",
    role: "region",
    "aria-label": "The rules around the chosen step",
  });
  const words = make("p", { class: "ts-finding", role: "status" });
  const sentences = make("ul", { class: "ts-sentences" });
  const choose = make(
    "select",
    {
      class: "ts-box ts-before",
      "aria-label": "Chosen step",
      onchange: () => select(choose.value),
    },
    ...optionsOf(steps.map(([step, label], i) => [step, `${i + 1}  ${label}`])),
  );
  const screen = openScreen(
    { model, el },
    {
      kind: "rig",
      lost() {
        choose.disabled = true;
      },
    },
  );
  screen.show(
    screen.asks("What comes before this step, and what after it?", {
      first: choose,
      begin: "choose a step, or press one in the picture",
      who: "",
    }),
    screen.alert,
    make("p", { class: "ts-hint" }, model.get("finding")),
    make("div", { class: "ts-tools" }, make("span", { class: "ts-pair" }, "Step ", choose)),
    words,
    near,
    make("details", { class: "ts-keys" }, make("summary", {}, "In words, with reasons"), sentences),
  );
  let pressed = false; // whether the hand goes on in the picture
  /** @param {string} step */
  const select = (step) => screen.send({ type: "choose", step });
  /** @param {Event} event */
  const press = (event) => {
    const step = closest(event, "[data-step]")?.dataset.step;
    if (!step) return;
    pressed = true;
    select(step);
  };
  near.addEventListener("click", press);
  near.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" && event.key !== " ") return;
    if (!closest(event, "[data-step]")) return;
    event.preventDefault();
    press(event);
  });
  function show() {
    const around = model.get("near");
    words.textContent = around.words;
    choose.value = around.step;
    near.innerHTML = around.figure;
    near.querySelector("svg")?.setAttribute("role", "group");
    const boxes = findAll(near, "[data-step]");
    for (const box of boxes) {
      box.setAttribute("role", "button");
      box.setAttribute("tabindex", "0");
      box.setAttribute("aria-label", names.get(String(box.dataset.step)) ?? "");
    }
    sentences.replaceChildren(...itemsOf(around.sentences));
    if (pressed) (boxes[0] ?? choose).focus({ preventScroll: true });
    pressed = false;
  }
  screen.follow("change:near", show);
  show();
  return screen.close;
}
