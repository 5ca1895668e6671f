"""The module Threaded joints in a real browser: a cover tightened by keys, read, saved, marked."""

import json
import shutil
from pathlib import Path

import pytest
from tests.browser.conftest import choose_by_keys

from twoshaft.jobsheet import read_sheet
from twoshaft.models import joint
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import load_solution, mark_sheet, solve

pytestmark = pytest.mark.browser

ROOT = Path(__file__).parents[2]
ASSIGNMENT = "threaded-joints-1"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
FACE = f"{FRONT} .twoshaft-rig:has(.tsj-drawing)"


@pytest.fixture(scope="module")
def lab(shared_lab):
    lab = shared_lab
    folder = lab.root / "a01" / ASSIGNMENT
    folder.mkdir(parents=True)
    (lab.root / "a01" / "learner.json").write_text(
        json.dumps({"id": "a01", "family_name": "Example", "given_name": "Ana"})
    )
    unit = load_unit("tarnbeck-b5")
    known = {
        "format": 1,
        "assignment": ASSIGNMENT,
        "module": "threaded-joints",
        "attempt": 1,
        "cohort": "example",
        "salt": "salt",
        "unit": "tarnbeck-b5",
        "unit_version": unit.identity.version,
    }
    (folder / "assignment.json").write_text(json.dumps(known))
    shutil.copy(ROOT / "exercises" / "03-threaded-joints.ipynb", folder / "exercise.ipynb")
    shutil.copy(ROOT / "course" / "lessons" / "03-threaded-joints.ipynb", lab.root / "lesson.ipynb")
    lab.here = folder
    yield lab


@pytest.fixture(scope="module")
def issued():
    unit = load_unit("tarnbeck-b5")
    return issue_record("threaded-joints", unit, salt="salt", learner="a01", attempt=1)


def stored(folder, name):
    path = folder / "jobsheet.json"
    return (
        json.loads(path.read_text())["fields"].get(name, {}).get("value") if path.exists() else None
    )


def reach(page, rig, bolt):
    """Go to a bolt by arrow keys, from the one that can be tabbed to."""
    rig.locator("[data-bolt][tabindex='0']").focus()
    page.keyboard.press("Home")
    for _ in range(bolt - 1):
        page.keyboard.press("ArrowRight")


def test_tighten_by_keys_answer_reopen_and_be_marked(lab, wait_until, issued, screenshot):
    face = issued["given"]["face"]
    solution = load_solution(ROOT / "solutions" / "03-threaded-joints.ipynb")
    unit = load_unit("tarnbeck-b5")
    right = solve(solution, issued, unit)
    page = lab.open_notebook(f"a01/{ASSIGNMENT}/exercise.ipynb", ready=".tsj-drawing")
    before = page.locator(f"{FRONT} .jp-Cell").count()
    rig = page.locator(FACE)
    rig.get_by_role("button", name="Start all by hand").focus()
    page.keyboard.press("Enter")
    rig.get_by_text("none is tight yet").wait_for()
    for number, bolt in enumerate(face["order"], 1):
        reach(page, rig, bolt)
        page.keyboard.press("Enter")
        count = f"{number} of {len(face['order'])} bolts"
        rig.locator(".ts-finding", has_text=count).wait_for()
    screenshot(page, "threaded-joints-face")
    said = [bolt.get_attribute("aria-label") for bolt in rig.locator("[data-bolt]").all()]
    clamps = [float(text.split(", ")[1].removesuffix(" kN")) for text in said]
    loosest = clamps.index(min(clamps)) + 1
    form = page.locator(f"{FRONT} .twoshaft-form", has_text="Which bolt is loosest")
    form.get_by_role("radio", name=f"Bolt {loosest}", exact=True).focus()
    page.keyboard.press("Space")
    form.get_by_label("How much clamp does it have then?").fill(f"{min(clamps)} kN")
    page.keyboard.press("Enter")
    wait_until(lambda: stored(lab.here, "face-clamp") == f"{min(clamps)} kN")
    wait_until(lambda: stored(lab.here, "face-loosest") == f"bolt-{loosest}")
    assert page.locator(f"{FRONT} .jp-Cell").count() == before

    found = issued["given"]["asked"]["threads"]
    answers = dict(issued["given"]["asked"]["threads_answers"])
    states = page.get_by_role("group", name="What do you do with each of these threads?")
    for (_, text, _), answer in zip(found, right["state-do"], strict=True):
        choose_by_keys(states.get_by_label(text, exact=True), answers[answer.split("=")[1]])
    wait_until(lambda: stored(lab.here, "state-do") == right["state-do"])
    states.scroll_into_view_if_needed()
    screenshot(page, "threaded-joints-states")

    page = lab.open_notebook(f"a01/{ASSIGNMENT}/exercise.ipynb", ready=".tsj-drawing")
    again = page.locator(f"{FRONT} .twoshaft-form", has_text="Which bolt is loosest")
    clamp = again.get_by_label("How much clamp does it have then?")
    wait_until(lambda: clamp.input_value() == f"{min(clamps)} kN")
    wait_until(again.get_by_role("radio", name=f"Bolt {loosest}", exact=True).is_checked)

    sheet = read_sheet(lab.here / "jobsheet.json")
    marked = mark_sheet(sheet, issued, solution, unit=unit)
    shares = {field.name: field.share for field in marked.fields}
    assert right["face-loosest"] == f"bolt-{loosest}"
    assert shares["face-loosest"] == shares["face-clamp"] == 1
    assert shares["face-spread"] == 0
    assert shares["state-do"] == 1


def opened(lab, page=None, *, ready):
    """The lesson with all that is shut until something is said."""
    page = lab.open_notebook("lesson.ipynb", page, ready=".ts-teacher")
    page.locator(f"{FRONT} .ts-teacher").press("Enter")
    page.wait_for_selector(f"{FRONT} {ready}")
    return page


def test_the_chooser_follows_the_slider_and_its_end_is_shown(lab, screenshot):
    page = opened(lab, ready=".tsj-settings")
    rig = page.locator(f"{FRONT} .twoshaft-rig:has(.tsj-settings)")
    # Many moves at once: the last one is what stays on the screen.
    rig.get_by_label("Torque", exact=True).evaluate(
        "(input) => { for (let v = 5; v <= 33; v += 1) { input.value = v;"
        " input.dispatchEvent(new Event('input', { bubbles: true })); } }"
    )
    rig.locator(".ts-finding", has_text="33 N·m leaves").wait_for()
    # What is chosen next is answered after all of them: the torque has not gone back by then.
    rig.get_by_label("State of the thread").select_option("oiled")
    bolts = joint.Fastening.of(load_unit("tarnbeck-b5"), "case-bolts")
    clamp = bolts.bounds("oiled", Q(33, "N*m"))
    said = f"33 N·m leaves {clamp.low_n / 1e3:.1f} to {clamp.high_n / 1e3:.1f} kN"
    rig.locator(".ts-finding", has_text=said).wait_for()
    assert rig.get_by_label("Torque", exact=True).input_value() == "33"
    screenshot(page, "threaded-joints-chooser")


@pytest.mark.parametrize("dark", [False, True])
def test_the_lesson_opens_without_a_fault(lab, screenshot, dark):
    page = opened(lab, lab.page(dark=dark), ready=".tsj-drawing")
    page.locator(FACE).scroll_into_view_if_needed()
    screenshot(page, f"threaded-joints-lesson-{'dark' if dark else 'light'}")
    trouble = page.locator(f"{FRONT} .ts-alert:not(:empty), {FRONT} [data-mime-type*=stderr]")
    assert trouble.count() == 0
