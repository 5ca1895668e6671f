// Sealant rig: the face as a raster from the kernel under the pad's drawing.

const OILY = 16;
const DIRTY = 32;
const PIXELS = 4; // to a cell
const THEME_MS = 600;

// Whether a pixel of a hatch is inked.
const HATCHES = {
  "": () => false,
  dots: (x, y) => x % 6 < 2 && y % 6 < 2,
  rising: (x, y) => (x + y) % 7 < 2,
  cross: (x, y) => (x + y) % 8 < 2 || (x - y + 80000) % 8 < 2,
  flat: (x, y) => y % 6 < 2,
  rings: (x, y) => { const d = Math.hypot((x % 12) - 6, (y % 12) - 6); return d > 2.5 && d < 4.5; },
  plus: (x, y) => (x % 10 === 5 && y % 10 > 2 && y % 10 < 8) || (y % 10 === 5 && x % 10 > 2 && x % 10 < 8),
  "lines-1": (x, y) => false,
  "lines-2": (x, y) => y % 14 === 0,
  "lines-3": (x, y) => y % 8 === 0,
  "lines-4": (x, y) => y % 5 === 0,
  "lines-5": (x, y) => y % 3 === 0,
};

function rgb(colour) {
  return [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16));
}

function paintCells(canvas, bytes, [ny, nx], looks, ink, oilInk) {
  canvas.width = nx * PIXELS;
  canvas.height = ny * PIXELS;
  const context = canvas.getContext("2d");
  const image = context.createImageData(canvas.width, canvas.height);
  const words = new Uint32Array(image.data.buffer);
  const pack = ([r, g, b], alpha) => ((alpha << 24) | (b << 16) | (g << 8) | r) >>> 0;
  const table = new Map(looks.map(([code, , colour, hatch]) => [code, [colour ? pack(rgb(colour), 200) : 0, HATCHES[hatch] ?? HATCHES[""]]]));
  const dark = pack(ink, 190);
  const wide = canvas.width;
  for (let row = 0; row < ny; row += 1) {
    const top = (ny - 1 - row) * PIXELS;
    for (let column = 0; column < nx; column += 1) {
      const code = bytes[row * nx + column];
      if (!code) continue;
      const [ground, hatch] = table.get(code & 15) ?? [0, HATCHES[""]];
      const oily = oilInk && code & OILY;
      const dirty = oilInk && code & DIRTY;
      for (let y = top; y < top + PIXELS; y += 1) {
        for (let x = column * PIXELS; x < (column + 1) * PIXELS; x += 1) {
          const inked = hatch(x, y) || (oily && HATCHES.rising(x, y)) || (dirty && HATCHES.cross(x, y));
          words[y * wide + x] = inked ? dark : ground;
        }
      }
    }
  }
  context.putImageData(image, 0, 0);
}

function swatch(look, ink) {
  const canvas = make("canvas", { class: "ts-swatch", "aria-hidden": "true" });
  paintCells(canvas, new Uint8Array(15).fill(look[0]), [3, 5], [look], ink, false);
  return make("span", { class: "ts-key" }, canvas, look[1]);
}

function renderSealant({ model, el }) {
  const face = model.get("face");
  const looks = model.get("looks");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const clock = make("span", { class: "ts-clock" });
  const facts = make("dl", { class: "ts-facts" });
  const key = make("p", { class: "ts-legend" });
  const canvas = make("canvas", { class: "ts-cells", "aria-hidden": "true" });
  const press = (words, action, label) => make("button", { type: "button", class: "ts-button", onclick: action, "aria-label": label }, words);
  const screen = openScreen({ model, el }, {
    kind: "rig",
    lost() { pad.setDisabled(true); for (const node of el.querySelectorAll("button, input, select")) node.disabled = true; },
  });
  let awaited = null;
  const send = (message) => {
    awaited = freshId("turn");
    screen.send({ ...message, turn: awaited });
  };
  const pad = filmPad({
    face, label: `${face.name}, seen from the side that is coated; the finding and the list say what it shows`,
    onLay(entries) {
      pad.drawing.strokes(entries); // at once; the kernel's film takes its place
      send({ type: "lay", entries });
    },
    onRemove: (at) => send({ type: "remove", at }),
    onClear: () => send({ type: "clear" }),
  });
  const shut = press("Close the face", () => send({ type: "shut", closed: !model.get("view").closed }));
  const flat = make("input", { type: "range", id: freshId("flat"), min: "20", max: "160", step: "10", class: "ts-range" });
  const flatWords = make("output", { for: flat.id });
  const slide = make("select", { id: freshId("slide"), class: "ts-box" },
    ...model.get("view").slides.map(([value, words]) => make("option", { value }, words)));
  slide.addEventListener("change", () => send({ type: "slide", by: slide.value }));
  let next = null; // where the slider stands while the kernel is still at an earlier place
  flat.addEventListener("input", () => {
    flatWords.textContent = `${flat.value} µm`;
    const message = { type: "flat", um: Number(flat.value) };
    if (awaited === null) send(message);
    else next = message;
  });
  const { box } = pad.drawing;
  pad.drawing.land.classList.add("tsp-clear");
  pad.drawing.frame.prepend(canvas);
  screen.show(
    make("p", { class: "ts-who" }, "Practice. Nothing here is marked or saved."),
    screen.alert, finding, pad.drawing.frame, key,
    make("div", { class: "ts-tools" }, shut,
      make("span", { class: "ts-pair" }, make("label", { for: slide.id }, "the other face is"), slide),
      make("span", { class: "ts-pair" }, clock, press("1 minute passes", () => send({ type: "time", by: 1 })), press("5 minutes pass", () => send({ type: "time", by: 5 }))),
      make("span", { class: "ts-pair" }, make("label", { for: flat.id }, "faces out of flat by"), flat, flatWords)),
    pad.tools, facts,
    make("details", { class: "ts-keys" }, make("summary", {}, "Passes laid"), pad.empty, pad.list));

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
    const bytes = data instanceof DataView ? new Uint8Array(data.buffer, data.byteOffset, data.byteLength) : new Uint8Array(data);
    paintCells(canvas, bytes, view.shape, kinds, ink(), !view.closed);
    const [ny, nx] = view.shape;
    const [x, y] = [view.corner[0] - view.pitch / 2, view.corner[1] - view.pitch / 2];
    const part = (size, whole) => `${(100 * size / whole).toFixed(3)}%`;
    canvas.style.left = part(x - box.left, box.width);
    canvas.style.width = part(nx * view.pitch, box.width);
    canvas.style.top = part(box.high - y - ny * view.pitch, box.height);
    canvas.style.height = part(ny * view.pitch, box.height);
    const seen = new Set();
    for (const value of bytes) seen.add(view.closed ? value : value & 15);
    const shown = kinds.filter(([code]) => seen.has(code));
    const name = `${shown.map(([, words]) => words)} ${ink()}`;
    if (name === keyed) return;
    keyed = name;
    key.replaceChildren(...shown.map((look) => swatch(look, ink())));
  }
  const more = draw("g", {});
  pad.drawing.over.append(more);
  function show() {
    const view = model.get("view");
    if (awaited !== null && view.turn !== awaited) return;
    awaited = null;
    const rows = JSON.stringify([view.entries, view.notes]);
    if (rows !== listed) pad.show(view.entries, view.notes);
    listed = rows;
    pad.drawing.strokes([]);
    paint();
    const { unit } = pad.drawing;
    more.replaceChildren(
      ...view.lumps.map(([r, points]) => draw("path", {
        d: points.map(([x, y]) => `M${(x - box.left).toFixed(1)} ${(box.high - y).toFixed(1)}h0.01`).join(""), class: "tsp-lump", "stroke-width": 2 * r,
      })),
      ...view.leaks.flatMap((points) => {
        const [x, y] = points[points.length - 1];
        const [cx, cy] = [x - box.left, box.high - y];
        return [
          draw("path", { d: pad.drawing.path(points), class: "tsp-way", "stroke-width": unit }),
          draw("path", { d: `M${cx - 1.3 * unit} ${cy - unit}h${2.6 * unit}l${-1.3 * unit} ${2.2 * unit}Z`, class: "tsp-out" }),
        ];
      }));
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
    facts.replaceChildren(...view.facts.flatMap(([word, text]) => [make("dt", {}, word), make("dd", {}, text)]));
    if (next !== null) {
      const message = next;
      next = null;
      send(message);
    }
  }
  model.on("change:view", show);
  model.on("msg:custom", (message) => { if (message.type === "trouble") { awaited = null; pad.drawing.strokes([]); } });
  const themes = new MutationObserver(() => setTimeout(paint, THEME_MS)); // its colours come a little later
  themes.observe(document.body, { attributes: true, attributeFilter: ["data-jp-theme-light"] });
  show();
  return () => { screen.close(); themes.disconnect(); model.off("change:view", show); };
}
