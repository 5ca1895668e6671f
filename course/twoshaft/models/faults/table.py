"""What every single and double misbuild of a unit shows in every check, computed once.

A check depends on the inputs of the models that it reads and on nothing else, so its outcome
under two misbuilds is its outcome under those of the two that change such an input. Two that do
are run together for real; where only one does, running it alone gives the same. This is exact,
not a union of symptoms: nothing is added up.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import combinations

import numpy as np

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.models.faults.built import as_built, exclude, touches
from twoshaft.models.faults.checks import reads, run_check
from twoshaft.models.faults.outcome import Outcome
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

Misbuilds = tuple[str, ...]
"""Ids of none, one or two misbuilds, in the order of the unit file."""


@dataclass(frozen=True, eq=False)
class Table:
    """Outcomes of a unit.

    Attributes
    ----------
    checks : tuple of str
    sets : tuple of Misbuilds
        None first, then singles, then doubles that can be in one unit together.
    codes : ndarray of int, shape (sets, checks)
        Numbers of outcomes; equal numbers of one check are equal outcomes.
    outcomes : tuple of tuple of Outcome
        By check and number.
    minutes : ndarray, shape (checks,)
        Time of every check [min].
    odds : ndarray, shape (sets,)
        How often each set is met, over a build without misbuild.

    Examples
    --------
    >>> table = outcome_table(unit)
    >>> table.outcome(("ball-left-out",), "feel-detents").sentence
    'Nothing holds fourth once it is in; nothing holds third once it is in.'
    """

    checks: tuple[str, ...]
    sets: tuple[Misbuilds, ...]
    codes: np.ndarray
    outcomes: tuple[tuple[Outcome, ...], ...]
    minutes: np.ndarray
    odds: np.ndarray

    def column(self, check: str) -> int:
        """Number of a check.

        Raises
        ------
        OutOfRangeError
            A check that the unit does not have.
        """
        if check not in self.checks:
            raise OutOfRangeError("check", check, ", ".join(self.checks), "the unit file")
        return self.checks.index(check)

    def row(self, misbuilds: Misbuilds) -> int:
        """Number of a set of misbuilds, in any order.

        Raises
        ------
        OutOfRangeError
            A set that is not there: an unknown misbuild, or two that exclude each other.
        """
        if frozenset(misbuilds) not in self._rows:
            text = " and ".join(misbuilds)
            raise OutOfRangeError("misbuilds", text, "what can be in one unit", "the unit file")
        return self._rows[frozenset(misbuilds)]

    @cached_property
    def _rows(self) -> dict[frozenset[str], int]:
        return {frozenset(chosen): row for row, chosen in enumerate(self.sets)}

    def outcome(self, misbuilds: Misbuilds, check: str) -> Outcome:
        """What a check shows for a set of misbuilds."""
        column = self.column(check)
        return self.outcomes[column][self.codes[self.row(misbuilds), column]]


@kept()
def outcome_table(unit: Unit) -> Table:
    """Run every check on every single and double misbuild; kept with the unit.

    Parameters
    ----------
    unit : Unit

    Raises
    ------
    UnitFileError
        A unit without a faults section.

    Examples
    --------
    >>> table = outcome_table(unit)
    >>> table.codes.shape == (len(table.sets), len(table.checks)), len(table.checks)
    (True, 12)
    """
    faults = unit.faults_if_any
    if faults is None:
        raise UnitFileError("the unit has no faults section", mend="add 'faults' to the file")
    ids = [one.id for one in faults.misbuilds]
    pairs = combinations(faults.misbuilds, 2)
    sets = [(), *((one,) for one in ids)]
    sets += [(a.id, b.id) for a, b in pairs if not exclude(unit, a, b)]
    touched = {one.id: touches(unit, one) for one in faults.misbuilds}
    odds = {one.id: one.often_per_1000 / (1000 - one.often_per_1000) for one in faults.misbuilds}
    codes = np.empty((len(sets), len(faults.checks)), dtype=int)
    outcomes = []
    for column, check in enumerate(faults.checks):
        seen_by = reads(unit, check)
        numbers: dict[Outcome, int] = {}
        run: dict[Misbuilds, int] = {}
        for row, chosen in enumerate(sets):
            matters = tuple(one for one in chosen if touched[one] & seen_by)
            if matters not in run:
                built = as_built(unit, [faults.misbuild_by_id(one) for one in matters])
                run[matters] = numbers.setdefault(run_check(check, built), len(numbers))
            codes[row, column] = run[matters]
        outcomes.append(tuple(numbers))
    return Table(
        tuple(check.id for check in faults.checks),
        tuple(sets),
        codes,
        tuple(outcomes),
        np.array([check.minutes for check in faults.checks]),
        np.array([np.prod([odds[one] for one in chosen]) for chosen in sets]),
    )
