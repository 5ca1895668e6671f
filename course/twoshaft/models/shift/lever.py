"""From the rail to the hand: torque on the selector shaft, force at the lever, angle of turn."""

from __future__ import annotations

import math

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import positive
from twoshaft.units.quantities import Q


def shaft_torque(rail_force: Q, finger_radius: Q) -> Q:
    """Torque on the selector shaft that pushes a rail [N·m].

    Examples
    --------
    >>> f"{shaft_torque(Q(80, 'N'), Q(22, 'mm')):.2f~P}"
    '1.76 m·N'
    """
    force_n = positive("force along the rail", rail_force, "N")
    return Q(force_n * positive("radius of the finger", finger_radius, "m"), "N*m")


def hand_force(torque: Q, lever: Q) -> Q:
    """Force of the hand at the end of the outer lever, square to it [N].

    Examples
    --------
    >>> f"{hand_force(Q(1.76, 'N*m'), Q(120, 'mm')):.1f~P}"
    '14.7 N'
    """
    torque_nm = positive("torque", torque, "N*m")
    return Q(torque_nm / positive("length of the lever", lever, "m"), "N")


def turn_angle(rail_way: Q, finger_radius: Q) -> Q:
    """Angle by which the shaft turns while the finger's tip goes a way round [deg].

    Examples
    --------
    >>> f"{turn_angle(Q(8, 'mm'), Q(22, 'mm')):.1f}"
    '20.8 degree'
    """
    way_mm = positive("way of the rail", rail_way, "mm")
    return Q(math.degrees(way_mm / positive("radius of the finger", finger_radius, "mm")), "deg")


def other_end(hub: Q, pin: Q, struck_end: Q) -> Q:
    """How deep a pin lies below the surface at the end that was not struck [mm].

    Parameters
    ----------
    hub : length
        Length of the hole, the hub's diameter.
    pin : length
        Length of the pin.
    struck_end : length
        How deep the struck end lies; negative when it stands proud.

    Returns
    -------
    length
        Negative when the far end stands proud.

    Raises
    ------
    OutOfRangeError
        A pin that is not shorter than its hole can never lie below the surface at both ends.

    Examples
    --------
    >>> f"{other_end(Q(30, 'mm'), Q(28, 'mm'), Q(0.5, 'mm')):.1f}"
    '1.5 millimeter'
    >>> f"{other_end(Q(30, 'mm'), Q(28, 'mm'), Q(2.4, 'mm')):.1f}"  # proud at the far end
    '-0.4 millimeter'
    """
    hub_mm, pin_mm = positive("hub", hub, "mm"), positive("pin", pin, "mm")
    if pin_mm >= hub_mm:
        raise OutOfRangeError("pin", f"{pin_mm:g} mm", f"below {hub_mm:g} mm", "the hub")
    return Q(hub_mm - pin_mm - float(struck_end.to("mm").magnitude), "mm")
