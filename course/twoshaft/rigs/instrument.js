// The frame of every measuring instrument: picture, controls, finding, and one question at a time.

// build(about, change) returns { picture, controls, set(shown) }.
function openInstrument({ model, el }, build) {
  const about = model.get("about");
  let state = model.get("shown").state;
  const asks = latestOnly((wanted, turn) => screen.send({ type: "set", state: wanted, turn }));
  const change = (part) => { state = { ...state, ...part }; asks.ask(state); };
  const screen = openScreen({ model, el }, {
    kind: "rig",
    lost() { for (const node of el.querySelectorAll("button, input, select")) node.disabled = true; },
  });
  const finding = make("p", { class: "ts-finding", role: "status" });
  const parts = build(about, change, state);
  screen.show(
    make("p", { class: "ts-who" }, about.readingsOnly
      ? "Take your readings here; write them in the form below." : "Practice. Nothing here is marked or saved."),
    screen.alert, make("div", { class: "tsg-wide" }, parts.picture), ...parts.controls, finding);
  function show() {
    const shown = model.get("shown");
    if (!asks.waiting) state = shown.state;
    parts.set(shown, state);
    finding.textContent = shown.finding;
    asks.answered(shown.turn);
  }
  const refused = () => asks.free();
  model.on("change:shown", show);
  model.on("msg:custom", refused);
  show();
  return () => { screen.close(); model.off("change:shown", show); model.off("msg:custom", refused); };
}

const toolButton = (text, action) => make("button", { type: "button", class: "ts-button", onclick: action }, text);
const toolRow = (...nodes) => make("div", { class: "ts-tools" }, ...nodes);
