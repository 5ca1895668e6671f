// Rule picture: choose a step in the picture of all rules, see the rules around it.

/** @import { Render } from "../types.js" */

import { find, findAll, itemsOf, make, optionsOf, withOrder } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/** @type {Render} */
export function renderRules({ model, el }) {
  /** @type {[string, string][]} */
  const steps = model.get("steps");
  /** @type {{ before: number[], after: number[] }[]} */
  const reach = model.get("reach");
  const numberOf = new Map(steps.map(([step], i) => [step, i]));
  const picture = make("div", { class: "ts-scroll" });
  const near = make("div", {
    class: "ts-scroll",
    tabindex: "0",
    role: "region",
    "aria-label": "The rules around the chosen step",
  });
  const words = make("p", { class: "ts-finding", role: "status" });
  const sentences = make("ul", { class: "ts-sentences" });
  const choose = make(
    "select",
    { class: "ts-box ts-before", "aria-label": "Chosen step" },
    ...optionsOf(steps.map(([step, label], i) => [step, `${i + 1}  ${label}`])),
  );
  const fit = make(
    "button",
    { type: "button", class: "ts-button", "aria-pressed": "false" },
    "Fit the width",
  );
  const screen = openScreen(
    { model, el },
    {
      kind: "rig",
      lost() {
        choose.disabled = true;
      },
    },
  );
  screen.show(
    screen.alert,
    make("p", { class: "ts-finding" }, model.get("finding")),
    make(
      "p",
      { class: "ts-hint" },
      "Choose a step: click it, or use the arrow keys in the picture. Left and right follow the rules, up and down stay beside.",
    ),
    make("div", { class: "ts-tools" }, make("span", { class: "ts-pair" }, "Step ", choose), fit),
    picture,
    make(
      "p",
      { class: "ts-hint" },
      "Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either side.",
    ),
    words,
    near,
    sentences,
  );

  picture.innerHTML = model.get("figure");
  const svg = find(picture, "svg");
  svg.setAttribute("role", "group");
  const nodes = findAll(svg, ".tsf-step").sort(
    (a, b) => Number(a.dataset.step) - Number(b.dataset.step),
  );
  const edges = findAll(svg, ".tsf-rule").map((node) => ({
    node,
    ends: String(node.dataset.rule).split("-").map(Number),
  }));
  nodes.forEach((node, i) => {
    node.setAttribute("role", "button");
    node.setAttribute(
      "aria-label",
      `${i + 1} ${steps[i][1]}, ${reach[i].before.length} before it, ${reach[i].after.length} after it`,
    );
    node.addEventListener("click", () => select(i, true));
  });
  let chosen = Number(numberOf.get(model.get("near").step));

  /** @param {boolean} focus */
  function mark(focus) {
    const before = new Set(reach[chosen].before);
    const after = new Set(reach[chosen].after);
    nodes.forEach((node, i) => {
      node.setAttribute("tabindex", i === chosen ? "0" : "-1");
      node.setAttribute("aria-pressed", String(i === chosen));
      node.classList.toggle("ts-chosen-step", i === chosen);
      node.classList.toggle("ts-before-it", before.has(i));
      node.classList.toggle("ts-after-it", after.has(i));
      node.classList.toggle("ts-either", i !== chosen && !before.has(i) && !after.has(i));
    });
    /** @param {number} i */
    const chain = (i) => i === chosen || before.has(i) || after.has(i);
    for (const { node, ends } of edges) {
      const on =
        (before.has(ends[0]) && (ends[1] === chosen || before.has(ends[1]))) ||
        (after.has(ends[1]) && (ends[0] === chosen || after.has(ends[0])));
      node.classList.toggle("ts-either", !(on && ends.every(chain)));
    }
    choose.value = steps[chosen][0];
    if (focus) nodes[chosen].focus({ preventScroll: true });
    const box = nodes[chosen].getBoundingClientRect();
    const frame = picture.getBoundingClientRect();
    if (box.left < frame.left + 16 || box.right > frame.right - 16) {
      picture.scrollLeft += box.left - frame.left - frame.width / 2;
    }
  }
  /**
   * @param {number} i
   * @param {boolean} focus
   */
  function select(i, focus) {
    chosen = i;
    mark(focus);
    screen.send({ type: "choose", step: steps[i][0] });
  }
  /** @param {number} i */
  const middle = (i) => {
    /** @type {SVGRectElement} */
    const rect = find(nodes[i], "rect");
    const box = rect.getBBox();
    return { x: box.x, y: box.y };
  };
  /** @param {string} key */
  function beside(key) {
    const own = middle(chosen);
    /** @type {(list: number[]) => number | undefined} */
    const nearest = (list) =>
      list.sort((a, b) => Math.abs(middle(a).y - own.y) - Math.abs(middle(b).y - own.y))[0];
    if (key === "ArrowRight")
      return nearest(edges.filter(({ ends }) => ends[0] === chosen).map(({ ends }) => ends[1]));
    if (key === "ArrowLeft")
      return nearest(edges.filter(({ ends }) => ends[1] === chosen).map(({ ends }) => ends[0]));
    const column = nodes
      .map((_, i) => i)
      .filter((i) => Math.abs(middle(i).x - own.x) < 2 && i !== chosen);
    const way = key === "ArrowUp" ? -1 : 1;
    return nearest(column.filter((i) => (middle(i).y - own.y) * way > 0));
  }
  svg.addEventListener("keydown", (event) => {
    if (withOrder(event)) return;
    if (["ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight"].includes(event.key)) {
      const to = beside(event.key);
      if (to !== undefined) select(to, true);
      event.preventDefault();
    } else if (event.key === "Enter" || event.key === " ") event.preventDefault();
  });
  choose.addEventListener("change", () => select(Number(numberOf.get(choose.value)), false));
  fit.addEventListener("click", () => {
    const on = picture.classList.toggle("ts-fit");
    fit.setAttribute("aria-pressed", String(on));
    mark(false);
  });
  function show() {
    const around = model.get("near");
    words.textContent = around.words;
    near.innerHTML = around.figure;
    sentences.replaceChildren(...itemsOf(around.sentences));
  }
  screen.follow("change:near", show);
  show();
  requestAnimationFrame(() => mark(false));
  return screen.close;
}
