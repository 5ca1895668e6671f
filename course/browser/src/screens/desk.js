// The desk of staff: a row of pages, the page that is open, and the line that says what was done.
// Its pages come from the kernel as data (twoshaft_grader.desk_pages.parts); none is known here.

/** @import { Render } from "../types.js" */

import { sorted, textOf } from "../logic/rows.js";
import { address } from "../page/address.js";
import { button, choiceBox, findAll, freshId, make, shape, there } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { sendFile } from "../parts/file_pieces.js";

/**
 * @typedef {{ text: string, shape: string, act: string, of: string, label: string }} Cell
 * @typedef {{ key: string, cells: (Cell | string)[] }} Row
 * @typedef {{
 *   name: string, label: string, of: string, value: string, options: [string, string][],
 *   hint: string,
 * }} Field
 * @typedef {{ id: string, label: string, first: boolean, sure: string }} Act
 * @typedef {{ kind: "say", text: string, how: string }} Say
 * @typedef {{ kind: "link", text: string, path: string, how: string }} Link
 * @typedef {{
 *   kind: "table", id: string, title: string, columns: string[], rows: Row[], numbers: number[],
 *   pick: boolean, empty: string,
 * }} Table
 * @typedef {{ kind: "form", title: string, fields: Field[], acts: Act[], hint: string }} Form
 * @typedef {Say | Link | Table | Form} Part
 */

const BUSY_MS = 400; // what is done sooner shows no bar

/** @type {Render} */
export function renderDesk({ model, el }) {
  const screen = openScreen({ model, el }, { kind: "desk" });
  const said = make("p", { class: "ts-said", role: "status" });
  const body = make("div", { class: "ts-desk-body" });
  // What is said stands a second time under the button that was pressed, where the eyes are: read
  // aloud it is by the lines at the top alone.
  const here = make("div", { class: "ts-desk-here", "aria-hidden": "true" });
  const bar = make("div", { class: "ts-busy" });
  const nav = make("nav", { "aria-label": "Pages of the desk", class: "ts-desk-pages" });
  const about = model.get("cohort");
  const who = make("input", {
    id: freshId("by"),
    class: "ts-box",
    autocomplete: "off",
    maxlength: "80",
    onchange: () => model.send({ type: "by", name: who.value }),
  });
  who.value = model.get("by");
  screen.show(
    make(
      "div",
      { class: "ts-desk-top" },
      make("b", {}, there([about.name, about.college]).join(", ")),
      make(
        "span",
        { class: "ts-pair" },
        make("label", { for: who.id }, "At the desk (your name, for the trail)"),
        who,
      ),
    ),
    about.invented ? make("p", { class: "ts-hint" }, about.invented) : null,
    nav,
    bar,
    screen.alert,
    said,
    body,
  );

  // What was typed, ticked and put in order stays when the page is drawn anew.
  /** @type {Map<string, string | boolean>} */
  let typed = new Map();
  /** @type {Map<string, Set<string>>} */
  let ticked = new Map();
  /** @type {Map<string, { column: number, down: boolean }>} */
  const orders = new Map();
  /** @type {Map<string, HTMLInputElement>} */
  let fileBoxes = new Map();
  let sending = false;
  let pressed = ""; // the key of the control that was pressed last
  let sure = ""; // the act that asks whether it is meant
  let asked = ""; // what was asked of the kernel and is not answered yet
  let waits = false; // whether what came of a press is still to be shown
  /** @type {(() => void) | null} what was pressed while a page was turned, done afterwards */
  let later = null;

  const tellBusy = () => body.setAttribute("aria-busy", String(isBusy()));
  const isBusy = () => sending || Boolean(asked) || Object.keys(model.get("busy")).length > 0;

  /**
   * @param {string} type
   * @param {Record<string, unknown>} [more]
   */
  const ask = (type, more = {}) => {
    if (isBusy() || screen.isLost()) return;
    if (type !== "look") {
      asked = type;
      said.textContent = "";
      screen.alert.textContent = "";
      sayHere();
      tellBusy();
    }
    model.send({ type, ...more });
  };

  const keyed = () => findAll(el, "[data-key]");
  /** @param {string} key */
  const stands = (key) => keyed().some((node) => node.dataset.key === key);

  /** Where the pressed control stands now; nothing where it has gone. */
  function place() {
    const node = keyed().find((one) => one.dataset.key === pressed);
    return node && body.contains(node) ? node.closest("form, section") : null;
  }

  /** Puts the bar, and what is said, where something was pressed; else both stand at the top. */
  function sayHere() {
    const near = place();
    if (near) near.append(bar, here);
    else {
      nav.after(bar);
      here.remove();
    }
    const [text, trouble] = [said.textContent, screen.alert.textContent];
    here.replaceChildren(
      ...there([
        text && make("p", { class: "ts-told" }, text),
        trouble && make("p", { class: "ts-trouble" }, trouble),
      ]),
    );
    for (const line of [said, screen.alert]) line.classList.toggle("ts-hidden", Boolean(near));
    return near;
  }

  /** Brings what is said into sight. */
  function lookThere() {
    const near = sayHere();
    const top = [screen.alert, said].find((line) => line.textContent);
    const what = near ? (here.childElementCount ? here : null) : top;
    what?.scrollIntoView({ block: "nearest" });
  }

  /** Sends what was chosen; gives the name of a file that can no longer be read, or nothing. */
  async function sendFiles() {
    for (const [field, box] of fileBoxes) {
      const [file] = box.files ?? [];
      try {
        if (file) await sendFile(model, field, file);
      } catch {
        box.value = ""; // the browser will not read it again
        return file.name;
      }
    }
    return "";
  }

  /** @param {string} text */
  function tellTrouble(text) {
    said.textContent = "";
    screen.alert.textContent = text;
    lookThere();
  }

  /**
   * @param {string} act
   * @param {string} key the control that is pressed
   * @param {string} [of]
   */
  async function press(act, key, of = "") {
    if (screen.isLost()) return;
    if (isBusy()) {
      // While something is done a second press is one too many; it may wait for a page.
      if (!waits) later = () => stands(key) && press(act, key, of);
      return;
    }
    pressed = key;
    sure = "";
    waits = true;
    sending = true;
    const unread = await sendFiles();
    sending = false;
    if (unread || isBusy() || screen.isLost()) {
      waits = false;
      if (unread)
        tellTrouble(`${unread} has changed or gone since it was chosen: choose it again.`);
      else if (!screen.isLost()) later = () => stands(key) && press(act, key, of);
      return;
    }
    const marks = [...ticked].map(([id, keys]) => [id, [...keys]]);
    ask("do", {
      page: model.get("page"),
      act,
      of,
      typed: Object.fromEntries(typed),
      ticked: Object.fromEntries(marks),
    });
  }

  /** @param {Field} field */
  function control(field) {
    const { name, of } = field;
    const id = freshId("field");
    const hint = field.hint
      ? make("span", { class: "ts-hint", id: `${id}-hint` }, field.hint)
      : null;
    const common = { id, "data-key": `field:${name}`, "aria-describedby": hint?.id };
    const label = make("label", { for: id }, field.label);
    if (!typed.has(name) && of !== "file")
      typed.set(name, of === "tick" ? field.value === "yes" : field.value);
    if (of === "file") {
      const kept = fileBoxes.get(name);
      const box = kept ?? make("input", { type: "file", class: "ts-file" });
      for (const [key, value] of Object.entries(common)) if (value) box.setAttribute(key, value);
      fileBoxes.set(name, box);
      return make("div", { class: "ts-desk-field" }, label, box, hint);
    }
    if (of === "tick") {
      const box = make("input", { type: "checkbox", ...common });
      box.checked = typed.get(name) === true;
      box.addEventListener("change", () => typed.set(name, box.checked));
      const line = make("label", { class: "ts-option", for: id }, box, field.label);
      return make("div", { class: "ts-desk-field" }, line, hint);
    }
    const box =
      of === "choice"
        ? choiceBox(common, field.options)
        : of === "long"
          ? make("textarea", { class: "ts-box", rows: "3", maxlength: "2000", ...common })
          : make("input", { class: "ts-box", autocomplete: "off", maxlength: "400", ...common });
    box.value = String(typed.get(name) ?? "");
    if (of === "choice" && !field.options.some(([value]) => value === typed.get(name))) {
      box.value = field.options[0]?.[0] ?? ""; // what was chosen is no longer offered
      typed.set(name, box.value);
    }
    box.addEventListener("input", () => typed.set(name, box.value));
    return make("div", { class: "ts-desk-field" }, label, box, hint);
  }

  /** @param {Form} form */
  function formView(form) {
    const title = freshId("form");
    const acts = make("div", { class: "ts-doing" });
    const shown = () => {
      acts.replaceChildren(
        ...form.acts.map((act) =>
          button(act.label, () => (act.sure ? confirm(act) : press(act.id, `act:${act.id}`)), {
            class: act.first ? "ts-button ts-first" : "ts-button",
            "data-key": `act:${act.id}`,
          }),
        ),
      );
    };
    /** @param {Act} act */
    const confirm = (act) => {
      sure = act.id;
      const question = freshId("sure");
      const box = make(
        "div",
        {
          class: "ts-question",
          role: "group",
          tabindex: -1,
          "aria-labelledby": question,
          "data-key": `sure:${act.id}`,
        },
        make("p", { id: question }, act.sure),
        make(
          "div",
          { class: "ts-doing" },
          button(`Yes: ${act.label}`, () => press(act.id, `act:${act.id}`), {
            "data-key": `act:${act.id}`,
          }),
          button(
            "No, leave it",
            () => {
              sure = "";
              shown();
              findAll(acts, `[data-key="act:${act.id}"]`)[0]?.focus();
            },
            { "data-key": `no:${act.id}` },
          ),
        ),
      );
      acts.replaceChildren(box);
      box.focus();
    };
    const open = form.acts.find((act) => act.sure && act.id === sure);
    if (open) confirm(open);
    else shown();
    return make(
      "form",
      {
        class: "ts-desk-form",
        "aria-labelledby": form.title ? title : null,
        onsubmit: (event) => event.preventDefault(),
      },
      form.title ? make("h3", { id: title }, form.title) : null,
      form.hint ? make("p", { class: "ts-hint" }, form.hint) : null,
      form.fields.length
        ? make("div", { class: "ts-desk-fields" }, ...form.fields.map(control))
        : null,
      form.acts.length ? acts : null,
    );
  }

  /**
   * @param {Cell | string} cell
   * @param {string} key
   */
  function cellView(cell, key) {
    if (typeof cell === "string") return cell;
    const text = cell.act
      ? button(cell.text, () => press(cell.act, key, cell.of), {
          class: "ts-cell",
          "aria-label": cell.label || null,
          "data-key": key,
        })
      : cell.text;
    return make("span", {}, cell.shape ? shape(cell.shape) : null, text);
  }

  /** @param {Table} table */
  function tableView(table) {
    const caption = freshId("table");
    const heading = make("h3", { id: caption }, table.title);
    if (!table.rows.length) {
      return make("section", {}, heading, make("p", {}, table.empty));
    }
    const marks = ticked.get(table.id) ?? new Set();
    const there = new Set(table.rows.map(({ key }) => key));
    for (const key of marks) if (!there.has(key)) marks.delete(key);
    ticked.set(table.id, marks);
    const head = make("tr", {});
    const lines = make("tbody", {});
    /** @type {HTMLInputElement | null} */
    const all = table.pick
      ? make("input", { type: "checkbox", "aria-label": "all", "data-key": `all:${table.id}` })
      : null;
    const count = () => {
      if (all) {
        all.checked = marks.size === table.rows.length;
        all.indeterminate = marks.size > 0 && !all.checked;
      }
    };
    const fill = () => {
      const order = orders.get(table.id);
      const rows = order ? sorted(table.rows, order.column, order.down) : table.rows;
      lines.replaceChildren(...rows.map(line));
      head.replaceChildren(
        ...(all ? [make("th", { class: "ts-tick" }, all)] : []),
        ...table.columns.map(columnHead),
      );
      count();
    };
    /**
     * @param {string} name
     * @param {number} index
     */
    const columnHead = (name, index) => {
      const order = orders.get(table.id);
      const mine = order?.column === index;
      const sort = mine ? (order.down ? "descending" : "ascending") : null;
      const turn = () => {
        orders.set(table.id, { column: index, down: mine && !order.down });
        fill();
        findAll(head, `[data-key="${key}"]`)[0]?.focus();
      };
      if (!name) return make("td"); // of the buttons in each row
      const key = `sort:${table.id}:${index}`;
      return make(
        "th",
        {
          scope: "col",
          "aria-sort": sort,
          class: table.numbers.includes(index) ? "ts-figure" : null,
        },
        button(name, turn, { class: "ts-sort", "data-key": key }),
        mine ? shape(order.down ? "▼" : "▲") : null,
      );
    };
    /** @param {Row} row */
    const line = (row) => {
      const box = table.pick
        ? make("input", {
            type: "checkbox",
            "aria-label": row.cells.slice(0, 3).map(textOf).join(" "),
            "data-key": `row:${table.id}:${row.key}`,
          })
        : null;
      if (box) {
        box.checked = marks.has(row.key);
        box.addEventListener("change", () => {
          if (box.checked) marks.add(row.key);
          else marks.delete(row.key);
          count();
        });
      }
      return make(
        "tr",
        {},
        box ? make("td", { class: "ts-tick" }, box) : null,
        ...row.cells.map((cell, index) => {
          const heads = !index && Boolean(textOf(cell));
          return make(
            heads ? "th" : "td",
            {
              scope: heads ? "row" : null,
              class: table.numbers.includes(index) ? "ts-figure" : null,
            },
            cellView(cell, `cell:${table.id}:${row.key}:${index}`),
          );
        }),
      );
    };
    all?.addEventListener("change", () => {
      marks.clear();
      if (all.checked) for (const { key } of table.rows) marks.add(key);
      for (const box of /** @type {HTMLInputElement[]} */ (findAll(lines, "td.ts-tick input"))) {
        box.checked = all.checked;
      }
    });
    fill();
    return make(
      "section",
      {},
      make(
        "div",
        { class: "ts-desk-caption" },
        heading,
        button("Save as CSV", () => model.send({ type: "export", table: table.id }), {
          "aria-label": `Save as CSV: ${table.title}`,
          "data-key": `export:${table.id}`,
        }),
      ),
      make(
        "div",
        { class: "ts-desk-scroll", role: "region", tabindex: 0, "aria-labelledby": caption },
        make(
          "table",
          { class: "ts-table", "aria-labelledby": caption },
          make("thead", {}, head),
          lines,
        ),
      ),
    );
  }

  /** @param {Part} part */
  function partView(part) {
    if (part.kind === "table") return tableView(part);
    if (part.kind === "form") return formView(part);
    if (part.kind === "link") {
      const kind = part.how === "edit" ? "lab/tree" : part.how;
      const href = kind ? address(kind, part.path) : part.path;
      const about = { class: "ts-link", href, target: "_blank" };
      return make("p", {}, make("a", { ...about, "data-key": `link:${part.path}` }, part.text));
    }
    if (part.how === "head") return make("h3", {}, part.text);
    return make("p", { class: part.how === "hint" ? "ts-hint" : null }, part.text);
  }

  /** @param {string} id */
  function turnTo(id) {
    if (screen.isLost()) return;
    if (isBusy()) {
      later = () => turnTo(id);
      return;
    }
    pressed = "";
    ask("page", { name: id });
  }

  function drawPages() {
    const open = model.get("page");
    nav.replaceChildren(
      ...model.get("pages").map((/** @type {[string, string]} */ [id, title]) =>
        button(title, () => turnTo(id), {
          class: "ts-button",
          "aria-current": id === open ? "page" : null,
          "data-key": `page:${id}`,
        }),
      ),
    );
  }

  let cleared = model.get("cleared");
  let page = model.get("page");
  function draw() {
    const key = keyed().find((node) => node === document.activeElement)?.dataset.key;
    const from = body.contains(document.activeElement);
    const scrolled = findAll(body, ".ts-desk-scroll").map((node) => node.scrollTop);
    asked = "";
    if (model.get("page") !== page || model.get("cleared") !== cleared) {
      sure = "";
      typed = new Map();
      ticked = new Map();
      fileBoxes = new Map();
      ({ page, cleared } = { page: model.get("page"), cleared: model.get("cleared") });
    }
    said.textContent = model.get("said");
    screen.alert.textContent = model.get("trouble");
    drawPages();
    const titles = new Map(model.get("pages"));
    const title = make("h2", { tabindex: -1 }, titles.get(page));
    body.replaceChildren(title, ...model.get("parts").map(partView));
    findAll(body, ".ts-desk-scroll").forEach((node, index) => {
      node.scrollTop = scrolled[index] ?? 0;
    });
    sayHere();
    if (key || from) {
      const again = keyed().find((node) => node.dataset.key === key);
      (again ?? title).focus({ preventScroll: Boolean(again) });
    }
    if (waits && !Object.keys(model.get("busy")).length) {
      waits = false;
      lookThere();
    }
    tellBusy();
    goOn();
  }

  /** Does what was pressed meanwhile, once the page stands as it will be. */
  function goOn() {
    if (isBusy() || !later) return;
    const next = later;
    later = null;
    next();
  }

  /** @type {number | undefined} */
  let soon;
  function drawBusy() {
    const busy = model.get("busy");
    tellBusy();
    clearTimeout(soon);
    if (!Object.keys(busy).length) {
      bar.replaceChildren();
      return;
    }
    const { doing, done, of } = busy;
    const text = of ? `${doing}: ${done} of ${of}` : `${doing} …`;
    const show = () => {
      bar.replaceChildren(
        make(
          "progress",
          of ? { max: of, value: done, "aria-label": doing } : { "aria-label": doing },
        ),
        make("span", { role: "status" }, text),
      );
    };
    if (bar.childElementCount) show();
    else soon = window.setTimeout(show, BUSY_MS);
  }

  screen.follow("change:turn", () => setTimeout(draw, 0));
  screen.follow("change:busy", drawBusy);
  screen.follow("change:by", () => {
    who.value = model.get("by");
  });
  screen.follow("msg:custom", (message) => {
    if (message.type === "trouble") {
      asked = "";
      waits = false;
      tellBusy();
      lookThere();
    }
    if (message.type !== "save") return;
    const url = URL.createObjectURL(new Blob([`\ufeff${message.text}`], { type: "text/csv" }));
    const link = make("a", { href: url, download: message.name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(url), 1000);
  });
  draw();
  drawBusy();
  let visible = true;
  const eye = new IntersectionObserver(([entry]) => {
    visible = entry.isIntersecting;
  });
  eye.observe(el);
  let waited = 0;
  const clock = setInterval(() => {
    const every = model.get("every");
    waited += 1;
    if (every && waited >= every && visible && !document.hidden) {
      waited = 0;
      ask("look");
    }
  }, 1000);
  return () => {
    clearInterval(clock);
    clearTimeout(soon);
    eye.disconnect();
    screen.close();
  };
}
