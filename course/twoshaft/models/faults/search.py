"""What a search costs: checks made in a given order until no more of them can tell anything."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import permutations

from twoshaft.errors import OutOfRangeError
from twoshaft.models.faults.diagnosis import explain
from twoshaft.models.faults.table import Misbuilds, Table, outcome_table
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

MOST_CHECKS = 7
"""All orders of so many checks are tried; 7 make 5040."""


def minutes_spent(
    unit: Unit, plan: Sequence[str], suspects: Iterable[Misbuilds], wrong: Misbuilds
) -> Q:
    """Time of a search in which one suspect is what is wrong [min].

    It ends when a check leaves one suspect only, or when the plan is through.

    Parameters
    ----------
    unit : Unit
    plan : sequence of str
        Checks, in the order in which they are made.
    suspects : iterable of Misbuilds
        What it can be.
    wrong : Misbuilds
        What it is.

    Raises
    ------
    OutOfRangeError
        A check that the unit does not have, or a suspect that cannot be in one unit.

    Examples
    --------
    >>> suspects = [("plug-loose",), ("film-gap",), ("film-skinned",)]
    >>> minutes_spent(unit, ["click-bolts", "watch-for-leaks"], suspects, ("plug-loose",))
    <Quantity(12.0, 'minute')>
    >>> minutes_spent(unit, ["click-bolts", "watch-for-leaks"], suspects, ("film-gap",))
    <Quantity(28.0, 'minute')>
    """
    return Q(_spent_min(outcome_table(unit), plan, [*suspects], wrong), "min")


def _spent_min(
    table: Table, plan: Sequence[str], left: Sequence[Misbuilds], wrong: Misbuilds
) -> float:
    spent_min = 0.0
    for check in plan:
        if len(left) <= 1:
            break
        shown = table.outcome(wrong, check)
        left = [one for one in left if table.outcome(one, check) == shown]
        spent_min += float(table.minutes[table.column(check)])
    return spent_min


def expected_minutes(unit: Unit, plan: Sequence[str], suspects: Iterable[Misbuilds]) -> Q:
    """Time that a search takes on average [min], each suspect as often as it is met.

    Parameters
    ----------
    unit, plan, suspects
        As for `minutes_spent`.

    Raises
    ------
    OutOfRangeError
        As `minutes_spent`; also without any suspect.

    Examples
    --------
    >>> suspects = [("plug-loose",), ("film-gap",), ("film-skinned",)]
    >>> f"{expected_minutes(unit, ['click-bolts', 'watch-for-leaks'], suspects):.1f}"
    '23.0 minute'
    >>> f"{expected_minutes(unit, ['watch-for-leaks', 'click-bolts'], suspects):.1f}"
    '16.0 minute'
    """
    table, found = outcome_table(unit), explain(unit, {}, among=suspects)
    if not found.sets:
        raise OutOfRangeError(
            "suspects", "none", "at least one set of assembly faults", "the course"
        )
    spent = (
        chance * _spent_min(table, plan, found.sets, one)
        for one, chance in zip(found.sets, found.chances, strict=True)
    )
    return Q(sum(spent), "min")


def quickest_plan(
    unit: Unit, checks: Sequence[str], suspects: Iterable[Misbuilds]
) -> tuple[str, ...]:
    """The order of some checks that takes least on average; the first by name where several do.

    Parameters
    ----------
    unit : Unit
    checks : sequence of str
        At most seven.
    suspects : iterable of Misbuilds

    Raises
    ------
    OutOfRangeError
        As `expected_minutes`; also with too many checks.

    Examples
    --------
    >>> suspects = [("plug-loose",), ("film-gap",), ("film-skinned",)]
    >>> quickest_plan(unit, ["click-bolts", "watch-for-leaks"], suspects)
    ('watch-for-leaks', 'click-bolts')
    """
    if len(checks) > MOST_CHECKS:
        raise OutOfRangeError("checks", str(len(checks)), f"at most {MOST_CHECKS}", "the course")
    suspects = [*suspects]
    plans = sorted(permutations(checks))
    return min(plans, key=lambda plan: round(expected_minutes(unit, plan, suspects).m_as("min"), 9))


def suspects_for(unit: Unit, checks: Sequence[str]) -> tuple[Misbuilds, ...]:
    """One misbuild for each of some checks: the likeliest that fails it and passes the others.

    Parameters
    ----------
    unit : Unit
    checks : sequence of str

    Raises
    ------
    OutOfRangeError
        A check that the unit does not have, or one that no misbuild fails alone.

    Examples
    --------
    >>> suspects_for(unit, ["try-gears", "feel-detents", "try-two-gears"])
    (('finger-peg-worn',), ('ball-left-out',), ('interlocks-left-out',))
    """
    table = outcome_table(unit)
    often = sorted(unit.faults.misbuilds, key=lambda one: -one.often_per_1000)
    found = []
    for check in checks:
        for one in often:
            fails = [other for other in checks if not table.outcome((one.id,), other).passes]
            if fails == [check]:
                found.append((one.id,))
                break
        else:
            table.column(check)
            raise OutOfRangeError(
                "check", check, "those that an assembly fault fails alone", "the unit"
            )
    return tuple(found)


def checks_apart(unit: Unit, checks: Sequence[str], most: int) -> tuple[str, ...]:
    """The first of some checks such that each has a misbuild that fails it and passes the others.

    Parameters
    ----------
    unit : Unit
    checks : sequence of str
    most : int
        How many are wanted.

    Examples
    --------
    >>> checks_apart(unit, ["try-gears", "feel-detents", "try-two-gears"], 2)
    ('try-gears', 'feel-detents')
    """
    found: tuple[str, ...] = ()
    for check in checks:
        try:
            suspects_for(unit, [*found, check])
        except OutOfRangeError:
            continue
        found = (*found, check)
        if len(found) == most:
            break
    return found


def met_together(unit: Unit, misbuilds: Iterable[str]) -> float:
    """How often some misbuilds are met in one unit, 0 to 1, each independent of the others.

    Parameters
    ----------
    unit : Unit
    misbuilds : iterable of str

    Raises
    ------
    KeyError
        A misbuild that the unit does not have.

    Examples
    --------
    >>> f"{met_together(unit, ['plug-loose', 'film-gap']):.6f}"
    '0.000025'
    """
    often = (unit.faults.misbuild_by_id(one).often_per_1000 / 1000 for one in misbuilds)
    return math.prod(often)
