// Parts in the hand: drawn small as they stand in the picture of the unit, and carried to a place.

/** @import { Box } from "../logic/placing.js" */

import { pulled } from "../logic/placing.js";
import { draw, findAll, make } from "../page/dom.js";

const FAR = 6; // a hand that moves less than this has only pressed [px]
const PULL = 12; // what a carrying hand at an edge moves the page by, each time it is painted [px]

/**
 * What can be moved so that more of a picture is seen: its frame, and all that the frame stands in.
 *
 * @param {Element | null} from
 */
function movable(from) {
  const found = [];
  for (let node = from; node; node = node.parentElement) {
    const { overflowX, overflowY } = getComputedStyle(node);
    const moves = /** @param {string} how */ (how) => how === "auto" || how === "scroll";
    if (moves(overflowX) || moves(overflowY)) found.push(node);
  }
  return found;
}

/**
 * A small drawing.
 *
 * @param {string | Node[]} inside
 * @param {Box} box what of it is seen
 * @param {number} wide at most [px]
 * @param {number} tall at most [px]
 */
export function small(inside, box, wide, tall) {
  const scale = Math.min(wide / box[2], tall / box[3], 1.2);
  const svg = draw("svg", {
    viewBox: box.join(" "),
    width: String(Math.round(box[2] * scale)),
    height: String(Math.round(box[3] * scale)),
    class: "ts-inhand",
    "aria-hidden": "true",
  });
  if (typeof inside === "string") svg.innerHTML = inside;
  else svg.replaceChildren(...inside);
  return /** @type {SVGSVGElement} */ (svg);
}

/**
 * Copies of the groups that draw some parts in a picture, without names: small, nobody reads them.
 *
 * @param {SVGSVGElement} drawing
 * @param {readonly string[]} parts
 */
export function copied(drawing, parts) {
  const groups = findAll(drawing, "[data-part]").filter((one) =>
    parts.includes(String(one.dataset.part)),
  );
  return groups
    .filter((one) => !one.closest(".tsu-marks"))
    .map((one) => {
      const copy = draw("g", {});
      copy.append(...one.cloneNode(true).childNodes);
      for (const words of findAll(copy, "text, title, desc")) words.remove();
      for (const solid of findAll(copy, "[data-solid]")) solid.removeAttribute("data-solid");
      return copy;
    });
}

/**
 * Lets a hand take something and carry it over a drawing.
 *
 * @param {HTMLElement} handle
 * @param {object} options
 * @param {SVGSVGElement} options.drawing
 * @param {() => SVGSVGElement | null} options.held what is carried, drawn; null where there is nothing
 * @param {() => void} [options.begin] told when it is taken
 * @param {(at: [number, number]) => void} options.drop told where it is put down [px of the drawing]
 */
export function carried(handle, { drawing, held, begin = () => {}, drop }) {
  /** @type {{ x: number, y: number, id: number } | null} */
  let from = null;
  /** @type {HTMLElement | null} */
  let ghost = null;
  let dropped = false;
  /** @type {[number, number]} */
  let at = [0, 0];
  /** @type {Element[]} */
  let boxes = [];
  /** What is carried is drawn where the hand is; at an edge the page goes on below it. */
  function pull() {
    if (!ghost) return;
    const [frame] = boxes;
    for (const box of boxes) {
      const edges = box.getBoundingClientRect();
      const [across, down] = pulled(at, edges);
      const inside =
        at[0] >= edges.left && at[0] <= edges.right && at[1] >= edges.top && at[1] <= edges.bottom;
      if (box === frame && !inside) continue; // the picture itself is moved by a hand that is over it
      box.scrollBy(box === frame ? across * PULL : 0, down * PULL);
    }
    requestAnimationFrame(pull);
  }
  handle.classList.add("ts-carry");
  // What is taken may be drawn anew meanwhile, so the page listens, not the handle.
  /** @param {boolean} on */
  function listen(on) {
    const act = on ? "addEventListener" : "removeEventListener";
    document[act]("pointermove", move);
    document[act]("pointerup", up);
    document[act]("pointercancel", letGo);
    document[act]("keydown", key, true);
    document[act]("selectstart", stay);
  }
  /** Words that a carrying hand passes are not marked. @param {Event} event */
  function stay(event) {
    event.preventDefault();
  }
  function letGo() {
    ghost?.remove();
    from = ghost = null;
    listen(false);
  }
  /** @param {any} event */
  function key(event) {
    if (event.key !== "Escape" || !ghost) return;
    event.preventDefault();
    letGo();
  }
  const scaleOf = () => drawing.viewBox.baseVal.width / drawing.getBoundingClientRect().width;
  /** @param {any} event */
  function move(event) {
    if (!from || event.pointerId !== from.id) return;
    if (!ghost) {
      if (Math.hypot(event.clientX - from.x, event.clientY - from.y) < FAR) return;
      const shown = held();
      if (!shown) return;
      const copy = /** @type {SVGSVGElement} */ (shown.cloneNode(true));
      const { width, height } = shown.viewBox.baseVal;
      copy.setAttribute("width", String(width / scaleOf()));
      copy.setAttribute("height", String(height / scaleOf()));
      ghost = make("div", { class: "twoshaft ts-ghost", "aria-hidden": "true" }, copy);
      document.body.append(ghost);
      begin();
      boxes = movable(drawing.parentElement);
      requestAnimationFrame(pull);
    }
    at = [event.clientX, event.clientY];
    ghost.style.left = `${event.clientX}px`;
    ghost.style.top = `${event.clientY}px`;
  }
  /** @param {any} event */
  function up(event) {
    if (!from || event.pointerId !== from.id) return;
    const carrying = Boolean(ghost);
    letGo();
    if (!carrying) return;
    dropped = true;
    const frame = /** @type {HTMLElement} */ (drawing.parentElement).getBoundingClientRect();
    const { clientX: x, clientY: y } = event;
    if (x < frame.left || x > frame.right || y < frame.top || y > frame.bottom) return;
    const { left, top } = drawing.getBoundingClientRect();
    drop([(x - left) * scaleOf(), (y - top) * scaleOf()]);
  }
  handle.addEventListener("pointerdown", (event) => {
    dropped = false;
    if (event.button !== 0) return;
    from = { x: event.clientX, y: event.clientY, id: event.pointerId };
    listen(true);
  });
  // a press that ended in carrying is no press
  handle.addEventListener(
    "click",
    (event) => {
      if (!dropped) return;
      dropped = false;
      event.preventDefault();
      event.stopPropagation();
    },
    true,
  );
  return letGo;
}
