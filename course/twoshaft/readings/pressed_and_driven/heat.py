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
from twoshaft.readings.pressed_and_driven.lot import Lot
from twoshaft.units.quantities import Q


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
TO_DO = [
    ["warm", "Warm it to that temperature and slide it on by hand to its shoulder"],
    ["cool-too", "Warm it no further than its limit and cool the inner part as well"],
    ["over", "Go above the limit for a minute only, then be quick"],
    ["hammer", "Warm it to its limit and knock it the rest of the way"],
    ["cold", "Cool both parts in the freezer until they slide"],
    ["no-margin", "Warm it until it just comes free, and no further"],
    ["file", "Rub the seat down with emery cloth until it slides at its limit"],
]
HOW = (
    (
        "sealed",
        "A bearing with seals on both sides is to be warmed. How?",
        (
            ("low", "In the oven set below its limit of about 80 °C, by a thermometer"),
            ("hotter", "In the oven at 120 °C, as every bearing"),
            ("flame", "With a soft flame round the outer ring, kept moving"),
            ("bath", "In a pan of hot oil on the stove until it smokes"),
            ("gun", "With a hot-air gun from one side until it slides on"),
            ("lamp", "Under a lamp until a drop of water hisses on it"),
        ),
    ),
    (
        "housing",
        "A light-alloy housing that still holds an old shaft seal is to be warmed. How?",
        (
            ("seal-out", "Take the seal out first, then warm the whole housing in the oven"),
            ("seal-in", "Warm the whole housing in the oven with the seal in; it is old anyway"),
            ("flame-bore", "Warm the bore alone with a flame, so that the seal stays cool"),
            ("wet", "Put a wet cloth on the seal and a flame on the bore"),
            ("plate", "Lay one side on the hot plate until the seal begins to smell"),
            ("new-seal", "Drive the new seal in first, so that it seats in the warm"),
        ),
    ),
    (
        "open",
        "An open bearing has come out of its wrapping and is to go on warm. How?",
        (
            ("oven", "In the oven or on the induction heater, to about 120 °C at most"),
            ("blue", "With a torch, until the ring turns straw-coloured"),
            ("inner-flame", "With a small flame at the inner ring only"),
            ("hottest", "In the oven at 200 °C: the hotter, the looser"),
            ("wire", "Hung on a wire over the gas burner"),
            ("friction", "By spinning it with the air gun until it is hot"),
        ),
    ),
    (
        "gear",
        "A hardened gear is to go on its carrier warm. How?",
        (
            ("even", "Evenly, on the hot plate or in the oven, with its temperature read"),
            ("torch", "With the torch at the bore until the gear drops on"),
            ("red", "Until the bore glows dull red in the dark"),
            ("teeth", "With the torch at the teeth, which are far from the bore"),
            ("guess", "On the hot plate for about ten minutes, by feel"),
            ("solvent", "In hot cleaning solvent, which also takes the grease off"),
        ),
    ),
)


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
        if entry.warm == "hub"
    ]
    return [*own, *PRACTICE]


def draw(lot: Lot) -> dict:
    """A part to be warmed.

    ``name``, ``size_mm``, ``grip_um``, ``room_c``, ``handling_k``, ``limit_c``, ``limit_of``,
    ``outer`` and ``inner`` (metal, growth of a metre by a degree [um]), ``todo`` and ``how``.
    """
    stream = lot.stream.child("heat")
    verdict = lot.in_turn("heat-verdict", VERDICTS)[0]
    for part in lot.in_turn("heat", parts_of(lot)):
        for _ in range(TRIES_A_PART):
            given = _warmed(part, stream, verdict)
            if given is not None:
                return given | {"todo": stream.shuffled(TO_DO), "how": lot.ask("how", HOW)}
    raise lot.too_small("heat")


def _warmed(part: Warmed, stream, verdict: str) -> dict | None:
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
    return {
        "part": part.id,
        "name": part.name,
        "size_mm": part.size_mm,
        "grip_um": grip_um,
        "room_c": room_c,
        "handling_k": HANDLING_K,
        "limit_c": part.limit_c,
        "limit_of": part.limit_of,
        "outer": [part.hub.name, round(part.hub.expansion_per_k * 1e6, 2)],
        "inner": [part.shaft.name, round(part.shaft.expansion_per_k * 1e6, 2)],
    }
