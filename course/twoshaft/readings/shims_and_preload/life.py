"""Too much and too little: what the setting does to life, and how each shows."""

from __future__ import annotations

from twoshaft.models.bearing import Pair, life_against_setting
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.given import Life, LifeAt
from twoshaft.readings.shims_and_preload.lot import BANK, Lot
from twoshaft.units.quantities import Q

STEP_MM = 0.02
SEEN = 4


def draw(lot: Lot) -> Life:
    """Life of a support over its running setting, and signs seen on stripped units."""
    support, stream = lot.second, lot.stream.child("life")
    pair = Pair.from_support(support, lot.bearings)
    for _ in range(TRIES):
        factor = 0.85 + 0.3 * stream.uniform(0, 1)
        left, right = (float(10 * round(factor * load / 10)) for load in support.radial_load_n)
        axial = float(10 * round(factor * support.axial_load_n / 10))
        settings = [round(STEP_MM * k, 2) for k in range(-4, 7)]
        curve = life_against_setting(
            pair, Q(settings, "mm"), (Q(left, "N"), Q(right, "N")), Q(axial, "N"),
            Q(support.speed_rpm, "rpm"),
        )  # fmt: skip
        best = settings.index(round(curve.best_mm, 2))
        if 0 < best < len(settings) - 3:
            break
    else:
        raise lot.too_small("life")
    far = best + 2 + stream.integer(len(settings) - best - 2)
    return Life(
        support=support.id,
        name=support.name,
        loads_n=(left, right, axial),
        rpm=support.speed_rpm,
        table=tuple(
            LifeAt(mm, float(f"{hours:.3g}"))
            for mm, hours in zip(settings, curve.both_h, strict=True)
        ),
        from_mm=settings[best],
        to_mm=settings[far],
        seen=lot.scenes_asked("seen", BANK, SEEN, lambda: _figures(stream)),
    )


def _figures(stream: Stream) -> dict[str, object]:
    """A way [km], lengths [mm], pulls [N], an arc [°] and years."""
    less = 6 + stream.integer(8)
    return {
        "km": 200 + 100 * stream.integer(40),
        "mm": 6 + stream.integer(9),
        "less": less,
        "more": less + 4 + stream.integer(8),
        "tenths": 2 + stream.integer(5),
        "arc": 50 + 10 * stream.integer(8),
        "years": 2 + stream.integer(6),
    }
