"""Shims and preload in a real browser: gauges read by keys, answers saved, reopened and marked."""

import json
import shutil
import statistics
import time
from pathlib import Path

import nbformat
import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.jupyter.released import cell_digest
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft_grader.marking import load_solution, mark_sheet

pytestmark = pytest.mark.browser

ROOT = Path(__file__).resolve().parents[2]
NAME = "05-shims-and-preload.ipynb"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
DIAL, DRUM = f"{FRONT} .twoshaft-rig:has(.tsg-dial)", f"{FRONT} .twoshaft-rig:has(.tsg-scale)"
# How long from an input of a slider to the next frame after its pointer has moved [ms].
TIMED = """async ([slider, pointer]) => {
  const rig = [...document.querySelectorAll(".twoshaft-rig")].find((r) => r.querySelector(pointer));
  const box = [...rig.querySelectorAll("input[type=range]")].find((b) => b.ariaLabel === slider);
  const took = [];
  for (let k = 1; k <= 60; k += 1) {
    box.value = Number(box.min) + (Number(box.max) - Number(box.min)) * ((k * 37) % 60 + 1) / 61;
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


def wait_until(true, seconds=60):
    end = time.monotonic() + seconds
    while not true():
        assert time.monotonic() < end, "waited in vain"
        time.sleep(0.1)


@pytest.fixture(scope="module")
def lab(start_shared_lab):
    digests = []
    for kind in ("exercises", "course/lessons"):
        cells = nbformat.read(ROOT / kind / NAME, as_version=4).cells
        digests += [cell_digest(cell.source) for cell in cells if cell.cell_type == "code"]
    lab = start_shared_lab(released=digests)
    for kind in ("exercises", "course/lessons"):
        (lab.root / Path(kind).name).mkdir()
        shutil.copyfile(ROOT / kind / NAME, lab.root / Path(kind).name / NAME)
    return lab


def opened(lab, kind, count):
    page = lab.open_notebook(f"{kind}/{NAME}", lab.page(), ready=".twoshaft")
    wait_until(lambda: page.locator(f"{FRONT} .twoshaft-live").count() >= count)
    return page


def press(rig, name, times=1):
    button = rig.get_by_role("button", name=name)
    button.focus()
    for _ in range(times):
        rig.page.keyboard.press("Enter")


def pointer_mm(rig):
    """Where the dial's long pointer stands, in parts of a turn of one millimetre."""
    text = rig.locator(".tsg-pointer").get_attribute("transform")
    return float(text.removeprefix("rotate(").split()[0]) / 360


def read_dial(rig, side):
    before = rig.locator(".tsg-dial").get_attribute("aria-label")
    press(rig, side)
    wait_until(lambda: rig.get_by_role("button", name=side).get_attribute("aria-pressed") == "true")
    assert "Long pointer" in before
    return pointer_mm(rig)


def test_gauges_are_read_by_keys_and_the_answers_saved_reopened_and_marked(lab, screenshot):
    page = opened(lab, "exercises", 12)
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    dial, drum = page.locator(DIAL), page.locator(DRUM)
    press(dial, "Turn the shaft ten times", 3)
    wait_until(lambda: "30 times" in dial.locator(".ts-finding").inner_text())
    dial.get_by_role("combobox", name="Plunger").focus()
    page.keyboard.press("End")
    wait_until(lambda: pointer_mm(dial) > 0.5)
    away, towards = (read_dial(dial, s) for s in ("Pull the shaft away", "Push it to the dial"))
    press(drum, "Turn the shaft ten times", 4)
    wait_until(lambda: "40 times" in drum.locator(".ts-finding").inner_text())
    assert "mark" in drum.locator(".tsg-scale").get_attribute("aria-label")
    for text in (dial.inner_text(), drum.inner_text()):
        assert "preload of" not in text and "null" not in text
    box = page.get_by_label("End float that you read")
    box.focus()
    page.keyboard.type(f"{towards - away:.2f} mm")
    page.keyboard.press("Tab")
    choice = page.get_by_role("radio", name="Turn the rollers home, measure again")
    choice.focus()
    page.keyboard.press("Space")
    sheet = lab.root / "exercises"
    wait_until(lambda: "trial-next" in "".join(p.read_text() for p in sheet.glob("*jobsheet.json")))
    for key in ("a", "b", "x", "d", "d"):
        dial.get_by_role("button", name="Turn the shaft ten times").focus()
        page.keyboard.press(key)
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    dial.scroll_into_view_if_needed()
    screenshot(page, "shims-exercise")
    page.close()

    page = opened(lab, "exercises", 12)
    again = page.get_by_label("End float that you read")
    wait_until(lambda: again.input_value() == f"{towards - away:.2f} mm")
    stored = json.loads(next(sheet.glob("*jobsheet.json")).read_text())["fields"]
    answers = {name: Answer(entry["value"], 1) for name, entry in stored.items()}
    unit = load_unit("tarnbeck-b5")
    issued = issue_record("shims-and-preload", unit, salt="practice", learner="practice", attempt=0)
    handed_in = SheetData(
        learner="practice", module="shims-and-preload", attempt=0, answers=answers
    )
    solution = load_solution(ROOT / "solutions" / NAME)
    fields = {f.name: f for f in mark_sheet(handed_in, issued, solution, unit=unit).fields}
    assert fields["trial-float"].share == fields["trial-next"].share == 1
    assert fields["trial-next"].passed and fields["stack-gap"].share == 0
    page.close()


def test_sliders_move_the_pointers(lab, screenshot):
    page = opened(lab, "lessons", 2)
    for rig, slider, pointer in (
        ("shim bench", "Warm the unit", ".tsg-warm"),
        ("cord bench", "Setting", ".tsg-scale .tsg-pointer"),
    ):
        if rig == "cord bench":
            press(page.locator(DRUM), "Turn the shaft ten times", 3)
            wait_until(lambda: "not home" not in page.locator(DRUM).inner_text())
        page.locator(DRUM if rig == "cord bench" else DIAL).scroll_into_view_if_needed()
        took = sorted(page.evaluate(TIMED, [slider, pointer]))
        print(f"{rig}: median {statistics.median(took):.0f} ms, p95 {took[56]:.0f} ms")
        assert len(took) == 60
        screenshot(page, rig.replace(" ", "-"))
    page.close()
