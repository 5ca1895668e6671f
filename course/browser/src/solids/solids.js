// Solids in space: drawn with the library three.js, which comes in a file of its own.

import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  DoubleSide,
  Group,
  LineBasicMaterial,
  LineSegments,
  Matrix4,
  Mesh,
  MeshLambertMaterial,
  OrthographicCamera,
  Raycaster,
  Scene,
  ShapeUtils,
  Vector2,
  Vector3,
  WebGLRenderer,
} from "three";
import { trianglesOf } from "../logic/triangles.js";

const PALE = 0.22;

/** @type {import("../logic/triangles.js").Triangulate} */
const triangulate = (outline, holes) =>
  ShapeUtils.triangulateShape(
    outline.map(([x, y]) => new Vector2(x, y)),
    holes.map((hole) => hole.map(([x, y]) => new Vector2(x, y))),
  );

/**
 * Everything that a page shows of solids in space.
 *
 * @param {HTMLCanvasElement} canvas
 * @param {any} space what the kernel tells of solids and movers
 * @param {{ ink: string, paper: string, accent: string, metal: string }} colours
 */
export function solidsView(canvas, space, colours) {
  const renderer = new WebGLRenderer({ canvas, antialias: true });
  renderer.setPixelRatio(Math.min(2, window.devicePixelRatio || 1));
  const scene = new Scene();
  scene.background = new Color(colours.paper);
  scene.add(new AmbientLight(undefined, 1.3));
  const camera = new OrthographicCamera(-1, 1, 1, -1, -5000, 5000);
  const lamp = new DirectionalLight(undefined, 2);
  scene.add(lamp);
  /** @type {{ part: string, mover: number | null, group: any, faces: any, lines: any }[]} */
  const shown = [];
  for (const solid of space.solids) {
    const group = new Group();
    const { faces: geometry, lines: edges } = geometryOf(solid);
    const pale = solid.hollow || solid.mover === null;
    const faces = new Mesh(
      geometry,
      new MeshLambertMaterial({
        color: colours.metal,
        side: DoubleSide,
        transparent: pale,
        opacity: pale ? PALE : 1,
        depthWrite: !pale,
        polygonOffset: true,
        polygonOffsetFactor: 1,
        polygonOffsetUnits: 1,
      }),
    );
    const lines = new LineSegments(
      edges,
      new LineBasicMaterial({ color: colours.ink, transparent: pale, opacity: pale ? 0.35 : 1 }),
    );
    faces.userData = { part: solid.part, name: solid.name };
    group.add(faces);
    if (solid.mover !== null || solid.hollow) group.add(lines);
    scene.add(group);
    shown.push({ part: solid.part, mover: solid.mover, group, faces, lines });
  }
  const middle = new Vector3();
  const half = new Vector3(); // of the box round all
  let radius = 1; // half of what is seen, up and down
  let [turn, tilt, zoom] = [0, 0, 1];
  let waiting = 0;

  const towardsEye = () =>
    new Vector3(Math.cos(tilt) * Math.sin(turn), Math.sin(tilt), Math.cos(tilt) * Math.cos(turn));

  let size = ""; // of the last painting: without a graphics card each one takes its time
  const sizeNow = () => `${canvas.clientWidth} ${canvas.clientHeight}`;
  function paint() {
    cancelAnimationFrame(waiting);
    waiting = 0;
    const { clientWidth: width, clientHeight: height } = canvas;
    if (!width || !height) return;
    if (size !== sizeNow()) renderer.setSize(width, height, false);
    size = sizeNow();
    const seen = radius / zoom;
    const across = (seen * width) / height;
    Object.assign(camera, { left: -across, right: across, top: seen, bottom: -seen });
    camera.updateProjectionMatrix();
    const eye = towardsEye();
    camera.position.copy(middle).addScaledVector(eye, 2000);
    camera.up.set(0, 1, 0);
    camera.lookAt(middle);
    lamp.position.copy(eye).add(new Vector3(0.4, 0.8, 0.2));
    renderer.render(scene, camera);
  }
  const soon = () => {
    waiting ||= requestAnimationFrame(paint);
  };
  /** Takes the middle and size of all from where it stands now. */
  function measure() {
    const low = new Vector3(Infinity, Infinity, Infinity);
    const high = new Vector3(-Infinity, -Infinity, -Infinity);
    for (const { group, faces } of shown) {
      const box = faces.geometry.boundingBox;
      low.min(box.min.clone().add(group.position));
      high.max(box.max.clone().add(group.position));
    }
    middle.addVectors(low, high).multiplyScalar(0.5);
    half.subVectors(high, low).multiplyScalar(0.5);
  }
  /** Looks at all that is shown, from the side, a little from above and behind. */
  function home() {
    measure();
    [turn, tilt, zoom] = [0.45 - Math.PI / 2, 0.35, 1];
    const eye = towardsEye();
    const right = new Vector3(0, 1, 0).cross(eye).normalize();
    const up = eye.clone().cross(right);
    const reach = (/** @type {any} */ way) =>
      Math.abs(way.x) * half.x + Math.abs(way.y) * half.y + Math.abs(way.z) * half.z;
    const shape = canvas.clientHeight / Math.max(1, canvas.clientWidth);
    radius = 1.04 * Math.max(reach(up), reach(right) * shape);
    soon();
  }
  return {
    /**
     * Shifts everything by what its mover goes.
     *
     * @param {(mover: number) => [number, number, number]} shift
     */
    move(shift) {
      for (const { mover, group } of shown) {
        if (mover !== null) group.position.set(...shift(mover));
      }
      soon();
    },
    home,
    /**
     * @param {number} sideways
     * @param {number} up
     */
    turnBy(sideways, up) {
      turn += sideways;
      tilt = Math.max(-1.5, Math.min(1.5, tilt + up));
      soon();
    },
    /** @param {number} times */
    zoomBy(times) {
      measure(); // what has been put together stands elsewhere than what was apart
      zoom = Math.max(0.5, Math.min(12, zoom * times));
      soon();
    },
    /**
     * Lights a part, and hides others.
     *
     * @param {string} chosen
     * @param {ReadonlySet<string>} hidden
     */
    look(chosen, hidden) {
      for (const { part, group, faces, lines } of shown) {
        group.visible = !hidden.has(part);
        const lit = part === chosen;
        faces.material.color.set(lit ? colours.accent : colours.metal);
        lines.material.color.set(lit ? colours.accent : colours.ink);
      }
      soon();
    },
    /**
     * The part at a place of the picture, the nearest that is not pale before those that are.
     *
     * @param {number} x from -1 to 1, to the right
     * @param {number} y from -1 to 1, up
     * @returns {string | null}
     */
    partAt(x, y) {
      const ray = new Raycaster();
      ray.setFromCamera(new Vector2(x, y), camera);
      const hits = ray
        .intersectObjects(shown.filter(({ group }) => group.visible).map(({ faces }) => faces))
        .map((/** @type {any} */ { object }) => object);
      const solid = hits.find((/** @type {any} */ one) => !one.material.transparent) ?? hits[0];
      return solid?.userData.part ?? null;
    },
    /**
     * The page's colours have changed: `look` gives them to the parts.
     *
     * @param {Partial<typeof colours>} to
     */
    recolour(to) {
      Object.assign(colours, to);
      scene.background = new Color(colours.paper);
    },
    paint,
    /** Paints it anew where the page shows it larger or smaller. */
    resized() {
      if (size !== sizeNow()) paint();
    },
    close() {
      cancelAnimationFrame(waiting);
      for (const { faces, lines } of shown) {
        for (const one of [faces, lines]) {
          one.geometry.dispose();
          one.material.dispose();
        }
      }
      renderer.dispose();
      renderer.forceContextLoss();
    },
  };
}

/** @param {any} solid */
function geometryOf({ frame: [origin, along, across], bodies }) {
  /** @type {number[]} */
  const positions = [];
  /** @type {number[]} */
  const normals = [];
  /** @type {number[]} */
  const lines = [];
  for (const body of bodies) {
    const made = trianglesOf(body, triangulate);
    for (const one of made.positions) positions.push(one);
    for (const one of made.normals) normals.push(one);
    for (const one of made.lines) lines.push(one);
  }
  const [u, v] = [new Vector3(...along), new Vector3(...across)];
  const place = new Matrix4().makeBasis(u, v, new Vector3().crossVectors(u, v));
  place.setPosition(...origin);
  const [faces, edges] = [new BufferGeometry(), new BufferGeometry()];
  faces.setAttribute("position", new BufferAttribute(new Float32Array(positions), 3));
  faces.setAttribute("normal", new BufferAttribute(new Float32Array(normals), 3));
  edges.setAttribute("position", new BufferAttribute(new Float32Array(lines), 3));
  for (const one of [faces, edges]) one.applyMatrix4(place);
  faces.computeBoundingBox();
  return { faces, lines: edges };
}
