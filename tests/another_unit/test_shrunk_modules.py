"""Modules shrink to the unit: what it has nothing for is left out, and everybody is told.

A four-speed without differential, spring pin and second sealant (Tarnbeck C4), and a six-speed
without taper rollers and preload (Tarnbeck K6). The everyday run takes one module of each; the long
run all modules on every shipped unit, lessons too.
"""

from pathlib import Path

import nbformat
import pytest

from twoshaft.errors import CourseError
from twoshaft.jobsheet import Answer, SheetData
from twoshaft.models.audit import sound_unit
from twoshaft.readings import MODULES, draw
from twoshaft.units import load_unit, shipped_units
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.fit import fit, lacking_lines
from twoshaft_grader.cohort.trial import try_modules
from twoshaft_grader.marking import mark_sheet, solve
from twoshaft_grader.notebooks.release import release
from twoshaft_grader.notebooks.shrink import same_but_left_out, shrunk

SOLUTIONS = Path(__file__).parents[2] / "solutions"
LEARNERS = ["ann", "bob"]
GIVEN = {
    ("c4", "pressed-and-driven"): 9,
    ("c4", "shims-and-preload"): 7,
    ("c4", "sealant-film"): 8,
    ("c4", "gear-train-and-checks"): 8,
    ("c4", "reading-faults"): 10,
    ("k6", "shims-and-preload"): 7,
    ("k6", "reading-faults"): 10,
}
"""How many tasks are given of the modules that shrink."""
EVERYDAY = ("c4", "pressed-and-driven"), ("k6", "shims-and-preload")


def some(pairs):
    """Pairs of unit and module, all but those of every day in the long run."""
    marks = {pair: () if pair in EVERYDAY else pytest.mark.long for pair in pairs}
    return [pytest.param(*pair, marks=mark) for pair, mark in marks.items()]


@pytest.fixture(scope="module")
def units():
    return {name: sound_unit(f"tarnbeck-{name}") for name in ("c4", "k6")}


def path_of(module):
    return next(SOLUTIONS.glob(f"*-{module}.ipynb"))


def fitted(units, unit, module):
    return fit(path_of(module), module, units[unit], LEARNERS, salt="test", attempt=1)


@pytest.mark.parametrize(("unit", "module"), some(GIVEN))
def test_what_is_left_is_given_marked_and_told(units, unit, module):
    found = fitted(units, unit, module)
    assert len(found.solution.points) == GIVEN[unit, module]
    assert set(found.worked[0].tasks) == set(found.solution.points)
    whole = SheetData(learner="ann", module=module, attempt=1)
    for issued in found.records:
        answers = {
            name: Answer(value, 1)
            for name, value in solve(found.solution, issued, units[unit]).items()
        }
        full = SheetData(learner=issued["learner"], module=module, attempt=1, answers=answers)
        mark = mark_sheet(full, issued, found.solution, unit=units[unit])
        assert mark.points == mark.maximum == sum(found.solution.points.values())
        assert not set(found.no_evidence) & {outcome.id for outcome in mark.outcomes}
    blank = mark_sheet(whole, found.records[0], found.solution, unit=units[unit])
    assert blank.points == 0 and not blank.met
    said = [
        c.source
        for c in nbformat.reads(found.text, as_version=4).cells
        if "This task is left out" in c.source
    ]
    assert len(said) == len(found.without) and all("This task is left out: the" in s for s in said)
    assert len(lacking_lines(found)) == (
        len(found.without) + len(found.no_evidence) + len(found.not_shown)
    )


@pytest.mark.parametrize(
    ("unit", "module"),
    some(
        (unit, module) for unit in ("c4", "k6") for module in MODULES if (unit, module) not in GIVEN
    ),
)
def test_other_modules_are_given_whole(units, unit, module):
    found = fitted(units, unit, module)
    shrinks = {("c4", "whole-build")}
    assert bool(found.without) == ((unit, module) in shrinks)


@pytest.mark.long
@pytest.mark.timeout(1800)
@pytest.mark.parametrize("id", shipped_units())
def test_every_module_of_every_shipped_unit_can_be_given_lesson_and_exercise(id):
    for trial in try_modules(load_unit(id), id, find_content("")):
        assert not trial.exercise and not trial.lesson, (trial.module, trial.exercise, trial.lesson)


def test_a_shrunk_exercise_is_released_without_the_task(units):
    found = fitted(units, "c4", "pressed-and-driven")
    out = release({"04-pressed-and-driven": found.text})["04-pressed-and-driven"]
    nb = nbformat.reads(out, as_version=4)
    grades = {c.metadata.nbgrader.grade_id for c in nb.cells if "nbgrader" in c.metadata}
    assert "spring" not in grades and {"seal", "taper"} <= grades
    assert any(
        c.source.endswith("This task is left out: the unit on the bench has no spring pin.")
        for c in nb.cells
    )


def test_nothing_is_drawn_for_a_task_that_is_left_out(units):
    given = draw("pressed-and-driven", units["c4"], salt="test", learner="ann", attempt=1)
    assert given.spring is None and given.taper is not None
    asked = draw(
        "pressed-and-driven", units["k6"], salt="s", learner="a", attempt=1, left_out=("seal",)
    )
    assert asked.seal is None and asked.spring is not None


def test_a_changed_cell_is_no_shrunk_solution_of_ours():
    own = path_of("pressed-and-driven").read_text(encoding="utf-8")
    mine = shrunk(own, {"spring": "the unit on the bench has no spring pin"})
    assert same_but_left_out(mine, own, ("spring",))
    assert not same_but_left_out(mine.replace("taper.hole_mm", "0"), own, ("spring",))
    assert not same_but_left_out(mine, own, ())
    assert shrunk(own, {}) == own


def test_too_little_left_is_said_with_what_would_bring_it(units):
    bare = units["c4"].with_sections(
        shift=units["c4"].shift.model_copy(
            update={"interlocks": (), "detents": (), "misbuilds": (), "must_block": ()}
        )
    )
    with pytest.raises(CourseError) as caught:
        fit(path_of("shift-and-lockout"), "shift-and-lockout", bare, LEARNERS, salt="s", attempt=1)
    assert "too little of the module 'shift-and-lockout' is left" in caught.value.sentence
    assert "add an entry of 'interlocks' in its section shift" in caught.value.sentence
