"""Two opposed bearings as springs that face each other, with the case between them.

The interference is shared by the two rows and by the case, which stretches or is squeezed:
d = a_left F^p + a_right F^p + F/c. An axial load on the shaft loads one row and unloads the
other. Source: force balance of the loop; the classic result that a pair of rollers comes free on
one side at 2^(10/9) = 2.16 times its preload and a pair of balls at 2^1.5 = 2.83 times (rigid
case) is a special case of it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from twoshaft.models.bearing.geometry import Balls, Rollers, elements
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.models.validity import in_range
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support

_SETTING = "elastic setting of a pair"
_STEPS = 60
_INTERFERENCE = Range("interference", "mm", -5.0, 1.0, _SETTING)
_PRELOAD = Depends("N", lambda self: Range("preload", "N", 0.0, self.rating_n, "dynamic rating"))


@dataclass(frozen=True)
class Pair:
    """Two opposed rows and the axial stiffness of the case [N/m] between their seats.

    Examples
    --------
    >>> pair = Pair.from_support(unit.bearings.support_by_id("differential"), unit.bearings)
    >>> f"{pair.preload(Q(0.05, 'mm')):.0f}"
    '2025 newton'
    """

    left: Rollers | Balls
    right: Rollers | Balls
    case_n_per_m: float = np.inf

    @classmethod
    @border(case_stiffness=Above("stiffness of the case", "N/m", _SETTING))
    def of(
        cls,
        left: Rollers | Balls,
        right: Rollers | Balls,
        case_stiffness_n_per_m: float | None = None,
    ) -> Pair:
        """Build a pair; without a case stiffness the case is rigid."""
        if case_stiffness_n_per_m is None:
            return cls(left, right)
        return cls(left, right, case_stiffness_n_per_m)

    @classmethod
    def from_support(cls, support: Support, bearings: Bearings) -> Pair:
        """Build from a support of the unit file."""
        return _pair_of(support, bearings)

    @property
    def rating_n(self) -> float:
        """The smaller dynamic rating of the two [N]."""
        return min(self.left.capacity_n, self.right.capacity_n)

    @border("N", interference=_INTERFERENCE)
    def preload(self, interference_mm: float) -> float:
        """Preload [N] that an interference makes; none with end play.

        Parameters
        ----------
        interference : pint.Quantity
            -5 to 1 mm; below zero is end play; an array gives an array.

        Raises
        ------
        OutOfRangeError
            If the preload would pass the smaller dynamic rating: no longer elastic.

        Examples
        --------
        >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
        >>> pair = Pair.of(row, row)
        >>> pair.preload(Q(-0.05, "mm"))
        <Quantity(0.0, 'newton')>
        >>> f"{pair.interference(pair.preload(Q(0.02, 'mm'))).m_as('mm'):.3f}"
        '0.020'
        """
        force = Q(self.preload_n(interference_mm / 1e3), "N")
        return in_range("preload", force, 0.0, self.rating_n, "N", "dynamic rating")

    @border("mm", preload=_PRELOAD)
    def interference(self, preload_n: float) -> float:
        """Interference [mm] that makes a preload, 0 N to the smaller dynamic rating."""
        return self.interference_m(preload_n) * 1e3

    @border(
        interference=_INTERFERENCE,
        axial_load=Range("axial load", "N", -1e6, 1e6, _SETTING),
    )
    def loads(self, interference_mm: float, axial_load_n: float) -> tuple[Q, Q]:
        """Axial loads on the left and the right row [N].

        Parameters
        ----------
        interference : pint.Quantity
            -5 to 1 mm.
        axial_load : pint.Quantity
            On the shaft, towards the right; below zero towards the left [N].
        """
        left_n, right_n = self.loads_n(interference_mm / 1e3, axial_load_n)
        return Q(left_n, "N"), Q(right_n, "N")

    def interference_m(self, force_n):
        """Interference [m] at a preload [N], any shape."""
        return self._side_m(self.left, force_n) + self._side_m(self.right, force_n)

    def preload_n(self, interference_m):
        """Preload [N] at an interference [m], any shape; none below zero."""
        wanted = np.maximum(interference_m, 0.0)
        # Each spring alone would carry at most this: a bound that the loop cannot pass.
        bound = np.minimum(self.left.axial_force_n(wanted), self.right.axial_force_n(wanted))
        return _invert(self.interference_m, wanted, bound)

    def loads_n(self, interference_m, axial_n):
        """Axial loads [N] on the left and right row for a setting [m] and a load [N]."""
        interference_m, axial_n = np.broadcast_arrays(interference_m, axial_n)
        size_n = np.abs(axial_n)
        towards = axial_n >= 0

        def loop(slack_n):
            loaded_n = slack_n + size_n
            return np.where(
                towards,
                self._side_m(self.left, slack_n) + self._side_m(self.right, loaded_n),
                self._side_m(self.right, slack_n) + self._side_m(self.left, loaded_n),
            )

        wanted = np.maximum(interference_m, 0.0)
        slack_n = _invert(loop, wanted, self.preload_n(wanted))
        slack_n = np.where(loop(np.zeros_like(size_n)) >= wanted, 0.0, slack_n)
        loaded_n = slack_n + size_n
        return np.where(towards, slack_n, loaded_n), np.where(towards, loaded_n, slack_n)

    def _side_m(self, row, force_n):
        """One side yields by its row and by half of the case."""
        return row.axial_displacement_m(force_n) + force_n / (2 * self.case_n_per_m)


def _invert(rising, wanted, bound):
    """Force at which a rising function of force reaches ``wanted``; bisection from 0 to bound."""
    if np.ndim(bound) == 0:
        return _invert_one(rising, float(wanted), float(bound))
    low, high = np.zeros_like(np.asarray(bound, dtype=float)), np.asarray(bound, dtype=float)
    for _ in range(_STEPS):
        middle = (low + high) / 2
        below = rising(middle) < wanted
        low, high = np.where(below, middle, low), np.where(below, high, middle)
    return (low + high) / 2


def _invert_one(rising, wanted: float, bound: float) -> float:
    """The same for one force: plain floats, and no step after the last that narrows it."""
    low, high = 0.0, bound
    for _ in range(_STEPS):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        if rising(middle) < wanted:
            low = middle
        else:
            high = middle
    return (low + high) / 2


@kept()
def _pair_of(support: Support, bearings: Bearings) -> Pair:
    return Pair.of(
        elements(bearings.set_by_id(support.left)),
        elements(bearings.set_by_id(support.right)),
        Q(support.case_stiffness_n_per_um, "N/um"),
    )
