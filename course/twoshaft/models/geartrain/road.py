"""Road speed, and turns of the speed drive."""

from __future__ import annotations

import math
from fractions import Fraction

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, border
from twoshaft.models.geartrain.motion import ratio, turns
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain

_RADIUS = Above("rolling radius", "m")


@border(input_speed=Above("input speed", "rad/s", zero=True), rolling_radius=_RADIUS)
def road_speed(
    train: GearTrain, gear: str, input_speed_rad_s: float, rolling_radius_m: float | None = None
) -> Q:
    """Road speed in a gear.

    Parameters
    ----------
    train : GearTrain
    gear : str
        Gear id.
    input_speed : pint.Quantity
        Speed of the input shaft [rpm].
    rolling_radius : pint.Quantity, optional
        Rolling radius of the tyre [mm]; the unit's own when left out.

    Returns
    -------
    pint.Quantity
        Speed [km/hour]; reverse is positive too.

    Examples
    --------
    A wheel of 300 mm at 1000/14.66 turns a minute.

    >>> train = unit.gear_train
    >>> f"{road_speed(train, 'first', Q(1000, 'rpm'), Q(300, 'mm')):.1f}"
    '7.7 kilometer / hour'
    """
    wheel_rad_s = input_speed_rad_s / abs(float(ratio(train, gear)))
    return Q(wheel_rad_s * _radius_m(train, rolling_radius_m), "m/s").to("km/hour")


@border("turn", distance=Above("distance", "m", zero=True), rolling_radius=_RADIUS)
def speed_drive_turns(
    train: GearTrain, distance_m: float, rolling_radius_m: float | None = None
) -> float:
    """Turns of the driven speed gear over a distance on the road.

    The axle ratio counts only where the driving gear sits on a shaft before the final drive.

    Parameters
    ----------
    train : GearTrain
    distance : pint.Quantity
        Way on the road [km].
    rolling_radius : pint.Quantity, optional
        As for :func:`road_speed`.

    Returns
    -------
    pint.Quantity
        Turns of the driven gear [turn].

    Raises
    ------
    OutOfRangeError
        The unit has no speed drive, or it sits where the wheels do not turn it.

    Examples
    --------
    A wheel of 300 mm turns 530.5 times a kilometre, the driven gear 22/21 as often.

    >>> train = unit.gear_train
    >>> f"{speed_drive_turns(train, Q(1, 'km'), Q(300, 'mm')):.1f}"
    '555.8 turn'
    """
    drive = train.speed_drive
    if drive is None:
        raise OutOfRangeError("speed drive", "not there", "a unit with one", "the unit file")
    circumference_m = 2 * math.pi * _radius_m(train, rolling_radius_m)
    per_case = _per_case_turn(train, drive.shaft)
    case_turns = distance_m / circumference_m
    return case_turns * float(abs(per_case)) * drive.driving_teeth / drive.driven_teeth


def _radius_m(train: GearTrain, given_m: float | None) -> float:
    """Rolling radius [m]; the unit's own where none is given."""
    return _RADIUS.plain(Q(train.rolling_radius_mm, "mm")) if given_m is None else given_m


def _per_case_turn(train: GearTrain, shaft: str) -> Fraction:
    """Turns of a shaft for one of the last shaft of the gears, whatever gear is engaged."""
    last = train.turned_last
    if shaft == last:
        return Fraction(1)
    found = {
        turn / case
        for done in (turns(train, (gear.id,)) for gear in train.gears)
        if (turn := done[shaft]) is not None and (case := done[last])
    }
    if len(found) != 1:
        raise OutOfRangeError(
            "speed drive's shaft", shaft, "a shaft that the wheels always turn alike",
            "equations of the meshes",
        )  # fmt: skip
    return found.pop()
