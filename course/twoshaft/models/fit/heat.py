"""Heat the outer part, cool the inner one, or both, so that they slide together by hand.

Growth is alpha D dT. The parts must not only come free: while they are handled they lose some of
it, so a margin of temperature comes on top. Rolling bearings are warmed to 120 °C at most, sealed
or greased ones to 80 °C, never with a flame (trade practice, from memory; the bearing maker's
figure wins).
"""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.units.quantities import Q

BEARING_LIMIT_C = 120.0
SEALED_LIMIT_C = 80.0
ROOM_C = 20.0
HANDLING_K = 25.0  # 20 to 30 K, a bearing maker's mounting page
_COLDEST_C, _HOTTEST_C = -200.0, 400.0
_PARTS = "-200 to 400 °C, where these expansions hold"

_EXPANSION = Range("thermal expansion", "1/K", 1e-7, 1e-4, "metals")


@border(
    "um",
    diameter=Above("diameter", "m"),
    expansion=_EXPANSION,
    rise=Range("change of temperature", "delta_degC", -220, 380, _PARTS),
)
def growth(diameter_m: float, expansion_per_k: float, rise_k: float) -> float:
    """Give what a diameter grows by: alpha D dT [um].

    Parameters
    ----------
    diameter : length
    expansion : 1/temperature
    rise : temperature difference
        Negative for cooling.

    Examples
    --------
    50 mm of steel (11.5e-6 for each kelvin), 60 K warmer: arithmetic.

    >>> f"{growth(Q(50, 'mm'), Q(11.5e-6, '1/K'), Q(60, 'delta_degC')):.1f}"
    '34.5 micrometer'
    """
    return expansion_per_k * diameter_m * rise_k * 1e6


@dataclass(frozen=True)
class Warming:
    """How to make two parts slide together.

    ``free_c`` is where the hot part just comes free; ``heat_to_c`` has the handling margin on top;
    ``limit_c`` is the hottest the part may get; ``possible`` whether that suffices;
    ``play_um`` the play at the temperature that is used (negative: it still grips).

    Examples
    --------
    >>> warming = warm_to_assemble(Q(40, "um"), Q(60, "mm"), Q(12, "um/m/K"), Q(120, "degC"))
    >>> warming.possible, f"{warming.heat_to:.0f}"
    (True, '101 degree_Celsius')
    """

    free_c: float
    heat_to_c: float
    limit_c: float
    play_um: float

    @property
    def possible(self) -> bool:
        """Whether the part may get that hot."""
        return self.heat_to_c <= self.limit_c

    @property
    def heat_to(self) -> Q:
        """Temperature to warm to [°C]."""
        return Q(self.heat_to_c, "degC")


def _grips(diameter_um: float) -> Range:
    most = 0.01 * diameter_um
    return Range("interference", "um", -most, most, "1 % of the seat")


@border(
    interference=Depends("um", _grips),
    diameter=Above("diameter of the seat", "um"),
    expansion=_EXPANSION,
    limit=Depends(
        "degC", lambda room_c: Range("hottest allowed", "degC", room_c, _HOTTEST_C, _PARTS)
    ),
    room=Range("room temperature", "degC", -20, 50, "workshops"),
    handling=Range("handling margin", "delta_degC", 0, 100, "practice"),
    shaft_at=Depends(
        "degC",
        lambda room_c: Range("temperature of the shaft", "degC", _COLDEST_C, room_c, _PARTS),
    ),
    shaft_expansion=Range("expansion of the shaft", "1/K", 1e-7, 1e-4, "metals"),
)
def warm_to_assemble(
    interference_um: float,
    diameter_um: float,
    expansion_per_k: float,
    limit_c: float,
    *,
    room_c: float = ROOM_C,
    handling_k: float = HANDLING_K,
    shaft_at_c: float | None = None,
    shaft_expansion_per_k: float | None = None,
) -> Warming:
    """Give how hot the outer part must be, and whether it may be.

    Parameters
    ----------
    interference : length
        The most that the fit can have, on the diameter; below zero is play and needs no heat.
    diameter : length
        Of the seat.
    expansion : 1/temperature
        Of the outer part.
    limit : temperature
        The hottest it may get: `BEARING_LIMIT_C`, `SEALED_LIMIT_C` or the maker's.
    room : temperature, optional
        20 °C if left out.
    handling : temperature difference, optional
        25 K if left out.
    shaft_at, shaft_expansion : optional, both or none
        Temperature of a cooled shaft, not above room, and its expansion.

    Raises
    ------
    OutOfRangeError
        A limit below room, a shaft warmer than room, or any quantity out of range.

    Examples
    --------
    30 um on 40 mm of bearing steel (10.9e-6 for each kelvin): 69 K, and 25 K to handle it.

    >>> limit = Q(BEARING_LIMIT_C, "degC")
    >>> warm = warm_to_assemble(Q(30, "um"), Q(40, "mm"), Q(10.9e-6, "1/K"), limit)
    >>> f"{warm.free_c:.0f}", f"{warm.heat_to_c:.0f}", warm.possible
    ('89', '114', True)
    """
    if (shaft_at_c is None) != (shaft_expansion_per_k is None):
        raise OutOfRangeError("cooled shaft", "half given", "temperature and expansion", "call")
    needed = interference_um
    if shaft_at_c is not None and shaft_expansion_per_k is not None:
        needed = needed - shaft_expansion_per_k * diameter_um * (room_c - shaft_at_c)
    growth_um_per_k = expansion_per_k * diameter_um
    rise = max(needed, 0.0) / growth_um_per_k
    heat_to = room_c + rise + handling_k if needed > 0 else room_c
    used = min(heat_to, limit_c)
    return Warming(room_c + rise, heat_to, limit_c, growth_um_per_k * (used - room_c) - needed)
