"""Reading faults in a real browser: checks made by keys, answers saved, reopened and marked."""

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
from twoshaft_grader.marking import load_solution, mark_sheet, solve

pytestmark = pytest.mark.browser

ROOT = Path(__file__).resolve().parents[2]
NAME = "09-reading-faults.ipynb"
MODULE = "reading-faults"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
RIG = f"{FRONT} .twoshaft-rig:has(.tsk-board)"


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


def test_checks_are_made_by_keys_and_the_diagnosis_is_saved_reopened_and_marked(lab, screenshot):
    unit = load_unit("tarnbeck-b5")
    issued = issue_record(MODULE, unit, salt="practice", learner="practice", attempt=0)
    solution = load_solution(ROOT / "solutions" / NAME)
    right = solve(solution, issued, unit)
    page = opened(lab, "exercises", 12)
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    rig = page.locator(RIG)
    record = issued["given"]["own"]["record"]
    assert not any(row[3] in rig.inner_text() for row in record)
    for key in ("a", "b", "x", "d", "d"):
        rig.get_by_role("button").first.focus()
        page.keyboard.press(key)
    for _, name, _, words in record:
        rig.get_by_role("button", name=f"Make: {name}").focus()
        page.keyboard.press("Enter")
        wait_until(lambda name=name, words=words: f"{name}: {words}" in _finding(rig))
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    rig.scroll_into_view_if_needed()
    screenshot(page, "faults-own-unit")

    labels = dict(map(tuple, issued["given"]["own"]["options"]))
    form = page.locator(f"{FRONT} .twoshaft-live", has_text="How far do the checks take you?").last
    for key in right["own-which"]:
        form.get_by_role("checkbox", name=labels[key], exact=True).focus()
        page.keyboard.press("Space")
    says = dict(map(tuple, issued["given"]["own"]["says"]))[right["own-says"]]
    form.get_by_role("radio", name=says, exact=True).focus()
    page.keyboard.press("Space")
    sheet = lab.root / "exercises"
    wait_until(lambda: "own-says" in "".join(p.read_text() for p in sheet.glob("*jobsheet.json")))
    page.close()

    page = opened(lab, "exercises", 12)
    again = page.get_by_role("radio", name=says, exact=True)
    wait_until(lambda: again.is_checked())
    stored = json.loads(next(sheet.glob("*jobsheet.json")).read_text())["fields"]
    answers = {name: Answer(entry["value"], 1) for name, entry in stored.items()}
    handed_in = SheetData(learner="practice", module=MODULE, attempt=0, answers=answers)
    fields = {f.name: f for f in mark_sheet(handed_in, issued, solution, unit=unit).fields}
    assert fields["own-which"].share == fields["own-says"].share == 1
    assert fields["stop-do"].share == 0
    page.close()


def _finding(rig):
    return rig.locator(".ts-finding").inner_text()


def test_the_board_is_worked_by_keys(lab, screenshot):
    page = opened(lab, "lessons", 2)
    rig = page.locator(RIG).first
    box = rig.get_by_label("It showed: Push from fifth straight towards reverse")
    box.focus()
    page.keyboard.type("The direct shift from fifth to reverse is not")
    wait_until(lambda: "3 misbuilds explain it" in _finding(rig))
    assert rig.locator(".tsk-left li").count() == 3
    rig.locator(".tsk-left").scroll_into_view_if_needed()
    screenshot(page, "faults-board")
    clear = rig.get_by_role("button", name="Take all observations back")
    clear.focus()
    page.keyboard.press("Enter")
    wait_until(lambda: "No check is made yet" in _finding(rig))
    page.set_viewport_size({"width": 420, "height": 800})
    rig.locator("select").first.scroll_into_view_if_needed()
    assert rig.locator(".ts-scroll").evaluate("box => box.scrollWidth >= box.clientWidth")
    screenshot(page, "faults-narrow")
    page.close()
