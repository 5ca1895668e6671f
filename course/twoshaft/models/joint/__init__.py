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
    assembly_torque,
    clamp_long,
    clamp_short,
    friction_from_test,
    loosening_torque,
    nut_factor,
    torque_long,
    torque_shares,
    torque_short,
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
    half_scatter,
    torque_for_state,
    worst_utilisation,
)
from twoshaft.models.joint.group import Fastening
from twoshaft.models.joint.interaction import tighten_linear
from twoshaft.models.joint.patterns import clockwise, crosswise, middle_outwards
from twoshaft.models.joint.stripping import (
    Strip,
    bending_factors,
    boss_factor,
    engagement_to_carry,
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
    breaking_load,
    limits_6g6h,
    proof_load,
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
    "assembly_torque",
    "bending_factors",
    "bolt_stiffness",
    "boss_factor",
    "breaking_load",
    "clamp_bounds",
    "clamp_long",
    "clamp_sample",
    "clamp_short",
    "clockwise",
    "crosswise",
    "engagement_to_carry",
    "friction_from_test",
    "half_scatter",
    "hydraulic_lock",
    "limits_6g6h",
    "loosening_torque",
    "middle_outwards",
    "nut_factor",
    "permissible_deviation",
    "proof_load",
    "rounds_needed",
    "setting_with_adapter",
    "shear_area_bolt",
    "shear_area_hole",
    "spread",
    "strength",
    "strip_loads",
    "tighten",
    "tighten_linear",
    "torque_at_bolt",
    "torque_for_state",
    "torque_long",
    "torque_shares",
    "torque_short",
    "utilisation",
    "worst_utilisation",
]
