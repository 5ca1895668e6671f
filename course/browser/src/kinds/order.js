// Steps in an order.

import { registerKind } from "../kinds.js";
import { completed } from "../logic/ordering.js";
import { orderList } from "../parts/orderlist.js";

registerKind("order", {
  prompt: "words",
  status: "above",
  blank: "not answered yet; the steps stand as they were given",
  make(field, _ids, commit) {
    /** @type {string[]} */
    const keys = field.steps.map((/** @type {[string, string]} */ [key]) => key);
    const list = orderList({
      label: field.prompt,
      steps: field.steps,
      order: keys,
      onChange: commit,
    });
    return {
      element: list.element,
      show: (state) => list.setOrder(completed(state.value, keys)),
      setDisabled: list.setDisabled,
      refused() {},
    };
  },
});
