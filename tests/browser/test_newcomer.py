"""The whole way once: assign, sign in, get, answer by keys, hand in, mark, feedback, export."""

import csv
import json

import pytest
from tests.browser.barriers import found_on

from twoshaft.models import order
from twoshaft.units import load_unit

pytestmark = pytest.mark.browser

FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
FORM = f"{FRONT} .twoshaft-form"


def put_right_by_keys(form, wanted):
    """Sort the form's list with the arrow keys alone."""
    page = form.page
    steps = form.locator("[role=option]")
    steps.first.focus()
    for place, label in enumerate(wanted):
        shown = [text.split("\n")[-1] for text in steps.all_inner_texts()]
        mine = shown.index(label)
        page.keyboard.press("Home")
        for _ in range(mine):
            page.keyboard.press("ArrowDown")
        for _ in range(mine - place):
            page.keyboard.press("Shift+ArrowUp")
    shown = [text.split("\n")[-1] for text in steps.all_inner_texts()]
    assert shown == wanted


def test_from_sign_in_to_export(handed_out, wait_until, screenshot):
    own = handed_out("order-of-work")
    page = own.get()
    assert found_on(page) == []
    page = own.open(page, ready=".twoshaft-form")
    form = page.locator(FORM).first
    form.get_by_text("working as Ada Lindqvist (mo01)").wait_for()
    issued = own.issued
    unit = load_unit("tarnbeck-b5")
    task = order.OrderTask.from_unit(unit, issued["given"]["sub_assembly"]["operations"])
    wanted = order.model_order(task)
    put_right_by_keys(form, [task.label(step) for step in wanted])

    wait_until(lambda: own.stored("sub-assembly-order") == list(wanted))
    screenshot(page, "newcomer-exercise")

    page = own.open(ready=".twoshaft-form")
    again = page.locator(FORM).first
    again.get_by_text("1 of 1 answered").wait_for()
    shown = [text.split("\n")[-1] for text in again.locator("[role=option]").all_inner_texts()]
    assert shown == [task.label(step) for step in wanted]

    page = own.hand_in(page)
    asked = json.loads((own.mine / "assignment.json").read_text())["fields"]
    page.get_by_role("table").get_by_text(f"1 of {asked} answered").wait_for()
    screenshot(page, "newcomer-handed-in")
    assert found_on(page) == []

    feedback = own.given_back()
    own.desk("export")
    (export,) = (own.cohort / "exports").glob("*.csv")
    with open(export, newline="") as file:
        rows = list(csv.DictReader(file))
    marks = {row["outcome"]: float(row["mark"]) for row in rows}
    assert marks["plan-order"] == 8 and sum(marks.values()) == 8
    # Before the due date the feedback names no order; the page is there for the learner.
    assert "8 of 8" in feedback
    page = own.start_page(page)
    page.get_by_role("link", name="Feedback").wait_for()
    screenshot(page, "newcomer-feedback")
    assert found_on(page) == []
    page.set_content(feedback)
    assert found_on(page) == []
