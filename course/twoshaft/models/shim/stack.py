"""The stack of lengths between two opposed bearings, and the sign of each by arrangement.

The setting of the pair is its axial interference: above zero preload, below zero end play. Every
length either tightens (+1) or loosens (-1) the pair when it grows. Which of the two follows from
two facts, not from a table: the way a ring must move to close its bearing, and the way the length
pushes that ring. Both are looked at on the right-hand bearing, outwards being positive.

The sign convention is the course's own. Source: geometry of the loop of faces.
"""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Limits, Range, border
from twoshaft.models.validity import in_range
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Arrangement, ShimPlace, Support, TermKind

_LENGTHS = "lengths in a transaxle"
_SHIM = Range("shim", "mm", 0.0, 50.0, _LENGTHS)
_INTERFERENCE = Range("interference", "mm", -5.0, 5.0, _LENGTHS)
_LIMITS = Limits("interference", "mm", -5.0, 5.0, _LENGTHS)
_INWARDS, _OUTWARDS = -1, +1


def outer_closes(arrangement: Arrangement) -> int:
    """Which way the right outer ring moves to close its bearing: -1 inwards, +1 outwards.

    Examples
    --------
    >>> outer_closes(Arrangement.OUTER_TOGETHER), outer_closes(Arrangement.INNER_TOGETHER)
    (-1, 1)
    """
    return _INWARDS if Arrangement(arrangement) is Arrangement.OUTER_TOGETHER else _OUTWARDS


def inner_closes(arrangement: Arrangement) -> int:
    """Which way the right inner ring moves to close its bearing: against the outer ring.

    Examples
    --------
    >>> inner_closes(Arrangement.OUTER_TOGETHER)
    1
    """
    return -outer_closes(arrangement)


def shim_sign(arrangement: Arrangement, place: ShimPlace) -> int:
    """Tell whether a thicker shim tightens (+1) or loosens (-1) the pair.

    Parameters
    ----------
    arrangement : Arrangement
        Which rings are pressed together.
    place : ShimPlace
        Where the shim sits.

    Returns
    -------
    int
        +1: thicker means more preload, less end play. -1: the other way round.

    Examples
    --------
    >>> shim_sign(Arrangement.OUTER_TOGETHER, ShimPlace.BEHIND_OUTER)
    1
    >>> shim_sign(Arrangement.OUTER_TOGETHER, ShimPlace.UNDER_COVER)
    -1
    """
    place = ShimPlace(place)
    if place in (ShimPlace.BEHIND_OUTER, ShimPlace.BEHIND_INNER):
        return +1  # What backs a ring pushes it the way that closes its bearing.
    if place is ShimPlace.UNDER_COVER:
        return -1  # It takes the backing away from the ring.
    if place is ShimPlace.BETWEEN_OUTER:
        return _OUTWARDS * outer_closes(arrangement)
    return _OUTWARDS * inner_closes(arrangement)


def term_sign(arrangement: Arrangement, kind: TermKind) -> int:
    """Tell whether a longer measured length tightens (+1) or loosens (-1) the pair.

    Parameters
    ----------
    arrangement : Arrangement
        Which rings are pressed together.
    kind : TermKind
        What the length spans.

    Returns
    -------
    int
        +1 or -1.

    Examples
    --------
    >>> term_sign(Arrangement.OUTER_TOGETHER, TermKind.CASE)  # a longer case leaves end play
    -1
    >>> term_sign(Arrangement.OUTER_TOGETHER, TermKind.SHAFT)
    1
    """
    kind = TermKind(kind)
    if kind is TermKind.CASE:
        return _OUTWARDS * outer_closes(arrangement)
    if kind is TermKind.SHAFT:
        return _OUTWARDS * inner_closes(arrangement)
    return -1 if kind is TermKind.JOINT else +1


@dataclass(frozen=True)
class Term:
    """One length of the stack [mm] with its sign.

    Examples
    --------
    >>> stack = Stack.from_support(unit.bearings.support_by_id("differential"))
    >>> [(term.id, term.sign) for term in stack.terms]
    [('case-span', -1), ('carrier-span', 1), ('left-stand', 1), ('right-stand', 1)]
    """

    id: str
    name: str
    length_mm: float
    sign: int


@dataclass(frozen=True)
class Stack:
    """Lengths between the seats of a pair, without the shim, and the shim's sign.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> stack = Stack.of(
    ...     "outer-rings-together",
    ...     "behind-outer-ring",
    ...     [("case", Q(52.640, "mm")), ("shaft", Q(34.18, "mm")), ("bearing", Q(17.25, "mm"))],
    ... )
    >>> round(stack.shim_for(Q(0, "mm")).m_as("mm"), 3)
    1.21
    """

    terms: tuple[Term, ...]
    shim_sign: int

    @classmethod
    def of(cls, arrangement, place, lengths) -> Stack:
        """Build from ``(kind, length)`` pairs of measured lengths.

        Raises
        ------
        OutOfRangeError
            For a length that is not a length above zero, up to 1000 mm.
        """
        terms = tuple(
            Term(
                f"{TermKind(kind)}-{number}",
                f"{TermKind(kind)} {number}",
                in_range(f"{TermKind(kind)} length", length, 1e-3, 1000.0, "mm", _LENGTHS),
                term_sign(arrangement, kind),
            )
            for number, (kind, length) in enumerate(lengths, start=1)
        )
        return cls(terms, shim_sign(arrangement, place))

    @classmethod
    def from_support(cls, support: Support, measured: dict[str, Q] | None = None) -> Stack:
        """Build from a support of the unit file; ``measured`` replaces nominal lengths by id.

        Raises
        ------
        OutOfRangeError
            For a measured length outside 0.001 to 1000 mm, or of a term the support lacks.
        """
        measured = measured or {}
        unknown = set(measured) - {term.id for term in support.stack}
        if unknown:
            known = ", ".join(term.id for term in support.stack)
            raise OutOfRangeError("length of the stack", min(unknown), known, support.name)
        terms = tuple(
            Term(
                term.id,
                term.name,
                in_range(
                    term.name,
                    measured[term.id] if term.id in measured else Q(term.nominal_mm, "mm"),
                    1e-3,
                    1000.0,
                    "mm",
                    _LENGTHS,
                ),
                term_sign(support.arrangement, term.kind),
            )
            for term in support.stack
        )
        return cls(terms, shim_sign(support.arrangement, support.shim_place))

    @property
    def bare_mm(self) -> float:
        """Interference without any shim [mm]."""
        return sum(term.sign * term.length_mm for term in self.terms)

    @border("mm", shim=_SHIM)
    def interference(self, shim_mm: float) -> float:
        """Interference of the pair with a shim [mm]: above zero preload, below zero end play.

        Parameters
        ----------
        shim : pint.Quantity
            Thickness [mm], 0 to 50 mm; an array gives an array.

        Examples
        --------
        >>> stack = Stack((Term("gap", "gap", 1.21, -1),), shim_sign=+1)
        >>> f"{stack.interference(Q(1.25, 'mm')):.2f}"
        '0.04 millimeter'
        """
        return self.bare_mm + self.shim_sign * shim_mm

    @border("mm", interference=_INTERFERENCE)
    def shim_for(self, interference_mm: float) -> float:
        """Shim thickness [mm] that gives an interference [mm].

        The result may be below zero: then the pair is too tight or too loose with no shim at all.

        Parameters
        ----------
        interference : pint.Quantity
            -5 to 5 mm; end play is below zero; an array gives an array.

        Examples
        --------
        >>> stack = Stack((Term("gap", "gap", 1.21, -1),), shim_sign=+1)
        >>> f"{stack.shim_for(Q(-0.1, 'mm')):.2f}"
        '1.11 millimeter'
        """
        return self.shim_sign * (interference_mm - self.bare_mm)

    def window(self, low: Q, high: Q) -> tuple[float, float]:
        """Thinnest and thickest shim [mm] that keep the interference from ``low`` to ``high``.

        Raises
        ------
        OutOfRangeError
            If the limits are reversed or beyond 5 mm.

        Examples
        --------
        >>> stack = Stack((Term("gap", "gap", 1.21, -1),), shim_sign=+1)
        >>> [f"{mm:.2f}" for mm in stack.window(Q(-0.10, "mm"), Q(-0.05, "mm"))]
        ['1.11', '1.16']
        """
        ends = [self.shim_for.plain(self, limit_mm) for limit_mm in _LIMITS.plain((low, high))]
        return min(ends), max(ends)


@border(
    "mm",
    trial=Range("trial shim", "mm", 0.0, 50.0, _LENGTHS),
    end_float=Range("end float", "mm", 1e-6, 5.0, "a trial that is loose"),
    interference=_INTERFERENCE,
)
def shim_from_float(
    arrangement: Arrangement,
    place: ShimPlace,
    trial_mm: float,
    end_float_mm: float,
    interference_mm: float,
) -> float:
    """Shim [mm] for a setting, from the end float read with a trial shim in.

    Parameters
    ----------
    arrangement, place
        As for `shim_sign`.
    trial : pint.Quantity
        Trial shim, 0 to 50 mm.
    end_float : pint.Quantity
        Read with the rollers seated, 0 to 5 mm; without float the trial says nothing.
    interference : pint.Quantity
        Wanted, -5 to 5 mm; end play is below zero.

    Examples
    --------
    A thicker shim behind an outer ring tightens, so it takes up the float and gives the preload.

    >>> where = "outer-rings-together", "behind-outer-ring"
    >>> f"{shim_from_float(*where, Q(1, 'mm'), Q(0.2, 'mm'), Q(0.05, 'mm')):.2f}"
    '1.25 millimeter'
    """
    return trial_mm + shim_sign(arrangement, place) * (end_float_mm + interference_mm)
