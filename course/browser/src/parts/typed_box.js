// A box that is typed in: it sends on leaving it, on Enter and on saving, and never takes away what
// is still being typed.

import { make } from "../page/dom.js";

/**
 * Makes the box, and what a control of an answer needs of it.
 *
 * @param {import("../types.js").Ids} ids
 * @param {object} how
 * @param {(text: string) => void} how.send takes what was typed
 * @param {(changed: boolean, typed: string) => void} how.typing hears whether something is typed and
 *   not sent yet, and what
 * @param {(value: unknown) => string} [how.said] what stands in the box for a stored value
 * @param {(state: import("../types.js").Answer) => boolean} [how.wrong] whether what could not be
 *   read stands in this box: of several boxes of one answer, each knows its own
 */
export function typedBox(
  ids,
  { send, typing, said = (value) => String(value ?? ""), wrong = (state) => Boolean(state.error) },
) {
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
  /** @type {string | null} */
  let sent = ""; // null when what was sent was refused
  const pending = () => sent === null || box.value.trim() !== sent.trim();
  const flush = () => {
    if (!pending()) return;
    sent = box.value;
    send(box.value);
  };
  box.addEventListener("blur", flush);
  box.addEventListener("keydown", (event) => {
    const saving = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s";
    if (event.key !== "Enter" && !saving) return;
    event.preventDefault();
    flush();
  });
  box.addEventListener("input", () => typing(pending(), box.value));
  return {
    box,
    flush,
    pending,
    refused() {
      sent = null;
    },
    /** @param {import("../types.js").Answer} state */
    show(state) {
      box.setAttribute("aria-invalid", String(wrong(state)));
      if (document.activeElement === box && box.value !== sent) return; // still being typed
      sent = said(state.value);
      box.value = sent;
    },
  };
}
