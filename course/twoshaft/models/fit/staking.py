"""A staked nut: what torque its dented collar holds once the clamp is gone.

The collar is punched into a slot of the shaft. To turn, the nut must shear the tab off along the
slot's mouth, or crush the part of it that stands in the slot, whichever takes less. A tab holds
once: its metal is worked hard and thin, so a nut that was undone is replaced.
"""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

_SHEAR_SHARE = 0.577  # von Mises: shear yield over tensile yield
_CRUSH_SHARE = 1.5  # bearing pressure at yield over tensile yield, common practice, no source


@dataclass(frozen=True)
class Stake:
    """Torque at which the tabs shear, and at which they crush [N·m]."""

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


def stake_hold(
    radius: Q, slot_width: Q, tab_length: Q, depth: Q, yield_strength: Q, tabs: int = 1
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
    """
    r = positive("radius of the slot", radius, "m")
    width = in_range("width of the slot", slot_width, 0.5, r * 1e3, "mm", "the shaft") / 1e3
    length = in_range("length of the tab", tab_length, 0.2, 20, "mm", "collars of nuts") / 1e3
    deep = in_range("depth of the tab", depth, 0, 10, "mm", "slots of shafts") / 1e3
    strong = in_range("yield strength of the nut", yield_strength, 50, 2000, "MPa", "metals") * 1e6
    count = int(in_range("number of tabs", tabs, 1, 6, "", "slots of a shaft"))
    if count != tabs:
        raise OutOfRangeError("number of tabs", f"{tabs:g}", "whole numbers", "slots of a shaft")
    return Stake(
        shear_nm=count * r * _SHEAR_SHARE * strong * width * length,
        crush_nm=count * r * _CRUSH_SHARE * strong * deep * length,
    )


def stake_margin(stake: Stake, turning: Q) -> float:
    """Give how many times the torque that tries to turn the loose nut the stake holds.

    Parameters
    ----------
    turning : torque
        Drag of the bearing or gear on a nut that has lost its clamp.
    """
    return stake.holds_nm / positive("torque on the loose nut", turning, "N*m")
