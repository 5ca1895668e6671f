// Hazard picture: go from place to place, say what is seen, judge it, and be told.

/** @import { Render } from "../types.js" */

import { beside, draw, find, make, withOrder } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/** @type {Render} */
export function renderHazards({ model, el }) {
  const finding = make("p", { class: "ts-finding", role: "status" });
  const picture = make("div", { class: "tsh-picture" });
  const head = make("p", { class: "tsh-head" });
  const seen = make("p", { class: "tsh-seen" });
  const told = make("div", { class: "tsh-told" });
  const box = make("div", { class: "tsh-box", role: "status" }, head, seen, told);
  /** @type {[string, string][]} */
  let places = [];
  /** @type {SVGElement[]} */
  let groups = [];
  /** @type {string | null} */
  let chosen = null;
  const lookingOnly = model.get("plan").lookingOnly;
  /**
   * @param {"stop" | "well"} verdict
   * @param {string} text
   */
  const judge = (verdict, text) =>
    make(
      "button",
      {
        type: "button",
        class: "ts-button",
        "data-verdict": verdict,
        "aria-pressed": "false",
        onclick: () => screen.send({ type: "judge", place: chosen, verdict }),
      },
      text,
    );
  const verdicts = lookingOnly ? [] : [judge("stop", "Stop here"), judge("well", "Fine as it is")];
  const next = make(
    "button",
    { type: "button", class: "ts-button", onclick: () => screen.send({ type: "next" }) },
    "Another day",
  );
  const tools = make(
    "div",
    { class: "ts-tools", role: "group", "aria-label": "Your judgement of the place" },
    ...verdicts,
  );
  if (model.get("plan").more) tools.append(next);

  const keys = make(
    "p",
    { class: "ts-keys" },
    lookingOnly
      ? "Choose a place to read what can be seen there. Keys: arrows go from place to place."
      : "Choose a place, read what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the buttons.",
  );
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks(
      lookingOnly ? "What is to be seen at each place?" : "Where can somebody get hurt?",
      {
        first: lookingOnly ? picture : verdicts[0],
        begin: lookingOnly ? "choose a place" : "choose a place and judge it",
        who: lookingOnly ? "Nothing is saved here; your answers stand in the form." : undefined,
      },
    ),
    screen.alert,
    // Where nothing is judged, the task has said it: the place looked at is to stay in sight.
    lookingOnly ? null : finding,
    lookingOnly ? null : keys,
    beside([picture], [box, !lookingOnly && tools], "widest"),
    lookingOnly ? keys : null,
  );

  /**
   * @param {string} place
   * @param {boolean} focus
   */
  function choose(place, focus) {
    const fresh = place !== chosen;
    chosen = place;
    for (const [i, group] of groups.entries()) {
      const here = places[i][0] === place;
      group.setAttribute("tabindex", here ? "0" : "-1");
      group.setAttribute("aria-pressed", String(here));
      group.classList.toggle("tsh-chosen", here);
      if (here && focus) {
        group.focus({ preventScroll: true });
        bringIn(group);
      }
    }
    if (fresh) screen.send({ type: "choose", place });
  }
  // In a narrow window the picture scrolls sideways; the chosen place is brought into sight.
  /** @param {Element} group */
  function bringIn(group) {
    const place = find(group, ".tsh-hit").getBoundingClientRect();
    const frame = picture.getBoundingClientRect();
    if (place.left < frame.left || place.right > frame.right) {
      picture.scrollLeft += place.left - frame.left - (frame.width - place.width) / 2;
    }
    if (place.bottom < 0 || place.bottom > innerHeight || place.top < 0)
      group.scrollIntoView({ block: "nearest" });
  }
  function drawPlaces() {
    const plan = model.get("plan");
    places = plan.places;
    picture.innerHTML = plan.drawing;
    find(picture, "svg").setAttribute("role", "group");
    groups = places.map(([place]) => find(picture, `[data-place="${place}"]`));
    groups.forEach((group, i) => {
      group.setAttribute("role", "button");
      group.setAttribute("aria-label", `${i + 1} ${places[i][1]}`);
      group.addEventListener("click", () => choose(places[i][0], true));
    });
    chosen = String(model.get("view").chosen);
    choose(chosen, false);
  }
  picture.addEventListener("keydown", (event) => {
    if (withOrder(event)) return;
    const here = places.findIndex(([place]) => place === chosen);
    const across = Math.min(6, places.length);
    let to = here;
    if (event.key === "ArrowRight") to = here + 1;
    else if (event.key === "ArrowLeft") to = here - 1;
    else if (event.key === "ArrowDown") to = here + across;
    else if (event.key === "ArrowUp") to = here - across;
    else if (event.key === "Home") to = 0;
    else if (event.key === "End") to = places.length - 1;
    else if (event.key !== "Enter" && event.key !== " ") return;
    event.preventDefault();
    if (to >= 0 && to < places.length) choose(places[to][0], true);
  });
  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    const i = places.findIndex(([place]) => place === view.chosen);
    head.textContent = `${i + 1}  ${places[i][1]}`;
    seen.textContent = view.seen;
    const { verdict, ...rest } = view.told;
    told.replaceChildren();
    if (verdict) {
      const mine = view.judged[view.chosen];
      const agrees = (mine === "stop") === (verdict === "Stop here.");
      const said = mine === "stop" ? "Stop here" : "Fine as it is";
      told.append(
        make(
          "p",
          { class: "tsh-verdict" },
          agrees ? `✓ Yes: ${verdict}` : `✗ You said “${said}”. The course says: ${verdict}`,
        ),
        make(
          "dl",
          { class: "ts-facts" },
          ...Object.entries(rest).flatMap(([name, text]) => [
            make("dt", {}, name),
            make("dd", {}, text),
          ]),
        ),
      );
    }
    for (const button of verdicts)
      button.setAttribute(
        "aria-pressed",
        String(view.judged[view.chosen] === button.dataset.verdict),
      );
    for (const [k, group] of groups.entries()) {
      const mine = view.judged[places[k][0]];
      group.setAttribute(
        "aria-label",
        `${k + 1} ${places[k][1]}${mine ? `, judged: ${mine === "stop" ? "stop here" : "fine as it is"}` : ""}`,
      );
      let tag = group.querySelector(".tsh-tag");
      if (!mine) {
        tag?.remove();
        continue;
      }
      if (!tag) {
        const where = { x: 80, y: 190, "text-anchor": "middle" };
        tag = draw("text", { class: "tsf-t tsh-tag", ...where });
        group.append(tag);
      }
      tag.textContent = mine === "stop" ? "■ stop" : "○ well";
    }
    el.dataset.turn = view.chosen;
  }
  const redraw = () => {
    drawPlaces();
    show();
  };
  screen.follow("change:plan", redraw);
  screen.follow("change:view", show);
  redraw();
  return screen.close;
}
