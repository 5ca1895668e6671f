// Build simulator: step through an order and watch the bench.

/** @import { State } from "../parts/unit_picture.js" */
/** @import { Render } from "../types.js" */

import { beside, factRows, make, namedButton, optionsOf, withOrder } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { photographs } from "../parts/photographs.js";
import { unitPicture } from "../parts/unit_picture.js";

/**
 * Kept in the tab order, so that the keyboard stays where it was.
 *
 * @param {HTMLElement} node
 * @param {boolean} off
 */
function turnOff(node, off) {
  node.setAttribute("aria-disabled", String(off));
  node.classList.toggle("ts-off", off);
}

/** @type {Render} */
export function renderSimulator({ model, el }) {
  const finding = make("p", { class: "ts-finding" });
  const happened = make("p", { class: "ts-happened", role: "status" });
  const next = make("p", { class: "ts-hint" });
  const own = photographs(model);
  const picture = unitPicture(model.get("picture"));
  const inPicture = make("p", { class: "ts-hint", role: "status" });
  const facts = make("dl", { class: "ts-facts" });
  const ready = make("div", { class: "ts-ready" });
  const waiting = make("select", {
    class: "ts-box ts-before",
    "aria-label": "A step that is not ready",
  });
  const place = make("input", {
    type: "text",
    inputmode: "numeric",
    size: "3",
    class: "ts-box",
    "aria-label": "Go to place",
    onkeydown: (event) => {
      if (event.key === "Enter") jump();
    },
  });
  const of = make("span");
  let position = 0;
  /** @param {number} by */
  function move(by) {
    position += by;
    const build = model.get("near")[position];
    if (build) paint(build);
    screen.send({ type: "move", by });
  }
  /** @param {number} position */
  const go = (position) => screen.send({ type: "go", position });
  const back = namedButton("Back", () => move(-1), "One step back");
  const forth = namedButton("Next", () => move(1), "Next step");
  const first = namedButton("Start", () => go(0), "Start with an empty bench");
  const last = namedButton("End", () => go(model.get("view").count), "End of the order");
  const tryIt = namedButton(
    "Try it",
    () => screen.send({ type: "take", step: waiting.value }),
    "Try it: the step chosen here",
  );
  const jump = () => {
    const wanted = Number.parseInt(place.value, 10);
    if (wanted >= 0) go(wanted);
  };
  const controls = make(
    "div",
    {
      class: "ts-tools",
      role: "group",
      "aria-label": "Step through the order; left and right arrows step too",
    },
    first,
    back,
    forth,
    last,
    make(
      "span",
      { class: "ts-pair" },
      "place ",
      place,
      of,
      namedButton("Go", jump, "Go to this place"),
    ),
  );
  controls.addEventListener("keydown", (event) => {
    if (event.target === place || withOrder(event)) return;
    if (event.key === "ArrowLeft") move(-1);
    else if (event.key === "ArrowRight") move(1);
    else if (event.key === "Home") go(0);
    else if (event.key === "End") go(model.get("view").count);
    else return;
    event.preventDefault();
  });
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("What comes next, and what can no longer be reached?", {
      first: forth,
      begin: "press Next",
    }),
    screen.alert,
    finding,
    controls,
    beside(picture.nodes, [
      happened,
      inPicture,
      facts,
      next,
      own.node,
      make("p", { class: "ts-prompt" }, "Do another step next"),
      ready,
      make(
        "div",
        { class: "ts-tools" },
        make("span", { class: "ts-pair" }, "or one that is not ready: ", waiting, tryIt),
      ),
    ]),
  );

  let painted = "";
  /**
   * The page knows how the unit stands beside where it is, and shows it before the kernel answers.
   *
   * @param {State} build
   */
  function paint(build) {
    const key = JSON.stringify(build);
    if (key === painted) return;
    painted = key;
    picture.show(build);
    inPicture.textContent = build.words;
  }
  function show() {
    const view = model.get("view");
    position = view.position;
    finding.textContent = view.finding;
    happened.textContent = view.happened;
    next.textContent = view.next
      ? `Next in this order: ${view.next}`
      : "This is the end of the order.";
    own.show("operation", view.in_hand);
    paint(view.build);
    facts.replaceChildren(...factRows(view.facts));
    const held = ready.contains(document.activeElement);
    ready.replaceChildren(
      ...view.ready.map((/** @type {[string, string]} */ [step, label]) =>
        namedButton(label, () => screen.send({ type: "take", step })),
      ),
    );
    if (!view.ready.length) ready.append(make("p", { class: "ts-hint" }, "No step is ready."));
    if (held) (ready.querySelector("button") ?? forth).focus();
    waiting.replaceChildren(...optionsOf(view.waiting));
    waiting.disabled = tryIt.disabled = !view.waiting.length;
    place.value = String(view.position);
    of.textContent = ` of ${view.count} `;
    const atStart = view.position === 0;
    const atEnd = view.position === view.count;
    for (const node of [back, first]) turnOff(node, atStart);
    for (const node of [forth, last]) turnOff(node, atEnd);
  }
  screen.follow("change:view", show);
  show();
  return () => {
    own.close();
    screen.close();
  };
}
