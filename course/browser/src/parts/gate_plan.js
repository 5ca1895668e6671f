// The gate as the lever shows it: slots, neutral line and the names of the gears.

/** @import { Point } from "../types.js" */
/** @import { Aims } from "../logic/moves.js" */

import { draw } from "../page/dom.js";

export const SCALE = 9; // pixels to a mm of travel
export const TURN_SCALE = 0.7 * SCALE;
const MARGIN_PX = 44;

/**
 * The gate as it is drawn: places of the gates and ends of the turn in mm, gears with their place.
 *
 * @typedef {{
 *   gates: number[], turn_mm: [number, number], gears: [string, number, number][], aims: Aims,
 * }} Plan
 */

/**
 * The drawing, and where a place of the hand [mm] lies in it.
 *
 * @param {Plan} plan
 */
export function gatePlan(plan) {
  const left = Math.min(...plan.gates);
  const right = Math.max(...plan.gates);
  const [low, high] = plan.turn_mm;
  const width = (right - left) * SCALE + 2 * MARGIN_PX;
  const height = (high - low) * TURN_SCALE + 2 * MARGIN_PX;
  /** @type {(travel: number, turn: number) => Point} */
  const at = (travel, turn) => [
    MARGIN_PX + (travel - left) * SCALE,
    height / 2 - (turn - (low + high) / 2) * TURN_SCALE,
  ];
  const slots = plan.gates.map((gate) => `M${at(gate, low).join(" ")}L${at(gate, high).join(" ")}`);
  const neutral = `M${at(left, 0).join(" ")}L${at(right, 0).join(" ")}`;
  const names = plan.gears.map(([gear, travel, turn]) => {
    const [x, y] = at(travel, turn);
    const place = { x, y: y + (turn > 0 ? -20 : 30), "data-gear": gear };
    return draw("text", { ...place, class: "tsp-gear", "text-anchor": "middle" }, gear);
  });
  const element = draw(
    "svg",
    {
      ...{ viewBox: `0 0 ${width} ${height}`, width, height },
      class: "ts-gateplan",
      "aria-hidden": "true",
    },
    draw("path", { d: [...slots, neutral].join(""), class: "tsp-slot" }),
    ...names,
  );
  return { element, at };
}
