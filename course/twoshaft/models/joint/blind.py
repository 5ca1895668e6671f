"""Oil left in a blind hole: when the bolt locks on it, and what the boss must bear.

The bolt is a piston. Until its tip meets the oil nothing happens; from then on every part of a
turn squeezes a volume that has nowhere to go. Pressure follows from the oil's bulk modulus, which
grows with the pressure (Murnaghan), and from how much the boss gives (a thick tube by Lamé).
Nothing leaks along the threads: that is the worst case, and near the truth for thick oil, sealant,
or a bolt run down fast.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Depends, Range, border
from twoshaft.models.joint.clamp import MU_THREAD, TORQUE, lever_m, thread_lever_m
from twoshaft.models.joint.threads import Seat, Thread
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

OIL_BULK_GPA = 1.5  # mineral oil near room temperature, from memory
_STIFFENING = 10.0  # growth of the bulk modulus with pressure, liquids about 10, from memory


@dataclass(frozen=True)
class BlindHole:
    """A blind tapped hole.

    Parameters
    ----------
    depth_m : float
        Full depth below the face that the head seats against the part on [m].
    bolt_reach_m : float
        How far the bolt's tip stands in the hole when the head is seated [m].
    boss_m : float
        Outer diameter of the boss [m].
    elastic_pa, poisson : float
        Of the boss.
    tensile_pa : float
        Tensile strength of the boss [Pa].

    Raises
    ------
    OutOfRangeError
        A bolt that is longer than its hole, lengths not above zero, strengths out of range.

    Examples
    --------
    >>> hole = BlindHole(depth_m=0.020, bolt_reach_m=0.015, boss_m=0.016)
    >>> f"{(hole.depth_m - hole.bolt_reach_m) * 1e3:.0f} mm are left under the bolt"
    '5 mm are left under the bolt'
    """

    depth_m: float
    bolt_reach_m: float
    boss_m: float
    elastic_pa: float = 70e9
    poisson: float = 0.33
    tensile_pa: float = 200e6

    def __post_init__(self) -> None:
        depth = positive("depth of the blind hole", Q(self.depth_m, "m"), "mm")
        in_range(
            "reach of the bolt", Q(self.bolt_reach_m, "m"), 0.1, depth, "mm", "the hole's depth"
        )
        positive("boss diameter", Q(self.boss_m, "m"), "m")
        in_range("elastic modulus", Q(self.elastic_pa, "Pa"), 1, 500, "GPa", "metals")
        in_range("Poisson's ratio", self.poisson, 0, 0.5, "", "elastic solids")
        in_range("tensile strength", Q(self.tensile_pa, "Pa"), 50, 2000, "MPa", "metals")


@dataclass(frozen=True)
class Lock:
    """What oil in a blind hole does.

    ``room_m3`` is the space left under a seated bolt, ``oil_m3`` the oil, ``short_m`` how far the
    head still stands off when the bolt meets the oil (0 if it never does), ``turns_short`` the same
    in turns. ``pressure_pa`` is the pressure the wrench can drive before it reads its torque, or
    the pressure with the head seated if that is less; ``stand_off_m`` what is then left under the
    head; ``hoop_pa`` the stress at the wall; ``splits`` whether that passes the tensile strength;
    ``lost_n`` the clamp that the wrench reads but the joint does not get.

    Examples
    --------
    >>> m8 = Thread.named("M8")
    >>> hole = BlindHole(depth_m=0.020, bolt_reach_m=0.015, boss_m=0.016)
    >>> lock = hydraulic_lock(hole, m8, Seat.hexagon(m8), Q(0.05, "cm**3"), Q(20, "N*m"), 0.12)
    >>> lock.locks, f"{lock.oil_m3 * 1e9:.0f} mm³ of oil in {lock.room_m3 * 1e9:.0f}"
    (False, '50 mm³ of oil in 203')
    """

    room_m3: float
    oil_m3: float
    short_m: float
    turns_short: float
    pressure_pa: float
    stand_off_m: float
    hoop_pa: float
    splits: bool
    lost_n: float

    @property
    def locks(self) -> bool:
        """Whether the bolt meets the oil before its head is down."""
        return self.short_m > 0

    @property
    def pressure(self) -> Q:
        """Pressure in the hole [MPa]."""
        return Q(self.pressure_pa / 1e6, "MPa")


def _fills(hole: BlindHole, thread: Thread) -> Range:
    most_cm3 = _piston_m2(thread) * hole.depth_m * 1e6
    return Range("oil in the hole", "cm**3", 0, most_cm3, "the hole")


def _piston_m2(thread: Thread) -> float:
    return math.pi / 4 * thread.d2_m**2


@border(
    oil=Depends("cm**3", _fills),
    torque=TORQUE,
    mu_thread=MU_THREAD,
    bulk_modulus=Range("bulk modulus", "GPa", 0.1, 5, "oils and pastes"),
)
def hydraulic_lock(
    hole: BlindHole,
    thread: Thread,
    seat: Seat,
    oil_cm3: float,
    torque_nm: float,
    mu_thread: float,
    bulk_modulus_gpa: float | None = None,
) -> Lock:
    """Find where a bolt locks on the oil in its hole and what that does to the boss.

    The head is not down while the oil carries, so only pitch and thread friction take torque: the
    wrench pushes harder on the oil than it would clamp.

    Parameters
    ----------
    hole, thread, seat
        The hole, the bolt's thread, the seat under its head (for the clamp that is lost).
    oil : volume
        Oil or wet sealant in the hole, 0 up to what the hole holds.
    torque : torque
        At which the wrench reads its setting.
    mu_thread : float
        Thread friction, as for `clamp_long`; the head is taken with the same.
    bulk_modulus : pressure, optional
        Of the oil, 0.1 to 5 GPa; left out, mineral oil 1.5 GPa (from memory).

    Raises
    ------
    OutOfRangeError
        More oil than the hole holds, a boss not wider than the thread, or any other quantity out
        of range.

    Examples
    --------
    Half a cubic centimetre stands higher than the room under the tip.

    >>> m8 = Thread.named("M8")
    >>> hole = BlindHole(depth_m=0.020, bolt_reach_m=0.015, boss_m=0.016)
    >>> hydraulic_lock(hole, m8, Seat.hexagon(m8), Q(0.5, "cm**3"), Q(20, "N*m"), 0.12).splits
    True
    """
    outer, inner = hole.boss_m, thread.d_m
    if outer <= inner * 1.05:
        raise OutOfRangeError(
            "boss diameter",
            f"{outer * 1e3:g} mm",
            f"above {inner * 1.05e3:g} mm",
            "a wall is needed",
        )
    area = _piston_m2(thread)
    room = area * (hole.depth_m - hole.bolt_reach_m)
    volume = oil_cm3 * 1e-6
    bulk = (OIL_BULK_GPA if bulk_modulus_gpa is None else bulk_modulus_gpa) * 1e9
    mu = mu_thread
    thread_lever = thread_lever_m(thread, mu)
    push = torque_nm / thread_lever
    if volume <= room:
        return Lock(room, volume, 0.0, 0.0, 0.0, 0.0, 0.0, False, 0.0)
    short = (volume - room) / area
    # Thick tube: relative growth of the bore's section for each pascal.
    walls = (outer**2 + inner**2) / (outer**2 - inner**2)
    swells = 2 / hole.elastic_pa * (walls + hole.poisson)

    def too_much(pascal: float) -> float:
        """Oil that a seated bolt leaves no room for at this pressure [m3]."""
        oil_now = volume * (1 + _STIFFENING * pascal / bulk) ** (-1 / _STIFFENING)
        return oil_now - room * (1 + swells * pascal)

    pressure = push / area
    left = max(too_much(pressure), 0.0)
    if left == 0:
        pressure = _falls_to_zero(too_much, pressure)
    stand_off = left / (area * (1 + swells * pressure))
    hoop = pressure * walls
    return Lock(
        room_m3=room,
        oil_m3=volume,
        short_m=short,
        turns_short=short / thread.pitch_m,
        pressure_pa=pressure,
        stand_off_m=stand_off,
        hoop_pa=hoop,
        splits=hoop > hole.tensile_pa,
        lost_n=pressure * area * thread_lever / lever_m(thread, seat, mu, mu),
    )


def _falls_to_zero(function, high: float) -> float:
    """Give where a falling function crosses zero between 0 and ``high``, by halving."""
    low = 0.0
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if function(middle) > 0 else (low, middle)
    return high
