// Sealant rig: the face as a raster from the kernel under the pad's drawing.

/** @import { Message, Point, Render } from "../types.js" */
/** @import { Look } from "../logic/raster.js" */
/** @import { Face } from "../logic/film.js" */

import { KIND, PIXELS, pixels } from "../logic/raster.js";
import {
  beside,
  button,
  choiceBox,
  draw,
  factRows,
  freshId,
  make,
  stopControls,
} from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { filmPad } from "../parts/filmpad.js";

const THEME_MS = 600;

/**
 * Paints cells on a canvas.
 *
 * @param {HTMLCanvasElement} canvas
 * @param {Uint8Array} cells
 * @param {[rows: number, columns: number]} shape
 * @param {readonly Look[]} looks
 * @param {readonly number[]} ink
 * @param {boolean} bare whether oil and dirt are shown too
 */
function paintCells(canvas, cells, shape, looks, ink, bare) {
  const [rows, columns] = shape;
  canvas.width = columns * PIXELS; // clears it, and tells whoever waits for it to be painted
  canvas.height = rows * PIXELS;
  const bytes = new Uint8ClampedArray(pixels(cells, shape, looks, ink, bare).buffer);
  const image = new ImageData(bytes, canvas.width, canvas.height);
  canvas.getContext("2d")?.putImageData(image, 0, 0);
}

/**
 * A cell with its words, for the key.
 *
 * @param {Look} look
 * @param {readonly number[]} ink
 */
function swatch(look, ink) {
  const canvas = make("canvas", { class: "ts-swatch", "aria-hidden": "true" });
  paintCells(canvas, new Uint8Array(15).fill(look[0]), [3, 5], [look], ink, false);
  return make("span", { class: "ts-key" }, canvas, look[1]);
}

/** @type {Render} */
export function renderSealant({ model, el }) {
  /** @type {Face} */
  const face = model.get("face");
  /** @type {Record<"film" | "closed", Look[]>} */
  const looks = model.get("looks");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const clock = make("span", { class: "ts-clock" });
  const facts = make("dl", { class: "ts-facts" });
  const key = make("p", { class: "ts-legend" });
  const canvas = make("canvas", { class: "ts-cells", "aria-hidden": "true" });
  const screen = openScreen(
    { model, el },
    {
      kind: "rig",
      lost() {
        pad.setDisabled(true);
        stopControls(el);
      },
    },
  );
  /** @type {string | null} */
  let awaited = null;
  /** @param {Message} message */
  const send = (message) => {
    awaited = freshId("turn");
    screen.send({ ...message, turn: awaited });
  };
  const pad = filmPad({
    face,
    label: `${face.name}, seen from the side that is coated; the finding and the list say what it shows`,
    onLay(entries) {
      pad.drawing.strokes(entries); // at once; the kernel's film takes its place
      send({ type: "lay", entries });
    },
    onRemove: (at) => send({ type: "remove", at }),
    onClear: () => send({ type: "clear" }),
  });
  const shut = button("Close the face", () =>
    send({ type: "shut", closed: !model.get("view").closed }),
  );
  const flat = make("input", {
    type: "range",
    id: freshId("flat"),
    ...{ min: "20", max: "160", step: "10" },
    class: "ts-range",
  });
  const flatWords = make("output", { for: flat.id });
  const slide = choiceBox(
    { id: freshId("slide"), onchange: () => send({ type: "slide", by: slide.value }) },
    model.get("view").slides,
  );
  /** @type {Message | null} */
  let next = null; // where the slider stands while the kernel is still at an earlier place
  flat.addEventListener("input", () => {
    flatWords.textContent = `${flat.value} µm`;
    const message = { type: "flat", um: Number(flat.value) };
    if (awaited === null) send(message);
    else next = message;
  });
  const { box, unit } = pad.drawing;
  pad.drawing.land.classList.add("tsp-clear");
  pad.drawing.frame.prepend(canvas);
  /** @param {...(Node | string)} nodes */
  const pair = (...nodes) => make("span", { class: "ts-pair" }, ...nodes);
  screen.show(
    screen.asks("Does this film close the gap?", { first: shut, begin: "press Close the face" }),
    ...[screen.alert, finding],
    beside(
      [pad.drawing.frame, key],
      [
        make(
          "div",
          { class: "ts-tools" },
          shut,
          pair(make("label", { for: slide.id }, "the other face is"), slide),
        ),
        make(
          "div",
          { class: "ts-tools" },
          clock,
          button("1 minute passes", () => send({ type: "time", by: 1 })),
          button("5 minutes pass", () => send({ type: "time", by: 5 })),
        ),
        make(
          "div",
          { class: "ts-tools" },
          pair(make("label", { for: flat.id }, "faces out of flat by"), flat, flatWords),
        ),
        ...[pad.tools, facts],
        make(
          "details",
          { class: "ts-keys" },
          make("summary", {}, "Passes laid"),
          ...[pad.empty, pad.list],
        ),
      ],
      "even",
    ),
  );

  function ink() {
    const found = getComputedStyle(el).color.match(/\d+(\.\d+)?/g);
    return found ? found.slice(0, 3).map(Number) : [0, 0, 0];
  }
  let keyed = "";
  let listed = "";
  function paint() {
    const view = model.get("view");
    const kinds = looks[view.closed ? "closed" : "film"];
    const data = model.get("grid");
    const cells =
      data instanceof DataView
        ? new Uint8Array(data.buffer, data.byteOffset, data.byteLength)
        : new Uint8Array(data);
    paintCells(canvas, cells, view.shape, kinds, ink(), !view.closed);
    const [rows, columns] = view.shape;
    const [x, y] = [view.corner[0] - view.pitch / 2, view.corner[1] - view.pitch / 2];
    /** @type {(size: number, whole: number) => string} */
    const part = (size, whole) => `${((100 * size) / whole).toFixed(3)}%`;
    canvas.style.left = part(x - box.left, box.width);
    canvas.style.width = part(columns * view.pitch, box.width);
    canvas.style.top = part(box.high - y - rows * view.pitch, box.height);
    canvas.style.height = part(rows * view.pitch, box.height);
    const seen = new Set(cells); // a few codes out of many cells, so told apart afterwards
    if (!view.closed) for (const code of [...seen]) seen.add(code & KIND);
    const shown = kinds.filter(([code]) => seen.has(code));
    const name = `${shown.map(([, words]) => words)} ${ink()}`;
    if (name === keyed) return;
    keyed = name;
    key.replaceChildren(...shown.map((look) => swatch(look, ink())));
  }
  const more = draw("g");
  pad.drawing.over.append(more);
  /** @type {(point: Point) => Point} */
  const at = ([x, y]) => [x - box.left, box.high - y];
  /** @param {[radius: number, points: Point[]]} lump */
  function lumpOf([radius, points]) {
    const dots = points.map((point) => {
      const [x, y] = at(point);
      return `M${x.toFixed(1)} ${y.toFixed(1)}h0.01`;
    });
    return draw("path", { d: dots.join(""), class: "tsp-lump", "stroke-width": 2 * radius });
  }
  /** @param {Point[]} points the way that the oil takes */
  function leakOf(points) {
    const [x, y] = at(points[points.length - 1]);
    const arrow = `M${x - 1.3 * unit} ${y - unit}h${2.6 * unit}l${-1.3 * unit} ${2.2 * unit}Z`;
    return [
      draw("path", { d: pad.drawing.path(points), class: "tsp-way", "stroke-width": unit }),
      draw("path", { d: arrow, class: "tsp-out" }),
    ];
  }
  function show() {
    const view = model.get("view");
    if (awaited !== null && view.turn !== awaited) return;
    awaited = null;
    const rows = JSON.stringify([view.entries, view.notes]);
    if (rows !== listed) pad.show(view.entries, view.notes);
    listed = rows;
    pad.drawing.strokes([]);
    paint();
    more.replaceChildren(...view.lumps.map(lumpOf), ...view.leaks.flatMap(leakOf));
    pad.drawing.svg.classList.toggle("tsp-shut", view.closed);
    pad.drawing.svg.classList.toggle("tsp-clean", view.closed || view.clean);
    finding.textContent = view.finding;
    slide.value = view.slide;
    clock.textContent = `minute ${view.minute}`;
    shut.textContent = view.closed ? "Lift the face off again" : "Close the face";
    if (next === null) {
      flat.value = String(view.flat);
      flatWords.textContent = `${view.flat} µm`;
    }
    facts.replaceChildren(...factRows(view.facts));
    if (next === null) return;
    const message = next;
    next = null;
    send(message);
  }
  screen.follow("change:view", show);
  screen.follow("msg:custom", (message) => {
    if (message.type !== "trouble") return;
    awaited = null;
    pad.drawing.strokes([]);
  });
  // The colours of another theme come a little later than its name.
  const themes = new MutationObserver(() => setTimeout(paint, THEME_MS));
  themes.observe(document.body, { attributes: true, attributeFilter: ["data-jp-theme-light"] });
  show();
  return () => {
    screen.close();
    themes.disconnect();
  };
}
