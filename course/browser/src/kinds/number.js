// A number with its unit, typed as people write it.

import { registerKind } from "../kinds.js";
import { make } from "../page/dom.js";
import { typedBox } from "../parts/typed_box.js";
import { unitChooser } from "../parts/unit_chooser.js";

registerKind("number", {
  prompt: "label",
  make(field, ids, commit, typing) {
    /** @type {string[]} */
    const units = field.units;
    const { box, flush, pending, refused, show } = typedBox(ids, { send: commit, typing });
    const hint = make("span", { class: "ts-hint", id: ids.hint }, field.hint);
    const chooser = units.length ? unitChooser(box, units, flush, ids.prompt) : null;
    return {
      element: make("div", { class: "ts-line-of" }, box, chooser, hint),
      show,
      setDisabled(value) {
        box.disabled = value;
        if (chooser) chooser.disabled = value;
      },
      refused,
      flush,
      pending,
    };
  },
});
