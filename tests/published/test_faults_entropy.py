"""The fault search against worked examples of information theory and of Bayes's rule."""

import pytest

from twoshaft.models import faults

# Cover and Thomas, Elements of Information Theory, 2nd ed., example 1.1.2: eight horses win with
# 1/2, 1/4, 1/8, 1/16 and four times 1/64; the entropy is 2 bits (from memory).
HORSES = (1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 64, 1 / 64, 1 / 64, 1 / 64)


def leak_check(name, *operations, minutes=1.0):
    return {"id": name, "name": f"Look at {name}", "kind": "leaks", "minutes": minutes,
            "operations": operations}  # fmt: skip


def left_out(name, odds, *steps):
    """A misbuild that is met with these odds against a sound build."""
    return {
        "id": name,
        "name": f"Misbuild {name}",
        "often_per_1000": 1000 * odds / (1 + odds),
        "changes": [{"kind": "left-out", "operation": step} for step in steps],
    }


@pytest.fixture
def race(make_unit):
    """Eight misbuilds that all leave out s00; the first shows at s07 too, the next two at s08."""
    extra = {0: ["s01"], 1: ["s02"], 2: ["s02"]}
    return make_unit(
        10,
        [(0, 9), (1, 7), (2, 8)],
        faults={
            "checks": [
                leak_check("start", "s09"),
                leak_check("first", "s07", minutes=2.0),
                leak_check("next", "s08", minutes=1.0),
            ],
            "misbuilds": [
                left_out(f"horse-{n}", chance * 1e-3, "s00", *extra.get(n, ()))
                for n, chance in enumerate(HORSES)
            ],
        },
    )


def test_entropy_of_the_horse_race(race):
    """Source: Cover and Thomas, Elements of Information Theory, 2nd ed., example 1.1.2 (from
    memory): eight horses win with 1/2, 1/4, 1/8, 1/16 and four times 1/64; the entropy is 2
    bits.
    """
    seen = {"start": "missing-s00"}
    found = faults.explain(race, seen)
    assert found.doubles == ()  # all leave out the same step: two at once say nothing new
    assert found.chances == pytest.approx(HORSES)
    assert found.bits == pytest.approx(2.0)


def test_a_question_of_half_and_half_is_worth_one_bit(race):
    """Source: Cover and Thomas, Elements of Information Theory, 2nd ed., chapter 2 (from
    memory): to ask whether the favourite won is worth H(1/2) = 1 bit; 3/8 is 0.954.
    """
    ranked = {one.check: one for one in faults.next_check(race, {"start": "missing-s00"})}
    assert ranked["first"].bits == pytest.approx(1.0)
    assert ranked["next"].bits == pytest.approx(0.954434, abs=1e-6)
    assert list(ranked) == ["next", "first"]  # twice the minutes for five per cent more
