"""The force that a detent asks of the hand."""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q


@dataclass(frozen=True)
class DetentForce:
    """Forces along the rail.

    Attributes
    ----------
    to_start : pint.Quantity
        To leave the notch [N].
    at_crest : pint.Quantity
        Just before the ball rides out of the notch, spring most compressed [N].
    holds_below : pint.Quantity
        Push that the notch resists without friction's help, as under vibration [N].
    travel : pint.Quantity
        Way from the notch's middle to its crest [mm].

    Examples
    --------
    >>> force = detent_force(Q(46, "N"), Q(32, "deg"), friction=0.12)
    >>> f"{force.to_start:.1f} to leave, holds below {force.holds_below:.1f} when shaken"
    '37.0 newton to leave, holds below 28.7 newton when shaken'
    """

    to_start: Q
    at_crest: Q
    holds_below: Q
    travel: Q


def detent_force(
    spring_force: Q,
    ramp: Q,
    friction: float,
    *,
    spring_rate: Q | None = None,
    depth: Q | None = None,
) -> DetentForce:
    """Force to push a rail out of a V notch against its spring-loaded ball.

    The ball climbs the ramp like a wedge: N tan(ramp + rho) with rho = atan(friction). Source of
    the form: general design pages on ball detents; without friction it is N tan(ramp).

    Parameters
    ----------
    spring_force : pint.Quantity
        Spring force with the ball home [N].
    ramp : pint.Quantity
        Angle between the ramp and the rail's axis [deg].
    friction : float
        Coefficient between ball and ramp.
    spring_rate : pint.Quantity, optional
        Rate of the spring [N/mm].
    depth : pint.Quantity, optional
        Depth of the notch, so the way the spring is compressed [mm].

    Raises
    ------
    OutOfRangeError
        Values out of range; a ramp so steep that friction jams the ball.

    Examples
    --------
    >>> force = detent_force(
    ...     Q(46, "N"), Q(32, "deg"), 0.12, spring_rate=Q(7, "N/mm"), depth=Q(2.2, "mm")
    ... )
    >>> f"{force.to_start:.1f}, {force.at_crest:.1f}"
    '37.0 newton, 49.4 newton'
    """
    source = "wedge with friction"
    force_n = positive("spring force", spring_force, "N")
    beta = in_range("ramp angle", ramp, math.radians(5), math.radians(85), "rad", source)
    mu = in_range("friction", friction, 0, 0.5, "", source)
    rho = math.atan(mu)
    if beta + rho >= math.pi / 2:
        raise OutOfRangeError(
            "ramp angle", f"{math.degrees(beta):g} deg", f"below {90 - math.degrees(rho):.1f} deg, "
            "where friction jams the ball", source,
        )  # fmt: skip
    depth_mm = 0.0 if depth is None else positive("notch depth", depth, "mm", zero=True)
    rate = 0.0 if spring_rate is None else positive("spring rate", spring_rate, "N/mm", zero=True)
    crest_n = force_n + rate * depth_mm
    return DetentForce(
        to_start=Q(force_n * math.tan(beta + rho), "N"),
        at_crest=Q(crest_n * math.tan(beta + rho), "N"),
        holds_below=Q(force_n * math.tan(beta), "N"),
        travel=Q(depth_mm / math.tan(beta), "mm"),
    )
