"""Where everybody stands, as staff see it: answers that cannot be read are counted apart."""

import json
import os
import shutil
from pathlib import Path

import pytest

from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.form import FormWidget
from twoshaft.jobsheet.gaps import find_gaps
from twoshaft_grader.cohort.assign import read_assigned
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.desk.tables import progress_table
from twoshaft_grader.records.progress import Stage, progress

BEFORE = Path(__file__).with_name("stored_before")
NAME = "course-and-safety-1"


@pytest.fixture
def place(tmp_path):
    """The folder of a learner who has not begun, in a cohort of two."""
    shutil.copytree(BEFORE, tmp_path / "cohort")
    workplace = tmp_path / "cohort" / "workplace"
    (tmp_path / "cohort" / "source" / NAME / "exercise.ipynb").write_text("{}")
    shutil.copytree(workplace / "aa01" / NAME, workplace / "bb02" / NAME)
    (workplace / "bb02" / NAME / "jobsheet.json").unlink()
    who = {"id": "bb02", "family_name": "Vane", "given_name": "Otto"}
    (workplace / "bb02" / "learner.json").write_text(json.dumps(who))
    return workplace / "bb02" / NAME


def standing(place):
    cohort = open_cohort(place.parents[2])
    return progress(cohort, [read_assigned(cohort, NAME)])[-1]


def columns(one):
    table = progress_table("", [one])
    return {column.header: str(next(iter(column.cells))) for column in table.columns}


def test_an_answer_that_cannot_be_read_is_counted_apart(place):
    assert standing(place).stage == Stage.NOT_BEGUN
    sheet = open_sheet("course-and-safety", place)
    fields = sheet.number("gap", "How wide?", "mm"), sheet.number("reach", "How far?", "mm")
    sheet.form("one", *fields)
    FormWidget(sheet, "one", fields)
    sheet.save("gap", "1.25")
    one = standing(place)
    assert (one.stage, one.answered, one.unread) == (Stage.UNDER_WAY, 0, 1)
    assert columns(one)["answered"] == f"0/{one.asked}" and columns(one)["unreadable"] == "1"
    sheet.save("reach", "2 mm")
    one = standing(place)
    assert (one.answered, one.unread) == (1, 1)
    found = find_gaps(place)  # the learner's start page says the same
    assert (found.answered, found.unread) == (1, 1)
    sheet.save("gap", "1.25 mm")
    one = standing(place)
    assert (one.answered, one.unread) == (2, 0) and columns(one)["unreadable"] == ""


def test_an_answer_in_part_is_under_way_and_not_answered(place):
    sheet = open_sheet("course-and-safety", place)
    each = sheet.each("wet", "How?", [["a", "A"], ["b", "B"]], [["dry", "dry"], ["oil", "oiled"]])
    sheet.form("one", each)
    sheet.save("wet", ["b=oil"])
    one = standing(place)
    assert (one.stage, one.answered, one.unread) == (Stage.UNDER_WAY, 0, 0)


@pytest.mark.parametrize("damage", ["{", "[]", '{"unread": {"gap": 1}, "format": 2}'])
def test_a_damaged_note_changes_no_count(place, damage):
    sheet = open_sheet("course-and-safety", place)
    sheet.form("one", sheet.number("gap", "How wide?", "mm"))
    sheet.save("gap", "1.25 mm")
    (place / ".asked.json").write_text(damage)
    assert (standing(place).answered, standing(place).unread) == (1, 0)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes here")
def test_a_pipe_in_the_place_of_the_note_holds_nobody_up(place):
    os.mkfifo(place / ".asked.json")
    assert standing(place).stage == Stage.NOT_BEGUN
