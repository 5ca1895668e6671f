import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { test } from "node:test";
import { digest } from "../src/lab/cells.js";
import { clock } from "../src/logic/clock.js";
import { withUnit } from "../src/logic/numbers.js";
import { PIXELS, pixels, rgb } from "../src/logic/raster.js";
import { latestOnly } from "../src/logic/turns.js";

test("a chosen unit takes the place of the typed one, and no figure is thrown away", () => {
  assert.equal(withUnit("0.12", "mm"), "0.12 mm");
  assert.equal(withUnit("0.12 in", "mm"), "0.12 mm");
  assert.equal(withUnit("1.5e-3 m", "mm"), "1.5e-3 mm");
  assert.equal(withUnit("20 °C", "K"), "20 K");
  assert.equal(withUnit("", "mm"), "mm");
  assert.equal(withUnit("3 m 4", "mm"), "3 m 4 mm");
});

test("today is told by the clock, another day with its date, and nonsense not at all", () => {
  const now = new Date(2026, 4, 3, 18, 0);
  assert.equal(clock(new Date(2026, 4, 3, 7, 5).toISOString(), now), "07:05");
  assert.equal(clock(new Date(2026, 4, 2, 7, 5).toISOString(), now), "2026-05-02 07:05");
  assert.equal(clock("yesterday", now), "");
});

test("while an answer is awaited only the latest state is kept", () => {
  const sent = [];
  const asks = latestOnly((state, turn) => sent.push([state, turn]));
  asks.ask(1);
  asks.ask(2);
  asks.ask(3);
  assert.equal(asks.waiting, true);
  assert.deepEqual(
    sent.map(([state]) => state),
    [1],
  );
  asks.answered("another turn");
  assert.equal(sent.length, 1);
  asks.answered(sent[0][1]);
  assert.deepEqual(
    sent.map(([state]) => state),
    [1, 3],
  );
  asks.free();
  assert.equal(asks.waiting, false);
  assert.equal(sent.length, 2);
});

test("a cell's digest is that of its text, however its lines end", () => {
  const expected = createHash("sha256").update("a = 1\nb = 'µ'").digest("hex");
  assert.equal(digest("a = 1\r\nb = 'µ'\n\n"), expected);
});

test("cells are painted from the bottom up, in their colour and hatch", () => {
  assert.deepEqual(rgb("#10ff0a"), [16, 255, 10]);
  const looks = [
    [1, "wet", "#102030", ""],
    [2, "cured", "", "flat"],
  ];
  const made = pixels(new Uint8Array([1, 0, 2, 0]), [2, 2], looks, [1, 2, 3], false);
  assert.equal(made.length, 4 * PIXELS * PIXELS);
  const wide = 2 * PIXELS;
  const bottomLeft = made[(2 * PIXELS - 1) * wide];
  assert.equal(bottomLeft, ((200 << 24) | (0x30 << 16) | (0x20 << 8) | 0x10) >>> 0);
  assert.equal(made[0], ((190 << 24) | (3 << 16) | (2 << 8) | 1) >>> 0); // inked: a line of the hatch
  assert.equal(made[2 * wide], 0); // between the lines
  assert.equal(made[wide - 1], 0); // a cell with nothing in it
});

test("oil and dirt are drawn on a bare face only", () => {
  const cells = new Uint8Array([16]);
  const inked = (bare) => pixels(cells, [1, 1], [], [0, 0, 0], bare).some((word) => word !== 0);
  assert.equal(inked(true), true);
  assert.equal(inked(false), false);
});
