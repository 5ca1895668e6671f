// A shaft end on, turned by hand, with the plunger of a dial indicator on top; not to scale.

/** @import { Render } from "../types.js" */

import { draw, make } from "../page/dom.js";
import { dialGauge, letters, line, picker, slider } from "../parts/gauges.js";
import { openInstrument, toolRow } from "../parts/instrument.js";

function runOutPicture() {
  const node = draw("svg", { viewBox: "0 0 300 260", class: "tsi-runout", role: "img" });
  const shaft = draw("g", {});
  const plunger = draw("g", {});
  shaft.append(
    draw("circle", { cx: 150, cy: 164, r: 76, class: "tsi-body" }),
    line(150, 164, 150, 98, "tsi-bold"),
    draw("circle", { cx: 150, cy: 98, r: 5, class: "tsg-hub" }),
  );
  plunger.append(
    line(150, 86, 150, 40, "tsi-plunger"),
    draw("circle", { cx: 150, cy: 26, r: 20, class: "tsi-paper" }),
  );
  node.append(
    shaft,
    line(50, 164, 250, 164, "tsg-centre"),
    line(150, 250, 150, 80, "tsg-centre"),
    plunger,
    letters(8, 252, "not to scale", "start"),
  );
  return {
    node,
    /**
     * @param {number} turned by how many degrees
     * @param {number} tilt of the plunger, in degrees
     * @param {string} words
     */
    set(turned, tilt, words) {
      shaft.setAttribute("transform", `rotate(${turned} 150 164)`);
      plunger.setAttribute("transform", `rotate(${tilt} 150 88)`);
      node.setAttribute("aria-label", words);
    },
  };
}

/** @type {Render} */
export function renderRunOut(view) {
  return openInstrument(view, (about, change, start) => {
    const dial = dialGauge();
    const picture = runOutPicture();
    const turn = slider("Turn the shaft by hand", {
      min: 0,
      max: 360,
      step: 5,
      value: start.angle,
      words: (deg) => `turned by ${deg}°`,
      onInput: (angle) => change({ angle }),
    });
    const pressed = picker("Plunger", about.pressed, start.pressed, (key) =>
      change({ pressed: key }),
    );
    const tilt = picker("Stand", about.tilts, start.tilt, (key) => change({ tilt: key }));
    return {
      asks: "How far does the shaft run out?",
      first: turn.box,
      begin: "turn the shaft",
      picture: make(
        "div",
        { class: "tsg-beside" },
        picture.node,
        make(
          "div",
          { class: "tsg-gauge" },
          dial.node,
          make("div", {}, "One mark 0.01 mm, one turn 1 mm"),
        ),
      ),
      controls: [toolRow(pressed.row, tilt.row), turn.row],
      set(shown, state) {
        dial.set(shown.mm, shown.words);
        picture.set(
          shown.state.angle,
          Number(shown.state.tilt),
          `Shaft end on, turned by ${shown.state.angle}°; the plunger stands ${shown.state.tilt}° off square. Not to scale.`,
        );
        turn.set(state.angle);
      },
    };
  });
}
