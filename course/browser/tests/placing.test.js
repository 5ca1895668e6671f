import assert from "node:assert/strict";
import test from "node:test";
import { placeAt, pulled, turned } from "../src/logic/placing.js";

/** @type {Record<string, import("../src/logic/placing.js").Box[]>} */
const BOXES = {
  case: [[0, 0, 400, 300]],
  shaft: [[50, 100, 200, 40]],
  ring: [
    [60, 90, 20, 60],
    [300, 90, 20, 60],
  ],
};

test("a part is put down at its own place, a little beside it too, in each view", () => {
  assert.equal(placeAt([70, 120], BOXES, ["ring"]), "ring");
  assert.equal(placeAt([52, 120], BOXES, ["ring"]), "ring");
  assert.equal(placeAt([310, 95], BOXES, ["ring"]), "ring");
});

test("elsewhere it is at the smallest place that is hit, never at its own", () => {
  assert.equal(placeAt([200, 120], BOXES, ["ring"]), "shaft");
  assert.equal(placeAt([200, 250], BOXES, ["ring"]), "case");
  assert.equal(placeAt([200, 310], BOXES, ["ring"]), "");
});

test("turning goes through every way and comes round", () => {
  assert.equal(turned(["a", "b", "c"], undefined), "a");
  assert.equal(turned(["a", "b", "c"], "a"), "b");
  assert.equal(turned(["a", "b", "c"], "c"), "a");
});

test("a hand near an edge, or beyond it, moves what it carries over; in the middle it does not", () => {
  const box = { left: 0, top: 100, right: 400, bottom: 500 };
  assert.deepEqual(pulled([200, 300], box), [0, 0]);
  assert.deepEqual(pulled([200, 110], box), [0, -1]);
  assert.deepEqual(pulled([390, 600], box), [1, 1]);
  assert.deepEqual(pulled([40, 140], box), [0, 0]);
  assert.deepEqual(pulled([9, 15], { left: 0, top: 0, right: 40, bottom: 30 }), [-1, 0]);
});
