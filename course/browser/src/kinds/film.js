// What is laid on a face: passes of sealant and of the cloth.

import { registerKind } from "../kinds.js";
import { filmPad } from "../parts/filmpad.js";

registerKind("film", {
  prompt: "words",
  make(field, _ids, commit) {
    /** @type {string[]} */
    let entries = [];
    /** @param {string[]} next */
    const change = (next) => {
      entries = next;
      pad.show(entries);
      commit(entries);
    };
    const pad = filmPad({
      face: field.face,
      label: `${field.prompt}: ${field.face.name}, seen from the side that is coated`,
      onLay: (more) => change([...entries, ...more]),
      onRemove: (at) => change(entries.filter((_, i) => i !== at)),
      onClear: () => change([]),
    });
    return {
      element: pad.element,
      show(state) {
        entries = [state.value ?? []].flat().filter((one) => typeof one === "string");
        pad.show(entries);
      },
      setDisabled: pad.setDisabled,
      refused() {},
    };
  },
});
