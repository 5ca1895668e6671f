// "Use readings from the bench": figures of one's own in the place of the drawn ones.
// Closed by default; every box is saved when it is left, and nothing is used until all are there.

/** @import { Message, Model } from "../types.js" */

import { button, freshId, make, optionsOf, shape } from "../page/dom.js";

/**
 * The panel.
 *
 * @typedef {{
 *   name: string, prompt: string, hint: string, text: string, read: string, error: string,
 *   origin: string, options: [string, string][],
 * }} Row
 * @typedef {{
 *   rows?: Row[], used: boolean, wanted: boolean, stale: boolean, refused: string,
 * }} State
 *
 * @param {Model} model
 * @param {(message: Message) => void} send
 * @param {() => void} redraw has the tables of the task drawn again
 */
export function benchPanel(model, send, redraw) {
  /** @returns {State} */
  const state = () => model.get("bench") ?? {};
  const box = make("details", { class: "ts-bench" });
  const entries = state().rows;
  if (!entries) return { element: null, show() {}, hear() {}, lost() {} };

  const title = make("span", {});
  const say = make("p", { class: "ts-status", role: "status" });
  const use = button("Use these figures", () => choose("yes"));
  const back = button("Go back to the drawn figures", () => choose("no"));
  let turning = false; // the tables are drawn again once the kernel has kept the choice

  const rows = entries.map((row) => {
    const stem = freshId("bench");
    const input = row.options.length
      ? make(
          "select",
          { class: "ts-box", id: stem, "aria-describedby": `${stem}-read` },
          make("option", { value: "" }, "choose"),
          ...optionsOf(row.options),
        )
      : make("input", {
          type: "text",
          class: "ts-box ts-number-box",
          id: stem,
          autocomplete: "off",
          spellcheck: "false",
          maxlength: "80",
          "aria-describedby": `${stem}-hint ${stem}-read`,
        });
    const hint = make("span", { class: "ts-hint", id: `${stem}-hint` }, row.hint);
    const read = make("p", { class: "ts-read", id: `${stem}-read` });
    let sent = row.text;
    const flush = () => {
      if (input.value.trim() === sent.trim()) return;
      sent = input.value;
      send({ type: "bench", name: row.name, value: input.value });
    };
    input.addEventListener(row.options.length ? "change" : "blur", flush);
    input.addEventListener("keydown", (/** @type {any} */ event) => {
      if (event.key !== "Enter") return;
      event.preventDefault();
      flush();
    });
    return {
      name: row.name,
      flush,
      input,
      element: make(
        "div",
        { class: "ts-bench-row" },
        make("label", { for: stem }, row.prompt),
        make("div", { class: "ts-line-of" }, input, hint),
        read,
      ),
      /** @param {Row | undefined} next */
      show(next) {
        if (!next) return;
        if (document.activeElement !== input || input.value === sent) {
          input.value = next.text;
          sent = next.text;
        }
        input.setAttribute("aria-invalid", String(Boolean(next.error)));
        read.classList.toggle("ts-error", Boolean(next.error));
        const sign = next.error ? [shape("▲"), " "] : [];
        const echo = next.read && !next.options.length && `read as ${next.read}`;
        const text = next.error || [echo, next.origin].filter(Boolean).join(", ");
        read.replaceChildren(...sign, text);
      },
    };
  });

  /** @param {"yes" | "no"} value */
  const choose = (value) => {
    for (const row of rows) row.flush();
    turning = true;
    send({ type: "bench", name: "in-use", value });
  };
  box.append(
    make("summary", {}, title),
    make(
      "p",
      {},
      "Give what you read on the real unit, and the limits from the maker's manual. They are used in place " +
        "of the drawn figures in this task, all of them or none. Your answers are marked on them by the same rules.",
    ),
    make("div", { class: "ts-bench-rows" }, ...rows.map((row) => row.element)),
    say,
    make("div", { class: "ts-tools" }, use, back),
  );

  function show() {
    const now = state();
    const byName = new Map(now.rows?.map((row) => [row.name, row]));
    for (const row of rows) row.show(byName.get(row.name));
    title.textContent = now.used
      ? "✓ This task uses figures from the bench"
      : "Use readings from the bench";
    back.hidden = !now.wanted;
    use.hidden = now.used && !now.stale;
    const sign = now.wanted && !now.used ? "▲ " : now.used ? "● " : "○ ";
    const words = now.used
      ? "in use"
      : now.wanted
        ? `not used; the drawn figures stand. ${now.refused}`
        : "not used; the drawn figures stand";
    const stale = now.stale
      ? ` The tables and choices of this task are still the ones from before. ${now.used ? "Press the button" : "Open the notebook again"} to have them drawn anew, then answer.`
      : "";
    say.textContent = `${sign}${words}${stale}`;
    if (now.wanted && !now.used) box.open = true;
  }
  return {
    element: box,
    show,
    /** @param {any} message */
    hear(message) {
      if (message.type !== "bench-saved" || message.name !== "in-use" || !turning) return;
      turning = false;
      if (state().stale) redraw();
    },
    lost() {
      for (const control of [use, back, ...rows.map((row) => row.input)]) control.disabled = true;
    },
  };
}
