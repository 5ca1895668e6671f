// A number with its unit, typed as people write it.

import { registerKind } from "../kinds.js";
import { withUnit } from "../logic/numbers.js";
import { choiceBox, make } from "../page/dom.js";

registerKind("number", {
  prompt: "label",
  make(field, ids, commit, typing) {
    /** @type {string[]} */
    const units = field.units;
    const box = make("input", {
      type: "text",
      class: "ts-box ts-number-box",
      id: ids.control,
      inputmode: "text",
      autocomplete: "off",
      spellcheck: "false",
      maxlength: "80",
      "aria-describedby": `${ids.hint} ${ids.read} ${ids.status}`,
    });
    const hint = make("span", { class: "ts-hint", id: ids.hint }, field.hint);
    const unit = choiceBox({ "aria-label": "Choose the unit" }, [
      ["", "unit"],
      ...units.map((name) => /** @type {const} */ ([name, name])),
    ]);
    /** @type {string | null} */
    let sent = ""; // null when what was sent was refused
    const pending = () => sent === null || box.value.trim() !== sent.trim();
    const send = () => {
      if (!pending()) return;
      sent = box.value;
      commit(box.value);
    };
    box.addEventListener("blur", send);
    box.addEventListener("keydown", (event) => {
      const saving = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s";
      if (event.key !== "Enter" && !saving) return;
      event.preventDefault();
      send();
    });
    unit.addEventListener("change", () => {
      if (!unit.value) return;
      box.value = withUnit(box.value, unit.value);
      if (/\d/.test(box.value)) send();
      else box.focus();
    });
    box.addEventListener("input", () => {
      unit.value = "";
      typing(pending());
    });
    return {
      element: make("div", { class: "ts-line-of" }, box, units.length ? unit : null, hint),
      show(state) {
        box.setAttribute("aria-invalid", String(Boolean(state.error)));
        if (document.activeElement === box && box.value !== sent) return; // still being typed
        sent = state.value == null ? "" : String(state.value);
        box.value = sent;
      },
      setDisabled(value) {
        box.disabled = unit.disabled = value;
      },
      refused() {
        sent = null;
      },
      flush: send,
      pending,
    };
  },
});
