// Where a course notebook stands in its workplace, and where its cells stand on the page.

export const START = "start-here.ipynb";
export const DESK = "desk.ipynb";
export const MINE = "twoshaft-mine"; // what the start page notes of the learner's own exercises

/**
 * What the path of a notebook says. `base` is the folder of the workplace, with a slash behind it
 * unless it is the server's own.
 *
 * @param {string} path
 */
export function placeOf(path) {
  const parts = path.split("/");
  const file = parts.pop() ?? "";
  const folder = parts.at(-1) ?? "";
  const pages = new Map([
    [START, "start"],
    [DESK, "desk"],
  ]);
  const kind = pages.get(file) ?? (folder === "lessons" ? "lesson" : "exercise");
  const up = pages.has(file) ? 0 : ["lessons", "exercises"].includes(folder) ? 1 : 2;
  const base = parts.slice(0, Math.max(0, parts.length - up)).join("/");
  return { kind, file, base: base && `${base}/` };
}

/**
 * The number of a module's notebook, as "02"; empty for one that is no module's.
 *
 * @param {string} file
 */
export const numberOf = (file) => /^(\d\d)-/.exec(file)?.[1] ?? "";

/**
 * The links of a notebook's bar as [words, path]; the one without a path is the notebook itself.
 *
 * @param {string} path
 * @param {{ start: boolean, lessons: string[], practice: string[] }} there files of the workplace
 * @param {Record<string, string>} mine the learner's own exercises by file, under the workplace
 * @returns {[string, string][]}
 */
export function waysFrom(path, there, mine) {
  const { kind, file, base } = placeOf(path);
  if (kind === "start" || kind === "desk") return [];
  /** @type {[string, string][]} */
  const ways = [];
  if (there.start) ways.push(["Start page", base + START]);
  const number = numberOf(file);
  const numbered = number && ` ${number}`;
  const exercise = mine[file] ?? (there.practice.includes(file) ? `exercises/${file}` : undefined);
  if (kind === "lesson") {
    ways.push([number ? `Lesson ${number}` : "Glossary", ""]);
    if (exercise) ways.push([`Exercise${numbered}`, base + exercise]);
  } else {
    if (there.lessons.includes(file)) ways.push([`Lesson${numbered}`, `${base}lessons/${file}`]);
    ways.push([`Exercise${numbered}`, ""]);
  }
  if (there.lessons.includes("glossary.ipynb") && file !== "glossary.ipynb") {
    ways.push(["Glossary", `${base}lessons/glossary.ipynb`]);
  }
  return ways;
}

/**
 * A heading as the last part of an address names it.
 *
 * @param {string} text
 */
export const slugOf = (text) =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");

/** @typedef {"text" | "given" | "form" | "hidden" | "own"} Part */
/** @typedef {{ row: number, side: "left" | "right" | "both" }} Spot */

/**
 * Which row of the page each cell stands in, and on which side: a task's text, tables and pictures
 * stand left of its form. Cells that stand on both sides have a row each.
 *
 * @param {{ part: Part, begins: boolean }[]} cells `begins`: a heading opens a new row
 * @returns {Spot[]}
 */
export function spotsOf(cells) {
  /** @type {number[][]} */
  const groups = [];
  let asked = false;
  cells.forEach(({ part, begins }, at) => {
    const more = part === "text" || part === "given";
    if (!groups.length || begins || part === "own" || (asked && more)) {
      groups.push([]);
      asked = false;
    }
    groups[groups.length - 1].push(at);
    if (part === "form" || part === "own") asked = true;
  });
  /** @type {Spot[]} */
  const spots = [];
  let row = 0;
  for (const group of groups) {
    const parts = group.map((at) => cells[at].part);
    const split =
      parts.filter((one) => one === "form").length === 1 &&
      parts.some((one) => one === "text" || one === "given");
    if (split) row += 1;
    const shared = row;
    for (const at of group) {
      const { part } = cells[at];
      if (split && part !== "hidden") {
        spots[at] = { row: shared, side: part === "form" ? "right" : "left" };
      } else {
        row += 1;
        spots[at] = { row, side: "both" };
      }
    }
  }
  return spots;
}

/** @typedef {{ answered: number, asked: number, unread: number }} Progress */

/**
 * How far a task is, as a shape and in words.
 *
 * @param {(Progress | undefined)[]} forms of the task
 * @returns {[shape: string, words: string]}
 */
export function standOf(forms) {
  const known = forms.filter((one) => one !== undefined);
  if (!known.length) return ["", "opening"];
  const [answered, asked, unread] = /** @type {const} */ (["answered", "asked", "unread"]).map(
    (part) => known.reduce((sum, one) => sum + one[part], 0),
  );
  if (unread) return ["▲", `${unread} cannot be read, ${answered} of ${asked} answered`];
  if (answered === asked) return ["●", "done"];
  return answered ? ["◐", `${answered} of ${asked} answered`] : ["○", "not begun"];
}
