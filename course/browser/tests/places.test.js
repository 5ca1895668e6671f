import assert from "node:assert/strict";
import { test } from "node:test";
import { placeOf, slugOf, spotsOf, standOf, waysFrom } from "../src/logic/places.js";

const THERE = {
  start: true,
  lessons: ["02-order-of-work.ipynb", "glossary.ipynb"],
  practice: ["02-order-of-work.ipynb"],
};

test("a path says what a notebook is, and where its workplace begins", () => {
  assert.deepEqual(placeOf("lessons/02-order-of-work.ipynb"), {
    kind: "lesson",
    file: "02-order-of-work.ipynb",
    base: "",
  });
  assert.equal(placeOf("mo01/order-of-work-1/02-order-of-work.ipynb").base, "");
  assert.equal(placeOf("class/mo01/order-of-work-1/02-order-of-work.ipynb").base, "class/");
  assert.equal(placeOf("class/exercises/02-order-of-work.ipynb").base, "class/");
  assert.equal(placeOf("class/start-here.ipynb").kind, "start");
  assert.equal(placeOf("desk.ipynb").kind, "desk");
});

test("from a lesson leads a way to one's own exercise, else to the practice copy", () => {
  const lesson = "lessons/02-order-of-work.ipynb";
  const own = { "02-order-of-work.ipynb": "mo01/order-of-work-2/02-order-of-work.ipynb" };
  assert.deepEqual(waysFrom(lesson, THERE, own), [
    ["Start page", "start-here.ipynb"],
    ["Lesson 02", ""],
    ["Exercise 02", "mo01/order-of-work-2/02-order-of-work.ipynb"],
    ["Glossary", "lessons/glossary.ipynb"],
  ]);
  assert.deepEqual(waysFrom(lesson, THERE, {})[2], [
    "Exercise 02",
    "exercises/02-order-of-work.ipynb",
  ]);
});

test("no way leads to what is not there", () => {
  const nothing = { start: false, lessons: [], practice: [] };
  assert.deepEqual(waysFrom("x/mo01/own-1/own.ipynb", nothing, {}), [["Exercise", ""]]);
  assert.deepEqual(waysFrom("start-here.ipynb", THERE, {}), []);
  assert.deepEqual(waysFrom("desk.ipynb", THERE, {}), []);
});

test("a heading is found by the words of an address", () => {
  assert.equal(slugOf("What buries what?¶"), "what-buries-what");
  assert.equal(slugOf("Two gears, one sleeve"), "two-gears-one-sleeve");
});

test("what is given stands left of its form, all else over the width", () => {
  /** @type {["text" | "given" | "form" | "hidden" | "own", boolean][]} */
  const cells = [
    ["text", true],
    ["hidden", false],
    ["text", true],
    ["given", false],
    ["given", false],
    ["form", false],
    ["hidden", false],
    ["text", true],
    ["given", false],
    ["own", false],
  ];
  const spots = spotsOf(cells.map(([part, begins]) => ({ part, begins })));
  assert.deepEqual(
    spots.map(({ side }) => side),
    ["both", "both", "left", "left", "left", "right", "both", "both", "both", "both"],
  );
  const rows = spots.map(({ row }) => row);
  assert.deepEqual(rows, [1, 2, 3, 3, 3, 3, 4, 5, 6, 7]);
});

test("a task with two forms has a row for each", () => {
  const parts = /** @type {const} */ (["text", "form", "given", "form"]);
  const spots = spotsOf(parts.map((part, at) => ({ part, begins: at === 0 })));
  assert.deepEqual(spots, [
    { row: 1, side: "left" },
    { row: 1, side: "right" },
    { row: 2, side: "left" },
    { row: 2, side: "right" },
  ]);
});

test("a task is done when all its forms are", () => {
  const done = { answered: 3, asked: 3, unread: 0 };
  assert.deepEqual(standOf([done]), ["●", "done"]);
  assert.deepEqual(standOf([done, { answered: 0, asked: 2, unread: 0 }]), ["◐", "3 of 5 answered"]);
  assert.equal(standOf([{ answered: 1, asked: 3, unread: 1 }])[0], "▲");
  assert.equal(standOf([{ answered: 0, asked: 3, unread: 0 }])[1], "not begun");
  assert.equal(standOf([undefined])[1], "opening");
});
