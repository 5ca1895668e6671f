"""Which way a thicker shim works, in three arrangements of the principle."""

from __future__ import annotations

from twoshaft.models.shim import shim_sign
from twoshaft.readings.shims_and_preload.lot import Lot

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

OPTIONS = [
    ["tighter-outer", "Tighter: it brings an outer ring onto its rollers"],
    ["tighter-inner", "Tighter: it brings an inner ring onto its rollers"],
    ["tighter-cover", "Tighter: it presses the cover harder onto an outer ring"],
    ["looser-outer", "Looser: it holds an outer ring away from its rollers"],
    ["looser-inner", "Looser: it holds an inner ring away from its rollers"],
    ["looser-cover", "Looser: it moves the cover, and the outer ring follows it away"],
]


def draw(lot: Lot) -> dict:
    """Three cases and one change of shim in the first of them.

    ``cases`` (name, arrangement, place), ``options``, and ``change``: the case, its setting before
    (``kind`` and ``amount_mm``) and the shim ``before_mm`` and ``after_mm``.
    """
    stream = lot.stream.child("signs")
    cases = [lot.in_turn(f"signs-{k}", family)[0] for k, family in enumerate(FAMILIES)]
    cases = stream.shuffled(cases)
    first = next(case for case in cases if shim_sign(*case) < 0)
    cases.remove(first)
    before = 0.9 + 0.01 * stream.integer(60)
    steps = 3 + stream.integer(8)
    steps = -steps if stream.integer(2) else steps
    return {
        "cases": [[name, *case] for name, case in zip("ABC", (first, *cases), strict=True)],
        "options": OPTIONS,
        "change": {
            "kind": "end play" if steps < 0 else "preload",
            "amount_mm": round(0.12 + 0.01 * stream.integer(12), 2)
            if steps < 0
            else round(0.01 * (1 + stream.integer(abs(steps) - 1)), 2),
            "before_mm": round(before, 2),
            "after_mm": round(before + 0.01 * steps, 2),
        },
    }
