"""The odds of misbuilds that are met together."""

import pytest

from twoshaft.models import faults


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


def test_odds_of_two_at_once_are_the_product(make_unit):
    """Independent faults: the odds of both are the product (Bayes's rule, from memory)."""
    unit = make_unit(
        6,
        [(0, 4), (1, 5)],
        faults={
            "checks": [leak_check("one", "s04"), leak_check("two", "s05")],
            "misbuilds": [left_out("a", 0.02, "s00"), left_out("b", 0.05, "s01"),
                          left_out("both", 0.003, "s00", "s01")],
        },
    )  # fmt: skip
    found = faults.explain(unit, {"one": "missing-s00", "two": "missing-s01"})
    assert found.sets == (("both",), ("a", "b"))
    assert found.chances == pytest.approx((0.003 / 0.004, 0.001 / 0.004))
