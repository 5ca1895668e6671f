// A list of steps that is put in order by dragging, by keys and by buttons.
// Used by the form and by the practice bench; knows nothing of what is right.

// steps: [[key, label], ...] or [[key, label, stage], ...]; order: keys; onChange(order)
function orderList({ label, steps, order, onChange }) {
  const labels = new Map(steps.map(([key, text]) => [key, text]));
  const stages = new Map(steps.filter((step) => step[2]).map((step) => [step[0], step[2]]));
  const staged = stages.size > 0;
  let now = [...order];
  let current = now[0];
  let block = new Set();
  let several = false;
  let held = null; // the order before it was picked up
  let past = [];
  let future = [];
  let notes = {};
  let disabled = false;
  const closed = new Set();
  const nodes = new Map();

  const live = make("div", { "aria-live": "assertive", class: "ts-hidden" });
  const list = make("ul", {
    role: staged ? "tree" : "listbox",
    "aria-label": label,
    "aria-multiselectable": "true",
    class: "ts-steps",
  });
  const button = (text, action, extra = {}) =>
    make("button", { type: "button", class: "ts-button", onclick: action, ...extra }, text);
  const up = button("Up", () => moveBy(-1), { "aria-label": "Move the chosen step up" });
  const down = button("Down", () => moveBy(1), { "aria-label": "Move the chosen step down" });
  const undo = button("Undo", () => travel(past, future, "Undone"));
  const redo = button("Redo", () => travel(future, past, "Done again"));
  const pick = button("Choose several", () => setSeveral(!several), { "aria-pressed": "false" });
  const gather = button("Gather stages", gatherStages);
  const place = make("input", {
    type: "text", inputmode: "numeric", size: "3", class: "ts-box",
    "aria-label": "Move the chosen step to position",
    onkeydown: (event) => { if (event.key === "Enter") moveToPosition(); },
  });
  const before = make("select", { class: "ts-box ts-before", "aria-label": "Move the chosen step before" });
  const chosen = make("span", { class: "ts-chosen" });
  const tools = make("div", { class: "ts-tools", role: "group", "aria-label": "Move the chosen step" },
    up, down, undo, redo, pick, staged ? gather : null);
  const jump = make("div", { class: "ts-tools" },
    make("span", { class: "ts-pair" }, "To position ", place, button("Move", moveToPosition, { "aria-label": "Move to this position" })),
    make("span", { class: "ts-pair" }, "or before ", before, button("Move", moveBefore, { "aria-label": "Move before this step" })));
  const keys = make("details", { class: "ts-keys" },
    make("summary", {}, "Keys, and long moves"),
    make("p", {},
      "Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space picks " +
      "it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a " +
      "block or out of it; a block moves as one. Letters go to the next step that starts with them." +
      (staged ? " Left closes a stage, Right opens it." : "")),
    jump);
  const element = make("div", { class: "ts-order" },
    make("p", { class: "ts-hint" }, "Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),
    tools, chosen, list, keys, live);

  // ---- what is shown -------------------------------------------------------------------
  function runs() {
    const all = [];
    for (const key of now) {
      const stage = stages.get(key) ?? null;
      const last = all[all.length - 1];
      if (last && stage !== null && last.stage === stage) last.keys.push(key);
      else all.push({ stage, keys: [key] });
    }
    return all;
  }
  const headId = (run) => `#${run.keys[0]}`;
  function rows() {
    if (!staged) return now.map((key) => ({ id: key, key, level: 1 }));
    const shown = [];
    for (const run of runs()) {
      if (run.keys.length < 2) shown.push({ id: run.keys[0], key: run.keys[0], level: 1 });
      else {
        shown.push({ id: headId(run), run, level: 1 });
        if (!closed.has(run.stage)) for (const key of run.keys) shown.push({ id: key, key, level: 2 });
      }
    }
    return shown;
  }
  function rowOf(id) { return rows().find((row) => row.id === id); }
  function unit() { // the keys that move together, in order
    const row = rowOf(current);
    if (row?.run) return row.run.keys;
    if (block.has(current) && block.size > 1) return now.filter((key) => block.has(key));
    return [current];
  }
  function unitName() {
    const row = rowOf(current);
    if (row?.run) return `Stage ${row.run.stage}`;
    const moved = unit();
    return moved.length > 1 ? `Block of ${moved.length} steps` : labels.get(moved[0]);
  }
  function where() {
    const moved = unit();
    const first = now.indexOf(moved[0]) + 1;
    return moved.length > 1
      ? `positions ${first} to ${first + moved.length - 1} of ${now.length}`
      : `position ${first} of ${now.length}`;
  }
  function say(text) { live.textContent = text; }

  function nodeOf(row) {
    if (nodes.has(row.id)) return nodes.get(row.id);
    const node = make("li", { role: staged ? "treeitem" : "option", class: "ts-step" });
    node.dataset.row = row.id;
    nodes.set(row.id, node);
    return node;
  }
  function paint(focus = false) {
    const shown = rows();
    if (!shown.some((row) => row.id === current)) {
      const home = shown.find((row) => row.run?.keys.includes(current.replace(/^#/, "")));
      current = (home ?? shown.find((row) => row.id === current.replace(/^#/, "")) ?? shown[0]).id;
    }
    const wanted = new Set(shown.map((row) => row.id));
    for (const [id, node] of nodes) if (!wanted.has(id)) { node.remove(); nodes.delete(id); }
    const moving = new Set(unit());
    let cursor = list.firstElementChild;
    for (const row of shown) {
      const node = nodeOf(row);
      if (node === cursor) cursor = cursor.nextElementSibling;
      else list.insertBefore(node, cursor);
      fill(node, row, moving);
    }
    place.value = String(now.indexOf(unit()[0]) + 1);
    const others = now.filter((key) => !moving.has(key));
    before.replaceChildren(...others.map((key) => make("option", { value: key }, `${now.indexOf(key) + 1}  ${labels.get(key)}`)));
    chosen.textContent = `Chosen: ${unitName()}, ${where()}`;
    up.disabled = disabled || now.indexOf(unit()[0]) === 0;
    down.disabled = disabled || now.indexOf(unit().at(-1)) === now.length - 1;
    undo.disabled = disabled || past.length === 0;
    redo.disabled = disabled || future.length === 0;
    for (const node of [pick, gather, place, before, ...jump.querySelectorAll("button")]) node.disabled = disabled;
    list.setAttribute("aria-disabled", String(disabled));
    list.classList.toggle("ts-long", now.length > 12);
    if (focus) {
      const node = nodes.get(current);
      node.focus({ preventScroll: true });
      node.scrollIntoView({ block: "nearest" });
    }
  }
  function fill(node, row, moving) {
    const chosenNow = row.id === current;
    const inBlock = row.key && block.has(row.key);
    const carried = held !== null && (row.key ? moving.has(row.key) : chosenNow);
    const place = now.indexOf(row.key ?? row.run.keys[0]);
    const said = row.key ? notes[row.key] : row.run.keys.map((key) => notes[key]?.length ?? 0);
    const looks = JSON.stringify([
      place, row.level, chosenNow, inBlock, carried, said, row.run && [row.run.keys.length, closed.has(row.run.stage)],
    ]);
    if (node.dataset.looks === looks) return; // nothing to draw anew
    node.dataset.looks = looks;
    node.tabIndex = chosenNow ? 0 : -1;
    node.setAttribute("aria-selected", String(Boolean(inBlock)));
    node.classList.toggle("ts-current", chosenNow);
    node.classList.toggle("ts-inblock", Boolean(inBlock));
    node.classList.toggle("ts-held", carried);
    node.classList.toggle("ts-level2", row.level === 2);
    if (staged) node.setAttribute("aria-level", String(row.level));
    const state = carried ? "picked up" : inBlock ? "in block" : "";
    if (row.run) {
      const first = place + 1;
      const isClosed = closed.has(row.run.stage);
      node.setAttribute("aria-expanded", String(!isClosed));
      const troubled = isClosed ? row.run.keys.filter((key) => notes[key]?.length).length : 0;
      node.replaceChildren(
        make("span", { class: "ts-number", "aria-hidden": "true" }, `${first}–${first + row.run.keys.length - 1}`),
        make("span", { class: "ts-fold", "aria-hidden": "true" }, isClosed ? "▸" : "▾"),
        make("span", { class: "ts-what" },
          make("b", {}, row.run.stage), ` ${row.run.keys.length} steps`,
          troubled ? ` – ${troubled} with a remark` : "",
          state ? make("span", { class: "ts-state" }, ` ${state}`) : ""));
      return;
    }
    const remarks = (notes[row.key] ?? []).map((note) =>
      make("span", { class: `ts-note ts-note-${note.kind}` },
        make("span", { class: "ts-shape", "aria-hidden": "true" }, note.shape ?? ""),
        make("b", {}, note.word), ` ${note.text}`));
    node.classList.toggle("ts-troubled", remarks.length > 0);
    node.replaceChildren(
      make("span", { class: "ts-number", "aria-hidden": "true" }, String(place + 1)),
      make("span", { class: "ts-grip", "aria-hidden": "true" }, "⠿"),
      make("span", { class: "ts-what" }, labels.get(row.key),
        staged && row.level === 1 ? make("span", { class: "ts-stage" }, ` ${stages.get(row.key) ?? ""}`) : "",
        state ? make("span", { class: "ts-state" }, ` ${state}`) : "",
        ...remarks));
  }

  // ---- moving --------------------------------------------------------------------------
  function commit(next, text) {
    if (next.join("\n") === now.join("\n")) { say(`${unitName()} stays at ${where()}`); return; }
    const row = rowOf(current);
    if (held === null) { past.push(now); future = []; }
    now = next;
    if (row?.run) current = row.run.keys[0];
    if (row?.run) { const home = rows().find((r) => r.run?.keys.includes(row.run.keys[0])); current = home ? home.id : current; }
    paint(true);
    say(text ?? `${unitName()}, ${where()}`);
    if (held === null) onChange([...now]);
  }
  function insertAt(moved, position) {
    const rest = now.filter((key) => !moved.includes(key));
    return [...rest.slice(0, position), ...moved, ...rest.slice(position)];
  }
  function moveBy(step) {
    if (disabled) return;
    const moved = unit();
    const rest = now.filter((key) => !moved.includes(key));
    const first = now.indexOf(moved[0]);
    let position = now.slice(0, first).length;
    const whole = Boolean(rowOf(current)?.run);
    const hop = (key) => staged && stages.has(key) && (whole || closed.has(stages.get(key)));
    if (step > 0) {
      if (position >= rest.length) return commit(insertAt(moved, position));
      const stage = stages.get(rest[position]);
      const jumpAll = hop(rest[position]);
      position += 1;
      while (jumpAll && position < rest.length && stages.get(rest[position]) === stage) position += 1;
    } else {
      if (position <= 0) return commit(insertAt(moved, 0));
      const stage = stages.get(rest[position - 1]);
      const jumpAll = hop(rest[position - 1]);
      position -= 1;
      while (jumpAll && position > 0 && stages.get(rest[position - 1]) === stage) position -= 1;
    }
    commit(insertAt(moved, position));
  }
  function moveToPosition() {
    if (disabled) return;
    const wanted = Number.parseInt(place.value, 10);
    if (!(wanted >= 1 && wanted <= now.length)) {
      say(`Type a position from 1 to ${now.length}`);
      chosen.textContent = `Type a position from 1 to ${now.length}.`;
      return;
    }
    const moved = unit();
    commit(insertAt(moved, Math.min(wanted - 1, now.length - moved.length)));
  }
  function moveBefore() {
    if (disabled || !before.value) return;
    const moved = unit();
    const rest = now.filter((key) => !moved.includes(key));
    commit(insertAt(moved, rest.indexOf(before.value)));
  }
  function travel(from, to, word) {
    if (from.length === 0) return;
    to.push(now);
    now = from.pop();
    paint();
    say(`${word}. ${unitName()}, ${where()}`);
    onChange([...now]);
  }
  function gatherStages() {
    const byStage = new Map();
    for (const key of now) {
      const stage = stages.get(key) ?? key;
      byStage.set(stage, [...(byStage.get(stage) ?? []), key]);
    }
    commit([...byStage.values()].flat(), "Steps of one stage now stand together");
  }
  function pickUp() { held = now; paint(true); say(`${unitName()} picked up, ${where()}`); }
  function putDown() {
    const from = held;
    held = null;
    if (from.join("\n") !== now.join("\n")) { past.push(from); future = []; onChange([...now]); }
    paint(true);
    say(`${unitName()} put down, ${where()}`);
  }
  function putBack() {
    now = held;
    held = null;
    paint(true);
    say(`${unitName()} put back, ${where()}`);
  }
  function setSeveral(on) {
    several = on;
    pick.setAttribute("aria-pressed", String(on));
    if (!on) block = new Set();
    paint();
    say(on ? "Choose the steps of a block" : "Block let go");
  }
  function toggleBlock(key) {
    if (block.has(key)) block.delete(key); else block.add(key);
    say(`${labels.get(key)} ${block.has(key) ? "in the block" : "out of the block"}, ${block.size} in it`);
  }

  // ---- keys ----------------------------------------------------------------------------
  list.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const shown = rows();
    const at = shown.findIndex((row) => row.id === current);
    const go = (index) => {
      current = shown[Math.max(0, Math.min(shown.length - 1, index))].id;
      paint(true);
    };
    const row = shown[at];
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (step && (event.shiftKey || held !== null)) moveBy(step);
    else if (step) go(at + step);
    else if (held !== null && event.key === "Escape") putBack();
    else if (event.key === " ") { if (!disabled) (held === null ? pickUp : putDown)(); }
    else if (held !== null && event.key === "Enter") putDown();
    else if (event.key === "Enter" && row.key) { if (!disabled) { toggleBlock(row.key); paint(true); } }
    else if (event.key === "Home" && held === null) go(0);
    else if (event.key === "End" && held === null) go(shown.length - 1);
    else if (staged && event.key === "ArrowLeft") fold(row, true);
    else if (staged && event.key === "ArrowRight") fold(row, false);
    else if (event.key.length === 1 && held === null) seek(event.key, at);
    else return;
    event.preventDefault();
  });
  let sought = "";
  let seekTimer = null;
  function seek(letter, at) { // letters typed go to the next step that starts with them
    sought += letter.toLowerCase();
    clearTimeout(seekTimer);
    seekTimer = setTimeout(() => { sought = ""; }, 700);
    const shown = rows();
    const from = sought.length > 1 ? at : at + 1;
    const found = [...shown.slice(from), ...shown.slice(0, from)].find(
      (row) => (row.run?.stage ?? labels.get(row.key)).toLowerCase().startsWith(sought));
    if (found) { current = found.id; paint(true); }
  }
  list.addEventListener("focusout", (event) => {
    // Leaving with a step in hand puts it down where it is.
    if (held !== null && event.relatedTarget && !list.contains(event.relatedTarget)) putDownHere();
  });
  function putDownHere() {
    const from = held;
    held = null;
    if (from.join("\n") !== now.join("\n")) { past.push(from); future = []; onChange([...now]); }
    paint();
  }
  function fold(row, shut) {
    const stage = row.run ? row.run.stage : stages.get(row.key);
    const run = runs().find((one) => one.keys.includes(row.run ? row.run.keys[0] : row.key));
    if (!stage || run.keys.length < 2) return;
    if (shut) closed.add(stage); else closed.delete(stage);
    if (shut) current = headId(run);
    paint(true);
    say(`${stage} ${shut ? "closed" : "open"}`);
  }

  // ---- pointer -------------------------------------------------------------------------
  let drag = null;
  list.addEventListener("pointerdown", (event) => {
    const node = event.target.closest(".ts-step");
    if (!node || event.button !== 0) return;
    const row = rowOf(node.dataset.row);
    if (row.run && event.target.closest(".ts-fold")) { fold(row, !closed.has(row.run.stage)); event.preventDefault(); return; }
    const grip = event.target.closest(".ts-grip, .ts-number");
    if (held !== null) putDownHere();
    if (event.shiftKey && row.key && !disabled) {
      const keys = [now.indexOf(current), now.indexOf(row.key)].sort((a, b) => a - b);
      if (keys[0] >= 0) block = new Set(now.slice(keys[0], keys[1] + 1));
    } else if ((event.ctrlKey || event.metaKey || several) && row.key && !grip && !disabled) toggleBlock(row.key);
    current = row.id;
    paint(true);
    event.preventDefault();
    if (disabled || event.shiftKey || event.ctrlKey || event.metaKey) return;
    if (event.pointerType !== "mouse" && !grip) return; // a finger on the words scrolls the page
    drag = { x: event.clientX, y: event.clientY, id: event.pointerId, ghost: null, drop: null, row };
    list.setPointerCapture(event.pointerId);
  });
  list.addEventListener("pointermove", (event) => {
    if (!drag || event.pointerId !== drag.id) return;
    if (!drag.ghost) {
      if (Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < 5) return;
      // In the body: a cell of the notebook is a frame of its own for fixed places.
      drag.ghost = make("div", { class: "twoshaft ts-ghost", "aria-hidden": "true" },
        unit().length > 1 ? `${unitName()}` : labels.get(unit()[0]));
      document.body.append(drag.ghost);
      drag.line = make("div", { class: "ts-line", "aria-hidden": "true" });
      list.append(drag.line);
      list.classList.add("ts-dragging");
      for (const key of unit()) nodes.get(key)?.classList.add("ts-lifted");
      drag.timer = requestAnimationFrame(autoScroll);
    }
    drag.px = event.clientX;
    drag.py = event.clientY;
    follow();
  });
  function follow() {
    drag.ghost.style.transform = `translate(${drag.px + 12}px, ${drag.py + 8}px)`;
    const shown = rows();
    let best = null;
    for (const row of shown) {
      const box = nodes.get(row.id).getBoundingClientRect();
      const offset = drag.py - (box.top + box.height / 2);
      if (best === null || Math.abs(offset) < Math.abs(best.offset)) best = { row, box, offset };
    }
    const after = best.offset > 0;
    const keys = best.row.run ? best.row.run.keys : [best.row.key];
    const openHead = best.row.run && !closed.has(best.row.run.stage);
    drag.drop = after && !openHead ? { after: keys.at(-1) } : { before: keys[0] };
    const frame = list.getBoundingClientRect();
    const edge = after ? best.box.bottom : best.box.top;
    drag.line.style.top = `${edge - frame.top + list.scrollTop - 1}px`;
  }
  function autoScroll() {
    if (!drag?.ghost) return;
    const outer = scrollParent(list);
    for (const box of [list, outer]) {
      const root = box === document.scrollingElement;
      const frame = root ? { top: 0, bottom: innerHeight } : box.getBoundingClientRect();
      const speed = drag.py < frame.top + 32 ? -8 : drag.py > frame.bottom - 32 ? 8 : 0;
      if (!speed) continue;
      const was = box.scrollTop;
      box.scrollTop += speed;
      if (box.scrollTop !== was) { follow(); break; }
    }
    drag.timer = requestAnimationFrame(autoScroll);
  }
  function endDrag(apply) {
    if (!drag) return;
    const { ghost, line, drop, timer } = drag;
    drag = null;
    if (!ghost) return;
    cancelAnimationFrame(timer);
    ghost.remove();
    line.remove();
    list.classList.remove("ts-dragging");
    for (const node of nodes.values()) node.classList.remove("ts-lifted");
    const moved = unit();
    const target = drop?.before ?? drop?.after;
    if (!apply || !target || moved.includes(target)) { paint(true); say(`${unitName()} stays at ${where()}`); return; }
    const rest = now.filter((key) => !moved.includes(key));
    commit(insertAt(moved, rest.indexOf(target) + (drop.after ? 1 : 0)));
  }
  list.addEventListener("pointerup", () => endDrag(true));
  list.addEventListener("pointercancel", () => endDrag(false));
  const escape = (event) => { if (drag?.ghost && event.key === "Escape") { endDrag(false); event.stopPropagation(); } };
  element.addEventListener("keydown", escape);

  paint();
  return {
    element,
    tools,
    order: () => [...now],
    change: (next, text) => { if (!disabled) commit(next, text); },
    setOrder(next, forget = false) {
      if (held !== null || drag?.ghost || next.join("\n") === now.join("\n")) return;
      now = [...next];
      if (forget) { past = []; future = []; }
      paint();
    },
    setNotes(next) { notes = next ?? {}; paint(); },
    setDisabled(value) { disabled = value; paint(); },
  };
}
