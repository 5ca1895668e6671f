"""What was most likely done instead, where one figure of the task explains a wrong one.

A wrong figure is held against the right one and against every figure that the task gives: one
left out, one with its sign turned, the other end of a limit, a factor two, a figure copied out, the
answer to another question, a one not carried, rounding. It is told only where a single one of them
fits; where none does, how far the figure is off. It earns nothing; but the working goes on with a
figure that is explained.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING, Any

import msgspec
from pint.errors import DimensionalityError, OffsetUnitCalculusError

from twoshaft.units.quantities import Q, ureg

if TYPE_CHECKING:
    from pint import Unit

NEAR = 0.002
"""How near, as a part of the figure, a factor must come: what rounding on the way costs."""
NEAR_SUM = 0.0005
"""The same of what is added and taken off: readings are written as they are read."""
STANDS_OUT = 4
"""How many times that an explanation must lie from the right figure, or it explains nothing."""
ROUNDED = 0.03
"""How far, as a part of the figure, rounding on the way may take it."""
UNITS = {
    "mm": ("mm", "mm"), "um": ("um", "µm"), "cm": ("cm", "cm"), "m": ("m", "m"),
    "n": ("N", "N"), "kn": ("kN", "kN"), "nm": ("N*m", "N·m"), "mpa": ("MPa", "MPa"),
    "deg": ("deg", "°"), "turns": ("turn", "turns"), "k": ("delta_degC", "K"),
    "ml": ("mL", "mL"), "kg": ("kg", "kg"), "g": ("g", "g"),
    "minutes": ("min", "min"), "minute": ("min", "min"), "min": ("min", "min"),
    "hours": ("hour", "h"), "h": ("hour", "h"), "s": ("s", "s"),
}  # fmt: skip
"""Unit and how it is written, by the last part of a member's name."""
PLACES = 4
"""How many places below its first a figure is looked at for a one that was not carried."""
ENDS = (("low", "high"), ("least", "most"), ("lower", "upper"), ("smallest", "largest"))
"""How the two ends of a limit are named."""


@dataclass(frozen=True)
class Figure:
    """A figure that a task gives: its name in the record, what it is worth, and in words."""

    name: str
    value: Q
    words: str


def figures_of(given: Any, name: str = "") -> Iterator[Figure]:
    """Every figure of a task's record, with its unit; of those named ``true_…`` nobody knows.

    Figures of a list or table have the ``name`` of the member that it is.
    """
    if isinstance(given, msgspec.Struct):
        for member in given.__struct_fields__:
            if not member.startswith("true_"):
                yield from figures_of(getattr(given, member), member)
    elif isinstance(given, Mapping):
        for each in given.values():
            yield from figures_of(each, name)
    elif isinstance(given, tuple | list):
        for each in given:
            yield from figures_of(each, name)
    elif isinstance(given, int | float) and not isinstance(given, bool):
        yield from _figure(name, given)


def _figure(name: str, value: float) -> Iterator[Figure]:
    stem, _, last = name.rpartition("_")
    if "_per_" in name or not value:
        return
    if stem and last in UNITS:
        unit, written = UNITS[last]
        yield Figure(stem, Q(float(value), _unit(unit)), f"{value:g} {written}")
    elif isinstance(value, float):
        yield Figure(name, Q(value, _unit("")), f"{value:g}")


@lru_cache(maxsize=64)
def _unit(name: str) -> Unit:
    """A unit by its name: read once, since many figures are in few units."""
    return ureg.Unit(name)


def likely_slip(
    own: Q, rights: Sequence[Q], given: Any, others: Mapping[str, Q] | None = None
) -> str:
    """Say what was most likely done instead, where a single thing explains it.

    Parameters
    ----------
    own : pint.Quantity
        The learner's figure.
    rights : sequence of pint.Quantity
        The right one, in each of the ways in which it can be worked out; the likelier first.
    given : record
        What the task gives.
    others : mapping of str to pint.Quantity
        Right figures of other questions, by the question.

    Returns
    -------
    str
        A sentence: the one thing that explains it, or else how far it is off; empty for a figure
        of another kind, or where nothing is right.
    """
    held = [(fits, right) for right in rights if (fits := _Fits.of(own, right)) is not None]
    for fits, right in held:
        for told in _explanations(fits, right, given, others or {}):
            if len(told) == 1:
                return told.pop()
    return next(filter(None, (_how_far(fits) for fits, _ in held)), "")


def _explanations(fits: _Fits, right: Q, given: Any, others: Mapping[str, Q]) -> Iterator[set[str]]:
    """Sentences that fit, those of one kind together; the surest kind first."""
    yield set(_another(fits, right, others))
    yield set(_twice(fits, right))
    yield set(_of_the_task(fits, right, tuple(figures_of(given))))
    yield set(_in_writing(fits, right))


def explains(own: Q, right: Q, given: Any, others: Mapping[str, Q]) -> bool:
    """Whether something that can have been done instead gives a learner's figure.

    Parameters and what is held against the figure as in :func:`likely_slip`; where several things
    explain it, it is explained all the same.
    """
    fits = _Fits.of(own, right)
    return fits is not None and any(_explanations(fits, right, given, others))


def _how_far(fits: _Fits) -> str:
    """How far a figure is off, in words that do not give the right one away."""
    if fits.figure * fits.wanted <= 0:
        return ""
    ratio = fits.figure / fits.wanted
    way = "large" if ratio > 1 else "small"
    off = max(ratio, 1 / ratio)
    if off <= 1 + ROUNDED:
        return f"It is very near, a little too {way}: look for rounding on the way."
    how = "a little" if off <= 1.1 else "clearly" if off <= 3 else "far"
    return f"It is {how} too {way}."


@dataclass(frozen=True)
class _Fits:
    """Whether the learner's figure is what some slip would give; floats in the right one's unit."""

    figure: float
    wanted: float

    @classmethod
    def of(cls, own: Q, right: Q) -> _Fits | None:
        """None where nothing is right, or where they are of different kinds."""
        wanted, figure = float(right.m), _in_unit_of(right, own)
        return cls(figure, wanted) if wanted and figure is not None else None

    def __call__(self, slipped: float, near: float = NEAR) -> bool:
        near *= max(abs(slipped), abs(self.figure))
        return abs(self.figure - slipped) <= near and abs(slipped - self.wanted) > STANDS_OUT * near

    def moved(self, by: float) -> bool:
        """Whether it is the right figure with so much added, or taken off."""
        return any(self(self.wanted + way * by, NEAR_SUM) for way in (1, -1))


def _another(fits: _Fits, right: Q, others: Mapping[str, Q]) -> Iterator[str]:
    for words, value in others.items():
        if (there := _in_unit_of(right, value)) is not None and fits(there):
            yield f"This is the figure that another question asks for: “{words}”."


def _in_unit_of(right: Q, value: Q) -> float | None:
    """A figure in the unit of the right one; None where it is of another kind."""
    if value.units == right.units:
        return float(value.m)
    line = _line(value.units, right.units)
    return None if line is None else float(value.m) * line[0] + line[1]


@lru_cache(maxsize=256)
def _line(one: Unit, other: Unit) -> tuple[float, float] | None:
    """Factor, and what is added, that take a figure from one unit into another; None where they
    are of different kinds. Asked once, since the units take far longer than the figure."""
    try:
        nothing, whole = (float(Q(size, one).to(other).m) for size in (0.0, 1.0))
    except (DimensionalityError, OffsetUnitCalculusError):
        return None
    return whole - nothing, nothing


@lru_cache(maxsize=64)
def _plain(unit: Unit) -> bool:
    """Whether it is a mere number."""
    return unit.dimensionless


def _twice(fits: _Fits, right: Q) -> Iterator[str]:
    if _is_count(right):
        return  # a count that is twice another tells nothing
    if fits(2 * fits.wanted):
        yield (
            "It is twice what it should be: look for something counted twice, or a diameter in "
            "place of a radius."
        )
    if fits(fits.wanted / 2):
        yield (
            "It is half of what it should be: look for something counted once instead of twice, "
            "or a radius in place of a diameter."
        )


def _is_count(right: Q) -> bool:
    return _plain(right.units) and float(right.m).is_integer()


def _in_writing(fits: _Fits, right: Q) -> Iterator[str]:
    """What goes wrong on paper: a one that is carried, counting, rounding."""
    if _is_count(right):
        if fits.moved(1):
            yield "It fits if one was counted too many, or one too few."
        return
    size = max(abs(fits.figure), abs(fits.wanted))
    highest = math.floor(math.log10(size))
    if any(fits.moved(10.0**place) for place in range(highest - PLACES, highest + 1)):
        yield "It fits if a one was not carried, or carried twice, when you added or subtracted."
    rounded = float(f"{fits.wanted:.1e}")
    if math.isclose(fits.figure, rounded) and not math.isclose(rounded, fits.wanted):
        yield "It fits if it was rounded too early: keep one figure more."


def _of_the_task(fits: _Fits, right: Q, figures: tuple[Figure, ...]) -> Iterator[str]:
    """By the figures of the task."""
    in_unit = ((one, _in_unit_of(right, one.value)) for one in figures)
    sizes = [(one, size) for one, size in in_unit if size is not None]
    for one, size in () if _plain(right.units) else sizes:
        if fits(size):
            yield f"This is {one.words} as the task gives it; you still have to calculate with it."
        if fits.moved(size):
            yield f"It fits if {one.words} of this task was left out, or counted twice."
        if fits.moved(2 * size):
            yield (
                f"It fits if {one.words} of this task was added where it is subtracted, or the "
                "other way round."
            )
    for (one, low), (other, high) in _ends(sizes):
        if fits.moved(low - high):
            yield (
                f"It fits if the wrong end of a limit was used: {one.words} and {other.words} "
                "stand for each other."
            )
    for one in figures:
        factor = float(one.value.m) if _plain(one.value.units) else 0.0
        if factor and (fits(fits.wanted * factor) or fits(fits.wanted / factor)):
            yield f"It fits if the figure {one.words} of this task was left out, or used twice."


Sized = tuple[Figure, float]
"""A figure, and what it is in the unit of the right one."""


def _ends(figures: Iterable[Sized]) -> Iterator[tuple[Sized, Sized]]:
    by_name: dict[str, Sized] = {}
    for one in figures:
        by_name.setdefault(one[0].name, one)
    for name, one in by_name.items():
        for low, high in ENDS:
            if low in name.split("_"):
                other = by_name.get(name.replace(low, high))
                if other is not None:
                    yield one, other
