// A movement of the hand as a list of moves, and as a line in a picture of the gate.

/** @import { Point } from "../types.js" */

/**
 * Where each move of the lever aims: travel and turn in mm, null where it stays.
 *
 * @typedef {Record<string, readonly [number | null, number | null]>} Aims
 */

/**
 * The line of a movement: it shows where each move aims, not where it would end.
 *
 * @param {readonly string[]} codes
 * @param {Aims} aims
 * @param {(travel: number, turn: number) => Point} at a place in the picture
 * @returns {{ points: Point[], stops: { at: Point, numbers: number[] }[] }} stops: where moves end,
 *   with the numbers of those moves
 */
export function aimLine(codes, aims, at) {
  /** @type {[number, number]} */
  let place = [0, 0];
  const points = [at(...place)];
  /** @type {Map<string, { at: Point, numbers: number[] }>} */
  const stops = new Map();
  for (const [i, code] of codes.entries()) {
    const [travel, turn] = aims[code] ?? [null, null];
    if (travel !== null && place[1] !== 0) points.push(at(place[0], 0)); // back through neutral
    place = [travel ?? place[0], turn ?? (travel === null ? place[1] : 0)];
    const point = at(...place);
    points.push(point);
    const stop = stops.get(point.join(" ")) ?? { at: point, numbers: [] };
    stop.numbers.push(i + 1);
    stops.set(point.join(" "), stop);
  }
  return { points, stops: [...stops.values()] };
}

/**
 * Where a new move goes: behind the chosen one, or at the end.
 *
 * @param {readonly string[]} moves
 * @param {number} chosen place in the list, -1 for none
 * @param {string} code
 * @returns {{ moves: string[], place: number }}
 */
export function added(moves, chosen, code) {
  const place = chosen >= 0 && chosen < moves.length - 1 ? chosen + 1 : moves.length;
  return { moves: [...moves.slice(0, place), code, ...moves.slice(place)], place };
}

/**
 * @param {readonly string[]} moves
 * @param {number} place
 */
export function without(moves, place) {
  return moves.filter((_, i) => i !== place);
}

/**
 * A move changed with its neighbour; null where there is none.
 *
 * @param {readonly string[]} moves
 * @param {number} place
 * @param {number} step
 */
export function swapped(moves, place, step) {
  const to = place + step;
  if (to < 0 || to >= moves.length) return null;
  const next = [...moves];
  [next[place], next[to]] = [next[to], next[place]];
  return next;
}

const NEAR_MM = 0.6; // the hand stands in a gate, or in neutral, if it is not further off

/**
 * The moves that bring the hand to a place of the gate as a hand goes there: out of gear, along the
 * neutral line, into the slot.
 *
 * @param {Aims} aims
 * @param {readonly number[]} hand where it stands: travel and turn [mm]
 * @param {readonly number[]} to where it shall go [mm]
 * @returns {string[]}
 */
export function movesTo(aims, [x, y], [travel, turn]) {
  const plain = Object.entries(aims).filter(([code]) => !code.startsWith("firm:"));
  /** @type {(way: number | null, side: number | null) => string[]} */
  const aimed = (way, side) =>
    plain
      .filter(([, aim]) => aim[0] === way && aim[1] === side)
      .map(([code]) => code)
      .slice(0, 1);
  const away = Math.abs(x - travel) > NEAR_MM;
  return [
    ...(away && Math.abs(y) > NEAR_MM ? aimed(null, 0) : []),
    ...(away ? aimed(travel, null) : []),
    ...(turn || !away ? aimed(null, turn) : []),
  ];
}
