// Build simulator: step through an order and watch the bench.

function renderSimulator({ model, el }) {
  const finding = make("p", { class: "ts-finding" });
  const happened = make("p", { class: "ts-happened", role: "status" });
  const next = make("p", { class: "ts-hint" });
  const figure = make("div", { class: "ts-scroll ts-fit", tabindex: "0", role: "region", "aria-label": "The unit by stages" });
  const facts = make("dl", { class: "ts-facts" });
  const ready = make("div", { class: "ts-ready" });
  const waiting = make("select", { class: "ts-box ts-before", "aria-label": "A step that is not ready" });
  const place = make("input", {
    type: "text", inputmode: "numeric", size: "3", class: "ts-box", "aria-label": "Go to place",
    onkeydown: (event) => { if (event.key === "Enter") jump(); },
  });
  const of = make("span");
  const press = (text, action, label) =>
    make("button", { type: "button", class: "ts-button", onclick: action, "aria-label": label ?? text }, text);
  const move = (by) => screen.send({ type: "move", by });
  const go = (position) => screen.send({ type: "go", position });
  const back = press("Back", () => move(-1), "One step back");
  const forth = press("Next", () => move(1), "Next step");
  const first = press("Start", () => go(0), "Start with an empty bench");
  const last = press("End", () => go(model.get("view").count), "End of the order");
  const tryIt = press("Try it", () => screen.send({ type: "take", step: waiting.value }), "Try it: the step chosen here");
  const jump = () => {
    const wanted = Number.parseInt(place.value, 10);
    if (wanted >= 0) go(wanted);
  };
  const controls = make("div", { class: "ts-tools", role: "group", "aria-label": "Step through the order; left and right arrows step too" },
    first, back, forth, last,
    make("span", { class: "ts-pair" }, "place ", place, of, press("Go", jump, "Go to this place")));
  controls.addEventListener("keydown", (event) => {
    if (event.target === place || event.ctrlKey || event.metaKey || event.altKey) return;
    const act = {
      ArrowLeft: () => move(-1), ArrowRight: () => move(1), Home: () => go(0), End: () => go(model.get("view").count),
    }[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  });
  const screen = openScreen({ model, el }, {
    kind: "rig",
    lost() { for (const node of el.querySelectorAll("button, input, select")) node.disabled = true; },
  });
  screen.show(
    make("p", { class: "ts-who" }, "Practice. Nothing here is marked or saved."),
    screen.alert, finding, controls, happened, next, figure, facts,
    make("p", { class: "ts-prompt" }, "Do another step next"),
    ready,
    make("div", { class: "ts-tools" }, make("span", { class: "ts-pair" }, "or one that is not ready: ", waiting, tryIt)));

  let shown = "";
  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    happened.textContent = view.happened;
    next.textContent = view.next ? `Next in this order: ${view.next}` : "This is the end of the order.";
    if (shown !== view.figure) figure.innerHTML = shown = view.figure;
    facts.replaceChildren(...view.facts.flatMap(([word, text]) => [make("dt", {}, word), make("dd", {}, text)]));
    const held = ready.contains(document.activeElement);
    ready.replaceChildren(...view.ready.map(([step, label]) => press(label, () => screen.send({ type: "take", step }))));
    if (!view.ready.length) ready.append(make("p", { class: "ts-hint" }, "No step is ready."));
    if (held) (ready.querySelector("button") ?? forth).focus();
    waiting.replaceChildren(...view.waiting.map(([step, label]) => make("option", { value: step }, label)));
    waiting.disabled = tryIt.disabled = !view.waiting.length;
    place.value = String(view.position);
    of.textContent = ` of ${view.count} `;
    for (const [node, off] of [[back, view.position === 0], [first, view.position === 0], [forth, view.position === view.count], [last, view.position === view.count]]) {
      node.setAttribute("aria-disabled", String(off));
      node.classList.toggle("ts-off", off);
    }
  }
  model.on("change:view", show);
  show();
  return () => { screen.close(); model.off("change:view", show); };
}
