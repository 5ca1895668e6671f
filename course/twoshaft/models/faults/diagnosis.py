"""From what checks showed back to misbuilds, and which check to make next."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.faults.outcome import Outcome
from twoshaft.models.faults.table import Misbuilds, Table, outcome_table
from twoshaft.units.unit import Unit

Observed = Mapping[str, Outcome | str]
"""Outcomes, or their keys, by check."""


@dataclass(frozen=True)
class Explanations:
    """What explains everything that was observed.

    Attributes
    ----------
    sets : tuple of Misbuilds
        Likeliest first; ``()`` is a unit without misbuild.
    chances : tuple of float
        Share of each among them, 0 to 1, from how often each misbuild is met.

    Examples
    --------
    >>> found = explain(unit, {"try-gears": "cannot-reverse"})
    >>> found.singles, round(found.bits, 1)
    (('finger-peg-worn',), 0.8)
    """

    sets: tuple[Misbuilds, ...]
    chances: tuple[float, ...]

    @property
    def singles(self) -> tuple[str, ...]:
        """Misbuilds that explain it alone."""
        return tuple(one[0] for one in self.sets if len(one) == 1)

    @property
    def doubles(self) -> tuple[Misbuilds, ...]:
        """Pairs that explain it together."""
        return tuple(one for one in self.sets if len(one) == 2)

    @property
    def least(self) -> tuple[Misbuilds, ...]:
        """Sets of which no part explains it."""
        kept = {frozenset(one) for one in self.sets}
        return tuple(one for one in self.sets if not any(part < frozenset(one) for part in kept))

    @property
    def bits(self) -> float:
        """What is still open: entropy of the chances [bit]."""
        return _entropy(np.array(self.chances))


@dataclass(frozen=True)
class NextCheck:
    """A check that was not made yet.

    Attributes
    ----------
    check : str
    bits : float
        What it is expected to tell [bit].
    minutes : float
        What it costs [min].

    Examples
    --------
    >>> best = next_check(unit, {})[0]
    >>> best.check, best.minutes, round(best.bits, 2), round(best.bits_per_minute, 2)
    ('prove-lockout', 3.0, 0.15, 0.05)
    """

    check: str
    bits: float
    minutes: float

    @property
    def bits_per_minute(self) -> float:
        """What a minute of it tells [bit/min]."""
        return self.bits / self.minutes


@dataclass(frozen=True)
class Alike:
    """Misbuilds that show the same in every check.

    Attributes
    ----------
    misbuilds : tuple of str
    silent : bool
        Whether no check shows anything at all.

    Examples
    --------
    >>> alike = indistinguishable(unit)[-1]
    >>> alike.misbuilds, alike.silent
    (('diff-shim-too-thick', 'diff-ring-not-home'), False)
    """

    misbuilds: tuple[str, ...]
    silent: bool


@dataclass(frozen=True)
class Diagnosis:
    """A search for what is wrong with one unit, check by check.

    Attributes
    ----------
    unit : Unit
    observed : dict of str to str
        Keys of outcomes by check.

    Examples
    --------
    >>> search = Diagnosis(unit).observe("feel-detents", "not-held-fourth + not-held-third")
    >>> explain(unit, search.observed).least
    (('ball-left-out',),)
    """

    unit: Unit
    observed: Mapping[str, str] = field(default_factory=dict)

    def observe(self, check: str, outcome: Outcome | str) -> Diagnosis:
        """Return the search with one more outcome; a check made again replaces the first."""
        _code(outcome_table(self.unit), check, outcome)
        key = outcome.key if isinstance(outcome, Outcome) else outcome
        return replace(self, observed={**self.observed, check: key})


def explain(
    unit: Unit, observed: Observed, among: Iterable[Misbuilds] | None = None
) -> Explanations:
    """Find every set of none, one or two misbuilds that shows exactly what was observed.

    Parameters
    ----------
    unit : Unit
    observed : mapping of str to Outcome or str
        By check; checks left out were not made.
    among : iterable of Misbuilds, optional
        Sets that it can only be, as ``[("plug-loose",), ("film-gap",)]``; all where left out.

    Raises
    ------
    OutOfRangeError
        A check that the unit does not have, an outcome that none of its checks can show, or a
        set that cannot be in one unit.
    UnitFileError
        A unit without a faults section.

    Examples
    --------
    >>> explain(unit, {"try-gears": "cannot-reverse"}).singles
    ('finger-peg-worn',)
    >>> suspects = [("plug-loose",), ("film-gap",)]
    >>> explain(unit, {"click-bolts": "as it should be"}, among=suspects).sets
    (('film-gap',),)
    """
    table = outcome_table(unit)
    rows = np.flatnonzero(_agreeing(table, observed, among))
    rows = rows[np.argsort(-table.odds[rows], kind="stable")]
    odds = table.odds[rows]
    chances = odds / odds.sum() if rows.size else odds
    return Explanations(tuple(table.sets[r] for r in rows), tuple(chances.tolist()))


def next_check(
    unit: Unit, observed: Observed, among: Iterable[Misbuilds] | None = None
) -> tuple[NextCheck, ...]:
    """Rank the checks not made yet by what a minute of each is expected to tell.

    An outcome follows from the misbuilds without chance, so what a check tells is the entropy of
    its own outcomes over the explanations left (Shannon 1948, from memory).

    Parameters
    ----------
    unit, observed, among
        As for `explain`.

    Returns
    -------
    tuple of NextCheck
        Best first; checks that can tell nothing more are left out.

    Examples
    --------
    >>> for one in next_check(unit, {}, among=[("plug-loose",), ("film-gap",)]):
    ...     print(one.check, round(one.bits, 2), "bit", one.minutes, "min")
    click-bolts 1.0 bit 12.0 min
    watch-for-leaks 1.0 bit 16.0 min
    """
    table = outcome_table(unit)
    odds = np.where(_agreeing(table, observed, among), table.odds, 0.0)
    if not odds.any():
        return ()
    chances = odds / odds.sum()
    found = []
    for column, check in enumerate(table.checks):
        bits = _entropy(np.bincount(table.codes[:, column], weights=chances))
        if check not in observed and bits > 1e-9:
            found.append(NextCheck(check, bits, float(table.minutes[column])))
    return tuple(sorted(found, key=lambda one: (-one.bits_per_minute, one.check)))


def indistinguishable(unit: Unit) -> tuple[Alike, ...]:
    """Group the misbuilds that no check tells apart, and those that none shows at all.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Alike
        Silent ones first; a single misbuild stands alone only if it is silent.

    Examples
    --------
    >>> for one in indistinguishable(unit):
    ...     print(len(one.misbuilds), "show nothing" if one.silent else "show the same")
    3 show nothing
    3 show the same
    2 show the same
    """
    table = outcome_table(unit)
    groups: dict[tuple[int, ...], list[Misbuilds]] = {}
    for row, chosen in enumerate(table.sets):
        if len(chosen) < 2:
            groups.setdefault(tuple(table.codes[row]), []).append(chosen)
    found = []
    for members in groups.values():
        silent = () in members
        misbuilds = tuple(one[0] for one in members if one)
        if misbuilds and (silent or len(misbuilds) > 1):
            found.append(Alike(misbuilds, silent))
    return tuple(sorted(found, key=lambda one: not one.silent))


def told(chance: float) -> float:
    """What a check with two outcomes tells [bit], by how likely one of them is.

    Parameters
    ----------
    chance : float
        0 to 1.

    Raises
    ------
    OutOfRangeError
        A chance below 0 or above 1.

    Examples
    --------
    >>> told(0.5), round(told(0.1), 2), told(1.0)
    (1.0, 0.47, 0.0)
    """
    if not 0 <= chance <= 1:
        raise OutOfRangeError("chance", f"{chance:g}", "0 to 1", "the course")
    return _entropy(np.array([chance, 1 - chance]))


def _agreeing(
    table: Table, observed: Observed, among: Iterable[Misbuilds] | None = None
) -> np.ndarray:
    agree = np.full(len(table.sets), among is None)
    for one in among or ():
        agree[table.row(one)] = True
    for check, outcome in observed.items():
        agree &= table.codes[:, table.column(check)] == _code(table, check, outcome)
    return agree


def _code(table: Table, check: str, outcome: Outcome | str) -> int:
    known = [one.key for one in table.outcomes[table.column(check)]]
    key = outcome.key if isinstance(outcome, Outcome) else outcome
    if key not in known:
        raise OutOfRangeError(f"outcome of {check}", str(key), "; ".join(known), "the unit's model")
    return known.index(key)


def _entropy(chances: np.ndarray) -> float:
    some = chances[chances > 0]
    return abs(float((some * np.log2(some)).sum()))  # of chances, so never above nothing
