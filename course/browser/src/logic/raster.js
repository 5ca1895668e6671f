// Cells of a face as pixels: a colour and a hatch for what each is, told apart without the colour.

/**
 * How a kind of cell looks: its code, its words, its colour (#rrggbb, empty for none), its hatch.
 *
 * @typedef {[code: number, words: string, colour: string, hatch: string]} Look
 * @typedef {(x: number, y: number) => boolean} Hatch whether a pixel is inked
 */

export const PIXELS = 4; // to a cell, both ways
export const KIND = 15; // the bits of a cell that say what it is
const OILY = 16;
const DIRTY = 32;
const GROUND_ALPHA = 200;
const INK_ALPHA = 190;

/** @type {Hatch} */
const rising = (x, y) => (x + y) % 7 < 2;
/** @type {Hatch} */
const cross = (x, y) => (x + y) % 8 < 2 || (x - y + 80000) % 8 < 2;
/** @type {Hatch} */
const plain = () => false;
/** @type {(every: number) => Hatch} */
const lines = (every) => (_, y) => y % every === 0;

/** @type {Record<string, Hatch>} */
const HATCHES = {
  "": plain,
  dots: (x, y) => x % 6 < 2 && y % 6 < 2,
  rising,
  cross,
  flat: (_, y) => y % 6 < 2,
  rings: (x, y) => {
    const away = Math.hypot((x % 12) - 6, (y % 12) - 6);
    return away > 2.5 && away < 4.5;
  },
  plus: (x, y) =>
    (x % 10 === 5 && y % 10 > 2 && y % 10 < 8) || (y % 10 === 5 && x % 10 > 2 && x % 10 < 8),
  "lines-1": plain,
  "lines-2": lines(14),
  "lines-3": lines(8),
  "lines-4": lines(5),
  "lines-5": lines(3),
};

/**
 * A colour as its red, green and blue, 0 to 255.
 *
 * @param {string} colour #rrggbb
 * @returns {[number, number, number]}
 */
export function rgb(colour) {
  const part = (/** @type {number} */ at) => Number.parseInt(colour.slice(at, at + 2), 16);
  return [part(1), part(3), part(5)];
}

/**
 * A pixel as a canvas keeps it on a machine that stores the lowest byte first, as all browsers do.
 *
 * @param {readonly number[]} colour
 * @param {number} alpha
 */
const pack = ([red, green, blue], alpha) =>
  ((alpha << 24) | (blue << 16) | (green << 8) | red) >>> 0;

/**
 * The pixels of a face.
 *
 * @param {Uint8Array} cells row by row from the bottom, `rows * columns`
 * @param {readonly [rows: number, columns: number]} shape
 * @param {readonly Look[]} looks
 * @param {readonly number[]} ink red, green and blue of the hatches
 * @param {boolean} bare whether oil and dirt are shown too
 * @returns {Uint32Array<ArrayBuffer>} row by row from the top, `PIXELS` times as many both ways
 */
export function pixels(cells, [rows, columns], looks, ink, bare) {
  const wide = columns * PIXELS;
  const words = new Uint32Array(wide * rows * PIXELS);
  const table = new Map(
    looks.map(([code, , colour, hatch]) => {
      const ground = colour ? pack(rgb(colour), GROUND_ALPHA) : 0;
      return [code, { ground, hatch: HATCHES[hatch] ?? plain }];
    }),
  );
  const unknown = { ground: 0, hatch: plain };
  const dark = pack(ink, INK_ALPHA);
  for (let row = 0; row < rows; row += 1) {
    const top = (rows - 1 - row) * PIXELS;
    for (let column = 0; column < columns; column += 1) {
      const code = cells[row * columns + column];
      if (!code) continue;
      const { ground, hatch } = table.get(code & KIND) ?? unknown;
      const oily = bare && (code & OILY) !== 0;
      const dirty = bare && (code & DIRTY) !== 0;
      // Most cells are of one colour, and most of those of none.
      if (hatch === plain && !oily && !dirty) {
        if (!ground) continue;
        const left = column * PIXELS;
        for (let y = top; y < top + PIXELS; y += 1) {
          words.fill(ground, y * wide + left, y * wide + left + PIXELS);
        }
        continue;
      }
      for (let y = top; y < top + PIXELS; y += 1) {
        for (let x = column * PIXELS; x < (column + 1) * PIXELS; x += 1) {
          const inked = hatch(x, y) || (oily && rising(x, y)) || (dirty && cross(x, y));
          words[y * wide + x] = inked ? dark : ground;
        }
      }
    }
  }
  return words;
}
