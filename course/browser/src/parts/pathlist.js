// A movement of the hand: a list of moves in words, and the same as a line in a picture of the gate.
// The picture shows where each move aims, not where it would end: that is what the hand finds out.

/** @import { Plan } from "./gate_plan.js" */

import { added, aimLine, swapped, without } from "../logic/moves.js";
import { same } from "../logic/ordering.js";
import { button, draw, make, withOrder } from "../page/dom.js";
import { gatePlan } from "./gate_plan.js";

/** @param {Plan} plan */
function gatePicture(plan) {
  const { element, at } = gatePlan(plan);
  const line = draw("polyline", { class: "tsp-line", points: "" });
  const marks = draw("g");
  element.append(line, marks);
  return {
    element,
    /** @param {readonly string[]} codes */
    show(codes) {
      const { points, stops } = aimLine(codes, plan.aims, at);
      const [[startX, startY]] = points;
      line.setAttribute("points", points.map((point) => point.join(",")).join(" "));
      marks.replaceChildren(
        draw("circle", { cx: startX, cy: startY, r: 4, class: "tsp-start" }),
        ...stops.map(({ at: [x, y], numbers }) =>
          draw(
            "g",
            {},
            draw("circle", { cx: x, cy: y, r: 3.5, class: "tsp-stop" }),
            draw("text", { x: x + 7, y: y - 5, class: "tsp-number" }, numbers.join(", ")),
          ),
        ),
      );
    },
  };
}

/**
 * The list with its picture.
 *
 * @param {object} options
 * @param {[string, string][]} options.moves code and words of each
 * @param {Plan | null} options.plan
 * @param {number} options.most moves that there is room for
 * @param {(moves: string[]) => void} options.onChange
 */
export function pathList({ moves, plan, most, onChange }) {
  const labels = new Map(moves);
  /** @param {string} code */
  const words = (code) => labels.get(code) ?? code;
  /** @type {string[]} */
  let now = [];
  let chosen = -1; // place in the list that the tools work on
  let disabled = false;
  const picture = plan ? gatePicture(plan) : null;
  const list = make("ol", { class: "ts-pathlist", "aria-label": "Your moves" });
  const empty = make(
    "p",
    { class: "ts-hint" },
    "No moves yet. The lever stands in neutral, in the middle gate plane.",
  );
  const live = make("p", { class: "ts-hidden", role: "status" });
  const adds = moves.map(([code, text]) => button(text, () => add(code)));
  const back = button("Take back the last move", () => {
    if (now.length) remove(now.length - 1);
  });
  const clear = button("Take back all", () => {
    if (now.length) change([], "No moves left");
  });
  const count = make("span", { class: "ts-hint" });
  const element = make(
    "div",
    { class: "ts-path" },
    make("div", { class: "ts-tools ts-moves", role: "group", "aria-label": "Add a move" }, ...adds),
    make(
      "div",
      { class: "ts-path-both" },
      make(
        "div",
        { class: "ts-path-words" },
        ...[empty, list],
        make("div", { class: "ts-tools" }, back, clear, count),
      ),
      picture && make("div", { class: "ts-path-picture" }, picture.element),
    ),
    picture &&
      make(
        "p",
        { class: "ts-hint" },
        "The line shows where each move should go. The test shows whether the lever gets there.",
      ),
    live,
  );

  /**
   * @param {string[]} next
   * @param {string} text
   */
  function change(next, text) {
    if (disabled) return;
    now = next;
    paint();
    live.textContent = text;
    onChange([...now]);
  }
  /** @param {string} code */
  function add(code) {
    if (now.length >= most) {
      live.textContent = `${most} moves are the most here`;
      return;
    }
    const { moves: next, place } = added(now, chosen, code);
    chosen = place;
    change(next, `Move ${place + 1}: ${words(code)}`);
  }
  /** @param {number} place */
  function remove(place) {
    const text = words(now[place]);
    chosen = Math.min(chosen, now.length - 2);
    change(without(now, place), `Taken back: ${text}`);
  }
  /**
   * @param {number} place
   * @param {number} step
   */
  function move(place, step) {
    const next = swapped(now, place, step);
    if (!next) return;
    chosen = place + step;
    change(next, `${words(next[chosen])}, move ${chosen + 1} of ${now.length}`);
    focusOn(chosen);
  }
  /** @param {number} place */
  function rowAt(place) {
    return list.children[place]?.querySelector(".ts-path-move");
  }
  /** @param {number} place */
  function focusOn(place) {
    const row = rowAt(place);
    if (row instanceof HTMLElement) row.focus();
    return Boolean(row);
  }
  /**
   * @param {string} code
   * @param {number} i
   */
  function rowOf(code, i) {
    const text = make(
      "span",
      { class: "ts-path-move", tabindex: "0", "aria-label": `Move ${i + 1}: ${words(code)}` },
      words(code),
    );
    const off = make(
      "button",
      {
        type: "button",
        class: "ts-path-off",
        "aria-label": `Take back move ${i + 1}`,
        onclick: () => remove(i),
      },
      "×",
    );
    const row = make("li", {}, text, off);
    row.classList.toggle("ts-current", i === chosen);
    text.addEventListener("focus", () => {
      chosen = i;
      for (const other of list.children) other.classList.toggle("ts-current", other === row);
    });
    text.addEventListener("keydown", (event) => {
      if (withOrder(event)) return;
      const step = event.key === "ArrowUp" ? -1 : event.key === "ArrowDown" ? 1 : null;
      if (step && event.shiftKey) move(i, step);
      else if (step) focusOn(i + step);
      else if (event.key === "Delete" || event.key === "Backspace") {
        remove(i);
        if (!focusOn(Math.min(i, now.length - 1))) adds[0].focus();
      } else return;
      event.preventDefault();
    });
    off.disabled = disabled;
    return row;
  }
  function paint() {
    list.replaceChildren(...now.map(rowOf));
    empty.hidden = now.length > 0;
    count.textContent = `${now.length} of at most ${most} moves`;
    for (const node of adds) node.disabled = disabled || now.length >= most;
    back.disabled = clear.disabled = disabled || now.length === 0;
    picture?.show(now);
  }
  paint();
  return {
    element,
    /** @param {readonly string[]} next */
    setMoves(next) {
      if (same(next, now)) return;
      now = [...next];
      chosen = -1;
      paint();
    },
    /** @param {boolean} value */
    setDisabled(value) {
      disabled = value;
      paint();
    },
  };
}
