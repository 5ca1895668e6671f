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
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.models.validity import in_range, positive
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q

if TYPE_CHECKING:
    from twoshaft.units.sections.fasteners import Wrench


class ToolKind(StrEnum):
    """How the wrench tells its torque: it shows it, or it clicks at a set value.

    Examples
    --------
    >>> TorqueWrench.of(unit.fasteners.wrenches[0]).kind
    <ToolKind.SETTING: 'setting'>
    """

    INDICATING = "indicating"
    SETTING = "setting"


# Classes that keep 6 % over their whole range; all others have 4 % above 10 N·m.
_SIX_PERCENT = {ToolKind.INDICATING: "AD", ToolKind.SETTING: "DEFG"}
_CLASSES = {ToolKind.INDICATING: "ABCDE", ToolKind.SETTING: "ABCDEFG"}
_BOUNDARY_NM = 10.0
_LOWEST_SHARE = 0.2


@border(largest=Range("largest torque of the tool", "N*m", 1e-3, 1e4, "ISO 6789"))
def permissible_deviation(largest_nm: float, kind: ToolKind | str, tool_class: str) -> float:
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

    Examples
    --------
    >>> permissible_deviation(Q(50, "N*m"), "setting", "A")
    0.04
    """
    kind = ToolKind(kind)
    letters = _CLASSES[kind]
    if len(tool_class) != 1 or tool_class not in letters:
        raise OutOfRangeError(
            f"class of the {kind} tool",
            repr(tool_class),
            f"{letters[0]} to {letters[-1]}",
            "ISO 6789",
        )
    if tool_class in _SIX_PERCENT[kind] or largest_nm <= _BOUNDARY_NM:
        return 0.06
    return 0.04


_USABLE = Depends(
    "N*m",
    lambda self: Range(
        f"torque on {self.name}",
        "N*m",
        self.usable_from_nm,
        self.high_nm,
        "ISO 6789: from a fifth of the top of the range",
    ),
)


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

    Examples
    --------
    >>> wrench = TorqueWrench.of(unit.fasteners.wrenches[0])
    >>> wrench.name, wrench.suits(Q(1, "kN*m"))
    ('Small torque wrench', False)
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
        return _wrench_of(wrench)

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

    @border(torque=Above("torque", "N*m"))
    def suits(self, torque_nm: float) -> bool:
        """Whether a torque lies in the usable range."""
        return self.usable_from_nm <= torque_nm <= self.high_nm

    @border("N*m", torque=_USABLE)
    def nearest_setting(self, torque_nm: float) -> float:
        """Give the mark of the scale next to a torque [N·m].

        Raises
        ------
        OutOfRangeError
            If the torque is outside the usable range.

        Examples
        --------
        >>> small = TorqueWrench("5 to 25", low_nm=5, high_nm=25, step_nm=0.5, length_m=0.3)
        >>> small.nearest_setting(Q(13.2, "N*m")).m_as("N*m")
        13.0
        """
        steps = round((torque_nm - self.low_nm) / self.step_nm)
        top = math.floor((self.high_nm - self.low_nm) / self.step_nm + 1e-9)
        return self.low_nm + min(steps, top) * self.step_nm

    @border(torque=_USABLE)
    def applied(self, torque_nm: float) -> tuple[Q, Q]:
        """Give the least and the most torque that a setting applies while the tool is in order.

        Half a least count of setting error comes on top of the permissible deviation.

        Examples
        --------
        >>> small = TorqueWrench("5 to 25", low_nm=5, high_nm=25, step_nm=0.5, length_m=0.3)
        >>> [f"{torque.m_as('N*m'):.2f}" for torque in small.applied(Q(20, "N*m"))]
        ['18.96', '21.06']
        """
        return (
            Q((torque_nm - self.step_nm / 2) * (1 - self.tolerance), "N*m"),
            Q((torque_nm + self.step_nm / 2) * (1 + self.tolerance), "N*m"),
        )


@kept()
def _wrench_of(wrench: Wrench) -> TorqueWrench:
    return TorqueWrench(
        wrench.name,
        wrench.low_nm,
        wrench.high_nm,
        wrench.step_nm,
        wrench.length_mm / 1e3,
        ToolKind(wrench.kind),
        wrench.tool_class,
    )


_WRENCH = Range("length of the wrench", "m", 0.03, 3, "workshop wrenches")
_ADAPTER = Depends(
    "m",
    lambda wrench_m: Range(
        "reach of the adapter", "m", 0, wrench_m / 2, "longer ones bend the wrench's rule"
    ),
)
_ANGLE = Range("angle of the adapter", "radian", 0, math.pi, "lever rule")


@border(
    "N*m",
    torque=Above("torque at the bolt", "N*m"),
    wrench=_WRENCH,
    adapter=_ADAPTER,
    angle=_ANGLE,
)
def setting_with_adapter(
    torque_nm: float, wrench_m: float, adapter_m: float, angle_rad: float | None = None
) -> float:
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

    Examples
    --------
    T L/(L + E): 30 N·m at 300 mm and 60 mm straight on.

    >>> setting = setting_with_adapter(Q(30, "N*m"), Q(300, "mm"), Q(60, "mm"))
    >>> f"{setting.m_as('N*m'):.1f}"
    '25.0'
    """
    return torque_nm / _gain(wrench_m, adapter_m, angle_rad)


@border("N*m", setting=Above("setting", "N*m"), wrench=_WRENCH, adapter=_ADAPTER, angle=_ANGLE)
def torque_at_bolt(
    setting_nm: float, wrench_m: float, adapter_m: float, angle_rad: float | None = None
) -> float:
    """Give the torque that the bolt gets from a setting; the inverse of `setting_with_adapter`.

    Examples
    --------
    >>> torque = torque_at_bolt(Q(25, "N*m"), Q(300, "mm"), Q(60, "mm"))
    >>> f"{torque.m_as('N*m'):.1f}"
    '30.0'
    """
    return setting_nm * _gain(wrench_m, adapter_m, angle_rad)


def _gain(wrench_m: float, adapter_m: float, angle_rad: float | None) -> float:
    return 1 + adapter_m / wrench_m * math.cos(angle_rad or 0.0)
