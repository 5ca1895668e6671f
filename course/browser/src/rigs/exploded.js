// A stage of the build taken apart along the ways in, and put together by a slider.

/** @import { Render } from "../types.js" */
/** @import { Mover } from "../logic/apart.js" */
/** @import { Picture } from "../parts/unit_picture.js" */

import { legsAt, placedAt, shiftOf, spaceShiftOf, togetherAfter } from "../logic/apart.js";
import { findAll, make, namedButton } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { picker, slider } from "../parts/gauges.js";
import { photographs } from "../parts/photographs.js";
import { unitPicture } from "../parts/unit_picture.js";
import { foresee, unitSpace } from "../parts/unit_space.js";

/** @typedef {Picture & { movers: (Mover & { part: string, number: number, words: string })[] }} Shown */

const STEPS = 200;
const TALLEST_PX = 580; // smaller, its parts could not be told apart
const GROW = "2.6"; // parts that are apart leave room for large words

/** @type {Render} */
export function renderExploded({ model, el }) {
  const finding = make("p", { class: "ts-finding" });
  const said = make("p", { class: "ts-hint ts-nextin", role: "status" });
  const place = make("div", { class: "ts-apart-picture" });
  const list = make("ol", { class: "ts-apart-list", tabindex: "0", "aria-label": "What goes in" });
  const own = photographs(model);
  const stages = model.get("stages");
  const choose = picker("Show", stages, model.get("stage"), (stage) =>
    screen.send({ type: "stage", stage }),
  );
  const way = slider("From apart to together", {
    min: 0,
    max: STEPS,
    step: 1,
    value: 0,
    words: (at) => (at <= 0 ? "apart" : at >= STEPS ? "together" : "on the way"),
    onInput: (at) => move(at / STEPS),
  });
  /** @type {Shown} */
  let shown = model.get("picture");
  /** @type {ReturnType<typeof unitPicture> | undefined} */
  let picture;
  /** @type {{ group: SVGGElement, mover: number, view: string }[]} */
  let groups = [];
  /** @type {SVGGElement[]} */
  let traces = [];
  let together = 0;
  let deep = false; // in three dimensions
  /** @type {ReturnType<typeof unitSpace> | undefined} */
  let space;
  const turnInto = namedButton("In three dimensions", () => {
    deep = !deep;
    turnInto.setAttribute("aria-pressed", String(deep));
    present();
  });
  turnInto.setAttribute("aria-pressed", "false");

  /** @param {number} to */
  function go(to) {
    way.set(Math.round(to * STEPS));
    move(to);
  }
  /** @param {number} by how many parts more */
  function step(by) {
    const { placed } = placedAt(legsAt(together, shown.movers.length));
    go(togetherAfter(placed + by, shown.movers.length));
  }
  /** @param {number} to */
  function move(to) {
    together = to;
    if (!picture) return;
    const legs = legsAt(together, shown.movers.length);
    for (const { group, mover, view } of groups) {
      picture.shift(group, shiftOf(shown.movers, legs, mover, view));
    }
    moveInSpace(legs);
    for (const trace of traces) trace.style.opacity = String(1 - together);
    el.classList.toggle("ts-together", together > 0.5);
    const { placed, next } = placedAt(legs);
    const of = `${placed} of ${legs.length} in place.`;
    for (const [k, item] of [...list.children].entries()) {
      item.classList.toggle("ts-current", k === next);
    }
    said.textContent =
      next === null ? "All in place." : `${of} Next in: ${shown.movers[next].words}.`;
  }
  /** @param {number[]} legs */
  function moveInSpace(legs) {
    const { movers } = model.get("space");
    space?.move((mover) => spaceShiftOf(movers, legs, mover));
  }
  /** Puts the section or the solids in their place. */
  function present() {
    space?.close();
    space = undefined;
    if (!picture) return;
    place.replaceChildren(...(deep ? [] : picture.nodes));
    if (!deep) return;
    if (model.get("space").stage !== model.get("stage")) {
      foresee(model);
      screen.send({ type: "space" });
      return;
    }
    space = unitSpace(model, model.get("space"), shown.parts);
    moveInSpace(legsAt(0, shown.movers.length));
    place.replaceChildren(...space.nodes, ...(space.drawn ? [] : picture.nodes));
    space.ready(() => moveInSpace(legsAt(together, shown.movers.length)));
  }
  function show() {
    shown = model.get("picture");
    finding.textContent = model.get("finding");
    choose.box.value = model.get("stage");
    picture = undefined;
    place.replaceChildren();
    if (!shown.svg) return;
    picture = unitPicture(shown, {
      name: "Parts apart",
      tallest: TALLEST_PX,
      onChoose: (part) => own.show("part", [part]),
    });
    picture.drawing.dataset.grow = GROW;
    const moving = /** @type {SVGGElement[]} */ (findAll(picture.drawing, "[data-move]"));
    groups = moving.map((group) => ({
      group,
      mover: Number(group.dataset.move),
      view: String(group.dataset.view),
    }));
    traces = findAll(picture.drawing, ".tsu-traces");
    list.replaceChildren(...shown.movers.map(({ words }) => make("li", {}, words)));
    present();
    move(together);
  }
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("How do these parts go together?", {
      first: way.box,
      begin: "move the slider",
      who: "",
    }),
    screen.alert,
    finding,
    make(
      "div",
      { class: "ts-apart" },
      make(
        "div",
        { class: "ts-apart-tools" },
        choose.row,
        way.row,
        make(
          "div",
          { class: "ts-tools" },
          namedButton("One in", () => step(1), "One part more in place"),
          namedButton("One out", () => step(-1), "One part less in place"),
        ),
        turnInto,
        said,
        own.node,
        list,
      ),
      place,
    ),
  );
  screen.follow("change:picture", show);
  screen.follow("change:space", present);
  show();
  return () => {
    space?.close();
    own.close();
    screen.close();
  };
}
