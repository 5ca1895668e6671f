"""The border of a model: quantities outside, plain floats inside.

A public function of a model is written once, as arithmetic on floats whose unit stands in the
parameter's name (``reach_cm``). `border` says of each what it is, in which unit, from where to
where and by which source, and makes the function that everybody calls, with quantities in any
unit and the parameter's name without the unit (``reach``). The arithmetic stays at hand as
``plain``, for searches and sweeps; it checks nothing.

>>> from twoshaft.units.quantities import Q
>>> @border("mm", span=Above("span", "mm", "geometry"), lean=Range("lean", "rad", 0, 1, "wedges"))
... def rise(span_mm, lean_rad):
...     return span_mm * lean_rad
>>> f"{rise(Q(2, 'm'), lean=Q(0.5, 'rad')):g}", rise.plain(2.0, 0.5)
('1000 millimeter', 1.0)
>>> rise(Q(2, "m"), Q(3, "rad"))  # doctest: +ELLIPSIS
Traceback (most recent call last):
twoshaft.errors.OutOfRangeError: lean is 3 rad, outside 0 to 1 rad (wedges)...
"""

from __future__ import annotations

import inspect
import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import wraps
from typing import Any, ParamSpec, Protocol, TypeVar, cast

from twoshaft.models.validity import in_range, ordered, positive
from twoshaft.units.quantities import Q, ureg

P = ParamSpec("P")
R = TypeVar("R")


@dataclass(frozen=True)
class Range:
    """A quantity, its unit, and where it must lie, ends included; see `in_range`.

    With ``above_zero`` zero itself is refused, though the range begins there.

    Examples
    --------
    >>> Range("span", "mm", 0, 100, "geometry").plain(Q(2, "cm"))
    20.0
    """

    quantity: str
    unit: str = ""
    low: float = -math.inf
    high: float = math.inf
    source: str = ""
    above_zero: bool = False

    def plain(self, value: Any) -> Any:
        """The value as a float or array of the unit."""
        if self.above_zero:
            positive(self.quantity, value, self.unit, self.source)
        return in_range(self.quantity, value, self.low, self.high, self.unit, self.source)


@dataclass(frozen=True)
class Above:
    """A quantity above zero, or from zero up if ``zero``, and its unit; see `positive`.

    Examples
    --------
    >>> Above("gap", "mm", zero=True).plain(Q(0, "mm"))
    0.0
    """

    quantity: str
    unit: str = ""
    source: str = "physical meaning"
    zero: bool = False

    def plain(self, value: Any) -> Any:
        """The value as a float or array of the unit."""
        return positive(self.quantity, value, self.unit, self.source, zero=self.zero)


One = Range | Above


@dataclass(frozen=True)
class Each:
    """Several of one kind: a sequence outside, a tuple of plain values inside.

    Examples
    --------
    >>> Each(Above("length", "mm")).plain([Q(1, "cm"), Q(2, "mm")])
    (10.0, 2.0)
    """

    size: One

    @property
    def unit(self) -> str:
        """Of each."""
        return self.size.unit

    def plain(self, values: Any) -> tuple[Any, ...]:
        """The values as floats or arrays of the unit."""
        return tuple(self.size.plain(value) for value in values)


@dataclass(frozen=True)
class Limits:
    """Limits that must not fall from first to last, and where they must lie; see `ordered`.

    Examples
    --------
    >>> Limits("torque", "N*m", 0, 500).plain([Q(20, "N*m"), Q(25, "N*m")])
    (20.0, 25.0)
    """

    quantity: str
    unit: str = ""
    low: float = -math.inf
    high: float = math.inf
    source: str = ""

    def plain(self, values: Any) -> tuple[float, ...]:
        """The limits as floats of the unit."""
        return ordered(self.quantity, values, self.low, self.high, self.unit, self.source)


@dataclass(frozen=True)
class Depends:
    """A size whose range other parameters decide.

    ``of`` gives it from theirs: its parameters have the names that they have inside.

    Examples
    --------
    >>> within = Depends("mm", lambda gap_mm: Range("pin", "mm", 0, gap_mm))
    >>> @border(gap=Above("gap", "mm"), pin=within)
    ... def left(gap_mm, pin_mm):
    ...     return gap_mm - pin_mm
    >>> left(Q(5, "mm"), Q(3, "mm"))
    2.0
    """

    unit: str
    of: Callable[..., One]


Size = One | Each | Limits | Depends


class Bordered(Protocol[P, R]):
    """A function on quantities, and the one on plain floats that it is made of."""

    plain: Callable[P, R]

    def __call__(self, *args: Any, **named: Any) -> Any:
        """Check, convert, work out, and give the result its unit."""


def border(gives: str = "", /, **sizes: Size) -> Callable[[Callable[P, R]], Bordered[P, R]]:
    """Make a function on floats into one on quantities.

    Parameters
    ----------
    gives : str
        Unit of what the function returns; nothing for a plain result.
    **sizes : Range, Above, Each, Limits or Depends
        By the name of the parameter outside. Inside it has the unit behind it, as ``reach`` and
        ``reach_cm``; what has no unit keeps its name. A parameter that is left out here, and one
        that is None by default and stays so, goes through as it is. What depends on others is
        looked at after them.

    Returns
    -------
    callable
        Raises OutOfRangeError where a size is not what it has to be.

    Examples
    --------
    >>> @border("mm", way=Above("way", "mm"))
    ... def there_and_back(way_mm):
    ...     return 2 * way_mm
    >>> there_and_back(Q(1, "cm"))
    <Quantity(20.0, 'millimeter')>
    >>> there_and_back.plain(10.0)
    20.0
    """

    def make(core: Callable[P, R]) -> Bordered[P, R]:
        signature = inspect.signature(core)
        unit = ureg.Unit(gives)
        inside = {_outside(name, sizes): name for name in signature.parameters}
        if missing := set(sizes) - set(inside):
            raise TypeError(f"{core.__name__} has no parameter for {', '.join(sorted(missing))}")
        rules = {
            inside[name]: (sizes.get(name), one.default is None)
            for name, one in zip(inside, signature.parameters.values(), strict=True)
        }
        order = list(rules.values())
        defaults = {
            name: one.default
            for name, one in signature.parameters.items()
            if one.default is not inspect.Parameter.empty
        }
        late = {
            name: (size, inspect.signature(size.of).parameters)
            for name, (size, _) in rules.items()
            if isinstance(size, Depends)
        }

        def settled(plain: list[Any], rest: dict[str, Any]) -> tuple[list[Any], dict[str, Any]]:
            """The arguments with those plain that depend on others."""
            known = {**defaults, **dict(zip(rules, plain, strict=False)), **rest}
            for name, (size, wanted) in late.items():
                if {name, *wanted} <= known.keys() and known[name] is not defaults.get(name, size):
                    known[name] = size.of(**{one: known[one] for one in wanted}).plain(known[name])
            place = list(rules)[: len(plain)]
            return (
                [known[name] for name in place] + plain[len(place) :],
                {name: known[name] for name in rest},
            )

        @wraps(core)
        def outside(*args: Any, **named: Any) -> Any:
            plain = [_plain(*rule, value) for rule, value in zip(order, args, strict=False)]
            plain += args[len(order) :]  # too many: the core says so
            rest = {
                (name := inside.get(given, given)): _plain(*rules.get(name, _ANY), value)
                for given, value in named.items()
            }
            if late:
                plain, rest = settled(plain, rest)
            result = cast(Any, core)(*plain, **rest)
            return Q(result, unit) if gives else result

        face = cast(Any, outside)
        face.plain = core
        face.__signature__ = signature.replace(
            parameters=[
                one.replace(name=name)
                for name, one in zip(inside, signature.parameters.values(), strict=True)
            ]
        )
        return cast("Bordered[P, R]", face)

    return make


_ANY = None, True


def _plain(size: Size | None, optional: bool, value: Any) -> Any:
    if size is None or isinstance(size, Depends) or (optional and value is None):
        return value
    return size.plain(value)


def _outside(name: str, sizes: dict[str, Size]) -> str:
    """The name of a parameter without its unit."""
    fits = [one for one in sizes if name == one or (sizes[one].unit and name.startswith(f"{one}_"))]
    return max(fits, key=len, default=name)
