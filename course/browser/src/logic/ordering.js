// A list of steps that is put in order: what stands where, what moves together, what can be undone.
// Knows nothing of what is right, nor of the page.

/**
 * @typedef {[key: string, label: string, stage?: string]} Step
 * @typedef {{ stage: string | null, keys: string[] }} Run steps of one stage that stand together
 * @typedef {{ id: string, level: 1 | 2, key: string, run?: undefined }
 *   | { id: string, level: 1, key?: undefined, run: Run }} Row
 */

/**
 * A stored order made whole: what it lacks follows as it was given, what is unknown is left out.
 *
 * @param {unknown} value
 * @param {readonly string[]} keys every step, as given
 * @returns {string[]}
 */
export function completed(value, keys) {
  const stored = [...new Set([value ?? []].flat())].filter((key) => keys.includes(String(key)));
  const given = stored.map(String);
  return [...given, ...keys.filter((key) => !given.includes(key))];
}

/**
 * @param {readonly string[]} a
 * @param {readonly string[]} b
 */
export const same = (a, b) => a.join("\n") === b.join("\n");

/** @param {Run} run */
const headId = (run) => `#${run.keys[0]}`;

export class Ordering {
  /**
   * @param {readonly Step[]} steps
   * @param {readonly string[]} order keys of the steps
   */
  constructor(steps, order) {
    this.labels = new Map(steps.map(([key, label]) => [key, label]));
    /** @type {Map<string, string>} */
    this.stages = new Map();
    for (const [key, , stage] of steps) if (stage) this.stages.set(key, stage);
    this.staged = this.stages.size > 0;
    this.order = [...order];
    /** The row that the keys act on. */
    this.current = this.order[0];
    /** Steps that were put together, to be moved as one. @type {Set<string>} */
    this.block = new Set();
    /** The order before a step was picked up. @type {string[] | null} */
    this.held = null;
    /** @type {string[][]} */
    this.past = [];
    /** @type {string[][]} */
    this.future = [];
    /** Stages that are folded away. @type {Set<string>} */
    this.closed = new Set();
  }

  /** @param {string} key */
  label(key) {
    return this.labels.get(key) ?? key;
  }

  /** @returns {Run[]} */
  runs() {
    /** @type {Run[]} */
    const all = [];
    for (const key of this.order) {
      const stage = this.stages.get(key) ?? null;
      const last = all.at(-1);
      if (last && stage !== null && last.stage === stage) last.keys.push(key);
      else all.push({ stage, keys: [key] });
    }
    return all;
  }

  /** What is shown, from top to bottom. @returns {Row[]} */
  rows() {
    if (!this.staged) return this.order.map((key) => ({ id: key, key, level: 1 }));
    /** @type {Row[]} */
    const shown = [];
    for (const run of this.runs()) {
      const [first] = run.keys;
      if (run.keys.length < 2) {
        shown.push({ id: first, key: first, level: 1 });
        continue;
      }
      shown.push({ id: headId(run), run, level: 1 });
      if (this.closed.has(String(run.stage))) continue;
      for (const key of run.keys) shown.push({ id: key, key, level: 2 });
    }
    return shown;
  }

  /** @param {string} id */
  row(id) {
    return this.rows().find((row) => row.id === id);
  }

  /** Makes the current row one that is shown, and gives back what is shown. */
  settle() {
    const shown = this.rows();
    if (!shown.some((row) => row.id === this.current)) {
      const key = this.current.replace(/^#/, "");
      const home = shown.find((row) => row.run?.keys.includes(key));
      this.current = (home ?? shown.find((row) => row.id === key) ?? shown[0]).id;
    }
    return shown;
  }

  /** The keys that move together, in order. @returns {string[]} */
  unit() {
    const row = this.row(this.current);
    if (row?.run) return row.run.keys;
    if (this.block.has(this.current) && this.block.size > 1) {
      return this.order.filter((key) => this.block.has(key));
    }
    return [this.current];
  }

  unitName() {
    const row = this.row(this.current);
    if (row?.run) return `Stage ${row.run.stage}`;
    const moved = this.unit();
    return moved.length > 1 ? `Block of ${moved.length} steps` : this.label(moved[0]);
  }

  where() {
    const moved = this.unit();
    const first = this.order.indexOf(moved[0]) + 1;
    return moved.length > 1
      ? `positions ${first} to ${first + moved.length - 1} of ${this.order.length}`
      : `position ${first} of ${this.order.length}`;
  }

  /** The steps that stay when the current ones are taken out. */
  rest() {
    const moved = this.unit();
    return this.order.filter((key) => !moved.includes(key));
  }

  get isFirst() {
    return this.order.indexOf(this.unit()[0]) === 0;
  }

  get isLast() {
    return this.order.indexOf(String(this.unit().at(-1))) === this.order.length - 1;
  }

  // ---- orders that a move would lead to ----------------------------------------------------

  /** @param {number} position among the steps that stay */
  insertedAt(position) {
    const rest = this.rest();
    return [...rest.slice(0, position), ...this.unit(), ...rest.slice(position)];
  }

  /**
   * One place up (-1) or down (1); over a whole stage where a stage is moved or is closed.
   *
   * @param {-1 | 1} step
   */
  shifted(step) {
    const rest = this.rest();
    let position = this.order.indexOf(this.unit()[0]);
    const whole = Boolean(this.row(this.current)?.run);
    const next = (/** @type {number} */ at) => rest[step > 0 ? at : at - 1];
    const passed = next(position);
    if (passed === undefined) return this.insertedAt(position);
    const stage = this.stages.get(passed);
    const hop = stage !== undefined && (whole || this.closed.has(stage));
    do position += step;
    while (hop && next(position) !== undefined && this.stages.get(next(position)) === stage);
    return this.insertedAt(position);
  }

  /** @param {number} wanted from 1 */
  atPosition(wanted) {
    return this.insertedAt(Math.min(wanted - 1, this.order.length - this.unit().length));
  }

  /**
   * @param {string} target
   * @param {"before" | "after"} side
   */
  beside(target, side) {
    return this.insertedAt(this.rest().indexOf(target) + (side === "after" ? 1 : 0));
  }

  /** Steps of one stage together, stages in the order in which they come first. */
  gathered() {
    /** @type {Map<string, string[]>} */
    const byStage = new Map();
    for (const key of this.order) {
      const stage = this.stages.get(key) ?? key;
      byStage.set(stage, [...(byStage.get(stage) ?? []), key]);
    }
    return [...byStage.values()].flat();
  }

  /**
   * Where something dropped at a row goes: the step, and its side.
   *
   * @param {Row} row
   * @param {boolean} below the middle of the row
   * @returns {{ target: string, side: "before" | "after" }}
   */
  dropAt(row, below) {
    const keys = row.run ? row.run.keys : [row.key];
    const openHead = row.run && !this.closed.has(String(row.run.stage));
    return below && !openHead
      ? { target: String(keys.at(-1)), side: "after" }
      : { target: keys[0], side: "before" };
  }

  // ---- changes -----------------------------------------------------------------------------

  /**
   * Takes an order; says whether it is another one.
   *
   * @param {string[]} next
   */
  take(next) {
    if (same(next, this.order)) return false;
    const run = this.row(this.current)?.run;
    if (this.held === null) this.remember(this.order);
    this.order = next;
    if (run) {
      const [first] = run.keys;
      const home = this.rows().find((row) => row.run?.keys.includes(first));
      this.current = home ? home.id : first;
    }
    return true;
  }

  /** @param {string[]} order */
  remember(order) {
    this.past.push(order);
    this.future = [];
  }

  /** Says whether there was something to undo. */
  undo() {
    return this.#travel(this.past, this.future);
  }

  /** Says whether there was something to do again. */
  redo() {
    return this.#travel(this.future, this.past);
  }

  /**
   * @param {string[][]} from
   * @param {string[][]} to
   */
  #travel(from, to) {
    const next = from.pop();
    if (!next) return false;
    to.push(this.order);
    this.order = next;
    return true;
  }

  pickUp() {
    this.held = this.order;
  }

  /** Says whether the order is another one than before it was picked up. */
  putDown() {
    const from = this.held;
    this.held = null;
    if (from === null || same(from, this.order)) return false;
    this.remember(from);
    return true;
  }

  putBack() {
    if (this.held) this.order = this.held;
    this.held = null;
  }

  /**
   * Puts an order in from outside.
   *
   * @param {readonly string[]} next
   * @param {boolean} forget what could be undone
   */
  set(next, forget) {
    this.order = [...next];
    if (forget) [this.past, this.future] = [[], []];
  }

  /** @param {string} key */
  toggleBlock(key) {
    if (this.block.has(key)) this.block.delete(key);
    else this.block.add(key);
  }

  /**
   * Makes a block of all steps from the current one to a key.
   *
   * @param {string} key
   */
  blockTo(key) {
    const ends = [this.order.indexOf(this.current), this.order.indexOf(key)].sort((a, b) => a - b);
    if (ends[0] >= 0) this.block = new Set(this.order.slice(ends[0], ends[1] + 1));
  }

  /**
   * Folds the stage of a row away or opens it; gives its name, null if the row stands alone.
   *
   * @param {Row} row
   * @param {boolean} shut
   */
  fold(row, shut) {
    const stage = row.run ? row.run.stage : this.stages.get(row.key);
    const key = row.run ? row.run.keys[0] : row.key;
    const run = this.runs().find((one) => one.keys.includes(key));
    if (!stage || !run || run.keys.length < 2) return null;
    if (shut) this.closed.add(stage);
    else this.closed.delete(stage);
    if (shut) this.current = headId(run);
    return stage;
  }

  /**
   * The next row whose words start so: letters typed go to the step that starts with them.
   *
   * @param {string} letters in small letters
   */
  sought(letters) {
    const shown = this.rows();
    const at = shown.findIndex((row) => row.id === this.current);
    const from = letters.length > 1 ? at : at + 1;
    const words = (/** @type {Row} */ row) =>
      (row.run ? String(row.run.stage) : this.label(row.key)).toLowerCase();
    return [...shown.slice(from), ...shown.slice(0, from)].find((row) =>
      words(row).startsWith(letters),
    );
  }
}
