"""Strip, mark, clean in a real browser: parts come off by keys, answers saved, reopened, marked."""

import pytest
from tests.browser.conftest import choose_by_keys

from twoshaft_grader.marking import solve

pytestmark = pytest.mark.browser

MODULE = "11-strip-mark-clean"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
FORM = f"{FRONT} .twoshaft-live"


def test_lines_are_answered_by_keys_saved_reopened_and_marked(learner, wait_until, screenshot):
    issued = learner.issued
    right = solve(learner.solution, issued, learner.unit)
    page = learner.exercise(live=10)
    form = page.locator(FORM, has_text="what would you do about each?").last
    boxes = form.locator("fieldset", has_text="what would you do about each?").locator("select")
    texts = dict(map(tuple, issued["given"]["lost"]["when"]))
    answers = dict(one.split("=") for one in right["lost-when"])
    for place, (line, _) in enumerate(issued["given"]["lost"]["readings"]):
        choose_by_keys(boxes.nth(place), texts[answers[line]])
    wait_until(lambda: len(learner.stored("lost-when") or ()) == len(answers))
    form.scroll_into_view_if_needed()
    screenshot(page, "strip-lost")

    page = learner.exercise(live=10)
    again = (
        page.locator(FORM, has_text="what would you do about each?").last.locator("select").first
    )
    wait_until(lambda: again.input_value() != "")
    fields = learner.marked()
    assert fields["lost-when"].share == 1 and fields["lost-when"].passed
    assert fields["safe-do"].share == 0
