// The bar of a course notebook: ways to the start page, the lesson and the exercise, and the row of
// tasks with where you are, what is done and what is not.

/** @import { Progress } from "../logic/places.js" */

import { MINE, numberOf, placeOf, slugOf, standOf, waysFrom } from "../logic/places.js";
import { make, shape } from "../page/dom.js";

const NEAR_PX = 120; // a task is where you are once its heading is that far below the top

/**
 * The files of a folder; none where it is not there.
 *
 * @param {any} contents JupyterLab's contents manager
 * @param {string} folder
 * @returns {Promise<string[]>}
 */
async function filesOf(contents, folder) {
  try {
    const { content } = await contents.get(folder, { content: true });
    return content.map((/** @type {{ name: string }} */ { name }) => name);
  } catch {
    return [];
  }
}

/** @type {Map<string, Promise<{ start: boolean, lessons: string[], practice: string[] }>>} */
const known = new Map();

/**
 * What a workplace offers; asked once a page.
 *
 * @param {any} contents
 * @param {string} base
 */
function offered(contents, base) {
  const folder = base.replace(/\/$/, "");
  const found =
    known.get(folder) ??
    filesOf(contents, folder).then(async (names) => ({
      start: names.includes("start-here.ipynb"),
      lessons: names.includes("lessons") ? await filesOf(contents, `${base}lessons`) : [],
      practice: names.includes("exercises") ? await filesOf(contents, `${base}exercises`) : [],
    }));
  known.set(folder, found);
  return found;
}

/** @returns {Record<string, string>} */
function mine() {
  try {
    return JSON.parse(localStorage.getItem(MINE) ?? "{}");
  } catch {
    return {};
  }
}

/**
 * @param {string} path
 * @param {string} tree address that opens a path
 */
const addressOf = (path, tree) => `${tree}/${path.split("/").map(encodeURIComponent).join("/")}`;

/**
 * The links of a notebook.
 *
 * @param {[string, string][]} ways
 * @param {string} tree
 */
function wayList(ways, tree) {
  return make(
    "ul",
    { class: "ts-ways" },
    ...ways.map(([words, path]) =>
      make(
        "li",
        {},
        path
          ? make("a", { href: addressOf(path, tree), "data-twoshaft-open": path }, words)
          : make("b", { "aria-current": "page" }, words),
      ),
    ),
  );
}

/**
 * The row of tasks of an exercise.
 *
 * @param {any} panel
 */
function taskRow(panel) {
  const { node, widgets } = panel.content;
  /** @type {HTMLElement} */
  const scroller = node.querySelector(".jp-WindowedPanel-outer") ?? node;
  const next = make("a", { href: "#", class: "ts-next-task" });
  /** @type {Map<string, Progress>} the forms of the page */
  const progress = new Map();
  /** @param {any} cell */
  const go = (cell) => {
    const heading = cell.node.querySelector("h2");
    if (heading) {
      heading.tabIndex = -1;
      heading.focus({ preventScroll: true });
    }
    cell.node.scrollIntoView({ block: "start" });
  };
  /**
   * @param {any} cell
   * @param {string} number
   * @param {string} title
   */
  const task = (cell, number, title) => ({
    cell,
    number,
    title,
    /** @type {Set<string>} */
    forms: new Set(),
    link: make("a", {
      href: "#",
      onclick: (event) => {
        event.preventDefault();
        go(cell);
      },
    }),
  });
  /** @type {ReturnType<typeof task>[]} */
  const tasks = [];
  for (const cell of widgets) {
    const { type, sharedModel } = cell.model;
    const [, number, title] = /^## (\d+)\. (.*)/m.exec(sharedModel.getSource()) ?? [];
    if (type !== "code" && number) tasks.push(task(cell, number, title));
  }
  const list = make(
    "ol",
    { class: "ts-tasks", "aria-label": "Tasks" },
    ...tasks.map(({ link }) => make("li", {}, link)),
  );
  const element = make("div", { class: "ts-task-row" }, list, next);
  /** @param {ReturnType<typeof task>} task */
  const standing = ({ forms }) => standOf([...forms].map((form) => progress.get(form)));
  const open = () => tasks.find((one) => standing(one)[1] !== "done");
  next.addEventListener("click", (event) => {
    event.preventDefault();
    const first = open();
    if (first) go(first.cell);
  });
  const show = () => {
    const top = scroller.getBoundingClientRect().top + NEAR_PX;
    const past = tasks.filter(({ cell }) => cell.node.getBoundingClientRect().top < top);
    const ended = scroller.scrollTop + scroller.clientHeight >= scroller.scrollHeight - 1;
    const here = ended && past.length ? tasks.at(-1) : past.at(-1);
    for (const one of tasks) {
      const [sign, words] = standing(one);
      if (one === here) one.link.setAttribute("aria-current", "step");
      else one.link.removeAttribute("aria-current");
      const label = `Task ${one.number}, ${one.title}: ${words}`;
      if (one.link.title === label) continue;
      one.link.title = label;
      one.link.setAttribute("aria-label", label);
      one.link.replaceChildren(one.number, sign ? shape(sign) : "");
    }
    if (here && element.scrollWidth > element.clientWidth) {
      element.scrollLeft = here.link.offsetLeft - element.clientWidth / 2;
    }
    const first = open();
    const words = first ? `Next: task ${first.number}` : "All tasks are answered";
    if (next.textContent !== words) next.textContent = words;
  };
  node.addEventListener("twoshaft-progress", (/** @type {CustomEvent} */ { target, detail }) => {
    const form = /** @type {Node} */ (target);
    const above = tasks.filter(
      ({ cell }) => cell.node.compareDocumentPosition(form) & Node.DOCUMENT_POSITION_FOLLOWING,
    );
    progress.set(detail.task, detail);
    above.at(-1)?.forms.add(detail.task);
    show();
  });
  let asked = 0;
  scroller.addEventListener(
    "scroll",
    () => {
      cancelAnimationFrame(asked);
      asked = requestAnimationFrame(show);
    },
    { passive: true },
  );
  show();
  return tasks.length ? element : null;
}

/**
 * Gives a course notebook its bar, and its links once more at its end.
 *
 * @param {any} panel
 * @param {any} context
 * @param {{ Widget: any, contents: any, tree: string }} lab
 */
export async function addBar(panel, context, { Widget, contents, tree }) {
  const { kind, base, file } = placeOf(context.path);
  if (kind === "start" || kind === "desk") return;
  const row = kind === "exercise" ? taskRow(panel) : null;
  const bar = make("nav", { class: "twoshaft twoshaft-bar", "aria-label": "Course" });
  const widget = new Widget({ node: bar });
  panel.layout.insertWidget(0, widget);
  panel.content.node.before(bar); // one step back from the first cell, before any button of others
  const end = make("nav", { class: "twoshaft twoshaft-ways", "aria-label": "Ways on" });
  panel.content.node.querySelector(".jp-WindowedPanel-outer")?.append(end);
  const fill = async () => {
    const ways = waysFrom(context.path, await offered(contents, base), mine());
    bar.replaceChildren(wayList(ways, tree), ...(row ? [row] : []));
    end.replaceChildren(wayList(ways, tree));
  };
  await fill();
  if (row) keepHigh(panel, bar, row);
  if (kind === "lesson") {
    window.addEventListener("storage", fill);
    panel.disposed.connect(() => window.removeEventListener("storage", fill));
    if (numberOf(file) || file === "glossary.ipynb") whenDrawn(panel, () => toPlace(panel));
  }
}

/**
 * Keeps the bar as high as its lines: JupyterLab's layout wants to be told.
 *
 * @param {any} panel
 * @param {HTMLElement} bar
 * @param {HTMLElement} row
 */
function keepHigh(panel, bar, row) {
  const fold = new ResizeObserver(() => {
    const first = /** @type {HTMLElement} */ (bar.firstElementChild);
    const isLower = row.offsetTop >= first.offsetTop + first.offsetHeight;
    if (isLower === bar.classList.contains("ts-two-lines")) return;
    bar.classList.toggle("ts-two-lines", isLower);
    requestAnimationFrame(() => panel.fit());
  });
  fold.observe(bar);
  fold.observe(row);
  panel.disposed.connect(() => fold.disconnect());
}

/**
 * Calls once the headings of a notebook are drawn.
 *
 * @param {any} panel
 * @param {() => void} then
 */
function whenDrawn(panel, then) {
  const texts = panel.content.widgets.filter(
    (/** @type {any} */ { model }) => model.type !== "code",
  );
  Promise.all(texts.map((/** @type {any} */ cell) => cell.ready)).then(() =>
    requestAnimationFrame(() => {
      if (!panel.isDisposed) then();
    }),
  );
}

const place = decodeURIComponent(location.hash.slice(1)); // JupyterLab drops it from the address

/** @param {any} panel */
function toPlace(panel) {
  if (!place) return;
  for (const heading of panel.content.node.querySelectorAll(
    ".jp-RenderedMarkdown :is(h1, h2, h3)",
  )) {
    if (slugOf(heading.textContent ?? "") !== place) continue;
    heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
    heading.scrollIntoView({ block: "start" });
    return;
  }
}

/** A first link of the page, to the bar of the notebook in front. */
export function addSkipLink() {
  const link = make(
    "a",
    {
      href: "#",
      class: "twoshaft-skip",
      onclick: (event) => {
        event.preventDefault();
        const bars = [...document.querySelectorAll(".twoshaft-bar")];
        const shown = bars.find((bar) => bar.checkVisibility());
        /** @type {HTMLElement | null | undefined} */ (shown?.querySelector("a"))?.focus();
      },
    },
    "To the start page, lesson and tasks",
  );
  // not among JupyterLab's own, which takes clicks on all of them
  document.body.prepend(make("nav", { "aria-label": "First" }, link));
}
