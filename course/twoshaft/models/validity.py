"""Refuse a quantity that a model was not made for, before it reaches any formula.

Every public border of a physics model passes its quantities through `in_range` or `positive`.
Plain numbers are taken only where the quantity has no unit. A torque and an energy have the same
dimension, so they are told apart by how the unit is spelled: a force times a length is a torque,
a joule, calorie or watt hour is an energy, and kg·m²/s² says neither and is refused.
"""

from __future__ import annotations

import math
from functools import lru_cache
from itertools import pairwise
from typing import Any

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.units.quantities import Q, ureg

_TORQUE_DIMENSION = ureg.Unit("N*m").dimensionality
_FORCE_DIMENSION = ureg.Unit("N").dimensionality
_LENGTH_DIMENSION = ureg.Unit("m").dimensionality
_KELVIN_DIMENSION = ureg.Unit("K").dimensionality
# One-word torque units that pint defines as a force times a length.
_TORQUE_WORDS = {"foot_pound"}


def in_range(
    quantity: str, value: Any, low: float, high: float, unit: str = "", source: str = ""
) -> Any:
    """Give ``value`` as a plain number of ``unit`` if it lies from ``low`` to ``high``.

    Parameters
    ----------
    quantity : str
        Name of the quantity, as a reader would say it: ``"clamp load"``.
    value : pint.Quantity or float, or an array of either
        A plain number only where ``unit`` is empty (a ratio, a friction coefficient, a count).
    low, high : float
        The allowed range, ends included, in ``unit``; infinities are allowed here.
    unit : str, optional
        The unit of the result, ``""`` for none. Spell a torque ``"N*m"`` and an energy ``"J"``;
        a temperature ``"degC"`` or ``"K"`` and a temperature difference ``"delta_degC"``.
    source : str
        Where the range comes from.

    Returns
    -------
    float or numpy.ndarray
        Same shape as ``value``, in ``unit``.

    Raises
    ------
    OutOfRangeError
        Naming quantity, value with unit, range and source. Not a number, an infinity, a wrong
        dimension, a torque for an energy or the other way, and a temperature for a temperature
        difference are refused the same way.
    ValueError
        If ``low`` is above ``high`` or either is not a number: the range itself is wrong.

    Examples
    --------
    >>> in_range("spring force", Q(0.05, "kN"), 0, 100, "N")
    50.0
    """
    if not low <= high:
        raise ValueError(f"the range of {quantity} is reversed or not a number: {low} to {high}")
    number = _as_it_stands(value, unit)
    if number is not None and low <= number <= high and abs(number) != math.inf:
        return number
    return _within(quantity, value, low, high, unit, source, _range_text(low, high, unit), False)


def positive(
    quantity: str, value: Any, unit: str = "", source: str = "physical meaning", *, zero=False
) -> Any:
    """Give ``value`` as a plain number of ``unit`` if it is above zero (or zero if ``zero``).

    Parameters and errors as for `in_range`.

    Examples
    --------
    >>> positive("length", Q(3, "cm"), "mm")
    30.0
    >>> positive("wear", Q(0, "mm"), "mm", zero=True)
    0.0
    """
    number = _as_it_stands(value, unit)
    if number is not None and 0 <= number < math.inf and (zero or number):
        return number
    allowed = f"{'zero and above' if zero else 'values above zero'}{_unit_text(unit, ' in ')}"
    return _within(quantity, value, 0.0, math.inf, unit, source, allowed, not zero)


def ordered(
    quantity: str, values: tuple[Any, ...], low: float, high: float, unit: str = "", source=""
) -> tuple[float, ...]:
    """Check each of ``values`` by `in_range`, and that they do not fall from first to last.

    Meant for limits (low, high) and (low, typical, high).

    Raises
    ------
    OutOfRangeError
        As for `in_range`, and if the values are reversed.

    Examples
    --------
    >>> ordered("depth", (Q(1, "mm"), Q(0.2, "cm")), 0, 10, "mm")
    (1.0, 2.0)
    """
    numbers = tuple(in_range(quantity, value, low, high, unit, source) for value in values)
    if any(b < a for a, b in pairwise(numbers)):
        said = ", ".join(f"{number:g}" for number in numbers) + _unit_text(unit)
        raise OutOfRangeError(quantity, said, "limits that rise from first to last", source)
    return numbers


def shown(value: Any) -> str:
    """Say a value with its unit, force before length, as ``12 N·m``.

    Examples
    --------
    >>> shown(Q(12, "N*m")), shown(0.12)
    ('12 N·m', '0.12')
    """
    if isinstance(value, Q):
        return f"{_number_text(value.magnitude)}{_unit_text(value.units)}"
    return _number_text(value)


def _as_it_stands(value: Any, unit: str) -> float | None:
    """The magnitude of a single value that already has the unit asked for: most have."""
    if isinstance(value, Q):
        same = type(value.magnitude) is float and value.units == _unit(unit)
        return value.magnitude if same else None
    return value if type(value) is float and not unit else None


def _within(quantity, value, low, high, unit, source, allowed, open_low):
    number = _plain(quantity, value, unit, source, allowed)
    array = np.asarray(number)
    good = np.isfinite(array) & (array >= low) & (array <= high)
    if open_low:
        good &= array > low
    if array.size == 0 or not good.all():
        bad = number if array.ndim == 0 else array[~good][0] if array.size else "empty"
        # Said in the unit it came in, so that the reader recognises what was typed.
        said = value if isinstance(value, Q) and array.ndim == 0 else f"{bad}{_unit_text(unit)}"
        raise OutOfRangeError(
            quantity, shown(said) if isinstance(said, Q) else said, allowed, source
        )
    return number


def _plain(quantity: str, value: Any, unit: str, source: str, allowed: str) -> Any:
    """Magnitude of ``value`` in ``unit`` as float or array, kind of unit checked."""
    wanted = _unit(unit)
    if not isinstance(value, Q):
        if isinstance(value, (bool, str, bytes)) or value is None or unit:
            given = f"{value!r} without a unit" if unit else repr(value)
            raise OutOfRangeError(quantity, given, allowed, source)
        value = Q(value, "")
    own = value.units
    if own != wanted:
        kinds = {_kind(own), _kind(wanted)} - {"kelvin"}
        if own.dimensionality != wanted.dimensionality or len(kinds) > 1:
            raise OutOfRangeError(quantity, _with_kind(value), allowed, source)
    try:
        number = value.to(wanted).magnitude
        array = np.asarray(number, dtype=float)
    except (TypeError, ValueError):
        raise OutOfRangeError(quantity, repr(value.magnitude), allowed, source) from None
    return float(array) if array.ndim == 0 else array


@lru_cache(maxsize=256)
def _unit(unit: str):
    """A unit by its spelling; parsing costs more than most formulas."""
    return ureg.Unit(unit)


@lru_cache(maxsize=1024)
def _kind(units) -> str:
    """Tell apart what pint's dimensions cannot: torque or energy, temperature or difference."""
    if units.dimensionality == _KELVIN_DIMENSION:
        names = [name for name, _ in units._units.items()]
        if names == ["kelvin"] or names == ["degree_Rankine"]:
            return "kelvin"
        return "difference" if names[0].startswith("delta_") else "temperature"
    if units.dimensionality != _TORQUE_DIMENSION:
        return ""
    powers = dict(units._units.items())
    if len(powers) == 1:
        return "torque" if set(powers) <= _TORQUE_WORDS else "energy"
    if all(power == 1 for power in powers.values()):
        kinds = {ureg.Unit(name).dimensionality for name in powers}
        if kinds == {_FORCE_DIMENSION, _LENGTH_DIMENSION}:
            return "torque"
        if any(_is_power(name) for name in powers):
            return "energy"
    return "neither a torque nor an energy by its spelling"


def _is_power(name: str) -> bool:
    return ureg.Unit(name).dimensionality == ureg.Unit("W").dimensionality


def _with_kind(value) -> str:
    kind = _kind(value.units)
    article = {"torque": "a torque", "energy": "an energy", "temperature": "a temperature"}
    article |= {"difference": "a temperature difference"}
    said = article.get(kind, kind)
    return f"{shown(value)} ({said})" if said and kind != "kelvin" else shown(value)


@lru_cache(maxsize=1024)
def _unit_text(unit, lead: str = " ") -> str:
    units = _unit(unit) if isinstance(unit, str) else unit
    if units.dimensionless and not dict(units._units.items()):
        return ""
    if _kind(units) == "torque" and len(dict(units._units.items())) == 2:
        names = sorted(
            dict(units._units.items()),
            key=lambda name: ureg.Unit(name).dimensionality != _FORCE_DIMENSION,
        )
        return lead + "·".join(f"{ureg.Unit(name):~P}" for name in names)
    return f"{lead}{units:~P}"


def _number_text(number) -> str:
    array = np.asarray(number)
    if array.ndim:
        return f"{array.size} values"
    if array.dtype.kind == "f" and np.isnan(array):
        return "not a number"
    return f"{number:g}" if array.dtype.kind in "fiu" else str(number)


def _range_text(low: float, high: float, unit: str) -> str:
    if math.isinf(high) and math.isinf(low):
        return f"any finite value{_unit_text(unit, ' in ')}"
    if math.isinf(high):
        return f"{low:g}{_unit_text(unit)} and above"
    if math.isinf(low):
        return f"{high:g}{_unit_text(unit)} and below"
    return f"{low:g} to {high:g}{_unit_text(unit)}"
