import assert from "node:assert/strict";
import { test } from "node:test";
import { nextOpen, reached, stageOf, stepsOf } from "../src/logic/steps.js";

const stages = [
  ["case", "Case", ["split", "lift"]],
  ["shafts", "Shafts", ["input", "output", "idler"]],
  ["close", "Closing", ["seal"]],
];
const labels = {
  split: "Split the case",
  lift: "Lift the half",
  input: "Fit the input shaft",
  output: "Fit the output shaft",
  idler: "Hang the idler",
  seal: "Lay the sealant",
};
const place = (stage, step, done = []) => ({
  ...{ stages, stage, step, labels },
  isOpen: (one) => !done.includes(one),
});

test("a stage has its steps, a step its stage", () => {
  assert.deepEqual(stepsOf(stages, "close"), ["seal"]);
  assert.deepEqual(stepsOf(stages, "gone"), ["split", "lift"]);
  assert.equal(stageOf(stages, "idler"), "shafts");
  assert.equal(stageOf(stages, undefined), undefined);
});

test("up and down stay in the stage", () => {
  assert.equal(reached("ArrowDown", place("shafts", "input")), "output");
  assert.equal(reached("ArrowDown", place("shafts", "idler")), "idler");
  assert.equal(reached("ArrowUp", place("shafts", "input")), "input");
  assert.equal(reached("Home", place("shafts", "idler")), "input");
  assert.equal(reached("End", place("shafts", "input")), "idler");
});

test("left and right go to the first open step of the next stage, round the end", () => {
  assert.equal(reached("ArrowRight", place("case", "split", ["input"])), "output");
  assert.equal(reached("ArrowRight", place("close", "seal")), "split");
  assert.equal(reached("ArrowLeft", place("case", "lift", ["seal"])), "seal");
});

test("a letter goes to the next step that starts with it; other keys lead nowhere", () => {
  assert.equal(reached("f", place("shafts", "input")), "output");
  assert.equal(reached("F", place("shafts", "output")), "input");
  assert.equal(reached("z", place("shafts", "input")), undefined);
  assert.equal(reached(" ", place("shafts", "input")), undefined);
  assert.equal(reached("Tab", place("shafts", "input")), undefined);
});

test("behind a step comes the next open one of its stage, then of the later stages, then of all", () => {
  assert.equal(nextOpen(place("shafts", "input", ["input"])), "output");
  assert.equal(nextOpen(place("shafts", "idler", ["idler"])), "input");
  assert.equal(nextOpen(place("shafts", "idler", ["input", "output", "idler"])), "seal");
  assert.equal(nextOpen(place("close", "seal", ["seal", "split"])), "lift");
  assert.equal(nextOpen(place("close", "seal", Object.keys(labels))), undefined);
});
