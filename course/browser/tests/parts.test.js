import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { typedBox } from "../src/parts/typed_box.js";
import { unitChooser } from "../src/parts/unit_chooser.js";
import { choose, layPage, type } from "./page.js";

beforeEach(layPage);

const IDS = { control: "a", hint: "b", read: "c", status: "d" };

/** A box with its list of units, and what was sent. */
function figure(units = ["mm", "in"]) {
  const sent = [];
  const made = typedBox(IDS, { send: (text) => sent.push(text), typing() {} });
  return { ...made, list: unitChooser(made.box, units, made.flush, "prompt"), sent };
}

test("the list names every unit, and stands open until one is chosen", () => {
  const { list } = figure();
  assert.deepEqual(
    list.children.map((one) => [one.value, ...one.children]),
    [
      ["", "unit"],
      ["mm", "mm"],
      ["in", "in"],
    ],
  );
  assert.equal(list.value, "");
  assert.equal(list.getAttribute("aria-label"), "Choose the unit");
  assert.equal(list.getAttribute("aria-describedby"), "prompt");
});

test("a chosen unit stands behind the figure and is sent with it, once", () => {
  const { box, list, sent } = figure();
  type(box, "0.12 in");
  choose(list, "mm");
  assert.equal(box.value, "0.12 mm");
  box.dispatchEvent(new Event("blur"));
  assert.deepEqual(sent, ["0.12 mm"]);
});

test("a unit without a figure is not sent: the box waits for the figure", () => {
  const { box, list, sent } = figure();
  choose(list, "mm");
  assert.equal(box.value, "mm");
  assert.equal(document.activeElement, box);
  assert.deepEqual(sent, []);
});

test("going back to no unit changes nothing, and typing on takes the choice back", () => {
  const { box, list, sent } = figure();
  type(box, "0.12 in");
  choose(list, "");
  assert.equal(box.value, "0.12 in");
  assert.deepEqual(sent, []);
  choose(list, "mm");
  type(box, "0.125 in");
  assert.equal(list.value, "");
});

test("of two boxes of one answer the one that cannot be read is marked, by itself", () => {
  const how = { send() {}, typing() {} };
  const [from, to] = ["from", "to"].map((part, at) =>
    typedBox(
      { ...IDS, control: part },
      {
        ...how,
        said: (value) => value[at],
        wrong: ({ error = "" }) => error.startsWith(part),
      },
    ),
  );
  const marked = () => [from, to].map(({ box }) => box.getAttribute("aria-invalid"));
  const show = (state) => {
    for (const one of [from, to]) one.show(state);
  };
  show({ value: ["7", "8.x"], error: "to: read “8.x”, which is no figure." });
  assert.deepEqual(marked(), ["false", "true"]);
  assert.deepEqual([from.box.value, to.box.value], ["7", "8.x"]);
  show({ value: ["7", "8"], error: "" });
  assert.deepEqual(marked(), ["false", "false"]);
});

test("a box alone is marked by any error, and what is being typed stays", () => {
  const { box, show } = typedBox(IDS, { send() {}, typing() {} });
  show({ value: "x", error: "read “x”, which is no figure." });
  assert.equal(box.getAttribute("aria-invalid"), "true");
  type(box, "12 m");
  show({ value: "x", error: "" });
  assert.equal(box.getAttribute("aria-invalid"), "false");
  assert.equal(box.value, "12 m");
});
