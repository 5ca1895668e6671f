// The learner's own unit: make a check, read what it shows.

/** @import { Render } from "../types.js" */

import { make } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { boardCell, boardTable } from "../parts/board_table.js";

/** @type {Render} */
export function renderOwnChecks({ model, el }) {
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const body = make("tbody", { role: "rowgroup" });
  const rows = new Map();
  for (const [id, name, minutes] of plan.checks) {
    const button = make(
      "button",
      {
        class: "ts-button",
        type: "button",
        "aria-label": `Make: ${name}`,
        onclick: () => {
          if (button.getAttribute("aria-disabled") !== "true")
            screen.send({ type: "make", check: id });
        },
      },
      "Make",
    );
    const shown = boardCell("it shows", false);
    shown.classList.add("tsk-shown");
    rows.set(id, { button, shown });
    body.append(
      make(
        "tr",
        { role: "row" },
        make("th", { scope: "row", role: "rowheader" }, name),
        boardCell("min", true, `${minutes}`),
        boardCell("", false, button),
        shown,
      ),
    );
  }
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("What does each check show on your unit?", {
      first: rows.values().next().value?.button,
      begin: "make a check",
      who: "Checks are not saved; make them again after reopening.",
    }),
    screen.alert,
    finding,
    boardTable("Checks of your unit", [["Check"], ["min", true], ["Do"], ["It shows"]], body),
  );

  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    for (const [id, { button, shown }] of rows) {
      const made = view.shown[id];
      // Kept in the tab order: the hand that made the check stays where it was.
      button.setAttribute("aria-disabled", made ? "true" : "false");
      button.classList.toggle("ts-off", Boolean(made));
      button.textContent = made ? "Made" : "Make";
      shown.textContent = made ? `${made[0] ? "✓" : "✗"} ${made[1]}` : "";
      shown.classList.toggle("tsk-failed", Boolean(made) && !made[0]);
    }
  }
  screen.follow("change:view", show);
  show();
  return screen.close;
}
