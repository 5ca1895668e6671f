// The lever in its gate: pressed where it shall go, or pulled along.

/** @import { Plan } from "./gate_plan.js" */

import { movesTo } from "../logic/moves.js";
import { closest, draw, findAll } from "../page/dom.js";
import { gatePlan, SCALE, TURN_SCALE } from "./gate_plan.js";

/**
 * The lever.
 *
 * @param {Plan} plan
 * @param {object} options
 * @param {(code: string) => void} options.move a move of the hand, by its code
 * @param {() => number[]} options.hand where it stands [mm]
 */
export function lever(plan, { move, hand }) {
  const { element, at } = gatePlan(plan);
  const slides = Object.entries(plan.aims).filter(([code]) => code.startsWith("at:"));
  const spot = (/** @type {number} */ travel, /** @type {number} */ turn) => {
    const [cx, cy] = at(travel, turn);
    const place = { "data-travel": travel, "data-turn": turn };
    return draw("circle", { cx, cy, r: 16, class: "tsl-spot", ...place });
  };
  const knob = draw("g", { class: "tsl-knob" }, draw("circle", { r: 12 }));
  element.append(
    ...slides.map(([, [travel]]) => spot(Number(travel), 0)),
    ...plan.gears.map(([, travel, turn]) => spot(travel, turn)),
    knob,
  );
  element.classList.add("ts-lever");
  element.addEventListener("click", (event) => {
    const pressed = closest(event, ".tsl-spot");
    if (!pressed) return;
    const to = [Number(pressed.dataset.travel), Number(pressed.dataset.turn)];
    for (const code of movesTo(plan.aims, hand(), to)) move(code);
  });
  return {
    element,
    scale: [SCALE, TURN_SCALE],
    /**
     * @param {readonly number[]} place of the hand [mm]
     * @param {readonly string[]} gears that are in
     */
    show([travel, turn], gears) {
      const [x, y] = at(travel, turn);
      knob.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
      for (const name of findAll(element, "[data-gear]")) {
        name.classList.toggle("tsl-in", gears.includes(String(name.dataset.gear)));
      }
    },
  };
}
