"""Torque wrench with an adapter: setting, reach and angle, and what the bolt gets."""

from __future__ import annotations

from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.joint import TorqueWrench, setting_with_adapter, torque_at_bolt
from twoshaft.rigs.instrument import Instrument, within
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

LONGEST_MM = 100.0


class WrenchBench(Instrument):
    """A torque wrench of the unit, with an adapter. For lessons: it says what the bolt gets.

    Parameters
    ----------
    unit : Unit
    wrench : str
        Id of the wrench.
    wanted_nm : float
        Torque that the bolt should get [N·m].
    """

    screen = "wrench"
    name = "Torque wrench with an adapter, seen from above"

    def __init__(self, unit: Unit, wrench: str, wanted_nm: float) -> None:
        known = {} if unit.fasteners_if_any is None else {w.id: w for w in unit.fasteners.wrenches}
        if wrench not in known:
            raise CourseError(
                f"the unit has no wrench {wrench!r}", mend=f"use one of: {', '.join(known)}"
            )
        entry = known[wrench]
        self.length = Q(entry.length_mm, "mm")
        self.wanted = Q(wanted_nm, "N*m")
        self.tool = TorqueWrench.of(entry)
        self.tool.nearest_setting(self.wanted)
        super().__init__(
            {
                "low": self.tool.usable_from_nm,
                "high": entry.high_nm,
                "step": entry.step_nm,
                "length": entry.length_mm,
                "reach": min(entry.length_mm / 3, LONGEST_MM),
                "wanted": wanted_nm,
                "readingsOnly": False,
            },
            {"setting": wanted_nm, "reach": 60, "angle": 0},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """What the bolt gets."""
        setting = Q(within(state, "setting", self.tool.usable_from_nm, self.tool.high_nm), "N*m")
        reach = Q(within(state, "reach", 0, self.about["reach"]), "mm")
        angle = Q(within(state, "angle", 0, 180), "degree")
        gets = torque_at_bolt(setting, self.length, reach, angle)
        right = setting_with_adapter(self.wanted, self.length, reach, angle).m_as("N*m")
        off = gets.m_as("N*m") / self.wanted.m_as("N*m") - 1
        words = (
            f"Set to {setting.m_as('N*m'):.1f} N·m; adapter {reach.m_as('mm'):.0f} mm long, "
            f"{angle.m_as('degree'):.0f}° off straight."
        )
        told = "as wanted" if abs(off) < 0.01 else f"{abs(100 * off):.0f} % too {_way(off)}"
        return {
            "words": words,
            "finding": (
                f"The bolt gets {gets.m_as('N*m'):.1f} N·m: {told}. For "
                f"{self.wanted.m_as('N*m'):g} N·m set {right:.1f} N·m."
            ),
        }


def _way(off: float) -> str:
    return "much" if off > 0 else "little"


def wrench_bench(unit: Unit, wrench: str, *, wanted_nm: float) -> WrenchBench:
    """A torque wrench with an adapter to be set.

    Parameters
    ----------
    unit, wrench, wanted_nm
        As for `WrenchBench`.

    Returns
    -------
    WrenchBench
        Something a notebook displays.

    Raises
    ------
    CourseError
        When the unit has no such wrench, or the torque lies outside its range.
    """
    return WrenchBench(unit, wrench, wanted_nm)
