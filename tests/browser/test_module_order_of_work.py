"""Order of work in a real browser: a build half done is pointed at, saved, reopened, marked."""

import pytest
from tests.browser.conftest import FRONT, choose_by_keys

from twoshaft_grader.marking import solve

pytestmark = pytest.mark.browser

MODULE = "02-order-of-work"
PROMPT = "Another build, half done. Point at one part for each line"


def test_places_are_pointed_at_by_keys_saved_reopened_and_marked(learner, wait_until, screenshot):
    right = solve(learner.solution, learner.issued, learner.unit)["next-steps-seen"]
    letters = [one.partition("=")[2] for one in right]
    page = learner.exercise(live=8)
    field = page.locator(FRONT).get_by_role("group", name=PROMPT)
    # The picture is one stop; arrows walk from letter to letter, Enter points for the next line.
    for letter in letters[:2]:
        field.locator("[data-mark][tabindex='0']").focus()
        for _ in range(10):
            if page.evaluate("document.activeElement.dataset.mark") == letter:
                break
            page.keyboard.press("ArrowRight")
        page.keyboard.press("Enter")
    last = field.locator("select").nth(2)
    choose_by_keys(last, last.locator(f"option[value='{letters[2]}']").inner_text().strip())
    wait_until(lambda: learner.stored("next-steps-seen") == right)
    field.scroll_into_view_if_needed()
    screenshot(page, "order-of-work-half-built")

    page = learner.exercise(live=8, dark=True)
    again = page.locator(FRONT).get_by_role("group", name=PROMPT).locator("select")
    wait_until(lambda: [box.input_value() for box in again.all()] == letters)
    screenshot(page, "order-of-work-half-built-dark")
    fields = learner.marked()
    assert fields["next-steps-seen"].share == 1 and fields["next-steps-ready"].share == 0
