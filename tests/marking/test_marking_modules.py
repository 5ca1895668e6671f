"""Every module of the course: blank 0, solved full for 50 learners, guessed under 5 %.

That it is proven is seen when the notebooks are compared with their sources. What a learner is
given is drawn once for all tests of a module on a unit, and comes back from its stored form.
"""

import json
import random
import statistics
from functools import cache
from pathlib import Path
from types import SimpleNamespace

import pytest
from nbgrader.converters import Autograde

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.readings import draw, given_in, whole_units
from twoshaft.readings.issue import record_of
from twoshaft.records import to_json
from twoshaft.units import load_unit
from twoshaft_grader.marking import mark_folder, mark_sheet, run_clean, solve
from twoshaft_grader.marking.kinds import judge_of

GUESSING = 6
SOURCES = sorted((Path(__file__).parents[2] / "solutions").glob("*.py"))


@pytest.fixture(scope="module", params=SOURCES, ids=lambda path: path.stem)
def solution(request, built_solution):
    return built_solution(request.param.stem)


@pytest.fixture(scope="module", params=whole_units())
def unit(request):
    return load_unit(request.param)


@pytest.fixture(scope="module")
def people(solution, unit):
    return people_of(solution.module, unit)


def people_of(module, unit):
    """Learners by number, drawn once: what each is given, and the record of what was issued."""

    @cache
    def of(number):
        # Those who guess are at their first attempt; the others at any, practice included.
        attempt = 1 if number < GUESSING else number % 4
        who = {"learner": f"learner-{number}", "attempt": attempt}
        given = draw(module, unit, salt="test", **who)
        return SimpleNamespace(given=given, issued=record_of(given, module, unit, **who))

    return of


def filled(issued, answers):
    return SheetData(
        learner=issued["learner"],
        module=issued["module"],
        attempt=issued["attempt"],
        answers={name: Answer(value, 1) for name, value in answers.items()},
    )


def mark(solution, unit, issued, answers, *, explain=True):
    return mark_sheet(filled(issued, answers), issued, solution, unit=unit, explain=explain)


def guess(asked, reference, source):
    return judge_of(asked).guess(asked, reference, source)


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_blank_earns_nothing_and_the_reference_everything(solution, unit, people):
    # Fifty on the unit the course is built on, fewer on its variants.
    for number in range(5 if unit.identity.variant_of else 50):
        issued = people(number).issued
        assert mark(solution, unit, issued, {}).points == 0
        full = mark(solution, unit, issued, solve(solution, issued, unit))
        assert full.points == full.maximum and full.met, f"learner-{number}"
        assert not [field for field in full.fields if field.share < 1 or not field.passed]


def other_kinds(stored, again, place):
    """Places at which a number came back as another kind."""
    if isinstance(stored, dict):
        for key, value in stored.items():
            yield from other_kinds(value, again[key], f"{place}.{key}")
    elif isinstance(stored, list):
        for one, other in zip(stored, again, strict=True):
            yield from other_kinds(one, other, f"{place}[]")
    elif type(stored) is not type(again):
        yield place


@pytest.mark.slow
def test_what_is_given_comes_back_from_its_stored_form_the_same_to_the_byte(solution, people):
    module = solution.module
    for number in range(12):
        given = people(number).given
        stored = json.dumps(to_json(given))
        again = given_in(module, json.loads(stored))
        assert not set(other_kinds(json.loads(stored), to_json(again), module))
        assert json.dumps(to_json(again)) == stored
        assert again == given


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_guessing_earns_under_five_percent_on_average(solution, unit, people):
    source = random.Random(solution.module)
    earned = []
    # What the forms themselves give away is proven with every build; this is the sampled check.
    # Ten sheets a learner say it to half a per cent; where that is too near, more are drawn.
    for draws in (10, 30):
        for number in range(GUESSING):
            issued = people(number).issued
            clean = run_clean(solution, issued, unit)
            for turn in range(draws):
                answers = {
                    name: guess(asked, clean.references[name], source)
                    for name, asked in clean.fields.items()
                }
                # A sheet that is not explained has the same mark (test_ignorance.py).
                marked = mark(solution, unit, issued, answers, explain=turn == 0)
                earned.append(marked.points / marked.maximum)
        if statistics.mean(earned) < 0.05:
            break
    assert statistics.mean(earned) < 0.05


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_stock_autograde_gives_the_same_marks(solution, make_course, one_kernel):
    unit = load_unit("tarnbeck-b5")
    assignment = f"{solution.module}-1"
    course = make_course(assignment, solution.path)
    source = random.Random(3)
    # One sheet, right in part: whole, empty and damaged ones are tested on the made-up module.
    issued = people_of(solution.module, unit)(0).issued
    fields = run_clean(solution, issued, unit)
    answers = {
        name: guess(fields.fields[name], fields.references[name], source)
        if source.random() < 0.4
        else value
        for name, value in solve(solution, issued, unit).items()
    }
    course.hand_in(issued, json.dumps(filled(issued, answers).as_json()))
    course.run(Autograde, student_id="*")
    marked = mark_folder(course.submitted / "learner-0" / assignment)
    assert course.scores("learner-0") == {task.id: task.points for task in marked.tasks}
    assert 0 < marked.points < marked.maximum
