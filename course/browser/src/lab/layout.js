// A course notebook uses the width of its window: what is given stays beside what is asked.

import { spotsOf } from "../logic/places.js";
import { isQuiet, tagsOf } from "./cells.js";
import { ownBox } from "./own_box.js";

const WIDE_PX = 1000;
const LARGE_PX = 1800; // in large print two columns are too narrow for a smaller window
// Drawings that half a window would cut off.
const BROAD = ":is(.tsh-picture, .ts-scroll, .ts-unit, .tsi-micrometer, .tsi-vernier, .tsg-drum)";

/**
 * What is given, or what is asked, of one row; beside it stands the other.
 *
 * @typedef {{
 *   nodes: HTMLElement[], heights: number[], whole: number, high: number, from: number,
 *   room: number, beside: HTMLElement, stage: string, box: ReturnType<typeof ownBox> | null,
 * }} Column
 *
 * @typedef {{ left: Column, right: Column }} Row
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

/**
 * @param {HTMLElement[]} nodes
 * @param {HTMLElement} beside
 * @returns {Column}
 */
const column = (nodes, beside) => ({
  nodes,
  beside,
  heights: [],
  whole: 0,
  high: 0,
  from: 0,
  room: 0,
  stage: "",
  box: null,
});

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
  /** @type {Row[]} */
  let rows = [];
  // The left cells of a row share one place of the grid, one below the other. The lower of the two
  // columns stays in sight while the row passes. Where both are higher than the window, what is
  // given stays as a box of the window's height, in which it is moved by itself.
  const stack = () => {
    const height = scroller.clientHeight;
    for (const { left, right } of rows) {
      const broad = left.nodes.some((node) => node.querySelector(BROAD));
      const [form] = right.nodes;
      // A rig that is worked beside them needs its half.
      const rig = left.nodes.some((node) => node.querySelector(".twoshaft-rig"));
      const pictured = !rig && form.querySelector(".ts-pictures") !== null;
      for (const node of [...left.nodes, form]) {
        node.classList.toggle("twoshaft-broad", broad);
        node.classList.toggle("twoshaft-narrow", !broad && pictured);
      }
      for (const column of [left, right]) {
        column.heights = column.nodes.map((node) => node.getBoundingClientRect().height);
        column.whole = column.heights.reduce((sum, one) => sum + one, 0);
        column.high = column.whole;
        column.from = Math.min(0, height - column.whole);
        column.stage = "";
      }
      const asks = form.querySelector(".ts-question") !== null;
      const boxed = left.whole > height && right.whole > height && !asks;
      if (boxed) {
        left.high = height;
        left.from = 0;
        left.box ??= ownBox(left.nodes, scroller, () => {
          left.stage = "";
          follow();
        });
      } else {
        left.box?.remove();
        left.box = null;
      }
      left.box?.fit(left.whole, height);
      left.room = right.whole;
      // What is asked has to fit the window: what hangs over an edge could not be scrolled to by
      // the keyboard.
      const stays = right.whole <= height && !asks;
      right.room = stays ? left.whole : 0;
    }
    follow();
  };
  // A sticky cell would leave its row, whose place in the grid does not hold it.
  const follow = () => {
    const from = scroller.getBoundingClientRect().top;
    const columns = rows.flatMap(({ left, right }) => [left, right]);
    const found = columns.map((column) => {
      const spare = Math.max(0, column.room - column.high);
      const gone = column.from - (column.beside.getBoundingClientRect().top - from);
      const stage = gone <= 0 || !spare ? "before" : gone < spare ? "within" : `past ${spare}`;
      return { stage, spare };
    });
    columns.forEach((column, at) => {
      const { stage, spare } = found[at];
      if (stage === column.stage) return;
      column.stage = stage;
      let above = -(column.box?.moved() ?? 0);
      column.nodes.forEach((node, n) => {
        const start = above + (stage.startsWith("past") ? spare : 0);
        node.style.position = stage === "within" ? "sticky" : "relative";
        node.style.top = stage === "within" ? `${column.from + above}px` : "auto";
        node.style.marginTop = `${start}px`;
        node.style.marginBottom = `${column.high - above - column.heights[n]}px`;
        column.box?.cut(node, above, column.heights[n]);
        above += column.heights[n];
      });
    });
  };
  const clear = () => {
    for (const column of rows.flatMap(({ left, right }) => [left, right])) {
      column.stage = "";
      column.box?.remove();
      column.box = null;
      for (const { style } of column.nodes) {
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
    rows = [];
    widgets.forEach((/** @type {any} */ { node }, /** @type {number} */ at) => {
      const { row, side } = spots[at];
      node.style.gridRow = String(row);
      node.dataset.twoshaftSide = side;
      if (side === "both") return;
      sizes.observe(node);
      const left = lefts.get(row) ?? [];
      lefts.set(row, left);
      if (side === "left") left.push(node);
      else rows.push({ left: column(left, node), right: column([node], left[0] ?? node) });
    });
    fit();
  };
  place();
  panel.content.model.cells.changed.connect(() =>
    setTimeout(() => !panel.isDisposed && place(), 0),
  );
  panel.disposed.connect(() => sizes.disconnect());
}
