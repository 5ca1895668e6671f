// A table of checks. On a narrow screen its rows become blocks and every cell says what it is; the
// roles keep it a table for screen readers all the same.

import { make } from "../page/dom.js";

const NUMBER = "tsk-number";

/**
 * A cell.
 *
 * @param {string} label what it holds; empty for one that needs no saying
 * @param {boolean} number
 * @param {...(Node | string)} inside
 */
export function boardCell(label, number, ...inside) {
  const attributes = { class: number ? NUMBER : null, "data-label": label || null, role: "cell" };
  return make("td", attributes, ...inside);
}

/**
 * The table.
 *
 * @param {string} caption
 * @param {readonly [text: string, number?: boolean][]} heads
 * @param {HTMLElement} body
 */
export function boardTable(caption, heads, body) {
  const head = heads.map(([text, number]) =>
    make("th", { scope: "col", role: "columnheader", class: number ? NUMBER : null }, text),
  );
  const rows = make("thead", { role: "rowgroup" }, make("tr", { role: "row" }, ...head));
  const table = make(
    "table",
    { class: "tsk-board", role: "table" },
    make("caption", {}, caption),
    rows,
    body,
  );
  return make("div", { class: "ts-scroll" }, table);
}
