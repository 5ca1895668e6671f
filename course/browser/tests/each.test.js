import assert from "node:assert/strict";
import { test } from "node:test";
import { answersOf, entriesOf } from "../src/logic/each.js";

test("lines with an answer are stored, and found again", () => {
  const stored = entriesOf([
    ["drain", "dry"],
    ["cover", ""],
    ["nut", "oil"],
  ]);
  assert.deepEqual(stored, ["drain=dry", "nut=oil"]);
  assert.deepEqual(
    [...answersOf(stored)],
    [
      ["drain", "dry"],
      ["nut", "oil"],
    ],
  );
});

test("what is no list of answers is an empty one", () => {
  for (const odd of [null, undefined, "drain=dry", [1, "drain"], {}]) {
    assert.equal(answersOf(odd).size, 0);
  }
});
