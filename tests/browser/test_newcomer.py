"""The whole way once: assign, sign in, get, answer by keys, hand in, mark, feedback, export."""

import csv
import json
import time

import pytest
from typer.testing import CliRunner

from twoshaft.models import order
from twoshaft.units import load_unit
from twoshaft_grader.desk.commands import app

pytestmark = pytest.mark.browser

FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
FORM = f"{FRONT} .twoshaft-form"


def twoshaft(*words):
    result = CliRunner().invoke(app, [str(word) for word in words])
    assert result.exit_code == 0, result.output
    return result.output


@pytest.fixture(scope="module")
def cohort(tmp_path_factory):
    """A cohort of one, with the order of work handed out."""
    folder = tmp_path_factory.mktemp("college") / "evening"
    roster = folder.parent / "roster.csv"
    roster.write_text("id,family name,given name,group\nev01,Okafor,Nneka,A\n")
    twoshaft(
        "cohort", "make", folder, "--name", "Evening group", "--college", "An invented college"
    )
    twoshaft("roster", "take", roster, "--cohort", folder)
    twoshaft("module", "assign", "order-of-work", "--due", "2099-01-31", "--cohort", folder)
    return folder


def the_word(cohort):
    with open(cohort / "sign-in-slips.csv", newline="") as file:
        row = next(csv.DictReader(file))
    return next(value for key, value in row.items() if "word" in key)


def wait_until(true, seconds=60):
    end = time.monotonic() + seconds
    while not true():
        assert time.monotonic() < end, "waited in vain"
        time.sleep(0.1)


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


def test_from_sign_in_to_export(cohort, start_shared_lab, screenshot):
    lab = start_shared_lab(cohort / "workplace")
    page = lab.open_notebook("start-here.ipynb")
    page.locator(f"{FRONT} select").first.select_option(index=1)
    page.locator(f"{FRONT} .twoshaft input").first.fill(the_word(cohort))
    page.get_by_role("button", name="Sign in").click()
    page.get_by_text("Working as Nneka Okafor (ev01)").first.wait_for()
    page.get_by_role("button", name="Get").click()
    page.get_by_role("link", name="Open").wait_for()

    mine = cohort / "workplace/ev01/order-of-work-1"
    page = lab.open_notebook(
        "ev01/order-of-work-1/02-order-of-work.ipynb", page, ready=".twoshaft-form"
    )
    form = page.locator(FORM).first
    form.get_by_text("working as Nneka Okafor (ev01)").wait_for()
    issued = json.loads((cohort / "issued/order-of-work-1/ev01.json").read_text())
    unit = load_unit("tarnbeck-b5")
    task = order.OrderTask.from_unit(unit, issued["given"]["sub_assembly"]["operations"])
    wanted = order.model_order(task)
    put_right_by_keys(form, [task.label(step) for step in wanted])

    def stored():
        path = mine / "jobsheet.json"
        fields = json.loads(path.read_text())["fields"] if path.exists() else {}
        return fields.get("sub-assembly-order", {}).get("value")

    wait_until(lambda: stored() == list(wanted))
    screenshot(page, "newcomer-exercise")
    page.close()

    page = lab.open_notebook("ev01/order-of-work-1/02-order-of-work.ipynb", ready=".twoshaft-form")
    again = page.locator(FORM).first
    again.get_by_text("1 of 1 answered").wait_for()
    shown = [text.split("\n")[-1] for text in again.locator("[role=option]").all_inner_texts()]
    assert shown == [task.label(step) for step in wanted]

    page = lab.open_notebook("start-here.ipynb", page)
    page.get_by_role("button", name="Hand in").click()
    page.get_by_text("receipt").first.wait_for()
    screenshot(page, "newcomer-handed-in")

    twoshaft("collect", "--cohort", cohort)
    twoshaft("mark", "--cohort", cohort)
    twoshaft("give-back", "--cohort", cohort)
    twoshaft("export", "--cohort", cohort)
    (export,) = (cohort / "exports").glob("*.csv")
    with open(export, newline="") as file:
        rows = list(csv.DictReader(file))
    marks = {row["outcome"]: float(row["mark"]) for row in rows}
    assert marks["plan-order"] == 8 and sum(marks.values()) == 8
    # Before the due date the feedback names no order; the page is there for the learner.
    (feedback,) = mine.glob("feedback/**/*.html")
    assert "8 of 8" in feedback.read_text()
    page = lab.open_notebook("start-here.ipynb", page)
    page.get_by_role("link", name="Feedback").wait_for()
    screenshot(page, "newcomer-feedback")
