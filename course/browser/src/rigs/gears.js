// Gear-train rig: choose gears, hold a wheel, turn a shaft by keys, buttons or by its dial.

/** @import { Message, Render } from "../types.js" */

import { beside, draw, findAll, make, namedButton, optionsOf, withOrder } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/** @typedef {{ shaft: string, name: string }} Dial */

/** @type {Render} */
export function renderGears({ model, el }) {
  const plan = model.get("plan");
  const first = model.get("view");
  const finding = make("p", { class: "ts-finding tsw-say", role: "status" });
  const happened = make("p", { class: "ts-happened tsw-happened", role: "status" });
  const picture = make("div", { class: "ts-scroll ts-fit tsw-train" });
  let hand = first.dials[0].shaft; // the shaft that the hand is on

  /** @type {[string, string][]} */
  const engaged = plan.gears;
  const gears = engaged.map(([id, words]) =>
    make(
      "button",
      {
        type: "button",
        class: "ts-button",
        "data-gear": id,
        "aria-pressed": "false",
        onclick: () => send({ type: "gear", gear: id }),
      },
      words,
    ),
  );
  const holds = make(
    "select",
    {
      class: "ts-box",
      "aria-label": "Wheel held still",
      onchange: (event) => send({ type: "hold", shaft: event.target.value }),
    },
    ...optionsOf(plan.holds),
  );
  const hands = make(
    "select",
    {
      class: "ts-box",
      "aria-label": "Shaft that you turn",
      onchange: (event) => {
        hand = event.target.value;
        show();
      },
    },
    ...optionsOf(first.dials.map((/** @type {Dial} */ dial) => [dial.shaft, dial.name])),
  );
  /** @param {number} turns */
  const by = (turns) => send({ type: "turn", shaft: hand, turns });
  const part = `1/${plan.marks}`;
  const turnKeys = make(
    "div",
    { class: "ts-tools", role: "group", "aria-label": "Turn the shaft" },
    namedButton("↺ 1 turn", () => by(-1), "One turn anticlockwise"),
    namedButton(`↺ ${part}`, () => by(-plan.step), `${part} turn anticlockwise`),
    namedButton("↺ a touch", () => by(-plan.fine), "A touch anticlockwise"),
    namedButton("a touch ↻", () => by(plan.fine), "A touch clockwise"),
    namedButton(`${part} ↻`, () => by(plan.step), `${part} turn clockwise`),
    namedButton("1 turn ↻", () => by(1), "One turn clockwise"),
    namedButton("Marks to zero", () => send({ type: "reset" })),
  );

  // ---- dials: a graduated plate behind the shaft's end, and the mark painted on the shaft -------
  const dials = new Map();
  for (const dial of first.dials) {
    const shaftEnd = draw(
      "g",
      {},
      draw("circle", { class: "tsw-end", r: 34 }),
      draw("line", { class: "tsw-painted", x1: 0, x2: 0, y1: 0, y2: -34 }),
      draw("circle", { class: "tsw-dot", cx: 0, cy: -27, r: 5 }),
    );
    const plate = [];
    for (let n = 0; n < plan.marks; n += 1) {
      plate.push(
        draw("line", {
          class: "tsw-tick",
          y1: -40,
          y2: n ? -47 : -52,
          transform: `rotate(${(n * 360) / plan.marks})`,
        }),
      );
      if (n)
        plate.push(
          draw(
            "text",
            {
              class: "tsw-number",
              x: 57 * Math.sin((n * 2 * Math.PI) / plan.marks),
              y: -57 * Math.cos((n * 2 * Math.PI) / plan.marks) + 4,
            },
            String(n),
          ),
        );
    }
    const svg = draw(
      "svg",
      {
        viewBox: "-70 -70 140 140",
        class: "tsw-dial",
        "data-shaft": dial.shaft,
        "aria-hidden": "true",
      },
      draw("circle", { class: "tsw-plate", r: 40 }),
      ...plate,
      draw("path", { class: "tsw-pointer", d: "M0 -42 l-6 -12 h12 z" }),
      shaftEnd,
    );
    const box = make(
      "div",
      {
        class: "tsw-count",
        tabindex: "0",
        role: "application",
        "aria-roledescription": "shaft",
        "data-shaft": dial.shaft,
      },
      make("div", { class: "tsw-name" }),
      svg,
      make("div", { class: "tsw-strokes", "aria-hidden": "true" }),
      make("div", { class: "tsw-figure" }),
    );
    dials.set(dial.shaft, { box, svg, shaftEnd });
    box.addEventListener("focus", () => {
      if (hand !== dial.shaft) {
        hand = dial.shaft;
        show();
      }
    });
    box.addEventListener("keydown", (event) => {
      if (withOrder(event)) return;
      const way = {
        ArrowRight: 1,
        ArrowDown: 1,
        ArrowLeft: -1,
        ArrowUp: -1,
        PageDown: 1,
        PageUp: -1,
      }[event.key];
      if (!way) return;
      event.preventDefault();
      hand = dial.shaft;
      by(way * (event.key.startsWith("Page") ? 1 : event.shiftKey ? plan.fine : plan.step));
    });
    // dragging: one turn on its way at a time, what was dragged meanwhile is added up
    /** @type {number | null} */
    let grip = null;
    /** @param {PointerEvent} event */
    const bearing = (event) => {
      const frame = svg.getBoundingClientRect();
      return (
        Math.atan2(
          event.clientX - frame.left - frame.width / 2,
          frame.top + frame.height / 2 - event.clientY,
        ) /
        (2 * Math.PI)
      );
    };
    svg.addEventListener("pointerdown", (event) => {
      if (event.button !== 0) return;
      grip = bearing(event);
      svg.setPointerCapture(event.pointerId);
      box.focus({ preventScroll: true });
      event.preventDefault();
    });
    svg.addEventListener("pointermove", (event) => {
      if (grip === null) return;
      const now = bearing(event);
      let step = now - grip;
      step -= Math.round(step);
      grip = now;
      dragged += step;
      dragOn();
    });
    const letGo = () => {
      grip = null;
    };
    svg.addEventListener("pointerup", letGo);
    svg.addEventListener("pointercancel", letGo);
  }
  let dragged = 0;
  let busy = false;
  function dragOn() {
    if (busy || Math.abs(dragged) < 0.002) return;
    busy = true;
    const turns = dragged;
    dragged = 0;
    by(turns);
  }

  const screen = openScreen({ model, el }, { kind: "rig" });
  const work = [
    make(
      "div",
      { class: "ts-tools" },
      make("span", { class: "ts-pair" }, "Hold still: ", holds),
      make("span", { class: "ts-pair" }, "Turn by hand: ", hands),
    ),
    make("div", { class: "tsw-counts" }, ...[...dials.values()].map((dial) => dial.box)),
    turnKeys,
    happened,
  ];
  screen.show(
    screen.asks("How many turns does it take?", {
      first: turnKeys,
      begin: plan.closed ? "turn a shaft" : "engage a gear, then turn a shaft",
      who: plan.closed ? "Nothing is saved here; your answers stand in the form." : undefined,
    }),
    screen.alert,
    finding,
    !plan.closed &&
      make(
        "div",
        { class: "ts-tools", role: "group", "aria-label": "Gears engaged" },
        make("span", {}, "Engage: "),
        ...gears,
      ),
    ...(plan.closed ? work : [beside([picture], work, "wide")]),
    make(
      "p",
      { class: "ts-hint tsw-say" },
      `All three are seen from the clutch side. Drag a dial round, or go to it and use the arrow keys (${part} turn), Shift with an arrow key (a touch) or Page Up and Page Down (one turn). Each stroke is a whole turn.`,
    ),
  );

  let turn = 0;
  /** @type {string | null} */
  let shown = null;
  /** @param {Message} message */
  function send(message) {
    turn += 1;
    screen.send({ ...message, turn });
  }
  /** @param {number} count */
  const strokes = (count) => {
    const groups = [];
    for (let left = count; left > 0; left -= 5) groups.push(left >= 5 ? "||||/" : "|".repeat(left));
    return groups.join(" ");
  };

  function show() {
    const view = model.get("view");
    if (shown !== model.get("figure")) {
      shown = String(model.get("figure"));
      picture.innerHTML = shown;
    }
    for (const node of findAll(picture, "[data-wheel]")) {
      const [height, front] = view.wheels[String(node.dataset.wheel)] ?? [0, true];
      node.setAttribute(
        "transform",
        `translate(0 ${(height * Number(node.dataset.reach)).toFixed(1)})`,
      );
      node.classList.toggle("tsw-behind", !front);
    }
    for (const button of gears)
      button.setAttribute("aria-pressed", String(view.engaged.includes(button.dataset.gear)));
    holds.value = view.held;
    hands.value = hand;
    for (const dial of view.dials) {
      const { box, shaftEnd } = dials.get(dial.shaft);
      const way = dial.way > 0 ? "↻" : dial.way < 0 ? "↺" : "";
      shaftEnd.setAttribute("transform", `rotate(${dial.angle})`);
      const [name, , tally, figure] = box.children;
      name.textContent = `${dial.name}${dial.held ? ", held" : dial.shaft === hand ? ", your hand" : ""}`;
      tally.textContent = dial.strokes || way ? `${way} ${strokes(dial.strokes)}` : "no stroke";
      figure.textContent = dial.figure;
      box.classList.toggle("tsw-hand", dial.shaft === hand);
      box.classList.toggle("tsw-held", dial.held);
      box.setAttribute("aria-label", `${dial.name}${dial.held ? ", held" : ""}. ${dial.words}`);
    }
    finding.textContent = view.finding;
    happened.textContent = view.happened;
    el.dataset.turn = String(view.turn);
    busy = false;
    dragOn();
  }
  screen.follow("change:view", show);
  show();
  return screen.close;
}
