"""What the drained oil tells: how much was in, and how soon chips sink out of it.

Viscosity over temperature by the equation of Walther as ASTM D341 has it; a small sphere sinks as
Stokes (1851) found. A real chip is flat and sinks slower, so times are the least.
"""

from __future__ import annotations

from twoshaft.models.border import Above, border
from twoshaft.models.validity import in_range
from twoshaft.models.viscosity import WARM, walther
from twoshaft.units.sections.strip import StripOil

GRAVITY = 9.80665
STEEL_KG_PER_LITRE = 7.85
"""Density of steel: common handbook figure."""
MOST_REYNOLDS = 1.0
"""Above, a sphere sinks more than a tenth slower than Stokes says (Clift, Grace and Weber 1978,
from memory)."""


@border("mm**2/s", temperature=WARM)
def viscosity(oil: StripOil, temperature_degC: float) -> float:
    """Kinematic viscosity of the oil.

    Parameters
    ----------
    oil : StripOil
        Its viscosity at 40 °C and 100 °C is used.
    temperature : pint.Quantity
        [°C], -30 to 150.

    Returns
    -------
    pint.Quantity
        [mm²/s]

    Examples
    --------
    >>> f"{viscosity(unit.strip.oil, Q(40, 'degC')):.0f}"
    '75 millimeter ** 2 / second'
    """
    return walther.plain(*oil.viscosity_mm2_per_s, temperature_degC)


def _density(oil: StripOil, celsius: float) -> float:
    """[kg/l]"""
    return oil.density_kg_per_litre / (1 + oil.expansion_per_k * (celsius - oil.reference_c))


@border("minute", size=Above("size of the chip", "um"), temperature=WARM,
        depth=Above("depth", "mm"))  # fmt: skip
def settling_time(
    oil: StripOil, size_um: float, temperature_degC: float, depth_mm: float | None = None,
    solid_kg_per_litre: float = STEEL_KG_PER_LITRE,
) -> float:  # fmt: skip
    """Time in which a round chip sinks through the oil, at rest.

    Parameters
    ----------
    oil : StripOil
    size : pint.Quantity
        Diameter [µm].
    temperature : pint.Quantity
        Of the oil [°C].
    depth : pint.Quantity, optional
        [mm]; the unit's own depth of oil when left out.
    solid_kg_per_litre : float
        Density of the chip [kg/l]; steel when left out.

    Returns
    -------
    pint.Quantity
        [minutes]

    Raises
    ------
    OutOfRangeError
        When the chip is so large, or the oil so thin, that it sinks faster than Stokes holds for.

    Examples
    --------
    Half the size takes four times as long.

    >>> [round(settling_time(unit.strip.oil, Q(size, "um"), Q(20, "degC")).m) for size in (100, 50)]
    [5, 20]
    """
    around = _density(oil, temperature_degC)
    thick = viscosity.plain(oil, temperature_degC)  # mm²/s
    size_mm = size_um / 1000
    speed = (solid_kg_per_litre / around - 1) * GRAVITY * 1000 * size_mm**2 / (18 * thick)  # mm/s
    in_range("Reynolds number of the sinking chip", speed * size_mm / thick, 0, MOST_REYNOLDS,
             "", "Stokes 1851")  # fmt: skip
    return (depth_mm if depth_mm is not None else oil.depth_mm) / speed / 60


@border(size=Above("size of the chip", "um"), temperature=WARM,
        rested=Above("time at rest", "minute", zero=True))  # fmt: skip
def still_floating(
    oil: StripOil, size_um: float, temperature_degC: float, rested_minute: float
) -> float:
    """Part of the chips of one size that is still in the oil after a time at rest.

    They were spread evenly through the oil when it came to rest.

    Parameters
    ----------
    oil, size, temperature
        As for :func:`settling_time`.
    rested : pint.Quantity
        Time at rest [minutes].

    Returns
    -------
    float
        1 to 0.

    Examples
    --------
    >>> round(still_floating(unit.strip.oil, Q(100, "um"), Q(20, "degC"), Q(2, "minute")), 2)
    0.61
    """
    whole = settling_time.plain(oil, size_um, temperature_degC)
    return max(0.0, 1 - rested_minute / whole)


@border("l", litres=Above("drained oil", "l", zero=True), temperature=WARM)
def litres_at(oil: StripOil, litres_l: float, temperature_degC: float) -> float:
    """What oil read in a measuring jug comes to at the reference temperature.

    Parameters
    ----------
    oil : StripOil
    litres : pint.Quantity
        As read in the jug [litres].
    temperature : pint.Quantity
        In the jug [°C].

    Returns
    -------
    pint.Quantity
        [litres]

    Examples
    --------
    >>> f"{litres_at(unit.strip.oil, Q(2, 'l'), Q(60, 'degC')).to('l'):.3f}"
    '1.944 liter'
    """
    return litres_l / (1 + oil.expansion_per_k * (temperature_degC - oil.reference_c))


@border("l", litres=Above("drained oil", "l", zero=True), temperature=WARM)
def litres_missing(oil: StripOil, litres_l: float, temperature_degC: float) -> float:
    """How much a unit was short of its filling when it was drained; minus where it held too much.

    Parameters
    ----------
    oil, litres, temperature
        As for :func:`litres_at`.

    Returns
    -------
    pint.Quantity
        [litres]

    Examples
    --------
    >>> oil = unit.strip.oil
    >>> full = oil.capacity_litre - oil.stays_litre
    >>> f"{abs(litres_missing(oil, Q(full, 'l'), Q(oil.reference_c, 'degC')).m):.3f}"
    '0.000'
    """
    drained = litres_at.plain(oil, litres_l, temperature_degC)
    return oil.capacity_litre - oil.stays_litre - drained
