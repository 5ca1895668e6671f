// Depth gauge: the main scale above, its vernier below, both drawn at one scale.

/** @import { Render } from "../types.js" */

import { button, draw } from "../page/dom.js";
import { letters, line, picker, slider } from "../parts/gauges.js";
import { openInstrument, toolRow } from "../parts/instrument.js";

const VERNIER = { x: 44, y: 84, perMm: 34 };

/** @param {any} about */
function vernierPicture(about) {
  const node = draw("svg", { viewBox: "0 0 760 190", class: "tsi-vernier", role: "img" });
  const { x, y, perMm } = VERNIER;
  const main = draw("g", {});
  const slide = draw("g", {});
  node.append(
    draw("rect", { x: 1, y: 22, width: 758, height: y - 22, class: "tsi-paper" }),
    draw("rect", {
      x: x - 30,
      y,
      width: about.lines * about.space * perMm + 60,
      height: 64,
      class: "tsi-body",
    }),
    main,
    slide,
    letters(12, 14, "main scale, mm", "start"),
    letters(
      12,
      176,
      `vernier, ${about.lines} spaces in ${Math.round(about.lines * about.space)} mm`,
      "start",
    ),
  );
  for (let k = 0; k <= about.lines; k += 1) {
    const at = x + k * about.space * perMm;
    slide.append(line(at, y, at, y + (k % 2 ? 20 : 30), "tsi-fine"));
    if (k % 2 === 0) slide.append(letters(at, y + 48, String(k)));
  }
  return {
    node,
    /** @param {any} shown */
    set(shown) {
      main.replaceChildren();
      for (let mm = Math.max(0, Math.ceil(shown.mm - 1)); mm <= about.top + 25; mm += 1) {
        const at = x + (mm - shown.mm) * perMm;
        if (at < 4 || at > 756) continue;
        main.append(line(at, y, at, y - (mm % 10 === 0 ? 34 : mm % 5 === 0 ? 28 : 20), "tsi-fine"));
        if (mm % 5 === 0) main.append(letters(at, y - 40, String(mm)));
      }
      node.setAttribute("aria-label", `${about.name}. ${shown.words}`);
    },
  };
}

/** @type {Render} */
export function renderDepthGauge(view) {
  return openInstrument(view, (about, change, start) => {
    const picture = vernierPicture(about);
    const rod = slider("Rod", {
      min: 0,
      max: about.top,
      step: 0.05,
      value: start.rod,
      words: () => "push down to the right",
      onInput: (mm) => change({ rod: mm }),
    });
    const place = picker("Foot", about.places, start.place, (key) =>
      change({ place: key, rod: 0 }),
    );
    const rest = button("Push the rod down until it rests", () => change({ rod: about.top }));
    const eye = picker("Look", about.eyes, start.eye, (key) => change({ eye: key }));
    return {
      asks: "How deep does it lie?",
      first: rest,
      begin: "push the rod down",
      picture: picture.node,
      controls: [
        toolRow(place.row, eye.row),
        toolRow(
          rest,
          button("Lift the rod", () => change({ rod: 0 })),
        ),
        rod.row,
      ],
      set(shown, state) {
        picture.set(shown);
        place.box.value = state.place;
        eye.box.value = state.eye;
        rod.box.value = state.rod;
      },
    };
  });
}
