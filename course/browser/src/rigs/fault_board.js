// Fault board: choose what each check showed; the kernel says what explains it and what is next.

/** @import { Render } from "../types.js" */

import { itemsOf, make, optionsOf } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { boardCell, boardTable } from "../parts/board_table.js";

/** @type {Render} */
export function renderFaultBoard({ model, el }) {
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const spent = make("p", { class: "tsk-spent" });
  const left = make("ul", { class: "ts-sentences tsk-left" });
  const more = make("p", { class: "tsk-more" });
  const body = make("tbody", { role: "rowgroup" });
  const rows = new Map();
  for (const [id, name, minutes, shows] of plan.checks) {
    const box = make(
      "select",
      {
        class: "ts-box",
        "aria-label": `What it showed: ${name}`,
        onchange: () => screen.send({ type: "observe", check: id, shown: box.value }),
      },
      make("option", { value: "" }, "Not made"),
      ...optionsOf(shows),
    );
    const tells = boardCell("worth, bit", true);
    const rate = boardCell("bit a minute", true);
    const row = make(
      "tr",
      { role: "row" },
      make("th", { scope: "row", role: "rowheader" }, name),
      boardCell("min", true, `${minutes}`),
      boardCell("it showed", false, box),
      tells,
      rate,
    );
    rows.set(id, { box, tells, rate, row });
    body.append(row);
  }
  const clear = make(
    "button",
    { class: "ts-button", type: "button", onclick: () => screen.send({ type: "clear" }) },
    "Take all observations back",
  );
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("Which fault is it, and which check comes next?", {
      first: rows.values().next().value?.box,
      begin: "say what a check showed",
    }),
    screen.alert,
    finding,
    left,
    more,
    boardTable(
      "Checks: what each showed, and what it is still worth",
      [["Check"], ["min", true], ["It showed"], ["worth, bit", true], ["bit a minute", true]],
      body,
    ),
    make("div", { class: "ts-tools" }, clear, spent),
  );

  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    spent.textContent = view.spent;
    more.textContent = view.more;
    left.replaceChildren(
      ...itemsOf(
        view.left.map((/** @type {[string, string]} */ [words, share]) => `${words} (${share})`),
      ),
    );
    /** @type {[string, string, string][]} */
    const ranked = view.ranked;
    const told = new Map(ranked.map(([id, bits, rate], rank) => [id, { bits, rate, rank }]));
    for (const [id, { box, tells, rate, row }] of rows) {
      const made = view.observed[id];
      const one = told.get(id);
      box.value = made ?? "";
      tells.textContent = one ? one.bits : made !== undefined ? "made" : "nothing";
      rate.textContent = one ? one.rate + (one.rank === 0 ? " ◀ best next" : "") : "–";
      row.classList.toggle("tsk-best", one?.rank === 0);
    }
  }
  screen.follow("change:view", show);
  show();
  return screen.close;
}
