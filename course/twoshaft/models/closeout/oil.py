"""Which oil: grades of SAE J306, and how much of it goes in."""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.models.border import Above, Range, border
from twoshaft.models.viscosity import WARM
from twoshaft.units.sections.strip import StripOil

STIFF_MPA_S = 150_000
"""A winter grade is no stiffer than this at its temperature [mPa·s]: SAE J306."""
WINTER_C = {"70W": -55, "75W": -40, "80W": -26, "85W": -12}
"""Temperature at which each winter grade must still flow [°C]: SAE J306, February 2019, as
printed at pmlubrication.com.au/charts."""


@dataclass(frozen=True)
class HotGrade:
    """A grade by its viscosity at 100 °C [mm²/s]: from the first figure to below the second.

    Examples
    --------
    >>> [one.name for one in HOT_GRADES if one.least <= 15 < one.below]
    ['90']
    """

    name: str
    least: float
    below: float


HOT_GRADES = (
    HotGrade("65", 3.8, 5.0),
    HotGrade("70", 5.0, 6.5),
    HotGrade("75", 6.5, 8.5),
    HotGrade("80", 8.5, 11.0),
    HotGrade("85", 11.0, 13.5),
    HotGrade("90", 13.5, 18.5),
    HotGrade("110", 18.5, 24.0),
    HotGrade("140", 24.0, 32.5),
    HotGrade("190", 32.5, 41.0),
    HotGrade("250", 41.0, math.inf),
)
"""SAE J306, February 2019, as printed at pmlubrication.com.au/charts."""


@border(at_100=Range("viscosity at 100 °C", "mm**2/s", 3.8, 1000, "SAE J306"))
def hot_grade(at_100_mm2_per_s: float) -> str:
    """Grade of an oil by its viscosity at 100 °C.

    Parameters
    ----------
    at_100 : pint.Quantity
        [mm²/s], 3.8 and above.

    Returns
    -------
    str
        As on the label behind the W: SAE J306.

    Examples
    --------
    >>> hot_grade(Q(11.5, "mm**2/s"))
    '85'
    """
    return next(one.name for one in HOT_GRADES if at_100_mm2_per_s < one.below)


@border("l", temperature=WARM)
def litres_to_fill(oil: StripOil, temperature_degC: float) -> float:
    """What a dry unit takes, as it is measured at the oil's temperature.

    Parameters
    ----------
    oil : StripOil
        Its filling, stated at its reference temperature.
    temperature : pint.Quantity
        Of the oil in the jug [°C].

    Returns
    -------
    pint.Quantity
        [litres]

    Examples
    --------
    >>> f"{litres_to_fill(unit.strip.oil, Q(30, 'degC')).to('l'):.3f}"
    '2.115 liter'
    """
    return oil.capacity_litre * (1 + oil.expansion_per_k * (temperature_degC - oil.reference_c))


def kilograms_to_fill(oil: StripOil) -> float:
    """What a dry unit takes, by weight: the same at every temperature.

    Parameters
    ----------
    oil : StripOil

    Returns
    -------
    float
        [kg]

    Examples
    --------
    >>> f"{kilograms_to_fill(unit.strip.oil):.3f}"
    '1.848'
    """
    return oil.capacity_litre * oil.density_kg_per_litre


@border("mm", reach=Above("distance to the plug", "mm"),
        tilt=Range("slope", "rad", -0.5, 0.5, "a floor that a vehicle stands on"))  # fmt: skip
def level_error(reach_mm: float, tilt_rad: float) -> float:
    """By how much the oil stands too low at its plug on a slope; above zero where the plug is high.

    Parameters
    ----------
    reach : pint.Quantity
        From the middle of the oil's surface to the plug [mm].
    tilt : pint.Quantity
        Slope of the unit, above zero where the plug's side is the higher one [degrees].

    Returns
    -------
    pint.Quantity
        [mm]: reach times tangent of the slope.

    Examples
    --------
    >>> f"{level_error(Q(150, 'mm'), Q(2, 'degree')):.1f}"
    '5.2 millimeter'
    """
    return reach_mm * math.tan(tilt_rad)
