// Passes over a face as they are stored: "film 0.12 middle from-1-to-2", "bead 1.5 round b3",
// "wipe at 12,30 14,42".

/** @import { Point } from "../types.js" */

/**
 * The face as the kernel describes it; sizes in mm.
 *
 * @typedef {{
 *   name: string, width: number, outline: Point[], cavities: [string, Point[]][],
 *   islands: Point[][], most: number, points: number,
 *   hands: Record<string, string>, sides: Record<string, string>,
 *   sizes: Record<string, [number, number]>,
 *   holes: { id: string, name: string, x: number, y: number, d: number, leads: string, ring: Point[] }[],
 *   guides: { name: string, x: number, y: number, reach: number }[],
 *   spots: { word: string, points: Point[], width: number }[],
 *   stretches: { id: string, name: string, lines: Record<string, Point[]> }[],
 * }} Face
 */

/**
 * @typedef {{ hand: string, size: number, side: string, place: string, points: Point[] | null }} Pass
 */

/**
 * The parts of a stored pass.
 *
 * @param {string} entry
 * @returns {Pass}
 */
export function passOf(entry) {
  const [hand = "", ...words] = entry.split(" ");
  const size = hand === "wipe" ? 0 : Number(words.shift());
  const [side = "", ...rest] = words;
  if (side !== "at") return { hand, size, side, place: rest[0], points: null };
  const points = rest.map((pair) => {
    const [x, y] = pair.split(",").map(Number);
    return /** @type {Point} */ ([x, y]);
  });
  return { hand, size, side, place: "", points };
}

/**
 * The line along which a pass runs.
 *
 * @param {Pick<Face, "holes" | "stretches">} face
 * @param {Pick<Pass, "side" | "place"> & { points?: Point[] | null }} pass
 * @returns {Point[]}
 */
export function lineOf(face, { side, place, points }) {
  if (points) return points;
  if (side === "round") return face.holes.find((hole) => hole.id === place)?.ring ?? [];
  return face.stretches.find((stretch) => stretch.id === place)?.lines[side] ?? [];
}

/**
 * A pass in words.
 *
 * @param {Pick<Face, "holes" | "stretches" | "hands" | "sides">} face
 * @param {string} entry
 */
export function wordsOf(face, entry) {
  const { hand, size, side, place } = passOf(entry);
  const named = [...face.stretches, ...face.holes].find((one) => one.id === place);
  const sized = hand === "wipe" ? "" : ` ${size} mm`;
  return `${face.hands[hand] ?? hand}${sized}${named ? `, ${named.name}` : ""}, ${face.sides[side] ?? ""}`;
}

/**
 * How wide a pass is drawn.
 *
 * @param {Pick<Face, "width">} face
 * @param {string} hand
 * @param {number} bead_mm
 */
export function wideness(face, hand, bead_mm) {
  if (hand === "film") return face.width;
  if (hand === "bead") return bead_mm;
  return hand === "wipe" ? 2 * face.width : 1;
}

/**
 * A size as it is typed, in mm; NaN if it cannot be read.
 *
 * @param {string} typed "0.12", "0,12 mm", ".5" or "120 µm"
 */
export function sizeTyped(typed) {
  const text = typed
    .trim()
    .replace(",", ".")
    .replace(/\s*mm$/i, "");
  const um = text.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);
  if (um) return Number(um[1]) / 1000;
  return /^\d*\.?\d+$|^\d+\.$/.test(text) ? Number(text) : Number.NaN;
}

/**
 * Length of a line.
 *
 * @param {readonly Point[]} points
 */
export function lengthOf(points) {
  let sum = 0;
  for (let i = 1; i < points.length; i += 1) {
    sum += Math.hypot(points[i][0] - points[i - 1][0], points[i][1] - points[i - 1][1]);
  }
  return sum;
}

/**
 * The stretch whose middle passes nearest to a point.
 *
 * @param {Pick<Face, "stretches">} face
 * @param {Point} point
 * @returns {string} its id
 */
export function nearestStretch(face, [px, py]) {
  const near = face.stretches.map(({ id, lines }) => ({
    id,
    away: Math.min(...lines.middle.map(([x, y]) => Math.hypot(x - px, y - py))),
  }));
  return near.reduce((a, b) => (b.away < a.away ? b : a)).id;
}

const LIMIT_MM = 0.4;

/**
 * Keeps the corners of a drawn line and drops what lies between them (Ramer 1972, Douglas and
 * Peucker 1973), with a limit that grows until the line has at most `most` points.
 *
 * @param {readonly Point[]} points
 * @param {number} most
 * @returns {Point[]} to a tenth of a mm
 */
export function thinned(points, most) {
  let limit = LIMIT_MM;
  let kept = corners(points, limit);
  while (kept.length > most) {
    limit *= 1.5;
    kept = corners(points, limit);
  }
  return kept.map(([x, y]) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10]);
}

/**
 * @param {readonly Point[]} list
 * @param {number} limit
 * @returns {readonly Point[]}
 */
function corners(list, limit) {
  if (list.length < 3) return list;
  const [from, to] = [list[0], list[list.length - 1]];
  let worst = 0;
  let at = 0;
  for (let i = 1; i < list.length - 1; i += 1) {
    const away = offLine(from, to, list[i]);
    if (away > worst) [worst, at] = [away, i];
  }
  if (worst <= limit) return [from, to];
  return [...corners(list.slice(0, at + 1), limit).slice(0, -1), ...corners(list.slice(at), limit)];
}

/**
 * Distance of a point from the line through two others.
 *
 * @param {Point} from
 * @param {Point} to
 * @param {Point} point
 */
function offLine(from, to, point) {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(x, y) || 1;
  return Math.abs(x * (point[1] - from[1]) - y * (point[0] - from[0])) / length;
}
