"""Rollers that have not been turned home against their rib.

A taper roller that stands off its rib sits further up the wedge between the raceways. The bearing
then stands taller than it will once it has turned, so that a gauge reads the pair tighter than it
is; and as the rollers do not yet rub on the rib, the cord reads it looser than it is. Both
readings are wrong until the bearing has been turned.

Sources: geometry of the wedge (a roller of included angle 2 b that is s away from its rib opens
the raceways by s tan(2 b)); that rollers must be turned home first is common practice, no source;
so is the number of turns it takes.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.models.bearing.geometry import Rollers
from twoshaft.models.border import Range, border
from twoshaft.units.quantities import Q

_SEATING = "common practice, no source"
OFF_RIB = Q(0.25, "mm")
"""How far rollers stand off their rib on the course's bench after a ring was moved; invented."""


@dataclass(frozen=True)
class Unseated:
    """What an untouched bearing shows.

    Attributes
    ----------
    stands_proud : pint.Quantity
        How much taller the bearing stands than when seated [um]; as much is lost from a preload
        set in this state.
    torque_share : float
        Part of the seated turning torque that the cord feels, 0 to 1.

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> fresh = unseated(row, Q(0.1, "mm"), turns=0)
    >>> f"{fresh.stands_proud:.3f}", fresh.torque_share
    ('24.308 micrometer', 0.0)
    """

    stands_proud: Q
    torque_share: float

    @property
    def sentence(self) -> str:
        """The finding in one sentence."""
        proud = self.stands_proud.m_as("um")
        return (
            f"the rollers stand {proud:.0f} µm proud: set now, the pair loses that much preload "
            f"when it turns, and the cord feels {self.torque_share:.0%} of the true torque"
        )


@border(
    off_rib=Range("distance from the rib", "mm", 0.0, 1.0, _SEATING),
    turns=Range("turns", "", 0.0, math.inf, _SEATING),
    settling_turns=Range("turns to settle", "", 0.2, 20.0, _SEATING),
)
def unseated(
    row: Rollers, off_rib_mm: float, turns: float, settling_turns: float = 3.0
) -> Unseated:
    """Stand and torque of a bearing whose rollers are on their way to the rib.

    Parameters
    ----------
    row : Rollers
    off_rib : pint.Quantity
        How far the rollers stand off the rib before the first turn, 0 to 1 mm.
    turns : float
        Turns under hand load since then, 0 and above.
    settling_turns : float
        Turns in which the distance falls to 1/e, 0.2 to 20.

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> fresh, turned = unseated(row, OFF_RIB, 0), unseated(row, OFF_RIB, 12)
    >>> f"{fresh.stands_proud.m_as('um'):.0f}", f"{turned.stands_proud.m_as('um'):.0f}"
    ('61', '1')
    """
    off_m = off_rib_mm / 1e3
    left = math.exp(-turns / settling_turns)
    opened_m = off_m * left * math.tan(2 * row.half_angle_rad)
    share = 1.0 - left if off_m > 0 else 1.0
    return Unseated(Q(opened_m / math.sin(row.angle_rad) * 1e6, "um"), share)
