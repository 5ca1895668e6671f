// One of several pictures, for each thing that is asked.

import { registerKind } from "../kinds.js";
import { make } from "../page/dom.js";
import { pointedRows } from "../parts/pointed.js";

registerKind("picture", {
  prompt: "legend",
  make(field, ids, commit) {
    /** @type {[string, string][]} */
    const options = field.options;
    const rows = pointedRows(field, ids, commit, (answers) => {
      const chosen = new Set(answers.values());
      for (const { letter, card } of cards) card.classList.toggle("ts-on", chosen.has(letter));
    });
    const cards = options.map(([letter, text]) => {
      const card = make("div", { class: "ts-picture-card", onclick: () => rows.press(letter) });
      card.innerHTML = field.svgs[letter];
      const drawing = card.querySelector("svg");
      drawing?.setAttribute("aria-label", text);
      card.prepend(make("span", { class: "ts-picture-letter" }, letter));
      return { letter, card };
    });
    const grid = make("div", { class: "ts-pictures" }, ...cards.map(({ card }) => card));
    return {
      element: make("div", { class: "ts-pictured" }, rows.element, grid),
      show: rows.show,
      setDisabled: rows.setDisabled,
      refused() {},
    };
  },
});
