"""A part to be warmed for its seat: how hot, how hot it may get, and how it is done."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.models.fit import (
    BEARING_LIMIT_C,
    HANDLING_K,
    SEALED_LIMIT_C,
    Pressed,
    growth,
    material,
    warm_to_assemble,
)
from twoshaft.models.fit.press import BEARING_STEEL, CAST_ALUMINIUM, STEEL, Material
from twoshaft.readings.keyed import Stream
from twoshaft.readings.pressed_and_driven.given import Heat, Metal, Warming, WarmPart
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot
from twoshaft.records import extended
from twoshaft.units.quantities import Q

SCENES = 4


@dataclass(frozen=True)
class Warmed:
    """A part that is warmed, with its seat and the hottest it may get."""

    id: str
    name: str
    size_mm: float
    hub: Material
    shaft: Material
    limit_c: float
    limit_of: str
    most_um: float


OPEN = "open bearing"
SEALED = "sealed bearing, greased for life"
# Parts of an invented practice bench, beside those of the unit.
PRACTICE = (
    Warmed("open-40", "Ball bearing on a shaft of 40 mm", 40, BEARING_STEEL, STEEL,
           BEARING_LIMIT_C, OPEN, 62),
    Warmed("open-55", "Ball bearing on a shaft of 55 mm", 55, BEARING_STEEL, STEEL,
           BEARING_LIMIT_C, OPEN, 62),
    Warmed("sealed-35", "Sealed ball bearing on a shaft of 35 mm", 35, BEARING_STEEL, STEEL,
           SEALED_LIMIT_C, SEALED, 55),
    Warmed("sealed-50", "Sealed ball bearing on a shaft of 50 mm", 50, BEARING_STEEL, STEEL,
           SEALED_LIMIT_C, SEALED, 55),
    Warmed("hub-62", "Aluminium hub round a ring of 62 mm", 62, CAST_ALUMINIUM, BEARING_STEEL,
           100.0, "aluminium hub, by its maker", 95),
)  # fmt: skip
VERDICTS = ("warm", "cool-too")
CLEAR_K = 8.0
"""What is needed lies at least this far from what is allowed."""
AWAY_K = {"warm": (-50.0, -CLEAR_K), "cool-too": (CLEAR_K, 48.0)}
LEAST_RISE_K, LEAST_UM = 12.0, 10
TRIES_A_PART = 12
OTHERS = 3
LIMITS_C = (80, 100, 120, 150)


def parts_of(lot: Lot) -> list[Warmed]:
    """The unit's warmed parts and those of the practice bench."""
    metals = {metal.id: material(metal) for metal in lot.fits.metals}
    own = [
        Warmed(
            entry.id,
            entry.name,
            entry.size_mm,
            metals[entry.hub_metal],
            metals[entry.shaft_metal],
            entry.warmest_c,
            f"{metals[entry.hub_metal].name.lower()}, by the maker",
            Pressed.of(lot.unit, entry.id).fit.most_um,
        )
        for entry in lot.fits.presses
        if entry.warm == "hub" and entry.warmest_c is not None
    ]
    return [*own, *PRACTICE]


def draw(lot: Lot) -> Heat:
    """A part to be warmed, and how another is."""
    stream = lot.stream.child("heat")
    verdict = lot.in_turn("heat-verdict", VERDICTS)[0]
    for part in lot.in_turn("heat", parts_of(lot)):
        for _ in range(TRIES_A_PART):
            warm = _warmed(part, stream, verdict)
            if warm is not None:
                return extended(
                    Heat,
                    warm,
                    todo=BANK.lists["heat_todo"],
                    others=tuple(_warming(stream) for _ in range(OTHERS)),
                    how=lot.scenes("how", BANK, SCENES, lambda: _temperatures(stream)),
                    how_todo=BANK.lists["how_todo"],
                )
    raise lot.too_small("heat")


def _warming(stream: Stream) -> Warming:
    """A part on its way: there, not there yet, or never to be there by heat alone."""
    limit, margin = stream.choice(LIMITS_C), 20 + stream.integer(11)
    state = stream.choice(("there", "further", "over"))
    if state == "over":
        free = limit - margin + 5 + stream.integer(margin - 8)
        return Warming(free, margin, limit, limit - 2 - stream.integer(12))
    free = limit - margin - 12 - stream.integer(10)
    goal = free + margin
    now = goal + stream.integer(9) if state == "there" else goal - 5 - stream.integer(margin - 3)
    return Warming(free, margin, limit, now)


def _temperatures(stream: Stream) -> dict[str, int]:
    """Temperatures [degC] below 80, between 80 and 120 and nearly cold, and minutes."""
    return {
        "mild": 66 + stream.integer(10),
        "warm": 92 + stream.integer(22),
        "cool": 34 + stream.integer(15),
        "minutes": 6 + stream.integer(12),
    }


def _warmed(part: Warmed, stream: Stream, verdict: str) -> WarmPart | None:
    """A part as measured, None where the draw leaves it unclear or not as the verdict says."""
    room_c, size = 14 + stream.integer(13), Q(float(part.size_mm), "mm")
    expansion = Q(part.hub.expansion_per_k, "1/K")
    low, high = AWAY_K[verdict]
    rise = part.limit_c + stream.uniform(low, high) - room_c - HANDLING_K
    if rise < LEAST_RISE_K:
        return None
    grip_um = round(growth(size, expansion, Q(rise, "delta_degC")).m_as("um"))
    if not LEAST_UM <= grip_um <= part.most_um:
        return None
    warming = warm_to_assemble(
        Q(float(grip_um), "um"), size, expansion, Q(part.limit_c, "degC"), room=Q(room_c, "degC")
    )
    if min(abs(t - part.limit_c) for t in (warming.free_c, warming.heat_to_c)) < CLEAR_K:
        return None
    return WarmPart(
        part=part.id,
        name=part.name,
        size_mm=part.size_mm,
        grip_um=grip_um,
        room_c=room_c,
        handling_k=HANDLING_K,
        limit_c=part.limit_c,
        limit_of=part.limit_of,
        outer=Metal(part.hub.name, round(part.hub.expansion_per_k * 1e6, 2)),
        inner=Metal(part.shaft.name, round(part.shaft.expansion_per_k * 1e6, 2)),
    )
