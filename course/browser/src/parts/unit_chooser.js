// The list of units beside a box: who does not type a unit takes it from here.

import { withUnit } from "../logic/numbers.js";
import { choiceBox } from "../page/dom.js";

/**
 * Makes the list. A unit that is chosen stands behind the figure in the box, in the place of one
 * that was typed; what is typed after that is nobody's choice any more.
 *
 * @param {HTMLInputElement} box
 * @param {readonly string[]} units
 * @param {() => void} flush sends what stands in the box
 * @param {string} asked the id of the question of the box
 */
export function unitChooser(box, units, flush, asked) {
  const list = choiceBox({ "aria-label": "Choose the unit", "aria-describedby": asked }, [
    ["", "unit"],
    ...units.map((name) => /** @type {const} */ ([name, name])),
  ]);
  list.addEventListener("change", () => {
    if (!list.value) return;
    box.value = withUnit(box.value, list.value);
    if (/\d/.test(box.value)) flush();
    else box.focus();
  });
  box.addEventListener("input", () => {
    list.value = "";
  });
  return list;
}
