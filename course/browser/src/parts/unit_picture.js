// A unit in section: zoom, parts named on hover, tap and focus, a walk from part to part by keys.

import { choiceBox, closest, findAll, make, namedButton, withOrder } from "../page/dom.js";

/** @typedef {{ svg: string, parts: [string, string, string][], words: string }} Picture */
/** @typedef {{ looks: Record<string, string>, marks: string, words: string }} State */

const LOOKS = ["lit", "bench", "absent", "put"];
const ZOOMS = [1, 1.5, 2, 3, 4.5];

/**
 * @param {Picture} picture
 * @param {object} [options]
 * @param {string} [options.name] what it shows
 * @param {number} [options.tallest] at most so high, until it is made larger [px]
 * @param {(part: string) => void} [options.onChoose] told which part was chosen, or "" for none
 */
export function unitPicture(
  { svg, parts, words },
  { name: named = "The unit in section", tallest, onChoose = () => {} } = {},
) {
  const frame = make("div", {
    class: "ts-unit",
    tabindex: "0",
    role: "application",
    "aria-label": `${named}. Left and right arrows walk from part to part, up and down to the part above or below, plus and minus zoom.`,
  });
  frame.innerHTML = svg;
  const drawing = /** @type {SVGSVGElement} */ (frame.querySelector("svg"));
  const marks = /** @type {SVGGElement | null} */ (drawing.querySelector(".tsu-marks"));
  // the frame speaks for the picture; what is where stands below it in words
  drawing.setAttribute("aria-hidden", "true");
  drawing.dataset.grow ??= "2"; // its words stand far apart
  drawing.removeAttribute("role");
  /** @type {Map<string, SVGGElement[]>} */
  const groups = new Map(parts.map(([part]) => [part, []]));
  for (const group of /** @type {SVGGElement[]} */ (findAll(drawing, "[data-part]"))) {
    groups.get(String(group.dataset.part))?.push(group);
  }
  const placeOf = new Map(parts.map(([part], k) => [part, k]));
  const said = make("p", { class: "ts-hint ts-unit-name", role: "status" });
  const choose = choiceBox({ "aria-label": "Part", class: "ts-box ts-before" }, [
    ["", "no part chosen"],
    .../** @type {[string, string][]} */ (parts.map(([part, name]) => [part, name])),
  ]);
  const { width: wide, height: high } = drawing.viewBox.baseVal;
  const whole = tallest ? `min(100%, ${Math.round((tallest * wide) / high)}px)` : "100%";
  /** @type {WeakMap<Element, [number, number]>} */
  const shifts = new WeakMap();
  let chosen = -1;
  let zoom = 0;
  /** @type {Record<string, string>} */
  let looks = {};

  /** @param {string} part */
  const standing = (part) => {
    const look = looks[part];
    if (look === "absent") return " Not there yet.";
    if (look === "bench") return " On the bench.";
    return look === "lit" ? " In hand." : "";
  };
  /** @param {number} k */
  const tell = (k) => `${parts[k][1]}. ${parts[k][2]}${standing(parts[k][0])}`;

  /** @param {number} k */
  function select(k) {
    for (const node of findAll(drawing, ".tsu-chosen")) node.classList.remove("tsu-chosen");
    chosen = k;
    const part = k < 0 ? "" : parts[k][0];
    choose.value = part;
    said.textContent = k < 0 ? hint : tell(k);
    for (const node of groups.get(part) ?? []) node.classList.add("tsu-chosen");
    if (k >= 0) bringIntoView(part);
    onChoose(part);
  }
  /** @param {string} part */
  function box(part) {
    const inMarks = /** @type {SVGGElement[]} */ (
      marks ? findAll(marks, `[data-part="${part}"]`) : [] // parts apart have none
    );
    const boxes = [...(groups.get(part) ?? []), ...inMarks].map((node) => {
      const { x, y, width, height } = node.getBBox();
      const [dx, dy] = shifts.get(node) ?? [0, 0];
      return { x: x + dx, y: y + dy, width, height };
    });
    const left = Math.min(...boxes.map((one) => one.x));
    const right = Math.max(...boxes.map((one) => one.x + one.width));
    const top = Math.min(...boxes.map((one) => one.y));
    const low = Math.max(...boxes.map((one) => one.y + one.height));
    return { x: (left + right) / 2, y: (top + low) / 2 };
  }
  /** @param {string} part */
  const bringIntoView = (part) => moveTo(box(part));
  /** @param {{ x: number, y: number }} at */
  function moveTo(at) {
    const scale = drawing.getBoundingClientRect().width / drawing.viewBox.baseVal.width;
    const [x, y] = [at.x * scale, at.y * scale];
    const { scrollLeft, scrollTop, clientWidth, clientHeight } = frame;
    if (x < scrollLeft + 40 || x > scrollLeft + clientWidth - 40) {
      frame.scrollLeft = x - clientWidth / 2;
    }
    if (y < scrollTop + 40 || y > scrollTop + clientHeight - 40) {
      frame.scrollTop = y - clientHeight / 2;
    }
  }
  /** @param {number} by */
  function zoomBy(by) {
    zoom = Math.max(0, Math.min(ZOOMS.length - 1, zoom + by));
    drawing.style.width = `calc(${ZOOMS[zoom]} * ${whole})`;
    drawing.style.height = "auto";
    if (chosen >= 0) bringIntoView(parts[chosen][0]);
  }
  /** @param {number} way */
  function upOrDown(way) {
    const own = box(parts[chosen][0]);
    const [best] = parts
      .map(([part], k) => ({ k, at: box(part) }))
      .filter(({ k, at }) => k !== chosen && (at.y - own.y) * way > 4)
      .sort((a, b) => gap(a.at, own) - gap(b.at, own));
    if (best) select(best.k);
  }
  frame.addEventListener("keydown", (event) => {
    if (withOrder(event)) return;
    const last = parts.length - 1;
    if (event.key === "ArrowRight") select(chosen >= last ? 0 : chosen + 1);
    else if (event.key === "ArrowLeft") select(chosen <= 0 ? last : chosen - 1);
    else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      if (chosen < 0) select(0);
      else upOrDown(event.key === "ArrowUp" ? -1 : 1);
    } else if (event.key === "Home") select(0);
    else if (event.key === "End") select(last);
    else if (event.key === "+" || event.key === "=") zoomBy(1);
    else if (event.key === "-") zoomBy(-1);
    else if (event.key === "Escape") select(-1);
    else return;
    event.preventDefault();
  });
  frame.addEventListener("click", (event) => {
    const part = closest(event, "[data-part]")?.dataset.part;
    select(part === undefined ? -1 : (placeOf.get(part) ?? -1));
  });
  frame.addEventListener("pointerover", (event) => {
    const part = closest(event, "[data-part]")?.dataset.part;
    if (part === undefined || event.pointerType !== "mouse") return;
    const name = closest(event, "[data-solid]")?.querySelector("title")?.textContent;
    const own = parts[placeOf.get(part) ?? 0][1];
    over.textContent = name && !own.endsWith(name) ? `${name} (${own})` : own;
  });
  frame.addEventListener("pointerleave", () => {
    over.textContent = "";
  });
  choose.addEventListener("change", () => select(placeOf.get(choose.value) ?? -1));

  const over = make("span", { class: "ts-unit-over", "aria-hidden": "true" });
  const hint = "Point at a part, tap it, or choose it here to read its name.";
  said.textContent = hint;
  const tools = make(
    "div",
    { class: "ts-tools" },
    make("span", { class: "ts-pair" }, "Part ", choose),
    namedButton("−", () => zoomBy(-1), "Smaller"),
    namedButton("+", () => zoomBy(1), "Larger"),
    over,
  );
  const alternative = make(
    "details",
    { class: "ts-unit-words" },
    make("summary", {}, "What is where, in words"),
    make("p", {}, words),
  );
  zoomBy(0);
  return {
    nodes: [tools, said, frame, alternative],
    choose,
    drawing,
    frame,
    /**
     * Moves the picture until a part can be seen.
     *
     * @param {string} part
     */
    look(part) {
      if (groups.get(part)?.length) bringIntoView(part);
    },
    moveTo,
    /**
     * Shifts a group of the drawing from its place.
     *
     * @param {SVGGElement} group
     * @param {[number, number]} by
     */
    shift(group, [x, y]) {
      shifts.set(group, [x, y]);
      group.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
    },
    /** @param {State} state */
    show(state) {
      looks = state.looks;
      for (const [part, nodes] of groups) {
        for (const node of nodes) {
          for (const look of LOOKS) node.classList.toggle(`tsu-${look}`, looks[part] === look);
        }
      }
      if (marks) marks.innerHTML = state.marks;
      if (chosen >= 0) said.textContent = tell(chosen);
    },
  };
}

/**
 * How far a part lies from another, up and down; sideways counts double.
 *
 * @param {{ x: number, y: number }} a
 * @param {{ x: number, y: number }} b
 */
function gap(a, b) {
  return Math.abs(a.y - b.y) + 2 * Math.abs(a.x - b.x);
}
