import assert from "node:assert/strict";
import { test } from "node:test";
import { completed, Ordering } from "../src/logic/ordering.js";

const STEPS = ["a", "b", "c", "d", "e"].map((key) => [key, `Step ${key}`]);
const STAGED = [
  ["a", "Alpha", "Strip"],
  ["b", "Beta", "Strip"],
  ["c", "Gamma", "Clean"],
  ["d", "Delta", "Clean"],
  ["e", "Epsilon", "Fit"],
];
const plain = () => new Ordering(STEPS, ["a", "b", "c", "d", "e"]);
const staged = () => new Ordering(STAGED, ["a", "b", "c", "d", "e"]);
const at = (list, current) => Object.assign(list, { current });

test("a stored order is made whole: unknown steps and doubles go, missing ones follow as given", () => {
  assert.deepEqual(completed(["c", "x", "c", "a"], ["a", "b", "c"]), ["c", "a", "b"]);
  assert.deepEqual(completed(null, ["a", "b"]), ["a", "b"]);
  assert.deepEqual(completed("b", ["a", "b"]), ["b", "a"]);
});

test("a step moves one place up or down, and stays at the ends", () => {
  assert.equal(at(plain(), "c").shifted(-1).join(""), "acbde");
  assert.equal(at(plain(), "c").shifted(1).join(""), "abdce");
  assert.equal(at(plain(), "a").shifted(-1).join(""), "abcde");
  assert.equal(at(plain(), "e").shifted(1).join(""), "abcde");
});

test("a step goes to a position, or beside another", () => {
  assert.equal(at(plain(), "d").atPosition(1).join(""), "dabce");
  assert.equal(at(plain(), "a").atPosition(5).join(""), "bcdea");
  assert.equal(at(plain(), "e").beside("b", "before").join(""), "aebcd");
  assert.equal(at(plain(), "a").beside("d", "after").join(""), "bcdae");
});

test("a block moves as one and keeps its order", () => {
  const list = at(plain(), "d");
  list.toggleBlock("d");
  list.toggleBlock("b");
  assert.deepEqual(list.unit(), ["b", "d"]);
  assert.equal(list.unitName(), "Block of 2 steps");
  assert.equal(list.where(), "positions 2 to 3 of 5");
  assert.equal(list.insertedAt(0).join(""), "bdace");
  assert.equal(list.atPosition(5).join(""), "acebd");
});

test("a block reaches from the current step to another, either way", () => {
  const list = at(plain(), "d");
  list.blockTo("b");
  assert.deepEqual([...list.block], ["b", "c", "d"]);
});

test("what is taken can be undone and done again; a new order forgets what was undone", () => {
  const list = at(plain(), "b");
  assert.equal(list.take(list.shifted(1)), true);
  assert.equal(list.take([...list.order]), false);
  assert.equal(list.undo(), true);
  assert.equal(list.order.join(""), "abcde");
  assert.equal(list.undo(), false);
  assert.equal(list.redo(), true);
  assert.equal(list.order.join(""), "acbde");
  list.undo();
  list.take(at(list, "e").shifted(-1));
  assert.equal(list.redo(), false);
});

test("a step that is carried leaves one thing to undo, and none when it is put back", () => {
  const list = at(plain(), "a");
  list.pickUp();
  list.take(list.shifted(1));
  list.take(list.shifted(1));
  assert.equal(list.putDown(), true);
  assert.equal(list.past.length, 1);
  list.undo();
  assert.equal(list.order.join(""), "abcde");
  list.pickUp();
  list.take(list.shifted(1));
  list.putBack();
  assert.equal(list.order.join(""), "abcde");
  list.pickUp();
  assert.equal(list.putDown(), false);
});

test("steps of a stage that stand together have a head; a step alone has none", () => {
  const list = staged();
  assert.deepEqual(
    list.rows().map(({ id, level }) => `${id}${level}`),
    ["#a1", "a2", "b2", "#c1", "c2", "d2", "e1"],
  );
  list.set(["a", "c", "b", "d", "e"], false);
  assert.deepEqual(
    list.rows().map(({ level }) => level),
    [1, 1, 1, 1, 1],
  );
});

test("a stage moves whole over a whole stage", () => {
  const list = at(staged(), "#a");
  assert.equal(list.unitName(), "Stage Strip");
  list.take(list.shifted(1));
  assert.equal(list.order.join(""), "cdabe");
  assert.equal(list.current, "#a");
  list.take(list.shifted(-1));
  assert.equal(list.order.join(""), "abcde");
});

test("a step hops over a closed stage, and into an open one", () => {
  const list = at(staged(), "e");
  assert.equal(list.shifted(-1).join(""), "abced");
  assert.equal(list.fold(list.row("#c"), true), "Clean");
  list.current = "e";
  assert.equal(list.shifted(-1).join(""), "abecd");
});

test("closing a stage makes its head the current row, and its steps are not shown", () => {
  const list = at(staged(), "d");
  assert.equal(list.fold(list.row("d"), true), "Clean");
  assert.equal(list.current, "#c");
  assert.equal(list.rows().length, 5);
  assert.equal(list.fold(list.row("e"), true), null);
});

test("the current row is always one that is shown", () => {
  const list = at(staged(), "#c");
  list.set(["c", "a", "d", "b", "e"], true);
  list.settle();
  assert.equal(list.current, "c");
  list.set(["a", "b", "c", "d", "e"], true);
  list.closed.add("Clean");
  list.settle();
  assert.equal(list.current, "#c");
});

test("stages are gathered in the order in which they come first", () => {
  const list = staged();
  list.set(["c", "a", "d", "b", "e"], false);
  assert.equal(list.gathered().join(""), "cdabe");
});

test("what is dropped goes beside the step under it, above an open stage and below a closed one", () => {
  const list = staged();
  assert.deepEqual(list.dropAt(list.row("b"), true), { target: "b", side: "after" });
  assert.deepEqual(list.dropAt(list.row("#c"), true), { target: "c", side: "before" });
  list.closed.add("Clean");
  assert.deepEqual(list.dropAt(list.row("#c"), true), { target: "d", side: "after" });
});

test("letters go to the next row that starts with them, and round the end", () => {
  const list = at(staged(), "a");
  assert.equal(list.sought("b").id, "b");
  assert.equal(list.sought("s").id, "#a");
  assert.equal(list.sought("al").id, "a");
  assert.equal(list.sought("x"), undefined);
});
