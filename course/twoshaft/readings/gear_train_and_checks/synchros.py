"""Synchronisers: the gap of a ring under the feeler, what is wrong with another, cone torque."""

from __future__ import annotations

from twoshaft.models.geartrain import gap_says
from twoshaft.readings.gear_train_and_checks.lot import Lot, options
from twoshaft.readings.keyed import Stream
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import Synchroniser

BLADE_MM = 0.05
PLACES = 3
DECIDE = {
    "renew": "Fit a new ring",
    "use-again": "Put the ring back; it has gap enough",
    "grind": "Grind the face of the ring until the gap is right again",
    "turn": "Put the ring back a third of a turn further on",
    "shim": "Put a thin washer behind the ring",
}
SAYS = {
    "worn": "The ring is worn",
    "away": "Hub or ring stands away from the gear: something is in the wrong way round",
    "tilted": "The ring is tilted: a key sits on its land instead of in its slot",
    "dry": "The ring was not soaked, so it has not gone home yet",
    "good": "Nothing is wrong",
}
FEEL = {
    "longer": "The lever has to be held against the ring for longer",
    "jumps": "The gear jumps out on the overrun",
    "whines": "The gear whines under load",
    "two-gears": "Two gears can be engaged at once",
    "nothing": "Nothing, since the force is the same",
}
TRUE = {
    "keys-slots": "The keys sit in the slots of the ring",
    "ring-soaked": "The ring is soaked in gear oil before it goes on its cone",
    "own-cone": "A ring that is used again goes back to the cone that it has run on",
    "sleeve-free": "The sleeve slides on the hub without sticking, all the way round",
}
FALSE = {
    "keys-lands": "The keys rest on the lands of the ring, clear of its slots",
    "ring-dry": "The ring goes on dry, so that it grips",
    "swap-rings": "Used rings of one size are swapped, to even out the wear",
    "hub-either": "The hub goes on either way round, as long as its splines fit",
    "sleeve-tap": "A sleeve that sticks is tapped home; it frees itself in use",
}
TRUE_SHOWN, SHOWN = (2, 3), 6


def draw_gap(lot: Lot) -> dict:
    """Readings at three places of one ring to be judged, and of another that tell something."""
    stream = lot.stream.child("gap")
    rings = lot.in_turn("rings", lot.train.synchronisers)
    own, other = rings[0], rings[-1]
    worn = lot.in_turn("worn", [True, False])[0]
    for _ in range(400):
        least = own.ring_gap_least_mm
        room = 0.5 * (own.ring_gap_new_mm - least)
        base = (
            stream.uniform(least - 0.3, least - 0.1) if worn else least + stream.uniform(0.1, room)
        )
        readings = [_blade(base + stream.uniform(0, 0.14)) for _ in range(PLACES)]
        if min(readings) < 3 * BLADE_MM or abs(min(readings) - least) < 2 * BLADE_MM - 1e-9:
            continue
        if len(set(readings)) > 1 and _says(own, readings) == ("worn" if worn else "good"):
            break
    else:
        raise lot.too_small("gap")
    return {
        "ring": _about(own),
        "readings_mm": readings,
        "blade_mm": BLADE_MM,
        "decide": options(stream, DECIDE),
        "other": {**_about(other), "readings_mm": _telling(lot, stream, other)},
        "says": options(stream, SAYS),
    }


def _about(one: Synchroniser) -> dict:
    return {
        "id": one.id,
        "name": one.name,
        "new_mm": one.ring_gap_new_mm,
        "least_mm": one.ring_gap_least_mm,
        "half_angle_deg": one.half_angle_deg,
    }


def _blade(gap_mm: float) -> float:
    """The thickest blade that goes in."""
    return round(int(gap_mm / BLADE_MM + 1e-9) * BLADE_MM, 2)


def _says(one: Synchroniser, readings: list[float]) -> str:
    return gap_says(one, [Q(mm, "mm") for mm in readings], Q(BLADE_MM, "mm"))


def _telling(lot: Lot, stream: Stream, one: Synchroniser) -> list[float]:
    """Readings of a ring with something wrong other than wear, or with nothing wrong."""
    kind = lot.in_turn("telling", ["away", "tilted", "good"])[0]
    new, least = one.ring_gap_new_mm, one.ring_gap_least_mm
    for _ in range(400):
        if kind == "away":
            base = new + stream.uniform(0.4, 1.2)
            gaps = [base + stream.uniform(0, 0.1) for _ in range(PLACES)]
        elif kind == "tilted":
            low = stream.uniform(least + 0.1, least + 0.25)
            gaps = stream.shuffled([low, low + stream.uniform(0.4, 0.5), low + 0.2])
        else:
            base = new - stream.uniform(0.1, 0.25)
            gaps = [base + stream.uniform(0, 0.1) for _ in range(PLACES)]
        readings = [_blade(gap) for gap in gaps]
        if _says(one, readings) == kind:
            return readings
    raise lot.too_small("gap")


def draw_cone(lot: Lot) -> dict:
    """A cone, a force, two oils; six statements on how the parts go in."""
    stream = lot.stream.child("cone")
    one = lot.in_turn("cones", lot.train.synchronisers)[0]
    shown = TRUE_SHOWN[0] + stream.integer(TRUE_SHOWN[1] - TRUE_SHOWN[0] + 1)
    picked = [
        *stream.shuffled(list(TRUE.items()))[:shown],
        *stream.shuffled(list(FALSE.items()))[: SHOWN - shown],
    ]
    return {
        "ring": {
            **_about(one),
            "mean_diameter_mm": one.mean_diameter_mm,
            "friction": one.friction[1],
        },
        "force_n": 400 + 50 * stream.integer(9),
        "wrong_friction": round(stream.uniform(0.055, 0.07), 3),
        "feel": options(stream, FEEL),
        "fit": [list(pair) for pair in stream.shuffled(picked)],
    }
