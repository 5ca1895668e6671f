"""A fit by its name: sizes at the limits, most and least interference, and what kind it is."""

from __future__ import annotations

from twoshaft.models.fit import Fit, fit, zone
from twoshaft.models.fit import Zone as FitZone
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.given import Limits, Pair, Zone
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot
from twoshaft.units.quantities import Q

SIZES_MM = (20, 22, 25, 28, 32, 35, 38, 42, 45, 48, 52, 55, 58, 62, 68, 72, 75, 78)
CODES = {
    "interference": ("H7/p6", "H7/r6", "H7/s6", "P7/h6", "R7/h6"),
    "transition": ("H7/k6", "H7/m6", "H7/n6", "K7/h6", "M7/h6"),
    "clearance": ("H7/g6", "H7/f7", "G7/h6", "F7/h6", "H8/f7"),
}
HOLES = ("F7", "G7", "H7", "H8", "K7", "M7", "P7")
SHAFTS = ("f7", "g6", "h6", "k6", "m6", "n6", "p6", "s6")
CLEAR_UM = 3
"""A limit is at least this far from nothing, so that its sign is no matter of rounding."""
OTHERS = 3


def draw(lot: Lot) -> Limits:
    """A fit and a table of zones for its size."""
    stream = lot.stream.child("limits")
    size, made = _fit(lot, stream, lot.in_turn("limits-kind", list(CODES))[0])
    kinds = [stream.choice(list(CODES)) for _ in range(OTHERS)]
    return Limits(
        size_mm=size.magnitude,
        codes=f"{made.hole.name}/{made.shaft.name}",
        zones=_zones(size, made, stream),
        kinds=BANK.lists["kinds"],
        others=tuple(_pair(*_fit(lot, stream, kind)) for kind in kinds),
    )


def _fit(lot: Lot, stream: Stream, kind: str) -> tuple[Q, Fit]:
    """A size and a fit, of that kind and clear of nothing."""
    for _ in range(TRIES):
        size, codes = Q(stream.choice(SIZES_MM), "mm"), stream.choice(CODES[kind])
        made = fit(size, codes)
        if made.kind == kind and min(abs(made.least_um), abs(made.most_um)) >= CLEAR_UM:
            return size, made
    raise lot.too_small("limits")


def _pair(size: Q, made: Fit) -> Pair:
    return Pair(_sizes(size, made.hole), _sizes(size, made.shaft))


def _sizes(size: Q, made: FitZone) -> tuple[float, float]:
    """Smallest and largest size of a zone [mm]."""
    low, high = (round(size.magnitude + um / 1e3, 3) for um in (made.lower_um, made.upper_um))
    return low, high


def _zones(size: Q, made: Fit, stream: Stream) -> tuple[Zone, ...]:
    """The two zones of the fit among others of holes and shafts."""
    holes = [code for code in stream.shuffled(HOLES) if code != made.hole.name][:2]
    shafts = [code for code in stream.shuffled(SHAFTS) if code != made.shaft.name][:2]
    names = [*sorted([made.hole.name, *holes]), *sorted([made.shaft.name, *shafts])]
    zones = [zone(size, name) for name in names]
    return tuple(Zone(one.name, one.lower_um, one.upper_um) for one in zones)
