"""How far a rail can still move while the rail beside it has a gear in."""

from __future__ import annotations

import math

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q
from twoshaft.units.sections.shift import Shift


def pin_play(notch: Q, gap: Q, length: Q) -> Q:
    """Room left for the pin when one rail has left its notch [mm]; negative: the rail sticks.

    The moved rail shows the pin its full round, so pin and gap share the other rail's notch.

    Examples
    --------
    >>> f"{pin_play(notch=Q(2.5, 'mm'), gap=Q(10.1, 'mm'), length=Q(12.4, 'mm')):.1f}"
    '0.2 millimeter'
    """
    notch_mm = positive("notch depth", notch, "mm")
    gap_mm = positive("gap", gap, "mm", zero=True)
    length_mm = positive("pin length", length, "mm")
    return Q(notch_mm + gap_mm - length_mm, "mm")


def free_movement(play: Q, ramp: Q) -> Q:
    """How far the locked rail moves until the flank of its notch meets the pin [mm].

    Parameters
    ----------
    play : length
        Room left for the pin, from :func:`pin_play`.
    ramp : angle
        Angle between the flank and the rail's axis.

    Raises
    ------
    OutOfRangeError
        No play: with a pin that is too long the first rail cannot leave its notch at all.

    Examples
    --------
    >>> f"{free_movement(Q(0.2, 'mm'), Q(60, 'deg')):.2f}"
    '0.12 millimeter'
    """
    play_mm = float(play.to("mm").magnitude)
    if play_mm < 0:
        raise OutOfRangeError("play", f"{play_mm:g} mm", "0 mm or more", "this model")
    angle = in_range("ramp angle", ramp, math.radians(10), math.radians(85), "rad", "interlocks")
    return Q(play_mm / math.tan(angle), "mm")


def without_pin(shift: Shift, pin: str) -> Shift:
    """The mechanism with one interlock pin left out.

    Examples
    --------
    >>> [pin.id for pin in without_pin(unit.shift, "interlock-rear").interlocks]
    ['interlock-front', 'interlock-through']
    """
    left = tuple(one for one in shift.interlocks if one.id != pin)
    return shift.model_copy(update={"interlocks": left})


def locked_rails(shift: Shift, gear: str) -> frozenset[str]:
    """Rails that cannot reach a gear of theirs while a gear is in.

    Parameters
    ----------
    shift : Shift
        With the pins that are in it; a missing pin is left out of its list.
    gear : str
        The gear that is in.

    Examples
    --------
    >>> sorted(locked_rails(unit.shift, "first"))
    ['rail-fifth-reverse', 'rail-third-fourth']
    >>> sorted(locked_rails(without_pin(unit.shift, "interlock-front"), "first"))
    ['rail-fifth-reverse']
    """
    own = next(rail for rail in shift.rails if gear in (rail.low, rail.high))
    locked = set()
    for pin in shift.interlocks:
        if own.body not in pin.rails:
            continue
        flank = math.tan(math.radians(pin.ramp_deg))
        left = max(0.0, pin.notch_mm - flank * own.engaged_mm)  # of the moved rail's own notch
        room = left + pin.notch_mm + pin.gap_mm - pin.length_mm
        other = next(rail for rail in shift.rails if rail.body in set(pin.rails) - {own.body})
        if room < pin.notch_mm and room / flank < other.engaged_mm:
            locked.add(other.body)
    return frozenset(locked)
