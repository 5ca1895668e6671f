// A face to be coated: drawn to scale, coated by drag or by choosing stretch, tool and size.
// It shows what was laid, and nothing about whether that seals.

/** @import { Point } from "../types.js" */
/** @import { Face } from "../logic/film.js" */

import {
  lengthOf,
  lineOf,
  nearestStretch,
  passOf,
  sizeTyped,
  thinned,
  wideness,
  wordsOf,
} from "../logic/film.js";
import { button, choiceBox, distance, draw, findAll, freshId, make } from "../page/dom.js";

const MARGIN_MM = 14;
const TAP_MM = 3; // a drag that is shorter only points at a stretch
const STEP_MM = 0.5; // between the points of a drag
const LINE_LETTERS = 12;
const SIDES = ["middle", "inside", "outside"];
const ROUND = "round ";

/**
 * A name in lines that are not much longer than a word.
 *
 * @param {string} name
 */
function broken(name) {
  /** @type {string[]} */
  const lines = [];
  for (const word of name.split(" ")) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + word.length < LINE_LETTERS) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(word);
  }
  return lines;
}

/**
 * The face to scale. Layers: land, spots, strokes, marks, over.
 *
 * @param {Face} face
 * @param {string} label
 */
function faceDrawing(face, label) {
  const xs = face.outline.map(([x]) => x);
  const ys = face.outline.map(([, y]) => y);
  const [left, right] = [Math.min(...xs) - MARGIN_MM, Math.max(...xs) + MARGIN_MM];
  const [low, high] = [Math.min(...ys) - MARGIN_MM, Math.max(...ys) + MARGIN_MM];
  const width = right - left;
  const height = high - low;
  /** @param {Point} point */
  const at = ([x, y]) => `${(x - left).toFixed(1)} ${(high - y).toFixed(1)}`;
  /**
   * @param {readonly Point[]} points
   * @param {boolean} [closed]
   */
  const path = (points, closed) => `M${points.map(at).join("L")}${closed ? "Z" : ""}`;
  const stem = freshId("face");
  const unit = width / 100; // text and marks keep their size on any face
  const letters = 2.5 * unit;
  const size = `font-size: calc(${letters.toFixed(2)}px * var(--ts-grown, 1))`;
  const tile = 2 * unit;
  /**
   * @param {string} name
   * @param {string} d
   */
  const hatch = (name, d) =>
    draw(
      "pattern",
      { id: `${stem}-${name}`, width: tile, height: tile, patternUnits: "userSpaceOnUse" },
      draw("path", { d, class: "tsp-hatch", "stroke-width": unit / 4 }),
    );
  const defs = draw(
    "defs",
    {},
    hatch("oil", `M0 ${tile}L${tile} 0`),
    hatch("dirt", `M0 ${tile}L${tile} 0M0 0L${tile} ${tile}`),
  );
  const rooms = face.cavities.map(([, outline]) => path(outline, true)).join("");
  const islands = face.islands.map((one) => path(one, true)).join("");
  const outline = path(face.outline, true) + rooms;
  const spots = draw("g");
  const strokes = draw("g");
  const marks = draw("g");
  const over = draw("g");
  const live = draw("path", { class: "tsp-live", d: "" });
  const chosen = draw("path", { class: "tsp-chosen", d: "" });
  const land = draw("path", { class: "tsp-land", d: outline, "fill-rule": "evenodd" });
  const edge = draw("path", {
    class: "tsp-edge",
    d: outline + islands,
    "stroke-width": unit / 2.5,
  });
  /**
   * @param {Point} point
   * @param {string} words
   * @param {string} [anchor]
   */
  const text = ([x, y], words, anchor = "middle") => {
    const place = { x: x - left, y: high - y, style: size, "text-anchor": anchor };
    return draw("text", { class: "tsp-text", ...place }, words);
  };
  /** @type {Point} */
  const middle = [(left + right) / 2, (low + high) / 2];
  /**
   * @param {Point} point
   * @param {number} away towards the middle; negative away from it
   * @returns {Point}
   */
  const towards = (point, away) => {
    const size = distance(point, middle) || 1;
    return [
      point[0] + (away * (middle[0] - point[0])) / size,
      point[1] + (away * (middle[1] - point[1])) / size,
    ];
  };
  for (const { x, y, d, leads, name } of face.holes) {
    const ring = { cx: x - left, cy: high - y, "stroke-width": unit / 4 };
    const kind = leads === "blind" ? "tsp-hole tsp-blind" : "tsp-hole";
    marks.append(draw("circle", { ...ring, r: d / 2, class: kind }));
    if (leads === "to the outside") {
      marks.append(draw("circle", { ...ring, r: d / 3, class: "tsp-hole" }));
    }
    const [tx, ty] = towards([x, y], -(d / 2 + 4.4 * unit));
    marks.append(text([tx, ty], name.replace("bolt ", "")));
  }
  for (const guide of face.guides) {
    const [x, y] = [guide.x - left, high - guide.y];
    const cross = `M${x - unit} ${y}h${tile}M${x} ${y - unit}v${tile}`;
    marks.append(draw("path", { class: "tsp-guide", d: cross, "stroke-width": unit / 2 }));
    const dashes = { "stroke-width": unit / 5, "stroke-dasharray": `${unit} ${unit}` };
    marks.append(draw("circle", { cx: x, cy: y, r: guide.reach, class: "tsp-reach", ...dashes }));
    const spot = towards([guide.x, guide.y], guide.reach + tile);
    const lean = (spot[0] - guide.x) / (guide.reach + tile);
    const anchor = lean > 0.5 ? "start" : lean < -0.5 ? "end" : "middle";
    const lines = broken(guide.name);
    const name = text(spot, "", anchor);
    const first = (1 - lines.length) / 2;
    name.append(
      ...lines.map((line, k) =>
        draw("tspan", { x: spot[0] - left, dy: `${k ? 1 : first}em` }, `${line} `),
      ),
    );
    marks.append(name);
  }
  for (const { word, points, width: wide } of face.spots) {
    const [kind] = word.split(" ");
    const [a, b] = [points[0], points[points.length - 1]];
    const size = distance(a, b) || 1;
    const [nx, ny] = [((-(b[1] - a[1]) / size) * wide) / 2, (((b[0] - a[0]) / size) * wide) / 2];
    /** @type {Point[]} */
    const box = [
      [a[0] + nx, a[1] + ny],
      [b[0] + nx, b[1] + ny],
      [b[0] - nx, b[1] - ny],
      [a[0] - nx, a[1] - ny],
    ];
    const fill = `url(#${stem}-${kind})`;
    // What is wiped or laid afterwards lies over it.
    spots.append(
      draw("path", { d: path(box, true), fill, class: "tsp-spot", "stroke-width": unit / 4 }),
    );
    const named = text(towards([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], 9 * unit), kind);
    named.classList.add("tsp-spot-word");
    marks.append(named);
  }
  const scale = [100, 50, 20, 10].find((size) => size < width / 4) ?? 10;
  const bar = `M${unit} ${height - unit}v${-unit}v${unit / 2}h${scale}v${-unit / 2}v${unit}`;
  const barWords = { x: scale + tile, y: height - 1.8 * unit, style: size };
  over.append(
    draw("path", { class: "tsp-edge", d: bar, "stroke-width": unit / 4 }),
    draw("text", { class: "tsp-text", ...barWords }, `${scale} mm`),
  );
  const viewBox = `0 0 ${width.toFixed(1)} ${height.toFixed(1)}`;
  const svg = draw(
    "svg",
    { viewBox, class: "tsp-face", role: "img", "aria-label": label },
    ...[defs, land, spots, strokes, edge, marks, chosen, live, over],
  );
  svg.dataset.letters = letters.toFixed(2);
  svg.dataset.grow = "2.5";
  // The frame has the drawing's own shape, so that a canvas under it can be laid to scale.
  const shaped = `max-width: ${((25 * width) / height).toFixed(1)}rem`;
  const frame = make("div", { class: "ts-pad-face", style: shaped }, svg);
  return {
    ...{ frame, svg, over, live, chosen, land, path, unit },
    box: { left, right, low, high, width, height },
    /**
     * The place on the face that the pointer is at.
     *
     * @param {PointerEvent} event
     * @returns {Point}
     */
    place({ clientX, clientY }) {
      const box = svg.getBoundingClientRect();
      const zoom = Math.min(box.width / width, box.height / height);
      return [
        left + (clientX - box.left - (box.width - zoom * width) / 2) / zoom,
        high - (clientY - box.top - (box.height - zoom * height) / 2) / zoom,
      ];
    },
    /** @param {readonly string[]} entries */
    strokes(entries) {
      strokes.replaceChildren(...entries.map(strokeOf));
    },
  };

  /** @param {string} entry */
  function strokeOf(entry) {
    const pass = passOf(entry);
    const line = lineOf(face, pass);
    const wide = wideness(face, pass.hand, Math.max(pass.size, unit / 2));
    const d =
      line.length > 1 ? path(line, pass.side === "round") : line.length ? `${path(line)}h0.01` : "";
    const stroke = draw("path", {
      d,
      class: `tsp-stroke tsp-${pass.hand}`,
      "stroke-width": wide,
    });
    if (pass.hand !== "film") return stroke;
    // Coarser or finer dashes along the middle tell a thick film from a thin one without colour.
    const dash = Math.min(8, Math.max(0.6, 40 * pass.size));
    const dashes = { "stroke-width": unit / 3, "stroke-dasharray": `${dash} ${dash}` };
    return draw("g", {}, stroke, draw("path", { d, class: "tsp-grain", ...dashes }));
  }
}

/**
 * The pad: drawing, tools and, unless the rig shows its own, the list of passes.
 *
 * @param {object} options
 * @param {Face} options.face
 * @param {string} options.label
 * @param {(entries: string[]) => void} options.onLay
 * @param {(at: number, isLast: boolean) => void} options.onRemove
 * @param {() => void} options.onClear
 */
export function filmPad({ face, label, onLay, onRemove, onClear }) {
  const drawing = faceDrawing(face, label);
  const said = make("p", { class: "ts-hidden", "aria-live": "polite" });
  const trouble = make("p", { class: "ts-read ts-pad-trouble", role: "status" });
  /**
   * @param {string} words
   * @param {HTMLElement} node
   */
  const labelled = (words, node) =>
    make("span", { class: "ts-pair" }, make("label", { for: node.id }, words), node);
  const hand = choiceBox({ id: freshId("hand") }, Object.entries(face.hands));
  const size = make("input", {
    class: "ts-box ts-size",
    id: freshId("size"),
    type: "text",
    inputmode: "decimal",
    autocomplete: "off",
    maxlength: "12",
  });
  const sizeWords = make("label", { for: size.id }, "thickness");
  const place = choiceBox(
    { id: freshId("place") },
    face.stretches.map(({ id, name }) => [id, name]),
  );
  place.append(
    make(
      "optgroup",
      { label: "Round a hole" },
      ...face.holes.map(({ id, name }) =>
        make("option", { value: `${ROUND}${id}` }, `round ${name}`),
      ),
    ),
  );
  const side = choiceBox(
    { id: freshId("side") },
    SIDES.map((key) => [key, face.sides[key]]),
  );
  const here = button("Lay it here", () => lay([entryFor(place.value)]));
  const all = button("Lay it on every stretch", () =>
    lay(face.stretches.map(({ id }) => entryFor(id))),
  );
  const undo = button("Take back the last pass", () => {
    if (count) onRemove(count - 1, true);
  });
  const clear = button("Clear the face", onClear);
  /** What was typed for each tool. @type {Record<string, string>} */
  const sizes = { film: "", bead: "" };
  let count = 0;
  let locked = false;

  /** The size as an entry has it, null if it cannot be used. */
  function sized() {
    if (hand.value === "wipe") return "";
    const [low, high] = face.sizes[hand.value];
    const number = sizeTyped(size.value);
    if (number >= low && number <= high) {
      size.removeAttribute("aria-invalid");
      return ` ${Number(number.toFixed(3))}`;
    }
    const asked = hand.value === "film" ? "the thickness of the film" : "the diameter of the bead";
    trouble.textContent = size.value.trim()
      ? `Read “${size.value}”: give ${asked} from ${low} to ${high} mm.`
      : `First give ${asked} in mm.`;
    size.setAttribute("aria-invalid", "true");
    size.focus();
    return null;
  }
  /** @param {string} where */
  function entryFor(where) {
    const given = sized();
    if (given === null) return null;
    const along = where.startsWith(ROUND) ? where : `${side.value} ${where}`;
    return `${hand.value}${given} ${along}`;
  }
  /** @param {readonly (string | null)[]} wanted */
  function lay(wanted) {
    const entries = wanted.filter((entry) => entry !== null);
    if (locked || entries.length < wanted.length) return;
    if (count + entries.length > face.most) {
      trouble.textContent = `There is room for ${face.most} passes; take some back first.`;
      return;
    }
    trouble.textContent = "";
    said.textContent =
      entries.length === 1
        ? `Laid: ${wordsOf(face, entries[0])}`
        : `Laid on ${entries.length} stretches`;
    onLay(entries);
  }
  function choose() {
    const wipe = hand.value === "wipe";
    sizeWords.textContent = hand.value === "bead" ? "diameter" : "thickness";
    size.disabled = locked || wipe;
    size.value = wipe ? "" : sizes[hand.value];
    size.placeholder = wipe ? "" : "mm";
    here.textContent = wipe ? "Wipe here" : "Lay it here";
    all.textContent = wipe ? "Wipe every stretch" : "Lay it on every stretch";
    trouble.textContent = "";
    show();
  }
  function show() {
    const round = place.value.startsWith(ROUND);
    side.disabled = locked || round;
    const line = lineOf(
      face,
      round
        ? { side: "round", place: place.value.slice(ROUND.length) }
        : { side: side.value, place: place.value },
    );
    drawing.chosen.setAttribute("d", line.length ? drawing.path(line, round) : "");
    drawing.chosen.setAttribute("stroke-width", String(drawing.unit / 2));
  }
  hand.addEventListener("change", choose);
  size.addEventListener("input", () => {
    sizes[hand.value] = size.value;
  });
  place.addEventListener("change", show);
  side.addEventListener("change", show);
  size.addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    here.click();
  });

  // A drag lays a line of one's own; a tap chooses the stretch under it.
  /** @type {Point[] | null} */
  let drawn = null;
  drawing.svg.addEventListener("pointerdown", (event) => {
    if (locked || event.button > 0) return;
    drawn = [drawing.place(event)];
    drawing.svg.setPointerCapture(event.pointerId);
    const bead = Math.max(1, Number(sizes.bead.replace(",", ".")) || 1);
    drawing.live.setAttribute("stroke-width", String(wideness(face, hand.value, bead)));
  });
  drawing.svg.addEventListener("pointermove", (event) => {
    if (!drawn) return;
    const next = drawing.place(event);
    if (distance(next, drawn[drawn.length - 1]) < STEP_MM) return;
    drawn.push(next);
    drawing.live.setAttribute("d", drawing.path(drawn));
  });
  /** @param {PointerEvent} event */
  const end = (event) => {
    if (!drawn) return;
    const points = drawn;
    drawn = null;
    drawing.live.setAttribute("d", "");
    if (event.type === "pointercancel") return;
    if (lengthOf(points) < TAP_MM) {
      place.value = nearestStretch(face, points[0]);
      show();
      return;
    }
    const given = sized();
    if (given === null) return;
    const pairs = thinned(points, face.points).map((pair) => pair.join(","));
    lay([`${hand.value}${given} at ${pairs.join(" ")}`]);
  };
  drawing.svg.addEventListener("pointerup", end);
  drawing.svg.addEventListener("pointercancel", end);

  const list = make("ol", {
    class: "ts-passes",
    "aria-label": "Passes, in the order they were done",
  });
  const empty = make("p", { class: "ts-hint" }, "Nothing is laid yet.");
  const tools = make(
    "div",
    { class: "ts-pad-tools" },
    make(
      "div",
      { class: "ts-tools" },
      labelled("tool", hand),
      make("span", { class: "ts-pair" }, sizeWords, size),
    ),
    make("div", { class: "ts-tools" }, labelled("where", place), labelled("runs", side)),
    make("div", { class: "ts-tools" }, here, all, undo, clear),
    ...[trouble, said],
  );
  /** @returns {HTMLButtonElement[]} */
  const removers = () => findAll(list, "button");
  choose();
  return {
    ...{ drawing, tools, list, empty },
    frame: drawing.frame,
    element: make(
      "div",
      { class: "ts-pad" },
      drawing.frame,
      tools,
      make("div", { class: "ts-pad-list" }, empty, list),
    ),
    /**
     * @param {readonly string[]} entries
     * @param {readonly string[]} [notes] what is said about each
     */
    show(entries, notes = []) {
      count = entries.length;
      drawing.strokes(entries);
      empty.hidden = count > 0;
      const taken = removers().findIndex((node) => node.matches(":focus"));
      list.replaceChildren(
        ...entries.map((entry, i) =>
          make(
            "li",
            {},
            make("span", {}, `${wordsOf(face, entry)}${notes[i] ? `, ${notes[i]}` : ""} `),
            button("take out", () => onRemove(i, false), {
              class: "ts-button ts-remove",
              disabled: locked,
              "aria-label": `Take out pass ${i + 1}`,
            }),
          ),
        ),
      );
      if (taken >= 0) (removers()[Math.min(taken, count - 1)] ?? here).focus();
    },
    /** @param {boolean} value */
    setDisabled(value) {
      locked = value;
      for (const node of [hand, place, here, all, undo, clear, ...removers()])
        node.disabled = value;
      size.disabled = value || hand.value === "wipe";
      show();
    },
  };
}
