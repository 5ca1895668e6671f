"""The air in a closed unit: pressure over temperature, and a leak by its fall in pressure.

Air is taken as an ideal gas, p V = n R T, with temperatures from absolute zero and pressures from
vacuum. The case does not give.
"""

from __future__ import annotations

from math import hypot, sqrt

from twoshaft.models.border import Above, Range, border

ZERO_K = 273.15
_TEMPERATURE = Range("temperature", "degC", -60, 200, "air in a unit")
_PRESSURE = Above("pressure from vacuum", "mbar")
_LITRES = Above("air in the unit", "l")
_MINUTES = Above("time of the test", "minute")
_LOST = Range("pressure lost", "mbar", -1000, 1000, "a test with little pressure")
_GAUGE = Above("uncertainty of the gauge", "mbar")


def _kelvin(celsius: float) -> float:
    return celsius + ZERO_K


@border("mbar", pressure=_PRESSURE, closed_at=_TEMPERATURE, now=_TEMPERATURE, air=_LITRES,
        oil_grows=Range("growth of the oil", "l", -2, 2, "oil in a unit"))  # fmt: skip
def pressure_in(
    pressure_mbar: float, closed_at_degC: float, now_degC: float, air_l: float, oil_grows_l: float
) -> float:
    """Pressure over that outside, in a unit whose breather is blocked.

    Parameters
    ----------
    pressure : pint.Quantity
        Outside, from vacuum [mbar].
    closed_at, now : pint.Quantity
        Temperature at which the pressures were equal, and the present one [°C].
    air : pint.Quantity
        Room for air when the pressures were equal [litres].
    oil_grows : pint.Quantity
        By how much the oil has grown since, which leaves less room [litres].

    Returns
    -------
    pint.Quantity
        [mbar]; below zero where the unit draws in.

    Examples
    --------
    >>> outside, air = Q(1013, "mbar"), Q(4, "l")
    >>> f"{pressure_in(outside, Q(20, 'degC'), Q(90, 'degC'), air, Q(0.1, 'l')):.0f}"
    '274 millibar'
    """
    warmer = _kelvin(now_degC) / _kelvin(closed_at_degC)
    return pressure_mbar * (warmer * air_l / (air_l - oil_grows_l) - 1)


@border("mbar", start=_PRESSURE, end=_PRESSURE, start_at=_TEMPERATURE, end_at=_TEMPERATURE)
def pressure_lost(
    start_mbar: float, end_mbar: float, start_at_degC: float, end_at_degC: float
) -> float:
    """Fall in pressure that is due to lost air, at the temperature of the start.

    Parameters
    ----------
    start, end : pint.Quantity
        Pressures from vacuum [mbar].
    start_at, end_at : pint.Quantity
        Temperatures of the air [°C].

    Returns
    -------
    pint.Quantity
        [mbar]

    Examples
    --------
    A tight unit that cools by one kelvin:

    >>> start, end = Q(1163, "mbar"), Q(1163 * 292.15 / 293.15, "mbar")
    >>> f"{abs(pressure_lost(start, end, Q(20, 'degC'), Q(19, 'degC'))):.2f}"
    '0.00 millibar'
    """
    return start_mbar - end_mbar * _kelvin(start_at_degC) / _kelvin(end_at_degC)


@border("mbar/K", pressure=_PRESSURE, at=_TEMPERATURE)
def pressure_per_kelvin(pressure_mbar: float, at_degC: float) -> float:
    """By how much the pressure of closed air changes with each kelvin.

    Parameters
    ----------
    pressure : pint.Quantity
        From vacuum [mbar].
    at : pint.Quantity
        Temperature [°C].

    Returns
    -------
    pint.Quantity
        [mbar/K]

    Examples
    --------
    >>> f"{pressure_per_kelvin(Q(1163, 'mbar'), Q(20, 'degC')):.2f}"
    '3.97 millibar / kelvin'
    """
    return pressure_mbar / _kelvin(at_degC)


@border("ml/minute", lost=_LOST, air=_LITRES, time=_MINUTES, outside=_PRESSURE)
def leak_rate(lost_mbar: float, air_l: float, time_minute: float, outside_mbar: float) -> float:
    """Air that leaves, as it fills outside.

    Parameters
    ----------
    lost : pint.Quantity
        Fall in pressure at one temperature [mbar].
    air : pint.Quantity
        Volume under test [litres].
    time : pint.Quantity
        [minutes]
    outside : pint.Quantity
        Pressure outside, from vacuum [mbar].

    Returns
    -------
    pint.Quantity
        [mL/min]: volume times fall, over time and outside pressure.

    Examples
    --------
    >>> f"{leak_rate(Q(5, 'mbar'), Q(6, 'l'), Q(5, 'minute'), Q(1013, 'mbar')):.2f}"
    '5.92 milliliter / minute'
    """
    return 1000 * lost_mbar * air_l / (time_minute * outside_mbar)


@border("mbar", gauge=_GAUGE, pressure=_PRESSURE, at=_TEMPERATURE,
        thermometer=Above("uncertainty of the thermometer", "delta_degC", zero=True))  # fmt: skip
def uncertainty_of_loss(
    gauge_mbar: float, thermometer_delta_degC: float, pressure_mbar: float, at_degC: float
) -> float:
    """Standard uncertainty of the pressure lost: two readings of gauge and thermometer each.

    Parameters
    ----------
    gauge : pint.Quantity
        Standard uncertainty of one reading of the gauge [mbar].
    thermometer : pint.Quantity
        The same of the thermometer [K].
    pressure, at : pint.Quantity
        Pressure from vacuum [mbar] and temperature of the air [°C].

    Returns
    -------
    pint.Quantity
        [mbar]; readings that err by themselves, JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> still, gauge, warm = Q(0, "delta_degC"), Q(0.5, "mbar"), Q(20, "degC")
    >>> f"{uncertainty_of_loss(gauge, still, Q(1163, 'mbar'), warm):.3f}"
    '0.707 millibar'
    """
    per_kelvin = pressure_per_kelvin.plain(pressure_mbar, at_degC)
    return sqrt(2) * hypot(gauge_mbar, per_kelvin * thermometer_delta_degC)
