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
PRACTICE, MARKED = "whole_build(Job.of(sheet.unit))", "whole_build(job, sheet)"
BY_NEXT = 55
"""Steps that are taken as the next ready one; the others are chosen in the list."""
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
    return lab.open_notebook(
        f"{name}/bench.ipynb", lab.page(**window) if window else None, ready=".ts-buildstep"
    )


def until(page, condition, seconds=120):
    end = time.monotonic() + seconds
    while not condition():
        assert time.monotonic() < end, page.locator(RIG).inner_text()[:800]
        time.sleep(0.01)


class Keys:
    """Hands on the keyboard alone: what is pressed goes to wherever the focus is."""

    def __init__(self, page):
        self.page, self.type = page, page.keyboard.type

    def press(self, key, times=1):
        for _ in range(times):
            self.page.keyboard.press(key)

    def at(self, place):
        """Whether the focus is there, or within."""
        return self.page.locator(f"{RIG} {place}:focus, {RIG} {place} :focus").count() > 0

    def tab_to(self, place, key="Tab", most=120):
        """Go on by Tab until the focus is there."""
        for _ in range(most):
            if self.at(place):
                return
            self.press(key)
        raise AssertionError(f"{key} never comes to {place}")

    def send(self, key, times=1):
        """Press a key that the bench answers, and wait for the answer."""
        self.press(key, times)
        until(self.page, lambda: self.page.locator(f"{RIG}[aria-busy=false]").count())

    def decide(self, field, value):
        """Answer one field, coming to it by Tab."""
        place = f'[data-field="{field.name}"]'
        if field.kind == "choice":
            self.tab_to(f"{place} input")
            at = [key for key, _ in field.options].index(value)
            self.send("ArrowDown", at) if at else self.send("Space")
            assert self.page.locator(f'{place} input[value="{value}"]').is_checked()
        elif field.kind == "number":
            self.tab_to(f"{place} input")
            self.type(field.store(value))
        elif field.kind == "film":
            assert len({(one.hand, one.size_mm, one.side) for one in value}) == 1
            self.tab_to(f"{place} .ts-size")
            self.type(f"{value[0].size_mm:g}")
            self.tab_to(f"{place} button:text-is('Lay it on every stretch')")
            self.send("Enter")
        else:
            moves = [code for code, _ in field.moves]
            at = -1
            for code in value:
                to = moves.index(code)
                button = f"{place} .ts-moves button:nth-child({to + 1})"
                self.tab_to(button, "Tab" if to > at else "Shift+Tab")
                self.send("Enter")
                at = to


def choose_ready(keys):
    """Choose a step that is ready in the list of steps, from wherever it was left."""
    keys.tab_to(".ts-buildlist")
    for _ in range(9):
        rows = keys.page.locator(f"{RIG} .ts-buildstep")
        marks = rows.evaluate_all(
            "rows => rows.map(r => [r.matches('.ts-buildstep-ready'), r.matches(':focus')])"
        )
        here = next(k for k, (_, focused) in enumerate(marks) if focused)
        ready = [k for k, (is_ready, _) in enumerate(marks) if is_ready]
        if ready:
            to = min(ready, key=lambda k: abs(k - here))
            keys.press("ArrowDown" if to > here else "ArrowUp", abs(to - here))
            return
        keys.press("ArrowRight")
    raise AssertionError("no step is ready in any stage")


def test_a_whole_unit_is_built_by_keyboard_alone(lab, screenshot):
    """Every step of the unit with every decision, to the record: no click, nothing set by script."""
    job = Job.of(load_unit("tarnbeck-b5"))
    right = {one.step: one.choices for one in right_decisions(job)}
    fields = whole_build(job).fields
    page = opened(lab, "practice", PRACTICE)
    keys = Keys(page)
    finding = page.locator(f"{RIG} .ts-finding")
    keys.tab_to(".ts-next")
    for done in range(len(right)):
        if done >= BY_NEXT:
            choose_ready(keys)
        if not keys.at(".ts-hand"):  # after a check the next step is in hand already
            keys.send("Enter")
            until(page, lambda: keys.at(".ts-hand"))
        step = page.locator(f'{RIG} .ts-buildstep[aria-current="step"]').get_attribute("data-step")
        before = {n: v for n, v in right[step].items() if not n.startswith("verdict-")}
        for name, value in before.items():
            keys.decide(fields[name], value)
        if any(fields[name].kind in ("film", "path") for name in before):
            keys.tab_to(".ts-do")
        keys.send("Enter")
        until(page, lambda n=done + 1: finding.inner_text().startswith(f"{n} of {len(right)} "))
        if verdict := right[step].get(f"verdict-{step}"):
            until(page, lambda step=step: keys.at(f'[data-field="verdict-{step}"]'))
            keys.decide(fields[f"verdict-{step}"], verdict)
        if keys.at(".ts-hand"):  # something was read: Enter goes on
            keys.press("Enter")
            until(page, lambda: not keys.at('.ts-hand[data-stands="true"]'))
    until(page, lambda: keys.at(".ts-over"))
    keys.send("Enter")
    until(page, lambda: "Nothing is wrong with this build" in page.locator(RIG).inner_text())
    assert "Signatures" in page.locator(RIG).inner_text()
    until(page, lambda: keys.at(".ts-told"))
    assert page.locator(f"{RIG} .ts-told").get_attribute("role") == "status"
    screenshot(page, "whole-build-finished")


def test_marked_work_is_kept_tells_no_verdict_and_comes_back(lab, job, screenshot):
    page = opened(lab, "marked", MARKED, dark=True)
    wrong = next(key for key, way in ways_of(job, "fit-lockout").items() if way)
    stage = next(s.name for s in job.unit.stages if s.id == job.task.stage("fit-lockout"))
    field = whole_build(job).fields["way-fit-lockout"]
    keys = Keys(page)
    keys.tab_to(".ts-stage-choice")
    keys.type(stage)
    keys.tab_to(".ts-buildlist")
    for _ in job.task.steps:
        if not keys.at('[data-step="fit-lockout"]'):
            keys.press(job.task.label("fit-lockout")[0])
    keys.send("Enter")
    until(page, lambda: keys.at(".ts-hand"))
    keys.decide(field, wrong)
    keys.send("Enter")
    until(page, lambda: "1 of" in page.locator(RIG).inner_text())
    until(page, lambda: keys.at(".ts-buildlist"))
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
