"""Properties of counts, random orders, the replay and what is ready."""

import random

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from twoshaft.errors import UnitFileError
from twoshaft.models.order import (
    OrderTask,
    consequences,
    count_orders,
    model_order,
    plan_slip,
    quick_order,
    ready_steps,
    replay,
    sensible_order,
)

CALM = settings(
    deadline=None, max_examples=200, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
KINDS = ("cannot", "buries", "harms", "blinds")


class Draws:
    """A stream for tests."""

    def __init__(self, seed):
        self.source = random.Random(seed)

    def integer(self, n):
        return self.source.randrange(n)


@st.composite
def units(draw, make_unit, most=6):
    count = draw(st.integers(2, most))
    pairs = [
        (i, j, draw(st.sampled_from(KINDS)))
        for i in range(count)
        for j in range(i + 1, count)
        if draw(st.integers(0, 2)) == 0
    ]
    sections = {"rules": [], "holds": []}
    name = "s{:02d}".format
    if count >= 4 and draw(st.booleans()):
        giver, ender, other, step = draw(st.permutations(range(count)))[:4]
        several = [name(giver), name(other)] if draw(st.booleans()) else [name(giver)]
        sections["holds"] = [
            {
                "id": "held",
                "name": "Held",
                "given_by": several,
                "ended_by": [name(ender)],
                "needed_by": [name(step)],
                "reason": "only while it is held",
            }
        ]
    if count >= 4 and draw(st.booleans()):
        one, other, step = draw(st.permutations(range(count)))[:3]
        sections["rules"].append(
            {
                "id": "any-way",
                "kind": draw(st.sampled_from(KINDS)),
                "any_of": [name(one), name(other)],
                "later": name(step),
                "reason": "one of the two has to be there",
            }
        )
    if sections["holds"] and draw(st.booleans()):
        sections["rules"].append(
            {
                "id": "never-held",
                "kind": draw(st.sampled_from(["cannot", "blinds"])),
                "not_during": "held",
                "later": name(draw(st.integers(0, count - 1))),
                "reason": "never while it is held",
            }
        )
    return make_unit(count, pairs, stages=2, minutes=(1, 2.5), **sections)


def compiled(data, make_unit, most=6):
    try:
        return OrderTask.from_unit(data.draw(units(make_unit, most)))
    except UnitFileError:
        return None  # the rules contradict each other


def all_correct(task):
    """Every correct order, step by step through what is ready."""
    found, stack = [], [()]
    while stack:
        done = stack.pop()
        if len(done) == len(task.steps):
            found.append(done)
        stack.extend((*done, step) for step in ready_steps(task, done))
    return found


@pytest.mark.slow
@CALM
@given(st.data())
def test_counting_and_listing_agree(make_unit, data):
    if (task := compiled(data, make_unit)) is None:
        return
    listed = all_correct(task)
    assert len(set(listed)) == len(listed) == count_orders(task).value
    for order in listed[:20]:
        assert plan_slip(task, order).size == 0


@pytest.mark.slow
@CALM
@given(st.data(), st.integers(0, 10))
def test_every_order_drawn_is_correct(make_unit, data, seed):
    if (task := compiled(data, make_unit)) is None or not count_orders(task).value:
        return
    drawn = [
        model_order(task),
        quick_order(task, Draws(seed)),
        sensible_order(task, Draws(seed)),
    ]
    for order in drawn:
        assert plan_slip(task, order).size == 0
        assert replay(task, order).events == ()
        assert {c.state for c in consequences(task, order)} == {"ok"}


@CALM
@given(st.data(), st.randoms(use_true_random=False))
def test_replay_is_clean_exactly_for_correct_orders(make_unit, data, source):
    if (task := compiled(data, make_unit)) is None:
        return
    order = list(task.steps)
    source.shuffle(order)
    slip, bench = plan_slip(task, order), replay(task, order)
    assert (slip.size == 0) == (not bench.events) == (not slip.broken)
    assert bench.minutes_extra >= 0
    assert bench.minutes_planned == sum(task.minutes_do)
    if not task.choices:  # doing a step again can need a hold again
        assert not bench.stopped_at or any(r.kind == "cannot" for r in slip.broken)


@CALM
@given(st.data(), st.randoms(use_true_random=False))
def test_a_step_is_ready_exactly_when_nothing_speaks_against_it(make_unit, data, source):
    if (task := compiled(data, make_unit)) is None:
        return
    order = list(task.steps)
    source.shuffle(order)
    done = order[: source.randrange(len(order))]
    ready = ready_steps(task, done)
    for step in task.steps:
        if step not in done:
            missing = any(one not in done for one, later in task.pairs if later == step)
            if step in ready:
                assert not missing
            elif not task.choices:
                assert missing
