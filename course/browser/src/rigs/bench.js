// Practice bench: the order list with what each place brings about.

/** @import { Render } from "../types.js" */

import { beside, freshId, make } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { orderList } from "../parts/orderlist.js";
import { photographs } from "../parts/photographs.js";

/** @type {Render} */
export function renderBench({ model, el }) {
  const screen = openScreen({ model, el }, { kind: "rig", lost: () => list.setDisabled(true) });
  const finding = make("p", { class: "ts-finding", role: "status" });
  const cost = make("p", { class: "ts-cost" });
  const own = photographs(model);
  const start = model.get("start");
  /** @type {Record<string, string[]>} */
  const work = model.get("work"); // operations of each step
  /** @type {string | null} */
  let awaited = null; // the order whose judgement is on its way
  /** @param {string[]} order */
  const send = (order) => {
    awaited = freshId("order");
    screen.send({ type: "order", order, turn: awaited });
  };
  const list = orderList({
    label: "Order of work, practice",
    steps: model.get("steps"),
    order: model.get("judged").order,
    onChange: send,
    onChoose: (keys) =>
      own.show(
        "operation",
        keys.flatMap((key) => work[key] ?? []),
      ),
  });
  const reset = make(
    "button",
    {
      type: "button",
      class: "ts-button",
      onclick: () => list.change([...start], "The first order stands again"),
    },
    "Start again",
  );
  list.tools.append(reset);
  screen.show(
    screen.asks("Which steps stand in a wrong place?", {
      first: list.tools,
      begin: "choose a step and move it up or down",
    }),
    screen.alert,
    beside([list.element], [finding, cost, own.node], "list"),
  );
  function show() {
    const judged = model.get("judged");
    if (awaited !== null && judged.turn !== awaited) return;
    awaited = null;
    finding.textContent = judged.finding;
    cost.textContent = judged.cost;
    list.setOrder(judged.order);
    list.setNotes(judged.notes);
  }
  screen.follow("change:judged", show);
  show();
  return () => {
    own.close();
    screen.close();
  };
}
