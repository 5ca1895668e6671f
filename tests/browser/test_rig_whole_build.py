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
SHORT = ["fit-input-seal", "fit-input-front-bearing", "fit-magnet"]
BY_HAND = f"whole_build(Job.of(sheet.unit, {{'operations': {SHORT!r}}}))"
PRESSED, READ = "fit-input-front-bearing", "read-side-gear-play"
STAGE = "The differential"
TOOLS = f"whole_build(Job.of(sheet.unit, {{'operations': {[PRESSED, READ]!r}}}))"
BY_NEXT = 55
"""Steps that are taken as the next ready one; the others are chosen in the list."""
MOST_STROKES = 454
"""A whole build by keyboard took so many when the bench was a list of sentences."""
RIG = ".jp-NotebookPanel:not(.lm-mod-hidden) .twoshaft-rig"


@pytest.fixture(scope="module")
def job():
    return Job.of(load_unit("tarnbeck-b5"), GIVEN)


@pytest.fixture(scope="module")
def lab(start_shared_lab):
    return start_shared_lab(
        released=[cell_digest(text) for text in (SETUP, PRACTICE, MARKED, BY_HAND, TOOLS)]
    )


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
        self.page, self.strokes = page, 0

    def press(self, key, times=1):
        for _ in range(times):
            self.page.keyboard.press(key)
            self.strokes += 1

    def type(self, text):
        self.page.keyboard.type(text)
        self.strokes += len(text)

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
            if at < 2:
                self.send("ArrowDown") if at else self.send("Space")
            else:  # a figure chooses the answer of that place
                self.send(str(at + 1))
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
    assert keys.strokes <= MOST_STROKES
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


def carry(page, handle, part, aside=0.0):
    """Carry what a hand takes hold of to the place of a part in the section."""
    frame = page.locator(f"{RIG} .ts-build-unit .ts-unit")
    frame.scroll_into_view_if_needed()
    handle.scroll_into_view_if_needed()
    box = handle.bounding_box()
    page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    page.mouse.down()
    page.mouse.move(box["x"] + 40, box["y"] + 40, steps=3)
    until(page, lambda: page.locator(".ts-ghost").count() == 1)
    until(page, lambda: page.locator(f"{RIG}[aria-busy=false]").count())
    place = page.evaluate(PLACE, [f"{RIG} .ts-build-unit [data-part={part}]"])
    page.mouse.move(place[0] + aside, place[1], steps=5)
    return place


PLACE = """([selector]) => {
  const box = [...document.querySelectorAll(selector)]
    .map((one) => one.getBoundingClientRect()).find((one) => one.width > 0);
  return [box.left + box.width / 2, box.top + box.height / 2];
}"""


def drop(page):
    page.mouse.up()
    assert page.locator(".ts-ghost").count() == 0
    until(page, lambda: page.locator(f"{RIG}[aria-busy=false]").count())


def test_parts_are_taken_turned_and_put_in_their_place_by_hand(lab, screenshot):
    """By mouse: from the tray to the section, the wrong way round, to a wrong place."""
    page = opened(lab, "by-hand", BY_HAND)
    rig, said = page.locator(RIG), page.locator(f"{RIG} .ts-told")
    seal = page.locator(f'{RIG} [data-step="fit-input-seal"] .ts-thumb')
    carry(page, seal, "input-shaft")
    screenshot(page, "whole-build-carried")
    drop(page)
    assert "is not done there. That is the place of" in said.inner_text()
    held = page.locator(f"{RIG} .ts-held-frame")
    drawn = held.inner_html()
    turn = page.locator(f"{RIG} .ts-held-box button")
    turn.click()
    until(page, lambda: rig.locator(".ts-hand input:checked").count() == 1)
    first = held.inner_html()
    turn.click()
    until(page, lambda: held.inner_html() not in (drawn, first))
    ways = ways_of(Job.of(load_unit("tarnbeck-b5"), {"operations": SHORT}), "fit-input-seal")
    wrong = next(key for key, way in ways.items() if way)
    while not rig.locator(f'.ts-hand input[value="{wrong}"]').is_checked():
        turn.click()
    screenshot(page, "whole-build-turned")
    carry(page, held, "input-seal")
    drop(page)
    until(page, lambda: "1 of 3" in rig.locator(".ts-finding").inner_text())
    assert "wrong way round" in said.inner_text()
    verdict = said.bounding_box()
    assert verdict["y"] > 0 and verdict["y"] + verdict["height"] < 720
    screenshot(page, "whole-build-placed")


def test_a_finger_carries_a_part_in_a_narrow_window_and_in_forced_colours(lab, screenshot):
    page = opened(lab, "by-hand", BY_HAND, width=390, height=844)
    page.emulate_media(forced_colors="active")
    assert page.evaluate("document.querySelector('.twoshaft-rig').scrollWidth") <= 390
    thumb = page.locator(f"{RIG} .ts-thumb").first
    assert thumb.evaluate("one => getComputedStyle(one).touchAction") == "none"
    page.locator(f'{RIG} [data-step="fit-magnet"]').click()
    held = page.locator(f"{RIG} .ts-held-frame svg")
    held.wait_for()
    screenshot(page, "whole-build-by-finger")
    magnet = f"{RIG} .ts-build-unit [data-part=magnet]"
    hand = held.bounding_box()
    assert page.evaluate(PLACE, [magnet])[1] > 844, "it is not in sight yet"
    page.mouse.move(hand["x"] + hand["width"] / 2, hand["y"] + hand["height"] / 2)
    page.mouse.down()
    page.mouse.move(195, 835, steps=4)
    until(page, lambda: page.evaluate(PLACE, [magnet])[1] < 780)
    page.mouse.move(195, 500)
    until(page, lambda: page.evaluate(PLACE, [magnet]) == page.evaluate(PLACE, [magnet]))
    place = page.evaluate(PLACE, [magnet])
    page.mouse.move(*place, steps=3)
    screenshot(page, "whole-build-carried-on")
    drop(page)
    until(page, lambda: "1 of 3" in page.locator(f"{RIG} .ts-finding").inner_text())


RINGS = """(part) => {
  const boxes = [...document.querySelectorAll(`.ts-build-unit [data-part=${part}]`)]
    .map((one) => one.getBoundingClientRect()).filter((one) => one.width > 0);
  const box = boxes[boxes.length - 1];
  return [box.right, box.top + 3];
}"""
"""The rear face of the outer ring of a bearing, on the screen."""


def test_a_driver_and_a_dial_are_placed_by_hand(lab, screenshot):
    page = opened(lab, "tools", TOOLS)
    rig = page.locator(RIG)
    page.locator(f'{RIG} [data-step="{PRESSED}"]').click()
    frame = page.locator(f"{RIG} .ts-tool-frame")
    frame.locator("svg").wait_for()
    assert rig.locator(".tsu-marks .tsu-tool").count() == 0
    carry(page, frame, "input-front-bearing")
    page.mouse.move(*page.evaluate(RINGS, "input-front-bearing"), steps=3)
    drop(page)
    outer = rig.locator(f'[data-field="driver-{PRESSED}"] input[value="outer"]')
    until(page, outer.is_checked)
    until(page, lambda: rig.locator(".tsu-marks .tsu-tool").count() == 1)
    assert "on the rear face of the outer ring" in rig.locator(".ts-in-picture").inner_text()
    screenshot(page, "whole-build-driver-placed")
    rig.locator(".ts-stage-choice").select_option(label=STAGE)
    page.locator(f'{RIG} [data-step="{READ}"]').click()
    held = page.locator(f"{RIG} .ts-held-frame")
    until(page, lambda: "Dial" in rig.locator(".ts-held-box").inner_text())
    carry(page, held, "right-drive-seal")
    drop(page)
    assert "is not done there. That is the place of" in rig.locator(".ts-told").inner_text()
    carry(page, held, "diff-gears")
    drop(page)
    until(page, lambda: "1 of 2" in rig.locator(".ts-finding").inner_text())
    until(page, lambda: rig.locator(".tsu-marks .tsu-tool").count() == 1)


def test_a_driver_and_a_dial_are_placed_by_keys_and_stay_seen(lab, screenshot):
    page = opened(lab, "tools", TOOLS, dark=True)
    rig, keys = page.locator(RIG), Keys(page)
    tools = rig.locator(".tsu-marks .tsu-tool")
    keys.tab_to(".ts-buildlist")
    while not keys.at(f'[data-step="{PRESSED}"]'):
        keys.press("ArrowDown")
    keys.send("Enter")
    until(page, lambda: keys.at(".ts-hand"))
    keys.tab_to(f'[data-field="driver-{PRESSED}"] input')
    drawn = set()
    for figure, ring in enumerate(("inner", "outer", "both"), 1):
        keys.send(str(figure))
        assert rig.locator(f'[data-field="driver-{PRESSED}"] input[value="{ring}"]').is_checked()
        until(page, lambda: tools.count() == 1)
        drawn.add(tools.inner_html())
    assert len(drawn) == 3
    screenshot(page, "whole-build-driver-by-keys")
    keys.tab_to(".ts-stage-choice", "Shift+Tab")
    keys.type(STAGE)
    keys.tab_to(".ts-buildlist")
    assert keys.at(f'[data-step="{READ}"]')
    keys.send("Enter")
    until(page, lambda: keys.at(".ts-hand"))
    keys.send("Enter")
    until(page, lambda: tools.count() == 1)
    assert keys.at('.ts-hand[data-stands="true"]')
    assert (
        "Dial indicator on a stand: on the front end" in rig.locator(".ts-in-picture").inner_text()
    )
    screenshot(page, "whole-build-dial-by-keys")
