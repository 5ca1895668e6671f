import assert from "node:assert/strict";
import { test } from "node:test";
import { legsAt, placedAt, shiftOf, spaceShiftOf, togetherAfter } from "../src/logic/apart.js";

const movers = [
  { parent: null, own: { shafts: [40, 0] } },
  { parent: 3, own: { shafts: [0, -30] } },
  { parent: null, own: { shafts: [90, 0] } },
  { parent: null, own: { shafts: [150, 0], rails: [150, 0] } },
];

test("apart is every own way in full, together is none of it", () => {
  assert.deepEqual(legsAt(0, 4), [1, 1, 1, 1]);
  assert.deepEqual(legsAt(1, 4), [0, 0, 0, 0]);
  assert.deepEqual([legsAt(0, 1), legsAt(0.5, 1), legsAt(1, 1)], [[1], [0.5], [0]]);
  assert.deepEqual(legsAt(0.5, 0), []);
});

test("who is fitted later never stands nearer than who is fitted earlier", () => {
  for (let together = 0; together <= 1; together += 0.01) {
    const legs = legsAt(together, 7);
    for (let k = 1; k < 7; k += 1) assert.ok(legs[k] >= legs[k - 1]);
  }
});

test("each goes the one way only as the slider goes the one way", () => {
  for (let step = 0; step < 100; step += 1) {
    const [before, after] = [legsAt(step / 100, 5), legsAt((step + 1) / 100, 5)];
    for (let k = 0; k < 5; k += 1) assert.ok(after[k] <= before[k]);
  }
});

test("what stays with another one goes along with it, in each view", () => {
  const legs = [1, 1, 1, 1];
  assert.deepEqual(shiftOf(movers, legs, 1, "shafts"), [150, -30]);
  assert.deepEqual(shiftOf(movers, legs, 1, "rails"), [150, 0]);
  assert.deepEqual(shiftOf(movers, [1, 0.5, 1, 0], 1, "shafts"), [0, -15]);
  assert.deepEqual(shiftOf(movers, legs, 0, "rails"), [0, 0]);
});

test("it is said how many are in place, and what goes in next", () => {
  assert.deepEqual(placedAt([0, 0.4, 1]), { placed: 1, next: 1 });
  assert.deepEqual(placedAt([0, 0, 0]), { placed: 3, next: null });
  for (const count of [1, 2, 9]) {
    for (let placed = 0; placed <= count; placed += 1) {
      const legs = legsAt(togetherAfter(placed, count) + 1e-9, count);
      assert.equal(placedAt(legs).placed, placed, `${placed} of ${count}`);
    }
  }
});

test("in space a mover goes along with what it stays with too", () => {
  const space = [
    { parent: 1, own: [0, -3, 0] },
    { parent: null, own: [0, 0, 20] },
  ];
  assert.deepEqual(spaceShiftOf(space, [1, 0.5], 0), [0, -3, 10]);
  assert.deepEqual(spaceShiftOf(space, [0, 0], 1), [0, 0, 0]);
});
