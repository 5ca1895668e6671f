"""Checks of a unit file that need the models: everything in one place.

Each section has its own audit, which gives findings in the words of the unit file; heavy models
are imported where they are used.
"""

from __future__ import annotations

from pathlib import Path

from twoshaft.models.audit.bearings import audit_bearings
from twoshaft.models.audit.faces import audit_faces
from twoshaft.models.audit.fasteners import audit_fasteners
from twoshaft.models.audit.fits import audit_fits
from twoshaft.models.audit.ways import audit_ways
from twoshaft.models.closeout.audit import audit_close_out
from twoshaft.models.faults.audit import audit_faults
from twoshaft.models.geartrain.audit import audit_gear_train
from twoshaft.models.inspect.audit import audit_inspect
from twoshaft.models.shape.audit import audit_shapes
from twoshaft.models.shift.audit import audit_shift
from twoshaft.models.strip.audit import audit_strip
from twoshaft.units import load_unit
from twoshaft.units.findings import Finding, error_of
from twoshaft.units.unit import Unit

__all__ = [
    "audit_bearings",
    "audit_faces",
    "audit_fasteners",
    "audit_faults",
    "audit_fits",
    "audit_gear_train",
    "audit_inspect",
    "audit_shapes",
    "audit_shift",
    "audit_strip",
    "audit_unit",
    "audit_ways",
    "sound_unit",
]

_AUDITS = (
    audit_fasteners,
    audit_fits,
    audit_bearings,
    audit_faces,
    audit_shift,
    audit_gear_train,
    audit_shapes,
    audit_strip,
    audit_inspect,
    audit_close_out,
)


def audit_unit(unit: Unit) -> tuple[Finding, ...]:
    """Run every section's audit.

    The faults are run only on a unit that is otherwise sound, since they run its other sections;
    the wrong ways round name faults and come last.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        In the order of the sections; empty when nothing is wrong.

    Examples
    --------
    >>> audit_unit(unit)
    ()
    """
    found = [finding for audit in _AUDITS for finding in audit(unit)]
    return tuple(found or audit_faults(unit) or audit_ways(unit))


def sound_unit(path_or_id: str | Path, *, called: str = "") -> Unit:
    """Load a unit and audit it: what a course is built on must have nothing to correct.

    Parameters as of :func:`twoshaft.units.load_unit`.

    Raises
    ------
    UnitFileError
        With one sentence for each thing that is wrong; ``findings`` holds them one by one.

    Examples
    --------
    >>> from twoshaft import DEFAULT_UNIT
    >>> sound_unit(DEFAULT_UNIT).identity.gears
    5
    """
    unit = load_unit(path_or_id, called=called)
    findings = audit_unit(unit)
    if findings:
        raise error_of(findings)
    return unit
