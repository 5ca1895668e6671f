// Options to tick, of which one or several may be chosen.

/** @import { Control, Field, Ids } from "../types.js" */

import { make } from "../page/dom.js";

/**
 * The options of a field.
 *
 * @param {Field} field
 * @param {Ids} ids
 * @param {"radio" | "checkbox"} type
 * @param {(keys: string[]) => void} choose
 * @returns {Control}
 */
export function optionList(field, ids, type, choose) {
  /** @type {[string, string][]} */
  const options = field.options;
  const inputs = options.map(([key, text]) => {
    const input = make("input", { type, name: ids.control, value: key });
    return {
      key,
      input,
      row: make("label", { class: "ts-option" }, input, make("span", {}, text)),
    };
  });
  for (const { input } of inputs) {
    input.addEventListener("change", () => {
      choose(inputs.filter((one) => one.input.checked).map(({ key }) => key));
    });
  }
  return {
    element: make("div", { class: "ts-options" }, ...inputs.map(({ row }) => row)),
    show(state) {
      const value = state.value == null ? [] : [state.value].flat();
      for (const { key, input } of inputs) input.checked = value.includes(key);
    },
    setDisabled(value) {
      for (const { input } of inputs) input.disabled = value;
    },
    refused() {},
  };
}
