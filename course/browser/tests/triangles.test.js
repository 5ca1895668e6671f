import assert from "node:assert/strict";
import { test } from "node:test";
import { ShapeUtils, Vector2 } from "three";
import { enclosed, trianglesOf } from "../src/logic/triangles.js";

const flat = (outline) => outline.map(([x, y]) => new Vector2(x, y));
const triangulate = (outline, holes) => ShapeUtils.triangulateShape(flat(outline), holes.map(flat));

/** Triangles of a body; every normal must point the way its triangle faces. */
function made(body) {
  const { positions, normals } = trianglesOf(body, triangulate);
  assert.equal(positions.length, normals.length);
  for (let n = 0; n < positions.length; n += 9) {
    const [a, b, c] = [0, 3, 6].map((k) => positions.slice(n + k, n + k + 3));
    const [u, v] = [b, c].map((one) => one.map((x, k) => x - a[k]));
    const face = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    for (const k of [0, 3, 6]) {
      const normal = normals.slice(n + k, n + k + 3);
      assert.ok(Math.abs(Math.hypot(...normal) - 1) < 1e-9);
      assert.ok(normal.reduce((sum, x, j) => sum + x * face[j], 0) > -1e-9);
    }
  }
  return enclosed(positions);
}

/** Every edge of a closed surface is walked once each way. */
function closed(body) {
  const { positions } = trianglesOf(body, triangulate);
  const edges = new Map();
  const key = (n) =>
    positions
      .slice(n, n + 3)
      .map((x) => Math.round(x * 1e6) + 0)
      .join();
  for (let n = 0; n < positions.length; n += 9) {
    const corners = [key(n), key(n + 3), key(n + 6)];
    for (let k = 0; k < 3; k += 1) {
      const [a, b] = [corners[k], corners[(k + 1) % 3]];
      if (a === b) continue;
      edges.set(`${a} ${b}`, (edges.get(`${a} ${b}`) ?? 0) + 1);
      edges.set(`${b} ${a}`, (edges.get(`${b} ${a}`) ?? 0) - 1);
    }
  }
  return [...edges.values()].every((one) => one === 0);
}

const near = (value, wanted, share) =>
  assert.ok(Math.abs(value / wanted - 1) < share, `${value} is not ${wanted}`);
// a polygon of so many sides has this much of its circle
const ofCircle = (sides) => (sides / (2 * Math.PI)) * Math.sin((2 * Math.PI) / sides);

test("what is turned encloses what Pappus says, whichever way its outline runs", () => {
  const tube = [
    [0, 5],
    [10, 5],
    [10, 8],
    [0, 8],
  ];
  const cone = [
    [0, 0],
    [12, 0],
    [12, 6],
  ];
  for (const outline of [tube, [...tube].reverse()]) {
    near(made({ kind: "turned", outline }), Math.PI * (64 - 25) * 10 * ofCircle(48), 1e-9);
  }
  near(made({ kind: "turned", outline: cone }), (Math.PI * 36 * 12 * ofCircle(48)) / 3, 1e-9);
  assert.ok(closed({ kind: "turned", outline: tube }) && closed({ kind: "turned", outline: cone }));
});

test("what is extruded encloses its area times its length, holes left out", () => {
  const outline = [
    [0, 0],
    [30, 0],
    [30, 20],
    [0, 20],
  ];
  const holes = [
    [
      [5, 5],
      [10, 5],
      [10, 10],
      [5, 10],
    ],
  ];
  const slice = { kind: "slice", outline, holes, z: [2, 6] };
  near(made(slice), 4 * (600 - 25), 1e-9);
  near(made({ ...slice, outline: [...outline].reverse() }), 4 * (600 - 25), 1e-9);
  near(made({ kind: "slab", outline, thick: 3 }), 1800, 1e-9);
  assert.ok(closed(slice) && closed({ kind: "slab", outline, thick: 3 }));
});

test("frusta, heads, balls and coils enclose what their forms say", () => {
  const cone = { kind: "round", from: [1, 2, 3], to: [1, 14, 3], radii: [6, 4], sides: 24 };
  near(made(cone), ((Math.PI * 12) / 3) * (36 + 24 + 16) * ofCircle(24), 1e-9);
  const head = { kind: "round", from: [0, 0, 0], to: [5, 0, 0], radii: [10, 10], sides: 6 };
  near(made(head), 5 * 1.5 * Math.sqrt(3) * 100, 1e-9);
  near(made({ kind: "ball", at: [3, -9, 0], radius: 5 }), (4 / 3) * Math.PI * 125, 0.05);
  const wound = { kind: "coil", from: [0, 0, 0], to: [20, 0, 0], radius: 5, wire: 0.6, turns: 7 };
  const long = 7 * Math.hypot(2 * Math.PI * 5, 20 / 7);
  near(made(wound), long * Math.PI * 0.36 * ofCircle(6), 0.02);
  assert.ok(closed(cone) && closed(head) && closed({ kind: "ball", at: [0, 0, 0], radius: 2 }));
});

test("rolling elements stand round the axis, each as large as the first", () => {
  const one = { kind: "ball", at: [0, -20, 0], radius: 4 };
  near(made({ ...one, count: 9 }), 9 * made(one), 1e-9);
});
