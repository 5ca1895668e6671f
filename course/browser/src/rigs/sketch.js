// A drawing that comes from the kernel, with lists and sliders that change it.

/** @import { Render } from "../types.js" */

import { make } from "../page/dom.js";
import { picker, slider } from "../parts/gauges.js";
import { openInstrument, toolRow } from "../parts/instrument.js";

/** @type {Render} */
export function renderSketch(widget) {
  return openInstrument(widget, (about, change, state) => {
    const picture = make("div", { tabindex: "0", role: "group", "aria-label": about.name });
    let drawn = "";
    const pickers = about.pickers.map((/** @type {any} */ { key, label, options }) =>
      picker(label, options, state[key], (chosen) => change({ [key]: chosen })),
    );
    const sliders = about.sliders.map(
      (/** @type {any} */ { key, label, min, max, step, unit, places }) =>
        slider(label, {
          min,
          max,
          step,
          value: state[key],
          words: (value) => `${value.toFixed(places)} ${unit}`,
          onInput: (value) => change({ [key]: value }),
        }),
    );
    // Two lists stand side by side; more of them are questions, and read one below the other.
    const lists = pickers.map((/** @type {any} */ { row }) => row);
    const rows =
      lists.length > 2
        ? lists.map((/** @type {Node} */ list) => toolRow(list))
        : lists.length
          ? [toolRow(...lists)]
          : [];
    return {
      asks: about.asks,
      first: [...pickers, ...sliders][0].box,
      begin: pickers.length ? "choose from the first list" : "move the first slider",
      picture,
      controls: [...rows, ...sliders.map((/** @type {any} */ { row }) => row)],
      set(shown) {
        if (shown.drawing === drawn) return;
        drawn = shown.drawing;
        picture.innerHTML = drawn;
      },
    };
  });
}
