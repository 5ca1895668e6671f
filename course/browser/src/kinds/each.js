// One answer for each line of a list, out of the same few.

import { registerKind } from "../kinds.js";
import { answersOf, entriesOf } from "../logic/each.js";
import { choiceBox, make } from "../page/dom.js";

registerKind("each", {
  prompt: "legend",
  make(field, ids, commit) {
    /** @type {[string, string][]} */
    const lines = field.lines;
    /** @type {[string, string][]} */
    const options = field.options;
    const rows = lines.map(([key, text], at) => {
      const id = `${ids.control}-${at}`;
      const words = make("label", { class: "ts-each-line", for: id }, text);
      const box = choiceBox({ id }, [["", "choose"], ...options]);
      return { key, box, row: make("li", {}, words, box) };
    });
    for (const { box } of rows) {
      box.addEventListener("change", () => {
        commit(entriesOf(rows.map(({ key, box }) => [key, box.value])));
      });
    }
    return {
      element: make("ol", { class: "ts-each" }, ...rows.map(({ row }) => row)),
      show(state) {
        const answers = answersOf(state.value);
        for (const { key, box } of rows) box.value = answers.get(key) ?? "";
      },
      setDisabled(value) {
        for (const { box } of rows) box.disabled = value;
      },
      refused() {},
    };
  },
});
