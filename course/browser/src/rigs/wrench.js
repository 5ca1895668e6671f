// A torque wrench from above with its adapter: lengths to scale, and the lever that counts.

/** @import { Render } from "../types.js" */

import { draw, setAll } from "../page/dom.js";
import { letters, line, slider } from "../parts/gauges.js";
import { openInstrument } from "../parts/instrument.js";

/** @param {any} about */
function wrenchPicture(about) {
  const node = draw("svg", { viewBox: "0 0 720 250", class: "tsi-wrench", role: "img" });
  const per = 440 / about.length;
  const [dx, dy] = [210, 128]; // the square drive
  const adapter = line(dx, dy, dx, dy, "tsi-adapter");
  const bolt = draw("circle", { cx: 0, cy: 0, r: 13, class: "tsi-paper" });
  const arm = line(dx, dy + 74, dx, dy + 74, "tsi-arm");
  const arms = letters(dx, dy + 94, "");
  node.append(
    line(dx, dy, dx + 440, dy, "tsi-lever"),
    adapter,
    bolt,
    draw("circle", { cx: dx, cy: dy, r: 7, class: "tsg-hub" }),
    letters(dx + 440, dy - 20, "hand, middle of the grip", "end"),
    letters(dx + 20, dy - 20, "square drive", "start"),
    line(dx + 440, dy + 10, dx + 440, dy + 84, "tsg-centre"),
    arm,
    arms,
    letters(8, 242, "lengths to scale", "start"),
  );
  return {
    node,
    /** @param {any} shown */
    set(shown) {
      const angle = (shown.state.angle / 180) * Math.PI;
      const x = dx - shown.state.reach * per * Math.cos(angle);
      const y = dy - shown.state.reach * per * Math.sin(angle);
      setAll(adapter, { x2: x, y2: y });
      setAll(bolt, { cx: x, cy: y });
      setAll(arm, { x1: x, x2: dx + 440 });
      setAll(arms, { x: (x + dx + 440) / 2 });
      arms.textContent = "the lever from bolt to hand, along the wrench";
      node.setAttribute("aria-label", `${about.name}. ${shown.words}`);
    },
  };
}

/** @type {Render} */
export function renderWrench(view) {
  return openInstrument(view, (about, change, start) => {
    const picture = wrenchPicture(about);
    /**
     * @param {string} label
     * @param {string} key
     * @param {number} min
     * @param {number} max
     * @param {number} step
     * @param {string} unit
     */
    const row = (label, key, min, max, step, unit) =>
      slider(label, {
        min,
        max,
        step,
        value: start[key],
        words: (value) => `${value} ${unit}`,
        onInput: (value) => change({ [key]: value }),
      });
    const rows = {
      setting: row("Setting", "setting", about.low, about.high, about.step, "N·m"),
      reach: row("Reach of the adapter", "reach", 0, Math.floor(about.reach), 5, "mm"),
      angle: row("Angle of the adapter", "angle", 0, 180, 5, "° off straight"),
    };
    return {
      asks: "What does the bolt get?",
      first: rows.reach.box,
      begin: "lengthen the adapter",
      picture: picture.node,
      controls: Object.values(rows).map((one) => one.row),
      set(shown, state) {
        picture.set(shown);
        for (const [key, one] of Object.entries(rows)) one.set(state[key]);
      },
    };
  });
}
