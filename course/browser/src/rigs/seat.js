// Seal seat: a seal in section, and a depth gauge that is set down at four places round it.

/** @import { Render } from "../types.js" */

import { make } from "../page/dom.js";
import { dialGauge, picker, slider } from "../parts/gauges.js";
import { openInstrument, toolRow } from "../parts/instrument.js";

/** @type {Render} */
export function renderSeat(widget) {
  return openInstrument(widget, (about, change, state) => {
    const dial = dialGauge();
    const section = make("div", { class: "tsp-section" });
    let drawn = "";
    const picture = make(
      "div",
      {
        class: "tsg-beside",
        tabindex: "0",
        role: "group",
        "aria-label": "Section and depth gauge",
      },
      section,
      make(
        "div",
        { class: "tsg-gauge" },
        dial.node,
        make("div", {}, `Depth gauge on a bridge of ${about.bridge} mm, one mark 0.01 mm`),
      ),
    );
    /** @type {[string, HTMLElement][]} */
    const places = about.places.map((/** @type {[string, string]} */ [key, name]) => [
      key,
      make(
        "button",
        { type: "button", class: "ts-button", onclick: () => change({ place: key }) },
        name,
      ),
    ]);
    /** @type {HTMLElement[]} */
    const controls = [
      make("p", { class: "ts-hint" }, about.rule),
      toolRow(make("span", {}, "Set the gauge down at"), ...places.map(([, node]) => node)),
    ];
    if (!about.readingsOnly) {
      controls.push(
        toolRow(
          picker("Lip looks towards", about.sides, state.lip, (lip) => change({ lip })).row,
          picker("Lip is", about.greases, state.grease, (grease) => change({ grease })).row,
          about.sleeves.length
            ? picker("It went", about.sleeves, state.sleeve, (sleeve) => change({ sleeve })).row
            : "",
        ),
      );
      controls.push(
        slider("Drive it to a depth", {
          min: about.least,
          max: about.most,
          step: 0.05,
          value: state.depth,
          words: (mm) => `${mm.toFixed(2)} mm${mm < 0 ? ", proud" : ""}`,
          onInput: (depth) => change({ depth }),
        }).row,
        slider("Lean", {
          min: 0,
          max: about.mostLean,
          step: 0.02,
          value: state.lean,
          words: (mm) => (mm ? `${mm.toFixed(2)} mm across` : "square"),
          onInput: (lean) => change({ lean }),
        }).row,
      );
    }
    return {
      asks: "Does the seal sit square and deep enough?",
      first: places[0][1],
      begin: "set the gauge down",
      side: !about.readingsOnly,
      picture,
      controls,
      set(shown, now) {
        if (shown.section !== drawn) {
          drawn = shown.section;
          section.innerHTML = drawn;
        }
        section.querySelector(".tsl-moving")?.setAttribute("transform", shown.placed);
        dial.set(shown.dial, shown.words);
        for (const [key, node] of places)
          node.setAttribute("aria-pressed", String(key === now.place));
      },
    };
  });
}
