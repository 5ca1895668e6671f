// A place in a picture, for each thing that is asked.

import { registerKind } from "../kinds.js";
import { make } from "../page/dom.js";
import { pointedRows, pressedPicture } from "../parts/pointed.js";

registerKind("point", {
  prompt: "legend",
  make(field, ids, commit) {
    const rows = pointedRows(field, ids, commit, (answers) => picture.choose(answers.values()));
    /** @type {[string, string][]} */
    const options = field.options;
    /** @type {[string, string][]} */
    const spots = options.map(([letter, text]) => [letter, text.slice(letter.length + 2)]);
    const picture = pressedPicture(field.svg, spots, rows.press);
    return {
      element: make("div", {}, rows.element, picture.element),
      show: rows.show,
      setDisabled: rows.setDisabled,
      refused() {},
    };
  },
});
