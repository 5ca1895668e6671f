"""The course follows the file: it works on a unit that has little where the shipped ones have it.

Six gears, four gates, another lockout on the other side, other bearings (``tarnbeck-b6.yaml``).
"""

from pathlib import Path

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.models.audit import sound_unit
from twoshaft.models.shift import mechanism, prove_by_hand, symptoms
from twoshaft.readings import MODULES, issue_record
from twoshaft_grader.marking import load_solution, mark_sheet, solve

ROOT = Path(__file__).resolve().parents[2]
FILE = Path(__file__).parent / "tarnbeck-b6.yaml"


@pytest.fixture(scope="module")
def six():
    return sound_unit(FILE)


def test_it_is_another_unit_and_its_lockout_holds(six):
    assert len(six.gear_train.gears) == 7 and len(six.shift.gates) == 4
    assert [(one.earlier, one.later) for one in six.shift.must_block] == [("first", "reverse")]
    assert symptoms(prove_by_hand(mechanism(six.shift))) == {"nothing"}


@pytest.mark.parametrize("module", MODULES)
def test_everybodys_exercise_is_drawn_and_marked(six, module):
    solution = load_solution(next((ROOT / "solutions").glob(f"*-{module}.ipynb")))
    for learner in ("ann", "bob"):
        issued = issue_record(module, six, salt="six", learner=learner, attempt=1)
        answers = {name: Answer(value, 1) for name, value in solve(solution, issued, six).items()}
        sheet = SheetData(learner=learner, module=module, attempt=1, answers=answers)
        mark = mark_sheet(sheet, issued, solution, unit=six)
        assert mark.points == mark.maximum and mark.met
        blank = SheetData(learner=learner, module=module, attempt=1, answers={})
        assert mark_sheet(blank, issued, solution, unit=six).points == 0
