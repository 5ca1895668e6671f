"""Kinematic viscosity of an oil over temperature, by the equation of Walther (ASTM D341)."""

from __future__ import annotations

import math

from twoshaft.models.border import Range, border

WARM = Range("temperature", "degC", -30, 150, "the chart of ASTM D341 for oils of gears")
_THICK = Range("kinematic viscosity", "mm**2/s", 2, 2e7, "ASTM D341: above 2 mm²/s (from memory)")
_COLD, _HOT = math.log10(313.15), math.log10(373.15)


@border("mm**2/s", at_40=_THICK, at_100=_THICK, temperature=WARM)
def walther(at_40_mm2_per_s: float, at_100_mm2_per_s: float, temperature_degC: float) -> float:
    """Kinematic viscosity between and beyond the two temperatures of a data sheet.

    Parameters
    ----------
    at_40, at_100 : pint.Quantity
        Viscosity at 40 °C and at 100 °C [mm²/s].
    temperature : pint.Quantity
        [°C], -30 to 150.

    Returns
    -------
    pint.Quantity
        [mm²/s]; log log (v + 0.7) falls evenly with log T, ASTM D341.

    Examples
    --------
    >>> f"{walther(Q(75, 'mm**2/s'), Q(11.5, 'mm**2/s'), Q(100, 'degC')):.1f}"
    '11.5 millimeter ** 2 / second'
    """
    cold, hot = (math.log10(math.log10(v + 0.7)) for v in (at_40_mm2_per_s, at_100_mm2_per_s))
    slope = (cold - hot) / (_HOT - _COLD)
    thick = cold - slope * (math.log10(temperature_degC + 273.15) - _COLD)
    return 10 ** (10**thick) - 0.7
