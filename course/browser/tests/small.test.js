import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { test } from "node:test";
import { digest } from "../src/lab/cells.js";
import { clock } from "../src/logic/clock.js";
import { withUnit } from "../src/logic/numbers.js";
import { outbox, stillToSend } from "../src/logic/outbox.js";
import { PIXELS, pixels, rgb } from "../src/logic/raster.js";
import { ticketBox } from "../src/logic/ticket.js";
import { latestOnly } from "../src/logic/turns.js";

test("a chosen unit takes the place of the typed one, and no figure is thrown away", () => {
  assert.equal(withUnit("0.12", "mm"), "0.12 mm");
  assert.equal(withUnit("0.12 in", "mm"), "0.12 mm");
  assert.equal(withUnit("1.5e-3 m", "mm"), "1.5e-3 mm");
  assert.equal(withUnit("20 °C", "K"), "20 K");
  assert.equal(withUnit("", "mm"), "mm");
  assert.equal(withUnit("3 m 4", "mm"), "3 m 4 mm");
});

test("today is told by the clock, another day with its date, and nonsense not at all", () => {
  const now = new Date(2026, 4, 3, 18, 0);
  assert.equal(clock(new Date(2026, 4, 3, 7, 5).toISOString(), now), "07:05");
  assert.equal(clock(new Date(2026, 4, 2, 7, 5).toISOString(), now), "2026-05-02 07:05");
  assert.equal(clock("yesterday", now), "");
});

test("while an answer is awaited only the latest state is kept", () => {
  const sent = [];
  const asks = latestOnly((state, turn) => sent.push([state, turn]));
  asks.ask(1);
  asks.ask(2);
  asks.ask(3);
  assert.equal(asks.waiting, true);
  assert.deepEqual(
    sent.map(([state]) => state),
    [1],
  );
  asks.answered("another turn");
  assert.equal(sent.length, 1);
  asks.answered(sent[0][1]);
  assert.deepEqual(
    sent.map(([state]) => state),
    [1, 3],
  );
  asks.free();
  assert.equal(asks.waiting, false);
  assert.equal(sent.length, 2);
});

test("a cell's digest is that of its text, however its lines end", () => {
  const expected = createHash("sha256").update("a = 1\nb = 'µ'").digest("hex");
  assert.equal(digest("a = 1\r\nb = 'µ'\n\n"), expected);
});

test("cells are painted from the bottom up, in their colour and hatch", () => {
  assert.deepEqual(rgb("#10ff0a"), [16, 255, 10]);
  const looks = [
    [1, "wet", "#102030", ""],
    [2, "cured", "", "flat"],
  ];
  const made = pixels(new Uint8Array([1, 0, 2, 0]), [2, 2], looks, [1, 2, 3], false);
  assert.equal(made.length, 4 * PIXELS * PIXELS);
  const wide = 2 * PIXELS;
  const bottomLeft = made[(2 * PIXELS - 1) * wide];
  assert.equal(bottomLeft, ((200 << 24) | (0x30 << 16) | (0x20 << 8) | 0x10) >>> 0);
  assert.equal(made[0], ((190 << 24) | (3 << 16) | (2 << 8) | 1) >>> 0); // inked: a line of the hatch
  assert.equal(made[2 * wide], 0); // between the lines
  assert.equal(made[wide - 1], 0); // a cell with nothing in it
});

test("oil and dirt are drawn on a bare face only", () => {
  const cells = new Uint8Array([16]);
  const inked = (bare) => pixels(cells, [1, 1], [], [0, 0, 0], bare).some((word) => word !== 0);
  assert.equal(inked(true), true);
  assert.equal(inked(false), false);
});

/** Something like localStorage. */
function shelf() {
  const kept = new Map();
  return {
    kept,
    getItem: (name) => kept.get(name) ?? null,
    setItem: (name, value) => kept.set(name, value),
    removeItem: (name) => kept.delete(name),
  };
}

test("what is not saved yet is kept for its own sheet alone, and gone when it is saved", () => {
  const place = shelf();
  const mine = outbox(place, "a01/order-1/x");
  const theirs = outbox(place, "a02/order-1/y");
  mine.put("gap", "1 mm", 2, new Date("2026-05-03T10:00:00Z"));
  assert.deepEqual(mine.get("gap"), { value: "1 mm", base: 2, at: "2026-05-03T10:00:00.000Z" });
  assert.equal(theirs.get("gap"), undefined);
  assert.equal(mine.get("constructor"), undefined);
  theirs.drop("gap");
  assert.equal(mine.get("gap").value, "1 mm");
  mine.drop("gap");
  assert.equal(place.kept.size, 0);
});

test("where nothing can be kept, nothing is, and a damaged shelf is an empty one", () => {
  for (const [place, sheet] of [
    [null, "a"],
    [shelf(), ""],
  ]) {
    const nowhere = outbox(place, sheet);
    nowhere.put("gap", "1 mm", 0);
    assert.equal(nowhere.get("gap"), undefined);
  }
  const place = shelf();
  place.setItem("twoshaft-unsent:a", "{");
  assert.equal(outbox(place, "a").get("gap"), undefined);
  assert.doesNotThrow(() =>
    outbox(
      {
        ...shelf(),
        setItem() {
          throw new Error("full");
        },
      },
      "a",
    ).put("b", 1, 0),
  );
});

test("an answer that waited is sent unless the sheet holds it, or a later one", () => {
  const at = "2026-05-03T10:00:00.000Z";
  const unsent = { value: "1 mm", base: 2, at };
  assert.equal(
    stillToSend(unsent, { value: "0 mm", revision: 2, saved: "2026-05-03T11:00:00Z" }),
    true,
  );
  assert.equal(stillToSend(unsent, { value: "1 mm", revision: 3 }), false);
  assert.equal(
    stillToSend(unsent, { value: "2 mm", revision: 3, saved: "2026-05-03T11:00:00Z" }),
    false,
  );
  assert.equal(
    stillToSend(unsent, { value: "2 mm", revision: 3, saved: "2026-05-03T09:00:00Z" }),
    true,
  );
  assert.equal(stillToSend({ value: ["a"], base: 0, at }, {}), true);
});

test("a window stays signed in until somebody signs out in any window", () => {
  const own = shelf();
  const other = shelf();
  const shared = shelf();
  const box = ticketBox(own, shared, "here");
  assert.equal(box.get(), null);
  box.keep({ id: "a01", ticket: "t", name: "Ana" }, 1000);
  assert.deepEqual(box.get(), { id: "a01", ticket: "t" });
  assert.equal(ticketBox(own, shared, "elsewhere").get(), null);
  assert.equal(ticketBox(other, shared, "here").get(), null);
  ticketBox(other, shared, "here").drop(2000);
  assert.equal(box.get(), null);
  box.keep({ id: "a01", ticket: "t" }, 3000);
  assert.equal(box.get()?.id, "a01");
});
