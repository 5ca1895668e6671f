"""The demo cohort, as a newcomer meets it: everything the command prints is there."""

import csv
import dataclasses
import io
import re
import shutil
from pathlib import Path

import pytest

from twoshaft.jobsheet.signin import SignIn
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import read_mark, write_mark
from twoshaft_grader.desk import demo
from twoshaft_grader.desk.commands import main
from twoshaft_grader.desk.demo_people import APPRENTICES, FREE, Way
from twoshaft_grader.desk.jupyter import jupyter_command
from twoshaft_grader.records.progress import Stage, progress

pytestmark = pytest.mark.slow
NAME = "order-of-work-1"


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    """The demo cohort and the lines that were printed; an earlier try was cut short."""
    root = tmp_path_factory.mktemp("demo") / "tarnbeck"
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(demo, "assign", lambda *_, **__: (_ for _ in ()).throw(KeyboardInterrupt))
        with pytest.raises(KeyboardInterrupt):
            demo.make_demo(root, say=print)
    assert not root.exists()
    lines = []
    demo.make_demo(root, say=lines.append)
    return open_cohort(root), lines


def by_way(way):
    return [one.learner.id for one in APPRENTICES if one.way == way]


def test_everybody_fares_as_meant(made):
    cohort, _ = made
    standing = {one.learner.id: one for one in progress(cohort)}
    assert len(standing) == len(APPRENTICES) == 12
    for one in APPRENTICES:
        it = standing[one.learner.id]
        share = it.points / it.maximum if it.maximum else None
        match one.way:
            case Way.RIGHT:
                assert share == 1 and it.stage == Stage.ENOUGH
            case Way.NEARLY | Way.LATE | Way.RENAMED:
                assert 0.6 < share < 1
                assert it.late is (one.way == Way.LATE)
            case Way.SLIPS | Way.UNFINISHED | Way.ODD_UNITS:
                assert 0 < share < 0.95
                assert it.stage == Stage.NOT_YET or one.way != Way.UNFINISHED
            case Way.DAMAGED:
                assert it.stage == Stage.UNREADABLE and share == 0
            case Way.BEGUN:
                assert it.stage == Stage.UNDER_WAY
            case Way.AWAY:
                assert it.stage == Stage.NOT_FETCHED
        assert it.given_back is (one.way not in FREE)


def test_odd_units_are_noticed(made):
    cohort, _ = made
    [learner] = by_way(Way.ODD_UNITS)
    sheet = read_mark(cohort.mark_file(learner, NAME)).sheet
    numbers = [field for field in sheet.fields if field.kind == "number"]
    assert numbers and all(field.share < 1 and field.sentences for field in numbers)


def test_what_is_printed_is_there(made):
    cohort, lines = made
    text = "\n".join(lines)
    assert "invented" in lines[0]
    paths = re.findall(r"(/\S+\.(?:html|csv))", text)
    assert len(paths) == 2 and all(Path(path).is_file() for path in paths)
    words = re.findall(r"sign in as (.+?) \(.*\) with the word (\S+)", text)
    assert len(words) == 2
    ids = {one.name: one.id for one in roster_of(cohort)}
    for name, word in words:
        desk = SignIn(cohort.workplace)
        desk.sign_in(ids[name], word)
        [entry] = desk.entries()
        assert not entry.overdue


def test_export_has_a_row_for_each_learner_and_outcome(made):
    cohort, lines = made
    text = (cohort.root / "exports" / "outcomes.csv").read_text(encoding="utf-8")
    rows = list(csv.DictReader(io.StringIO(text)))
    outcomes = {row["outcome"] for row in rows}
    assert len(rows) == 12 * len(outcomes) and f"({len(rows)} rows)" in "\n".join(lines)
    assert all(row["statement"] for row in rows)
    [late] = by_way(Way.LATE)
    assert {row["late_minutes"] for row in rows if row["learner"] == late} == {"162"}
    for row in rows:
        assert 0 <= float(row["mark"]) <= float(row["maximum"])


def test_no_place_where_it_was_built_is_remembered(made):
    cohort, _ = made
    for path in (cohort.root / "cohort.yaml", *cohort.shared.rglob("*.json")):
        assert ".part" not in path.read_text(encoding="utf-8"), path
    assert not list(cohort.root.parent.glob(".*.part"))


@pytest.mark.parametrize(("role", "shown"), [("apprentice", "-shared/workplace"), ("staff", "")])
def test_command_that_opens_jupyterlab(made, role, shown):
    cohort, _ = made
    command, environment = jupyter_command(cohort, role, port=18888, browser=False)
    assert f"--ServerApp.root_dir={cohort.root}{shown}" in command
    assert "--no-browser" in command and "--ServerApp.port=18888" in command
    assert any("start-here" in part for part in command) is (role == "apprentice")
    assert Path(environment["JUPYTER_CONFIG_DIR"]).is_dir()


def test_who_agrees_more_than_chance_allows_is_told(made, tmp_path, capsys):
    cohort, _ = made
    place = tmp_path / "copy"
    shutil.copytree(cohort.root, place, symlinks=True)
    assert main(["alike", NAME, "--cohort", str(place)]) == 0
    assert "no pairs." in capsys.readouterr().out
    one, other = by_way(Way.SLIPS)[0], by_way(Way.UNFINISHED)[0]
    there = open_cohort(place)
    copied = read_mark(there.mark_file(one, NAME))
    write_mark(there.mark_file(other, NAME), dataclasses.replace(copied, learner=other))
    assert main(["alike", "--cohort", str(place)]) == 0
    said = capsys.readouterr().out
    assert "1 pair." in said
    first, second = sorted((one, other))
    assert f"{first} and {second} gave the same answer" in said
    assert "Ask both." in said
