// A number with its unit, typed as people write it.

import { registerKind } from "../kinds.js";
import { withUnit } from "../logic/numbers.js";
import { choiceBox, make } from "../page/dom.js";
import { typedBox } from "../parts/typed_box.js";

registerKind("number", {
  prompt: "label",
  make(field, ids, commit, typing) {
    /** @type {string[]} */
    const units = field.units;
    const { box, flush, pending, refused, show } = typedBox(ids, { send: commit, typing });
    const hint = make("span", { class: "ts-hint", id: ids.hint }, field.hint);
    const unit = choiceBox({ "aria-label": "Choose the unit" }, [
      ["", "unit"],
      ...units.map((name) => /** @type {const} */ ([name, name])),
    ]);
    unit.addEventListener("change", () => {
      if (!unit.value) return;
      box.value = withUnit(box.value, unit.value);
      if (/\d/.test(box.value)) flush();
      else box.focus();
    });
    box.addEventListener("input", () => {
      unit.value = "";
    });
    return {
      element: make("div", { class: "ts-line-of" }, box, units.length ? unit : null, hint),
      show,
      setDisabled(value) {
        box.disabled = unit.disabled = value;
      },
      refused,
      flush,
      pending,
    };
  },
});
