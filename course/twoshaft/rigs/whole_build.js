// The simulated bench: a list of steps, the step in hand with its decisions, and the bench.

function renderWholeBuild({ model, el }) {
  const plan = model.get("plan");
  const press = (text, action, label) =>
    make("button", { type: "button", class: "ts-button", onclick: action, "aria-label": label ?? text }, text);
  const finding = make("p", { class: "ts-finding" });
  const told = make("div", { class: "ts-happened ts-told", role: "status", tabindex: "-1", "aria-label": "What happened" });
  const stage = make("select", { class: "ts-box ts-stage-choice", "aria-label": "Stage", onchange: () => paintSteps() },
    ...plan.stages.map(([id, name]) => make("option", { value: id }, name)));
  const next = press(plan.marked ? "Next open step" : "Next ready step", () => send({ type: "next" }, "hand"));
  const steps = make("div", { class: "ts-steps", role: "group", "aria-label": "Steps of this stage" });
  const hand = make("div", { class: "ts-hand", role: "group", "aria-label": "Step in hand" });
  const figure = make("div", { class: "ts-scroll ts-fit" });
  const facts = make("dl", { class: "ts-facts" });
  const wrong = make("ul", { class: "ts-sentences" });
  const wrongHead = make("p", { class: "ts-prompt" }, "Wrong so far");
  const outChoice = make("select", { class: "ts-box ts-before", "aria-label": "A step that stands" });
  const out = press("Take out again", () => { if (outChoice.value) send({ type: "out", step: outChoice.value }, "hand"); });
  const over = press("Put the tools down", () => send({ type: "over" }, "told"));
  const record = make("div", {});
  const status = make("p", { class: "ts-status" });
  const details = make("details", { ontoggle: () => {
    if (details.open !== Boolean(model.get("view").record)) send({ type: "record", open: details.open });
  } }, make("summary", {}, "Build record"), record);
  const screen = openScreen({ model, el }, {
    kind: "rig",
    lost() { for (const node of el.querySelectorAll("button, input, select")) node.disabled = true; },
  });
  screen.show(
    make("p", { class: "ts-who" }, plan.who), screen.alert, finding, status, told,
    make("div", { class: "ts-bench" },
      make("div", { class: "ts-bench-steps" }, make("div", { class: "ts-tools" }, stage, next), steps),
      hand),
    make("div", { class: "ts-tools" }, make("span", { class: "ts-pair" }, outChoice, out), over),
    figure, facts, wrongHead, wrong, details);

  let turn = 0;
  let focusAt = null; // where the keyboard goes once the answer is here
  function send(message, focus = null) {
    turn += 1;
    focusAt = focus && { turn, focus };
    screen.send({ ...message, turn });
  }

  // ---- the steps of a stage
  let listed = "";
  function paintSteps() {
    const view = model.get("view");
    const [, , mine] = plan.stages.find(([id]) => id === stage.value) ?? plan.stages[0];
    const words = mine.map((step) => view.done.includes(step) ? ["✓", "done"] : view.ready.includes(step) ? ["▸", "ready"] : ["○", plan.marked ? "open" : "waits"]);
    const inHand = model.get("hand").step;
    const now = JSON.stringify([stage.value, words, inHand]);
    if (now === listed) return;
    listed = now;
    const held = steps.contains(document.activeElement) ? document.activeElement.dataset.step : null;
    steps.replaceChildren(...mine.map((step, k) => make("button", {
      type: "button", class: `ts-button ts-step ts-step-${words[k][1]}`, "data-step": step,
      "aria-current": step === inHand ? "step" : false, "aria-label": `${plan.labels[step]}: ${words[k][1]}`,
      onclick: () => send({ type: "take", step }, "hand"),
    }, make("span", { class: "ts-shape", "aria-hidden": "true" }, words[k][0]), plan.labels[step])));
    if (held) steps.querySelector(`[data-step="${held}"]`)?.focus();
  }

  // ---- the step in hand
  let shownHand = "";
  let views = new Map();
  function askView(field) {
    const stem = freshId("ask");
    const ids = { control: `${stem}-c`, hint: `${stem}-h`, read: `${stem}-r`, status: `${stem}-s` };
    const read = make("p", { class: "ts-read", id: ids.read, role: "status" });
    let typed = null;
    const control = CONTROLS[field.kind](field, ids, (value) => {
      typed = value;
      send({ type: "set", name: field.name, value });
    }, () => {});
    const choice = field.kind === "choice";
    const whole = choice
      ? make("fieldset", { class: "ts-field" }, make("legend", { class: "ts-prompt" }, field.prompt))
      : make("div", { class: "ts-field" }, field.kind === "number"
        ? make("label", { class: "ts-prompt", for: ids.control }, field.prompt)
        : make("p", { class: "ts-prompt" }, field.prompt));
    whole.append(control.element, read);
    whole.dataset.field = field.name;
    return {
      element: whole,
      flush: () => control.flush?.(),
      show(state) {
        control.show(state ?? {});
        read.textContent = state?.error ? `▲ Look again: ${state.error}` : state?.read ? `read as ${state.read}` : "";
      },
    };
  }
  const rows = (pairs) => make("dl", { class: "ts-facts" }, ...pairs.flatMap(([what, value]) => [make("dt", {}, what), make("dd", {}, value)]));
  function paintHand() {
    const now = model.get("hand");
    const key = JSON.stringify(now);
    if (key === shownHand) return;
    shownHand = key;
    views = new Map((now.fields ?? []).map((field) => [field.name, askView(field)]));
    if (!now.step) {
      hand.replaceChildren(make("p", { class: "ts-hint" }, "No step in hand. Choose one from the list, or press the button above it."));
      return;
    }
    const doIt = press(`Do it: ${now.label}`, () => {
      for (const view of views.values()) view.flush();
      send({ type: "do" }, "after");
    });
    doIt.classList.add("ts-do");
    hand.replaceChildren(...[
      make("p", { class: "ts-prompt ts-hand-name", tabindex: "-1" }, now.label),
      ...now.plain.map((text) => make("p", { class: "ts-hint" }, text)),
      ...now.cautions.map((text) => make("p", { class: "ts-caution" }, make("b", {}, "Take care: "), text)),
      now.read.length ? make("p", { class: "ts-prompt" }, "Read at the bench") : null,
      now.read.length ? rows(now.read) : null,
      now.card.length ? rows(now.card) : null,
      ...[...views.values()].map((view) => view.element),
      now.stands
        ? make("div", { class: "ts-tools" }, press("Go on", () => send({ type: "next" }, "hand")), press("Take it out again", () => send({ type: "out", step: now.step }, "hand")))
        : make("div", { class: "ts-tools" }, doIt),
    ].filter(Boolean));
    const home = plan.stages.find(([, , mine]) => mine.includes(now.step));
    if (home && stage.value !== home[0]) stage.value = home[0];
  }
  const firstControl = () => hand.querySelector(".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");

  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    status.textContent = view.status;
    status.hidden = !view.status;
    const words = view.told.map((text) => make("p", {}, text));
    if (told.textContent !== view.told.join("")) told.replaceChildren(...words);
    paintHand();
    paintSteps();
    for (const [name, one] of views) one.show(view.states[name]);
    if (figure.dataset.shown !== view.figure) { figure.innerHTML = view.figure; figure.dataset.shown = view.figure; }
    facts.replaceChildren(...view.facts.flatMap(([word, text]) => [make("dt", {}, word), make("dd", {}, text)]));
    wrong.replaceChildren(...view.faults.map(([, text]) => make("li", {}, text)));
    wrongHead.hidden = wrong.hidden = !view.faults.length;
    if (outChoice.dataset.done !== view.done.join(" ")) { // the last one done comes first
      outChoice.dataset.done = view.done.join(" ");
      outChoice.replaceChildren(...[...view.done].reverse().map((step) => make("option", { value: step }, plan.labels[step])));
    }
    outChoice.disabled = out.disabled = !view.done.length;
    record.innerHTML = view.record;
    details.open = Boolean(view.record);
    el.dataset.turn = String(view.turn);
    if (focusAt && view.turn >= focusAt.turn) {
      const { focus } = focusAt;
      focusAt = null;
      if (focus === "told") told.focus();
      else if (focus === "after" && !model.get("hand").step) next.focus();
      else (firstControl() ?? next).focus();
    }
  }
  model.on("change:view", show);
  show();
  return () => { screen.close(); model.off("change:view", show); };
}
