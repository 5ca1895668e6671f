// A table of checks. On a narrow screen its rows become blocks and every cell says what it is; the
// roles keep it a table for screen readers all the same.

function boardCell(label, number, ...inside) {
  return make("td", { class: number ? "tsk-number" : null, "data-label": label || null, role: "cell" }, ...inside);
}

function boardTable(caption, heads, body) {
  const head = heads.map(([text, number]) =>
    make("th", { scope: "col", role: "columnheader", class: number ? "tsk-number" : null }, text));
  return make("div", { class: "ts-scroll" }, make("table", { class: "tsk-board", role: "table" },
    make("caption", {}, caption),
    make("thead", { role: "rowgroup" }, make("tr", { role: "row" }, ...head)), body));
}
