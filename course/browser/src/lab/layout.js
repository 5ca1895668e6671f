// A course notebook uses the width of its window: what is given stays beside what is asked.

import { spotsOf } from "../logic/places.js";
import { isQuiet, tagsOf } from "./cells.js";

const WIDE_PX = 1000;
const LARGE_PX = 1800; // in large print two columns are too narrow for a smaller window
const BROAD = ":is(.tsh-picture, .ts-scroll, .ts-unit)"; // drawings that half a window would cut off

/**
 * What is given and what is asked of one row.
 *
 * @typedef {{
 *   left: HTMLElement[], right: HTMLElement, heights: number[], whole: number, from: number,
 *   stage: string,
 * }} Side
 */

/**
 * What a cell is on the page.
 *
 * @param {any} model
 * @returns {import("../logic/places.js").Part}
 */
function partOf(model) {
  const tags = tagsOf(model);
  if (model.type !== "code") return tags.includes("if-missing") ? "hidden" : "text";
  if (tags.includes("form") || tags.includes("predict")) return "form";
  if (tags.includes("rig")) return "given";
  return isQuiet(model) ? "hidden" : "own";
}

/** @param {any} model */
const begins = (model) => model.type !== "code" && /^#{1,2} /m.test(model.sharedModel.getSource());

/**
 * Keeps a notebook laid out while its cells and its width change.
 *
 * @param {any} panel
 */
export function layOut(panel) {
  const root = panel.content.node;
  const scroller = root.querySelector(".jp-WindowedPanel-outer") ?? root;
  /** @type {Side[]} */
  let sides = [];
  // The left cells of a row share one place of the grid, one below the other, and stay in sight
  // together while the row passes; those that are higher than the window stay with their lower end.
  const stack = () => {
    const height = scroller.clientHeight;
    for (const side of sides) {
      const broad = side.left.some((node) => node.querySelector(BROAD));
      const pictured = side.right.querySelector(".ts-pictures") !== null;
      for (const node of [...side.left, side.right]) {
        node.classList.toggle("twoshaft-broad", broad);
        node.classList.toggle("twoshaft-narrow", !broad && pictured);
      }
      side.heights = side.left.map((node) => node.getBoundingClientRect().height);
      side.whole = side.heights.reduce((sum, one) => sum + one, 0);
      side.from = Math.min(0, height - side.whole);
      // What is asked stays in sight in its turn where what is given is higher than it. It has to
      // fit the window: what hangs over an edge could not be scrolled to by the keyboard.
      const own = side.right.getBoundingClientRect().height;
      const fits = own < side.whole && own <= height;
      const stays = fits && !side.right.querySelector(".ts-question");
      side.right.style.position = stays ? "sticky" : "";
      side.right.style.top = stays ? "0" : "";
    }
    follow();
  };
  // A sticky cell would leave its row, whose place in the grid does not hold it.
  const follow = () => {
    const from = scroller.getBoundingClientRect().top;
    const found = sides.map((side) => {
      const { top, height } = side.right.getBoundingClientRect();
      const spare = Math.max(0, height - side.whole);
      const gone = side.from - (top - from);
      const stage = gone <= 0 || !spare ? "before" : gone < spare ? "within" : `past ${spare}`;
      return { stage, spare };
    });
    sides.forEach((side, at) => {
      const { stage, spare } = found[at];
      if (stage === side.stage) return;
      side.stage = stage;
      let above = 0;
      side.left.forEach((node, n) => {
        const start = above + (stage.startsWith("past") ? spare : 0);
        node.style.position = stage === "within" ? "sticky" : "relative";
        node.style.top = stage === "within" ? `${side.from + above}px` : "auto";
        node.style.marginTop = `${start}px`;
        node.style.marginBottom = `${side.whole - above - side.heights[n]}px`;
        above += side.heights[n];
      });
    });
  };
  const clear = () => {
    for (const side of sides) {
      side.stage = "";
      for (const { style } of [...side.left, side.right]) {
        for (const name of ["position", "top", "margin-top", "margin-bottom"]) {
          style.removeProperty(name);
        }
      }
    }
  };
  const isWide = () => root.classList.contains("twoshaft-wide");
  const fit = () => {
    const large = document.documentElement.getAttribute("data-ts-print") === "large";
    root.classList.toggle("twoshaft-wide", root.clientWidth >= (large ? LARGE_PX : WIDE_PX));
    if (isWide()) stack();
    else clear();
  };
  scroller.addEventListener("scroll", () => isWide() && follow(), { passive: true });
  let asked = 0;
  const sizes = new ResizeObserver(() => {
    cancelAnimationFrame(asked);
    asked = requestAnimationFrame(fit);
  });
  const place = () => {
    const { widgets } = panel.content;
    const spots = spotsOf(
      widgets.map((/** @type {any} */ { model }) => ({
        part: partOf(model),
        begins: begins(model),
      })),
    );
    clear();
    sizes.disconnect();
    sizes.observe(root);
    /** @type {Map<number, HTMLElement[]>} */
    const lefts = new Map();
    sides = [];
    widgets.forEach((/** @type {any} */ { node }, /** @type {number} */ at) => {
      const { row, side } = spots[at];
      node.style.gridRow = String(row);
      node.dataset.twoshaftSide = side;
      if (side === "both") return;
      sizes.observe(node);
      const left = lefts.get(row) ?? [];
      lefts.set(row, left);
      if (side === "left") left.push(node);
      else sides.push({ left, right: node, heights: [], whole: 0, from: 0, stage: "" });
    });
    fit();
  };
  place();
  panel.content.model.cells.changed.connect(() =>
    setTimeout(() => !panel.isDisposed && place(), 0),
  );
  panel.disposed.connect(() => sizes.disconnect());
}
