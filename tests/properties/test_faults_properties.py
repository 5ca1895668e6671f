"""Properties of the fault search that hold for every set of misbuilds and observations."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.models import faults
from twoshaft.units import load_unit


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


@pytest.fixture(scope="module")
def table(unit):
    return faults.outcome_table(unit)


@settings(deadline=None, max_examples=12)
@given(data=st.data())
def test_the_table_says_what_running_both_together_says(unit, table, data):
    """Leaving out the misbuilds that a check does not read changes nothing."""
    chosen = data.draw(st.sampled_from(table.sets))
    built = faults.as_built(unit, [unit.faults.misbuild_by_id(one) for one in chosen])
    for check in unit.faults.checks:
        assert faults.run_check(check, built) == table.outcome(chosen, check.id)


@settings(deadline=None, max_examples=60)
@given(data=st.data())
def test_the_truth_is_always_among_the_explanations(unit, table, data):
    chosen = data.draw(st.sampled_from(table.sets))
    made = data.draw(st.sets(st.sampled_from(table.checks)))
    seen = {check: table.outcome(chosen, check) for check in made}
    found = faults.explain(unit, seen)
    assert chosen in found.sets
    assert sum(found.chances) == pytest.approx(1)
    assert list(found.chances) == sorted(found.chances, reverse=True)
    for other in found.sets:
        assert all(table.outcome(other, check) == seen[check] for check in made)


@pytest.mark.slow
@settings(deadline=None, max_examples=40)
@given(data=st.data())
def test_what_a_check_tells_is_what_it_takes_off_the_open_question(unit, table, data):
    """Bits of a check = entropy before less mean entropy after, over its outcomes."""
    chosen = data.draw(st.sampled_from(table.sets))
    made = data.draw(st.sets(st.sampled_from(table.checks), max_size=4))
    seen = {check: table.outcome(chosen, check) for check in made}
    before = faults.explain(unit, seen)
    chance = dict(zip(before.sets, before.chances, strict=True))
    ranked = faults.next_check(unit, seen)
    assert not {one.check for one in ranked} & made
    for one in ranked:
        after = 0.0
        for outcome in table.outcomes[table.column(one.check)]:
            left = faults.explain(unit, {**seen, one.check: outcome})
            share = sum(chance[other] for other in left.sets)
            after += share * left.bits
        assert one.bits == pytest.approx(before.bits - after, abs=1e-9)
    told = {one.check for one in ranked}
    for check in set(table.checks) - made - told:
        assert len({table.outcome(other, check).key for other in before.sets}) == 1


@pytest.mark.slow
def test_more_observations_never_add_explanations(unit, table):
    rng = np.random.default_rng(7)
    for _ in range(20):
        chosen = table.sets[rng.integers(len(table.sets))]
        search, left = faults.Diagnosis(unit), math.inf
        for check in rng.permutation(table.checks):
            search = search.observe(check, table.outcome(chosen, check))
            now = len(faults.explain(unit, search.observed).sets)
            assert now <= left
            left = now
        key = [table.outcome(chosen, check).key for check in table.checks]
        for other in faults.explain(unit, search.observed).sets:
            assert [table.outcome(other, check).key for check in table.checks] == key
