"""Parts pressed together: pressure by Lamé, the force to press, the torque it holds.

Two thick tubes of one length, elastic, the pressure even along the seat. Interference is on the
diameter.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.models.validity import in_range
from twoshaft.units.quantities import Q

_SHAPES = "thick tubes of Lamé"
MU_LOW, MU_HIGH = 0.02, 0.4
_LENGTH = Above("length of the seat", "m")
_FRICTION = Range("friction of the seat", "", MU_LOW, MU_HIGH, "press fits")
# Beyond 1 % of the seat the metal yields.
_INTERFERENCE = Depends(
    "um",
    lambda pair: Range(
        "interference", "um", 0, 0.01 * pair.diameter_m * 1e6, "elastic up to 1 % of the seat"
    ),
)


@dataclass(frozen=True)
class Material:
    """A metal of a fit.

    Parameters
    ----------
    elastic_pa, poisson
        Elastic constants.
    expansion_per_k : float
        Linear thermal expansion [1/K].
    yield_pa : float
        Yield strength [Pa].

    Examples
    --------
    >>> STEEL.name, f"{STEEL.expansion_per_k:.3g} per K"
    ('steel', '1.15e-05 per K')
    """

    name: str
    elastic_pa: float
    poisson: float
    expansion_per_k: float
    yield_pa: float

    def __post_init__(self) -> None:
        name = self.name
        in_range(f"elastic modulus of {name}", Q(self.elastic_pa, "Pa"), 1, 500, "GPa", "metals")
        in_range(f"Poisson's ratio of {name}", self.poisson, 0, 0.5, "", "elastic solids")
        in_range(
            f"expansion of {name}", Q(self.expansion_per_k, "1/K"), 1e-7, 1e-4, "1/K", "metals"
        )
        in_range(f"yield strength of {name}", Q(self.yield_pa, "Pa"), 10, 3000, "MPa", "metals")


# Expansion: Callister table B.6 for steel and aluminium, a maker's bore-growth table for bearing
# steel; elastic constants and yield strengths from memory, of common grades.
STEEL = Material("steel", 207e9, 0.292, 11.5e-6, 350e6)
BEARING_STEEL = Material("bearing steel", 207e9, 0.29, 10.91e-6, 1500e6)
CAST_ALUMINIUM = Material("cast aluminium", 71e9, 0.33, 21.5e-6, 150e6)
BRONZE = Material("bronze", 105e9, 0.34, 18e-6, 150e6)


@dataclass(frozen=True)
class Pair:
    """A hub on a shaft.

    Parameters
    ----------
    diameter_m : float
        Of the seat [m].
    outer_m : float
        Outer diameter of the hub [m].
    bore_m : float
        Bore of the shaft, 0 for a solid one [m].
    hub, shaft : Material

    Raises
    ------
    OutOfRangeError
        Lengths that are not in the order bore, seat, outer diameter, or a wall under 2 %.

    Examples
    --------
    >>> pair = Pair.of(Q(30, "mm"), Q(60, "mm"))
    >>> f"{pair.hub_ratio:.3f}", pair.shaft_ratio, pair.hub is STEEL
    ('1.667', 1.0, True)
    """

    diameter_m: float
    outer_m: float
    bore_m: float = 0.0
    hub: Material = STEEL
    shaft: Material = STEEL

    def __post_init__(self) -> None:
        d = in_range("diameter of the seat", Q(self.diameter_m, "m"), 0.5, 1000, "mm", _SHAPES)
        thin = "the wall must be at least 2 % of the seat"
        in_range("outer diameter of the hub", Q(self.outer_m, "m"), 1.02 * d, math.inf, "mm", thin)
        in_range("bore of the shaft", Q(self.bore_m, "m"), 0, 0.98 * d, "mm", thin)

    @classmethod
    @border(
        diameter=Above("diameter of the seat", "m"),
        outer=Above("outer diameter of the hub", "m"),
        bore=Above("bore of the shaft", "m", zero=True),
    )
    def of(
        cls,
        diameter_m: float,
        outer_m: float,
        bore_m: float | None = None,
        hub: Material = STEEL,
        shaft: Material = STEEL,
    ) -> Pair:
        """Build a pair from lengths, without a bore if it is left out.

        Examples
        --------
        >>> f"{Pair.of(Q(30, 'mm'), outer=Q(6, 'cm')).hub_ratio:.4f}"  # (60² + 30²)/(60² - 30²)
        '1.6667'
        """
        return cls(diameter_m, outer_m, 0.0 if bore_m is None else bore_m, hub, shaft)

    @property
    def hub_ratio(self) -> float:
        """(D² + d²)/(D² - d²) of the hub: hoop stress at its bore over pressure."""
        return (self.outer_m**2 + self.diameter_m**2) / (self.outer_m**2 - self.diameter_m**2)

    @property
    def shaft_ratio(self) -> float:
        """(d² + b²)/(d² - b²) of the shaft, 1 for a solid one."""
        return (self.diameter_m**2 + self.bore_m**2) / (self.diameter_m**2 - self.bore_m**2)

    @property
    def give_per_pa(self) -> float:
        """Interference over diameter that each pascal takes up [1/Pa]."""
        hub = (self.hub_ratio + self.hub.poisson) / self.hub.elastic_pa
        return hub + (self.shaft_ratio - self.shaft.poisson) / self.shaft.elastic_pa


@border("MPa", interference=_INTERFERENCE)
def pressure(interference_um: float, pair: Pair) -> float:
    """Give the pressure in the seat [MPa].

    Parameters
    ----------
    interference : length, scalar or array
        On the diameter, 0 to 1 % of the seat (beyond that the metal yields).
    pair : Pair

    Raises
    ------
    OutOfRangeError
        A negative or far too large interference, or a wrong kind of unit.

    Examples
    --------
    A solid shaft of one metal with its hub: p = E delta (D² - d²) / (2 d D²), any handbook.

    >>> by_hand_mpa = 207e3 * 0.020 * (60**2 - 30**2) / (2 * 30 * 60**2)
    >>> p = pressure(Q(20, "um"), Pair.of(Q(30, "mm"), outer=Q(60, "mm")))
    >>> f"{p:.2f}", f"{by_hand_mpa:.2f}"
    ('51.75 megapascal', '51.75')
    """
    return interference_um / 1e6 / (pair.diameter_m * pair.give_per_pa) / 1e6


@border("kN", interference=_INTERFERENCE, length=_LENGTH, friction=_FRICTION)
def press_force(interference_um: float, pair: Pair, length_m: float, friction: float) -> float:
    """Give the force that pushes the hub over its whole seat: pi d L p mu [kN].

    Parameters
    ----------
    interference, pair
        As for `pressure`.
    length : length
        Of the seat.
    friction : float
        0.02 to 0.4: dry steel about 0.12 to 0.15, oiled 0.05 to 0.08.

    Examples
    --------
    51.75 MPa on a seat of 30 by 20 mm at friction 0.12: arithmetic.

    >>> hub = Pair.of(Q(30, "mm"), outer=Q(60, "mm"))
    >>> f"{press_force(Q(20, 'um'), hub, Q(20, 'mm'), 0.12):.2f}"
    '11.71 kilonewton'
    """
    area_m2 = math.pi * pair.diameter_m * length_m
    return pressure.plain(interference_um, pair) * 1e6 * area_m2 * friction / 1e3


@border("N*m", interference=_INTERFERENCE, length=_LENGTH, friction=_FRICTION)
def torque_capacity(interference_um: float, pair: Pair, length_m: float, friction: float) -> float:
    """Give the torque at which the seat slips: F d/2 [N·m]; parameters as `press_force`.

    Examples
    --------
    >>> hub = Pair.of(Q(30, "mm"), outer=Q(60, "mm"))
    >>> f"{torque_capacity(Q(20, 'um'), hub, Q(20, 'mm'), 0.12):.0f}"  # 11.71 kN at 15 mm
    '176 meter * newton'
    """
    force_n = press_force.plain(interference_um, pair, length_m, friction) * 1e3
    return force_n * pair.diameter_m / 2


@dataclass(frozen=True)
class Stresses:
    """Stress at the seat [Pa]: hoop and equivalent (largest shear) in hub and shaft.

    Examples
    --------
    >>> found = stresses(Q(30, "um"), Pair.of(Q(30, "mm"), Q(60, "mm")))
    >>> f"{found.hub_hoop_pa / 1e6:.0f} MPa", found.hub_yields
    ('129 MPa', False)
    """

    hub_hoop_pa: float
    hub_equivalent_pa: float
    shaft_equivalent_pa: float
    hub_yields: bool
    shaft_yields: bool


@border(interference=_INTERFERENCE)
def stresses(interference_um: float, pair: Pair) -> Stresses:
    """Give the stresses at the seat; the hub yields first at its bore, a hollow shaft at its own.

    Equivalent stress by the largest shear (Tresca): hoop plus pressure in the hub, twice the
    pressure over the wall's share in a hollow shaft, the pressure itself in a solid one.

    Examples
    --------
    >>> hub = stresses(Q(20, "um"), Pair.of(Q(30, "mm"), outer=Q(60, "mm")))
    >>> f"{hub.hub_hoop_pa / 1e6:.2f}", hub.hub_yields  # 51.75 MPa times 5/3
    ('86.25', False)
    """
    p = float(pressure.plain(interference_um, pair)) * 1e6
    hoop = p * pair.hub_ratio
    hub = hoop + p
    hollow = pair.bore_m > 0
    shaft = p * (pair.shaft_ratio + 1) if hollow else p
    return Stresses(hoop, hub, shaft, hub > pair.hub.yield_pa, shaft > pair.shaft.yield_pa)
