// Where in a picture something is put down: at its own place, at another part's, or at none.

/** @typedef {[left: number, top: number, width: number, height: number]} Box */

/** How far beside its place something may be put down and still slides in [px]. */
export const REACH = 10;

/**
 * @param {readonly [number, number]} at
 * @param {Box} box
 * @param {number} round
 */
const lies = ([x, y], [left, top, width, height], round) =>
  x >= left - round && x <= left + width + round && y >= top - round && y <= top + height + round;

/**
 * The part at whose place something is put down: one of its own where it reaches that, else the
 * smallest that is hit.
 *
 * @param {readonly [number, number]} at
 * @param {Record<string, Box[]>} boxes
 * @param {readonly string[]} own parts of what is put down
 * @returns {string} empty where nothing has its place
 */
export function placeAt(at, boxes, own) {
  const mine = own.find((part) => (boxes[part] ?? []).some((box) => lies(at, box, REACH)));
  if (mine !== undefined) return mine;
  let [found, least] = ["", Number.POSITIVE_INFINITY];
  for (const [part, some] of Object.entries(boxes)) {
    for (const box of some) {
      const size = box[2] * box[3];
      if (size < least && lies(at, box, 0)) [found, least] = [part, size];
    }
  }
  return found;
}

/**
 * The answer that comes after one, round and round: a part is turned on.
 *
 * @param {readonly string[]} answers
 * @param {string | undefined} now none where nothing is answered yet
 */
export const turned = (answers, now) =>
  answers[(now === undefined ? 0 : answers.indexOf(now) + 1) % answers.length];

/** How near the edge of what is moved a carrying hand moves it on [px]. */
const EDGE = 36;

/**
 * Which way a box is to be moved so that a hand near its edge comes further: -1, 0 or 1 each.
 *
 * @param {readonly [number, number]} at
 * @param {{ left: number, top: number, right: number, bottom: number }} box
 * @returns {[across: number, down: number]}
 */
export function pulled([x, y], { left, top, right, bottom }) {
  /** @param {number} one @param {number} from @param {number} to */
  const way = (one, from, to) => {
    const edge = Math.min(EDGE, (to - from) / 4);
    return one < from + edge ? -1 : one > to - edge ? 1 : 0;
  };
  return [way(x, left, right), way(y, top, bottom)];
}
