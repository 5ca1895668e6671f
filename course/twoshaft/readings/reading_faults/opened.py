"""Opened units in section, in each of which one thing is wrong."""

from __future__ import annotations

from twoshaft.models.shape import Built, listed_misbuilds, outer_rings, thin_rings
from twoshaft.readings.reading_faults.given import Drawn
from twoshaft.readings.reading_faults.lot import BANK, Lot
from twoshaft.readings.scenes import Opened, opened_with
from twoshaft.records import Option, labels

UNITS = "PQ"


def draw(lot: Lot) -> Drawn:
    """As many units as there are letters for, each with another kind of thing wrong in it."""
    stream = lot.stream.child("opened")
    found = [*listed_misbuilds(lot.unit), *thin_rings(lot.unit), *outer_rings(lot.unit)]
    kinds = labels(BANK.lists["wrong"])
    pools: dict[str, list[Built]] = {
        kind: [one for one in found if one.how == kind] for kind in kinds
    }
    units: list[Opened] = []
    for kind in stream.shuffled([kind for kind, pool in pools.items() if pool]):
        for wrong in lot.in_turn(f"opened {kind}", pools[kind]):
            letter = UNITS[len(units)]
            unit = opened_with(lot.unit, stream.child(letter), letter, wrong)
            if unit is not None:
                units.append(unit)
                break
        if len(units) == len(UNITS):
            return Drawn(
                units=tuple(units),
                lines=tuple(Option(one, f"Unit {one}") for one in UNITS),
                how=BANK.lists["wrong"],
            )
    raise lot.too_small("opened")
