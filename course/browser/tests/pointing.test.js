import assert from "node:assert/strict";
import { test } from "node:test";
import { nextLine, walk } from "../src/logic/pointing.js";

test("after an answer comes the next open line, round the end, else the same one", () => {
  const answers = new Map([
    ["a", "C"],
    ["c", "D"],
  ]);
  assert.equal(nextLine(["a", "b", "c"], answers, "c"), "b");
  assert.equal(nextLine(["a", "b", "c"], answers, "a"), "b");
  answers.set("b", "A");
  assert.equal(nextLine(["a", "b", "c"], answers, "a"), "a");
});

test("arrows walk from place to place as they lie in the picture", () => {
  const places = [
    { key: "A", x: 10, y: 54 },
    { key: "B", x: 90, y: 10 },
    { key: "C", x: 50, y: 55 },
  ];
  assert.equal(walk(places, "A", "ArrowRight"), "C");
  assert.equal(walk(places, "A", "ArrowLeft"), "B");
  assert.equal(walk(places, "C", "ArrowUp"), "B");
  assert.equal(walk(places, "B", "ArrowDown"), "C");
  assert.equal(walk(places, "B", "ArrowUp"), "B");
  assert.equal(walk(places, "C", "Home"), "A");
  assert.equal(walk(places, "C", "End"), "C");
  assert.equal(walk(places, "C", "x"), undefined);
});
