"""Which way a thicker shim works, in four arrangements of the principle."""

from __future__ import annotations

from twoshaft.errors import UnitFileError
from twoshaft.models.shape import shim_and_ring, views_of_parts
from twoshaft.models.shim import shim_sign
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.scenes import near_scene
from twoshaft.readings.shims_and_preload.given import Case, Change, Signs, Where
from twoshaft.readings.shims_and_preload.lot import BANK, Lot
from twoshaft.units.sections.bearings import Arrangement, ShimPlace

ARRANGED: tuple[tuple[str, str], ...] = (
    ("outer-rings-together", "under-cover"),
    ("outer-rings-together", "between-outer-rings"),
    ("outer-rings-together", "between-inner-rings"),
    ("outer-rings-together", "behind-outer-ring"),
    ("outer-rings-together", "behind-inner-ring"),
    ("inner-rings-together", "between-outer-rings"),
    ("inner-rings-together", "between-inner-rings"),
    ("inner-rings-together", "behind-outer-ring"),
    ("inner-rings-together", "behind-inner-ring"),
)
"""Arrangements, and places of a shim in them."""
CASES = 4
ANSWERS = 3
"""How many different answers the cases of one learner have at least."""


def draw(lot: Lot) -> Signs:
    """Four cases and one change of shim in the first of them."""
    stream = lot.stream.child("signs")
    for _ in range(TRIES):
        cases = stream.shuffled(ARRANGED)[:CASES]
        if len({_answer(*case) for case in cases}) >= ANSWERS:
            break
    else:
        raise lot.too_small("signs")
    before = 0.9 + 0.01 * stream.integer(60)
    moved = (3 + stream.integer(20)) * stream.choice((1, -1))
    had = (4 + stream.integer(25)) * stream.choice((1, -1))
    return Signs(
        cases=tuple(Case(name, *case) for name, case in zip("ABCD", cases, strict=True)),
        options=BANK.lists["signs"],
        change=Change(
            kind="preload" if had > 0 else "end play",
            amount_mm=round(0.01 * abs(had), 2),
            before_mm=round(before, 2),
            after_mm=round(before + 0.01 * moved, 2),
        ),
        where=_where(lot, stream),
    )


def _where(lot: Lot, stream: Stream) -> Where | None:
    """A pair whose shim some section shows, another at a resit."""
    for support in lot.in_turn("where", lot.bearings.supports):
        try:
            wanted = shim_and_ring(lot.unit, support.id)
        except UnitFileError:  # shapes that cannot be drawn: the check of the unit says why
            return None
        for view in views_of_parts(lot.unit).get(wanted[0], ()) if wanted else ():
            near = near_scene(lot.unit, stream, view, wanted or ())
            if near is not None:
                return Where(support.name, near)
    return None


def _answer(arrangement: str, place: str) -> tuple[int, bool]:
    """Which way a thicker shim works, and whether it moves an inner ring."""
    return shim_sign(Arrangement(arrangement), ShimPlace(place)), "inner" in place
