"""Synchronisers: the gap of a ring under the feeler, what is wrong with another, cone torque."""

from __future__ import annotations

from twoshaft.models.geartrain import gap_says
from twoshaft.models.shape import listed_misbuilds, section_of, solids_of, thin_rings
from twoshaft.readings.gear_train_and_checks.given import Cone, ConeRing, Gap, ReadRing, Ring
from twoshaft.readings.gear_train_and_checks.lot import BANK, Lot
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import Look, looks_in_turn
from twoshaft.records import extended
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import Synchroniser

BLADE_MM = 0.05
PLACES = 3
TELLING = ("worn", "good", "away", "tilted")


def draw_gap(lot: Lot) -> Gap:
    """Readings at three places of one ring to be judged, and of others that tell something."""
    stream = lot.stream.child("gap")
    rings = lot.in_turn("rings", lot.train.synchronisers)
    own = rings[0]
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
    return Gap(
        ring=_about(own),
        readings_mm=tuple(readings),
        blade_mm=BLADE_MM,
        decide=BANK.lists["decide"],
        others=tuple(
            extended(ReadRing, _about(ring), readings_mm=_telling(lot, stream, ring, kind))
            for kind in stream.shuffled([*TELLING[1:], stream.choice(TELLING)])
            for ring in [stream.choice(rings)]
        ),
    )


def _about(one: Synchroniser) -> Ring:
    return Ring(
        id=one.id,
        name=one.name,
        new_mm=one.ring_gap_new_mm,
        least_mm=one.ring_gap_least_mm,
        half_angle_deg=one.half_angle_deg,
    )


def _blade(gap_mm: float) -> float:
    """The thickest blade that goes in."""
    return round(int(gap_mm / BLADE_MM + 1e-9) * BLADE_MM, 2)


def _says(one: Synchroniser, readings: list[float]) -> str:
    return gap_says(one, [Q(mm, "mm") for mm in readings], Q(BLADE_MM, "mm"))


def _telling(lot: Lot, stream: Stream, one: Synchroniser, kind: str) -> tuple[float, ...]:
    """Readings of a ring that is worn, out of place or tilted, or with nothing wrong."""
    new, least = one.ring_gap_new_mm, one.ring_gap_least_mm
    for _ in range(400):
        if kind == "away":
            base = new + stream.uniform(0.4, 1.2)
            gaps = [base + stream.uniform(0, 0.1) for _ in range(PLACES)]
        elif kind == "tilted":
            low = stream.uniform(least + 0.1, least + 0.25)
            gaps = stream.shuffled([low, low + stream.uniform(0.4, 0.5), low + 0.2])
        elif kind == "worn":
            base = least - stream.uniform(0.12, 0.3)
            gaps = [base + stream.uniform(0, 0.1) for _ in range(PLACES)]
        else:
            base = new - stream.uniform(0.1, 0.25)
            gaps = [base + stream.uniform(0, 0.1) for _ in range(PLACES)]
        readings = [_blade(gap) for gap in gaps]
        if min(readings) > 0 and _says(one, readings) == kind:
            return tuple(readings)
    raise lot.too_small("gap")


def draw_cone(lot: Lot) -> Cone:
    """A cone, a force, two oils; parts of synchronisers as they go in."""
    stream = lot.stream.child("cone")
    one = lot.in_turn("cones", lot.train.synchronisers)[0]
    return Cone(
        ring=extended(
            ConeRing,
            _about(one),
            mean_diameter_mm=one.mean_diameter_mm,
            friction=one.friction[1],
        ),
        force_n=400 + 50 * stream.integer(9),
        wrong_friction=round(stream.uniform(0.055, 0.07), 3),
        fit=lot.asked("fit", stream),
        looks=_looks(lot),
        built=BANK.lists["looks"],
    )


def _looks(lot: Lot) -> tuple[Look, ...]:
    """Four units at a place where a gear, a hub or a ring may lie the wrong way round."""
    views = {one.id for one in section_of(lot.unit).views
             if any(drawn.solid.kind == "gear" for drawn in one.drawn)}  # fmt: skip
    listed = [one for one in listed_misbuilds(lot.unit) if one.how == "turned"]
    kinds = {one.id: {own.solid.kind for key in one.parts
                      for own in solids_of(lot.unit, one.view, key)}
             for one in listed}  # fmt: skip
    gears = [one for one in listed if one.view in views and kinds[one.id] & {"gear", "turned"}]
    places = lot.in_turn("looks", gears)
    others = [*listed, *thin_rings(lot.unit)]
    return looks_in_turn(lot.unit, lot.stream.child("looks"), places, others) or ()
