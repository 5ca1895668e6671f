// Cord bench: a cord round a drum, a spring scale, and what turns with it.

/** @import { Render } from "../types.js" */

import { latestOnly } from "../logic/turns.js";
import { button, draw, itemsOf, make, setAll } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { letters, line, slider, springScale } from "../parts/gauges.js";

/** @type {Render} */
export function renderCord({ model, el }) {
  const about = model.get("about");
  let state = model.get("shown").state;
  /** @type {ReturnType<typeof springScale> | null} */
  let scale = null;
  const hanging = make("div", {
    class: "tsg-wide",
    tabindex: "0",
    role: "group",
    "aria-label": "Spring scale",
  });
  const named = make("p", { class: "ts-hint" });
  const finding = make("p", { class: "ts-finding", role: "status" });
  const words = make("ul", { class: "ts-sentences" });
  const asks = latestOnly((wanted, turn) => screen.send({ type: "set", state: wanted, turn }));
  /** @param {Record<string, any>} part */
  const change = (part) => {
    state = { ...state, ...part };
    asks.ask(state);
  };
  // The drum from its end, to a scale that fits its largest radius; the cord leaves it at the top.
  const drum = draw("circle", {
    cx: 0,
    cy: 0,
    r: 1,
    class: "tsg-face",
    "vector-effect": "non-scaling-stroke",
  });
  const cord = line(0, 0, 0, 0, "tsg-mark tsg-long");
  const name = letters(0, 0, "");
  // Beside a form there is room for less.
  const [size, stub] = about.readingsOnly ? [72, 48] : [96, 120];
  const perMm = size / (about.readingsOnly ? state.radius : about.radii[1]);
  const view = draw("svg", {
    viewBox: `0 0 ${2 * size + stub} ${2 * size + 30}`,
    width: 2 * size + stub,
    height: 2 * size + 30,
    class: "tsg-drum",
    role: "img",
  });
  const middle = size + 4;
  drum.setAttribute("transform", `translate(${middle} ${middle})`);
  view.append(
    drum,
    cord,
    line(4, middle, 2 * size + 4, middle, "tsg-centre"),
    line(middle, 4, middle, 2 * size + 4, "tsg-centre"),
    draw("circle", { cx: middle, cy: middle, r: 10, class: "tsg-face" }),
    name,
  );
  const turn = button("Turn the shaft ten times", () => change({ turns: state.turns + 10 }));
  /** @type {HTMLElement[]} */
  const tools = [make("div", { class: "ts-tools" }, turn)];
  if (!about.readingsOnly) {
    /** @type {[string, string][]} */
    const kinds = about.kinds;
    const ticks = kinds.map(([kind, text]) =>
      make(
        "label",
        { class: "ts-option" },
        make("input", {
          type: "checkbox",
          checked: state.kinds.includes(kind),
          onchange: (event) =>
            change({
              kinds: kinds
                .map(([key]) => key)
                .filter((key) => (key === kind ? event.target.checked : state.kinds.includes(key))),
            }),
        }),
        `with ${text}`,
      ),
    );
    tools[0].append(button("Fit the rings anew", () => change({ turns: 0 })));
    if (ticks.length)
      tools.push(
        make(
          "fieldset",
          { class: "tsg-ticks" },
          make("legend", { class: "ts-hint" }, "What turns with the bearings"),
          ...ticks,
        ),
      );
    tools.push(
      slider("Setting", {
        min: -0.05,
        max: about.highest,
        step: 0.005,
        value: state.setting,
        onInput: (setting) => change({ setting }),
        words: (mm) =>
          mm < 0 ? `${(-mm).toFixed(3)} mm of end play` : `${mm.toFixed(3)} mm of preload`,
      }).row,
      slider("Radius of the drum", {
        min: about.radii[0],
        max: about.radii[1],
        step: 1,
        value: state.radius,
        onInput: (radius) => change({ radius }),
        words: (mm) => `${mm} mm`,
      }).row,
    );
  }
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("How hard does the shaft turn?", {
      first: turn,
      begin: "turn the shaft",
      who: about.readingsOnly ? "Take your reading here; write it in the form." : undefined,
    }),
    screen.alert,
    make("div", { class: "tsg-beside" }, view, make("div", { class: "tsg-side" }, hanging, named)),
    ...tools,
    finding,
    words,
  );
  function show() {
    const shown = model.get("shown");
    if (!asks.waiting) state = shown.state;
    const r = perMm * shown.state.radius;
    setAll(drum, { r });
    setAll(cord, { x1: middle, y1: middle - r, x2: 2 * size + stub, y2: middle - r });
    setAll(name, { x: middle, y: 2 * size + 22 });
    name.textContent = `drum, radius ${shown.state.radius} mm`;
    view.setAttribute(
      "aria-label",
      `A drum of ${shown.state.radius} mm radius on the shaft; the cord leaves it at its edge towards the scale.`,
    );
    if (scale?.top !== shown.scale.top) {
      scale = springScale(shown.scale);
      hanging.replaceChildren(scale.node);
      named.textContent = `Spring scale to ${shown.scale.top} N, one mark ${shown.scale.mark} N.`;
    }
    scale?.set(shown.pull, shown.pullWords);
    finding.textContent = shown.finding;
    words.replaceChildren(...itemsOf(shown.words));
    asks.answered(shown.turn);
  }
  const refused = () => asks.free();
  screen.follow("change:shown", show);
  screen.follow("msg:custom", refused);
  show();
  return screen.close;
}
