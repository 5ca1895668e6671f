// Micrometer: sleeve and thimble, the scales drawn to one scale with each other.

/** @import { Render } from "../types.js" */

import { button, draw } from "../page/dom.js";
import { letters, line, picker, slider } from "../parts/gauges.js";
import { openInstrument, toolRow } from "../parts/instrument.js";

const MIC = { x: 90, y: 120, perMm: 20, radius: 82, bevel: 30 };

/** @param {any} about */
function micrometerPicture(about) {
  const node = draw("svg", { viewBox: "0 0 760 240", class: "tsi-micrometer", role: "img" });
  const { x, y, perMm, radius } = MIC;
  node.append(
    draw("rect", {
      x: x - 60,
      y: y - 56,
      width: perMm * about.top + 90,
      height: 112,
      class: "tsi-paper",
    }),
    line(x - 20, y, x + perMm * about.top + 20, y, "tsi-bold"),
  );
  for (let k = 0; k * about.pitch <= about.top; k += 1) {
    const at = x + k * about.pitch * perMm;
    if (k % 2) {
      node.append(line(at, y, at, y + 18, "tsi-fine"));
      continue;
    }
    const mm = k / 2;
    node.append(line(at, y, at, y - (mm % 5 ? 18 : 27), mm % 5 ? "tsi-fine" : "tsi-bold"));
    if (mm % 5 === 0) node.append(letters(at, y - 33, String(mm)));
  }
  const thimble = draw("g", {});
  node.append(
    thimble,
    letters(
      12,
      234,
      "Sleeve: lines above the datum 1 mm apart, those below midway. Thimble: 50 lines a turn.",
      "start",
    ),
  );
  const bevel = draw("path", {
    d: `M0 ${y - radius + 14}L${MIC.bevel} ${y - radius}L${MIC.bevel} ${y + radius}L0 ${y + radius - 14}Z`,
    class: "tsi-body",
  });
  const body = draw("rect", {
    x: MIC.bevel,
    y: y - radius,
    width: 760,
    height: 2 * radius,
    class: "tsi-body",
  });
  const ground = draw("rect", {
    x: 0,
    y: y - radius,
    width: 760,
    height: 2 * radius,
    fill: "var(--ts-paper)",
  });
  const scale = draw("g", {});
  thimble.append(ground, bevel, body, scale);
  return {
    node,
    /** @param {any} shown */
    set(shown) {
      thimble.setAttribute("transform", `translate(${x + shown.mm * perMm} 0)`);
      scale.replaceChildren();
      for (let k = 0; k < about.lines; k += 1) {
        let off = k - shown.line;
        off -= about.lines * Math.round(off / about.lines);
        const angle = (off / about.lines) * 2 * Math.PI;
        if (Math.abs(angle) > 1.15) continue;
        const at = y - (radius - 8) * Math.sin(angle);
        const long = k % 5 === 0;
        scale.append(line(0, at, long ? 26 : 16, at, long ? "tsi-bold" : "tsi-fine"));
        if (long) scale.append(letters(36, at + 5, String(k), "start"));
      }
      node.setAttribute("aria-label", `${about.name}. ${shown.words}`);
    },
  };
}

/** @type {Render} */
export function renderMicrometer(view) {
  return openInstrument(view, (about, change, start) => {
    const picture = micrometerPicture(about);
    const thimble = slider("Thimble", {
      min: 0,
      max: about.top,
      step: 0.01,
      value: start.open,
      words: () => "turn in to the left, out to the right",
      onInput: (open) => change({ open }),
    });
    const between = picker("Between the faces", about.between, start.between, (key) =>
      change({ between: key, open: about.top }),
    );
    const rest = button("Close until it rests", () => change({ open: -1 }));
    const hand = about.hands.length
      ? picker("Close it", about.hands, start.hand, (key) => change({ hand: key }))
      : null;
    return {
      asks: "How thick is it?",
      first: rest,
      begin: "close it until it rests",
      picture: picture.node,
      controls: [
        toolRow(between.row, hand?.row),
        toolRow(
          rest,
          button("Open", () => change({ open: about.top })),
        ),
        thimble.row,
      ],
      set(shown, state) {
        picture.set(shown);
        thimble.box.value = String(Math.max(0, shown.mm));
        between.box.value = state.between;
      },
    };
  });
}
