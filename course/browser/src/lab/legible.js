// Words in a drawing that is shown smaller than drawn stay as large as they were.

import { findAll } from "../page/dom.js";

const DRAWINGS = ".twoshaft svg[viewBox]";
// Letters that grow further would run into each other: the picture is too small. One with room for
// larger ones says so.
const MOST = 1.7;

/** @param {HTMLElement} root */
export function keepLegible(root) {
  const drawings = findAll(root, DRAWINGS).filter((one) => one.querySelector("text"));
  const scales = drawings.map((one) => {
    const matrix = /** @type {any} */ (one).getScreenCTM();
    return matrix ? Math.hypot(matrix.a, matrix.b) : 1;
  });
  drawings.forEach((one, at) => {
    const most = Number(one.dataset.grow) || MOST;
    const grown = Math.min(most, Math.max(1, 1 / (scales[at] || 1))).toFixed(3);
    if (one.style.getPropertyValue("--ts-grown") !== grown) {
      one.style.setProperty("--ts-grown", grown);
    }
  });
}
