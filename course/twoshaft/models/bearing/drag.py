"""Turning torque and the pull on a cord, with what is being turned named.

A pull means nothing until it is said what turns with it: the bearings alone, the seals too, or
the whole train. Torque at another shaft counts at the turned one by its speed ratio (power goes
in where the cord is).

Sources: taper rollers, NSK catalogue E1102m pp. A134-A135, M = e mu F cos(b) with mu = 0.20 on
the rib, slow turning. Balls, M = mu F d/2 with mu = 0.0015 (from memory).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.bearing.geometry import Balls, Rollers
from twoshaft.models.bearing.pair import Pair
from twoshaft.models.border import Depends, Range, border
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support

_RIB_FRICTION, _BALL_FRICTION = 0.20, 0.0015
_CORD = "a cord round a shaft or gear"
_WORDS = {"seal": "seals", "mesh": "meshes", "other-shaft": "the other shaft"}


@dataclass(frozen=True)
class Part:
    """One thing that is turned: its torque at its own shaft [N·m] and its speed ratio.

    Examples
    --------
    >>> Part("the other shaft", torque_nm=0.5, speed_ratio=3.5).felt_nm
    1.75
    """

    name: str
    torque_nm: float
    speed_ratio: float = 1.0

    @property
    def felt_nm(self) -> float:
        """Torque at the shaft with the cord [N·m]."""
        return self.torque_nm * self.speed_ratio


@dataclass(frozen=True)
class Turned:
    """All that turns when the cord is pulled.

    Examples
    --------
    >>> pair = Turned("differential", (Part("left bearing", 0.5), Part("right bearing", 0.7)))
    >>> f"{pair.torque.m_as('N*m'):.1f} N·m"
    '1.2 N·m'
    """

    name: str
    parts: tuple[Part, ...]

    @property
    def torque(self) -> Q:
        """Torque at the shaft with the cord [N·m]."""
        return Q(sum(part.felt_nm for part in self.parts), "N*m")


@dataclass(frozen=True)
class Pull:
    """Pull on the cord [N] and what it turns.

    Examples
    --------
    >>> cord_pull(Turned("a pair", (Part("bearings", 1.2),)), Q(40, "mm")).sentence
    '30.0 N on the cord turns a pair (1.20 N·m)'
    """

    force: Q
    turned: Turned

    @property
    def sentence(self) -> str:
        """The finding in one sentence."""
        return (
            f"{self.force.m_as('N'):.1f} N on the cord turns {self.turned.name} "
            f"({self.turned.torque.m_as('N*m'):.2f} N·m)"
        )


@border(
    "N*m",
    axial_load=Depends("N", lambda row: Range("axial load", "N", 0.0, row.capacity_n, row.name)),
)
def bearing_torque(row: Rollers | Balls, axial_load_n: float) -> float:
    """Torque [N·m] that turns one bearing slowly under an axial load.

    Parameters
    ----------
    row : Rollers or Balls
    axial_load : pint.Quantity
        0 N to the dynamic rating; an array gives an array.

    Examples
    --------
    Arm of the rib 1.5 mm, friction 0.20, cos 1.8° of 1000 N: arithmetic.

    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> f"{bearing_torque(row, Q(1000, 'N')).m_as('N*m'):.2f}"
    '0.30'
    """
    return _torque_per_n(row) * axial_load_n


def turned(
    support: Support, bearings: Bearings, preload: Q, with_kinds: tuple[str, ...] = ()
) -> Turned:
    """Gather what turns: the two bearings, and the drags of the kinds named.

    Parameters
    ----------
    support : Support
    bearings : Bearings
    preload : pint.Quantity
        0 N to the smaller dynamic rating.
    with_kinds : tuple of str
        Any of ``"seal"``, ``"mesh"``, ``"other-shaft"``; none for the bearings only.

    Raises
    ------
    OutOfRangeError
        For another kind.

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> [part.name for part in turned(support, unit.bearings, Q(1, "kN")).parts]
    ['left bearing', 'right bearing']
    """
    for kind in with_kinds:
        if kind not in _WORDS:
            raise OutOfRangeError("what is turned", repr(kind), ", ".join(_WORDS), _CORD)
    pair = Pair.from_support(support, bearings)
    parts = [
        Part(f"{side} bearing", bearing_torque(row, preload).m_as("N*m"))
        for side, row in (("left", pair.left), ("right", pair.right))
    ]
    drags = [drag for drag in support.drags if drag.kind in with_kinds]
    parts += [Part(drag.name, drag.torque_nm, drag.speed_ratio) for drag in drags]
    present = [kind for kind in _WORDS if any(drag.kind == kind for drag in drags)]
    ratios = sorted({f"{drag.speed_ratio:g}" for drag in drags if drag.speed_ratio != 1})
    name = "the bearings only"
    if present:
        name = "the bearings with " + " and ".join(_WORDS[kind] for kind in present)
        name += f" at ratio {' and '.join(ratios)}" if ratios else ""
    return Turned(name, tuple(parts))


@border(radius=Range("radius of the cord", "mm", 2.0, 500.0, _CORD))
def cord_pull(what: Turned, radius_mm: float) -> Pull:
    """Pull on a cord wound round a radius, 2 to 500 mm.

    Examples
    --------
    >>> f"{cord_pull(Turned('a pair', (Part('bearings', 1.2),)), Q(40, 'mm')).force:.0f}"
    '30 newton'
    """
    return Pull(Q(what.torque.m_as("N*m") / (radius_mm / 1e3), "N"), what)


def _torque_per_n(row: Rollers | Balls) -> float:
    if isinstance(row, Rollers):
        return row.rib_arm_m * _RIB_FRICTION * math.cos(row.half_angle_rad)
    return _BALL_FRICTION * row.pitch_m / 2
