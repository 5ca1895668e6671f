"""A lift to judge: as hard for everybody, and clear of the limit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.models import lifting
from twoshaft.readings.course_and_safety.given import Lift, Said
from twoshaft.readings.course_and_safety.lot import BANK, Lot

CLEAR_BELOW, CLEAR_ABOVE = 0.85, 1.18
"""Between these indices a reading error of a few centimetres could turn the decision."""
HIGHEST_INDEX = 2.6
CLEARLY_BEST = 1.06
"""The best change raises the limit by so much more than the second best."""
LOADS = ("main case half", "clutch housing half", "output shaft with its gears", "differential")


def draw_lift(lot: Lot) -> Lift:
    """A load that may be lifted by hand, or must not be."""
    stream = lot.stream.child("lift")
    (load,) = lot.next_ones("loads", LOADS, 1)
    # Alike many have to leave the load on the floor as may lift it; a resit changes which.
    best = stream.choice(("closer", "raise", "face"))
    heavy = (lot.learner_stream.child("heavy").integer(2) + lot.attempt) % 2 == 1
    while True:
        mass_kg = round(stream.uniform(7.0, 20.0), 1)
        sizes: dict[str, Any] = {
            "reach_cm": 28 + stream.integer(23),
            "height_cm": 10 + 5 * stream.integer(12),
            "travel_cm": 30 + 5 * stream.integer(12),
            "twist_deg": 10 + 5 * stream.integer(17),
            "per_minute": 0.2,
            "grip": stream.choice(("fair", "poor")),
        }
        if sizes["height_cm"] + sizes["travel_cm"] > 140:
            continue
        index = mass_kg / lifting.plain_limit_kg(sizes)
        right_side = CLEAR_ABOVE < index < HIGHEST_INDEX if heavy else 0.5 < index < CLEAR_BELOW
        if right_side and _best(sizes) == best:
            return Lift(
                load=load,
                mass_kg=mass_kg,
                **sizes,
                rows=_rows(mass_kg, sizes),
                decisions=tuple(stream.shuffled(BANK.lists["decisions"])),
                reasons=tuple(stream.shuffled(BANK.lists["reasons"])),
                changes=tuple(stream.shuffled(BANK.lists["changes"])),
            )


def _rows(mass_kg: float, sizes: Mapping[str, Any]) -> tuple[Said, ...]:
    """The lift as a table: what was measured, and its figure."""
    parts = lifting.Lift.measured(sizes).multipliers()
    return (
        Said("Load", f"{mass_kg:g} kg"),
        Said("H, from the middle between the ankles to the hands", f"{sizes['reach_cm']} cm"),
        Said("V, hands above the floor at the start", f"{sizes['height_cm']} cm"),
        Said("D, way up of the hands", f"{sizes['travel_cm']} cm"),
        Said("A, twist of the body", f"{sizes['twist_deg']}°"),
        Said("Frequency multiplier, once in five minutes", f"{parts['frequency']:.2f}"),
        Said(f"Grip multiplier, grip {sizes['grip']}", f"{parts['grip']:.2f}"),
    )


def changes(sizes: Mapping[str, Any]) -> dict[str, dict[str, Any]]:
    """The lift as it would be after each change that can be worked out.

    Parameters
    ----------
    sizes : mapping
        As :meth:`Lift.sizes` gives them.

    Returns
    -------
    dict of str to dict
        The same sizes, one of them changed, by the change's id.
    """
    return {
        "closer": {**sizes, "reach_cm": lifting.EASIEST_REACH_CM},
        "raise": {**sizes, "height_cm": lifting.EASIEST_HEIGHT_CM},
        "shorter": {**sizes, "travel_cm": lifting.SHORTEST_TRAVEL_CM},
        "face": {**sizes, "twist_deg": 0},
    }


def _best(sizes: Mapping[str, Any]) -> str:
    """The change that is clearly the best, also for who leaves the grip as it was; else empty."""
    grip = lifting.Lift.measured(sizes).multipliers()["grip"]
    changed = changes(sizes)
    by_model = {id: lifting.plain_limit_kg(then) for id, then in changed.items()}
    by_hand = {id: lifting.plain_limit_kg(then, grip) for id, then in changed.items()}
    for limits in (by_model, by_hand):
        first, second, *_ = sorted(limits.values(), reverse=True)
        if first < CLEARLY_BEST * second:
            return ""
    best = max(by_model, key=lambda change: by_model[change])
    return best if best == max(by_hand, key=lambda change: by_hand[change]) else ""
