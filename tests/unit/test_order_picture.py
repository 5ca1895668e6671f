"""What feedback draws of an order: the unit at the step that has to wait, and what it waits for."""

import pytest

from twoshaft import DEFAULT_UNIT
from twoshaft.models.order import OrderTask, consequences, model_order
from twoshaft.models.shape import step_parts, views_of_parts
from twoshaft.units import load_unit
from twoshaft.units.sections.order import OperationKind, RuleKind
from twoshaft_grader.marking.order_picture import order_picture

UNIT = load_unit(DEFAULT_UNIT)
TASK = OrderTask.from_unit(UNIT)
MODEL = list(model_order(TASK))


def alone_wrong(kind):
    """Orders in which one rule alone is broken whose two steps show parts in one view."""
    shown = views_of_parts(UNIT)
    for bond in TASK.bonds:
        if bond.reason.kind is not kind:
            continue
        earlier, later = TASK.steps[bond.earlier], TASK.steps[bond.later]
        order = [step for step in MODEL if step != earlier]
        order.insert(order.index(later) + 1, earlier)
        found = [(one.step, reason) for one in consequences(TASK, order) for reason in one.reasons]
        one, other = (
            step_parts(UNIT, TASK.members[TASK.number[step]]) for step in (earlier, later)
        )
        together = any(
            a != b and {*shown.get(a, ())} & {*shown.get(b, ())} for a in one for b in other
        )
        if {reason for _, reason in found} == {bond.reason} and together:
            yield earlier, later, order


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        (RuleKind.BURIES, {"is in the way", "is out again"}),
        (RuleKind.CANNOT, {"belongs in first", "has to be done first"}),
    ],
)
def test_what_a_step_waits_for_is_named_in_the_picture(kind, words):
    orders = list(alone_wrong(kind))
    told = set()
    for _, _, order in orders:
        drawn = order_picture(UNIT, TASK, order)
        told |= (said := {word for word in words if f">{word}</text>" in drawn})
        assert len(said) == 1 and ">this step</text>" in drawn
    assert len(orders) > 5 and told == words


def test_what_covers_a_reading_stands_there_with_what_is_read():
    reads = {OperationKind.MEASURE, OperationKind.CHECK}
    found = 0
    for earlier, later, order in alone_wrong(RuleKind.BURIES):
        kinds, over = (
            {UNIT.operation_by_id[one].kind for one in TASK.members[TASK.number[step]]}
            for step in (earlier, later)
        )
        if kinds <= reads:
            drawn = order_picture(UNIT, TASK, order)
            gone = OperationKind.REMOVE in over
            assert ('part tsu-absent"' in drawn) == (">is out again</text>" in drawn) == gone
            found += 1
    assert found > 2


def test_an_order_that_works_has_no_picture():
    assert order_picture(UNIT, TASK, MODEL) == ""
