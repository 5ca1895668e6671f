import assert from "node:assert/strict";
import { test } from "node:test";
import {
  lengthOf,
  lineOf,
  nearestStretch,
  passOf,
  sizeTyped,
  thinned,
  wideness,
  wordsOf,
} from "../src/logic/film.js";

const FACE = {
  width: 6,
  hands: { film: "film", bead: "bead", wipe: "wipe" },
  sides: { middle: "along the middle", round: "round it", at: "by hand" },
  holes: [{ id: "b3", name: "bolt 3", ring: [[1, 1]] }],
  stretches: [
    {
      id: "s1",
      name: "1 to 2",
      lines: {
        middle: [
          [0, 0],
          [10, 0],
        ],
      },
    },
    {
      id: "s2",
      name: "2 to 3",
      lines: {
        middle: [
          [0, 50],
          [10, 50],
        ],
      },
    },
  ],
};

test("a stored pass is read as its parts", () => {
  assert.deepEqual(passOf("film 0.12 middle s1"), {
    hand: "film",
    size: 0.12,
    side: "middle",
    place: "s1",
    points: null,
  });
  assert.deepEqual(passOf("bead 1.5 at 12,30 14,42").points, [
    [12, 30],
    [14, 42],
  ]);
  assert.deepEqual(passOf("wipe round b3"), {
    hand: "wipe",
    size: 0,
    side: "round",
    place: "b3",
    points: null,
  });
});

test("a pass runs along its stretch, round its hole, or where it was drawn", () => {
  assert.deepEqual(lineOf(FACE, passOf("film 0.1 middle s1")), FACE.stretches[0].lines.middle);
  assert.deepEqual(lineOf(FACE, passOf("bead 1 round b3")), [[1, 1]]);
  assert.deepEqual(lineOf(FACE, passOf("wipe at 1,2")), [[1, 2]]);
  assert.deepEqual(lineOf(FACE, passOf("film 0.1 middle gone")), []);
});

test("a pass is told in words", () => {
  assert.equal(wordsOf(FACE, "film 0.12 middle s1"), "film 0.12 mm, 1 to 2, along the middle");
  assert.equal(wordsOf(FACE, "wipe round b3"), "wipe, bolt 3, round it");
  assert.equal(wordsOf(FACE, "bead 1.5 at 1,2 3,4"), "bead 1.5 mm, by hand");
});

test("a size is read as people write it", () => {
  for (const text of ["0.12", "0,12", ".12 mm", "120 µm", "120um", " 0.12MM "]) {
    assert.equal(sizeTyped(text), 0.12, text);
  }
  for (const text of ["", "mm", "1.2.3", "-1", "1e3", "two"]) {
    assert.ok(Number.isNaN(sizeTyped(text)), text);
  }
});

test("a film is as wide as the face, a bead as thick as it is, a cloth twice the face", () => {
  assert.equal(wideness(FACE, "film", 2), 6);
  assert.equal(wideness(FACE, "bead", 2), 2);
  assert.equal(wideness(FACE, "wipe", 2), 12);
});

test("the stretch under a tap is the nearest one", () => {
  assert.equal(nearestStretch(FACE, [3, 8]), "s1");
  assert.equal(nearestStretch(FACE, [3, 40]), "s2");
});

test("a drawn line keeps its corners and loses what lies between them", () => {
  const across = Array.from({ length: 50 }, (_, i) => [i, 0]);
  const up = Array.from({ length: 50 }, (_, i) => [49, i]);
  assert.deepEqual(thinned([...across, ...up], 20), [
    [0, 0],
    [49, 0],
    [49, 49],
  ]);
});

test("a drawn line has at most as many points as there is room for, to a tenth of a mm", () => {
  const round = Array.from({ length: 400 }, (_, i) => [
    50 * Math.cos(i / 60) + 0.0123,
    50 * Math.sin(i / 60),
  ]);
  const kept = thinned(round, 12);
  assert.ok(kept.length <= 12 && kept.length > 4);
  for (const number of kept.flat()) assert.equal(number, Math.round(number * 10) / 10);
  const ends = [round[0], round.at(-1)].map((pair) => pair.map((n) => Math.round(n * 10) / 10));
  assert.deepEqual([kept[0], kept.at(-1)], ends);
});

test("a line is as long as its parts together", () => {
  assert.equal(
    lengthOf([
      [0, 0],
      [3, 4],
      [3, 10],
    ]),
    11,
  );
  assert.equal(lengthOf([[1, 1]]), 0);
});
