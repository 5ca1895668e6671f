"""The desk of staff in a real JupyterLab: each page's main path, by keyboard."""

import csv
import json
import os
import shutil
import signal
from pathlib import Path

import pytest
from tests.browser.barriers import found_on
from tests.browser.conftest import FRONT, Lab, _starter, twoshaft

from twoshaft import units
from twoshaft.jobsheet import Answer, SheetData
from twoshaft.jupyter.released import cell_digest
from twoshaft.outcomes import load_outcomes, load_rules
from twoshaft_grader.cohort.assessors import assessors_of, enter_assessor
from twoshaft_grader.cohort.assign import assign, assignments_of
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.intake import roster_of, take_in
from twoshaft_grader.cohort.observations import observations_of
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.supervised import sittings_of
from twoshaft_grader.desk_pages.notebook import DESK, DESK_CELL, write_desk
from twoshaft_grader.desk_pages.pages import PAGES

pytestmark = pytest.mark.browser
ROSTER = "id,family name,given name,group\na1,Lindqvist,Ada,A\nb2,Okoro,Ben,B\nc3,Moss,Cy,B\n"
# What of the desk reaches out of it to the right; tables scroll in a box of their own.
OUT_OF_SIGHT = """() => {
  const desk = document.querySelector(".jp-MainAreaWidget:not(.lm-mod-hidden) .twoshaft-desk");
  const edge = desk.getBoundingClientRect().right + 1;
  return [...desk.querySelectorAll("*")]
    .filter((node) => !node.closest(".ts-desk-scroll") || node.matches(".ts-desk-scroll"))
    .filter((node) => node.getBoundingClientRect().right > edge)
    .map((node) => node.tagName + " " + node.className + " " + node.textContent.slice(0, 40));
}"""
NAMED = """() => {
  const node = document.activeElement;
  const label = node.labels?.[0]?.textContent ?? "";
  return node.getAttribute("aria-label") || label || node.textContent || "";
}"""


@pytest.fixture(scope="module")
def group(tmp_path_factory):
    """A new cohort."""
    root = tmp_path_factory.mktemp("desk") / "group"
    twoshaft("cohort", "make", root, "--name", "Evening group", "--college", "An invented college")
    return open_cohort(root)


@pytest.fixture(scope="module")
def lab(chromium, tmp_path_factory, group):
    """JupyterLab as staff have it."""
    write_desk(group.root)
    starter = _starter(chromium, tmp_path_factory.mktemp("lab"))
    start = next(starter)
    yield start(group.root, role="staff", released=[cell_digest(DESK_CELL)], desk=DESK)
    next(starter, None)


class AtTheDesk:
    """Hands on the keyboard at the desk."""

    def __init__(self, lab: Lab, **window):
        self.page = lab.page(**window)
        self.page.goto(lab.address(DESK))
        self.page.wait_for_selector(f"{FRONT} .twoshaft-desk h2")

    def to(self, name):
        """Press Tab until what is called so has the focus."""
        for _ in range(150):
            if self.page.evaluate(NAMED).strip() == name:
                return self
            self.page.keyboard.press("Tab")
        raise AssertionError(f"no Tab leads to {name}")

    def press(self, name, says=""):
        """Press a button, and wait for what is said then."""
        self.to(name).page.keyboard.press("Enter")
        if says:
            self.said(says)

    def tick(self, name):
        """Tick a box."""
        self.to(name).page.keyboard.press("Space")

    def type(self, name, text):
        """Type into a box."""
        self.to(name).page.keyboard.type(text)

    def choose(self, name, option):
        """Choose from a list by its first letters."""
        self.type(name, option)

    def said(self, text):
        """Wait for the line that says what was done."""
        self.page.locator(f"{FRONT} .ts-said").get_by_text(text).wait_for()

    def turn_to(self, title):
        """Open another page."""
        self.page.locator(f"{FRONT} .ts-desk-pages").get_by_role("button", name=title).focus()
        self.page.keyboard.press("Enter")
        self.page.locator(f"{FRONT} h2").get_by_text(title, exact=True).wait_for()
        self.page.locator(f'{FRONT} .ts-desk-body[aria-busy="false"]').wait_for()


def test_a_group_is_taken_in_moved_withdrawn_and_brought_back(lab, group, screenshot, tmp_path):
    desk = AtTheDesk(lab)
    page = desk.page
    assert page.locator(f"{FRONT} .jp-Cell-inputWrapper .cm-editor:visible").count() == 0
    roster = tmp_path / "roster.csv"
    roster.write_text(ROSTER)
    page.locator(f"{FRONT} input[type=file]").set_input_files(roster)
    desk.press("Show what would change", "Nothing is written yet")
    screenshot(page, "desk-roster-before")
    assert roster_of(group) == []
    desk.press("Take it in", "3 added, 0 corrected, 0 as before.")
    desk.tick("b2 Okoro Ben")
    desk.type("Move to group", "A")
    desk.press("Move", "b2: now in group A.")
    desk.tick("c3 Moss Cy")
    page.locator(f"{FRONT}").get_by_label("Reason to withdraw").focus()
    page.keyboard.type("moved away")
    desk.press("Withdraw")
    screenshot(page, "desk-group-sure")
    desk.press("Yes: Withdraw", "Withdrawn: c3.")
    assert [one.id for one in roster_of(group)] == ["a1", "b2"]
    desk.tick("c3 Moss Cy")
    desk.press("Bring the ticked back", "Back in the group")
    assert [one.group for one in roster_of(group)] == ["A", "A", "B"]
    # A single key changes no cell, and a table is saved as a file.
    page.keyboard.press("x")
    with page.expect_download() as saved:
        desk.press("Save as CSV: Learners")
    with open(saved.value.path(), newline="", encoding="utf-8-sig") as file:
        assert [row["id"] for row in csv.DictReader(file)] == ["a1", "b2", "c3"]
    screenshot(page, "desk-group")
    dark = AtTheDesk(lab, dark=True)
    screenshot(dark.page, "desk-group-dark")


def test_a_module_is_handed_out_to_a_group_with_what_stands_in_the_way_said_before(
    lab, group, screenshot
):
    if not group.roster_file.exists():
        learners = [Learner("a1", "Lindqvist", "Ada", "A"), Learner("c3", "Moss", "Cy", "B")]
        take_in(group, learners)
    desk = AtTheDesk(lab)
    desk.turn_to("Hand out")
    desk.choose("Module", "Order of")
    desk.type("Due", "2020-01-01")
    desk.choose("To", "group A")
    desk.press("See what stands in the way", "Nothing is handed out yet.")
    page = desk.page
    page.locator(f"{FRONT} .ts-desk-body").get_by_text("has passed").wait_for()
    screenshot(page, "desk-hand-out-before")
    assert assignments_of(group) == []
    desk.press("Hand out all the same", "order-of-work-1 is handed out to")
    (out,) = assignments_of(group)
    assert out.is_for("a1") and not out.is_for("c3")
    screenshot(page, "desk-hand-out")
    desk.choose("Assignment", "order")
    page.locator(FRONT).get_by_label("Reason").last.focus()
    page.keyboard.type("too early")
    desk.press("Take back")
    desk.press("Yes: Take back", "order-of-work-1 is taken back.")
    assert assignments_of(group) == []


def test_what_is_handed_in_is_taken_in_marked_and_given_back(lab, group, screenshot, tmp_path):
    if not group.roster_file.exists():
        take_in(group, [Learner("a1", "Lindqvist", "Ada", "A")])
    content = find_content(group.content, base=group.root)
    assigned = assign(
        group, content, "measuring-and-tools", attempt=1, due=None, learners=roster_of(group)
    )
    folder = group.inbound / f"a1+{assigned.name}+2026-01-02 10:00:00.0 UTC+x"
    shutil.copytree(group.outbound(assigned.name), folder)
    answers = {"mic-zero": Answer("+0.01 mm", 1)}
    sheet = SheetData(learner="a1", module=assigned.module, attempt=1, answers=answers)
    (folder / "jobsheet.json").write_text(json.dumps(sheet.as_json()))
    desk = AtTheDesk(lab)
    desk.turn_to("Take in, mark, give back")
    desk.page.locator(f"{FRONT} .ts-desk-body").get_by_text("handed in").wait_for()
    desk.press("Take in, mark and give back", "Feedback given back: 1.")
    desk.page.locator(f"{FRONT} .ts-desk-body").get_by_text("marked, not yet").wait_for()
    assert any(group.feedback("a1", assigned.name).glob("*.html"))
    screenshot(desk.page, "desk-take-in")
    # What is made for assessors and for class can be read by everybody, too.
    at = ("--cohort", group.root)
    twoshaft("matrix", "--page", tmp_path / "matrix.html", *at)
    twoshaft("how-it-goes", "--page", tmp_path, *at)
    pages = list(tmp_path.glob("*.html"))
    assert len(pages) > 1
    for made in pages:
        desk.page.goto(made.as_uri())
        assert found_on(desk.page) == [], made.name


def test_evidence_is_looked_at_and_an_observation_recorded(lab, group, screenshot):
    if not group.roster_file.exists():
        take_in(group, [Learner("a1", "Lindqvist", "Ada", "A")])
    if not assessors_of(group):
        enter_assessor(group, "rh", "R. Holm")
    desk = AtTheDesk(lab)
    page, body = desk.page, desk.page.locator(f"{FRONT} .ts-desk-body")
    desk.turn_to("Matrix")
    desk.choose("Outcomes of", "Order of")
    desk.press("Show these")
    cell = "Ada Lindqvist, safe-order: "
    body.get_by_role("button", name=cell).wait_for()
    screenshot(page, "desk-matrix")
    body.get_by_role("button", name=cell).focus()
    page.keyboard.press("Enter")
    body.get_by_role("heading", name="Ada Lindqvist (a1): safe-order").wait_for()
    screenshot(page, "desk-evidence")
    desk.press("Back to the matrix")
    body.get_by_role("button", name=cell).wait_for()
    desk.turn_to("Observe at the bench")
    desk.choose("Learner", "Ada")
    desk.choose("Outcome", load_outcomes()["safe-order"].statement)
    desk.press("Open the form")
    criteria = load_outcomes()["safe-order"].criteria
    for text in criteria.values():
        desk.choose(text, "seen")
    desk.choose("Assessor", "R. Holm")
    screenshot(page, "desk-observe")
    desk.press("Record it", "safe-order of a1: met, seen by R. Holm.")
    (seen,) = observations_of(group, "a1")
    assert seen.met and len(seen.criteria) == len(criteria)
    for title in ("How it goes", "Change and appeal", "Moderation", "Hand over", "Trail"):
        desk.turn_to(title)
        screenshot(page, f"desk-{title.lower().replace(' ', '-')}")


def test_what_is_arranged_watched_corrected_and_ruled_is_done_by_keyboard(
    lab, group, screenshot, tmp_path
):
    if not group.roster_file.exists():
        take_in(group, [Learner("a1", "Lindqvist", "Ada", "A")])
    if not assessors_of(group):
        enter_assessor(group, "rh", "R. Holm")
    content = find_content(group.content, base=group.root)
    if "measuring-and-tools-1" not in {one.name for one in assignments_of(group)}:
        module = "measuring-and-tools"
        assign(group, content, module, attempt=1, due=None, learners=roster_of(group))
    desk = AtTheDesk(lab)
    page, body = desk.page, desk.page.locator(f"{FRONT} .ts-desk-body")
    mine = next(one for one in roster_of(group) if one.id == "a1")
    ada = f"a1 {mine.name} {mine.group}".strip()
    desk.turn_to("Adjustments")
    desk.tick(ada)
    desk.tick("Large print")
    desk.choose("Assessor", "R. Holm")
    desk.type("Reason", "asked for it")
    desk.press("Arrange it", "Arranged for a1: large print.")
    screenshot(page, "desk-adjustments")
    desk.turn_to("Supervised attempt")
    desk.tick(ada)
    desk.type("Room", "2")
    desk.choose("Assessor", "R. Holm")
    desk.press("Open it for the ticked learners", "Supervised attempt 1 is open in 2 for a1.")
    screenshot(page, "desk-supervised")
    desk.choose("Assessor", "R. Holm")
    desk.press("Close it", "Supervised attempt 1 is closed. Handed in: nobody.")
    assert sittings_of(group)[0].closed_by == "R. Holm"
    desk.turn_to("Corrected unit")
    text = (Path(units.__file__).parent / "files" / "tarnbeck-b5.yaml").read_text()
    file = tmp_path / "corrected.yaml"
    longer = text.replace('version: "2.0"', 'version: "2.1"')
    file.write_text(longer.replace("minutes to do: 6", "minutes to do: 8", 1))
    page.locator(f"{FRONT} input[type=file]").set_input_files(file)
    desk.press("Show what would change", "Nothing is written yet")
    body.get_by_text("8 min").first.wait_for()
    screenshot(page, "desk-corrected-unit")
    desk.type("What was wrong in the unit", "stoning takes longer")
    desk.press("Take the corrected unit", "is taken: lessons")
    desk.turn_to("Re-mark")
    desk.choose("Assignment", "measuring")
    desk.press("Show whose marks would change", "Nothing is written yet")
    screenshot(page, "desk-re-mark")
    desk.press("Leave all marks as they are", "All marks stay as they were.")
    desk.turn_to("Rules")
    desk.type("Who says so", "our rules, page 4")
    desk.choose("Assessor", "R. Holm")
    desk.press("Set the rule", "The rule for everywhere is set.")
    screenshot(page, "desk-rules")
    assert load_rules(group.rules).everywhere.source == "our rules, page 4"


# Whether what is said stands in the window, right under what has the focus.
SAID_IN_SIGHT = """() => {
  const desk = document.querySelector(".jp-MainAreaWidget:not(.lm-mod-hidden) .twoshaft-desk");
  const here = desk.querySelector(".ts-desk-here");
  const line = here ?? [...desk.querySelectorAll(".ts-alert, .ts-said")].find((n) => n.textContent);
  const box = line.getBoundingClientRect();
  const pressed = document.activeElement.getBoundingClientRect();
  return {
    seen: box.height > 10 && box.top >= 0 && box.bottom <= innerHeight,
    under: here ? box.top - pressed.bottom : 0,
    live: [...desk.querySelectorAll('[role="status"], [role="alert"]')].map((n) => n.textContent),
    hidden: here?.getAttribute("aria-hidden") ?? "",
    text: line.textContent,
  };
}"""


def test_what_is_said_stands_where_the_button_was_pressed_on_a_long_page(lab, group, screenshot):
    learners = [Learner(f"l{n:02}", f"Family{n}", f"Given{n}", "L") for n in range(24)]
    take_in(group, learners)
    desk = AtTheDesk(lab)
    page = desk.page
    for title, button, says in (
        ("Group", "Correct the name", "The learner is missing"),
        ("Group", "Make slips to print", "The slips are made"),
        ("Adjustments", "Arrange it", "No learner is ticked"),
        ("Observe at the bench", "Put on the register", "The id is missing"),
        ("Rules", "Set the number", "The assessor is missing"),
        ("Hand over", "Seal it", "folder is missing"),
        ("Cohorts", "Make the cohort", "The name is missing"),
        ("Your unit", "Find it", "found"),
    ):
        desk.turn_to(title)
        desk.to(button)
        page.keyboard.press("Enter")
        page.locator(f"{FRONT} .ts-desk-here").get_by_text(says).wait_for()
        found = page.evaluate(SAID_IN_SIGHT)
        assert found["seen"] and 0 <= found["under"] < 120, (title, found)
        assert any(says in text for text in found["live"]) and found["hidden"] == "true"
        assert page.evaluate(NAMED).strip() == button  # the focus stays
    screenshot(page, "desk-said-under-the-button")
    dark = AtTheDesk(lab, dark=True)
    dark.turn_to("Rules")
    dark.press("Set the rule")
    dark.page.locator(f"{FRONT} .ts-desk-here").get_by_text("missing").wait_for()
    screenshot(dark.page, "desk-said-under-the-button-dark")


def test_what_is_pressed_while_a_page_is_turned_is_done_afterwards(lab, group):
    desk = AtTheDesk(lab)
    page, here = desk.page, desk.page.locator(f"{FRONT} .ts-desk-here")
    both = """([page, button]) => {
      const desk = document.querySelector(".jp-MainAreaWidget:not(.lm-mod-hidden) .twoshaft-desk");
      const named = (name) =>
        [...desk.querySelectorAll("button")].find((one) => one.textContent === name);
      named(page).click();
      named(button).click();
    }"""
    page.locator(f"{FRONT} .twoshaft-desk").get_by_role(
        "button", name="Correct the name"
    ).wait_for()
    page.evaluate(both, ["Group", "Correct the name"])
    here.get_by_text("The learner is missing").wait_for()
    # What belonged to the page that was turned is not done on the next one; the desk goes on.
    page.evaluate(both, ["Hand over", "Correct the name"])
    page.locator(f"{FRONT} h2").get_by_text("Hand over", exact=True).wait_for()
    page.evaluate(both, ["Seal it", "Group"])
    page.locator(f"{FRONT} h2").get_by_text("Group", exact=True).wait_for()
    assert page.locator(f"{FRONT} [role=alert]").inner_text() == ""


def test_a_file_that_changed_after_it_was_chosen_is_asked_for_again(lab, group, tmp_path):
    desk = AtTheDesk(lab)
    roster = tmp_path / "roster.csv"
    roster.write_text(ROSTER)
    desk.page.locator(f"{FRONT} input[type=file]").set_input_files(roster)
    roster.write_text(f"{ROSTER}d4,Nash,Di,B\n")
    desk.press("Show what would change")
    told = desk.page.locator(f"{FRONT} .ts-desk-here")
    told.get_by_text("roster.csv has changed or gone since it was chosen").wait_for()
    desk.page.locator(f"{FRONT} input[type=file]").set_input_files(roster)
    desk.press("Show what would change", "Nothing is written yet")


def test_a_unit_file_and_a_cohort_are_made_and_its_desk_opened_by_keyboard(lab, group, screenshot):
    desk = AtTheDesk(lab)
    page, body = desk.page, desk.page.locator(f"{FRONT} .ts-desk-body")
    desk.turn_to("Your unit")
    desk.type("What the unit is called", "Bench six")
    desk.press("Begin the file", "bench-six.yaml is begun")
    desk.choose("Unit", "bench-six.yaml")
    desk.press("See what to correct", "nothing to correct")
    screenshot(page, "desk-your-unit")
    with page.context.expect_page() as opened:
        desk.press("Open bench-six.yaml in the editor")
    opened.value.locator(".jp-FileEditor .cm-content").get_by_text("Bench six").first.wait_for()
    opened.value.close()
    desk.turn_to("Cohorts")
    desk.type("Name", "Day group")
    desk.choose("Unit on the bench", "bench-six.yaml")
    desk.press("Make the cohort", "Day group is made in")
    made = open_cohort(group.root.parent / "day-group")
    assert made.name == "Day group" and Path(made.unit_source).name == "unit.yaml"
    desk.press("Open the desk of Day group", "The desk of Day group is ready")
    screenshot(page, "desk-cohorts")
    servers = made.root / "settings" / "staff" / "runtime"
    (about,) = servers.glob("jpserver-*.json")
    try:
        with page.context.expect_page() as opened:
            desk.press("Go to the desk of Day group")
        other = opened.value
        other.locator(".twoshaft-desk .ts-desk-top").get_by_text("Day group").wait_for()
        assert other.locator(".twoshaft-desk h2").text_content() == "Group"
        screenshot(other, "desk-of-another-cohort")
        assert body.count()
    finally:
        os.kill(json.loads(about.read_text())["pid"], signal.SIGTERM)


@pytest.mark.parametrize("width", [1280, 820, 360])
def test_no_page_is_wider_than_its_window(lab, group, screenshot, width):
    if not group.roster_file.exists():
        take_in(group, [Learner("a1", "Lindqvist", "Ada", "A")])
    desk = AtTheDesk(lab, width=width, dark=width == 820)
    for page in PAGES:
        desk.turn_to(page.title)
        out = desk.page.evaluate(OUT_OF_SIGHT)
        assert out == [], f"{page.title} at {width}"
        if width == 1280:
            assert found_on(desk.page) == [], page.title
        screenshot(desk.page, f"desk-{page.id}-{width}")
