"""Too much and too little: what the setting does to life, and how each shows."""

from __future__ import annotations

from twoshaft.models.bearing import Pair, life_against_setting
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.lot import Lot
from twoshaft.units.quantities import Q

STEP_MM = 0.02
MUCH = [
    ["hot", "The case runs hot at the bearing after a few minutes"],
    ["blue", "Raceways are blue or straw brown"],
    ["stiff", "The cord needs far more than before, with the same parts turning"],
    ["rib", "The large ends of the rollers and the rib are scored"],
    ["early", "The whole raceway, all round, flakes early"],
]
LITTLE = [
    ["walk", "Gears walk: the sound changes between pull and overrun"],
    ["ends", "Teeth wear at one end only"],
    ["weep", "A shaft seal weeps, though it is new"],
    ["clunk", "A dull knock when the load changes over"],
    ["dial", "The dial moves by tenths when the shaft is pushed and pulled"],
    ["few", "Raceways are marked on a short arc only, where few rollers carried the load"],
]
WHY = [
    ["press", "Past the best point the bearings load each other, on top of the gears' load"],
    ["oil", "Past the best point oil no longer flows through the bearing at all"],
    ["fewer", "With more preload fewer rollers carry the load"],
    ["speed", "With more preload the rollers turn faster than the shaft"],
    ["soft", "With more preload the rings get soft at once"],
    ["seal", "With more preload the seals press harder on the shaft"],
]  # fmt: skip


def draw(lot: Lot) -> dict:
    """Life of a support over its running setting, and signs seen on stripped units.

    ``support``, ``name``, ``loads_n`` (left, right, axial), ``rpm``, ``table`` (setting [mm],
    life [h]), ``from_mm`` and ``to_mm`` to be compared, ``signs`` and ``why`` (key, label).
    """
    support, stream = lot.second, lot.stream.child("life")
    pair = Pair.from_support(support, lot.bearings)
    for _ in range(TRIES):
        factor = 0.85 + 0.3 * stream.uniform(0, 1)
        loads = [float(10 * round(factor * load / 10)) for load in support.radial_load_n]
        axial = float(10 * round(factor * support.axial_load_n / 10))
        settings = [round(STEP_MM * k, 2) for k in range(-4, 7)]
        curve = life_against_setting(
            pair, Q(settings, "mm"), tuple(Q(load, "N") for load in loads), Q(axial, "N"),
            Q(support.speed_rpm, "rpm"),
        )  # fmt: skip
        best = settings.index(round(curve.best_mm, 2))
        if 0 < best < len(settings) - 3:
            break
    else:
        raise lot.too_small("life")
    far = best + 2 + stream.integer(len(settings) - best - 2)
    much = 3 + stream.integer(2)
    signs = [*stream.shuffled(MUCH)[:much], *stream.shuffled(LITTLE)[: 7 - much]]
    return {
        "support": support.id,
        "name": support.name,
        "loads_n": [*loads, axial],
        "rpm": support.speed_rpm,
        "table": [
            [mm, float(f"{hours:.3g}")] for mm, hours in zip(settings, curve.both_h, strict=True)
        ],
        "from_mm": settings[best],
        "to_mm": settings[far],
        "signs": stream.shuffled(signs),
        "why": stream.shuffled(WHY),
    }
