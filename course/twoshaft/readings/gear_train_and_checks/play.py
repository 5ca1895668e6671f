"""The play of a side gear: read, judged, set by a washer."""

from __future__ import annotations

from twoshaft.models.geartrain import right_washers
from twoshaft.readings.gear_train_and_checks.given import Play
from twoshaft.readings.gear_train_and_checks.lot import Lot, options
from twoshaft.records import Option
from twoshaft.units.quantities import Q

DOUBT_MM = 0.01
"""How far a difference of two dial readings may be off: common practice, no source."""


def draw(lot: Lot) -> Play:
    """Two dial readings and the washer that was in; redrawn until one washer is surely right."""
    section = lot.train.needed_side_gear_play()
    stream = lot.stream.child("play")
    side = lot.in_turn("side", ["left", "right"])[0]
    low, high = section.play_mm
    washers = sorted(section.washers_mm)
    for _ in range(400):
        fitted = stream.choice(washers)
        # Always wrong as found; too little play leaves something to read all the same.
        wide = stream.integer(4) > 0
        play = stream.uniform(high + 0.06, high + 0.3) if wide else stream.uniform(0.01, low - 0.02)
        play = round(play, 2)
        fits = right_washers(section, Q(play, "mm"), Q(fitted, "mm"), Q(DOUBT_MM, "mm"))
        if play > 0 and fits and min(abs(play - low), abs(play - high)) > 2 * DOUBT_MM:
            break
    else:
        raise lot.too_small("play")
    first = round(stream.uniform(0.4, 0.9), 2)
    return Play(
        side=side,
        inwards_mm=first,
        outwards_mm=round(first + play, 2),
        fitted_mm=fitted,
        washers=tuple(
            Option(f"{thick:.2f}".replace(".", "-"), f"{thick:.2f} mm") for thick in washers
        ),
        limits_mm=(low, high),
        doubt_mm=DOUBT_MM,
        verdicts=options(stream, "verdicts"),
        when=lot.asked("when", stream),
    )
