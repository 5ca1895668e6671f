// Bolted face: choose a bolt, pull it, and see the clamp that every bolt keeps.

/** @import { Render } from "../types.js" */

import { button, closest, findAll, freshId, make } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/** @type {Render} */
export function renderFace({ model, el }) {
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding" });
  const happened = make("p", { class: "tsj-happened", role: "status" });
  const drawing = make("div", { class: "tsj-drawing" });
  drawing.innerHTML = plan.drawing;
  const bars = make("div", { class: "tsj-bars" });
  const bolts = findAll(drawing, "[data-bolt]");

  const id = freshId("torque");
  const torque = make("input", {
    id,
    type: "range",
    min: 10,
    max: 100,
    step: 5,
    oninput: () => sayTorque(),
  });
  torque.value = "100";
  const figure = make("output", { class: "tsj-figure", for: id });
  // The wrench is set in whole steps of its scale, except at the torque itself.
  const nm = () =>
    torque.value === "100"
      ? plan.torque
      : Number(
          (Math.round((plan.torque * Number(torque.value)) / 100 / plan.step) * plan.step).toFixed(
            3,
          ),
        );
  function sayTorque() {
    figure.textContent = `${nm()} N·m`;
    torque.setAttribute(
      "aria-valuetext",
      `${nm()} newton metres, ${torque.value} percent of the torque`,
    );
  }

  /** @param {number} bolt */
  const pull = (bolt) => screen.send({ type: "pull", bolt, torque: nm() });
  const undo = button("Take back", () => screen.send({ type: "undo" }));
  const wait = button("Wait until the film has run out", () => screen.send({ type: "wait" }));
  const film = make(
    "select",
    {
      class: "ts-box",
      "aria-label": "Wet sealant between the faces",
      onchange: () => screen.send({ type: "set", film: Number(film.value) }),
    },
    ...plan.films.map((/** @type {number} */ um) =>
      make("option", { value: um }, um ? `${um} µm thick` : "none"),
    ),
  );
  const scatter = make("input", {
    type: "checkbox",
    onchange: () => screen.send({ type: "set", scattered: scatter.checked }),
  });

  drawing.addEventListener("click", (event) => {
    const bolt = closest(event, "[data-bolt]");
    if (bolt) {
      reach(bolt);
      pull(Number(bolt.dataset.bolt));
    }
  });
  /** @param {HTMLElement} bolt */
  const reach = (bolt) => {
    for (const one of bolts) one.setAttribute("tabindex", one === bolt ? "0" : "-1");
    bolt.focus({ preventScroll: true });
  };
  drawing.addEventListener("keydown", (event) => {
    const bolt = closest(event, "[data-bolt]");
    if (!bolt || event.ctrlKey || event.metaKey || event.altKey) return;
    const place = Number(bolt.dataset.bolt);
    const goes = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (goes) reach(bolts[(place + goes + bolts.length) % bolts.length]);
    else if (event.key === "Home") reach(bolts[0]);
    else if (event.key === "End") reach(bolts[bolts.length - 1]);
    else if (event.key === "Enter" || event.key === " ") {
      if (!event.repeat) pull(place);
    } else return;
    event.preventDefault();
  });

  const screen = openScreen({ model, el }, { kind: "rig" });
  const start = button("Start all by hand", () => screen.send({ type: "start" }));
  const tools = make(
    "div",
    { class: "ts-tools", role: "group", "aria-label": "Bolts" },
    start,
    ...plan.rounds.map((/** @type {[string, string]} */ [pattern, words]) =>
      button(`One round ${words}`, () => screen.send({ type: "round", pattern, torque: nm() })),
    ),
    undo,
    button("Start again", () => screen.send({ type: "again" })),
  );
  const settings = make(
    "div",
    { class: "ts-tools", role: "group", "aria-label": "Wrench" },
    make(
      "span",
      { class: "tsj-slide" },
      make("label", { for: id }, "Wrench set to"),
      torque,
      figure,
    ),
  );
  if (plan.films.length) {
    settings.append(
      make("label", { class: "ts-pair" }, "Wet sealant", film),
      wait,
      make("label", { class: "tsj-check" }, scatter, "friction scatters from bolt to bolt"),
    );
  }
  screen.show(
    screen.asks("Does every bolt keep its clamp?", {
      first: start,
      begin: "start all bolts by hand",
      who: plan.readingsOnly ? "Nothing is saved here; your answers stand in the form." : undefined,
    }),
    screen.alert,
    finding,
    settings,
    tools,
    happened,
    make("div", { class: "tsj-bench" }, drawing, bars),
    make(
      "details",
      { class: "ts-keys" },
      make("summary", {}, "How, and keys"),
      "The first choice of a bolt starts it by hand, the next ones pull it. Arrows go from bolt to bolt, Enter pulls.",
    ),
  );

  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    happened.textContent = view.happened;
    bars.innerHTML = view.bars;
    for (const [place, bolt] of bolts.entries()) {
      const state = view.tight[place]
        ? `${view.clamps[place]} kN`
        : view.started[place]
          ? "started by hand"
          : "not started";
      bolt.setAttribute("aria-label", `Bolt ${place + 1} of ${plan.count}, ${state}`);
      bolt.classList.toggle("tsj-tight", view.tight[place]);
      bolt.classList.toggle("tsj-started", view.started[place]);
    }
    undo.disabled = !view.pulls;
    wait.disabled = !view.standing;
    film.value = String(view.film);
    scatter.checked = view.scattered;
  }
  screen.follow("change:view", show);
  sayTorque();
  show();
  return screen.close;
}
