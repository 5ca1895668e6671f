"""Pressed and driven parts in a real browser: gauges by keys, answers saved, reopened, marked."""

import json
import shutil
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
NAME = "04-pressed-and-driven.ipynb"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
SEAT = f"{FRONT} .twoshaft-rig:has(.tsg-dial)"
RIGS_AND_FORMS = 12


def wait_until(true, seconds=60):
    end = time.monotonic() + seconds
    while not true():
        assert time.monotonic() < end, "waited in vain"
        time.sleep(0.1)


@pytest.fixture(scope="module")
def lab(start_shared_lab):
    cells = nbformat.read(ROOT / "exercises" / NAME, as_version=4).cells
    lab = start_shared_lab(released=[cell_digest(c.source) for c in cells if c.cell_type == "code"])
    shutil.copyfile(ROOT / "exercises" / NAME, lab.root / NAME)
    return lab


def opened(lab):
    page = lab.open_notebook(NAME, lab.page(), ready=".twoshaft")
    wait_until(lambda: page.locator(f"{FRONT} .twoshaft-live").count() >= RIGS_AND_FORMS)
    return page


def dial_mm(seat):
    """What the depth gauge's pointers stand at [mm]."""
    turn = seat.locator(".tsg-pointer").get_attribute("transform")
    return float(turn.removeprefix("rotate(").split()[0]) / 360


def saved(lab):
    return "".join(path.read_text() for path in lab.root.glob("*jobsheet.json"))


def type_into(page, label, text):
    page.get_by_label(label).focus()
    page.keyboard.type(text)
    page.keyboard.press("Tab")


def test_gauges_are_read_by_keys_and_the_answers_saved_reopened_and_marked(lab, screenshot):
    page = opened(lab)
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    seat, depths = page.locator(SEAT), []
    for place in ("12 o'clock", "3 o'clock", "6 o'clock", "9 o'clock"):
        button = seat.get_by_role("button", name=place, exact=True)
        button.focus()
        page.keyboard.press("Enter")
        wait_until(lambda button=button: button.get_attribute("aria-pressed") == "true")
        depths.append(dial_mm(seat) - 5)
    assert "Long pointer" in seat.locator("svg.tsg-dial").get_attribute("aria-label")
    press = page.locator(f"{FRONT} .twoshaft-rig").filter(has=page.get_by_label("Push"))
    press.get_by_label("Push").focus()
    page.keyboard.press("End")
    wait_until(lambda: "reached its shoulder" in press.inner_text())
    for rig in (seat, press):
        rig.locator("button, input").first.focus()
        for key in ("a", "b", "x", "d", "d"):
            page.keyboard.press(key)
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    assert press.get_by_label("Pair").count() == 0
    type_into(page, "Mean depth below the face", f"{sum(depths) / 4:.2f} mm")
    type_into(page, "Lean across the seal", f"{max(depths) - min(depths):.2f} mm")
    wait_until(lambda: "seal-lean" in saved(lab))
    seat.scroll_into_view_if_needed()
    screenshot(page, "pressed-exercise")
    page.close()

    page = opened(lab)
    box = page.get_by_label("Mean depth below the face")
    wait_until(lambda: box.input_value() == f"{sum(depths) / 4:.2f} mm")
    stored = json.loads(saved(lab))["fields"]
    sheet = SheetData(
        learner="practice",
        module="pressed-and-driven",
        attempt=0,
        answers={name: Answer(entry["value"], 1) for name, entry in stored.items()},
    )
    unit = load_unit("tarnbeck-b5")
    issued = issue_record(
        "pressed-and-driven", unit, salt="practice", learner="practice", attempt=0
    )
    solution = load_solution(ROOT / "solutions" / NAME)
    fields = {f.name: f for f in mark_sheet(sheet, issued, solution, unit=unit).fields}
    assert fields["seal-depth"].share == fields["seal-lean"].share == 1
    assert fields["press-grip"].share == 0
    page.close()
