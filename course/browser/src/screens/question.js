// A question of a lesson: answer, give it, and be told at once. Nothing here is marked, so nothing is
// sent before the learner gives it.

/** @import { Field, Render } from "../types.js" */

import { idsOf, kindOf, promptBox } from "../kinds.js";
import { ticketBox } from "../logic/ticket.js";
import { button, factRows, findAll, make, shape } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

const SIGNS = { right: "●", other: "◆", unread: "▲" };

/** @typedef {{ how: keyof typeof SIGNS, said: string, why: string }} Told */

/**
 * One question.
 *
 * @param {Field} field
 */
function questionView(field) {
  const ids = idsOf(field);
  const told = make("p", { class: "ts-told", id: ids.status, role: "status" });
  /** @type {any} */
  let value = null;
  const control = kindOf(field).make(
    field,
    ids,
    (given) => {
      value = given;
      control.show({ value });
      tell(undefined);
    },
    (changed, typed) => {
      if (changed) value = typed;
    },
  );
  const element = promptBox(field, ids, ids.status);
  element.append(control.element, told);
  /** @param {Told | undefined} said */
  function tell(said) {
    told.className = said ? `ts-told ts-told-${said.how}` : "ts-told";
    const parts = said ? [shape(SIGNS[said.how]), make("b", {}, said.said), ` ${said.why}`] : [];
    told.replaceChildren(...parts);
  }
  return {
    name: field.name,
    element,
    value() {
      control.flush?.();
      return value;
    },
    /**
     * @param {any} stored
     * @param {Told | undefined} said
     */
    show(stored, said) {
      if (stored !== undefined) {
        value = stored;
        control.show({ value, saved: "given" });
      }
      tell(said);
    },
    /** @param {boolean} still */
    still(still) {
      control.setDisabled(still);
      element.classList.toggle("ts-given", still);
    },
  };
}

/** @type {Render} */
export function renderQuestion({ model, el }) {
  const screen = openScreen({ model, el }, { kind: "form" });
  el.classList.add("ts-question");
  const title = make("p", { class: "ts-title", role: "heading", "aria-level": "3" });
  const lead = make("p", { class: "ts-lead" });
  const facts = make("dl", { class: "ts-facts" });
  const list = make("div", { class: "ts-asked" });
  const give = button(model.get("give"), () => {
    const values = Object.fromEntries(views.map((view) => [view.name, view.value()]));
    screen.send({ type: "give", values });
  });
  give.classList.add("ts-first");
  const fresh = button("", () => screen.send({ type: "fresh" }));
  const all = model.get("all")
    ? button(model.get("all"), () => screen.send({ type: "all" }), {
        class: "ts-button ts-teacher",
      })
    : null;
  screen.show(
    screen.alert,
    title,
    lead,
    facts,
    list,
    make("p", { class: "ts-acts" }, give, fresh, all),
  );
  /** @type {ReturnType<typeof questionView>[]} */
  let views = [];

  const show = () => {
    const values = model.get("values");
    /** @type {Record<string, Told>} */
    const told = model.get("told");
    for (const view of views) {
      view.show(values[view.name], told[view.name]);
      view.still(told[view.name] !== undefined && told[view.name].how !== "unread");
    }
    const open = views.some(({ name }) => !told[name] || told[name].how === "unread");
    const held = document.activeElement === give;
    give.hidden = !open;
    fresh.textContent = model.get("fresh");
    fresh.hidden = open || !model.get("fresh");
    screen.alert.textContent = model.get("notice");
    if (!held || open) return;
    // The button has gone under the finger: go on at what it brought.
    const first = findAll(el, ".ts-told")[0];
    first.tabIndex = -1;
    first.focus({ preventScroll: true });
  };
  // Where the button was that brought it, there is now something to answer, or the next button.
  const focusFirst = () => {
    const first = findAll(list, "input, select, [tabindex]")[0] ?? (fresh.hidden ? give : fresh);
    first.focus({ preventScroll: true });
  };
  const ask = () => {
    views = /** @type {Field[]} */ (model.get("fields")).map(questionView);
    list.replaceChildren(...views.map(({ element }) => element));
    title.textContent = model.get("title");
    title.hidden = !title.textContent;
    lead.textContent = model.get("lead");
    lead.hidden = !lead.textContent;
    facts.replaceChildren(...factRows(model.get("facts")));
    facts.hidden = !facts.childElementCount;
    show();
  };
  screen.follow("change:turn", () => {
    const held = el.contains(document.activeElement);
    ask();
    if (held) focusFirst();
  });
  screen.follow("change:told change:values change:notice change:fresh", show);
  ask();
  const place = model.get("place");
  if (place) {
    const me = ticketBox(sessionStorage, localStorage, place).get();
    model.send({ type: "who", id: me?.id ?? "", ticket: me?.ticket ?? "" });
  }
  return () => screen.close();
}
