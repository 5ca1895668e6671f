"""A small cohort through the command line: make, roster, assign, work, collect, mark, give back,
export; and everything that may go wrong in between."""

import csv
import io
import json
import os
import re
import shutil
import signal
import subprocess
import sys
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from types import SimpleNamespace

import nbformat
import pytest
from nbgrader.api import Gradebook

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.jobsheet.receipts import read_receipts
from twoshaft.jobsheet.signin import SignIn
from twoshaft.units import load_unit
from twoshaft_grader.cohort import files, marking_run
from twoshaft_grader.cohort.assign import assigned_unit, read_assigned
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.desk.commands import main
from twoshaft_grader.marking import load_solution, solve
from twoshaft_grader.marking.task import mark_folder
from twoshaft_grader.notebooks.text import build_notebook, notebook_text
from twoshaft_grader.records.progress import Stage, progress
from twoshaft_grader.stored.sittings import SITTINGS, Sitting, Sittings

NAME = "order-of-work-1"
NOTEBOOK = "02-order-of-work"
SOLUTION = """\
# %% [markdown]
# # Order of work

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet

sheet = open_sheet("order-of-work")
given, unit = sheet.given, sheet.unit

# %% [markdown] tags=["task"]
# Plan it.

# %% tags=["form"]
sheet.form(
    "plan",
    sheet.order("plan-order", "Order these", steps=given.sub_assembly.start),
    sheet.choice("plan-first", "First", options=[["clean", "Clean it"], ["close", "Close it"]]),
)

# %% tags=["reference"]
task = order.OrderTask.from_unit(unit, given.sub_assembly.operations)
ref("plan-order", task, outcome="plan-order", weight=3)
ref("plan-first", "clean", outcome="safe-order", must_pass=True)

# %% tags=["mark"] task="plan" points=4

# %% [markdown] tags=["task"]
# Measure it.

# %% tags=["form"]
sheet.form("gap", sheet.number("gap-size", "How wide", unit="mm"))

# %% tags=["reference"]
ref("gap-size", Q(12.5, "mm"), outcome="plan-order")

# %% tags=["mark"] task="gap" points=2
"""
ROSTER = """\
id,family name,given name,group
a1,Okafor,Ada,A
b2,Lim,Bo,A
c3,Reyes,Cy,B
d4,=Ek,Di,B
"""


def run(*arguments):
    """Run the command line here: exit code, standard output, standard error."""
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main([str(argument) for argument in arguments])
    return SimpleNamespace(code=code, out=out.getvalue(), err=err.getvalue())


def works(*arguments, code=0):
    result = run(*arguments)
    assert result.code == code, result.err
    return result.out


def marks(*arguments):
    """Mark where one sheet, c3's, cannot be read: the exit code tells that somebody is left."""
    return works("mark", *arguments, code=1)


def sheet_of(cohort, learner, answers):
    issued = files.read_json(cohort.issued(learner, NAME))
    data = SheetData(
        learner=learner,
        module="order-of-work",
        attempt=1,
        answers={name: Answer(value, 1) for name, value in answers.items()},
    )
    return json.dumps(data.as_json()), issued


def full_answers(cohort, learner, unit=None):
    assigned = read_assigned(cohort, NAME)
    solution = load_solution(cohort.source(NAME) / assigned.notebook)
    issued = files.read_json(cohort.issued(learner, NAME))
    return solve(solution, issued, unit or load_unit("tarnbeck-b5"))


def signed_in(cohort, learner):
    slips = csv.DictReader(io.StringIO((cohort.root / "sign-in-slips.csv").read_text()))
    words = {row["id"]: row["sign-in word"] for row in slips}
    desk = SignIn(cohort.workplace)
    desk.sign_in(learner, words[learner])
    return desk


def works_and_hands_in(cohort, learner, answers):
    desk = signed_in(cohort, learner)
    if not cohort.place(learner, NAME).exists():
        desk.get(NAME)
    text, _ = sheet_of(cohort, learner, answers)
    (cohort.place(learner, NAME) / "jobsheet.json").write_text(text)
    return desk.hand_in(NAME)


def export(cohort):
    works("export", "--cohort", cohort.root)
    text = (cohort.root / "exports" / "outcomes.csv").read_text(encoding="utf-8")
    return {(row["learner"], row["outcome"]): row for row in csv.DictReader(io.StringIO(text))}


def book_of(cohort):
    return Gradebook(f"sqlite:///{cohort.root / 'gradebook.db'}", cohort.id)


def points(cohort, learner):
    with book_of(cohort) as book:
        return book.find_submission(NAME, learner).score


def audit(cohort):
    return list(files.read_lines(cohort.log("marks")))


@pytest.fixture(scope="module")
def content(small_solution, tmp_path_factory):
    root = tmp_path_factory.mktemp("content")
    (root / "solutions").mkdir()
    built = build_notebook(small_solution, Path(f"solutions/{NOTEBOOK}.py"))
    (root / "solutions" / f"{NOTEBOOK}.ipynb").write_text(notebook_text(built))
    return root


@pytest.fixture(scope="module")
def stages(content, tmp_path_factory):
    """The cohort after each stage, to copy from: assigned, collected, returned."""
    base = tmp_path_factory.mktemp("cohorts")
    root = base / "live" / "group"
    works("cohort", "make", root, "--id", "small", "--content", content, "--timezone", "UTC")
    (base / "list.csv").write_text(ROSTER)
    works("roster", "take", base / "list.csv", "--cohort", root)
    works("module", "assign", "order-of-work", "--due", "2099-12-04", "--cohort", root)
    cohort = open_cohort(root)
    shutil.copytree(root.parent, base / "assigned")

    full = {learner: full_answers(cohort, learner) for learner in ("a1", "b2", "c3")}
    works_and_hands_in(cohort, "a1", full["a1"])
    works_and_hands_in(cohort, "b2", full["b2"] | {"plan-first": "close", "gap-size": "12.5 kN"})
    works_and_hands_in(cohort, "c3", full["c3"])
    [arrived] = cohort.inbound.glob("c3+*")
    damaged = (arrived / "jobsheet.json").read_bytes()[:60]
    (arrived / "jobsheet.json").unlink()
    (arrived / "jobsheet.json").write_bytes(damaged)
    said = {"collect": works("collect", "--cohort", root)}
    shutil.copytree(root.parent, base / "collected")

    said["mark"] = marks("--cohort", root)
    said["give-back"] = works("give-back", "--cohort", root)
    said["progress"] = works("progress", "--cohort", root)
    shutil.copytree(root.parent, base / "returned")
    return SimpleNamespace(base=base, said=said)


@pytest.fixture
def at(stages, tmp_path):
    """Copy the cohort as it was after a stage, with its shared place; both can be moved."""

    def copy(stage):
        shutil.copytree(stages.base / stage, tmp_path / stage)
        return open_cohort(tmp_path / stage / "group")

    return copy


# --- the way through ---------------------------------------------------------------------------


def test_marks_reach_gradebook_file_and_export(at, stages):
    cohort = at("returned")
    rows = export(cohort)
    assert len(rows) == 4 * 2
    assert rows["a1", "plan-order"]["mark"] == rows["a1", "plan-order"]["maximum"] == "5"
    assert points(cohort, "a1") == 6
    # three of four weights right, less what guessing earns; the number is in a wrong unit
    assert 0 < float(rows["b2", "plan-order"]["mark"]) < 5
    assert rows["b2", "safe-order"]["must_pass_right"] == "no"
    assert rows["b2", "safe-order"]["enough"] == "no"
    assert points(cohort, "b2") == pytest.approx(
        sum(float(row["mark"]) for (learner, _), row in rows.items() if learner == "b2"), abs=0.01
    )
    assert "3 new" in stages.said["collect"] and "Not handed in: d4" in stages.said["collect"]
    assert "2 marked" in stages.said["mark"] and re.search("c3 +jobsheet.json", stages.said["mark"])


def test_missing_and_damaged_have_rows_and_say_so(at):
    rows = export(at("returned"))
    for outcome in ("plan-order", "safe-order"):
        assert rows["c3", outcome]["state"] == "cannot be read"
        assert rows["d4", outcome]["state"] == "not handed in"
        for learner in ("c3", "d4"):
            assert rows[learner, outcome]["mark"] == "0"
            assert float(rows[learner, outcome]["maximum"]) > 0
    assert "not readable as JSON" in rows["c3", "plan-order"]["note"]
    assert rows["d4", "plan-order"]["family_name"] == "'=Ek"


def test_supervised_outcome_is_not_met_by_open_book_work(at):
    rows = export(at("returned"))
    row = rows["a1", "safe-order"]
    assert (row["enough"], row["evidence"], row["evidence_needed"], row["met"]) == (
        "yes", "open-book", "supervised", "no",
    )  # fmt: skip
    assert rows["a1", "plan-order"]["met"] == "yes"


def told(cohort, learner, outcome):
    """What the learner's start page is told of an outcome."""
    path = cohort.workplace / learner / "standing.json"
    return files.read_json(path)["outcomes"][outcome]["state"]


def test_an_outcome_that_was_observed_is_met_with_who_saw_it_and_as_what(at):
    cohort = at("returned")
    saw = ("observe", "a1", "safe-order", "--by", "R. Holm", "--cohort", cohort.root)
    page = cohort.feedback("a1", NAME) / f"{NOTEBOOK}.html"
    assert told(cohort, "a1", "safe-order") == "enough"
    assert "to be shown under supervision" in page.read_text(encoding="utf-8")
    works(*saw, "--not-yet", "--note", "lifted alone", "--kind", "supervised")
    assert told(cohort, "a1", "safe-order") == export(cohort)["a1", "safe-order"]["observed"]
    works(*saw, "--met", "--kind", "supervised")
    works("observe", "b2", "plan-order", "--met", "--by", "K. Tam", "--cohort", cohort.root)
    works("give-back", "--cohort", cohort.root)
    row = export(cohort)["a1", "safe-order"]
    assert (row["evidence"], row["evidence_needed"], row["supervised_by"]) == (
        "open-book", "supervised", "",
    )  # fmt: skip
    assert (row["observed"], row["observed_kind"], row["observed_by"], row["met"]) == (
        "met", "supervised", "R. Holm", "yes",
    )  # fmt: skip
    assert row["observed_at"] and told(cohort, "a1", "safe-order") == "met"
    assert "to be shown under supervision" not in page.read_text(encoding="utf-8")

    counts = {one.learner.id: (one.seen_met, one.seen_not_yet) for one in progress(cohort)}
    assert counts == {"a1": (1, 0), "b2": (1, 0), "c3": (0, 0), "d4": (0, 0)}
    assert "1 met" in works("progress", "--cohort", cohort.root)
    lines = works("observations", "--cohort", cohort.root).splitlines()
    seen = [line for line in lines if "safe-order" in line or "plan-order" in line]
    assert len(seen) == 3 and "K. Tam" in seen[2] and "at-the-bench" in seen[2]
    assert "not yet" in seen[0] and "lifted alone" in seen[0] and "again later" in seen[0]
    assert "R. Holm" in seen[1] and "again later" not in seen[1]
    only = ("observations", "--cohort", cohort.root)
    assert "K. Tam" not in works(*only, "--learner", "a1")
    assert "R. Holm" not in works(*only, "--outcome", "plan-order")
    assert "Nothing is observed" in works(*only, "--learner", "d4")


def test_a_supervised_attempt_is_met_and_the_export_says_by_whom(at):
    cohort = at("returned")
    mark = read_mark(cohort.mark_file("a1", NAME))
    sitting = Sitting(
        number=1, assignment=NAME, room="2", learners=("a1",), opened_at=mark.marked_at,
        opened_by="R. Holm", closed_at=mark.marked_at, closed_by="R. Holm",
        handed_in={"a1": mark.sheet_sha256},
    )  # fmt: skip
    SITTINGS.write(cohort.root / SITTINGS.file, Sittings((sitting,)))
    works("give-back", "--cohort", cohort.root)
    rows = export(cohort)
    row = rows["a1", "safe-order"]
    assert (row["evidence"], row["supervised_by"], row["met"]) == ("supervised", "R. Holm", "yes")
    assert rows["b2", "safe-order"]["met"] == "no"
    assert told(cohort, "a1", "safe-order") == "met"


def test_receipt_in_the_export_is_the_one_the_learner_has(at):
    cohort = at("returned")
    rows = export(cohort)
    [receipt] = read_receipts(cohort.workplace / "a1")
    assert rows["a1", "plan-order"]["receipt"] == receipt.code
    assert rows["a1", "plan-order"]["submission_sha256"] == receipt.sha256


def test_feedback_comes_back_and_gives_no_order_away(at):
    cohort = at("returned")
    desk = signed_in(cohort, "b2")
    desk.look_for_feedback()
    [entry] = desk.entries()
    assert entry.state == "feedback" and len(entry.feedback) == 1
    page = (cohort.workplace / entry.feedback[0]).read_text(encoding="utf-8")
    assert "Bo Lim" in page and "hand in again" not in page
    assert "could not be read" in (cohort.feedback("c3", NAME) / f"{NOTEBOOK}.html").read_text(
        encoding="utf-8"
    )
    assert (cohort.feedback("d4", NAME)).exists() is False


def test_progress(at, stages):
    cohort = at("returned")
    assert read_assigned(cohort, NAME).fields == 3
    stage = {one.learner.id: one.stage for one in progress(cohort)}
    assert stage == {
        "a1": Stage.ENOUGH,
        "b2": Stage.NOT_YET,
        "c3": Stage.UNREADABLE,
        "d4": Stage.NOT_FETCHED,
    }
    signed_in(cohort, "d4").get(NAME)
    assert progress(cohort)[3].stage == Stage.NOT_BEGUN
    (cohort.place("d4", NAME) / "jobsheet.json").write_text(
        sheet_of(cohort, "d4", {"gap-size": "1 mm"})[0]
    )
    one = progress(cohort)[3]
    assert (one.stage, one.answered, one.asked) == (Stage.UNDER_WAY, 1, 3)
    assert "Ada Okafor" in stages.said["progress"] and "marked, enough" in stages.said["progress"]


def test_gradebook_has_names_and_due_date(at):
    with book_of(at("assigned")) as book:
        names = {student.id: (student.first_name, student.last_name) for student in book.students}
        assert names["a1"] == ("Ada", "Okafor") and len(names) == 4
        assert f"{book.find_assignment(NAME).duedate:%Y-%m-%d %H:%M}" == "2099-12-04 23:59"


def test_released_notebook_holds_no_key(at):
    cohort = at("assigned")
    text = (cohort.outbound(NAME) / f"{NOTEBOOK}.ipynb").read_text()
    assert "12.5" not in text and "must_pass" not in text and "mark_task" not in text


def test_nbgraders_own_export_writes_the_same(at):
    cohort = at("returned")
    export(cohort)
    ours = (cohort.root / "exports" / "outcomes.csv").read_text()
    (cohort.root / "exports" / "outcomes.csv").unlink()
    done = subprocess.run(
        [sys.executable, "-m", "nbgrader", "export"],
        cwd=cohort.root,
        capture_output=True,
        text=True,
    )
    assert done.returncode == 0, done.stderr
    assert (cohort.root / "exports" / "outcomes.csv").read_text() == ours


# --- doing it again, and being cut short -------------------------------------------------------


def test_marking_again_changes_nothing(at):
    cohort = at("returned")
    before = {p: p.read_bytes() for p in sorted((cohort.root / "marks").rglob("*.json"))}
    lines = audit(cohort)
    assert "0 marked, 2 as before" in marks("--cohort", cohort.root)
    assert {p: p.read_bytes() for p in sorted((cohort.root / "marks").rglob("*.json"))} == before
    assert audit(cohort) == lines and len(lines) == 3
    assert "2 marked, 0 as before" in marks("--again", "--cohort", cohort.root)
    assert len(audit(cohort)) == 5


def test_a_colleges_own_rules_count_once_work_is_marked_again(at):
    cohort = at("returned")
    enough = export(cohort)["b2", "plan-order"]["enough"]
    rule = "everywhere: {points: %s %%, source: college rule}\n"
    for part, then in ((100, "no"), (1, "yes")):
        cohort.rules.write_text(rule % part)
        assert export(cohort)["b2", "plan-order"]["enough"] == enough
        assert "2 marked" in marks("--again", "--cohort", cohort.root)
        enough = export(cohort)["b2", "plan-order"]["enough"]
        assert enough == then
        assert mark_folder(cohort.submitted("b2", NAME)).outcomes == _sheets(cohort)["b2"].outcomes
    cohort.rules.write_text("everywhere: {points: many, source: college rule}\n")
    before = _sheets(cohort)
    refused = run("mark", "--again", "--cohort", cohort.root)
    assert refused.code and "rules.yaml, line 1" in refused.err
    assert _sheets(cohort) == before


def _sheets(cohort):
    return {
        learner.id: mark.sheet
        for learner in roster_of(cohort)
        if (mark := read_mark(cohort.mark_file(learner.id, NAME)))
    }


@pytest.mark.parametrize(
    "cut",
    [
        (marking_run.Recorder, "record"),
        (marking_run.Recorder, "commit"),
        (marking_run, "write_mark"),
        (marking_run, "_audit"),
    ],
    ids=lambda cut: cut[1],
)
@pytest.mark.parametrize("after", [1, 2])
@pytest.mark.parametrize("together", [1, 2])
def test_a_run_that_was_cut_short_is_finished_by_the_same_command(
    at, stages, monkeypatch, cut, after, together
):
    cohort = at("collected")
    real, calls = getattr(*cut), []

    def cut_short(*arguments, **named):
        if cut[1] == "_audit" and not arguments[1]:
            return real(*arguments, **named)  # nothing to log from before
        calls.append(1)
        if len(calls) == after:
            raise KeyboardInterrupt
        return real(*arguments, **named)

    monkeypatch.setattr(marking_run, "TOGETHER", together)
    monkeypatch.setattr(*cut, cut_short)
    stopped = run("mark", "--cohort", cohort.root)
    assert stopped.code == 130 and "goes on" in stopped.err
    monkeypatch.undo()
    marks("--cohort", cohort.root)
    whole = open_cohort(stages.base / "returned" / "group")
    assert _sheets(cohort) == _sheets(whole)
    assert {id: points(cohort, id) for id in ("a1", "b2", "c3")} == {
        id: points(whole, id) for id in ("a1", "b2", "c3")
    }
    lines = audit(cohort)
    assert sorted(line["learner"] for line in lines) == ["a1", "b2", "c3"]
    assert len({line["id"] for line in lines}) == 3


@pytest.mark.skipif(os.name == "nt", reason="no such signal")
def test_a_killed_run_is_finished_by_the_same_command(at):
    cohort = at("collected")
    code = (
        "import os, signal\n"
        "from twoshaft_grader.cohort import marking_run\n"
        "from twoshaft_grader.desk.commands import main\n"
        "real, calls = marking_run.write_mark, []\n"
        "def write(*a):\n"
        "    calls.append(1)\n"
        "    os.kill(os.getpid(), signal.SIGKILL) if len(calls) == 2 else real(*a)\n"
        "marking_run.write_mark = write\n"
        f"main(['mark', '--cohort', {str(cohort.root)!r}])\n"
    )
    killed = subprocess.run([sys.executable, "-c", code], stdout=subprocess.DEVNULL)
    assert killed.returncode == -signal.SIGKILL
    assert len(_sheets(cohort)) == 1
    said = marks("--cohort", cohort.root)
    assert "1 marked, 1 as before, 1 cannot be read" in said
    assert sorted(line["learner"] for line in audit(cohort)) == ["a1", "b2", "c3"]


def test_two_runs_at_once_are_refused(at):
    cohort = at("collected")
    with turn(cohort):
        refused = run("mark", "--cohort", cohort.root)
    assert refused.code == 2 and "another run" in refused.err


def test_several_processes_give_the_same_marks(at, stages, monkeypatch):
    cohort = at("collected")
    monkeypatch.setattr(marking_run, "ALONE_S", 0.0)
    marks("--workers", 2, "--cohort", cohort.root)
    assert _sheets(cohort) == _sheets(open_cohort(stages.base / "returned" / "group"))


def test_work_that_ends_its_process_holds_up_nobody(at, small_solution, tmp_path):
    cohort = at("collected")
    assigned = read_assigned(cohort, NAME)
    good = marking_run.work_of(cohort, assigned, "a1")
    killer = build_notebook(
        small_solution.replace("task = order", "import os\nos._exit(9)\ntask = order"),
        Path(f"solutions/{NOTEBOOK}.py"),
    )
    (tmp_path / "killer.ipynb").write_text(notebook_text(killer))
    bad = replace(good, learner="x", notebook=str(tmp_path / "killer.ipynb"))
    results = {r.learner: r for r in marking_run._in_processes([bad, good], 1)}
    assert results["a1"].sheet.points == 6 and not results["a1"].trouble
    assert results["x"].sheet is None and "program end" in results["x"].trouble


def test_an_assign_that_was_cut_short_is_finished_by_the_same_command(at, content, monkeypatch):
    cohort = at("assigned")
    from twoshaft_grader.cohort import backbone

    real = backbone.run

    def cut_short(place, doing, *rest):
        if doing.startswith("handing out"):
            raise KeyboardInterrupt
        real(place, doing, *rest)

    command = ["module", "assign", "order-of-work", "--attempt", 2, "--cohort", cohort.root]
    monkeypatch.setattr(backbone, "run", cut_short)
    assert run(*command).code == 130
    assert "order-of-work-2" not in works("module", "list", "--cohort", cohort.root)
    monkeypatch.undo()
    works(*command)
    assert "order-of-work-2" in works("module", "list", "--cohort", cohort.root)
    again = run(*command)
    assert again.code == 2 and "hand attempt 3 out" in again.err
    one, two = (files.read_json(cohort.issued("a1", f"order-of-work-{n}"))["given"] for n in (1, 2))
    assert one != two


# --- marks changed by hand ---------------------------------------------------------------------


def _change_in_formgrader(cohort, learner, task, score, comment=""):
    """As nbgrader's Formgrader writes it."""
    with book_of(cohort) as book:
        grade = book.find_grade(task, NOTEBOOK, NAME, learner)
        grade.manual_score, grade.needs_manual_grade = score, False
        if comment:
            book.find_comment(f"{task}-task", NOTEBOOK, NAME, learner).manual_comment = comment
        book.db.commit()


@pytest.mark.slow
@pytest.mark.timeout(180)
def test_nbgraders_own_autograde_runs_nothing_that_was_handed_in(at, tmp_path):
    cohort = at("collected")
    honest = points(at("returned"), "a1")
    there = tmp_path / "run"
    handed_in = cohort.submitted("a1", NAME)
    code = f"open({str(there)!r}, 'a').write('run')"
    notebook = next(handed_in.glob("*.ipynb"))
    text = nbformat.read(notebook, as_version=4)
    for cell in text.cells:
        if cell.cell_type == "code":
            cell.source = f"{code}\n1000.0" if "nbgrader" in cell.metadata else code
    nbformat.write(text, notebook)
    for name in ("twoshaft.py", "json.py", "sitecustomize.py", "ipython_config.py"):
        (handed_in / name).write_text(code)
    (handed_in / "twoshaft_grader").mkdir()
    (handed_in / "twoshaft_grader" / "__init__.py").write_text(code)
    told = subprocess.run(
        [sys.executable, "-m", "nbgrader", "autograde", NAME, "--student", "a1"],
        cwd=cohort.root,
        capture_output=True,
        text=True,
    )
    assert told.returncode == 0, told.stderr
    assert not there.exists()
    left = {path.name for path in (cohort.root / "autograded" / "a1" / NAME).iterdir()}
    ours = {"assignment.json", "unit.yaml", "jobsheet.json", "timestamp.txt"}
    assert left == {notebook.name} | ours
    assert points(cohort, "a1") == honest


def test_a_mark_changed_in_the_gradebook_is_exported_with_a_note(at):
    cohort = at("returned")
    before = export(cohort)
    _change_in_formgrader(cohort, "a1", "plan", 3.0, "The order was shown to you.")
    rows = export(cohort)
    total = sum(float(rows["a1", outcome]["mark"]) for outcome in ("plan-order", "safe-order"))
    assert total == pytest.approx(5) == points(cohort, "a1")
    for outcome in ("plan-order", "safe-order"):
        row = rows["a1", outcome]
        assert "gradebook" in row["changed_by"]
        assert "from 4 to 3: The order was shown to you" in row["note"]
        assert float(row["mark"]) < float(before["a1", outcome]["mark"])
    assert rows["b2", "plan-order"] == before["b2", "plan-order"]
    works("give-back", "--cohort", cohort.root)
    page = (cohort.feedback("a1", NAME) / f"{NOTEBOOK}.html").read_text(encoding="utf-8")
    assert "The order was shown to you." in page


def test_extra_credit_on_the_text_of_a_task_counts(at):
    cohort = at("returned")
    with book_of(cohort) as book:
        book.find_grade("gap-task", NOTEBOOK, NAME, "a1").extra_credit = 0.5
        book.db.commit()
    row = export(cohort)["a1", "plan-order"]
    assert row["mark"] == "5.5" and "from 2 to 2.5" in row["note"]
    assert points(cohort, "a1") == 6.5


def test_change_mark_keeps_author_and_reason(at):
    cohort = at("returned")
    change = ["change-mark", "b2", NAME, "gap", 1.5, "--cohort", cohort.root]
    works(*change, "--by", "M. Hollis", "--why", "The gauge was read with them")
    row = export(cohort)["b2", "plan-order"]
    assert row["changed_by"] == "M. Hollis"
    assert "gap changed by hand from 0 to 1.5: The gauge was read with them" in row["note"]
    # a later change in the gradebook is nobody's any more
    _change_in_formgrader(cohort, "b2", "gap", 1.0)
    assert "gradebook" in export(cohort)["b2", "plan-order"]["changed_by"]
    for bad, word in (
        (["b2", NAME, "gap", 3], "give 0 to 2"),
        (["b2", NAME, "gop", 1], "choose one of these"),
        (["d4", NAME, "gap", 1], "mark it first"),
        (["b2", "x", "gap", 1], "choose one of these"),
    ):
        refused = run("change-mark", *bad, "--by", "x", "--why", "y", "--cohort", cohort.root)
        assert refused.code == 2 and word in refused.err
    refused = run(*change, "--by", " ", "--why", "y")
    assert refused.code == 2 and "name an assessor" in refused.err


def test_a_hand_change_outlives_new_work_and_asks_for_a_look(at):
    cohort = at("returned")
    _change_in_formgrader(cohort, "b2", "gap", 1.0)
    works_and_hands_in(cohort, "b2", full_answers(cohort, "b2"))
    works("collect", "--take", "b2", "--cohort", cohort.root)
    assert "newer work" in export(cohort)["b2", "plan-order"]["note"]
    assert "mark it first: b2" in works("give-back", "--cohort", cohort.root)
    marks("--cohort", cohort.root)
    row = export(cohort)["b2", "plan-order"]
    assert "look again" in row["note"] and row["mark"] == "4"


def test_a_mark_that_differs_in_the_gradebook_is_reported(at):
    cohort = at("returned")
    with book_of(cohort) as book:
        book.find_grade("gap", NOTEBOOK, NAME, "a1").auto_score = 0.0
        book.db.commit()
    row = export(cohort)["a1", "plan-order"]
    assert row["mark"] == "5" and "the gradebook has 0 for gap" in row["note"]


# --- people and work that come another way -----------------------------------------------------


def test_late_joiner_gets_readings_and_everybody_keeps_their_word(at, tmp_path):
    cohort = at("assigned")
    slips = (cohort.root / "sign-in-slips.csv").read_text().splitlines()
    (tmp_path / "more.csv").write_text(
        "id;family name;given name\nA1;Okafor-Bell;Ada\ne5;Fry;Edda\n"
    )
    said = works("roster", "take", tmp_path / "more.csv", "--cohort", cohort.root)
    assert "1 added, 1 corrected" in said and "b2, c3, d4" in said and "1 sets of readings" in said
    assert [one.id for one in roster_of(cohort)] == ["a1", "b2", "c3", "d4", "e5"]
    after = (cohort.root / "sign-in-slips.csv").read_text().splitlines()
    assert [line.split(",")[2] for line in after[:5]] == [line.split(",")[2] for line in slips]
    with book_of(cohort) as book:
        assert book.find_student("a1").last_name == "Okafor-Bell"
    works_and_hands_in(cohort, "e5", full_answers(cohort, "e5"))
    works("collect", "--cohort", cohort.root)
    works("mark", "--cohort", cohort.root)
    assert points(cohort, "e5") == 6


def test_a_unit_of_ones_own(content, tmp_path):
    """Readings and marks follow the file as it was when the module was assigned."""
    root = tmp_path / "own"
    works("cohort", "make", root, "--unit", "my.yaml", "--content", content)
    variant = "variant of: tarnbeck-b5\nidentity: {id: my-b5, name: My unit, version: '%s'}\n"
    (root / "my.yaml").write_text(variant % 1)
    (tmp_path / "list.csv").write_text("id,family name,given name\na1,Okafor,Ada\n")
    works("roster", "take", tmp_path / "list.csv", "--cohort", root)
    works("module", "assign", "order-of-work", "--cohort", root)
    (root / "my.yaml").write_text(variant % 2)
    (tmp_path / "list.csv").write_text("id,family name,given name\nb2,Lim,Bo\n")
    works("roster", "take", tmp_path / "list.csv", "--cohort", root)
    cohort = open_cohort(root)
    for learner in ("a1", "b2"):
        issued = files.read_json(cohort.issued(learner, NAME))
        assert (issued["unit"], issued["unit_version"]) == ("my-b5", "1")
    unit = assigned_unit(cohort, read_assigned(cohort, NAME))
    works_and_hands_in(cohort, "b2", full_answers(cohort, "b2", unit))
    works("collect", "--cohort", root)
    works("mark", "--cohort", root)
    row = export(cohort)["b2", "plan-order"]
    assert (row["mark"], row["unit"], row["unit_version"]) == ("5", "my-b5", "1")


def test_a_slip_in_ones_own_unit_is_said_before_anything_is_handed_out(content, tmp_path):
    slip = (
        "variant of: tarnbeck-b5\nidentity: {id: my-b5, name: My unit, version: '1'}\n"
        "fasteners: {groups: {remove: [case-bolts]}}\n"
    )
    (tmp_path / "my.yaml").write_text(slip)
    said = run("cohort", "make", tmp_path / "early", "--unit", tmp_path / "my.yaml")
    assert said.code == 2 and "case-bolts is no fastener group" in said.err
    assert not (tmp_path / "early").exists()
    said = run("cohort", "make", tmp_path / "early", "--unit", "tarnbek")
    assert said.code == 2 and "no shipped unit 'tarnbek'" in said.err

    root = tmp_path / "own"
    works("cohort", "make", root, "--unit", "my.yaml", "--content", content)
    (root / "my.yaml").write_text(slip)
    (tmp_path / "list.csv").write_text("id,family name,given name\na1,Okafor,Ada\n")
    works("roster", "take", tmp_path / "list.csv", "--cohort", root)
    said = run("module", "assign", "order-of-work", "--cohort", root)
    assert said.code == 2 and "case-bolts is no fastener group" in said.err
    assert not open_cohort(root).source(NAME).exists()


def test_new_word_replaces_the_old_one(at):
    cohort = at("assigned")
    said = works("roster", "word", "a1", "--cohort", cohort.root)
    word = said.split()[-1].rstrip(".")
    assert SignIn(cohort.workplace).sign_in("a1", word).id == "a1"
    signed_in(cohort, "a1"), signed_in(cohort, "b2")
    assert run("roster", "word", "zz", "--cohort", cohort.root).code == 2


def test_work_placed_by_hand_is_marked_and_returned(at):
    cohort = at("returned")
    folder = cohort.submitted("d4", NAME)
    folder.mkdir(parents=True)
    (folder / "jobsheet.json").write_text(sheet_of(cohort, "d4", full_answers(cohort, "d4"))[0])
    assert "placed by hand" in works("collect", "--cohort", cohort.root).lower()
    marks("--cohort", cohort.root)
    row = export(cohort)["d4", "plan-order"]
    assert (row["state"], row["mark"], row["handed_in"], row["late_minutes"]) == (
        "marked", "5", "", "",
    )  # fmt: skip
    assert "4 of 4" in works("give-back", "--cohort", cohort.root)


def test_a_damaged_file_after_a_good_one_takes_no_mark_away(at):
    cohort = at("returned")
    before = export(cohort)["a1", "plan-order"]
    works_and_hands_in(cohort, "a1", full_answers(cohort, "a1"))
    [*_, arrived] = sorted(cohort.inbound.glob("a1+*"))
    (arrived / "jobsheet.json").chmod(0o644)
    (arrived / "jobsheet.json").write_text("{")
    works("collect", "--take", "a1", "--cohort", cohort.root)
    for _ in range(2):
        assert "2 cannot be read" in marks("--cohort", cohort.root)
    row = export(cohort)["a1", "plan-order"]
    assert (row["state"], row["mark"], row["receipt"]) == ("cannot be read", "5", before["receipt"])
    assert "not readable as JSON" in row["note"] and "handed in before" in row["note"]
    assert points(cohort, "a1") == 6 and len(audit(cohort)) == 4
    works("give-back", "--cohort", cohort.root)
    page = (cohort.feedback("a1", NAME) / f"{NOTEBOOK}.html").read_text(encoding="utf-8")
    assert "could not be read" in page and "handed in before" in page


def test_strangers_and_bad_folders_hold_up_nobody(at):
    cohort = at("assigned")
    works_and_hands_in(cohort, "a1", full_answers(cohort, "a1"))
    for name in (f"b2+{NAME}+no time at all+x", f"stranger+{NAME}+2026-01-01 10:00:00 UTC+x"):
        (cohort.inbound / name).mkdir()
    said = works("collect", "--cohort", cohort.root, code=1)
    assert "1 new" in said and "Not on the roster, and left in the exchange: stranger" in said
    assert re.search("b2 +the hand-in is not taken: its time cannot be read", said)
    assert "1 marked" in works("mark", "--cohort", cohort.root)


def test_renamed_notebook_is_marked_and_its_feedback_found(at):
    cohort = at("assigned")
    works_and_hands_in(cohort, "a1", full_answers(cohort, "a1"))
    [arrived] = cohort.inbound.glob("a1+*")
    (arrived / f"{NOTEBOOK}.ipynb").rename(arrived / "my answers.ipynb")
    for command in ("collect", "mark", "give-back"):
        works(command, "--cohort", cohort.root)
    assert points(cohort, "a1") == 6
    assert {page.stem for page in cohort.feedback("a1", NAME).glob("*.html")} == {
        NOTEBOOK,
        "my answers",
    }


def test_lateness_and_a_later_date_for_one(at):
    cohort = at("returned")
    handed_in = marking_run.hand_in_time(cohort, "a1", NAME)
    due = handed_in - timedelta(minutes=90, seconds=30)
    works("module", "due", NAME, due.isoformat(), "--cohort", cohort.root)
    rows = export(cohort)
    assert rows["a1", "plan-order"]["late_minutes"] == "90"
    with book_of(cohort) as book:
        assert book.find_submission(NAME, "a1").total_seconds_late == pytest.approx(5430, abs=2)
    later = (handed_in + timedelta(days=2)).isoformat()
    works("module", "due", NAME, later, "--learner", "a1", "--cohort", cohort.root)
    rows = export(cohort)
    assert rows["a1", "plan-order"]["late_minutes"] == "0"
    assert int(rows["b2", "plan-order"]["late_minutes"]) >= 90
    marks("--again", "--cohort", cohort.root)
    with book_of(cohort) as book:
        assert book.find_submission(NAME, "a1").total_seconds_late == 0
    [entry] = signed_in(cohort, "a1").entries()
    assert not entry.overdue


# --- what goes wrong is one sentence -----------------------------------------------------------


@pytest.mark.parametrize(
    ("command", "words"),
    [
        ("collect", ["no cohort folder"]),
        ("collect --cohort {none}", ["is no cohort folder", "name the folder of a cohort"]),
        ("mark order-of-work-9 --cohort {root}", ["order-of-work-9", "choose one of these"]),
        ("module assign shims --cohort {root}", ["shims", "order-of-work"]),
        ("module assign order-of-work --due soon --cohort {root}", ["soon", "2026-12-04"]),
        (
            "module assign order-of-work --cohort {root}",
            ["handed out already", "hand attempt 2 out"],
        ),
        ("module assign order-of-work --attempt 0 --cohort {root}", ["from 1"]),
        ("module assign order-of-work --content {none} --cohort {root}", ["no folder solutions"]),
        ("roster take {none} --cohort {root}", ["not there"]),
        ("cohort make {root}", ["cohort folder already"]),
        ("demo {root}", ["not empty"]),
        ("observations --learner zz --cohort {root}", ["zz", "check the id"]),
        ("observations --outcome order-of-work --cohort {root}", ["use one of: plan-order"]),
        ("unit check {none}/x.yaml", ["x.yaml"]),
        ("nonsense", ["nonsense", "--help"]),
        ("mark --workers many", ["--workers", "--help"]),
        ("change-mark a1", ["Missing argument", "--help"]),
    ],
)
def test_errors_are_one_sentence(at, tmp_path, monkeypatch, command, words):
    cohort = at("assigned")
    (tmp_path / "none").mkdir()
    monkeypatch.chdir(tmp_path / "none")
    parts = command.format(root=cohort.root, none=tmp_path / "none" / "no").split()
    result = run(*parts)
    assert result.code == 2 and result.out == ""
    lines = result.err.strip().splitlines()
    assert len(lines) == 1 and lines[0].endswith(".")
    for word in words:
        assert word in result.err
    assert "Traceback" not in result.err


def test_trace_shows_where_an_error_comes_from(tmp_path):
    result = run("collect", "--cohort", tmp_path, "--trace")
    assert result.code == 2 and "Traceback" in result.err
    assert result.err.strip().splitlines()[-1].endswith(".")


@pytest.mark.parametrize(
    "command",
    ["", "cohort", "cohort make", "roster", "roster take", "roster word", "roster list", "module",
     "module assign", "module due", "module list", "collect", "mark", "give-back", "change-mark",
     "export", "progress", "unit", "unit check", "unit schema", "open", "demo"],
)  # fmt: skip
def test_help_everywhere(command):
    assert "Usage: twoshaft" in works(*command.split(), "--help")


def test_damaged_files_of_the_cohort_are_named(at):
    cohort = at("returned")
    cohort.mark_file("a1", NAME).write_text("{")
    result = run("export", "--cohort", cohort.root)
    assert result.code == 1 and "a1.json, line 1" in result.out
    (cohort.root / "nbgrader_config.py").write_text("import nothing_of_that_name")
    result = run("module", "assign", "order-of-work", "--attempt", 2, "--cohort", cohort.root)
    assert result.code == 2 and "nbgrader_config.py" in result.err


def test_unit_commands(capfd):
    assert "nothing to correct" in works("unit", "check", "tarnbeck-b5")
    assert json.loads(works("unit", "schema"))["$schema"].startswith("https://json-schema.org/")
