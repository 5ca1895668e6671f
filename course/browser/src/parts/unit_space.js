// Parts in three dimensions: turn, zoom, choose and hide, by keys and by pointer.

/** @import { Model } from "../types.js" */
/** @import { Picture } from "./unit_picture.js" */

import { chunk } from "../page/chunk.js";
import { choiceBox, make, namedButton, withOrder } from "../page/dom.js";

const TURN = 0.12; // of a key, in radians
const ZOOM = 1.15;
const NONE = "This browser draws nothing in three dimensions. The section shows the same parts.";

/** @type {boolean | undefined} */
let drawn;
/** Whether this browser can draw in three dimensions. */
function able() {
  if (drawn !== undefined) return drawn;
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  drawn = Boolean(context);
  return drawn;
}

/**
 * Asks for what draws solids, while what is to be drawn is still worked out.
 *
 * @param {Model} model
 */
export function foresee(model) {
  if (able()) chunk(model, "solids").catch(() => {});
}

/**
 * A colour of the page as numbers, whatever it is written in.
 *
 * @param {HTMLElement} root
 * @param {string} written
 */
function resolved(root, written) {
  const probe = make("span", { style: `color: ${written}; forced-color-adjust: none` });
  root.append(probe);
  const pen = /** @type {CanvasRenderingContext2D} */ (
    make("canvas", { width: 1, height: 1 }).getContext("2d")
  );
  pen.fillStyle = getComputedStyle(probe).color;
  probe.remove();
  pen.fillRect(0, 0, 1, 1);
  const [r, g, b] = pen.getImageData(0, 0, 1, 1).data;
  return { text: `rgb(${r}, ${g}, ${b})`, light: (r + g + b) / 765 };
}

const FORCED = window.matchMedia("(forced-colors: active)");

/**
 * The colours of the page as it is now; a canvas is told them, style sheets do not reach into it.
 *
 * @param {HTMLElement} root
 */
function coloursOf(root) {
  const [ink, paper, accent] = FORCED.matches
    ? ["CanvasText", "Canvas", "Highlight"]
    : ["var(--ts-ink)", "var(--ts-paper)", "var(--ts-accent)"];
  const ground = resolved(root, paper);
  const share = ground.light > 0.5 ? 18 : 40; // metal is told from a dark ground by more light
  return {
    ink: resolved(root, ink).text,
    paper: ground.text,
    accent: resolved(root, accent).text,
    metal: resolved(root, `color-mix(in srgb, ${ink} ${share}%, ${paper})`).text,
  };
}

/**
 * @param {Model} model
 * @param {any} space what the kernel tells of solids and movers
 * @param {Picture["parts"]} parts
 */
export function unitSpace(model, space, parts) {
  const said = make("p", { class: "ts-hint ts-unit-name", role: "status" });
  if (!able()) {
    said.textContent = NONE;
    return { drawn: false, nodes: [said], move() {}, ready() {}, close() {} };
  }
  const canvas = make("canvas", {
    class: "ts-space",
    tabindex: "0",
    role: "application",
    "aria-label":
      "The parts in three dimensions. Arrow keys turn, plus and minus zoom, Home shows all of it as at first, H hides the chosen part, A shows all. The section shows the same parts with their names.",
  });
  const choose = choiceBox({ "aria-label": "Part", class: "ts-box ts-before" }, [
    ["", "no part chosen"],
    .../** @type {[string, string][]} */ (parts.map(([part, name]) => [part, name])),
  ]);
  /** @type {Set<string>} */
  const hidden = new Set();
  /** @type {any} */
  let view;
  /** @type {(mover: number) => [number, number, number]} */
  let shift = () => [0, 0, 0];
  let onReady = () => {};
  const hint =
    "Drag or use the arrow keys to turn. Tap a part, or choose it here, to read its name.";
  said.textContent = "Drawing …";

  function tell() {
    const found = parts.find(([part]) => part === choose.value);
    const gone = hidden.has(choose.value) ? " Hidden." : "";
    said.textContent = found ? `${found[1]}. ${found[2]}${gone}` : hint;
    view?.look(choose.value, hidden);
  }
  function hide() {
    if (!choose.value) return;
    if (!hidden.delete(choose.value)) hidden.add(choose.value);
    tell();
  }
  function all() {
    hidden.clear();
    tell();
  }
  choose.addEventListener("change", tell);
  /** @type {Record<string, () => void>} */
  const keys = {
    ArrowLeft: () => view?.turnBy(-TURN, 0),
    ArrowRight: () => view?.turnBy(TURN, 0),
    ArrowUp: () => view?.turnBy(0, TURN),
    ArrowDown: () => view?.turnBy(0, -TURN),
    "+": () => view?.zoomBy(ZOOM),
    "=": () => view?.zoomBy(ZOOM),
    "-": () => view?.zoomBy(1 / ZOOM),
    Home: () => view?.home(),
    h: hide,
    a: all,
  };
  canvas.addEventListener("keydown", (event) => {
    const act = keys[event.key] ?? keys[event.key.toLowerCase()];
    if (!act || withOrder(event)) return;
    act();
    event.preventDefault();
  });
  /** @type {{ x: number, y: number, far: boolean } | null} */
  let held = null;
  canvas.addEventListener("pointerdown", (event) => {
    held = { x: event.clientX, y: event.clientY, far: false };
    canvas.setPointerCapture(event.pointerId);
  });
  canvas.addEventListener("pointermove", (event) => {
    if (!held) return;
    const [dx, dy] = [event.clientX - held.x, event.clientY - held.y];
    if (!held.far && Math.hypot(dx, dy) < 4) return;
    held = { x: event.clientX, y: event.clientY, far: true };
    view?.turnBy(-dx / 150, dy / 150);
  });
  canvas.addEventListener("pointerup", (event) => {
    if (held && !held.far) {
      const { left, top, width, height } = canvas.getBoundingClientRect();
      const [x, y] = [(event.clientX - left) / width, (event.clientY - top) / height];
      choose.value = view?.partAt(2 * x - 1, 1 - 2 * y) ?? "";
      tell();
    }
    held = null;
  });
  canvas.addEventListener(
    "wheel",
    (event) => {
      if (document.activeElement !== canvas) return;
      view?.zoomBy(event.deltaY < 0 ? ZOOM : 1 / ZOOM);
      event.preventDefault();
    },
    { passive: false },
  );
  const recolour = () => {
    view?.recolour(coloursOf(canvas.parentElement ?? document.body));
    tell();
  };
  const theme = new MutationObserver(recolour);
  const watch = new ResizeObserver(() => view?.resized());
  let closed = false;
  chunk(model, "solids").then(
    ({ solidsView }) => {
      if (closed) return;
      view = solidsView(canvas, space, coloursOf(canvas.parentElement ?? document.body));
      view.move(shift);
      view.home(); // as large as all of it is when apart
      onReady();
      tell();
      view.paint();
      watch.observe(canvas);
      theme.observe(document.body, { attributes: true });
      FORCED.addEventListener("change", recolour);
      canvas.dataset.painted = "true";
    },
    () => {
      said.textContent = NONE;
    },
  );
  const tools = make(
    "div",
    { class: "ts-tools" },
    make("span", { class: "ts-pair" }, "Part ", choose),
    namedButton("Hide or show", hide, "Hide or show the chosen part"),
    namedButton("Show all", all, "Show all parts"),
    namedButton("−", () => view?.zoomBy(1 / ZOOM), "Smaller"),
    namedButton("+", () => view?.zoomBy(ZOOM), "Larger"),
  );
  return {
    drawn: true,
    nodes: [tools, said, canvas],
    /** @param {(mover: number) => [number, number, number]} to how far each mover has gone */
    move(to) {
      shift = to;
      view?.move(to);
    },
    /** @param {() => void} then what to do once all is drawn, apart */
    ready(then) {
      onReady = then;
    },
    close() {
      closed = true;
      watch.disconnect();
      theme.disconnect();
      FORCED.removeEventListener("change", recolour);
      view?.close();
    },
  };
}
