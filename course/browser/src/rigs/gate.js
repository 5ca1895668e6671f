// Gate rig: the lever is worked by keys, by dragging, or by moves in words; the kernel moves the parts.

/** @import { Message, Render } from "../types.js" */

import { closest, find, findAll, make, namedButton, optionsOf, withOrder } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { lever } from "../parts/lever.js";

/** @type {Render} */
export function renderGate({ model, el }) {
  const finding = make("p", { class: "ts-finding", role: "status" });
  const happened = make("p", { class: "ts-happened", role: "status" });
  const drawn = make("div", { class: "ts-scroll ts-fit" });
  const stick = lever(model.get("plan"), {
    move: (code) => send({ type: "move", code }),
    hand: () => model.get("view").hand,
  });
  const picture = make("div", {
    class: "ts-gate",
    tabindex: "0",
    role: "application",
    "aria-roledescription": "lever",
    "aria-label":
      "The lever. Arrow keys left and right slide the selector shaft, up and down turn it.",
  });
  const choose = make(
    "select",
    { class: "ts-box ts-how", "aria-label": "How it is put together" },
    ...optionsOf(model.get("builds")),
  );
  const reset = namedButton("Start again", () => send({ type: "reset" }));
  const moves = make(
    "div",
    { class: "ts-tools ts-moves", role: "group", "aria-label": "Moves of the hand" },
    ...model
      .get("moves")
      .map((/** @type {[string, string]} */ [code, label]) =>
        namedButton(label, () => send({ type: "move", code })),
      ),
  );
  const log = make("ol", { class: "ts-log", "aria-label": "What was tried and what happened" });
  const empty = make(
    "p",
    { class: "ts-hint" },
    "Nothing tried yet. Each move is written down here.",
  );
  const proof = make("p", { class: "ts-proof", role: "status" });
  const prove = namedButton("What does a full hand test find?", () => {
    prove.disabled = true;
    proof.textContent = "testing";
    send({ type: "prove" });
  });
  const screen = openScreen({ model, el }, { kind: "rig" });
  picture.append(
    make("div", {}, make("p", { class: "ts-prompt" }, "The lever"), stick.element),
    drawn,
  );
  screen.show(
    screen.asks("Which gears can the lever reach?", {
      first: stick.element,
      begin: "press a place in the gate",
    }),
    screen.alert,
    make(
      "div",
      { class: "ts-tools" },
      make("span", { class: "ts-pair" }, "Put together: ", choose),
      reset,
      prove,
    ),
    finding,
    picture,
    happened,
    proof,
    make(
      "p",
      { class: "ts-hint ts-gate-hint" },
      "Press a place in the gate, or pull the lever. Keys: left and right slide, up and down turn. Or in words:",
    ),
    make(
      "div",
      { class: "ts-gate-work" },
      moves,
      make("div", {}, make("p", { class: "ts-prompt" }, "Tried by hand"), empty, log),
    ),
  );

  let turn = 0;
  let shown = "";
  /** @param {Message} message */
  function send(message) {
    turn += 1;
    screen.send({ ...message, turn });
  }

  // ---- drawing ---------------------------------------------------------------------------
  function show() {
    const view = model.get("view");
    if (shown !== model.get("figure")) {
      shown = model.get("figure");
      drawn.innerHTML = shown;
      const svg = find(drawn, "svg");
      svg.removeAttribute("role");
      svg.setAttribute("aria-hidden", "true");
    }
    for (const node of findAll(drawn, "[data-body]")) {
      const [x, y] = view.moved[String(node.dataset.rides ?? node.dataset.body)] ?? [0, 0];
      node.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
    }
    for (const node of findAll(drawn, "[data-gear]")) {
      node.classList.toggle("tsg-in", view.gears.includes(node.dataset.gear));
    }
    for (const node of findAll(drawn, "[data-lifts]")) {
      node.classList.toggle("tsg-up", view.lifted);
    }
    stick.show(view.hand, view.gears);
    picture.dataset.turn = String(view.turn);
    finding.textContent = `${view.gears.length > 1 ? "■ " : view.gears.length ? "● " : "○ "}${view.title}.`;
    happened.textContent = view.happened;
    happened.classList.toggle("ts-stopped", /topped by/.test(view.happened));
    if (
      log.childElementCount !== view.log.length ||
      log.lastElementChild?.textContent !== view.log.at(-1)
    ) {
      log.replaceChildren(
        ...view.log.map((/** @type {string} */ line) =>
          make("li", { class: /topped by/.test(line) ? "ts-stopped" : "" }, line),
        ),
      );
      log.scrollTop = log.scrollHeight;
    }
    empty.hidden = view.log.length > 0;
    choose.value = view.build;
    proof.textContent = view.proof;
    prove.disabled = false;
    busy = false;
    pullOn();
  }

  // ---- keys ------------------------------------------------------------------------------
  picture.addEventListener("keydown", (event) => {
    if (withOrder(event)) return;
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[
      event.key
    ];
    if (!way) return;
    event.preventDefault();
    send({ type: "nudge", travel: way[0], turned: way[1] });
  });
  choose.addEventListener("change", () => send({ type: "build", build: choose.value }));

  // ---- dragging: one pull on its way at a time, the newest wins -----------------------------
  /** @typedef {{ svg: SVGSVGElement, x: number, y: number, scale: readonly number[] }} Grip */
  /** @type {Grip | null} */
  let grip = null;
  /** @type {{ travel_mm: number, turn_mm: number } | null} */
  let wanted = null;
  let busy = false;
  /**
   * @param {PointerEvent} event
   * @param {SVGSVGElement} svg
   */
  function place(event, svg) {
    const box = svg.getBoundingClientRect();
    const zoom = svg.viewBox.baseVal.width / box.width;
    return [(event.clientX - box.left) * zoom, (event.clientY - box.top) * zoom];
  }
  picture.addEventListener("pointerdown", (event) => {
    const panel = closest(event, ".tsg-panel, .tsl-knob");
    if (!panel || event.button !== 0) return;
    const svg = /** @type {SVGSVGElement} */ (/** @type {any} */ (panel).ownerSVGElement);
    const hand = model.get("view").hand;
    const [x, y] = place(event, svg);
    const one = Number(panel.dataset.scale);
    const scale = one ? [one, one] : stick.scale;
    grip = { svg, x: x - hand[0] * scale[0], y: y + hand[1] * scale[1], scale };
    picture.setPointerCapture(event.pointerId);
    picture.focus({ preventScroll: true });
    picture.classList.add("ts-pulling");
    event.preventDefault();
  });
  picture.addEventListener("pointermove", (event) => {
    if (!grip) return;
    const [x, y] = place(event, grip.svg);
    const { scale } = grip;
    wanted = { travel_mm: (x - grip.x) / scale[0], turn_mm: (grip.y - y) / scale[1] };
    pullOn();
  });
  const letGo = () => {
    grip = null;
    picture.classList.remove("ts-pulling");
  };
  picture.addEventListener("pointerup", letGo);
  picture.addEventListener("pointercancel", letGo);
  function pullOn() {
    if (busy || !wanted) return;
    busy = true;
    const to = wanted;
    wanted = null;
    send({ type: "pull", ...to });
  }

  screen.follow("msg:custom", (message) => {
    if (message.type === "trouble") busy = false;
  });
  screen.follow("change:view", show);
  show();
  return screen.close;
}
