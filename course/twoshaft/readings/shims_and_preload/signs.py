"""Which way a thicker shim works, in three arrangements of the principle."""

from __future__ import annotations

from twoshaft.models.shim import shim_sign
from twoshaft.readings.shims_and_preload.given import Case, Change, Signs
from twoshaft.readings.shims_and_preload.lot import BANK, Lot
from twoshaft.units.sections.bearings import Arrangement, ShimPlace

FAMILIES = (
    (
        ("outer-rings-together", "under-cover"),
        ("outer-rings-together", "between-outer-rings"),
        ("inner-rings-together", "between-inner-rings"),
    ),
    (
        ("outer-rings-together", "between-inner-rings"),
        ("inner-rings-together", "between-outer-rings"),
    ),
    (
        ("outer-rings-together", "behind-outer-ring"),
        ("outer-rings-together", "behind-inner-ring"),
        ("inner-rings-together", "behind-outer-ring"),
        ("inner-rings-together", "behind-inner-ring"),
    ),
)
"""One case of each family goes to every learner: one that loosens, one that depends on the
arrangement, one that backs a ring."""


def draw(lot: Lot) -> Signs:
    """Three cases and one change of shim in the first of them."""
    stream = lot.stream.child("signs")
    cases = [lot.in_turn(f"signs-{k}", family)[0] for k, family in enumerate(FAMILIES)]
    cases = stream.shuffled(cases)
    first = next(case for case in cases if shim_sign(Arrangement(case[0]), ShimPlace(case[1])) < 0)
    cases.remove(first)
    before = 0.9 + 0.01 * stream.integer(60)
    steps = 3 + stream.integer(8)
    steps = -steps if stream.integer(2) else steps
    return Signs(
        cases=tuple(Case(name, *case) for name, case in zip("ABC", (first, *cases), strict=True)),
        options=BANK.lists["signs"],
        change=Change(
            kind="end play" if steps < 0 else "preload",
            amount_mm=round(0.12 + 0.01 * stream.integer(12), 2)
            if steps < 0
            else round(0.01 * (1 + stream.integer(abs(steps) - 1)), 2),
            before_mm=round(before, 2),
            after_mm=round(before + 0.01 * steps, 2),
        ),
    )
