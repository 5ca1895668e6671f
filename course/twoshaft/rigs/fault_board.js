// Fault board: choose what each check showed; the kernel says what explains it and what is next.

function renderFaultBoard({ model, el }) {
  const plan = model.get("plan");
  const finding = make("p", { class: "ts-finding", role: "status" });
  const spent = make("p", { class: "tsk-spent" });
  const left = make("ul", { class: "ts-sentences tsk-left" });
  const more = make("p", { class: "tsk-more" });
  const body = make("tbody");
  const rows = new Map();
  for (const [id, name, minutes, shows] of plan.checks) {
    const box = make("select", { class: "ts-box", "aria-label": `What it showed: ${name}`,
      onchange: () => screen.send({ type: "observe", check: id, shown: box.value }) },
      make("option", { value: "" }, "Not made"),
      ...shows.map(([key, words]) => make("option", { value: key }, words)));
    const tells = make("td", { class: "tsk-number" });
    const rate = make("td", { class: "tsk-number" });
    const row = make("tr", {}, make("th", { scope: "row" }, name),
      make("td", { class: "tsk-number" }, `${minutes}`), make("td", {}, box), tells, rate);
    rows.set(id, { box, tells, rate, row });
    body.append(row);
  }
  const clear = make("button", { class: "ts-button", type: "button",
    onclick: () => screen.send({ type: "clear" }) }, "Take all observations back");
  const screen = openScreen({ model, el }, {
    kind: "rig",
    lost() { for (const node of el.querySelectorAll("button, select")) node.disabled = true; },
  });
  const head = (text, number) => make("th", { scope: "col", class: number ? "tsk-number" : null }, text);
  screen.show(
    make("p", { class: "ts-who" }, "Practice. Nothing here is marked or saved."),
    screen.alert, finding, left, more,
    make("div", { class: "ts-scroll" }, make("table", { class: "tsk-board" },
      make("caption", {}, "Checks: what each showed, and what it can still tell"),
      make("thead", {}, make("tr", {}, head("Check"), head("min", true), head("It showed"),
        head("would tell, bit", true), head("bit a minute", true))), body)),
    spent, clear);

  function show() {
    const view = model.get("view");
    finding.textContent = view.finding;
    spent.textContent = view.spent;
    more.textContent = view.more;
    left.replaceChildren(...view.left.map(([words, share]) => make("li", {}, `${words} (${share})`)));
    const told = new Map(view.ranked.map(([id, bits, rate], rank) => [id, { bits, rate, rank }]));
    for (const [id, { box, tells, rate, row }] of rows) {
      const made = view.observed[id];
      const one = told.get(id);
      box.value = made ?? "";
      tells.textContent = made !== undefined ? "made" : one ? one.bits : "nothing";
      rate.textContent = one ? (one.rate + (one.rank === 0 ? " ◀ best next" : "")) : "–";
      row.classList.toggle("tsk-best", one?.rank === 0);
    }
  }
  model.on("change:view", show);
  show();
  return () => { screen.close(); model.off("change:view", show); };
}
