// A movement of the hand: a list of moves in words, and the same as a line in a picture of the gate.
// The picture shows where each move aims, not where it would end: that is what the hand finds out.

function drawSvg(tag, attributes, ...children) {
  const node = document.createElementNS(SVG_NS, tag);
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
  node.append(...children);
  return node;
}

function gatePicture(plan) {
  const left = Math.min(...plan.gates);
  const right = Math.max(...plan.gates);
  const [low, high] = plan.turn_mm;
  const scale = 9;
  const margin = 44;
  const width = (right - left) * scale + 2 * margin;
  const height = (high - low) * scale * 0.7 + 2 * margin;
  const at = (travel, turn) => [margin + (travel - left) * scale, height / 2 - (turn - (low + high) / 2) * scale * 0.7];
  const slots = plan.gates.map((gate) => `M${at(gate, low).join(" ")}L${at(gate, high).join(" ")}`);
  const neutral = `M${at(left, 0).join(" ")}L${at(right, 0).join(" ")}`;
  const names = plan.gears.map(([gear, travel, turn]) => {
    const [x, y] = at(travel, turn);
    return drawSvg("text", { x, y: y + (turn > 0 ? -20 : 30), class: "tsp-gear", "text-anchor": "middle" }, gear);
  });
  const line = drawSvg("polyline", { class: "tsp-line", points: "" });
  const marks = drawSvg("g", {});
  const svg = drawSvg("svg", {
    viewBox: `0 0 ${width} ${height}`, width, height, class: "ts-gateplan", "aria-hidden": "true",
  }, drawSvg("path", { d: [...slots, neutral].join(""), class: "tsp-slot" }), ...names, line, marks);
  return {
    element: svg,
    show(codes) {
      let place = [0, 0];
      const points = [at(...place)];
      const numbers = new Map();
      codes.forEach((code, i) => {
        const [travel, turn] = plan.aims[code] ?? [null, null];
        if (travel !== null && place[1] !== 0) points.push(at(place[0], 0)); // back through neutral
        place = [travel ?? place[0], turn ?? (travel === null ? place[1] : 0)];
        const point = at(...place);
        points.push(point);
        const key = point.join(" ");
        numbers.set(key, [...(numbers.get(key) ?? []), i + 1]);
      });
      line.setAttribute("points", points.map((point) => point.join(",")).join(" "));
      marks.replaceChildren(
        drawSvg("circle", { cx: points[0][0], cy: points[0][1], r: 4, class: "tsp-start" }),
        ...[...numbers].map(([key, list]) => {
          const [x, y] = key.split(" ").map(Number);
          return drawSvg("g", {},
            drawSvg("circle", { cx: x, cy: y, r: 3.5, class: "tsp-stop" }),
            drawSvg("text", { x: x + 7, y: y - 5, class: "tsp-number" }, list.join(", ")));
        }));
    },
  };
}

function pathList({ label, moves, plan, most, onChange }) {
  const labels = new Map(moves);
  let now = [];
  let chosen = -1; // place in the list that the tools work on
  let disabled = false;
  const picture = plan ? gatePicture(plan) : null;
  const list = make("ol", { class: "ts-pathlist", "aria-label": label });
  const empty = make("p", { class: "ts-hint" }, "No moves yet. The lever stands in neutral, in the middle gate.");
  const live = make("p", { class: "ts-hidden", role: "status" });
  const press = (text, action) => make("button", { type: "button", class: "ts-button", onclick: action }, text);
  const adds = moves.map(([code, text]) => press(text, () => add(code)));
  const back = press("Take back the last move", () => { if (now.length) remove(now.length - 1); });
  const clear = press("Take back all", () => { if (now.length) change([], "No moves left"); });
  const count = make("span", { class: "ts-hint" });
  const element = make("div", { class: "ts-path" },
    make("div", { class: "ts-tools ts-moves", role: "group", "aria-label": "Add a move" }, ...adds),
    make("div", { class: "ts-path-both" },
      make("div", { class: "ts-path-words" }, empty, list,
        make("div", { class: "ts-tools" }, back, clear, count)),
      picture ? make("div", { class: "ts-path-picture" }, picture.element) : null),
    picture ? make("p", { class: "ts-hint" }, "The line shows where each move aims. Whether the lever gets there is what the test finds out.") : null,
    live);

  function change(next, text) {
    if (disabled) return;
    now = next;
    paint();
    live.textContent = text;
    onChange([...now]);
  }
  function add(code) {
    if (now.length >= most) { live.textContent = `${most} moves are the most here`; return; }
    const place = chosen >= 0 && chosen < now.length - 1 ? chosen + 1 : now.length;
    chosen = place;
    change([...now.slice(0, place), code, ...now.slice(place)], `Move ${place + 1}: ${labels.get(code)}`);
  }
  function remove(place) {
    const text = labels.get(now[place]) ?? now[place];
    chosen = Math.min(chosen, now.length - 2);
    change(now.filter((_, i) => i !== place), `Taken back: ${text}`);
  }
  function move(place, step) {
    const to = place + step;
    if (to < 0 || to >= now.length) return;
    const next = [...now];
    [next[place], next[to]] = [next[to], next[place]];
    chosen = to;
    change(next, `${labels.get(next[to])}, move ${to + 1} of ${now.length}`);
    list.children[to]?.querySelector("[tabindex]")?.focus();
  }
  function paint() {
    list.replaceChildren(...now.map((code, i) => {
      const row = make("li", {},
        make("span", { class: "ts-path-move", tabindex: "0", "aria-label": `Move ${i + 1}: ${labels.get(code) ?? code}` }, labels.get(code) ?? code),
        make("button", { type: "button", class: "ts-path-off", "aria-label": `Take back move ${i + 1}`, onclick: () => remove(i) }, "×"));
      row.classList.toggle("ts-current", i === chosen);
      const words = row.firstElementChild;
      words.addEventListener("focus", () => { chosen = i; for (const [n, other] of [...list.children].entries()) other.classList.toggle("ts-current", n === i); });
      words.addEventListener("keydown", (event) => {
        if (event.ctrlKey || event.metaKey || event.altKey) return;
        const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
        if (step && event.shiftKey) move(i, step);
        else if (step) list.children[i + step]?.querySelector("[tabindex]")?.focus();
        else if (event.key === "Delete" || event.key === "Backspace") {
          remove(i);
          (list.children[Math.min(i, now.length - 1)]?.querySelector("[tabindex]") ?? adds[0]).focus();
        } else return;
        event.preventDefault();
      });
      return row;
    }));
    empty.hidden = now.length > 0;
    count.textContent = `${now.length} of at most ${most} moves`;
    for (const node of adds) node.disabled = disabled || now.length >= most;
    back.disabled = clear.disabled = disabled || now.length === 0;
    for (const node of list.querySelectorAll("button")) node.disabled = disabled;
    picture?.show(now);
  }
  paint();
  return {
    element,
    setMoves(next) {
      if (next.join("\n") === now.join("\n")) return;
      now = [...next];
      chosen = -1;
      paint();
    },
    setDisabled(value) { disabled = value; paint(); },
  };
}

function pathControl(field, ids, commit) {
  const list = pathList({ label: field.prompt, moves: field.moves, plan: field.plan, most: field.most, onChange: commit });
  return {
    element: list.element,
    show: (state) => list.setMoves([].concat(state.value ?? [])),
    setDisabled: (value) => list.setDisabled(value),
    refused() {},
  };
}
