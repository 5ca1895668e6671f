"""Tools at the bench: where each stands at the unit, and through which ring a driver's force goes.

No drawing in here: ``plots/bench_tools.py`` draws what this gives.
"""

from __future__ import annotations

from twoshaft.models.tooling.pressed import PressedBearing, pressed_bearings
from twoshaft.models.tooling.standing import ToolStands, Touch, drives, tools_standing
from twoshaft.models.tooling.wrench import wrench_standing

__all__ = [
    "PressedBearing",
    "ToolStands",
    "Touch",
    "drives",
    "pressed_bearings",
    "tools_standing",
    "wrench_standing",
]
