import assert from "node:assert/strict";
import { test } from "node:test";
import { added, aimLine, movesTo, swapped, without } from "../src/logic/moves.js";

const AIMS = { left: [-10, null], right: [10, null], up: [null, 5], down: [null, -5] };
const at = (travel, turn) => [travel, turn];

test("a line goes where each move aims, and back through neutral before it slides", () => {
  const { points } = aimLine(["left", "up", "right"], AIMS, at);
  assert.deepEqual(points, [
    [0, 0],
    [-10, 0],
    [-10, 5],
    [-10, 0],
    [10, 0],
  ]);
});

test("moves that end at one place share its number", () => {
  const { stops } = aimLine(["left", "right", "left"], AIMS, at);
  assert.deepEqual(stops, [
    { at: [-10, 0], numbers: [1, 3] },
    { at: [10, 0], numbers: [2] },
  ]);
});

test("a move that the picture does not know stays where the hand is", () => {
  assert.deepEqual(aimLine(["left", "press"], AIMS, at).points.at(-1), [-10, 0]);
});

test("a move goes behind the chosen one, or to the end", () => {
  assert.deepEqual(added(["a", "b"], 0, "x"), { moves: ["a", "x", "b"], place: 1 });
  assert.deepEqual(added(["a", "b"], 1, "x"), { moves: ["a", "b", "x"], place: 2 });
  assert.deepEqual(added([], -1, "x"), { moves: ["x"], place: 0 });
});

test("a move is taken back, or changes place with its neighbour", () => {
  assert.deepEqual(without(["a", "b", "a"], 2), ["a", "b"]);
  assert.deepEqual(swapped(["a", "b"], 0, 1), ["b", "a"]);
  assert.equal(swapped(["a", "b"], 0, -1), null);
  assert.equal(swapped(["a", "b"], 1, 1), null);
});

test("the hand goes out of gear, along the neutral line and into the slot", () => {
  const aims = { ...AIMS, neutral: [null, 0], "firm:left": [-10, null] };
  assert.deepEqual(movesTo(aims, [0, 0], [10, 5]), ["right", "up"]);
  assert.deepEqual(movesTo(aims, [10, 4.8], [-10, -5]), ["neutral", "left", "down"]);
  assert.deepEqual(movesTo(aims, [-10, 0.1], [-10, 5]), ["up"]);
  assert.deepEqual(movesTo(aims, [-10, 5], [-10, 0]), ["neutral"]);
  assert.deepEqual(movesTo(aims, [-10, 5], [10, 0]), ["neutral", "right"]);
});
