"""Torque tools: what their class allows, their range, and adapters that change the lever.

Sources: ISO 6789 (permissible deviation of setting tools of class A from a maker's manual that
quotes it; the other classes from memory of the 2003 edition); lever rule of in-line and angled
adapters from wrench manuals.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

if TYPE_CHECKING:
    from twoshaft.units.sections.fasteners import Wrench


class ToolKind(StrEnum):
    """How the wrench tells its torque: it shows it, or it clicks at a set value."""

    INDICATING = "indicating"
    SETTING = "setting"


# Classes that keep 6 % over their whole range; all others have 4 % above 10 N·m.
_SIX_PERCENT = {ToolKind.INDICATING: "AD", ToolKind.SETTING: "DEFG"}
_CLASSES = {ToolKind.INDICATING: "ABCDE", ToolKind.SETTING: "ABCDEFG"}
_BOUNDARY_NM = 10.0
_LOWEST_SHARE = 0.2


def permissible_deviation(largest: Q, kind: ToolKind | str, tool_class: str) -> float:
    """Give the share by which a tool in order may be off.

    Parameters
    ----------
    largest : torque
        The top of the tool's range: 4 % (most classes) above 10 N·m, 6 % at 10 N·m and below.
    kind : ToolKind
    tool_class : str
        One letter, A to E for indicating tools, A to G for setting tools.

    Raises
    ------
    OutOfRangeError
        Unknown class, or a range above 10 000 N·m.
    """
    top = in_range("largest torque of the tool", largest, 1e-3, 1e4, "N*m", "ISO 6789")
    kind = ToolKind(kind)
    letters = _CLASSES[kind]
    if len(tool_class) != 1 or tool_class not in letters:
        raise OutOfRangeError(
            f"class of the {kind} tool",
            repr(tool_class),
            f"{letters[0]} to {letters[-1]}",
            "ISO 6789",
        )
    if tool_class in _SIX_PERCENT[kind] or top <= _BOUNDARY_NM:
        return 0.06
    return 0.04


@dataclass(frozen=True)
class TorqueWrench:
    """A torque wrench.

    Parameters
    ----------
    low_nm, high_nm : float
        Scale [N·m]. No tolerance is promised below a fifth of the top, so the usable range
        starts there even if the scale starts lower.
    step_nm : float
        Least count of the scale [N·m].
    kind, tool_class
        As for `permissible_deviation`.
    length_m : float
        From the square drive to the middle of the grip [m].

    Raises
    ------
    OutOfRangeError
        Reversed scale, step outside the scale, length not above zero, unknown class.
    """

    name: str
    low_nm: float
    high_nm: float
    step_nm: float
    length_m: float
    kind: ToolKind = ToolKind.SETTING
    tool_class: str = "A"

    @classmethod
    def of(cls, wrench: Wrench) -> TorqueWrench:
        """A wrench of the unit file."""
        return cls(
            wrench.name,
            wrench.low_nm,
            wrench.high_nm,
            wrench.step_nm,
            wrench.length_mm / 1e3,
            ToolKind(wrench.kind),
            wrench.tool_class,
        )

    def __post_init__(self) -> None:
        low = positive("bottom of the scale", Q(self.low_nm, "N*m"), "N*m")
        high = in_range("top of the scale", Q(self.high_nm, "N*m"), low, 1e4, "N*m", "ISO 6789")
        if high == low:
            raise OutOfRangeError(
                "top of the scale", f"{high:g} N·m", f"above {low:g} N·m", "scale"
            )
        in_range("least count", Q(self.step_nm, "N*m"), 1e-6, high - low, "N*m", "the scale")
        in_range("length of the wrench", Q(self.length_m, "m"), 0.03, 3, "m", "workshop wrenches")
        permissible_deviation(Q(high, "N*m"), self.kind, self.tool_class)

    @property
    def tolerance(self) -> float:
        """Permissible deviation as a share of the reading."""
        return permissible_deviation(Q(self.high_nm, "N*m"), self.kind, self.tool_class)

    @property
    def usable_from_nm(self) -> float:
        """Lowest torque for which the tolerance is promised [N·m]."""
        return max(self.low_nm, _LOWEST_SHARE * self.high_nm)

    def suits(self, torque: Q) -> bool:
        """Whether a torque lies in the usable range."""
        value = positive("torque", torque, "N*m")
        return self.usable_from_nm <= value <= self.high_nm

    def nearest_setting(self, torque: Q) -> Q:
        """Give the mark of the scale next to a torque [N·m].

        Raises
        ------
        OutOfRangeError
            If the torque is outside the usable range.
        """
        value = self._usable(torque)
        steps = round((value - self.low_nm) / self.step_nm)
        top = math.floor((self.high_nm - self.low_nm) / self.step_nm + 1e-9)
        return Q(self.low_nm + min(steps, top) * self.step_nm, "N*m")

    def applied(self, torque: Q) -> tuple[Q, Q]:
        """Give the least and the most torque that a setting applies while the tool is in order.

        Half a least count of setting error comes on top of the permissible deviation.
        """
        value = self._usable(torque)
        return (
            Q((value - self.step_nm / 2) * (1 - self.tolerance), "N*m"),
            Q((value + self.step_nm / 2) * (1 + self.tolerance), "N*m"),
        )

    def _usable(self, torque: Q) -> float:
        return in_range(
            f"torque on {self.name}",
            torque,
            self.usable_from_nm,
            self.high_nm,
            "N*m",
            "ISO 6789: from a fifth of the top of the range",
        )


def setting_with_adapter(torque: Q, wrench: Q, adapter: Q, angle: Q | None = None) -> Q:
    """Give what to set on the wrench so that the bolt gets a torque: T L/(L + E cos a) [N·m].

    Parameters
    ----------
    torque : torque
        Wanted at the bolt.
    wrench : length
        L, from the square drive to the middle of the grip.
    adapter : length
        E, from the square drive to the middle of the bolt.
    angle : angle, optional
        0 straight on (the default), 90 degrees changes nothing, 180 folds back over the wrench.

    Raises
    ------
    OutOfRangeError
        A length not above zero, an adapter longer than half the wrench, an angle outside 0 to
        180 degrees, or a wrong kind of unit.
    """
    return Q(positive("torque at the bolt", torque, "N*m") / _gain(wrench, adapter, angle), "N*m")


def torque_at_bolt(setting: Q, wrench: Q, adapter: Q, angle: Q | None = None) -> Q:
    """Give the torque that the bolt gets from a setting; the inverse of `setting_with_adapter`."""
    return Q(positive("setting", setting, "N*m") * _gain(wrench, adapter, angle), "N*m")


def _gain(wrench, adapter, angle) -> float:
    length = in_range("length of the wrench", wrench, 0.03, 3, "m", "workshop wrenches")
    reach = in_range(
        "reach of the adapter", adapter, 0, length / 2, "m", "longer ones bend the wrench's rule"
    )
    turned = Q(0, "degree") if angle is None else angle
    radians = in_range("angle of the adapter", turned, 0, math.pi, "radian", "lever rule")
    return 1 + reach / length * math.cos(radians)
