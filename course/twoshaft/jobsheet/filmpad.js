// A face to be coated: drawn to scale, coated by drag or by choosing stretch, tool and size.
// It shows what was laid, and nothing about whether that seals.

function draw(tag, attributes = {}, ...children) {
  const node = document.createElementNS(SVG_NS, tag);
  for (const [name, value] of Object.entries(attributes)) if (value != null) node.setAttribute(name, value);
  node.append(...children);
  return node;
}

// Reads "film 0.12 middle from-1-to-2" or "bead 1.5 at 12,30 14,42" as its parts.
function entryParts(entry) {
  const words = String(entry).split(" ");
  const hand = words.shift();
  const size = hand === "wipe" ? 0 : Number(words.shift());
  const side = words.shift();
  const points = side === "at" ? words.map((pair) => pair.split(",").map(Number)) : null;
  return { hand, size, side, place: points ? "" : words[0], points };
}

function entryLine(face, parts) {
  if (parts.points) return parts.points;
  if (parts.side === "round") return face.holes.find((hole) => hole.id === parts.place)?.ring ?? [];
  return face.stretches.find((stretch) => stretch.id === parts.place)?.lines[parts.side] ?? [];
}

function entryWords(face, entry) {
  const parts = entryParts(entry);
  const place = face.stretches.find((one) => one.id === parts.place) ?? face.holes.find((one) => one.id === parts.place);
  const size = parts.hand === "wipe" ? "" : ` ${parts.size} mm`;
  return `${face.hands[parts.hand] ?? parts.hand}${size}${place ? `, ${place.name}` : ""}, ${face.sides[parts.side] ?? ""}`;
}

// Keeps the corners of a drawn line and drops what lies between them; at most `most` points.
function thinned(points, most) {
  const far = (from, to, point) => {
    const [x, y] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(x, y) || 1;
    return Math.abs(x * (point[1] - from[1]) - y * (point[0] - from[0])) / length;
  };
  const keep = (list, limit) => {
    if (list.length < 3) return list;
    let worst = 0;
    let at = 0;
    for (let i = 1; i < list.length - 1; i += 1) {
      const away = far(list[0], list[list.length - 1], list[i]);
      if (away > worst) [worst, at] = [away, i];
    }
    if (worst <= limit) return [list[0], list[list.length - 1]];
    return [...keep(list.slice(0, at + 1), limit).slice(0, -1), ...keep(list.slice(at), limit)];
  };
  let limit = 0.4;
  let kept = keep(points, limit);
  while (kept.length > most) kept = keep(points, (limit *= 1.5));
  return kept.map((pair) => pair.map((number) => Math.round(number * 10) / 10));
}

const MARGIN_MM = 14;

// The face to scale. Layers: `under` (for a canvas), strokes, marks, over.
function faceDrawing(face, label) {
  const xs = face.outline.map(([x]) => x);
  const ys = face.outline.map(([, y]) => y);
  const [left, right] = [Math.min(...xs) - MARGIN_MM, Math.max(...xs) + MARGIN_MM];
  const [low, high] = [Math.min(...ys) - MARGIN_MM, Math.max(...ys) + MARGIN_MM];
  const width = right - left;
  const height = high - low;
  const at = ([x, y]) => `${(x - left).toFixed(1)} ${(high - y).toFixed(1)}`;
  const path = (points, closed) => `M${points.map(at).join("L")}${closed ? "Z" : ""}`;
  const stem = freshId("face");
  const unit = width / 100; // text and marks keep their size on any face
  const hatch = (name, ...lines) => draw("pattern", { id: `${stem}-${name}`, width: 4 * unit / 2, height: 4 * unit / 2, patternUnits: "userSpaceOnUse" }, ...lines);
  const u2 = 2 * unit;
  const defs = draw("defs", {},
    hatch("oil", draw("path", { d: `M0 ${u2}L${u2} 0`, class: "tsp-hatch", "stroke-width": unit / 4 })),
    hatch("dirt", draw("path", { d: `M0 ${u2}L${u2} 0M0 0L${u2} ${u2}`, class: "tsp-hatch", "stroke-width": unit / 4 })));
  const rooms = face.cavities.map(([, outline]) => path(outline, true)).join("");
  const spots = draw("g", {});
  const strokes = draw("g", {});
  const marks = draw("g", {});
  const over = draw("g", {});
  const live = draw("path", { class: "tsp-live", d: "" });
  const chosen = draw("path", { class: "tsp-chosen", d: "" });
  const land = draw("path", { class: "tsp-land", d: path(face.outline, true) + rooms, "fill-rule": "evenodd" });
  const edge = draw("path", { class: "tsp-edge", d: path(face.outline, true) + rooms + face.islands.map((one) => path(one, true)).join(""), "stroke-width": unit / 2.5 });
  const text = ([x, y], words, anchor = "middle") => draw("text", { x: x - left, y: high - y, class: "tsp-text", "font-size": 2.1 * unit, "text-anchor": anchor }, words);
  const middle = [(left + right) / 2, (low + high) / 2];
  const towards = ([x, y], away) => {
    const [dx, dy] = [middle[0] - x, middle[1] - y];
    const size = Math.hypot(dx, dy) || 1;
    return [x + (away * dx) / size, y + (away * dy) / size];
  };
  for (const hole of face.holes) {
    marks.append(draw("circle", { cx: hole.x - left, cy: high - hole.y, r: hole.d / 2, class: hole.leads === "blind" ? "tsp-hole tsp-blind" : "tsp-hole", "stroke-width": unit / 4 }));
    if (hole.leads === "to the outside") marks.append(draw("circle", { cx: hole.x - left, cy: high - hole.y, r: hole.d / 3, class: "tsp-hole", "stroke-width": unit / 4 }));
    const [tx, ty] = towards([hole.x, hole.y], -(hole.d / 2 + 4.4 * unit));
    marks.append(text([tx, ty - 0.8 * unit], hole.name.replace("bolt ", "")));
  }
  for (const guide of face.guides) {
    const [x, y] = [guide.x - left, high - guide.y];
    marks.append(draw("path", { class: "tsp-guide", d: `M${x - unit} ${y}h${2 * unit}M${x} ${y - unit}v${2 * unit}`, "stroke-width": unit / 2 }));
    marks.append(draw("circle", { cx: x, cy: y, r: guide.reach, class: "tsp-reach", "stroke-width": unit / 5, "stroke-dasharray": `${unit} ${unit}` }));
    const spot = towards([guide.x, guide.y], guide.reach + 2 * unit);
    const lean = (spot[0] - guide.x) / (guide.reach + 2 * unit);
    const far = lean > 0.5 ? "start" : lean < -0.5 ? "end" : "middle";
    marks.append(text(spot, guide.name, far));
  }
  for (const spot of face.spots) {
    const kind = spot.word.split(" ")[0];
    const [a, b] = [spot.points[0], spot.points[spot.points.length - 1]];
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const [nx, ny] = [-(b[1] - a[1]) / size * spot.width / 2, (b[0] - a[0]) / size * spot.width / 2];
    const box = [[a[0] + nx, a[1] + ny], [b[0] + nx, b[1] + ny], [b[0] - nx, b[1] - ny], [a[0] - nx, a[1] - ny]];
    // What is wiped or laid afterwards lies over it.
    spots.append(draw("path", { d: path(box, true), fill: `url(#${stem}-${kind})`, class: "tsp-spot", "stroke-width": unit / 4 }));
    const word = text(towards([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], 9 * unit), kind);
    word.classList.add("tsp-spot-word");
    marks.append(word);
  }
  const tens = [100, 50, 20, 10].find((size) => size < width / 4);
  over.append(draw("path", { class: "tsp-edge", d: `M${unit} ${height - unit}v${-unit}v${unit / 2}h${tens}v${-unit / 2}v${unit}`, "stroke-width": unit / 4 }),
    draw("text", { x: tens + 2 * unit, y: height - unit, class: "tsp-text", "font-size": 2.1 * unit }, `${tens} mm`));
  const svg = draw("svg", { viewBox: `0 0 ${width.toFixed(1)} ${height.toFixed(1)}`, class: "tsp-face", role: "img", "aria-label": label },
    defs, land, spots, strokes, edge, marks, chosen, live, over);
  // The frame has the drawing's own shape, so that a canvas under it can be laid to scale.
  const frame = make("div", { class: "ts-pad-face", style: `max-width: ${(25 * width / height).toFixed(1)}rem` }, svg);
  return {
    frame, svg, over, live, chosen, land, path, box: { left, right, low, high, width, height }, unit,
    place(event) {
      const frame = svg.getBoundingClientRect();
      const scale = Math.min(frame.width / width, frame.height / height);
      return [left + (event.clientX - frame.left - (frame.width - scale * width) / 2) / scale,
        high - (event.clientY - frame.top - (frame.height - scale * height) / 2) / scale];
    },
    strokes(entries) {
      strokes.replaceChildren(...entries.map((entry) => {
        const parts = entryParts(entry);
        const line = entryLine(face, parts);
        const wide = { film: face.width, bead: Math.max(parts.size, unit / 2), wipe: 2 * face.width }[parts.hand] ?? 1;
        const d = line.length > 1 ? path(line, parts.side === "round") : line.length ? `${path(line)}h0.01` : "";
        const stroke = draw("path", { d, class: `tsp-stroke tsp-${parts.hand}`, "stroke-width": wide });
        if (parts.hand !== "film") return stroke;
        // Coarser or finer dashes along the middle tell a thick film from a thin one without colour.
        const dash = Math.min(8, Math.max(0.6, 40 * parts.size));
        return draw("g", {}, stroke, draw("path", { d, class: "tsp-grain", "stroke-width": unit / 3, "stroke-dasharray": `${dash} ${dash}` }));
      }));
    },
  };
}

// The pad: drawing, tools and, unless the rig shows its own, the list of passes.
function filmPad({ face, label, onLay, onRemove, onClear }) {
  const drawing = faceDrawing(face, label);
  const said = make("p", { class: "ts-hidden", "aria-live": "polite" });
  const trouble = make("p", { class: "ts-read ts-pad-trouble", role: "status" });
  const option = ([value, words]) => make("option", { value }, words);
  const labelled = (words, node, more) => make("span", { class: "ts-pair" }, make("label", { for: node.id }, words), node, more);
  const hand = make("select", { class: "ts-box", id: freshId("hand") }, ...Object.entries(face.hands).map(option));
  const size = make("input", { class: "ts-box ts-size", id: freshId("size"), type: "text", inputmode: "decimal", autocomplete: "off", maxlength: "12" });
  const sizeWords = make("label", { for: size.id }, "thickness");
  const place = make("select", { class: "ts-box", id: freshId("place") },
    ...face.stretches.map(({ id, name }) => option([id, name])),
    make("optgroup", { label: "Round a hole" }, ...face.holes.map(({ id, name }) => option([`round ${id}`, `round ${name}`]))));
  const side = make("select", { class: "ts-box", id: freshId("side") }, ...["middle", "inside", "outside"].map((key) => option([key, face.sides[key]])));
  const press = (words, action) => make("button", { type: "button", class: "ts-button", onclick: action }, words);
  const here = press("Lay it here", () => lay([entryFor(place.value)]));
  const all = press("Lay it on every stretch", () => lay(face.stretches.map(({ id }) => entryFor(id))));
  const undo = press("Take back the last pass", () => count && onRemove(count - 1, true));
  const clear = press("Clear the face", () => onClear());
  const sizes = { film: "", bead: "" };
  let count = 0;
  let locked = false;

  function sized() {
    if (hand.value === "wipe") return "";
    const [low, high] = face.sizes[hand.value];
    const text = size.value.trim().replace(",", ".").replace(/\s*mm$/i, "");
    const um = text.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);
    const number = um ? Number(um[1]) / 1000 : /^\d*\.?\d+$|^\d+\.$/.test(text) ? Number(text) : NaN;
    if (!(number >= low && number <= high)) {
      const asked = { film: "the thickness of the film", bead: "the diameter of the bead" }[hand.value];
      trouble.textContent = size.value.trim()
        ? `Read “${size.value}”: give ${asked} from ${low} to ${high} mm.` : `First give ${asked} in mm.`;
      size.setAttribute("aria-invalid", "true");
      size.focus();
      return null;
    }
    size.removeAttribute("aria-invalid");
    return ` ${Number(number.toFixed(3))}`;
  }
  function entryFor(where) {
    const given = sized();
    if (given === null) return null;
    return where.startsWith("round ") ? `${hand.value}${given} ${where}` : `${hand.value}${given} ${side.value} ${where}`;
  }
  function lay(entries) {
    if (locked || entries.some((entry) => entry === null)) return;
    if (count + entries.length > face.most) {
      trouble.textContent = `There is room for ${face.most} passes; take some back first.`;
      return;
    }
    trouble.textContent = "";
    said.textContent = entries.length === 1 ? `Laid: ${entryWords(face, entries[0])}` : `Laid on ${entries.length} stretches`;
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
    side.disabled = locked || place.value.startsWith("round ");
    const parts = place.value.startsWith("round ")
      ? { side: "round", place: place.value.slice(6) } : { side: side.value, place: place.value };
    const line = entryLine(face, parts);
    drawing.chosen.setAttribute("d", line.length ? drawing.path(line, parts.side === "round") : "");
    drawing.chosen.setAttribute("stroke-width", drawing.unit / 2);
  }
  hand.addEventListener("change", choose);
  size.addEventListener("input", () => { sizes[hand.value] = size.value; });
  place.addEventListener("change", show);
  side.addEventListener("change", show);
  size.addEventListener("keydown", (event) => { if (event.key === "Enter") { event.preventDefault(); here.click(); } });

  // A drag lays a line of one's own; a tap chooses the stretch under it.
  let drawn = null;
  drawing.svg.addEventListener("pointerdown", (event) => {
    if (locked || event.button > 0) return;
    drawn = [drawing.place(event)];
    drawing.svg.setPointerCapture(event.pointerId);
    const wide = { film: face.width, bead: Math.max(1, Number(sizes.bead.replace(",", ".")) || 1), wipe: 2 * face.width }[hand.value];
    drawing.live.setAttribute("stroke-width", wide);
  });
  drawing.svg.addEventListener("pointermove", (event) => {
    if (!drawn) return;
    const next = drawing.place(event);
    const last = drawn[drawn.length - 1];
    if (Math.hypot(next[0] - last[0], next[1] - last[1]) < 0.5) return;
    drawn.push(next);
    drawing.live.setAttribute("d", drawing.path(drawn));
  });
  const end = (event) => {
    if (!drawn) return;
    const points = drawn;
    drawn = null;
    drawing.live.setAttribute("d", "");
    if (event.type === "pointercancel") return;
    const long = points.slice(1).reduce((sum, point, i) => sum + Math.hypot(point[0] - points[i][0], point[1] - points[i][1]), 0);
    if (long < 3) {
      const near = (line) => Math.min(...line.map(([x, y]) => Math.hypot(x - points[0][0], y - points[0][1])));
      const ranked = face.stretches.map(({ id, lines }) => [near(lines.middle), id]).sort((a, b) => a[0] - b[0]);
      place.value = ranked[0][1];
      show();
      return;
    }
    const given = sized();
    if (given !== null) lay([`${hand.value}${given} at ${thinned(points, face.points).map((pair) => pair.join(",")).join(" ")}`]);
  };
  drawing.svg.addEventListener("pointerup", end);
  drawing.svg.addEventListener("pointercancel", end);

  const list = make("ol", { class: "ts-passes", "aria-label": "Passes, in the order they were done" });
  const empty = make("p", { class: "ts-hint" }, "Nothing is laid yet.");
  const tools = make("div", { class: "ts-pad-tools" },
    make("div", { class: "ts-tools" }, labelled("tool", hand), make("span", { class: "ts-pair" }, sizeWords, size)),
    make("div", { class: "ts-tools" }, labelled("where", place), labelled("runs", side)),
    make("div", { class: "ts-tools" }, here, all, undo, clear), trouble, said);
  choose();
  return {
    drawing, tools, list, empty,
    frame: drawing.frame,
    element: make("div", { class: "ts-pad" }, drawing.frame, tools,
      make("div", { class: "ts-pad-list" }, empty, list)),
    show(entries, notes = []) {
      count = entries.length;
      drawing.strokes(entries);
      empty.hidden = count > 0;
      const taken = [...list.querySelectorAll("button")].indexOf(document.activeElement);
      list.replaceChildren(...entries.map((entry, i) => make("li", {},
        make("span", {}, `${entryWords(face, entry)}${notes[i] ? `, ${notes[i]}` : ""} `),
        make("button", { type: "button", class: "ts-button ts-remove", disabled: locked, "aria-label": `Take out pass ${i + 1}`, onclick: () => onRemove(i, false) }, "take out"))));
      if (taken >= 0) (list.querySelectorAll("button")[Math.min(taken, count - 1)] ?? here).focus();
    },
    setDisabled(value) {
      locked = value;
      for (const node of [hand, place, here, all, undo, clear, ...list.querySelectorAll("button")]) node.disabled = value;
      size.disabled = value || hand.value === "wipe";
      show();
    },
  };
}

// The control of the answer kind film in a form.
function filmControl(field, ids, commit) {
  let entries = [];
  const change = (next) => {
    entries = next;
    pad.show(entries);
    commit(entries);
  };
  const pad = filmPad({
    face: field.face, label: `${field.prompt}: ${field.face.name}, seen from the side that is coated`,
    onLay: (more) => change([...entries, ...more]),
    onRemove: (at) => change(entries.filter((_, i) => i !== at)),
    onClear: () => change([]),
  });
  return {
    element: pad.element,
    show(state) {
      entries = [].concat(state.value ?? []).filter((one) => typeof one === "string");
      pad.show(entries);
    },
    setDisabled: (value) => pad.setDisabled(value),
    refused() {},
  };
}
