"""The order of taking apart, from the order of building up.

What is fitted stands in the way of what it covers or needs: a rule *cannot* or *buries* between
two steps that leave something on the unit holds backwards too. What only harms or blinds while
building (heat, dirt, a dry run) is no obstacle when parts come off. A hold is given by undoing what
ended it. A reading stands between the parts that cover it and those that it needs.

The result is a unit of its own whose steps are the build's, undone, so that counting, marking and
replaying orders work on it as on any other.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from twoshaft.models.order import OrderTask
from twoshaft.units.kept import kept
from twoshaft.units.sections.order import (
    Hold,
    Operation,
    OperationKind,
    Rule,
    RuleKind,
    Together,
)
from twoshaft.units.sections.strip import StripReading
from twoshaft.units.unit import PHYSICS, Unit

STAYS = (OperationKind.FIT, OperationKind.SECURE)
"""Kinds of operation that leave something on the unit."""
STANDS_IN_THE_WAY = (RuleKind.CANNOT, RuleKind.BURIES)
LEAST_MINUTES = 0.5
"""For what takes no time to undo by the file."""
UNDER_IT = "What is read lies under it until then."


@kept()
def strip_unit(unit: Unit, *, readings: bool = True) -> Unit:
    """The taking apart of a unit, as a unit whose build it is.

    A rule that several earlier steps can keep (``any of``) is left out: backwards it would bind
    only the last of them, which the rules of a unit cannot say.

    Parameters
    ----------
    unit : Unit
        With the section *strip*.
    readings : bool
        Whether what is read before it is lost is among the steps.

    Returns
    -------
    Unit
        Steps have the ids of the build's operations and groups, and those of the readings.

    Raises
    ------
    UnitFileError
        When the unit has no section *strip*.

    Examples
    --------
    >>> apart = strip_unit(unit)
    >>> [one.name for one in apart.operations if one.id in ("fit-magnet", "fit-outer-lever")]
    ['Take the outer lever off its shaft', 'Lift the magnet off the floor and look at it']
    >>> apart.rule_by_id["shaft-for-lever"].earlier
    'fit-outer-lever'
    """
    section = unit.strip
    names = {step.id: step.name for step in section.steps}
    off = {one.id for one in unit.operations if one.kind in STAYS or one.id in names}
    operations = [_undone(one, names) for one in reversed(unit.operations) if one.id in off]
    holds = [_turned(hold) for hold in unit.holds if off.issuperset(_steps_of(hold))]
    rules = [rule for rule in map(_backwards, unit.rules) if _binds(rule, off, holds)]
    rules += [
        Rule(id=one.id, kind=RuleKind(one.kind), earlier=one.first, later=one.then,
             reason=one.reason, safety=one.safety)
        for one in section.rules if {one.first, one.then} <= off
    ]  # fmt: skip
    if readings:
        for reading in section.readings:
            operations.insert(0, _read(unit, reading))
            rules += _window(unit, reading, off)
    stages = {one.stage for one in operations}
    return unit.model_copy(
        update={
            "stages": tuple(one for one in reversed(unit.stages) if one.id in stages),
            "operations": tuple(operations),
            "rules": tuple(rules),
            "holds": tuple(holds),
            "clocks": (),
            "waits": (),
            "together": tuple(
                _group(one, names) for one in unit.together if off.issuperset(one.operations)
            ),
        }
    ).with_sections(**dict.fromkeys(PHYSICS))  # fmt: skip


@kept(most=64)  # learners' own steps are among them
def strip_task(unit: Unit, steps: tuple[str, ...] | None = None) -> OrderTask:
    """The order of taking apart, or of some of its steps, as a task.

    Stages are those of the build, and parts come off across them: none is moved as one.

    Parameters
    ----------
    unit : Unit
        With the section *strip*; the unit as it is built.
    steps : tuple of str, optional
        Operations, groups and readings; all by default.

    Examples
    --------
    >>> task = strip_task(unit, ("fit-gate-cover", "pin-finger"))
    >>> sorted(task.pairs)
    [('fit-gate-cover', 'pin-finger')]
    """
    return replace(OrderTask.from_unit(strip_unit(unit), steps), blocks=())


def _undone(operation: Operation, names: dict[str, str]) -> Operation:
    name = names.get(operation.id, f"Undo: {operation.name}"[:70])
    return Operation(
        id=operation.id,
        name=name,
        stage=operation.stage,
        kind=OperationKind.REMOVE,
        parts=operation.parts,
        minutes_do=max(operation.minutes_undo, LEAST_MINUTES),
        minutes_undo=operation.minutes_do,
    )


def _read(unit: Unit, reading: StripReading) -> Operation:
    beside = reading.same_as or reading.needs[0]
    return Operation(
        id=reading.id,
        name=reading.name,
        stage=unit.operation_by_id[beside].stage,
        kind=OperationKind.MEASURE,
        minutes_do=reading.minutes,
        minutes_undo=0,
    )


def _steps_of(hold: Hold) -> set[str]:
    return {*hold.given_by, *hold.ended_by, *hold.needed_by}


def _turned(hold: Hold) -> Hold:
    return hold.model_copy(update={"given_by": hold.ended_by, "ended_by": hold.given_by})


def _backwards(rule: Rule) -> Rule | None:
    if rule.not_during is not None:
        return rule
    if rule.earlier is None or rule.kind not in STANDS_IN_THE_WAY:
        return None
    return Rule(
        id=rule.id, kind=RuleKind.CANNOT, earlier=rule.later, later=rule.earlier,
        reason=rule.reason,
    )  # fmt: skip


def _binds(rule: Rule | None, off: set[str], holds: list[Hold]) -> bool:
    if rule is None or rule.later not in off:
        return False
    if rule.not_during is not None:
        return rule.not_during in {hold.id for hold in holds}
    return rule.earlier in off


def _group(group: Together, names: dict[str, str]) -> Together:
    name = names.get(group.id, f"Undo: {group.name}"[:70])
    return group.model_copy(update={"name": name, "plain": None})


def _window(unit: Unit, reading: StripReading, off: set[str]) -> Iterator[Rule]:
    """What comes off before a reading, and what ends it."""
    after, needs = bounds(unit, reading)
    for operation, reason in after.items():
        if operation in off:
            yield Rule(
                id=f"{reading.id}-after-{operation}"[:60], kind=RuleKind.CANNOT, earlier=operation,
                later=reading.id, reason=reason,
            )  # fmt: skip
    for operation, reason in needs.items():
        if operation in off:
            yield Rule(
                id=f"{reading.id}-with-{operation}"[:60], kind=RuleKind.BURIES, earlier=reading.id,
                later=operation, reason=reason,
            )  # fmt: skip


def bounds(unit: Unit, reading: StripReading) -> tuple[dict[str, str], dict[str, str]]:
    """Operations whose parts must be off for a reading, and on; each with its reason.

    Examples
    --------
    >>> depth = next(one for one in unit.strip.readings if one.same_as == "measure-output-ring")
    >>> [sorted(side) for side in bounds(unit, depth)]
    [['fit-rear-plate'], ['seat-output-ring', 'tighten-case-bolts']]
    """
    after = {id: UNDER_IT for id in reading.after}
    needs = {id: reading.reason for id in reading.needs}
    for rule in unit.rules if reading.same_as else ():
        if rule.kind is RuleKind.HARMS or rule.earlier is None:
            continue
        if rule.earlier == reading.same_as:
            after.setdefault(rule.later, rule.reason)
        elif rule.later == reading.same_as and rule.kind is not RuleKind.BURIES:
            needs.setdefault(rule.earlier, rule.reason)
    return after, needs
