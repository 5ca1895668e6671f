"""Inspect and decide in a real browser: pictures chosen by keys, answers saved, reopened, marked."""

import pytest
from tests.browser.conftest import choose_by_keys

from twoshaft_grader.marking import solve

pytestmark = pytest.mark.browser

MODULE = "12-inspect-and-decide"
FORM = ".jp-NotebookPanel:not(.lm-mod-hidden) .twoshaft-live"
ASKED = "Which picture shows it?"


def test_pictures_are_chosen_saved_reopened_and_marked(learner, wait_until, screenshot):
    right = solve(learner.solution, learner.issued, learner.unit)
    page = learner.exercise(live=11)
    form = page.locator(FORM, has_text=ASKED).first
    fieldset = form.locator("fieldset", has_text=ASKED).first
    assert fieldset.locator(".ts-picture-card svg").count() == 6
    boxes = fieldset.locator("select")
    answers = dict(one.split("=") for one in right["races-which"])
    for place, (damage, _) in enumerate(learner.issued["given"]["races"]["names"]):
        boxes.nth(place).focus()
        page.keyboard.type(f"{answers[damage]}: ")
    wait_until(lambda: len(learner.stored("races-which") or ()) == len(answers))
    form.scroll_into_view_if_needed()
    screenshot(page, "inspect-races")
    page.locator(FORM, has_text="The widest flat of gear").first.scroll_into_view_if_needed()
    screenshot(page, "inspect-dogs")

    page = learner.exercise(live=11)
    again = page.locator(FORM, has_text=ASKED).first.locator("select").first
    wait_until(lambda: again.input_value() != "")
    fields = learner.marked()
    assert fields["races-which"].share == 1
    assert fields["dogs-do"].share == 0 and not fields["dogs-do"].passed


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_under_the_lamp_damage_is_seen_by_keys(learner, wait_until, screenshot, dark):
    look = "dark" if dark else "light"
    page = learner.lesson(live=3, dark=dark)
    lamps = page.locator(".jp-NotebookPanel:not(.lm-mod-hidden) .twoshaft", has=page.locator("svg"))
    for part, damage, said in (
        ("race", "False brinelling", "Parts under the lamp"),
        ("flank", "Scuffing", "Parts under the lamp"),
    ):
        rig = (
            lamps.filter(has=page.get_by_role("group", name=said))
            .filter(has=page.locator("option", has_text=damage))
            .first
        )
        choose_by_keys(rig.locator("select").first, damage)
        wait_until(lambda rig=rig, damage=damage: damage in rig.inner_text())
        rig.scroll_into_view_if_needed()
        screenshot(page, f"inspect-{part}-{look}")
    guard = lamps.filter(has=page.get_by_role("group", name="A reading beside its limit")).first
    slider = guard.locator("input[type=range]").first
    slider.focus()
    page.keyboard.press("Home")
    wait_until(lambda: "proven bad" in guard.inner_text())
    guard.scroll_into_view_if_needed()
    screenshot(page, f"inspect-guard-{look}")
