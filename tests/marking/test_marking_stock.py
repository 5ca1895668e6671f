"""nbgrader's own autograde gives the mark that the data gives, on notebooks left as released.

The cohort folder here is a made-up one with the least that both need.
"""

import json
import os
from pathlib import Path

import nbformat
import pytest
from nbgrader.converters import Autograde, GenerateFeedback

from twoshaft.errors import CohortError
from twoshaft_grader.marking import mark_folder, mark_task
from twoshaft_grader.marking.gradebook import Recorder

ASSIGNMENT = "tiny-1"
NOTEBOOK = "90-tiny"


@pytest.fixture(scope="module")
def course(tiny, make_course):
    """The made-up module released and nine sheets handed in."""
    course = make_course(ASSIGNMENT, tiny.notebook, tiny.unit_file)

    def sheet(learner, **changes):
        issued = tiny.issued(learner)
        return json.dumps(tiny.sheet(issued, tiny.solve(issued) | changes).as_json())

    order = ["bush", "shaft", "gear", "seal", "case", "ring", "screws", "check", "plug"]
    sheets = {
        "full": sheet("full"),
        "partly": sheet("partly", **{"gap-depth": "3.3 mm", "new-parts": ["seal", "ring"]}),
        "slips": sheet("slips", **{"build-why": "weight", "gap-shim": "4 in"}),
        "order": sheet("order", **{"build-order": order}),
        "blank": json.dumps(tiny.sheet(tiny.issued("blank"), {}).as_json()),
        "missing": None,
        "damaged": '{"format": 1, "fields": {',
        "copied": sheet("full"),
        "hostile": json.dumps({"format": 1, "given": {"gap": 0}, "fields": {"x": []}}),
    }
    for learner, text in sheets.items():
        course.hand_in(tiny.issued(learner), text)
    return course


LEARNERS = ["full", "partly", "slips", "order", "blank", "missing", "damaged", "copied", "hostile"]


def record_mark(book, root, learner, assignment, mark, timestamp=None):
    """Record one mark and let it stand; the autograded notebook."""
    recorder = Recorder(book, root, assignment)
    path = recorder.record(learner, mark, timestamp=timestamp)
    recorder.commit()
    return path


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
def test_stock_autograde_gives_the_same_marks(course, marks, request):
    course.run(Autograde, student_id="full")  # in a kernel of its own, as nbgrader starts one
    request.getfixturevalue("one_kernel")
    course.run(Autograde, student_id="*")
    for name in LEARNERS:
        assert course.scores(name) == {task.id: task.points for task in marks[name].tasks}, name


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


def test_recording_again_changes_nothing_and_keeps_what_staff_gave(course, marks, request):
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

    def take_back():  # for the tests that share this gradebook, in whatever order they run
        with course.book() as book:
            book.find_grade("gap", NOTEBOOK, ASSIGNMENT, "partly").manual_score = None
            book.find_comment("gap-task", NOTEBOOK, ASSIGNMENT, "partly").manual_comment = None
            book.db.commit()
        record("partly")

    request.addfinalizer(take_back)
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


def test_marks_recorded_together_stand_together_or_not_at_all(course, marks):
    with course.book() as book:
        for name in ("full", "slips"):
            record_mark(book, course.root, name, ASSIGNMENT, marks["blank"])
        recorder = Recorder(book, course.root, ASSIGNMENT)
        recorder.record("full", marks["full"])
        recorder.record("slips", marks["slips"])
    # closed without a commit: nothing of it is there
    assert set(course.scores("full").values()) == set(course.scores("slips").values()) == {0.0}
    with course.book() as book:
        recorder = Recorder(book, course.root, ASSIGNMENT)
        recorder.record("full", marks["full"])
        recorder.record("slips", marks["slips"])
        recorder.commit()
    for name in ("full", "slips"):
        assert course.scores(name) == {task.id: task.points for task in marks[name].tasks}


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
