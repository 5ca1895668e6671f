"""A corrected unit and a corrected solution: seen before they are taken, and nothing is lost."""

import csv
import json
import re
import shutil
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

import twoshaft.units
from twoshaft.errors import CohortError, UnitFileError
from twoshaft.jobsheet.bench_unit import unit_source
from twoshaft.units import load_unit, loader
from twoshaft.units.whole_file import shipped_digest
from twoshaft_grader.cohort import marking_run
from twoshaft_grader.cohort.assessors import enter_assessor
from twoshaft_grader.cohort.assign import assign, assigned_unit, issue_to_all, read_assigned
from twoshaft_grader.cohort.clock import now
from twoshaft_grader.cohort.collect import collect
from twoshaft_grader.cohort.content import Content, find_content
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.give_back import give_back
from twoshaft_grader.cohort.intake import roster_of, take_in
from twoshaft_grader.cohort.marking_run import mark_assignment
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import check_trail, read_trail
from twoshaft_grader.cohort.unit_changes import unit_changes
from twoshaft_grader.desk.commands import main
from twoshaft_grader.desk_pages.corrected_unit import CorrectedUnit
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Values
from twoshaft_grader.desk_pages.remark import Remark
from twoshaft_grader.stored.assignment import ASSIGNMENT
from twoshaft_grader.stored.lines import MARK_LINES

B5 = (Path(twoshaft.units.__file__).parent / "files" / "tarnbeck-b5.yaml").read_text()
CORRECTED = re.sub(
    r"minutes to do: 6\n(\s+minutes to undo: 0\n\s+caution: Keep your)",
    r"minutes to do: 8\n\1",
    B5.replace('version: "2.0"', 'version: "2.1"').replace(
        "The stone sheds grit; what the wash", "A stone sheds grit; what the wash"
    ),
)
LEARNERS = ("a1", "b2", "c3")


@pytest.fixture(scope="module")
def made(handed_out, tmp_path_factory):
    base = tmp_path_factory.mktemp("corrections")
    trial = handed_out(base, LEARNERS)
    shutil.copytree(trial.cohort.content, base / "content")  # so that it can be corrected
    text = (base / "desk" / "cohort.yaml").read_text()
    content = base / "content"
    (base / "desk" / "cohort.yaml").write_text(text.replace(trial.cohort.content, str(content)))
    return trial


@pytest.fixture
def trial(made, tmp_path):
    shutil.copytree(made.base, tmp_path / "base", symlinks=True)
    path = tmp_path / "base" / "desk" / "cohort.yaml"
    path.write_text(path.read_text().replace(str(made.base), str(tmp_path / "base")))
    small = type(made)(tmp_path / "base")
    enter_assessor(small.cohort, "rh", "R. Holm")
    return small


@pytest.fixture
def file(tmp_path):
    path = tmp_path / "corrected.yaml"
    path.write_text(CORRECTED)
    return path


def do(page, act, files=(), **typed):
    return page.do(act, Values(typed, files=dict(files)), Work())


def table(page, id):
    (found,) = [part for part in page.show() if getattr(part, "id", "") == id]
    return found.texts()


def run(trial, *words):
    return main([*words, "--cohort", str(trial.cohort.root)])


def test_what_differs_is_told_by_operation_rule_and_figure(file):
    old, new = load_unit("tarnbeck-b5"), load_unit(file)
    told = [(one.about, one.what, one.before, one.after) for one in unit_changes(old, new)]
    stone = "“Stone the joint face of the clutch housing flat”"
    assert told[0] == ("identity", "version", "2.0", "2.1")
    assert told[1] == ("operation", f"{stone}, minutes do", "6 min", "8 min")
    about, what, before, after = told[2]
    assert (about, what) == ("rule", "“stone before wash”, reason") and len(told) == 3
    assert before.startswith("The stone") and after.startswith("A stone")
    assert unit_changes(old, old) == ()


def test_an_entry_that_is_new_or_gone_is_one_line():
    unit = load_unit("tarnbeck-b5")
    less = unit.model_copy(update={"rules": unit.rules[1:], "tools": unit.tools[:-1]})
    gone, back = unit_changes(unit, less), unit_changes(less, unit)
    assert [one.after for one in gone] == ["not there"] * 2
    assert [one.before for one in back] == ["not there"] * 2
    (rule,) = [one for one in gone if one.about == "rule"]
    assert "before “Wash the clutch housing" in rule.before


def test_a_corrected_unit_is_seen_before_it_is_taken_and_what_is_out_keeps_its_own(trial, file):
    trial.hand_in("a1")
    cohort, page = trial.cohort, CorrectedUnit(Desk(trial.cohort.root, "R. Holm"))
    before = sorted(path.read_bytes() for path in (cohort.root / "issued").rglob("*.json"))
    assert "Nothing is written yet" in do(page, "read", {"file": file})
    assert len(table(page, "unit-changes")) == 3
    assert table(page, "touched") == [[trial.name, "2.0", "3", "1", "0", "as before"]]
    assert not (cohort.root / "unit.yaml").exists()
    with pytest.raises(CohortError, match="the reason is missing"):
        do(page, "take")
    assert "is taken" in do(page, "take", why="stoning takes longer")
    now = open_cohort(cohort.root)
    assert load_unit(now.unit_source).identity.version == "2.1"
    act = read_trail(cohort.root)[-1].act
    assert (act.did, act.by, act.why) == (
        "take a corrected unit", "R. Holm", "stoning takes longer",
    )  # fmt: skip
    # Lessons follow it; what is out keeps its own, for who comes late too.
    assert load_unit(unit_source(now.workplace / "lessons")).identity.version == "2.1"
    assigned = read_assigned(now, trial.name)
    assert assigned_unit(now, assigned).identity.version == "2.0"
    take_in(now, [Learner("d4", "Late", "Di")])
    assert issue_to_all(now, roster_of(now)) == 0
    issued = sorted(path.read_bytes() for path in (cohort.root / "issued").rglob("*.json"))
    assert set(before) < set(issued)
    assert {json.loads(text)["unit_version"] for text in issued} == {"2.0"}
    content = find_content(now.content, base=now.root)
    people = roster_of(now)
    again = assign(now, content, assigned.module, attempt=2, due=None, learners=people)
    assert again.unit_version == "2.1" and assigned_unit(now, again).identity.version == "2.1"
    for one in people:
        assert json.loads(now.issued(one.id, again.name).read_text())["unit_version"] == "2.1"


@pytest.fixture
def upgrade(monkeypatch, tmp_path):
    """Put a newer course in place, which ships its units otherwise."""

    def newer():
        shutil.copytree(loader.SHIPPED, tmp_path / "shipped")
        (tmp_path / "shipped" / "tarnbeck-b5.yaml").write_text(CORRECTED)
        monkeypatch.setattr(loader, "SHIPPED", tmp_path / "shipped")
        shipped_digest.cache_clear()

    yield newer
    shipped_digest.cache_clear()


def test_what_is_out_keeps_the_unit_that_the_course_had_when_a_newer_course_changes_it(
    trial, upgrade
):
    trial.hand_in("a1")
    cohort = trial.cohort
    assigned, people = read_assigned(cohort, trial.name), roster_of(cohort)
    released = cohort.outbound(trial.name)
    about = ASSIGNMENT.read(released / ASSIGNMENT.file)
    # As long as nothing changes it is the shipped one, which everybody shares.
    assert marking_run.work_of(cohort, assigned, "a1").unit == about.unit == "tarnbeck-b5"
    assert unit_source(released, about) == "tarnbeck-b5"
    was = assigned_unit(cohort, assigned)
    upgrade()
    assert load_unit("tarnbeck-b5").identity.version == "2.1"
    assert assigned_unit(cohort, assigned) == load_unit(cohort.source(trial.name) / "unit.yaml")
    assert assigned_unit(cohort, assigned).model_dump() == was.model_dump()
    assert load_unit(unit_source(released, about)).model_dump() == was.model_dump()
    assert (
        marking_run.work_of(cohort, assigned, "a1").unit == cohort.source(trial.name) / "unit.yaml"
    )
    collect(cohort, assigned, people)
    done = mark_assignment(cohort, assigned, people[:1], workers=1)
    assert [(one.state, one.points) for one in done] == [("marked", one.maximum) for one in done]
    # What is handed out from now on is of the newer one.
    content = find_content(cohort.content, base=cohort.root)
    again = assign(cohort, content, assigned.module, attempt=2, due=None, learners=people)
    assert marking_run.work_of(cohort, again, "a1").unit == "tarnbeck-b5"
    assert assigned_unit(cohort, again).identity.version == "2.1"


def test_what_was_handed_out_without_its_unit_is_of_the_one_that_the_course_ships(trial):
    cohort = trial.cohort
    source = cohort.source(trial.name)
    (source / "unit.yaml").unlink()
    about = ASSIGNMENT.read(source / ASSIGNMENT.file)
    ASSIGNMENT.write(source / ASSIGNMENT.file, replace(about, unit_digest=""))
    assert "unit_digest" not in (source / ASSIGNMENT.file).read_text()
    assert marking_run.work_of(cohort, read_assigned(cohort, trial.name), "a1").unit == about.unit


def test_the_command_shows_and_takes_the_same_and_a_second_correction_follows(trial, file, capsys):
    assert run(trial, "unit", "correct", str(file), "--show") == 0
    assert "6 min -> 8 min" in capsys.readouterr().out
    assert not (trial.cohort.root / "unit.yaml").exists()
    assert run(trial, "unit", "correct", str(file), "--why", "longer") == 0
    file.write_text(CORRECTED.replace('"2.1"', '"2.2"').replace("to do: 8", "to do: 9"))
    assert run(trial, "unit", "correct", str(file), "--why", "longer still") == 0
    assert "8 min -> 9 min" in capsys.readouterr().out
    now = open_cohort(trial.cohort.root)
    assert load_unit(now.unit_source).identity.version == "2.2"
    assert (now.workplace / "unit.yaml").read_bytes() == file.read_bytes()
    assert not check_trail(now.root).faults


@pytest.mark.parametrize(
    ("text", "error", "says"),
    [
        (CORRECTED.replace('"2.1"', '"2.0"'), CohortError, "both say version 2.0"),
        ("identity: [", UnitFileError, "^corrected.yaml"),
        (b"\xff\xfe\x00", UnitFileError, "^corrected.yaml"),
        (
            CORRECTED.replace("stage: clutch-housing", "stage: nowhere"),
            UnitFileError,
            "^corrected.yaml, line .*nowhere",
        ),
    ],
)
def test_a_file_that_will_not_do_changes_nothing(trial, file, text, error, says):
    file.write_bytes(text if isinstance(text, bytes) else text.encode())
    page = CorrectedUnit(Desk(trial.cohort.root))
    with pytest.raises(error, match=says):
        do(page, "read", {"file": file})
    assert not (trial.cohort.root / "unit.yaml").exists()


@pytest.fixture
def marked(trial):
    """a1 has all right by the solution as it is; b2 has the figure that is right in truth."""
    trial.hand_in("a1")
    trial.hand_in("b2", answers={"gap-size": "13 mm", "gap-first": "clean"})
    cohort = trial.cohort
    assigned, people = read_assigned(cohort, trial.name), roster_of(cohort)
    collect(cohort, assigned, people)
    mark_assignment(cohort, assigned, people, workers=1)
    give_back(cohort, assigned, people)
    return trial


def correct(trial, was='Q(12.5, \\"mm\\")', now='Q(13.0, \\"mm\\")'):
    content = Content(Path(trial.cohort.content))
    path = content.solution("measuring-and-tools")
    text = path.read_text()
    assert was in text
    path.write_text(text.replace(was, now))


def marks(trial):
    found = {one: read_mark(trial.cohort.mark_file(one, trial.name)) for one in ("a1", "b2")}
    return {one: mark.sheet.points for one, mark in found.items()}


def test_a_corrected_solution_is_seen_first_and_old_marks_are_kept_and_told(marked):
    before = marks(marked)
    page = Remark(Desk(marked.cohort.root, "at the desk"))
    assert "Nothing is written yet" in do(page, "look", name=marked.name)
    assert table(page, "would-change") == []
    do(page, "leave")
    correct(marked)
    do(page, "look", name=marked.name)
    told = {line[0]: line[1:3] for line in table(page, "would-change")}
    assert told["a1"][0] == told["b2"][1] and told["a1"][1] == told["b2"][0]
    assert marks(marked) == before
    for missing, says in (({}, "the assessor"), ({"by": "xx", "why": "w"}, "not on the register")):
        with pytest.raises(CohortError, match=says):
            do(page, "write", **missing)
    assert marks(marked) == before
    why = "the gap is 13 mm"
    assert "Re-marked: a1, b2." in do(page, "write", by="rh", why=why)
    assert marks(marked) == {"a1": before["b2"], "b2": before["a1"]}
    cohort = marked.cohort
    mark = read_mark(cohort.mark_file("b2", marked.name))
    (gone,) = mark.before
    assert (gone.sheet.points, gone.by, gone.why) == (before["b2"], "R. Holm", why)
    assert len(list((cohort.root / "solutions-before").glob("*.ipynb"))) == 1
    act = read_trail(cohort.root)[-1].act
    assert act.did == "re-mark" and act.by == "R. Holm" and act.why == why
    assert f"b2 {before['b2']:g}" in act.before and f"b2 {before['a1']:g}" in act.after
    # The learner's page and the export tell it; the gradebook has the new mark.
    give_back(cohort, read_assigned(cohort, marked.name), roster_of(cohort))
    (html,) = cohort.feedback("b2", marked.name).glob("*.html")
    assert "Marked again by R. Holm" in html.read_text() and why in html.read_text()
    assert run(marked, "export") == 0
    with open(cohort.root / "exports" / "outcomes.csv", newline="", encoding="utf-8-sig") as csvf:
        mine = [row for row in csv.DictReader(csvf) if row["learner"] == "b2"]
    assert all("R. Holm" in row["changed_by"] and why in row["note"] for row in mine)
    assert run(marked, "verify") == 0
    do(page, "look", name=marked.name)
    assert table(page, "would-change") == []


def test_the_command_shows_and_writes_the_same(marked, capsys):
    before = marks(marked)
    correct(marked)
    assert run(marked, "re-mark", marked.name) == 0
    assert "b2: from" in capsys.readouterr().out and marks(marked) == before
    assert run(marked, "re-mark", marked.name, "--write", "--by", "rh", "--why", "13 mm") == 0
    assert marks(marked) == {"a1": before["b2"], "b2": before["a1"]}


def test_marking_again_that_was_cut_before_it_was_logged_is_logged_by_the_same_command(
    marked, monkeypatch
):
    later = now() + timedelta(minutes=5)  # marks of one second have one id
    monkeypatch.setattr(marking_run, "now", lambda: later)
    correct(marked)
    write = ("re-mark", marked.name, "--write", "--by", "rh", "--why", "13 mm")
    assert run(marked, *write) == 0
    log = marked.cohort.log("marks")
    whole = [line.id for line in MARK_LINES.read(log)]
    lines = log.read_bytes().splitlines(keepends=True)
    log.write_bytes(b"".join(lines[:-2]))
    assert run(marked, *write) == 0
    told = list(MARK_LINES.read(log))
    assert sorted(line.id for line in told) == sorted(whole)
    assert sorted(line.learner for line in told[-2:]) == ["a1", "b2"]


def test_a_solution_that_asks_something_else_is_refused(marked):
    correct(marked, "gap-first", "gap-last")
    page = Remark(Desk(marked.cohort.root))
    with pytest.raises(CohortError, match="asks something else"):
        do(page, "look", name=marked.name)
