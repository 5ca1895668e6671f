"""Shims and preload in a real browser: gauges read by keys, answers saved, reopened and marked."""

import statistics

import pytest
from tests.browser.conftest import choose_by_keys

from twoshaft_grader.marking import solve

pytestmark = pytest.mark.browser

MODULE = "05-shims-and-preload"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
DIAL, DRUM = f"{FRONT} .twoshaft-rig:has(.tsg-dial)", f"{FRONT} .twoshaft-rig:has(.tsg-scale)"
# How long from an input of a slider to the next frame after its pointer has moved [ms].
TIMED = """async ([slider, pointer]) => {
  const rig = [...document.querySelectorAll(".twoshaft-rig")].find((r) => r.querySelector(pointer));
  const box = [...rig.querySelectorAll("input[type=range]")].find((b) => b.ariaLabel === slider);
  const took = [];
  for (let k = 1; k <= 20; k += 1) {
    box.value = Number(box.min) + (Number(box.max) - Number(box.min)) * ((k * 7) % 20 + 1) / 21;
    const start = performance.now();
    const moved = new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error("the pointer did not move")), 10000);
      new MutationObserver((_, watch) => {
        watch.disconnect();
        clearTimeout(late);
        requestAnimationFrame(() => requestAnimationFrame(() => resolve(performance.now())));
      }).observe(rig, { subtree: true, attributes: true, attributeFilter: ["transform"] });
    });
    box.dispatchEvent(new Event("input", { bubbles: true }));
    took.push((await moved) - start);
    await new Promise((resolve) => setTimeout(resolve, 60));
  }
  return took;
}"""


def press(rig, name, times=1):
    button = rig.get_by_role("button", name=name)
    button.focus()
    for _ in range(times):
        rig.page.keyboard.press("Enter")


def pointer_mm(rig):
    """Where the dial's long pointer stands, in parts of a turn of one millimetre."""
    text = rig.locator(".tsg-pointer").get_attribute("transform")
    return float(text.removeprefix("rotate(").split()[0]) / 360


def read_dial(rig, side, wait_until):
    before = rig.locator(".tsg-dial").get_attribute("aria-label")
    press(rig, side)
    wait_until(lambda: rig.get_by_role("button", name=side).get_attribute("aria-pressed") == "true")
    assert "Long pointer" in before
    return pointer_mm(rig)


def test_gauges_are_read_by_keys_and_the_answers_saved_reopened_and_marked(
    learner, wait_until, screenshot
):
    page = learner.exercise(live=12)
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    dial, drum = page.locator(DIAL), page.locator(DRUM)
    press(dial, "Turn the shaft ten times", 3)
    wait_until(lambda: "30 times" in dial.locator(".ts-finding").inner_text())
    dial.get_by_role("combobox", name="Plunger").focus()
    page.keyboard.press("End")
    wait_until(lambda: pointer_mm(dial) > 0.5)
    away, towards = (
        read_dial(dial, s, wait_until) for s in ("Pull the shaft away", "Push it to the dial")
    )
    press(drum, "Turn the shaft ten times", 4)
    wait_until(lambda: "40 times" in drum.locator(".ts-finding").inner_text())
    assert "mark" in drum.locator(".tsg-scale").get_attribute("aria-label")
    for text in (dial.inner_text(), drum.inner_text()):
        assert "preload of" not in text and "null" not in text
    box = page.get_by_label("End float that you read")
    box.focus()
    page.keyboard.type(f"{towards - away:.2f} mm")
    page.keyboard.press("Tab")
    right = solve(learner.solution, learner.issued, learner.unit)["bench-changed"]
    scenes, steps = (dict(learner.issued["given"]["bench"][part]) for part in ("changed", "steps"))
    group = page.get_by_role("group", name="A shim was changed. What comes next?")
    for answer in right:
        line, option = answer.split("=")
        choose_by_keys(group.get_by_label(scenes[line], exact=True), steps[option])
    wait_until(lambda: learner.stored("bench-changed") == right)
    group.scroll_into_view_if_needed()
    screenshot(page, "shims-changed")
    for key in ("a", "b", "x", "d", "d"):
        dial.get_by_role("button", name="Turn the shaft ten times").focus()
        page.keyboard.press(key)
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    dial.scroll_into_view_if_needed()
    screenshot(page, "shims-exercise")

    page = learner.exercise(live=12)
    again = page.get_by_label("End float that you read")
    wait_until(lambda: again.input_value() == f"{towards - away:.2f} mm")
    fields = learner.marked()
    assert fields["trial-float"].share == fields["bench-changed"].share == 1
    assert fields["bench-changed"].passed and fields["stack-gap"].share == 0


def test_sliders_move_the_pointers(learner, wait_until, screenshot):
    page = learner.lesson(live=2)
    for rig, slider, pointer in (
        ("shim bench", "Warm the unit", ".tsg-warm"),
        ("cord bench", "Setting", ".tsg-scale .tsg-pointer"),
    ):
        if rig == "cord bench":
            press(page.locator(DRUM), "Turn the shaft ten times", 3)
            wait_until(lambda: "not home" not in page.locator(DRUM).inner_text())
        page.locator(DRUM if rig == "cord bench" else DIAL).scroll_into_view_if_needed()
        took = sorted(page.evaluate(TIMED, [slider, pointer]))
        print(f"{rig}: median {statistics.median(took):.0f} ms, p95 {took[18]:.0f} ms")
        assert len(took) == 20
        screenshot(page, rig.replace(" ", "-"))
