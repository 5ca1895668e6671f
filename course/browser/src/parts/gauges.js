// Gauges of the shim and cord rigs, drawn in SVG: dial indicator, spring scale, axis of settings.

import { draw, make } from "../page/dom.js";

/**
 * A line of a drawing.
 *
 * @param {number} x1
 * @param {number} y1
 * @param {number} x2
 * @param {number} y2
 * @param {string} kind its class
 */
export const line = (x1, y1, x2, y2, kind) => draw("line", { x1, y1, x2, y2, class: kind });
/**
 * Words in a drawing.
 *
 * @param {number} x
 * @param {number} y
 * @param {string} text
 * @param {"start" | "middle" | "end"} [anchor]
 */
export const letters = (x, y, text, anchor = "middle") =>
  draw("text", { x, y, "text-anchor": anchor, class: "tsg-text" }, text);

/** A dial indicator: 100 marks to the turn, one turn a millimetre; the small pointer counts turns. */
export function dialGauge() {
  const node = draw("svg", { viewBox: "0 0 200 200", class: "tsg-dial", role: "img" });
  node.append(draw("circle", { cx: 100, cy: 100, r: 96, class: "tsg-face" }));
  for (let mark = 0; mark < 100; mark += 1) {
    const a = (mark / 100) * 2 * Math.PI;
    const inner = mark % 10 === 0 ? 78 : mark % 5 === 0 ? 82 : 86;
    node.append(
      line(
        100 + inner * Math.sin(a),
        100 - inner * Math.cos(a),
        100 + 92 * Math.sin(a),
        100 - 92 * Math.cos(a),
        mark % 10 === 0 ? "tsg-mark tsg-long" : "tsg-mark",
      ),
    );
    if (mark % 10 === 0)
      node.append(letters(100 + 66 * Math.sin(a), 104.5 - 66 * Math.cos(a), String(mark)));
  }
  node.append(draw("circle", { cx: 100, cy: 134, r: 20, class: "tsg-face" }));
  for (let turn = 0; turn < 10; turn += 1) {
    const a = (turn / 10) * 2 * Math.PI;
    node.append(
      line(
        100 + 15 * Math.sin(a),
        134 - 15 * Math.cos(a),
        100 + 19 * Math.sin(a),
        134 - 19 * Math.cos(a),
        "tsg-mark",
      ),
    );
  }
  const small = line(100, 134, 100, 119, "tsg-small");
  const long = draw("path", { d: "M98 112L98.8 16L101.2 16L102 112Z", class: "tsg-pointer" });
  node.append(small, long, draw("circle", { cx: 100, cy: 100, r: 5, class: "tsg-hub" }));
  return {
    node,
    /**
     * @param {number} mm
     * @param {string} words
     */
    set(mm, words) {
      long.setAttribute("transform", `rotate(${mm * 360} 100 100)`);
      small.setAttribute("transform", `rotate(${mm * 36} 100 134)`);
      node.setAttribute("aria-label", `Dial indicator, one mark is 0.01 mm. ${words}`);
    },
  };
}

/**
 * A spring scale lying along the cord; its pointer slides along the marks.
 *
 * @param {{ top: number, mark: number, perFigure: number }} scale in newtons, and marks to a figure
 */
export function springScale({ top, mark, perFigure }) {
  const node = draw("svg", { viewBox: "0 0 600 92", class: "tsg-scale", role: "img" });
  /** @param {number} value */
  const place = (value) => 30 + (value / top) * 540;
  node.append(draw("rect", { x: 14, y: 22, width: 572, height: 44, rx: 6, class: "tsg-face" }));
  for (let k = 0; k * mark <= top + 1e-9; k += 1) {
    const long = k % perFigure === 0;
    node.append(
      line(
        place(k * mark),
        22,
        place(k * mark),
        long ? 40 : 33,
        long ? "tsg-mark tsg-long" : "tsg-mark",
      ),
    );
    if (long) node.append(letters(place(k * mark), 84, String(Math.round(k * mark))));
  }
  const pointer = draw("path", { d: "M0 24L-4 64L4 64Z", class: "tsg-pointer" });
  node.append(pointer, letters(586, 14, "newtons", "end"));
  return {
    node,
    top,
    /**
     * @param {number} value
     * @param {string} words
     */
    set(value, words) {
      pointer.setAttribute("transform", `translate(${place(Math.min(value, top))} 0)`);
      node.setAttribute("aria-label", `Spring scale, one mark is ${mark} N. ${words}`);
    },
  };
}

/**
 * Settings on a line: end play to the left, preload to the right, the target as a band.
 *
 * @param {{ low: number, high: number, reach: number }} settings in mm
 */
export function settingAxis({ low, high, reach }) {
  const node = draw("svg", { viewBox: "0 0 720 92", class: "tsg-axis", role: "img" });
  /** @param {number} mm */
  const place = (mm) => 360 + (Math.max(-reach, Math.min(reach, mm)) / reach) * 340;
  node.append(
    draw("rect", {
      x: place(low),
      y: 34,
      width: place(high) - place(low),
      height: 24,
      class: "tsg-target",
    }),
    letters((place(low) + place(high)) / 2, 84, "target"),
    line(20, 46, 700, 46, "tsg-mark"),
    line(360, 26, 360, 66, "tsg-mark tsg-long"),
    letters(20, 20, "end play", "start"),
    letters(700, 20, "preload", "end"),
    letters(360, 20, "0"),
  );
  for (let mm = 0.05; mm <= reach + 1e-9; mm += 0.05) {
    for (const at of [mm, -mm]) node.append(line(place(at), 42, place(at), 50, "tsg-mark"));
  }
  node.append(
    letters(place(-reach), 70, `${reach.toFixed(2)} mm`, "start"),
    letters(place(reach), 70, `${reach.toFixed(2)} mm`, "end"),
  );
  const cold = draw("path", { d: "M-7 28L7 28L0 45Z", class: "tsg-cold" });
  const warm = draw("circle", { cx: 0, cy: 46, r: 6, class: "tsg-warm" });
  node.append(cold, warm);
  return {
    node,
    /**
     * @param {number} coldMm
     * @param {number} warmMm
     * @param {string} words
     */
    set(coldMm, warmMm, words) {
      cold.setAttribute("transform", `translate(${place(coldMm)} 0)`);
      warm.setAttribute("transform", `translate(${place(warmMm)} 0)`);
      node.setAttribute("aria-label", words);
    },
  };
}

/**
 * A slider with its figure in words.
 *
 * @param {string} label
 * @param {object} options
 * @param {number} options.min
 * @param {number} options.max
 * @param {number} options.step
 * @param {number} options.value
 * @param {(value: number) => string} options.words
 * @param {(value: number) => void} options.onInput
 */
export function slider(label, { min, max, step, value, words, onInput }) {
  const box = make("input", {
    type: "range",
    class: "ts-slider",
    min,
    max,
    step,
    value,
    "aria-label": label,
  });
  const read = make("output", { class: "ts-slid" }, words(value));
  box.addEventListener("input", () => {
    const text = words(Number(box.value));
    read.textContent = text;
    box.setAttribute("aria-valuetext", text);
    onInput(Number(box.value));
  });
  box.setAttribute("aria-valuetext", words(value));
  return {
    box,
    row: make("label", { class: "ts-slide" }, make("span", {}, label), box, read),
    /** @param {number} number */
    set(number) {
      box.value = String(number);
      read.textContent = words(number);
    },
  };
}

/**
 * A choice with its label.
 *
 * @param {string} label
 * @param {readonly [string, string][]} pairs value and words of each option
 * @param {string} chosen
 * @param {(value: string) => void} onPick
 */
export function picker(label, pairs, chosen, onPick) {
  const box = make(
    "select",
    { class: "ts-box", "aria-label": label, onchange: () => onPick(box.value) },
    ...pairs.map(([key, text]) => make("option", { value: key, selected: key === chosen }, text)),
  );
  return { box, row: make("span", { class: "ts-pair" }, `${label} `, box) };
}
