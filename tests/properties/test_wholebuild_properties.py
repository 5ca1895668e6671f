"""Properties of whole builds: correct orders are all right, answers and decisions are two ways."""

import random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.models.order import sensible_order
from twoshaft.models.wholebuild import (
    LOG,
    Do,
    Job,
    TakeOut,
    asks_of,
    built,
    consequences,
    decisions_from,
    fields_of,
    look,
    right_decisions,
    values_of,
)
from twoshaft.units import load_unit


class _Draw:
    def __init__(self, seed):
        self.random = random.Random(seed)

    def integer(self, n):
        return self.random.randrange(n)


@pytest.fixture(scope="module")
def job():
    return Job.of(load_unit("tarnbeck-b5"))


@given(seed=st.integers(0, 10**6))
@settings(max_examples=10)
def test_every_correct_order_of_right_decisions_is_without_fault(job, seed):
    order = sensible_order(job.task, _Draw(seed))
    assert consequences(job, right_decisions(job, order)).faults == ()


@given(data=st.data())
@settings(max_examples=25)
def test_taking_out_and_doing_again_keeps_the_books(job, data):
    right = right_decisions(job)
    made = list(right[: data.draw(st.integers(1, len(right)))])
    step = data.draw(st.sampled_from([one.step for one in made]))
    after = look(job, [*made, TakeOut(step)])
    gone = [one for one in made if one.step not in after.doings]
    assert step in {one.step for one in gone}
    again = look(job, [*made, TakeOut(step), *gone])
    assert set(again.doings) == {one.step for one in made}
    assert again.minutes >= look(job, made).minutes + sum(job.task.minutes(d.step) for d in gone)


@given(data=st.data())
@settings(max_examples=25)
def test_answers_hold_decisions(job, data):
    right = {one.step: one for one in right_decisions(job)}
    steps = data.draw(st.lists(st.sampled_from(sorted(right)), unique=True, max_size=30))
    made = tuple(Do(step, right[step].choices) for step in steps)
    values = values_of(job, made)
    assert decisions_from(job, values) == made
    assert built(job, made) == tuple(steps)
    assert set(values) <= {spec.name for spec in fields_of(job)} | {LOG}


@given(seed=st.text("abcdef0123456789", min_size=1, max_size=8))
@settings(max_examples=10)
def test_the_place_of_an_option_does_not_give_it_away(job, seed):
    other = Job.of(job.unit, {"seed": seed})
    names = [[spec.name for spec in ask.fields] for ask in asks_of(other)]
    assert names == [[spec.name for spec in ask.fields] for ask in asks_of(job)]
    for ask in asks_of(other):
        if ask.kind == "way":
            keys = [key for key, _ in ask.fields[0].arguments["options"]]
            assert keys == [f"way-{k}" for k in range(1, len(keys) + 1)]
