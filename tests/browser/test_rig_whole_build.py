"""The simulated bench in a real browser: a whole build by keyboard alone, kept and restored."""

import json
import time

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_notebook

from twoshaft.jupyter.released import cell_digest
from twoshaft.models.wholebuild import Job, right_decisions, ways_of
from twoshaft.rigs import whole_build
from twoshaft.units import load_unit

pytestmark = pytest.mark.browser

GIVEN = {
    "operations": [
        *("clean-faces", "spread-sealant", "lower-case", "start-case-bolts", "tighten-case-bolts"),
        *("fit-rear-plate", "fit-lockout", "fit-selector-shaft", "fit-gate-cover"),
        *("fit-outer-lever", "check-lockout"),
    ],
    "asked": [
        *("film-case-joint", "joint-case-bolts", "shim-output-shaft", "way-fit-lockout"),
        *("proof-fifth-reverse", "check-check-lockout"),
    ],
}
SETUP = f"""\
from twoshaft.jobsheet import open_sheet
from twoshaft.models.wholebuild import Job
from twoshaft.rigs import whole_build
sheet = open_sheet("order-of-work")
job = Job.of(sheet.unit, {GIVEN!r})"""
PRACTICE, MARKED = "whole_build(job)", "whole_build(job, sheet)"
RIG = ".jp-NotebookPanel:not(.lm-mod-hidden) .twoshaft-rig"


@pytest.fixture(scope="module")
def job():
    return Job.of(load_unit("tarnbeck-b5"), GIVEN)


@pytest.fixture(scope="module")
def lab(start_shared_lab):
    return start_shared_lab(released=[cell_digest(text) for text in (SETUP, PRACTICE, MARKED)])


def opened(lab, name, rig, **window):
    """Open a notebook with one bench; returns the window."""
    place = lab.root / name
    if not place.exists():
        place.mkdir()
        cells = [("setup", SETUP), ("rig", rig)]
        nbformat.write(
            new_notebook(
                cells=[new_code_cell(text, metadata={"tags": [tag]}) for tag, text in cells],
                metadata={
                    "kernelspec": {
                        "name": "python3", "display_name": "Python 3", "language": "python",
                    },
                    "twoshaft": {"open": True},
                },
            ),
            place / "bench.ipynb",
        )  # fmt: skip
    return lab.open_notebook(f"{name}/bench.ipynb", lab.page(**window), ready=".ts-step")


FOCUSED = """target => {
  const here = document.activeElement;
  const at = [...document.querySelectorAll(target)].find(one => one.getClientRects().length);
  if (!at) return "absent";
  if (at === here) return "there";
  return here.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING ? "on" : "back";
}"""


def tab_to(page, target):
    """Go to a control by Tab alone."""
    for _ in range(90):
        way = page.evaluate(FOCUSED, target)
        if way == "there":
            return
        assert way != "absent", target
        page.keyboard.press("Tab" if way == "on" else "Shift+Tab")
    raise AssertionError(f"Tab never comes to {target}")


def until(page, condition, seconds=15):
    end = time.monotonic() + seconds
    while not condition():
        assert time.monotonic() < end, page.locator(RIG).inner_text()[:800]
        time.sleep(0.03)


def turned(page):
    """How many messages have been answered."""
    return int(page.locator(RIG).get_attribute("data-turn") or 0)


def press(page, target, key="Enter"):
    """Press a control by key and wait for the answer."""
    tab_to(page, target)
    before = turned(page)
    page.keyboard.press(key)
    until(page, lambda: turned(page) > before)
    page.wait_for_timeout(40)


def decide(page, field, value):
    """Answer one field by keys."""
    place = f'[data-field="{field.name}"]'
    before = turned(page)
    if field.kind == "choice":
        at = [key for key, _ in field.options].index(value)
        tab_to(page, f"{place} input")
        page.keyboard.press("Space")
        for _ in range(at):
            page.keyboard.press("ArrowDown")
        until(page, lambda: page.locator(f'{place} input[value="{value}"]').is_checked())
    elif field.kind == "number":
        tab_to(page, f"{place} input")
        page.keyboard.type(field.store(value))
        page.keyboard.press("Enter")
    elif field.kind == "film":
        tab_to(page, f"{place} .ts-size")
        page.keyboard.type(f"{value[0].size_mm:g}")
        page.keyboard.press("Tab")
        page.evaluate("""place => [...document.querySelectorAll(`${place} button`)]
            .find(b => b.textContent.includes("every stretch")).id = "every-stretch" """, place)  # fmt: skip
        tab_to(page, "#every-stretch")
        page.keyboard.press("Enter")
    else:
        codes = [code for code, _ in field.moves]
        for code in value:
            k = codes.index(code) + 1
            press(page, f"{place} .ts-moves button:nth-child({k})")
        return
    until(page, lambda: turned(page) > before)
    page.wait_for_timeout(40)


def test_a_whole_build_is_finished_by_keyboard_alone(lab, job, screenshot):
    page = opened(lab, "practice", PRACTICE)
    right = {one.step: one.choices for one in right_decisions(job)}
    fields = whole_build(job).fields
    page.locator(f"{RIG} button", has_text="Next ready step").focus()
    next_step = f"{RIG} .ts-bench-steps .ts-tools button"
    for done in range(len(right)):
        press(page, next_step)
        step = page.locator(f'{RIG} .ts-step[aria-current="step"]').get_attribute("data-step")
        for name, value in right[step].items():
            if not name.startswith("verdict-"):
                decide(page, fields[name], value)
        press(page, f"{RIG} .ts-do")
        until(page, lambda n=done + 1: f"{n} of {len(right)}" in page.locator(RIG).inner_text())
        if verdict := right[step].get(f"verdict-{step}"):
            decide(page, fields[f"verdict-{step}"], verdict)
    press(page, f"{RIG} .ts-bench + .ts-tools > button")
    text = page.locator(RIG).inner_text()
    assert "Nothing is wrong with this build" in text
    assert "Signatures" in text
    assert page.locator(f"{RIG} .ts-told").get_attribute("role") == "status"
    screenshot(page, "whole-build-finished")


def test_marked_work_is_kept_tells_no_verdict_and_comes_back(lab, job, screenshot):
    page = opened(lab, "marked", MARKED, dark=True)
    wrong = next(key for key, way in ways_of(job, "fit-lockout").items() if way)
    field = whole_build(job).fields["way-fit-lockout"]
    page.locator(f"{RIG} select").first.select_option("shift")
    press(page, f'{RIG} [data-step="fit-lockout"]')
    decide(page, field, wrong)
    press(page, f"{RIG} .ts-do")
    until(page, lambda: "1 of" in page.locator(RIG).inner_text())
    assert "wrong" not in page.locator(RIG).inner_text().lower()
    screenshot(page, "whole-build-marked")
    page.keyboard.type("abxdd")  # keys stay with the bench
    file = next((lab.root / "marked").glob("*jobsheet.json"))
    kept = json.loads(file.read_text())["fields"]
    assert kept["way-fit-lockout"]["value"] == wrong
    lab.clear()
    again = opened(lab, "marked", MARKED, width=320, height=400)
    until(again, lambda: "1 of" in again.locator(RIG).inner_text())
    assert again.evaluate("document.querySelector('.twoshaft-rig').scrollWidth") <= 320
    screenshot(again, "whole-build-narrow")
