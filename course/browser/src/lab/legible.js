// Words in a drawing that is shown smaller than drawn stay as large as they were, and end within it.

import { findAll } from "../page/dom.js";

const DRAWINGS = ".twoshaft svg[viewBox]";
// Letters that grow further would run into each other: the picture is too small. One with room for
// larger ones says so.
const MOST = 1.7;
const LEAST_PX = 12.2; // for letters that a drawing measures in units of its own

/**
 * By how much words were moved so that they end within their drawing, in its own units.
 *
 * @type {WeakMap<Element, number>}
 */
const moved = new WeakMap();

/** @param {HTMLElement} root */
export function keepLegible(root) {
  const drawings = findAll(root, DRAWINGS).filter((one) => one.querySelector("text"));
  const scales = drawings.map((one) => {
    const matrix = /** @type {any} */ (one).getScreenCTM();
    return matrix ? Math.hypot(matrix.a, matrix.b) : 1;
  });
  drawings.forEach((one, at) => {
    const most = Number(one.dataset.grow) || MOST;
    const { letters } = one.dataset;
    const drawn = letters ? Number(letters) / LEAST_PX : 1;
    const grown = Math.min(most, Math.max(1, 1 / (drawn * (scales[at] || 1)))).toFixed(3);
    if (one.style.getPropertyValue("--ts-grown") !== grown) {
      one.style.setProperty("--ts-grown", grown);
    }
  });
  drawings.forEach((one, at) => {
    const scale = scales[at] || 1;
    const grown = Number(one.style.getPropertyValue("--ts-grown"));
    const words = findAll(one, "text").map((word) => ({ word, way: moved.get(word) ?? 0 }));
    if (grown === 1 && words.every(({ way }) => !way)) return;
    const { left, right } = one.getBoundingClientRect();
    const ways = words.map(({ word, way }) => {
      const box = word.getBoundingClientRect();
      const from = box.left - way * scale;
      const over = Math.max(0, from + box.width - right);
      const under = Math.max(0, left - from);
      if (!box.width || grown === 1) return 0; // what is not shown is left alone
      const wider = box.width > right - left; // stands out on both sides, where nothing cuts it off
      const next = wider ? (left + right - box.width) / 2 - from : under || -over;
      return Math.round(next / scale);
    });
    words.forEach(({ word, way }, k) => {
      if (Math.abs(ways[k] - way) < 1) return;
      moved.set(word, ways[k]);
      word.style.translate = ways[k] ? `${ways[k]}px` : "";
    });
  });
}
