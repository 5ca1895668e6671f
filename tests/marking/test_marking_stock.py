"""nbgrader's own autograde gives the mark that the data gives, on notebooks left as released.

The cohort folder here is a made-up one with the least that both need.
"""

import json
import logging
import os
import shutil
from pathlib import Path
from types import SimpleNamespace

import nbformat
import pytest
from nbgrader.api import Gradebook
from nbgrader.converters import Autograde, GenerateAssignment, GenerateFeedback
from nbgrader.coursedir import CourseDirectory
from traitlets.config import Config

from twoshaft.errors import CohortError
from twoshaft_grader.environment import tools_on_path
from twoshaft_grader.marking import mark_folder, mark_task
from twoshaft_grader.marking.gradebook import record_mark
from twoshaft_grader.notebooks import RELEASE_PREPROCESSORS

ASSIGNMENT = "tiny-1"
NOTEBOOK = "90-tiny"


@pytest.fixture(scope="module")
def course(tiny, tmp_path_factory):
    """A cohort folder with the made-up module released and nine sheets handed in."""
    tools_on_path()
    root = tmp_path_factory.mktemp("cohort").resolve()
    (root / "cohort.yaml").write_text("id: test\n")
    source = root / "source" / ASSIGNMENT
    source.mkdir(parents=True)
    shutil.copyfile(tiny.notebook, source / tiny.notebook.name)
    shutil.copyfile(tiny.unit_file, source / "unit.yaml")
    config = Config()
    config.CourseDirectory.root = str(root)
    config.CourseDirectory.course_id = "test"
    config.CourseDirectory.assignment_id = ASSIGNMENT
    config.GenerateAssignment.preprocessors = RELEASE_PREPROCESSORS
    config.Autograde.exclude_overwriting = {ASSIGNMENT: ["jobsheet.json"]}

    def run(kind, force=False, **traits):
        converter = kind(coursedir=CourseDirectory(config=config, **traits), config=config)
        converter.force = force
        converter.log = logging.getLogger("test-stock")
        converter.start()

    run(GenerateAssignment)
    submitted = root / "submitted"

    def hand_in(learner, sheet_text):
        folder = submitted / learner / ASSIGNMENT
        folder.mkdir(parents=True)
        shutil.copyfile(
            root / "release" / ASSIGNMENT / f"{NOTEBOOK}.ipynb", folder / f"{NOTEBOOK}.ipynb"
        )
        (folder / "timestamp.txt").write_text("2026-03-02 09:30:00.000000 UTC")
        if sheet_text is not None:
            (folder / "jobsheet.json").write_text(sheet_text)
        issued = root / "issued" / ASSIGNMENT / f"{learner}.json"
        issued.parent.mkdir(parents=True, exist_ok=True)
        issued.write_text(json.dumps(tiny.issued(learner)))

    def sheet(learner, **changes):
        issued = tiny.issued(learner)
        return json.dumps(tiny.sheet(issued, tiny.solve(issued) | changes).as_json())

    hand_in("full", sheet("full"))
    hand_in("partly", sheet("partly", **{"gap-depth": "3.3 mm", "new-parts": ["seal", "ring"]}))
    hand_in("slips", sheet("slips", **{"build-why": "weight", "gap-shim": "4 in"}))
    order = ["bush", "shaft", "gear", "seal", "case", "ring", "screws", "check", "plug"]
    hand_in("order", sheet("order", **{"build-order": order}))
    hand_in("blank", json.dumps(tiny.sheet(tiny.issued("blank"), {}).as_json()))
    hand_in("missing", None)
    hand_in("damaged", '{"format": 1, "fields": {')
    hand_in("copied", sheet("full"))
    hand_in("hostile", json.dumps({"format": 1, "given": {"gap": 0}, "fields": {"x": []}}))

    def book():
        return Gradebook(f"sqlite:///{root / 'gradebook.db'}", "test")

    return SimpleNamespace(root=root, run=run, book=book, submitted=submitted)


LEARNERS = ["full", "partly", "slips", "order", "blank", "missing", "damaged", "copied", "hostile"]


@pytest.fixture(scope="module")
def marks(course):
    return {name: mark_folder(course.submitted / name / ASSIGNMENT) for name in LEARNERS}


def test_each_kind_of_sheet_is_marked_from_its_data(marks):
    assert marks["full"].points == 22
    assert 0 < marks["partly"].points < 22
    assert 0 < marks["slips"].points < 22
    assert 0 < marks["order"].points < 22
    for name in ("blank", "missing", "damaged", "hostile"):
        assert marks[name].points == 0, name
    assert marks["copied"].points < 22
    assert any("names full, not copied" in note for note in marks["copied"].notes)


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_stock_autograde_gives_the_same_marks(course, marks):
    course.run(Autograde, student_id="*")
    with course.book() as book:
        for name in LEARNERS:
            stock = {
                grade.name: grade.score
                for notebook in book.find_submission(ASSIGNMENT, name).notebooks
                for grade in notebook.grades
                if grade.max_score
            }
            assert stock == {task.id: task.points for task in marks[name].tasks}, name


@pytest.mark.slow
@pytest.mark.timeout(120)
def test_recorded_marks_reach_nbgrader(course, marks):
    with course.book() as book:
        for name in LEARNERS:
            path = record_mark(
                book,
                course.root,
                name,
                ASSIGNMENT,
                marks[name],
                timestamp="2026-03-02 09:30:00 UTC",
            )
            assert path == course.root / "autograded" / name / ASSIGNMENT / f"{NOTEBOOK}.ipynb"
        dicts = {entry["student"]: entry for entry in book.submission_dicts(ASSIGNMENT)}
        for name in LEARNERS:
            assert dicts[name]["score"] == pytest.approx(marks[name].points)
            assert dicts[name]["max_score"] == 22
            assert not dicts[name]["needs_manual_grade"]
        comment = book.find_comment("gap-task", NOTEBOOK, ASSIGNMENT, "full").comment
        assert "How deep is the gap? Right." in comment


def test_recording_again_changes_nothing_and_keeps_what_staff_gave(course, marks):
    def record(name):
        with course.book() as book:
            path = record_mark(book, course.root, name, ASSIGNMENT, marks[name], timestamp=None)
            return path.read_bytes()

    first = record("partly")
    with course.book() as book:
        book.find_grade("gap", NOTEBOOK, ASSIGNMENT, "partly").manual_score = 7.5
        comment = book.find_comment("gap-task", NOTEBOOK, ASSIGNMENT, "partly")
        comment.manual_comment = "Talked through at the bench."
        book.db.commit()
    assert record("partly") == first
    with course.book() as book:
        grade = book.find_grade("gap", NOTEBOOK, ASSIGNMENT, "partly")
        assert (grade.score, grade.needs_manual_grade) == (7.5, False)
        comment = book.find_comment("gap-task", NOTEBOOK, ASSIGNMENT, "partly")
        assert comment.comment == "Talked through at the bench."
        assert comment.auto_comment
        grade.auto_score = 0.25  # as if our points had changed since
        book.db.commit()
    record("partly")
    with course.book() as book:
        grade = book.find_grade("gap", NOTEBOOK, ASSIGNMENT, "partly")
        assert (grade.score, grade.needs_manual_grade) == (7.5, True)


def test_the_autograded_notebook_shows_answers_and_runs_nothing(course, marks):
    with course.book() as book:
        path = record_mark(book, course.root, "partly", ASSIGNMENT, marks["partly"])
    nb = nbformat.read(path, as_version=4)
    text = path.read_text()
    assert "3.3 mm" in text and "mark_task" not in text and "reference" not in text
    outputs = [cell.outputs for cell in nb.cells if cell.cell_type == "code"]
    assert sum(len(output) for output in outputs) == 6


def test_nbgrader_can_write_its_own_feedback_from_what_we_recorded(course, marks):
    with course.book() as book:
        record_mark(book, course.root, "slips", ASSIGNMENT, marks["slips"])
    course.run(GenerateFeedback, student_id="slips", force=True)
    page = course.root / "feedback" / "slips" / ASSIGNMENT / f"{NOTEBOOK}.html"
    text = page.read_text(encoding="utf-8")
    assert "4 in" in text and "Weight has a part in it, reach decides." in text
    assert "mark_task" not in text


def test_mark_task_gives_a_plain_float_and_writes_nothing(course, marks, monkeypatch, capfd):
    for name in LEARNERS:
        folder = course.submitted / name / ASSIGNMENT
        monkeypatch.chdir(folder)
        for task in marks[name].tasks:
            points = mark_task(task.id)
            assert type(points) is float and points == task.points
        assert mark_task("no-such-task") == 0.0
    monkeypatch.chdir(Path("/"))
    assert mark_task("gap") == 0.0
    assert capfd.readouterr() == ("", "")


@pytest.mark.parametrize("kind", ["link", "pipe", "huge", "folder"])
def test_what_is_no_ordinary_sheet_is_blank_and_left_behind(course, tiny, kind):
    name = f"odd-{kind}"
    folder = course.submitted / name / ASSIGNMENT
    folder.mkdir(parents=True)
    issued = course.root / "issued" / ASSIGNMENT / f"{name}.json"
    issued.write_text(json.dumps(tiny.issued(name)))
    sheet = folder / "jobsheet.json"
    if kind == "link":
        sheet.symlink_to(course.submitted / "full" / ASSIGNMENT / "jobsheet.json")
    elif kind == "pipe":
        os.mkfifo(sheet)
    elif kind == "huge":
        sheet.write_text('{"format": 1, "x": "' + "a" * 2_000_000 + '"}')
    else:
        sheet.mkdir()
    mark = mark_folder(folder)
    assert mark.points == 0 and mark.notes[0].startswith("jobsheet.json: ")
    with course.book() as book:
        path = record_mark(book, course.root, name, ASSIGNMENT, mark)
        book.remove_submission(ASSIGNMENT, name)
    assert sorted(entry.name for entry in path.parent.iterdir()) == [f"{NOTEBOOK}.ipynb"]


def test_an_assignment_that_was_not_released_is_one_sentence(course, marks):
    with course.book() as book, pytest.raises(CohortError) as caught:
        record_mark(book, course.root, "full", "tiny-2", marks["full"])
    assert "release the assignment again" in caught.value.sentence
