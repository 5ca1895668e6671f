"""Reading faults in a real browser: checks made by keys, answers saved, reopened and marked."""

import pytest

from twoshaft_grader.marking import solve

pytestmark = pytest.mark.browser

MODULE = "09-reading-faults"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
RIG = f"{FRONT} .twoshaft-rig:has(.tsk-board)"


def test_checks_are_made_by_keys_and_the_diagnosis_is_saved_reopened_and_marked(
    learner, wait_until, screenshot
):
    issued = learner.issued
    right = solve(learner.solution, issued, learner.unit)
    page = learner.exercise(live=11)
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

    form = page.locator(f"{FRONT} .twoshaft-live", has_text="What do you write on the card?").last
    says = dict(map(tuple, issued["given"]["own"]["says"]))[right["own-says"]]
    form.get_by_role("radio", name=says, exact=True).focus()
    page.keyboard.press("Space")
    wait_until(lambda: learner.stored("own-says"))

    page = learner.exercise(live=11)
    again = page.get_by_role("radio", name=says, exact=True)
    wait_until(lambda: again.is_checked())
    fields = learner.marked()
    assert fields["own-says"].share == 1
    assert fields["stop-cases"].share == 0


def _finding(rig):
    return rig.locator(".ts-finding").inner_text()


def test_the_board_is_worked_by_keys(learner, wait_until, screenshot):
    page = learner.lesson(live=2)
    rig = page.locator(RIG).first
    box = rig.get_by_label("It showed: Push from fifth straight towards reverse")
    box.focus()
    page.keyboard.type("The direct shift from fifth to reverse is not")
    wait_until(lambda: "3 assembly faults explain it" in _finding(rig))
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
