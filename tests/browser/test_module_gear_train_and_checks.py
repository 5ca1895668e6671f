"""Gear train and checks in a real browser: turns counted by keys, saved, reopened and marked."""

import math
import statistics
from fractions import Fraction

import pytest
from tests.browser.conftest import choose_by_keys

from twoshaft_grader.marking import solve

pytestmark = pytest.mark.browser

MODULE = "08-gear-train-and-checks"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
RIG = f"{FRONT} .twoshaft-rig:has(.tsw-dial)"
# How long from a key on a dial to the next frame after its mark has moved [ms].
TIMED = """async (times) => {
  const box = [...document.querySelectorAll(".tsw-count")].find((b) => b.offsetParent);
  const rig = box.closest(".twoshaft-rig");
  const took = [];
  for (let k = 0; k < times; k += 1) {
    const start = performance.now();
    const moved = new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error("the mark did not move")), 10000);
      new MutationObserver((_, watch) => {
        watch.disconnect();
        clearTimeout(late);
        requestAnimationFrame(() => requestAnimationFrame(() => resolve(performance.now())));
      }).observe(rig, { subtree: true, attributes: true, attributeFilter: ["transform"] });
    });
    box.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowRight", bubbles: true, cancelable: true }));
    took.push((await moved) - start);
    await new Promise((resolve) => setTimeout(resolve, 60));
  }
  return took;
}"""


def angle(rig, name):
    """How far a dial's mark has turned [turns], as drawn."""
    box = rig.locator(".tsw-count", has_text=name)
    text = box.locator(".tsw-dial > g").get_attribute("transform")
    return float(text.removeprefix("rotate(").rstrip(")")) / 360


def test_turns_are_counted_by_keys_and_saved_reopened_and_marked(learner, wait_until, screenshot):
    page = learner.exercise(live=12)
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    rig = page.locator(RIG)
    hold = rig.get_by_role("combobox", name="Wheel held still")
    hold.focus()
    page.keyboard.press("End")
    wait_until(lambda: "right wheel is held" in rig.locator(".ts-finding").inner_text())
    left = rig.locator(".tsw-count", has_text="Left wheel")
    left.focus()
    page.keyboard.press("PageDown")
    page.keyboard.press("PageDown")
    wait_until(lambda: angle(rig, "Left wheel") == 2)
    turned = angle(rig, "Input shaft")
    strokes = rig.locator(".tsw-count", has_text="Input shaft").locator(".tsw-strokes")
    tally = sum(strokes.inner_text().count(mark) for mark in "|/")
    assert tally == math.floor(abs(turned)) and angle(rig, "Right wheel") == 0
    said = rig.locator(".tsw-count", has_text="Input shaft").get_attribute("aria-label")
    assert "graduation" in said and f"{abs(turned):.2f}" not in rig.inner_text()
    for key in ("a", "b", "x", "d", "d"):
        left.focus()
        page.keyboard.press(key)
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells

    seen = round(abs(turned) * 8) / 8
    box = page.get_by_label("Turns of the input shaft for two turns")
    box.focus()
    page.keyboard.type(f"{seen:g} turns")
    page.keyboard.press("Tab")
    way = "The same way as the left wheel" if turned > 0 else "The other way from the left"
    choice = page.get_by_role("radio", name=way)
    choice.focus()
    page.keyboard.press("Space")
    wait_until(lambda: learner.stored("which-way"))
    right = solve(learner.solution, learner.issued, learner.unit)["cone-fit"]
    scenes, acts = (
        dict(learner.issued["given"]["cone"]["fit"][part]) for part in ("lines", "answers")
    )
    group = page.get_by_role("group", name="Parts are about to go in.")
    for answer in right:
        line, option = answer.split("=")
        choose_by_keys(group.get_by_label(scenes[line], exact=True), acts[option])
    wait_until(lambda: learner.stored("cone-fit") == right)
    group.scroll_into_view_if_needed()
    screenshot(page, "gears-fit")
    rig.scroll_into_view_if_needed()
    screenshot(page, "gears-exercise")

    page = learner.exercise(live=12)
    again = page.get_by_label("Turns of the input shaft for two turns")
    wait_until(lambda: again.input_value() == f"{seen:g} turns")
    assert turned == pytest.approx(
        float(Fraction(*learner.issued["given"]["which"]["inside"])), abs=0.01
    )
    fields = learner.marked()
    assert fields["which-count"].share == fields["which-way"].share == 1
    assert fields["which-gear"].share == 0
    assert fields["cone-fit"].passed


def test_gears_are_engaged_by_keys_and_a_dial_is_dragged(learner, wait_until, screenshot):
    page = learner.lesson(live=4)
    rig = page.locator(RIG).first
    rig.scroll_into_view_if_needed()
    for name in ("Second", "Fifth"):
        button = rig.get_by_role("button", name=name, exact=True)
        if button.get_attribute("aria-pressed") != "true":
            button.focus()
            page.keyboard.press("Enter")
    wait_until(lambda: "are locked" in rig.locator(".ts-finding").inner_text())
    dial = rig.locator(".tsw-count", has_text="Left wheel").locator(".tsw-dial")
    dial.scroll_into_view_if_needed()
    frame = dial.bounding_box()
    x, y = frame["x"] + frame["width"] / 2, frame["y"] + frame["height"] / 2
    page.mouse.move(x, y - 25)
    page.mouse.down()
    for step in range(1, 9):
        turn = step / 8 * math.pi / 2
        page.mouse.move(x + 25 * math.sin(turn), y - 25 * math.cos(turn))
    page.mouse.up()
    wait_until(lambda: abs(angle(rig, "Left wheel") - 0.25) < 0.02)
    assert angle(rig, "Right wheel") == pytest.approx(-0.25, abs=0.02)
    assert angle(rig, "Input shaft") == 0
    screenshot(page, "gears-locked")
    took = page.evaluate(TIMED, 20)
    in_order = sorted(took)
    print(f"key to screen: median {statistics.median(took):.0f} ms, p95 {in_order[18]:.0f} ms")


def test_dark_and_narrow_screens(learner, screenshot):
    for name, how in (("dark", {"dark": True}), ("narrow", {"width": 420, "height": 800})):
        page = learner.lesson(ready=".tsw-dial", **how)
        page.locator(RIG).first.scroll_into_view_if_needed()
        screenshot(page, f"gears-{name}")
