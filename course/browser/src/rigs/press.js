// Press and heat: a part in section that slides on its seat, the gauge of the press, and figures.

/** @import { Render } from "../types.js" */

/** Highest mark in kN, kN to a mark, marks to a figure. @typedef {[number, number, number]} Scale */

import { draw, factRows, make } from "../page/dom.js";
import { letters, line, picker, slider } from "../parts/gauges.js";
import { openInstrument, toolRow } from "../parts/instrument.js";

// A round gauge; its marks are drawn anew when another scale is taken.
function pressGauge() {
  const node = draw("svg", { viewBox: "0 0 220 200", class: "tsp-gauge", role: "img" });
  const face = draw("g");
  const pointer = draw("path", { d: "M-2.5 14L0 -78L2.5 14Z", class: "tsg-pointer" });
  node.append(
    draw("circle", { cx: 110, cy: 104, r: 92, class: "tsg-face" }),
    face,
    pointer,
    draw("circle", { cx: 110, cy: 104, r: 6, class: "tsg-hub" }),
  );
  /** @param {number} share of the scale */
  const angle = (share) => ((-135 + 270 * share) * Math.PI) / 180;
  let scale = "";
  /** @param {Scale} scale */
  function marks([top, mark, perFigure]) {
    face.replaceChildren();
    for (let k = 0; k * mark <= top + 1e-9; k += 1) {
      const a = angle((k * mark) / top);
      const long = k % perFigure === 0;
      /** @type {(r: number) => [number, number]} */
      const at = (r) => [110 + r * Math.sin(a), 104 - r * Math.cos(a)];
      face.append(line(...at(long ? 72 : 79), ...at(88), long ? "tsg-mark tsg-long" : "tsg-mark"));
      if (long && k % (2 * perFigure) === 0) {
        const [x, y] = at(58);
        face.append(letters(x, y + 4.5, String(Number((k * mark).toFixed(2)))));
      }
    }
    face.append(letters(110, 170, "kN"));
  }
  return {
    node,
    /**
     * @param {Scale} gauge
     * @param {number} force in kN
     * @param {string} words
     */
    set(gauge, force, words) {
      if (String(gauge) !== scale) {
        scale = String(gauge);
        marks(gauge);
      }
      const share = Math.min(force / gauge[0], 1.03);
      pointer.setAttribute("transform", `translate(110 104) rotate(${-135 + 270 * share})`);
      node.setAttribute("aria-label", words);
    },
  };
}

/** @type {Render} */
export function renderPress(widget) {
  return openInstrument(widget, (about, change, state) => {
    const gauge = pressGauge();
    const section = make("div", { class: "tsp-section" });
    let drawn = "";
    const picture = make(
      "div",
      { class: "tsg-beside", tabindex: "0", role: "group", "aria-label": "Section and gauge" },
      section,
      make("div", { class: "tsg-gauge" }, gauge.node),
    );
    const travel = slider("Push", {
      min: 0,
      max: 100,
      step: 1,
      value: state.travel,
      onInput: (value) => change({ travel: value }),
      words: (value) => (value >= 100 ? "at the shoulder" : `${value} % of the way`),
    });
    /** @type {HTMLElement[]} */
    const controls = [travel.row];
    let driver = null;
    if (!about.readingsOnly) {
      const place = picker("Part", about.places, state.place, (value) =>
        change({ place: value, travel: 0 }),
      );
      driver = picker("Driver presses on", about.drivers, state.driver, (value) =>
        change({ driver: value, travel: 0 }),
      );
      const seat = picker("Seat", about.seats, state.seat, (value) => change({ seat: value }));
      const grip = slider("Pair", {
        min: 0,
        max: 100,
        step: 1,
        value: state.grip,
        onInput: (value) => change({ grip: value }),
        words: (value) =>
          value === 0
            ? "loosest of the fit"
            : value === 100
              ? "tightest of the fit"
              : `${value} % from loosest to tightest`,
      });
      const warmth = slider("Warm the outer part", {
        min: about.room,
        max: about.hottest,
        step: 1,
        value: state.warmth,
        onInput: (value) => change({ warmth: value }),
        words: (value) => `${value} °C`,
      });
      controls.unshift(toolRow(place.row, driver.row, seat.row), grip.row, warmth.row);
    }
    const facts = make("dl", { class: "ts-facts" });
    if (!about.readingsOnly) controls.push(facts);
    return {
      asks: "What force does it take, and where does it stop?",
      first: travel.box,
      begin: "push the part",
      side: !about.readingsOnly,
      picture,
      controls,
      set(shown, now) {
        if (shown.section !== drawn) {
          drawn = shown.section;
          section.innerHTML = drawn;
        }
        section
          .querySelector(".tsd-moving")
          ?.setAttribute("transform", `translate(${(-about.travelPx * now.travel) / 100} 0)`);
        gauge.set(shown.gauge, shown.force, shown.words);
        if (Number(travel.box.value) !== now.travel && document.activeElement !== travel.box)
          travel.set(now.travel);
        if (driver) driver.row.hidden = !shown.drives;
        if (shown.facts) {
          facts.replaceChildren(...factRows(shown.facts));
        }
      },
    };
  });
}
