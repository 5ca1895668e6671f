"""Threaded joints: from torque to clamp, what scatters it, what strips, how bolts interact.

>>> from twoshaft.models import joint
>>> from twoshaft.units.quantities import Q
>>> thread = joint.Thread.named("M8")
>>> seat = joint.Seat.hexagon(thread)
>>> torque = joint.torque_long(Q(18, "kN"), thread, seat, mu_thread=0.12, mu_head=0.12)
>>> f"{torque.m_as('N*m'):.1f} N·m"
'23.7 N·m'
"""

from twoshaft.models.joint.blind import BlindHole, Lock, hydraulic_lock
from twoshaft.models.joint.clamp import (
    TorqueShares,
    assembly_preload,
    clamp_short,
    nut_factor,
    torque_long,
    torque_shares,
    utilisation,
)
from twoshaft.models.joint.face import (
    Face,
    Round,
    Tightening,
    bolt_stiffness,
    rounds_needed,
    spread,
    tighten,
)
from twoshaft.models.joint.friction import (
    MOST_USE,
    STATES,
    ClampBounds,
    ClampSample,
    Friction,
    clamp_bounds,
    clamp_sample,
    torque_for_state,
    worst_utilisation,
)
from twoshaft.models.joint.group import Fastening
from twoshaft.models.joint.patterns import clockwise, crosswise, middle_outwards
from twoshaft.models.joint.stripping import (
    Strip,
    bending_factors,
    boss_factor,
    shear_area_bolt,
    shear_area_hole,
    strip_loads,
)
from twoshaft.models.joint.threads import (
    CLASS_NAMES,
    Seat,
    Strength,
    Thread,
    ThreadLimits,
    limits_6g6h,
    strength,
)
from twoshaft.models.joint.tools import (
    ToolKind,
    TorqueWrench,
    permissible_deviation,
    setting_with_adapter,
    torque_at_bolt,
)

__all__ = [
    "CLASS_NAMES",
    "MOST_USE",
    "STATES",
    "BlindHole",
    "ClampBounds",
    "ClampSample",
    "Face",
    "Fastening",
    "Friction",
    "Lock",
    "Round",
    "Seat",
    "Strength",
    "Strip",
    "Thread",
    "ThreadLimits",
    "Tightening",
    "ToolKind",
    "TorqueShares",
    "TorqueWrench",
    "assembly_preload",
    "bending_factors",
    "bolt_stiffness",
    "boss_factor",
    "clamp_bounds",
    "clamp_sample",
    "clamp_short",
    "clockwise",
    "crosswise",
    "hydraulic_lock",
    "limits_6g6h",
    "middle_outwards",
    "nut_factor",
    "permissible_deviation",
    "rounds_needed",
    "setting_with_adapter",
    "shear_area_bolt",
    "shear_area_hole",
    "spread",
    "strength",
    "strip_loads",
    "tighten",
    "torque_at_bolt",
    "torque_for_state",
    "torque_long",
    "torque_shares",
    "utilisation",
    "worst_utilisation",
]
