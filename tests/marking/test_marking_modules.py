"""Every module of the course: blank 0, solved full for 50 learners, guessed under 5 %.

That it is proven is seen when the notebooks are compared with their sources.
"""

import json
import random
import statistics
from pathlib import Path

import pytest
from nbgrader.converters import Autograde

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.readings import issue_record
from twoshaft.units import load_unit, shipped_units
from twoshaft_grader.marking import load_solution, mark_folder, mark_sheet, run_clean, solve
from twoshaft_grader.marking.kinds import judge_of
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

SOURCES = sorted((Path(__file__).parents[2] / "solutions").glob("*.py"))


@pytest.fixture(scope="module", params=SOURCES, ids=lambda path: path.stem)
def solution(request, tmp_path_factory):
    source = request.param
    built = tmp_path_factory.mktemp("solutions") / f"{source.stem}.ipynb"
    nb = build_notebook(source.read_text(encoding="utf-8"), Path("solutions") / source.name)
    built.write_text(notebook_text(nb), encoding="utf-8")
    return load_solution(built)


@pytest.fixture(scope="module", params=shipped_units())
def unit(request):
    return load_unit(request.param)


def issue(solution, unit, learner):
    return issue_record(solution.module, unit, salt="test", learner=learner, attempt=1)


def filled(issued, answers):
    return SheetData(
        learner=issued["learner"],
        module=issued["module"],
        attempt=issued["attempt"],
        answers={name: Answer(value, 1) for name, value in answers.items()},
    )


def mark(solution, unit, issued, answers):
    return mark_sheet(filled(issued, answers), issued, solution, unit=unit)


def guess(asked, reference, source):
    return judge_of(asked).guess(asked, reference, source)


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_blank_earns_nothing_and_the_reference_everything(solution, unit):
    # Fifty on the unit the course is built on, fewer on its variants.
    for number in range(5 if unit.identity.variant_of else 50):
        issued = issue(solution, unit, f"learner-{number}")
        assert mark(solution, unit, issued, {}).points == 0
        full = mark(solution, unit, issued, solve(solution, issued, unit))
        assert full.points == full.maximum and full.met, f"learner-{number}"
        assert not [field for field in full.fields if field.share < 1 or not field.passed]


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_guessing_earns_under_five_percent_on_average(solution, unit):
    source = random.Random(solution.module)
    earned = []
    # What the forms themselves give away is proven with every build; this is the sampled check.
    for number in range(6):
        issued = issue(solution, unit, f"learner-{number}")
        clean = run_clean(solution, issued, unit)
        for _ in range(10):
            answers = {
                name: guess(asked, clean.references[name], source)
                for name, asked in clean.fields.items()
            }
            marked = mark(solution, unit, issued, answers)
            earned.append(marked.points / marked.maximum)
    assert statistics.mean(earned) < 0.05


@pytest.mark.slow
@pytest.mark.timeout(300)
def test_stock_autograde_gives_the_same_marks(solution, make_course, one_kernel):
    unit = load_unit("tarnbeck-b5")
    assignment = f"{solution.module}-1"
    course = make_course(assignment, solution.path)
    source = random.Random(3)
    # One sheet, right in part: whole, empty and damaged ones are tested on the made-up module.
    issued = issue(solution, unit, "learner-0")
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
