"""Road speed, and a count of the speed drive's pinion."""

from __future__ import annotations

import math

from twoshaft.models.geartrain import ratio, speed_drive_turns
from twoshaft.readings.gear_train_and_checks.given import Named, PairOfTeeth, Speed
from twoshaft.readings.gear_train_and_checks.lot import Lot, options
from twoshaft.records import Option
from twoshaft.units.quantities import Q

WIDEST = 3
"""Teeth that a pinion of another unit has more or fewer, at most."""


def draw(lot: Lot) -> Speed:
    """A gear and engine speed; turns counted at a pinion that is not the right one."""
    stream = lot.stream.child("speed")
    gear = lot.in_turn("gears", lot.forward)[2 % len(lot.forward)]
    train, drive = lot.train, lot.train.needed_speed_drive()
    turns = 8 + stream.integer(5)
    teeth = drive.driven_teeth + lot.in_turn("pinions", [-3, -2, 2, 3])[0]
    fitted = train.model_copy(
        update={"speed_drive": drive.model_copy(update={"driven_teeth": teeth})}
    )
    way = Q(turns * 2 * math.pi * train.rolling_radius_mm, "mm")
    step = train.least_count_turns
    counted = math.floor(speed_drive_turns(fitted, way).m_as("turn") / step + 0.5) * step
    return Speed(
        gear=Named(gear.id, gear.name),
        total=round(abs(float(ratio(train, gear.id))), 3),
        input_rpm=1500 + 250 * stream.integer(9),
        radius_mm=train.rolling_radius_mm,
        drive=PairOfTeeth(drive.driving_teeth, drive.driven_teeth),
        wheel_turns=turns,
        counted_turns=counted,
        step_turns=step,
        pinions=tuple(
            Option(str(teeth), f"One with {teeth} teeth")
            for teeth in range(drive.driven_teeth - WIDEST, drive.driven_teeth + WIDEST + 1)
        ),
        shown=options(stream, "shown"),
    )
