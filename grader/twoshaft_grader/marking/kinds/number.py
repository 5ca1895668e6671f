"""Judges a number with its unit."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from functools import cache
from typing import TYPE_CHECKING, Any

from twoshaft.jobsheet.kinds import Number
from twoshaft.jobsheet.measures import MEASURES, named
from twoshaft.readings import Stream
from twoshaft.units.quantities import Q, ureg
from twoshaft_grader.marking.kinds.judge import (
    Judge,
    Judgement,
    Reference,
    Seen,
    Slip,
    Spread,
    judge,
    judges,
)
from twoshaft_grader.marking.likely_slip import explains, likely_slip

if TYPE_CHECKING:
    from pint import Unit

EXACT = 1e-9  # relative: what conversions between units may lose
SLIPS_OF_TEN = (1, 2, 3)  # places that a decimal point is looked for
NOT_IT = "This is not the figure that your readings give."
"""What is said of a figure that no slip of its own explains; ``likely_slip`` looks further."""
NEAR = 3.0
"""So many tolerances away a figure is a learner's own all the same: that is what rounding on the
way and a division misread can come to. Wider, and a friend's figure of the same length counts."""


@judges("number")
class NumberJudge(Judge):
    """A figure is right within its tolerance, in any unit that means the same."""

    tolerates = True
    wanted = "a quantity or a number"

    def accepts(self, asked: Number, value: Any) -> bool:
        """Whether it is a quantity or a plain number."""
        return isinstance(value, Q | int | float) and not isinstance(value, bool)

    def carried(self, value: Any, own: Any) -> Any:
        """The learner's figure in the reference's unit; a count stays a whole number."""
        if isinstance(value, Q):
            return own.to(value.units)
        plain = float(own.to("dimensionless").magnitude)
        return int(plain) if isinstance(value, int) and plain.is_integer() else plain

    def plausible(self, asked: Number, reference: Reference, own: Q, seen: Seen) -> bool:
        """Whether it can have come from their own readings: right, near, a slip that is listed or
        that a figure of the task explains."""
        right = as_quantity(reference.value)
        if not own.is_compatible_with(right) or not math.isfinite(own.m):
            return False
        judged = judge(asked, reference, own)
        return (
            judged.share >= 1
            or bool(judged.slip)
            or self._near(right, reference.tolerance, own)
            or explains(own, right, seen.given, as_quantities(seen.others))
        )

    def _near(self, right: Q, tolerance: Any, own: Q) -> bool:
        away = abs(float(own.to(right.units).m) - float(right.m))
        return away <= NEAR * allowed(right, tolerance) + EXACT * abs(float(right.m))

    def likely(self, references: Sequence[Reference], own: Q, seen: Seen) -> str:
        """The one thing that explains it, or how far it is off."""
        rights = [as_quantity(one.value) for one in references]
        return likely_slip(own, rights, seen.given, as_quantities(seen.others))

    def is_slip(self, reference: Reference, slip: Slip, value: Any) -> bool:
        """As near as the right figure must be."""
        return within(value, slip.value, reference.tolerance)

    def slip_answer(self, value: Any) -> Any:
        """The figure with its unit."""
        return value if isinstance(value, Q) else Q(value, "dimensionless")

    def solve(self, asked: Number, value: Any) -> Any:
        """The figure as text."""
        return asked.store(value if isinstance(value, Q) else Q(value, "dimensionless"))

    def spread(self, asked: Number, reference: Reference) -> Spread:
        """A count is guessed among the first ten, or among as many as it is; any other number up
        to twice the right one."""
        if isinstance(reference.value, int):
            hit = 1 / max(10, abs(reference.value))
            return tuple(sorted({0.0: 1 - hit, 1.0: hit}.items()))
        return tuple(sorted(_figure_spread(reference).items()))

    def guess(self, asked: Number, reference: Reference, source: Any) -> Any:
        """A count up to ten or as many as it is, any other up to twice the right one."""
        value = reference.value
        if isinstance(value, int):
            return str(source.randint(1, max(10, abs(value))))
        size = value if isinstance(value, Q) else Q(value, "dimensionless")
        # Who guesses does not know that nothing is right; degrees Celsius are not multiplied.
        return asked.store(Q((size.magnitude or 10) * source.uniform(0, 2), size.units))

    def spoil(self, asked: Number, stored: Any, stream: Stream) -> Any:
        """The decimal point one place off."""
        return _times_ten(stored)

    def mistype(self, asked: Number, stored: Any, stream: Stream) -> Any:
        """Another unit, none, or off by ten."""
        number = str(stored).split()[0]
        wrong = "mm" if asked.unit != "mm" else "N"
        return stream.choice([_times_ten(stored), f"{number} {wrong}", number])

    def judge(self, asked: Number, reference: Reference, value: Q) -> Judgement:
        """Within the tolerance; else which slip of unit, sign or ten it is."""
        right = reference.value
        if within(value, right, reference.tolerance):
            return Judgement(1.0)
        if not isinstance(right, Q):
            right = Q(right, "dimensionless")
        wanted = named(asked.unit, asked.of)
        same = [measure for measure in MEASURES if measure.kind == wanted.kind]
        typed = next((m for m in same if Q(1, m.pint).units == value.units), wanted)
        figure = float(value.magnitude)
        size = abs(float(right.magnitude)) or 1.0
        near = max(allowed(right, reference.tolerance) / size, 0.005)
        own = float(right.to(typed.pint).magnitude)
        for measure in sorted(same, key=lambda m: m.name != wanted.name):
            if measure == typed:
                continue
            there = float(right.to(measure.pint).magnitude)
            tens = math.log10(abs(there / own)) if there else 0
            if typed == wanted and abs(tens - round(tens)) < EXACT:
                continue  # the same unit asked for, a prefix off: a slip of ten
            off = abs(figure - there)
            if there and off <= near * abs(there) and off <= _off_by_tens(figure, own):
                return Judgement(
                    0.0,
                    (
                        f"You wrote {figure:g} {typed.name}; the figure fits, but in "
                        f"{measure.name}.",
                        "Convert it, or write the unit that it was worked out in.",
                    ),
                    safe=False,
                    slip="wrong unit",
                )
        if own and abs(figure + own) <= near * abs(own):
            return Judgement(
                0.0,
                (
                    "The size is right, the sign is reversed.",
                    "Check which way round you subtracted.",
                ),
                safe=False,
                slip="reversed sign",
            )
        for places in SLIPS_OF_TEN:
            for factor in (10.0**places, 10.0**-places):
                if own and abs(figure - factor * own) <= near * abs(factor * own):
                    way = "too large" if factor > 1 else "too small"
                    return Judgement(
                        0.0,
                        (
                            f"The figures are right, but {10**places} times {way}.",
                            "Check the decimal point, or the prefix of the unit.",
                        ),
                        safe=False,
                        slip="slip of ten",
                    )
        return Judgement(0.0, (NOT_IT,), safe=False, puzzling=True)


def _off_by_tens(figure: float, right: float) -> float:
    """How far a figure lies from the nearest slip of ten of the right one."""
    factors = [10.0**places for n in SLIPS_OF_TEN for places in (n, -n)]
    return min(abs(figure - factor * right) for factor in factors)


def within(value: Q, right: Any, tolerance: Any) -> bool:
    """Whether a quantity agrees with the right one.

    Parameters
    ----------
    value : pint.Quantity
    right : pint.Quantity, int or float
    tolerance : quantity, float, dict or None
        As for ``ref``.

    Examples
    --------
    >>> within(Q(17.6, "N*m"), Q(17.63, "N*m"), None)
    True
    >>> within(Q(3, ""), 4, None)
    False
    """
    if not isinstance(right, Q):
        right = Q(right, "dimensionless")
    if value.units == right.units:  # as of most; converting takes ten times as long as the rest
        there, own = right, value
    else:
        try:
            there = right.to(value.units)
            own = value.to(right.units)
        except Exception:
            return False
    # Three figures in the unit that was typed are as good as three in the reference's.
    pairs = [(own, right), (value, there)] if tolerance is None else [(own, right)]
    return any(_near(float(a.magnitude), b, tolerance) for a, b in pairs)


def _near(own: float, right: Q, tolerance: Any) -> bool:
    wanted = float(right.magnitude)
    return abs(own - wanted) <= allowed(right, tolerance) + EXACT * max(abs(wanted), abs(own))


def allowed(right: Q, tolerance: Any) -> float:
    """How far an answer may lie from the right one, in the unit of ``right``."""
    size = abs(float(right.magnitude))
    if tolerance is None:
        whole = right.dimensionless and float(right.magnitude).is_integer()
        return 0.0 if whole or size == 0 else 0.5 * 10.0 ** (math.floor(math.log10(size)) - 2)
    if isinstance(tolerance, Q):
        tolerance = {"absolute": tolerance}
    elif not isinstance(tolerance, dict):
        tolerance = {"relative": tolerance}
    spans = {
        "absolute": lambda span: _span(span, right),
        "relative": lambda part: float(part) * size,
        "rounding": lambda step: 0.5 * _span(step, right),
    }
    return max(spans[key](value) for key, value in tolerance.items())


def _span(span: Any, right: Q) -> float:
    """A difference, in the unit of ``right``; degrees of temperature as differences."""
    if not isinstance(span, Q):
        return float(span)
    unit = _of_differences(right.units)
    return float(span.magnitude if span.units == unit else span.to(unit).magnitude)


@cache
def _of_differences(units: Unit) -> Unit:
    """The unit in which differences of a quantity are told."""
    name = f"{units}"
    return ureg.Unit(f"delta_{name}") if "degree_" in name and "delta_" not in name else units


def _figure_spread(reference: Reference) -> dict[float, float]:
    """What a figure earns that is guessed anywhere up to twice the right one.

    The right one counts twice, since an answer may agree with either pass.
    """
    right = as_quantity(reference.value)
    size = abs(float(right.magnitude))
    spread = {0.0: 1.0}
    wanted = [(right, 1.0), (right, 1.0)]
    wanted += [
        (as_quantity(slip.value).to(right.units), slip.share)
        for slip in reference.slips
        if slip.share and isinstance(slip.value, Q | int | float)
    ]
    for value, share in wanted:
        hit = min(spread[0.0], allowed(value, reference.tolerance) / size) if size else 0.0
        if hit and abs(float(value.magnitude)) <= 2 * size:
            spread[share] = spread.get(share, 0.0) + hit
            spread[0.0] -= hit
    return spread


def as_quantity(value: Q | float) -> Q:
    """A reference as a quantity; a plain number is one without a unit."""
    return value if isinstance(value, Q) else Q(value, "dimensionless")


def as_quantities(values: Mapping[str, Any]) -> dict[str, Q]:
    """The same of several, by name."""
    return {name: as_quantity(value) for name, value in values.items()}


def _times_ten(value: str) -> str:
    number, _, unit = str(value).partition(" ")
    try:
        return f"{float(number.replace(',', '.')) * 10:g} {unit}".strip()
    except ValueError:
        return str(value)
