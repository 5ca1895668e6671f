"""What an inspect section gets wrong beyond a single entry."""

from __future__ import annotations

from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit


def audit_inspect(unit: Unit) -> tuple[Finding, ...]:
    """Check that ids stand once, and that a repair sleeve bridges more than a new lip does.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Empty when nothing is wrong or the unit has no section *inspect*.

    Examples
    --------
    >>> audit_inspect(unit)
    ()
    """
    if not unit.has("inspect"):
        return ()
    section, found = unit.inspect, []
    for table in ("limits", "circlips", "seats"):
        ids = [one.id for one in getattr(section, table)]
        found += [
            Finding(unit.where("inspect", table, id), f"'{id}' stands twice in {table}",
                    "keep one of them")
            for id in sorted({id for id in ids if ids.count(id) > 1})
        ]  # fmt: skip
    if section.seal and section.seal.sleeve_most_mm <= section.seal.groove_most_mm:
        what = "the repair sleeve bridges no deeper groove than a new lip seals over"
        found.append(Finding(unit.where("inspect"), what, "correct 'sleeve most' of 'seal'"))
    return tuple(found)
