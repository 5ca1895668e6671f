// Lines to answer by pressing in a picture: a list by each line, and which one a press is meant for.

/** @import { Answer, Field, Ids } from "../types.js" */

import { answersOf, entriesOf } from "../logic/each.js";
import { nextLine, walk } from "../logic/pointing.js";
import { choiceBox, closest, findAll, make } from "../page/dom.js";

/**
 * The rows of a field, each with its list; pressed places answer the row that is marked.
 *
 * @param {Field} field
 * @param {Ids} ids
 * @param {(value: any) => void} commit
 * @param {(answers: Map<string, string>) => void} changed
 */
export function pointedRows(field, ids, commit, changed) {
  /** @type {[string, string][]} */
  const lines = field.lines;
  /** @type {[string, string][]} */
  const options = field.options;
  const keys = lines.map(([key]) => key);
  let active = keys[0];
  const rows = lines.map(([key, text], at) => {
    const id = `${ids.control}-${at}`;
    const words = make("label", { class: "ts-each-line", for: id }, text);
    const box = choiceBox({ id }, [["", "choose"], ...options]);
    const mark = make("input", {
      type: "radio",
      name: `${ids.control}-active`,
      "aria-label": `Point in the picture for: ${text}`,
      checked: at === 0,
    });
    const row = make("li", {}, keys.length > 1 ? mark : null, words, box);
    mark.addEventListener("change", () => {
      active = key;
    });
    box.addEventListener("change", () => {
      active = key;
      send();
    });
    return { key, box, mark, row };
  });
  const answers = () => new Map(rows.map(({ key, box }) => [key, box.value]));
  function send() {
    const now = answers();
    changed(now);
    commit(entriesOf([...now]));
  }
  return {
    element: make("ol", { class: "ts-each ts-pointed" }, ...rows.map(({ row }) => row)),
    active: () => active,
    answers,
    /**
     * An option for the marked line; the mark then goes on.
     *
     * @param {string} option
     */
    press(option) {
      const row = rows.find(({ key }) => key === active);
      if (!row || row.box.disabled) return;
      row.box.value = option;
      send();
      active = nextLine(keys, answers(), active);
      for (const { key, mark } of rows) mark.checked = key === active;
    },
    /**
     * An option for a line, whichever is marked.
     *
     * @param {string} line
     * @param {string} option
     */
    put(line, option) {
      const row = rows.find(({ key }) => key === line);
      if (!row || row.box.disabled) return;
      row.box.value = option;
      send();
    },
    /** @param {Answer} state */
    show(state) {
      const stored = answersOf(state.value);
      for (const { key, box } of rows) box.value = stored.get(key) ?? "";
      changed(answers());
    },
    /** @param {boolean} value */
    setDisabled(value) {
      for (const { box, mark } of rows) {
        box.disabled = value;
        mark.disabled = value;
      }
    },
  };
}

/**
 * A picture with places that are pressed, by hand or by keyboard.
 *
 * @param {string} svg
 * @param {[string, string][]} spots letter and words of each place
 * @param {(letter: string) => void} press
 */
export function pressedPicture(svg, spots, press) {
  const frame = make("div", {
    class: "ts-scene",
    role: "group",
    "aria-label": "Picture. Arrow keys walk from place to place, Enter points at one.",
  });
  frame.innerHTML = svg;
  const drawing = /** @type {SVGSVGElement} */ (frame.querySelector("svg"));
  drawing.setAttribute("role", "group");
  const marks = new Map(
    findAll(drawing, "[data-mark]").map((node) => [String(node.dataset.mark), node]),
  );
  const told = new Map(spots);
  for (const [letter, node] of marks) {
    node.setAttribute("role", "button");
    node.setAttribute("tabindex", letter === spots[0][0] ? "0" : "-1");
    node.setAttribute("aria-label", `${letter}: ${told.get(letter) ?? ""}`);
  }
  /** @param {Event} event */
  const meant = (event) =>
    closest(event, "[data-mark]")?.dataset.mark ?? closest(event, "[data-spot]")?.dataset.spot;
  frame.addEventListener("click", (event) => {
    const letter = meant(event);
    if (letter) press(letter);
  });
  for (const [type, on] of /** @type {[string, boolean][]} */ ([
    ["pointerover", true],
    ["focusin", true],
    ["pointerout", false],
    ["focusout", false],
  ])) {
    frame.addEventListener(type, (event) => {
      const letter = meant(event);
      if (letter) light(letter, on);
    });
  }
  /**
   * @param {string} letter
   * @param {boolean} on
   */
  function light(letter, on) {
    for (const node of findAll(drawing, `[data-spot="${letter}"]`)) {
      node.classList.toggle("tss-near", on);
    }
  }
  frame.addEventListener("keydown", (event) => {
    const from = closest(event, "[data-mark]")?.dataset.mark;
    if (!from) return;
    if (event.key === "Enter" || event.key === " ") press(from);
    else {
      const places = [...marks].map(([key, node]) => {
        const ring = /** @type {SVGCircleElement} */ (node.querySelector(".tss-dot"));
        return { key, x: ring.cx.baseVal.value, y: ring.cy.baseVal.value };
      });
      const to = walk(places, from, event.key);
      if (to === undefined) return;
      marks.get(from)?.setAttribute("tabindex", "-1");
      marks.get(to)?.setAttribute("tabindex", "0");
      marks.get(to)?.focus();
    }
    event.preventDefault();
  });
  return {
    element: frame,
    drawing,
    /** @param {Iterable<string>} letters those that are part of an answer */
    choose(letters) {
      const chosen = new Set(letters);
      for (const [letter, node] of marks) {
        node.classList.toggle("tss-chosen", chosen.has(letter));
        node.setAttribute("aria-pressed", String(chosen.has(letter)));
      }
      for (const node of findAll(drawing, "[data-spot]")) {
        node.classList.toggle("tss-on", chosen.has(String(node.dataset.spot)));
      }
    },
  };
}
