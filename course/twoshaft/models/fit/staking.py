"""A staked nut: what torque its dented collar holds once the clamp is gone.

The collar is punched into a slot of the shaft. To turn, the nut must shear the tab off along the
slot's mouth, or crush the part of it that stands in the slot, whichever takes less. A tab holds
once: its metal is worked hard and thin, so a nut that was undone is replaced.
"""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.units.quantities import Q

_SHEAR_SHARE = 0.577  # von Mises: shear yield over tensile yield
_CRUSH_SHARE = 1.5  # bearing pressure at yield over tensile yield, common practice, no source


@dataclass(frozen=True)
class Stake:
    """Torque at which the tabs shear, and at which they crush [N·m].

    Examples
    --------
    >>> stake = Stake(shear_nm=45.0, crush_nm=38.0)
    >>> stake.first, stake.holds_nm
    ('crushes', 38.0)
    """

    shear_nm: float
    crush_nm: float

    @property
    def holds_nm(self) -> float:
        """The smaller of the two [N·m]."""
        return min(self.shear_nm, self.crush_nm)

    @property
    def holds(self) -> Q:
        """Torque that the stake holds [N·m]."""
        return Q(self.holds_nm, "N*m")

    @property
    def first(self) -> str:
        """``crushes`` where the tab is not deep enough in the slot, else ``shears``."""
        return "crushes" if self.crush_nm < self.shear_nm else "shears"


@border(
    radius=Above("radius of the slot", "m"),
    slot_width=Depends(
        "mm",
        lambda radius_m: Range("width of the slot", "mm", 0.5, radius_m * 1e3, "the shaft"),
    ),
    tab_length=Range("length of the tab", "mm", 0.2, 20, "collars of nuts"),
    depth=Range("depth of the tab", "mm", 0, 10, "slots of shafts"),
    yield_strength=Range("yield strength of the nut", "MPa", 50, 2000, "metals"),
    tabs=Range("number of tabs", "", 1, 6, "slots of a shaft"),
)
def stake_hold(
    radius_m: float,
    slot_width_mm: float,
    tab_length_mm: float,
    depth_mm: float,
    yield_strength_mpa: float,
    tabs: float = 1,
) -> Stake:
    """Give the torque that a staked collar holds.

    Parameters
    ----------
    radius : length
        From the axis to the mouth of the slot.
    slot_width : length
        Round the shaft.
    tab_length : length
        Along the shaft, of the part of the collar that was punched in.
    depth : length
        How deep the tab stands in the slot.
    yield_strength : stress
        Of the nut.
    tabs : int
        Number of tabs, 1 to 6.

    Raises
    ------
    OutOfRangeError
        A quantity out of range, or a slot wider than the radius.

    Examples
    --------
    577 MPa shears 3 by 2 mm at 10 mm: arithmetic.

    >>> stake = stake_hold(Q(10, "mm"), Q(3, "mm"), Q(2, "mm"), Q(1, "mm"), Q(1000, "MPa"))
    >>> f"{stake.shear_nm:.2f}", f"{stake.crush_nm:.2f}", stake.first
    ('34.62', '30.00', 'crushes')
    """
    if int(tabs) != tabs:
        raise OutOfRangeError("number of tabs", f"{tabs:g}", "whole numbers", "slots of a shaft")
    levers_m = int(tabs) * radius_m
    width_m, length_m, depth_m = slot_width_mm / 1e3, tab_length_mm / 1e3, depth_mm / 1e3
    strong_pa = yield_strength_mpa * 1e6
    return Stake(
        shear_nm=levers_m * _SHEAR_SHARE * strong_pa * width_m * length_m,
        crush_nm=levers_m * _CRUSH_SHARE * strong_pa * depth_m * length_m,
    )


@border(turning=Above("torque on the loose nut", "N*m"))
def stake_margin(stake: Stake, turning_nm: float) -> float:
    """Give how many times the torque that tries to turn the loose nut the stake holds.

    Parameters
    ----------
    turning : torque
        Drag of the bearing or gear on a nut that has lost its clamp.

    Examples
    --------
    >>> stake_margin(Stake(shear_nm=34.0, crush_nm=30.0), Q(10, "N*m"))
    3.0
    """
    return stake.holds_nm / turning_nm
