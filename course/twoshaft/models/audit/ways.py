"""What an operation's wrong ways round get wrong: names that lead nowhere."""

from __future__ import annotations

from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit


def audit_ways(unit: Unit) -> tuple[Finding, ...]:
    """Find misbuilds and seals that a wrong way round names and the unit lacks.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding

    Examples
    --------
    >>> audit_ways(unit)
    ()
    """
    misbuilds = () if unit.faults_if_any is None else unit.faults.misbuilds
    seals = () if unit.fits_if_any is None else unit.fits.seals
    known = {"misbuild": {one.id for one in misbuilds}, "seal": {one.id for one in seals}}
    return tuple(
        Finding(
            unit.where("operations", operation.id, "wrong_ways", way.id),
            f"the wrong way '{way.id}' of '{operation.id}' names the {what} '{name}', "
            "which is not there",
            "correct the name, or leave it out",
        )
        for operation in unit.operations
        for way in operation.wrong_ways
        for what, there in known.items()
        if (name := getattr(way, what)) is not None and name not in there
    )
