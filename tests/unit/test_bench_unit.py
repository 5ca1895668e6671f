"""Lessons and practice copies follow the unit of the workplace they stand in."""

import json
from pathlib import Path

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.bench_unit import unit_source
from twoshaft.readings.issue import MODULES, draw
from twoshaft.units import load_unit

ROOT = Path(__file__).resolve().parents[2]
EARLY = ROOT / "course" / "twoshaft" / "units" / "files" / "tarnbeck-b5-early.yaml"


@pytest.fixture
def lessons(tmp_path):
    folder = tmp_path / "workplace" / "lessons"
    folder.mkdir(parents=True)
    (folder.parent / "people.json").write_text("[]")
    (folder.parent / "workplace.json").write_text(json.dumps({"unit": "tarnbeck-b5-early"}))
    return folder


def test_without_a_workplace_it_is_the_shipped_unit(tmp_path):
    assert unit_source(tmp_path) == "tarnbeck-b5"


def test_a_lesson_has_the_unit_of_its_workplace(lessons):
    assert open_sheet("order-of-work", lessons).unit.identity.id == "tarnbeck-b5-early"


@pytest.mark.slow
def test_a_file_of_the_cohorts_own_comes_first(lessons):
    own = EARLY.read_text().replace("id: tarnbeck-b5-early", "id: evening-unit")
    (lessons.parent / "unit.yaml").write_text(own)
    assert open_sheet("order-of-work", lessons).unit.identity.id == "evening-unit"


def test_an_assignment_keeps_the_unit_it_was_made_with(lessons):
    folder = lessons.parent / "a1" / "order-of-work-1"
    folder.mkdir(parents=True)
    about = {"module": "order-of-work", "attempt": 1, "unit": "tarnbeck-b5"}
    (folder / "assignment.json").write_text(json.dumps(about))
    assert open_sheet("order-of-work", folder).unit.identity.id == "tarnbeck-b5"


@pytest.mark.slow
@pytest.mark.parametrize("module", MODULES)
def test_practice_readings_are_drawn_from_that_unit(lessons, module):
    early = load_unit("tarnbeck-b5-early")
    given = draw(module, early, salt="practice", learner="practice", attempt=0)
    assert open_sheet(module, lessons).given == given


@pytest.mark.parametrize(
    ("module", "section"),
    [
        ("threaded-joints", "fasteners"),
        ("pressed-and-driven", "fits"),
        ("shims-and-preload", "bearings"),
        ("sealant-film", "faces"),
        ("shift-and-lockout", "shift"),
        ("gear-train-and-checks", "gear_train"),
    ],
)
def test_a_lesson_says_which_section_its_unit_lacks(lessons, unit, monkeypatch, module, section):
    bare = unit.with_sections(**{section: None})
    monkeypatch.setattr("twoshaft.units.load_unit", lambda source: bare)
    with pytest.raises(UnitFileError, match=f"no section '{section.replace('_', ' ')}'"):
        _ = open_sheet(module, lessons).unit
    assert open_sheet("order-of-work", lessons).unit is bare
