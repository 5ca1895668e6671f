// Parts between apart and together: how far each has gone, and what goes in next.

/**
 * A mover: what it stays with (by its number), and its own shift by view.
 *
 * @typedef {{ parent: number | null, own: Record<string, [number, number]> }} Mover
 */

const WINDOW = 0.35; // of the whole way, what one mover takes for its own

/**
 * How far each mover is still apart, from 1 to 0: those that are fitted first go in first.
 *
 * @param {number} together from 0 (apart) to 1 (together)
 * @param {number} count
 */
export function legsAt(together, count) {
  const step = count > 1 ? (1 - WINDOW) / (count - 1) : 0;
  return Array.from({ length: count }, (_, k) => {
    const begins = count > 1 ? k * step : 0;
    const takes = count > 1 ? WINDOW : 1;
    return 1 - Math.max(0, Math.min(1, (together - begins) / takes));
  });
}

/**
 * How far a mover stands from its place in a view, what it stays with taken along.
 *
 * @param {readonly Mover[]} movers
 * @param {readonly number[]} legs
 * @param {number} mover
 * @param {string} view
 * @returns {[number, number]}
 */
export function shiftOf(movers, legs, mover, view) {
  let [x, y] = [0, 0];
  for (let k = /** @type {number | null} */ (mover); k !== null; k = movers[k].parent) {
    const [dx, dy] = movers[k].own[view] ?? [0, 0];
    x += dx * legs[k];
    y += dy * legs[k];
  }
  return [x, y];
}

/**
 * How many movers are in place, and which one goes in next.
 *
 * @param {readonly number[]} legs
 * @returns {{ placed: number, next: number | null }}
 */
export function placedAt(legs) {
  const next = legs.findIndex((leg) => leg > 0);
  return { placed: legs.filter((leg) => leg === 0).length, next: next < 0 ? null : next };
}

/**
 * Where the slider stands, from 0 to 1, when so many movers have gone in and no other is near.
 *
 * @param {number} placed
 * @param {number} count
 */
export function togetherAfter(placed, count) {
  if (placed <= 0) return 0;
  if (placed >= count || count < 2) return 1;
  return WINDOW + ((placed - 1) * (1 - WINDOW)) / (count - 1);
}

/**
 * How far a mover stands from its place in space, what it stays with taken along.
 *
 * @param {readonly { parent: number | null, own: [number, number, number] }[]} movers
 * @param {readonly number[]} legs
 * @param {number} mover
 * @returns {[number, number, number]}
 */
export function spaceShiftOf(movers, legs, mover) {
  /** @type {[number, number, number]} */
  const sum = [0, 0, 0];
  for (let k = /** @type {number | null} */ (mover); k !== null; k = movers[k].parent) {
    const leg = legs[k];
    for (const [axis, way] of movers[k].own.entries()) sum[axis] += way * leg;
  }
  return sum;
}
