// The simulated bench: a list of steps, the step in hand with its decisions, and the bench.

function renderWholeBuild({ model, el }) {
  const plan = model.get("plan");
  const press = (text, action, label) =>
    make("button", { type: "button", class: "ts-button", onclick: action, "aria-label": label ?? text }, text);
  const finding = make("p", { class: "ts-finding" });
  const told = make("div", { class: "ts-happened ts-told", role: "status", tabindex: "-1", "aria-label": "What happened" });
  const stage = make("select", { class: "ts-box ts-stage-choice", "aria-label": "Stage", onchange: () => paintSteps() },
    ...plan.stages.map(([id, name]) => make("option", { value: id }, name)));
  const next = press(plan.marked ? "Next open step" : "Next ready step", () => take("next"));
  next.classList.add("ts-next");
  const steps = make("div", {
    class: "ts-buildlist", role: "toolbar", "aria-orientation": "vertical", "aria-label": "Steps of this stage",
    onkeydown: (event) => walk(event),
  });
  const keys = make("p", { class: "ts-hint" },
    "Keys: up and down walk through the steps, left and right change the stage, Enter takes a step in hand; Enter again does it.");
  const hand = make("div", {
    class: "ts-hand", role: "group", "aria-label": "Step in hand",
    onkeydown: (event) => {
      if (event.key !== "Enter" || !event.target.matches("input[type=radio], .ts-number-box")) return;
      event.preventDefault();
      if (model.get("hand").stands) goOn();
      else doIt();
    },
  });
  const figure = make("div", { class: "ts-scroll ts-fit" });
  const facts = make("dl", { class: "ts-facts" });
  const wrong = make("ul", { class: "ts-sentences" });
  const wrongHead = make("p", { class: "ts-prompt" }, "Wrong so far");
  const outChoice = make("select", { class: "ts-box ts-before", "aria-label": "A step that stands" });
  const out = press("Take out again", () => { if (outChoice.value) send({ type: "out", step: outChoice.value }, "hand"); });
  const over = press("Put the tools down", () => send({ type: "over" }, "told"));
  over.classList.add("ts-over");
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
    make("div", { class: "ts-build" },
      make("div", { class: "ts-build-left" }, make("div", { class: "ts-tools" }, stage, next), steps, keys),
      hand),
    make("div", { class: "ts-tools" }, make("span", { class: "ts-pair" }, outChoice, out), over),
    figure, facts, wrongHead, wrong, details);

  let turn = 0;
  let focusAt = null; // where the keyboard goes once the answer is here
  function send(message, focus = null) {
    turn += 1;
    focusAt = focus && { turn, focus };
    el.setAttribute("aria-busy", "true");
    screen.send({ ...message, turn });
  }

  // ---- the steps of a stage
  let listed = "";
  let row = null; // the step of the list at which the keyboard comes in
  let route = "next"; // how the last step was taken in hand: from the list, or as the next one
  const stepsOf = (id) => (plan.stages.find(([one]) => one === id) ?? plan.stages[0])[2];
  const isOpen = (step) => !model.get("view").done.includes(step);
  const rowNode = () => steps.querySelector(`[data-step="${row}"]`);
  function take(from, step) {
    route = from;
    send(from === "list" ? { type: "take", step } : { type: "next" }, "hand");
  }
  function turnTo(step) { // shows a step in the list, whichever stage it belongs to
    stage.value = plan.stages.find(([, , mine]) => mine.includes(step))[0];
    row = step;
    paintSteps();
    rowNode()?.focus();
  }
  function walk(event) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const mine = stepsOf(stage.value);
    const at = mine.indexOf(row);
    const sideways = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    let to = null;
    if (sideways) {
      const all = plan.stages.map(([id]) => id);
      const there = stepsOf(all[(all.indexOf(stage.value) + sideways + all.length) % all.length]);
      to = there.find(isOpen) ?? there[0];
    } else if (event.key === "ArrowDown") to = mine[Math.min(at + 1, mine.length - 1)];
    else if (event.key === "ArrowUp") to = mine[Math.max(at - 1, 0)];
    else if (event.key === "Home") to = mine[0];
    else if (event.key === "End") to = mine.at(-1);
    else if (event.key.length === 1 && event.key !== " ") {
      const letter = event.key.toLowerCase();
      to = [...mine.slice(at + 1), ...mine.slice(0, at + 1)].find((step) => plan.labels[step].toLowerCase().startsWith(letter));
    }
    if (!to) return;
    event.preventDefault();
    turnTo(to);
  }
  // Where hands go on once a step is done with: to the next one as it was taken, or to the tools.
  function onwards() {
    const every = plan.stages.flatMap(([, , mine]) => mine);
    if (!every.some(isOpen)) { over.focus(); return; }
    if (route === "next") { next.focus(); return; }
    const mine = stepsOf(stage.value);
    const at = mine.indexOf(row);
    const after = [...mine.slice(at + 1), ...mine.slice(0, at + 1)].find(isOpen);
    const last = every.indexOf(mine.at(-1));
    turnTo(after ?? [...every.slice(last + 1), ...every].find(isOpen));
  }
  function goOn() {
    if (route === "next" && model.get("view").done.length < Object.keys(plan.labels).length) take("next");
    else onwards();
  }
  function paintSteps() {
    const view = model.get("view");
    const mine = stepsOf(stage.value);
    if (!mine.includes(row)) row = mine.find(isOpen) ?? mine[0];
    const words = mine.map((step) => view.done.includes(step) ? ["✓", "done"] : view.ready.includes(step) ? ["▸", "ready"] : ["○", plan.marked ? "open" : "waits"]);
    const inHand = model.get("hand").step;
    const now = JSON.stringify([stage.value, words, inHand]);
    if (now === listed) {
      for (const node of steps.children) node.tabIndex = node.dataset.step === row ? 0 : -1;
      return;
    }
    listed = now;
    const held = steps.contains(document.activeElement) ? document.activeElement.dataset.step : null;
    steps.replaceChildren(...mine.map((step, k) => make("button", {
      type: "button", class: `ts-button ts-buildstep ts-buildstep-${words[k][1]}`, "data-step": step, tabindex: step === row ? "0" : "-1",
      "aria-current": step === inHand ? "step" : false, "aria-label": `${plan.labels[step]}: ${words[k][1]}`,
      onclick: () => { row = step; take("list", step); },
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
    let sent = 0; // what is shown here is newer than answers to earlier messages
    const control = CONTROLS[field.kind](field, ids, (value) => {
      send({ type: "set", name: field.name, value });
      sent = turn;
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
      show(state, at) {
        if (at < sent) return;
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
    hand.dataset.stands = String(Boolean(now.stands));
    views = new Map((now.fields ?? []).map((field) => [field.name, askView(field)]));
    if (!now.step) {
      hand.replaceChildren(make("p", { class: "ts-hint" }, "No step in hand. Choose one from the list, or press the button above it."));
      return;
    }
    const done = press(`Do it: ${now.label}`, doIt);
    done.classList.add("ts-do");
    hand.replaceChildren(...[
      make("p", { class: "ts-prompt ts-hand-name", tabindex: "-1" }, now.label),
      ...now.plain.map((text) => make("p", { class: "ts-hint" }, text)),
      ...now.cautions.map((text) => make("p", { class: "ts-caution" }, make("b", {}, "Take care: "), text)),
      now.read.length ? make("p", { class: "ts-prompt" }, "Read at the bench") : null,
      now.read.length ? rows(now.read) : null,
      now.card.length ? rows(now.card) : null,
      ...[...views.values()].map((view) => view.element),
      now.stands
        ? make("div", { class: "ts-tools" }, press("Go on", goOn), press("Take it out again", () => send({ type: "out", step: now.step }, "hand")))
        : make("div", { class: "ts-tools" }, done),
    ].filter(Boolean));
    const home = plan.stages.find(([, , mine]) => mine.includes(now.step));
    if (home) [stage.value, row] = [home[0], now.step];
  }
  function doIt() {
    for (const view of views.values()) view.flush();
    send({ type: "do" }, "after");
  }
  function firstControl() {
    const asked = model.get("view").asked_back;
    const inside = (place) => hand.querySelector(["input:not(:disabled)", "select", "button"].map((one) => `${place} ${one}`).join());
    return (asked && inside(`[data-field="${asked}"]`)) || hand.querySelector(".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");
  }

  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    status.textContent = view.status;
    status.hidden = !view.status;
    const words = view.told.map((text) => make("p", {}, text));
    if (told.textContent !== view.told.join("")) told.replaceChildren(...words);
    paintHand();
    paintSteps();
    for (const [name, one] of views) one.show(view.states[name], view.turn);
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
    el.setAttribute("aria-busy", String(view.turn < turn));
    if (focusAt && view.turn >= focusAt.turn) {
      const { focus } = focusAt;
      focusAt = null;
      if (focus === "told") told.focus();
      else if (focus === "after" && !model.get("hand").step) onwards();
      else (firstControl() ?? next).focus();
    }
  }
  model.on("change:view", show);
  show();
  return () => { screen.close(); model.off("change:view", show); };
}
