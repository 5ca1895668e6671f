"""What a strip section gets wrong, found by reading the build backwards."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from twoshaft.errors import UnitFileError
from twoshaft.models.strip.backwards import STAYS, bounds, strip_task
from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit


def audit_strip(unit: Unit) -> tuple[Finding, ...]:
    """Check that the section names steps that are there, and that the unit comes apart by it.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Empty when nothing is wrong or the unit has no section *strip*.

    Examples
    --------
    >>> audit_strip(unit)
    ()
    """
    if not unit.has("strip"):
        return ()
    found = tuple(_names(unit))
    if found:
        return found
    try:
        strip_task(unit)
    except UnitFileError as error:
        what = f"read backwards, {error.args[0]}"
        return (
            Finding(unit.where("strip"), what, "look at 'rules' and 'readings' of the section"),
        )
    return tuple(_readings(unit))


def _names(unit: Unit) -> Iterator[Finding]:
    section = unit.strip
    groups = {one.id for one in unit.together}
    tables: dict[str, Sequence[Any]] = {
        "steps": section.steps,
        "readings": section.readings,
        "rules": section.rules,
    }
    for table, entries in tables.items():
        ids = [one.id for one in entries]
        for id in sorted({id for id in ids if ids.count(id) > 1}):
            yield _finding(unit, table, id, f"'{id}' stands twice in {table}", "keep one of them")
    for step in section.steps:
        if step.id not in unit.operation_by_id and step.id not in groups:
            yield _unknown(unit, "steps", step.id, step.id)
    for reading in section.readings:
        if reading.id in unit.operation_by_id or reading.id in groups:
            what = f"the reading '{reading.id}' has the id of a step of the build"
            yield _finding(unit, "readings", reading.id, what, "give it an id of its own")
        for id in (*reading.needs, *reading.after, *filter(None, [reading.same_as])):
            if id not in unit.operation_by_id:
                yield _unknown(unit, "readings", reading.id, id)
    for rule in section.rules:
        if rule.id in unit.rule_by_id:
            what = f"the rule '{rule.id}' has the id of a rule of the build"
            yield _finding(unit, "rules", rule.id, what, "give it an id of its own")
        for id in (rule.first, rule.then):
            if id not in unit.operation_by_id:
                yield _unknown(unit, "rules", rule.id, id)


def _readings(unit: Unit) -> Iterator[Finding]:
    """Readings that nothing ends cannot be lost."""
    stays = {one.id for one in unit.operations if one.kind in STAYS}
    for reading in unit.strip.readings:
        if not stays & set(bounds(unit, reading)[1]):
            what = f"nothing that comes off ends the reading '{reading.id}'"
            yield _finding(unit, "readings", reading.id, what, "say in 'needs' what it needs")


def _unknown(unit: Unit, table: str, entry: str, id: str) -> Finding:
    what = f"'{entry}' names '{id}', which is not in operations"
    return _finding(unit, table, entry, what, "correct the id")


def _finding(unit: Unit, table: str, entry: str, what: str, mend: str) -> Finding:
    return Finding(unit.where("strip", table, entry), what, mend)
