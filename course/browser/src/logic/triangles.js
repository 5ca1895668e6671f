// Bodies of solids as triangles: outlines revolved and extruded, each edge of an outline sharp.

/** @typedef {[number, number]} Flat */
/** @typedef {[number, number, number]} Place */
/** @typedef {(outline: Flat[], holes: Flat[][]) => number[][]} Triangulate */
/**
 * A body in the frame of its solid (`models/shape/solids.py`).
 *
 * @typedef {{
 *   kind: string, outline: Flat[], holes?: Flat[][], z: Flat, thick: number, from: Place, to: Place,
 *   radii: Flat, sides: number, at: Place, radius: number, count?: number, wire: number,
 *   turns: number,
 * }} Body
 */

const ROUND = 48; // sides of what is turned
const BALL = 10;
const WIRE = 6;
const EDGE = Math.cos((28 * Math.PI) / 180); // a corner that turns more has an edge

/** Collects triangles with their normals. */
class Mesh {
  /** @type {number[]} */ positions = [];
  /** @type {number[]} */ normals = [];
  /** @type {number[]} ends of the lines that an edge is drawn by */ lines = [];

  /**
   * @param {Place[]} points three of them
   * @param {Place[]} normals one each
   */
  add(points, normals) {
    for (const point of points) this.positions.push(...point);
    for (const normal of normals) this.normals.push(...normal);
  }

  /**
   * The lines from each place to the next, and back to the first.
   *
   * @param {readonly Place[]} ring
   */
  ring(ring) {
    for (const [k, a] of ring.entries()) this.lines.push(...a, ...ring[(k + 1) % ring.length]);
  }

  /**
   * A face of four corners; each normal for the edge from its first two corners.
   *
   * @param {Place} a
   * @param {Place} b
   * @param {Place} c
   * @param {Place} d
   * @param {Place[]} normals of the corners
   */
  face(a, b, c, d, normals) {
    this.add([a, b, c], [normals[0], normals[1], normals[2]]);
    this.add([a, c, d], [normals[0], normals[2], normals[3]]);
  }
}

/**
 * Whether an outline runs to the left round its inside.
 *
 * @param {readonly Flat[]} outline
 */
function leftward(outline) {
  let twice = 0;
  for (const [k, [x, y]] of outline.entries()) {
    const [u, v] = outline[(k + 1) % outline.length];
    twice += x * v - u * y;
  }
  return twice > 0;
}

/**
 * Whether an outline has an edge at a corner, rather than going round.
 *
 * @param {readonly Flat[]} outline
 * @param {number} k
 */
function sharp(outline, k) {
  const count = outline.length;
  const [a, b, c] = [outline[(k + count - 1) % count], outline[k], outline[(k + 1) % count]];
  const [x, y, u, v] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return x * u + y * v < EDGE * Math.hypot(x, y) * Math.hypot(u, v);
}

/**
 * The outline, running to the left round its inside.
 *
 * @param {Flat[]} outline
 */
const left = (outline) => (leftward(outline) ? outline : [...outline].reverse());

/**
 * @param {Mesh} mesh
 * @param {Flat[]} given along and radius
 */
function turned(mesh, given) {
  const outline = left(given);
  for (const [k, [z0, r0]] of outline.entries()) {
    const [z1, r1] = outline[(k + 1) % outline.length];
    const long = Math.hypot(z1 - z0, r1 - r0);
    if (r0 > 0 && sharp(outline, k)) {
      const turns = Array.from({ length: ROUND }, (_, j) => (2 * Math.PI * j) / ROUND);
      mesh.ring(turns.map((turn) => [z0, r0 * Math.cos(turn), r0 * Math.sin(turn)]));
    }
    if (!long || (r0 <= 0 && r1 <= 0)) continue;
    // outside lies to the right of an outline that runs to the left
    const [nz, nr] = [(r1 - r0) / long, (z0 - z1) / long];
    for (let j = 0; j < ROUND; j += 1) {
      const at = [j, j + 1].map((n) => (2 * Math.PI * n) / ROUND);
      /** @type {(z: number, r: number, turn: number) => Place} */
      const place = (z, r, turn) => [z, r * Math.cos(turn), r * Math.sin(turn)];
      const [n0, n1] = at.map((turn) => place(nz, nr, turn));
      const [a, b] = [place(z0, r0, at[0]), place(z1, r1, at[0])];
      const [c, d] = [place(z1, r1, at[1]), place(z0, r0, at[1])];
      if (r0 <= 0) mesh.add([a, b, c], [n0, n0, n1]);
      else if (r1 <= 0) mesh.add([a, b, d], [n0, n0, n1]);
      else mesh.face(a, b, c, d, [n0, n0, n1, n1]);
    }
  }
}

/**
 * @param {Mesh} mesh
 * @param {Flat[]} given
 * @param {Flat[][]} gaps
 * @param {Flat} ends
 * @param {(flat: Flat, height: number) => Place} place a turn from flat and height keeps its hand
 * @param {Triangulate} triangulate
 */
function extruded(mesh, given, gaps, [low, high], place, triangulate) {
  const outline = left(given);
  const holes = gaps.map((hole) => left(hole).reverse());
  const points = [outline, ...holes].flat();
  const [up, down] = [place([0, 0], 1), place([0, 0], -1)];
  for (const corners of triangulate(outline, holes)) {
    const flat = corners.map((k) => points[k]);
    const face = leftward(flat) ? flat : [...flat].reverse();
    mesh.add(
      face.map((one) => place(one, high)),
      [up, up, up],
    );
    mesh.add(
      [...face].reverse().map((one) => place(one, low)),
      [down, down, down],
    );
  }
  for (const line of [outline, ...holes]) {
    for (const end of [low, high]) mesh.ring(line.map((one) => place(one, end)));
    for (const [k, a] of line.entries()) {
      if (sharp(line, k)) mesh.lines.push(...place(a, low), ...place(a, high));
      const b = line[(k + 1) % line.length];
      const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
      if (!long) continue;
      const out = place([(b[1] - a[1]) / long, (a[0] - b[0]) / long], 0);
      mesh.face(place(a, low), place(b, low), place(b, high), place(a, high), [out, out, out, out]);
    }
  }
}

/**
 * Three directions square to each other, the first along a line.
 *
 * @param {Place} from
 * @param {Place} to
 * @returns {{ long: number, axes: [Place, Place, Place] }}
 */
function along(from, to) {
  const line = /** @type {Place} */ (to.map((one, k) => one - from[k]));
  const long = Math.hypot(...line) || 1;
  const u = /** @type {Place} */ (line.map((one) => one / long));
  /** @type {Place} */
  const other = Math.abs(u[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
  const v = cross(other, u);
  const size = Math.hypot(...v);
  const side = /** @type {Place} */ (v.map((one) => one / size));
  return { long, axes: [u, side, cross(u, side)] };
}

/**
 * @param {Place} a
 * @param {Place} b
 * @returns {Place}
 */
function cross(a, b) {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/**
 * A frustum between two places.
 *
 * @param {Mesh} mesh
 * @param {Body} body
 */
function round(mesh, { from, to, radii, sides }) {
  const { long, axes } = along(from, to);
  /** @type {(s: number, r: number, turn: number) => Place} */
  const place = (s, r, turn) => {
    const [c, d] = [r * Math.cos(turn), r * Math.sin(turn)];
    const [u, v, w] = axes;
    return /** @type {Place} */ (from.map((one, k) => one + s * u[k] + c * v[k] + d * w[k]));
  };
  const slope = (radii[0] - radii[1]) / long;
  for (let j = 0; j < sides; j += 1) {
    const at = [j, j + 1].map((n) => (2 * Math.PI * n) / sides);
    const half = (at[0] + at[1]) / 2;
    const out = at.map((turn) => {
      const t = sides > 8 ? turn : half; // a hexagon has flat sides
      const [u, v, w] = axes;
      const size = Math.hypot(1, slope);
      return /** @type {Place} */ (
        u.map((one, k) => (one * slope + Math.cos(t) * v[k] + Math.sin(t) * w[k]) / size)
      );
    });
    const [a, b] = at.map((turn) => place(0, radii[0], turn));
    const [d, c] = at.map((turn) => place(long, radii[1], turn));
    mesh.face(a, b, c, d, [out[0], out[1], out[1], out[0]]);
    mesh.lines.push(...a, ...b, ...c, ...d);
    if (sides <= 8) mesh.lines.push(...a, ...d);
    const back = /** @type {Place} */ (axes[0].map((one) => -one));
    mesh.add([from, b, a], [back, back, back]);
    mesh.add([to, d, c], [axes[0], axes[0], axes[0]]);
  }
}

/**
 * @param {Mesh} mesh
 * @param {Place} at
 * @param {number} radius
 */
function ball(mesh, at, radius) {
  /** @type {(row: number, column: number) => Place} */
  const out = (row, column) => {
    const [tilt, turn] = [(Math.PI * row) / BALL, (Math.PI * column) / BALL];
    return [Math.cos(tilt), Math.sin(tilt) * Math.cos(turn), Math.sin(tilt) * Math.sin(turn)];
  };
  /** @type {(normal: Place) => Place} */
  const place = (normal) => /** @type {Place} */ (normal.map((one, k) => at[k] + radius * one));
  for (let row = 0; row < BALL; row += 1) {
    for (let column = 0; column < 2 * BALL; column += 1) {
      const normals = [
        out(row, column),
        out(row + 1, column),
        out(row + 1, column + 1),
        out(row, column + 1),
      ];
      const [a, b, c, d] = normals.map(place);
      if (row === 0) mesh.add([a, b, c], normals.slice(0, 3));
      else if (row === BALL - 1) mesh.add([a, b, d], [normals[0], normals[1], normals[3]]);
      else mesh.face(a, b, c, d, normals);
    }
  }
}

/**
 * A spring as a row of short straight pieces of wire.
 *
 * @param {Mesh} mesh
 * @param {Body} body
 */
function coil(mesh, { from, to, radius, wire, turns }) {
  const { long, axes } = along(from, to);
  const steps = turns * 16;
  /** @type {(k: number) => Place} */
  const place = (k) => {
    const turn = (2 * Math.PI * k) / 16;
    const [c, d, s] = [radius * Math.cos(turn), radius * Math.sin(turn), (long * k) / steps];
    const [u, v, w] = axes;
    return /** @type {Place} */ (from.map((one, n) => one + s * u[n] + c * v[n] + d * w[n]));
  };
  for (let k = 0; k < steps; k += 1) {
    const piece = { from: place(k), to: place(k + 1), radii: [wire, wire], sides: WIRE };
    round(mesh, /** @type {Body} */ (piece));
  }
  mesh.lines = []; // of its short pieces
}

/**
 * The triangles of a body in the frame of its solid.
 *
 * @param {Body} body
 * @param {Triangulate} triangulate
 * @returns {{ positions: number[], normals: number[], lines: number[] }}
 */
export function trianglesOf(body, triangulate) {
  const mesh = new Mesh();
  if (body.kind === "turned") turned(mesh, body.outline);
  else if (body.kind === "slice") {
    extruded(mesh, body.outline, body.holes ?? [], body.z, ([y, x], z) => [z, y, x], triangulate);
  } else if (body.kind === "slab") {
    const half = body.thick / 2;
    extruded(mesh, body.outline, [], [-half, half], ([z, y], x) => [z, y, x], triangulate);
  } else if (body.kind === "round") round(mesh, body);
  else if (body.kind === "ball") ball(mesh, body.at, body.radius);
  else if (body.kind === "coil") coil(mesh, body);
  return body.count ? around(mesh, body.count) : mesh;
}

/**
 * The same, so many times round the axis.
 *
 * @param {Mesh} one
 * @param {number} count
 */
function around(one, count) {
  const mesh = new Mesh();
  for (let k = 0; k < count; k += 1) {
    const [c, s] = [Math.cos((2 * Math.PI * k) / count), Math.sin((2 * Math.PI * k) / count)];
    for (const [from, to] of [
      [one.positions, mesh.positions],
      [one.normals, mesh.normals],
      [one.lines, mesh.lines],
    ]) {
      for (let n = 0; n < from.length; n += 3) {
        to.push(from[n], c * from[n + 1] - s * from[n + 2], s * from[n + 1] + c * from[n + 2]);
      }
    }
  }
  return mesh;
}

/**
 * What triangles enclose, above zero where all face outwards.
 *
 * @param {readonly number[]} positions
 */
export function enclosed(positions) {
  let six = 0;
  for (let n = 0; n < positions.length; n += 9) {
    const [ax, ay, az, bx, by, bz, cx, cy, cz] = positions.slice(n, n + 9);
    six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return six / 6;
}
