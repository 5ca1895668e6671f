// Thread and friction chooser: set a thread, its state, a torque and a tool; see the clamp band.

function renderThread({ model, el }) {
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const band = make("div", { class: "tsj-band" });
  const section = make("div", { class: "tsj-section" });
  const facts = make("dl", { class: "ts-facts" });
  let awaited = null; // the choice whose answer is on its way
  let waiting = null; // what was chosen since: a slider moves faster than answers come
  const choose = (name, value) => {
    waiting = { ...waiting, [name]: value };
    if (awaited === null) sendNext();
  };
  function sendNext() {
    awaited = freshId("choice");
    screen.send({ type: "choose", chosen: waiting, turn: awaited });
    waiting = null;
  }
  const grid = make("div", { class: "tsj-settings" });
  const row = (words, control, after) => {
    const id = freshId("set");
    control.id = id;
    grid.append(make("label", { for: id }, words), make("span", { class: "tsj-slide" }, control, after));
    return control;
  };
  const select = (name, words, options) => row(words, make("select", { class: "ts-box", onchange: (event) => choose(name, event.target.value) },
    ...options.map((one) => Array.isArray(one) ? make("option", { value: one[0] }, one[1]) : make("option", { value: one }, one))));
  const slide = (name, words, figure) => row(words,
    make("input", { type: "range", oninput: (event) => choose(name, Number(event.target.value)) }), figure);

  const boxes = {
    group: select("group", "Bolt of the unit", plan.groups),
    thread: select("thread", "Thread", plan.threads),
    strength: select("strength", "Strength class", plan.classes),
    state: select("state", "State of the thread", plan.states),
    tool: select("tool", "Tool", plan.tools),
  };
  const torqueFigure = make("output", { class: "tsj-figure" });
  const torque = slide("torque_nm", "Torque", torqueFigure);
  const engagementFigure = make("output", { class: "tsj-figure" });
  const engagement = slide("engagement_mm", "Thread that meets", engagementFigure);

  const screen = openScreen({ model, el }, {
    kind: "rig",
    lost() { for (const node of el.querySelectorAll("button, input, select")) node.disabled = true; },
  });
  screen.show(
    make("p", { class: "ts-who" }, "Practice. Nothing here is marked or saved."),
    screen.alert, finding, band,
    make("div", { class: "tsj-bench" }, grid, section), facts);

  const setRange = (range, low, high, step, value, words) => {
    Object.assign(range, { min: low, max: high, step });
    if (awaited === null) range.value = value; // never under a moving hand
    range.setAttribute("aria-valuetext", words);
  };
  function show() {
    const view = model.get("view");
    if (awaited !== null && view.turn !== awaited) return;
    awaited = null;
    if (waiting !== null) sendNext();
    const { chosen } = view;
    finding.textContent = view.finding;
    band.innerHTML = view.band;
    section.innerHTML = view.section;
    facts.replaceChildren(...view.facts.flatMap(([word, text]) => [make("dt", {}, word), make("dd", {}, text)]));
    for (const [name, box] of Object.entries(boxes)) box.value = chosen[name];
    setRange(torque, 1, view.topTorque, 0.5, chosen.torque_nm, view.torqueText);
    torqueFigure.textContent = view.torqueText;
    setRange(engagement, view.lowEngagement, view.topEngagement, 0.5, chosen.engagement_mm, view.engagementText);
    engagementFigure.textContent = view.engagementText;
  }
  model.on("change:view", show);
  show();
  return () => { screen.close(); model.off("change:view", show); };
}
