"""The course follows the file: it works on a unit that has little where the shipped ones have it.

Six gears, four gates, another lockout on the other side, other bearings (``tarnbeck-b6.yaml``).
"""

from pathlib import Path

import pytest

from twoshaft.models.audit import sound_unit
from twoshaft.models.shift import mechanism, prove_by_hand, symptoms
from twoshaft.readings import MODULES, not_carried

FILE = Path(__file__).parent / "tarnbeck-b6.yaml"


@pytest.fixture(scope="module")
def six():
    return sound_unit(FILE)


def test_it_is_another_unit_and_its_lockout_holds(six):
    assert len(six.gear_train.gears) == 7 and len(six.shift.gates) == 4
    assert [(one.earlier, one.later) for one in six.shift.must_block] == [("first", "reverse")]
    assert symptoms(prove_by_hand(mechanism(six.shift))) == {"nothing"}


@pytest.mark.parametrize("module", MODULES)
def test_everybodys_exercise_is_drawn_and_marked(six, mark_on, module):
    assert set(not_carried(module, six)) <= {"opened"}  # it has no shapes to draw
    for learner in ("ann", "bob"):
        mark = mark_on(six, module, learner=learner)
        assert mark.points == mark.maximum and mark.met
        assert mark_on(six, module, learner=learner, blank=True).points == 0
