// A list of steps that is put in order by dragging, by keys and by buttons.
// Used by the form and by the practice bench; knows nothing of what is right.

/** @import { Row, Step } from "../logic/ordering.js" */
/** @typedef {{ kind: string, shape?: string, word: string, text: string }} Note */

import { Ordering, same } from "../logic/ordering.js";
import { button, closest, make, scrollParent, shape, withOrder } from "../page/dom.js";

const LONG = 12; // steps; a longer list scrolls in itself
const SEEK_MS = 700;
const DRAG_PX = 5;
const EDGE_PX = 32;
const SCROLL_PX = 8;

/**
 * The list.
 *
 * @param {object} options
 * @param {string} options.label
 * @param {readonly Step[]} options.steps
 * @param {readonly string[]} options.order keys of the steps
 * @param {(order: string[]) => void} options.onChange
 * @param {(keys: string[]) => void} [options.onChoose] the steps that a move would take
 */
export function orderList({ label, steps, order, onChange, onChoose }) {
  const list = new Ordering(steps, order);
  const { staged } = list;
  let several = false;
  /** @type {Record<string, Note[]>} */
  let notes = {};
  let disabled = false;
  /** @type {Map<string, HTMLElement>} */
  const nodes = new Map();

  const live = make("div", { "aria-live": "assertive", class: "ts-hidden" });
  const rows = make("ul", {
    role: staged ? "tree" : "listbox",
    "aria-label": label,
    "aria-multiselectable": "true",
    class: "ts-steps",
  });
  const up = button("Up", () => moveBy(-1), { "aria-label": "Move the chosen step up" });
  const down = button("Down", () => moveBy(1), { "aria-label": "Move the chosen step down" });
  const undo = button("Undo", () => list.undo() && travelled("Undone"));
  const redo = button("Redo", () => list.redo() && travelled("Done again"));
  const pick = button("Choose several", () => setSeveral(!several), { "aria-pressed": "false" });
  const gather = button("Gather stages", () =>
    commit(list.gathered(), "Steps of one stage now stand together"),
  );
  const place = make("input", {
    type: "text",
    inputmode: "numeric",
    size: "3",
    class: "ts-box",
    "aria-label": "Move the chosen step to position",
    onkeydown: (/** @type {KeyboardEvent} */ event) => {
      if (event.key === "Enter") moveToPosition();
    },
  });
  const before = make("select", {
    class: "ts-box ts-before",
    "aria-label": "Move the chosen step before",
  });
  const chosen = make("span", { class: "ts-chosen" });
  const toPlace = button("Move", moveToPosition, { "aria-label": "Move to this position" });
  const toBefore = button("Move", moveBefore, { "aria-label": "Move before this step" });
  const tools = make(
    "div",
    { class: "ts-tools", role: "group", "aria-label": "Move the chosen step" },
    ...[up, down, undo, redo, pick, staged ? gather : null],
  );
  const jump = make(
    "div",
    { class: "ts-tools" },
    make("span", { class: "ts-pair" }, "To position ", place, toPlace),
    make("span", { class: "ts-pair" }, "or before ", before, toBefore),
  );
  const help =
    "Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space picks " +
    "it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a " +
    "block or out of it; a block moves as one. Letters go to the next step that starts with them." +
    (staged ? " Left closes a stage, Right opens it." : "");
  const keys = make(
    "details",
    { class: "ts-keys" },
    make("summary", {}, "Keys, and long moves"),
    make("p", {}, help),
    jump,
  );
  const element = make(
    "div",
    { class: "ts-order" },
    make(
      "p",
      { class: "ts-hint" },
      "Drag a step, or choose it and use the buttons, or press Shift with an arrow key.",
    ),
    ...[tools, chosen, rows, keys, live],
  );

  // ---- what is shown -------------------------------------------------------------------

  /** @param {string} text */
  function say(text) {
    live.textContent = text;
  }
  /** @param {string} done */
  function sayWhere(done = "") {
    say(`${list.unitName()}${done}, ${list.where()}`);
  }

  /** @param {Row} row */
  function nodeOf(row) {
    const known = nodes.get(row.id);
    if (known) return known;
    const node = make("li", { role: staged ? "treeitem" : "option", class: "ts-step" });
    node.dataset.row = row.id;
    nodes.set(row.id, node);
    return node;
  }
  function paint(focus = false) {
    const shown = list.settle();
    const wanted = new Set(shown.map((row) => row.id));
    for (const [id, node] of nodes) {
      if (wanted.has(id)) continue;
      node.remove();
      nodes.delete(id);
    }
    const moved = list.unit();
    const moving = new Set(moved);
    let cursor = rows.firstElementChild;
    for (const row of shown) {
      const node = nodeOf(row);
      if (node === cursor) cursor = cursor.nextElementSibling;
      else rows.insertBefore(node, cursor);
      fill(node, row, moving);
    }
    place.value = String(list.order.indexOf(moved[0]) + 1);
    const others = [...list.order.entries()].filter(([, key]) => !moving.has(key));
    before.replaceChildren(
      ...others.map(([at, key]) => make("option", { value: key }, `${at + 1}  ${list.label(key)}`)),
    );
    chosen.textContent = `Chosen: ${list.unitName()}, ${list.where()}`;
    onChoose?.(moved);
    up.disabled = disabled || list.isFirst;
    down.disabled = disabled || list.isLast;
    undo.disabled = disabled || list.past.length === 0;
    redo.disabled = disabled || list.future.length === 0;
    for (const node of [pick, gather, place, before, toPlace, toBefore]) node.disabled = disabled;
    rows.setAttribute("aria-disabled", String(disabled));
    rows.classList.toggle("ts-long", list.order.length > LONG);
    if (focus) {
      const node = nodes.get(list.current);
      node?.focus({ preventScroll: true });
      node?.scrollIntoView({ block: "nearest" });
    }
  }
  /**
   * @param {HTMLElement} node
   * @param {Row} row
   * @param {Set<string>} moving
   */
  function fill(node, row, moving) {
    const chosenNow = row.id === list.current;
    const inBlock = row.run ? false : list.block.has(row.key);
    const carried = list.held !== null && (row.run ? chosenNow : moving.has(row.key));
    const at = list.order.indexOf(row.run ? row.run.keys[0] : row.key);
    const said = row.run ? row.run.keys.map((key) => notes[key]?.length ?? 0) : notes[row.key];
    const isClosed = row.run ? list.closed.has(String(row.run.stage)) : false;
    const looks = JSON.stringify([
      ...[at, row.level, chosenNow, inBlock, carried, said],
      row.run && [row.run.keys.length, isClosed],
    ]);
    if (node.dataset.looks === looks) return; // nothing to draw anew
    node.dataset.looks = looks;
    node.tabIndex = chosenNow ? 0 : -1;
    node.setAttribute("aria-selected", String(inBlock));
    node.classList.toggle("ts-current", chosenNow);
    node.classList.toggle("ts-inblock", inBlock);
    node.classList.toggle("ts-held", carried);
    node.classList.toggle("ts-level2", row.level === 2);
    if (staged) node.setAttribute("aria-level", String(row.level));
    const words = carried ? " picked up" : inBlock ? " in block" : "";
    const state = words ? make("span", { class: "ts-state" }, words) : "";
    const number = (/** @type {string} */ text) =>
      make("span", { class: "ts-number", "aria-hidden": "true" }, text);
    if (row.run) {
      const { keys: own, stage } = row.run;
      node.setAttribute("aria-expanded", String(!isClosed));
      const troubled = isClosed ? own.filter((key) => notes[key]?.length).length : 0;
      node.replaceChildren(
        number(`${at + 1}–${at + own.length}`),
        make("span", { class: "ts-fold", "aria-hidden": "true" }, isClosed ? "▸" : "▾"),
        make(
          "span",
          { class: "ts-what" },
          make("b", {}, stage),
          ` ${own.length} steps`,
          troubled ? ` – ${troubled} with a remark` : "",
          state,
        ),
      );
      return;
    }
    const remarks = (notes[row.key] ?? []).map((note) =>
      make(
        "span",
        { class: `ts-note ts-note-${note.kind}` },
        shape(note.shape ?? ""),
        make("b", {}, note.word),
        ` ${note.text}`,
      ),
    );
    const alone = staged && row.level === 1;
    node.classList.toggle("ts-troubled", remarks.length > 0);
    node.replaceChildren(
      number(String(at + 1)),
      make("span", { class: "ts-grip", "aria-hidden": "true" }, "⠿"),
      make(
        "span",
        { class: "ts-what" },
        list.label(row.key),
        alone ? make("span", { class: "ts-stage" }, ` ${list.stages.get(row.key) ?? ""}`) : "",
        state,
        ...remarks,
      ),
    );
  }

  // ---- moving --------------------------------------------------------------------------
  const tell = () => onChange([...list.order]);

  /**
   * @param {string[]} next
   * @param {string} [text]
   */
  function commit(next, text) {
    if (!list.take(next)) {
      say(`${list.unitName()} stays at ${list.where()}`);
      return;
    }
    paint(true);
    if (text) say(text);
    else sayWhere();
    if (list.held === null) tell();
  }
  /** @param {-1 | 1} step */
  function moveBy(step) {
    if (!disabled) commit(list.shifted(step));
  }
  function moveToPosition() {
    if (disabled) return;
    const wanted = Number.parseInt(place.value, 10);
    const last = list.order.length;
    if (wanted >= 1 && wanted <= last) commit(list.atPosition(wanted));
    else {
      say(`Type a position from 1 to ${last}`);
      chosen.textContent = `Type a position from 1 to ${last}.`;
    }
  }
  function moveBefore() {
    if (!disabled && before.value) commit(list.beside(before.value, "before"));
  }
  /** @param {string} word */
  function travelled(word) {
    paint();
    say(`${word}. ${list.unitName()}, ${list.where()}`);
    tell();
  }
  function pickUp() {
    list.pickUp();
    paint(true);
    sayWhere(" picked up");
  }
  function putDown() {
    if (list.putDown()) tell();
    paint(true);
    sayWhere(" put down");
  }
  function putDownHere() {
    if (list.putDown()) tell();
    paint();
  }
  function putBack() {
    list.putBack();
    paint(true);
    sayWhere(" put back");
  }
  /** @param {boolean} on */
  function setSeveral(on) {
    several = on;
    pick.setAttribute("aria-pressed", String(on));
    if (!on) list.block = new Set();
    paint();
    say(on ? "Choose the steps of a block" : "Block let go");
  }
  /** @param {string} key */
  function toggleBlock(key) {
    list.toggleBlock(key);
    const how = list.block.has(key) ? "in the block" : "out of the block";
    say(`${list.label(key)} ${how}, ${list.block.size} in it`);
  }
  /**
   * @param {Row} row
   * @param {boolean} shut
   */
  function fold(row, shut) {
    const stage = list.fold(row, shut);
    if (!stage) return;
    paint(true);
    say(`${stage} ${shut ? "closed" : "open"}`);
  }

  // ---- keys ----------------------------------------------------------------------------
  rows.addEventListener("keydown", (event) => {
    if (withOrder(event)) return;
    const shown = list.rows();
    const at = shown.findIndex((row) => row.id === list.current);
    /** @param {number} index */
    const go = (index) => {
      list.current = shown[Math.max(0, Math.min(shown.length - 1, index))].id;
      paint(true);
    };
    const row = shown[at];
    const { key } = event;
    const step = key === "ArrowUp" ? -1 : key === "ArrowDown" ? 1 : null;
    const carrying = list.held !== null;
    if (step && (event.shiftKey || carrying)) moveBy(step);
    else if (step) go(at + step);
    else if (carrying && key === "Escape") putBack();
    else if (key === " ") {
      if (!disabled) (carrying ? putDown : pickUp)();
    } else if (carrying && key === "Enter") putDown();
    else if (key === "Enter" && !row.run) {
      if (!disabled) {
        toggleBlock(row.key);
        paint(true);
      }
    } else if (key === "Home" && !carrying) go(0);
    else if (key === "End" && !carrying) go(shown.length - 1);
    else if (staged && key === "ArrowLeft") fold(row, true);
    else if (staged && key === "ArrowRight") fold(row, false);
    else if (key.length === 1 && !carrying) seek(key);
    else return;
    event.preventDefault();
  });
  let letters = "";
  /** @type {number | undefined} */
  let seekTimer;
  /** @param {string} letter */
  function seek(letter) {
    letters += letter.toLowerCase();
    clearTimeout(seekTimer);
    seekTimer = window.setTimeout(() => {
      letters = "";
    }, SEEK_MS);
    const found = list.sought(letters);
    if (!found) return;
    list.current = found.id;
    paint(true);
  }
  rows.addEventListener("focusout", ({ relatedTarget: to }) => {
    // Leaving with a step in hand puts it down where it is.
    if (list.held !== null && to instanceof Node && !rows.contains(to)) putDownHere();
  });

  // ---- pointer -------------------------------------------------------------------------
  /**
   * What is being dragged, from the moment the pointer has moved far enough.
   *
   * @typedef {{
   *   ghost: HTMLElement, line: HTMLElement, timer: number, x: number, y: number,
   *   drop: { target: string, side: "before" | "after" } | null }} Carried
   */
  /** @type {{ x: number, y: number, id: number, carried: Carried | null } | null} */
  let drag = null;
  rows.addEventListener("pointerdown", (event) => {
    const row = list.row(closest(event, ".ts-step")?.dataset.row ?? "");
    if (!row || event.button !== 0) return;
    if (row.run && closest(event, ".ts-fold")) {
      fold(row, !list.closed.has(String(row.run.stage)));
      event.preventDefault();
      return;
    }
    const grip = closest(event, ".ts-grip, .ts-number");
    const withKey = event.ctrlKey || event.metaKey;
    if (list.held !== null) putDownHere();
    if (!row.run && !disabled) {
      if (event.shiftKey) list.blockTo(row.key);
      else if ((withKey || several) && !grip) toggleBlock(row.key);
    }
    list.current = row.id;
    paint(true);
    event.preventDefault();
    if (disabled || event.shiftKey || withKey) return;
    if (event.pointerType !== "mouse" && !grip) return; // a finger on the words scrolls the page
    drag = { x: event.clientX, y: event.clientY, id: event.pointerId, carried: null };
    rows.setPointerCapture(event.pointerId);
  });
  rows.addEventListener("pointermove", (event) => {
    if (!drag || event.pointerId !== drag.id) return;
    const { clientX: x, clientY: y } = event;
    if (!drag.carried) {
      if (Math.hypot(x - drag.x, y - drag.y) < DRAG_PX) return;
      drag.carried = lift();
    }
    Object.assign(drag.carried, { x, y });
    follow(drag.carried);
  });
  /** @returns {Carried} */
  function lift() {
    // In the body: a cell of the notebook is a frame of its own for fixed places.
    const ghost = make(
      "div",
      { class: "twoshaft ts-ghost", "aria-hidden": "true" },
      list.unit().length > 1 ? list.unitName() : list.label(list.unit()[0]),
    );
    document.body.append(ghost);
    const line = make("div", { class: "ts-line", "aria-hidden": "true" });
    rows.append(line);
    rows.classList.add("ts-dragging");
    for (const key of list.unit()) nodes.get(key)?.classList.add("ts-lifted");
    return { ghost, line, timer: requestAnimationFrame(autoScroll), x: 0, y: 0, drop: null };
  }
  /** @param {Carried} carried */
  function follow(carried) {
    carried.ghost.style.transform = `translate(${carried.x + 12}px, ${carried.y + 8}px)`;
    const places = list.rows().map((row) => {
      const box = nodeOf(row).getBoundingClientRect();
      return { row, box, offset: carried.y - (box.top + box.height / 2) };
    });
    const best = places.reduce((a, b) => (Math.abs(b.offset) < Math.abs(a.offset) ? b : a));
    const below = best.offset > 0;
    carried.drop = list.dropAt(best.row, below);
    const edge = below ? best.box.bottom : best.box.top;
    const top = edge - rows.getBoundingClientRect().top + rows.scrollTop - 1;
    carried.line.style.top = `${top}px`;
  }
  function autoScroll() {
    const carried = drag?.carried;
    if (!carried) return;
    for (const box of [rows, scrollParent(rows)]) {
      const root = box === document.scrollingElement;
      const frame = root ? { top: 0, bottom: innerHeight } : box.getBoundingClientRect();
      const away =
        carried.y < frame.top + EDGE_PX ? -1 : carried.y > frame.bottom - EDGE_PX ? 1 : 0;
      if (!away) continue;
      const was = box.scrollTop;
      box.scrollTop += away * SCROLL_PX;
      if (box.scrollTop === was) continue;
      follow(carried);
      break;
    }
    carried.timer = requestAnimationFrame(autoScroll);
  }
  /** @param {boolean} apply */
  function endDrag(apply) {
    const carried = drag?.carried;
    drag = null;
    if (!carried) return;
    cancelAnimationFrame(carried.timer);
    carried.ghost.remove();
    carried.line.remove();
    rows.classList.remove("ts-dragging");
    for (const node of nodes.values()) node.classList.remove("ts-lifted");
    const { drop } = carried;
    if (!apply || !drop || list.unit().includes(drop.target)) {
      paint(true);
      say(`${list.unitName()} stays at ${list.where()}`);
      return;
    }
    commit(list.beside(drop.target, drop.side));
  }
  rows.addEventListener("pointerup", () => endDrag(true));
  rows.addEventListener("pointercancel", () => endDrag(false));
  element.addEventListener("keydown", (event) => {
    if (!drag?.carried || event.key !== "Escape") return;
    endDrag(false);
    event.stopPropagation();
  });

  paint();
  return {
    element,
    tools,
    order: () => [...list.order],
    /**
     * Moves as a hand would.
     *
     * @param {string[]} next
     * @param {string} [text] what is said about it
     */
    change: (next, text) => {
      if (!disabled) commit(next, text);
    },
    /** @param {readonly string[]} next */
    setOrder(next, forget = false) {
      if (list.held !== null || drag?.carried || same(next, list.order)) return;
      list.set(next, forget);
      paint();
    },
    /** @param {Record<string, Note[]> | null | undefined} next */
    setNotes(next) {
      notes = next ?? {};
      paint();
    },
    /** @param {boolean} value */
    setDisabled(value) {
      disabled = value;
      paint();
    },
  };
}
