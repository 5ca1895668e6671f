// The form of one task: every field with its prompt, its control and its saved state.
// The kernel keeps the answers; this shows them and sends what was typed.

const PATIENCE_MS = 5000;
function clock(iso) {
  const time = new Date(iso);
  if (Number.isNaN(time.getTime())) return "";
  const two = (number) => String(number).padStart(2, "0");
  const hours = `${two(time.getHours())}:${two(time.getMinutes())}`;
  const day = `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
  return new Date().toDateString() === time.toDateString() ? hours : `${day} ${hours}`;
}

function numberControl(field, ids, commit, typing) {
  const box = make("input", {
    type: "text", class: "ts-box ts-number-box", id: ids.control, inputmode: "text",
    autocomplete: "off", spellcheck: "false", maxlength: "80", "aria-describedby": `${ids.hint} ${ids.read} ${ids.status}`,
  });
  const hint = make("span", { class: "ts-hint", id: ids.hint },
    field.units.length ? `Number and unit, as ${field.example}` : `A number, as ${field.example}`);
  const unit = make("select", { class: "ts-box", "aria-label": "Choose the unit" },
    make("option", { value: "" }, "unit"), ...field.units.map((name) => make("option", { value: name }, name)));
  let sent = "";
  const send = () => {
    if (sent !== null && box.value.trim() === sent.trim()) return;
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
    const [whole, number, rest] = box.value.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u);
    // A rest with figures in it is more than a unit: nothing of it is thrown away.
    box.value = `${(/\d/.test(rest) ? whole : number).trim()} ${unit.value}`.trim();
    if (/\d/.test(box.value)) send();
    else box.focus();
  });
  box.addEventListener("input", () => { unit.value = ""; });
  box.addEventListener("input", () => typing(sent === null || box.value.trim() !== sent.trim()));
  return {
    element: make("div", { class: "ts-line-of" }, box, field.units.length ? unit : null, hint),
    show(state) {
      box.setAttribute("aria-invalid", String(Boolean(state.error)));
      if (document.activeElement === box && box.value !== sent) return; // still being typed
      sent = state.value == null ? "" : String(state.value);
      box.value = sent;
    },
    setDisabled(value) { box.disabled = unit.disabled = value; },
    refused() { sent = null; },
    flush: send,
    pending: () => sent === null || box.value.trim() !== sent.trim(),
  };
}

function optionControl(field, ids, commit, kind) {
  const inputs = field.options.map(([key, text]) => {
    const input = make("input", { type: kind, name: ids.control, value: key, "aria-describedby": ids.status });
    return { key, input, row: make("label", { class: "ts-option" }, input, make("span", {}, text)) };
  });
  const chosen = () => inputs.filter(({ input }) => input.checked).map(({ key }) => key);
  for (const { input } of inputs) {
    input.addEventListener("change", () => commit(kind === "radio" ? chosen()[0] : chosen()));
  }
  return {
    element: make("div", { class: "ts-options" }, ...inputs.map(({ row }) => row)),
    show(state) {
      const value = state.value == null ? [] : [].concat(state.value);
      for (const { key, input } of inputs) input.checked = value.includes(key);
    },
    setDisabled(value) { for (const { input } of inputs) input.disabled = value; },
    refused() {},
  };
}

function orderControl(field, ids, commit) {
  const keys = field.steps.map(([key]) => key);
  const list = orderList({ label: field.prompt, steps: field.steps, order: keys, onChange: commit });
  return {
    element: list.element,
    show(state) {
      const given = [...new Set([].concat(state.value ?? []))].filter((key) => keys.includes(key));
      list.setOrder([...given, ...keys.filter((key) => !given.includes(key))]);
    },
    setDisabled: (value) => list.setDisabled(value),
    refused() {},
  };
}

const CONTROLS = {
  number: numberControl,
  choice: (field, ids, commit) => optionControl(field, ids, commit, "radio"),
  choices: (field, ids, commit) => optionControl(field, ids, commit, "checkbox"),
  order: orderControl,
  path: pathControl,
  film: filmControl,
};

function fieldView(field, send) {
  const stem = freshId(field.kind);
  const ids = { control: `${stem}-control`, hint: `${stem}-hint`, read: `${stem}-read`, status: `${stem}-status` };
  const read = make("p", { class: "ts-read", id: ids.read });
  const status = make("p", { class: "ts-status", id: ids.status, role: "status" });
  let turn = 0;
  let waiting = null;
  let state = {};
  const control = CONTROLS[field.kind](field, ids, (value) => {
    turn += 1;
    tell("wait", "saving");
    clearTimeout(waiting);
    waiting = setTimeout(
      () => tell("wait", "not saved yet: the notebook is busy; your answer is sent and waits its turn"), PATIENCE_MS);
    send({ type: "save", name: field.name, value, turn });
  }, (changed) => {
    if (changed) tell("wait", "not saved yet: press Enter or leave the box");
    else if (waiting === null) show(state);
  });
  const whole = ["choice", "choices"].includes(field.kind)
    ? make("fieldset", { class: "ts-field", "aria-describedby": ids.status }, make("legend", { class: "ts-prompt" }, field.prompt))
    : make("div", { class: "ts-field" },
        field.kind === "number"
          ? make("label", { class: "ts-prompt", for: ids.control }, field.prompt)
          : make("p", { class: "ts-prompt" }, field.prompt));
  if (field.kind === "order") whole.append(status, control.element, read);
  else whole.append(control.element, read, status);

  function tell(kind, text) {
    const shape = { saved: "●", bad: "▲", wait: "◌", none: "○" }[kind];
    status.className = `ts-status ts-status-${kind}`;
    if (status.dataset.text === text) return;
    status.dataset.text = text;
    status.replaceChildren(make("span", { class: "ts-shape", "aria-hidden": "true" }, shape), ` ${text}`);
  }
  function show(next, keepStatus = false) {
    state = next ?? {};
    control.show(state);
    read.replaceChildren();
    read.className = "ts-read";
    if (state.error) {
      read.classList.add("ts-error");
      read.append(make("span", { class: "ts-shape", "aria-hidden": "true" }, "▲"), make("b", {}, "Look again: "), state.error);
    } else if (state.read) read.append(`read as ${state.read}`);
    if (keepStatus) return;
    if (state.saved && !state.blank) tell("saved", `saved ${clock(state.saved)}${state.note ? `; ${state.note}` : ""}`);
    else tell("none", field.kind === "order" ? "not answered yet; the steps stand as they were given" : "not answered yet");
  }
  return {
    name: field.name,
    element: whole,
    show(next) {
      if (waiting !== null) return; // what is shown here is newer than what the kernel knows
      show(next, status.classList.contains("ts-status-bad"));
    },
    saved(message) {
      if (message.turn !== turn) return; // a later change is on its way
      clearTimeout(waiting);
      waiting = null;
      show(message.state);
    },
    refused(message) {
      if (message.turn !== turn) return;
      clearTimeout(waiting);
      waiting = null;
      control.refused();
      tell("bad", `not saved: ${message.reason}`);
    },
    lost() {
      clearTimeout(waiting);
      if (waiting !== null || control.pending?.()) tell("bad", "not saved: the notebook's engine has stopped");
      control.setDisabled(true);
    },
    flush: () => control.flush?.(),
    setDisabled: (value) => control.setDisabled(value),
    summary: () => ({ answered: Boolean(state.saved) && !state.blank, trouble: status.classList.contains("ts-status-bad"), waiting: waiting !== null }),
  };
}

function renderForm({ model, el }) {
  const views = model.get("fields").map((field) => fieldView(field, send));
  const byName = new Map(views.map((view) => [view.name, view]));
  const header = make("p", { class: "ts-who" });
  const total = make("p", { class: "ts-total" });
  const screen = openScreen({ model, el }, {
    kind: "form",
    lost() {
      for (const view of views) view.lost();
      bench.lost();
      sumUp();
    },
  });
  const bench = benchPanel(model, (message) => screen.send(message), () => {
    el.dispatchEvent(new CustomEvent("twoshaft-redraw", { bubbles: true }));
  });
  screen.show(
    make("div", { class: "ts-top" }, header, total), screen.alert,
    bench.element, ...views.map((view) => view.element));

  function send(message) {
    screen.send(message);
    sumUp();
  }
  function sumUp() {
    const all = views.map((view) => view.summary());
    const answered = all.filter((one) => one.answered).length;
    const trouble = all.filter((one) => one.trouble).length;
    const waiting = all.some((one) => one.waiting);
    total.textContent = `${answered} of ${views.length} answered` +
      (trouble ? `, ${trouble} not saved` : waiting ? ", saving" : answered ? ", all saved" : "");
  }
  function showAll() {
    header.textContent = model.get("header");
    const states = model.get("states");
    for (const view of views) view.show(states[view.name]);
    sumUp();
  }
  function hear(message) {
    if (message.type === "saved") byName.get(message.name)?.saved(message);
    if (message.type === "refused") byName.get(message.name)?.refused(message);
    sumUp();
  }

  let asked = 0;
  const look = () => { // another window may have saved since
    if (document.visibilityState === "hidden") for (const view of views) view.flush();
    if (document.visibilityState !== "visible" || Date.now() - asked < 2000) return;
    asked = Date.now();
    model.send({ type: "look" });
  };
  document.addEventListener("visibilitychange", look);
  el.addEventListener("focusin", (event) => { if (!el.contains(event.relatedTarget)) look(); });
  model.on("change:states change:header", showAll);
  model.on("msg:custom", hear);
  model.on("msg:custom", bench.hear);
  model.on("change:bench", bench.show);
  showAll();
  bench.show();
  screen.alert.textContent = model.get("notice");
  return () => {
    screen.close();
    document.removeEventListener("visibilitychange", look);
    model.off("change:states change:header", showAll);
    model.off("msg:custom", hear);
    model.off("msg:custom", bench.hear);
    model.off("change:bench", bench.show);
  };
}
