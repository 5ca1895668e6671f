"""The desk's pages of the records, on a small marked cohort: each says what the command says."""

import shutil
import zipfile

import openpyxl
import pytest
from pypdf import PdfReader

from twoshaft.errors import CohortError
from twoshaft.outcomes import load_outcomes
from twoshaft_grader.cohort.assign import read_assigned
from twoshaft_grader.cohort.collect import collect
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import mark_assignment
from twoshaft_grader.cohort.observations import every_observation_of
from twoshaft_grader.desk_pages.change import ChangeAndAppeal
from twoshaft_grader.desk_pages.hand_over import HandOver
from twoshaft_grader.desk_pages.how_it_goes import HowItGoesPage
from twoshaft_grader.desk_pages.matrix import MatrixPage
from twoshaft_grader.desk_pages.moderation import ModerationPage
from twoshaft_grader.desk_pages.observe import Observe
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Cell, Form, Link, Say, Values
from twoshaft_grader.desk_pages.trail import Trail

LEARNERS = ("a1", "b2", "c3")


@pytest.fixture(scope="module")
def made(handed_out, tmp_path_factory):
    """A cohort in which a1 has everything right, b2 nothing, and c3 did not hand in."""
    small = handed_out(tmp_path_factory.mktemp("desk-records"), LEARNERS)
    cohort = small.cohort
    small.hand_in("a1")
    small.hand_in("b2", answers={"gap-size": "3 mm", "gap-first": "close"})
    assigned = read_assigned(cohort, small.name)
    collect(cohort, assigned, roster_of(cohort))
    mark_assignment(cohort, assigned, roster_of(cohort))
    return small


@pytest.fixture
def trial(made, tmp_path):
    shutil.copytree(made.base, tmp_path / "base", symlinks=True)
    return type(made)(tmp_path / "base")


@pytest.fixture
def desk(trial):
    return Desk(trial.cohort.root, "R. Holm")


def do(page, act, ticked=(), of="", **typed):
    typed = {name.replace("_", "-"): value for name, value in typed.items()}
    return page.do(act, Values(typed, {"observed": list(ticked)}, {}, of), Work())


def part(page, id):
    (found,) = [one for one in page.show() if getattr(one, "id", "") == id]
    return found


def links(page):
    return [one.path for one in page.show() if isinstance(one, Link)]


def test_how_it_goes_shows_who_is_stuck_and_what_is_wrong(desk, trial):
    page = HowItGoesPage(desk)
    do(page, "look", what=trial.name)
    stages = dict(part(page, "stages").texts())
    assert stages == {"marked, enough": "1", "marked, not yet": "1", "not fetched": "1"}
    assert [line[0] for line in part(page, "stuck").texts()] == ["b2"]
    assert part(page, "tasks").texts()[0][1] == "50 %"
    assert {line[2] for line in part(page, "often-wrong").texts()} == {"1"}
    do(page, "page")
    (path,) = links(page)
    text = (trial.cohort.root / path).read_text()
    assert "Family b2" not in text and "How wide" in text


def test_the_evidence_behind_a_cell_of_the_matrix_is_one_press_away(desk, trial):
    page = MatrixPage(desk)
    table = part(page, "matrix")
    cells = {one.of: one for row in table.rows for one in row.cells if isinstance(one, Cell)}
    cell = cells[f"b2 {trial.outcome}"]
    assert cell.text == "not yet" and cell.shape and cell.label.endswith(": not yet")
    do(page, cell.act, of=cell.of)
    said = " ".join(one.text for one in page.show() if isinstance(one, Say))
    assert "Given Family b2 (b2)" in said and "not yet" in said
    assert part(page, "attempts").texts()[0][0] == trial.name
    answers = part(page, "answers").texts()
    assert any("3 mm" in line[2] for line in answers)
    do(page, "back")
    assert part(page, "matrix").rows == table.rows
    do(page, "page")
    assert links(page) == ["exports/matrix.html"]
    do(page, "turn", module="all")
    assert len(part(page, "matrix").columns) == 3 + len(load_outcomes())


def test_an_observation_is_recorded_by_criterion_and_taken_back(desk, trial):
    page = Observe(desk)
    do(page, "enter", new_id="rh", new_name="R. Holm", new_role="internal assessor")
    do(page, "open", learner="a1", outcome="safe-order")
    criteria = load_outcomes()["safe-order"].criteria
    lines = next(one for one in page.show() if isinstance(one, Form)).fields
    assert [one.label for one in lines] == list(criteria.values())
    seen = {f"criterion {id}": "seen" for id in criteria}
    with pytest.raises(CohortError, match="the form is half filled"):
        page.do("record", Values(dict(list(seen.items())[1:])), Work())
    first = next(iter(seen))
    with pytest.raises(CohortError, match="the note does not say what is missing"):
        page.do("record", Values(seen | {first: "not-yet"}), Work())
    with pytest.raises(CohortError, match="the assessor is missing"):
        page.do("record", Values(seen), Work())
    form = {"by": "rh", "kind": "at-the-bench", "bench": "3", "confirmed": True}
    assert "met, seen by R. Holm" in page.do("record", Values(seen | form), Work())
    (one,) = every_observation_of(trial.cohort, "a1")
    assert one.met and one.bench == "3" and one.confirmed
    do(page, "take-back", ["a1 1"], back_by="rh", back_why="wrong learner")
    assert part(page, "observed").texts()[0][-1] == "taken back by R. Holm: wrong learner"
    do(page, "print", outcome="safe-order")
    (pdf,) = links(page)
    assert len(PdfReader(trial.cohort.root / pdf).pages) >= 1
    said = do(page, "sheet", sheet_of="threaded-joints", paper="letter")
    assert said.startswith("The sheet is made")
    (sheet,) = [one for one in links(page) if one != pdf]
    assert PdfReader(trial.cohort.root / sheet).pages[0].mediabox.width == 612  # [pt]
    with pytest.raises(CohortError, match="the module is missing"):
        do(page, "sheet")


def test_a_mark_is_changed_decided_and_appealed_against_with_a_reason(desk, trial):
    page = ChangeAndAppeal(desk)
    do(page, "open", learner="b2", name=trial.name)
    with pytest.raises(CohortError, match="the assessor is missing"):
        do(page, "change", task="gap", points="2")
    do(Observe(desk), "enter", new_id="rh", new_name="R. Holm")
    with pytest.raises(CohortError, match="is no number of points"):
        do(page, "change", task="gap", points="two", by="rh", why="seen")
    said = do(page, "change", task="gap", points="2,5", by="rh", why="seen at the bench")
    assert said == "gap of b2: 0 is now 2.5 of 4."
    said = do(page, "appeal", appeal_about=trial.outcome, appeal_why="my gauge was off")
    assert said.startswith("Appeal 1 of b2")
    with pytest.raises(CohortError, match="the ruling is missing"):
        do(page, "rule", appeal="1", rule_by="rh", rule_why="so")
    do(page, "rule", appeal="1", ruling="upheld", rule_by="rh", rule_why="gauge was off")
    do(
        page, "decide", about=trial.outcome, holds="enough", decide_by="rh",
        decide_why="shown again",
    )  # fmt: skip
    assert part(page, "appeals").texts()[0][6] == "upheld"
    told = [line[3:8] for line in part(page, "changes").texts()]
    assert ["gap", "points", "0", "2.5", "R. Holm"] in told
    assert [trial.outcome, "outcome", "0", "1", "R. Holm"] in told


def test_everything_is_handed_over_from_one_page(desk, trial, tmp_path):
    page = HandOver(desk)
    root = trial.cohort.root
    do(page, "csv")
    assert links(page) == ["exports/outcomes.csv"]
    do(page, "workbook")
    assert openpyxl.load_workbook(root / links(page)[0]).sheetnames
    do(page, "oneroster", class_="g1")
    with zipfile.ZipFile(root / links(page)[0]) as packed:
        assert "manifest.csv" in packed.namelist()
    assert do(page, "records", record_of="a1") == "1 record is written."
    assert "Given Family a1" in PdfReader(root / links(page)[0]).pages[0].extract_text()
    said = do(page, "evidence", evidence_to=str(tmp_path / "sealed"))
    assert said.startswith("2 sheets are sealed") and (tmp_path / "sealed").is_dir()
    with pytest.raises(CohortError, match="the folder is missing"):
        do(page, "evidence")


def test_the_trail_is_shown_and_checked(desk, trial):
    page = Trail(desk)
    acts = part(page, "trail").texts()
    assert acts[0][3] == "mark" and acts[-1][3] == "make the cohort"
    assert "as they were written" in do(page, "check")
    do(page, "look", about="COLLECT")
    assert {line[3] for line in part(page, "trail").texts()} == {"collect"}
    file = trial.cohort.root / "log/trail.jsonl"
    file.write_text(file.read_text().replace("collect", "collekt", 1))
    assert do(page, "check") == "The trail is not as it was written: see below."
    assert any(line[0] == "not as written" for line in part(page, "checked").texts())
    with pytest.raises(CohortError, match="is no head of a trail"):
        do(page, "check", head="12")


def test_a_sample_is_marked_blind_and_compared(desk, trial):
    page = ModerationPage(desk)
    do(Observe(desk), "enter", new_id="mo", new_name="M. Orr")
    with pytest.raises(CohortError, match="is no part in %"):
        do(page, "draw", seed="autumn", share="all", draw_by="mo")
    assert do(page, "draw", seed="autumn", share="100", draw_by="mo") == "2 tasks are drawn."
    first = {row.cells[0]: row.cells[-1] for row in part(page, "sample").rows}
    for learner, points in (("a1", "4"), ("b2", "1")):
        do(page, "mark", of=first[learner].of)
        shown = part(page, "work").texts()
        assert all(len(line) == 2 for line in shown)  # question and answer, no verdict
        with pytest.raises(CohortError, match="is no number of points"):
            do(page, "enter", points="", by="mo")
        do(page, "enter", points=points, by="mo", note="by the sheet")
    do(page, "compare")
    (line,) = part(page, "differences").texts()
    assert (line[0], line[4], line[5]) == ("b2", "0", "1")
    assert len(part(page, "agreement").rows) == 3
    assert do(page, "draw-again", seed="b", share="50", draw_by="mo").endswith("drawn.")
