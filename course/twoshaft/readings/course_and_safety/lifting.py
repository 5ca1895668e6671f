"""A lift to judge: as hard for everybody, and clear of the limit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.models import lifting
from twoshaft.readings.course_and_safety.given import Lift, Load, Said
from twoshaft.readings.course_and_safety.lot import BANK, Lot
from twoshaft.readings.keyed import Stream

CLEAR_BELOW, CLEAR_ABOVE = 0.85, 1.18
"""Between these indices a reading error of a few centimetres could turn the decision."""
HIGHEST_INDEX = 2.6
CLEARLY_BEST = 1.06
"""The best change raises the limit by so much more than the second best."""
OWN_TABLE_KG = (25, 30, 40, 50)
"""Marks of lift tables that can take any load that is worked out."""
LOADS = ("main case half", "clutch housing half", "output shaft with its gears", "differential")
OTHERS = (
    "Crate of shafts",
    "Crate of gears",
    "Crate of case halves",
    "Crate of differentials",
    "Box of bolts and plates",
    "Drum of parts to wash",
)
TABLES_KG = (20, 25, 30, 40, 50, 75)
BY_HAND, TABLE, STRONGER, UNKNOWN = "by hand", "table", "stronger", "unknown"
LEAST_HEAVY_KG = {BY_HAND: 7, TABLE: 12, STRONGER: 26}
MOST_HEAVY_KG = {BY_HAND: 17, TABLE: 40, STRONGER: 58}
"""Masses [kg] of loads for two hands, for the table at hand, and for a stronger one."""


def draw_lift(lot: Lot) -> Lift:
    """A load that may be lifted by hand, or must not be."""
    stream = lot.stream.child("lift")
    (load,) = lot.next_ones("loads", LOADS, 1)
    # Alike many have to leave the load on the floor as may lift it; a resit changes which.
    best = stream.choice(("reach", "height", "twist"))
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
                table_kg=stream.choice(OWN_TABLE_KG),
                rows=_rows(mass_kg, sizes),
                others=_others(lot),
                answers=BANK.lists["lifts_answers"],
            )


def _others(lot: Lot) -> tuple[Load, ...]:
    """Four loads: one with no weight on it, one too heavy for the table, two of any kind."""
    stream = lot.stream.child("others")
    kinds = [STRONGER, UNKNOWN]
    kinds += [stream.choice((BY_HAND, TABLE, STRONGER, UNKNOWN)) for _ in range(2)]
    names = lot.next_ones("others", OTHERS, len(kinds))
    return tuple(
        _load(f"load-{n}", name, kind, stream)
        for n, (name, kind) in enumerate(zip(names, stream.shuffled(kinds), strict=True), 1)
    )


def _load(id: str, name: str, kind: str, stream: Stream) -> Load:
    """A load well clear of the limit by hand and of the mark on the table."""
    if kind == UNKNOWN:
        limit = round(stream.uniform(6.0, 20.0), 1)
        return Load(id, name, 0.0, limit, stream.choice(TABLES_KG))
    while True:
        mass = round(stream.uniform(LEAST_HEAVY_KG[kind], MOST_HEAVY_KG[kind]), 1)
        clear = (1.2, 1.7) if kind == BY_HAND else (0.3, 0.85)
        limit = round(mass * stream.uniform(*clear), 1)
        table = stream.choice(TABLES_KG)
        takes = 0.5 * table < mass < 0.9 * table if kind != STRONGER else mass > 1.1 * table
        if takes and 5.0 < limit < lifting.LOAD_CONSTANT_KG:
            return Load(id, name, mass, limit, table)


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


def _best(sizes: Mapping[str, Any]) -> str:
    """The multiplier that clearly takes most from the limit; else empty."""
    parts = {
        "reach": lifting.reach_multiplier.plain(sizes["reach_cm"]),
        "height": lifting.height_multiplier.plain(sizes["height_cm"]),
        "travel": lifting.travel_multiplier.plain(sizes["travel_cm"]),
        "twist": lifting.twist_multiplier.plain(sizes["twist_deg"]),
    }
    first, second, *_ = sorted(parts, key=lambda name: parts[name])
    return first if parts[second] >= CLEARLY_BEST * parts[first] else ""
