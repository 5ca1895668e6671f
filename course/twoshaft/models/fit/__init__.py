"""Pressed and driven parts: limits, pressure and force, heat, pins, seals, staking.

>>> from twoshaft.models import fit
>>> from twoshaft.units.quantities import Q
>>> pressed = fit.fit(Q(50, "mm"), "H7/p6")
>>> pressed.kind, pressed.least_um, pressed.most_um
('interference', 1, 42)
"""

from twoshaft.models.fit.clips import SeatedClip, SeatedClipLike, clip_faults
from twoshaft.models.fit.driving import BOTH, Ring, crosses_elements, tight_rings
from twoshaft.models.fit.heat import (
    BEARING_LIMIT_C,
    HANDLING_K,
    ROOM_C,
    SEALED_LIMIT_C,
    Warming,
    growth,
    warm_to_assemble,
)
from twoshaft.models.fit.iso286 import Fit, Zone, fit, tolerance_um, zone
from twoshaft.models.fit.pins import (
    NESTED,
    PIN_WALL_MM,
    SPRING_PINS,
    TAPER,
    DrivenPin,
    DrivenPinLike,
    SpringPin,
    TaperPin,
    drive_from,
    driven_pin_faults,
    fork_pin_force,
    pin_margin,
    spring_pin,
)
from twoshaft.models.fit.places import (
    PinPlace,
    Pressed,
    entry_of,
    material,
    pin_of,
    seal_of,
    stake_of,
    taper_pin_of,
)
from twoshaft.models.fit.press import (
    BEARING_STEEL,
    BRONZE,
    CAST_ALUMINIUM,
    STEEL,
    Material,
    Pair,
    Stresses,
    press_force,
    pressure,
    stresses,
    torque_capacity,
)
from twoshaft.models.fit.seals import (
    SealFault,
    SealFitted,
    SealRule,
    Side,
    seal_faults,
    seal_readings,
    tilt,
)
from twoshaft.models.fit.staking import Stake, stake_hold, stake_margin

__all__ = [
    "BEARING_LIMIT_C",
    "BEARING_STEEL",
    "BOTH",
    "BRONZE",
    "CAST_ALUMINIUM",
    "HANDLING_K",
    "NESTED",
    "PIN_WALL_MM",
    "ROOM_C",
    "SEALED_LIMIT_C",
    "SPRING_PINS",
    "STEEL",
    "TAPER",
    "DrivenPin",
    "DrivenPinLike",
    "Fit",
    "Material",
    "Pair",
    "PinPlace",
    "Pressed",
    "Ring",
    "SealFault",
    "SealFitted",
    "SealRule",
    "SeatedClip",
    "SeatedClipLike",
    "Side",
    "SpringPin",
    "Stake",
    "Stresses",
    "TaperPin",
    "Warming",
    "Zone",
    "clip_faults",
    "crosses_elements",
    "drive_from",
    "driven_pin_faults",
    "entry_of",
    "fit",
    "fork_pin_force",
    "growth",
    "material",
    "pin_margin",
    "pin_of",
    "press_force",
    "pressure",
    "seal_faults",
    "seal_of",
    "seal_readings",
    "spring_pin",
    "stake_hold",
    "stake_margin",
    "stake_of",
    "stresses",
    "taper_pin_of",
    "tight_rings",
    "tilt",
    "tolerance_um",
    "torque_capacity",
    "warm_to_assemble",
    "zone",
]
