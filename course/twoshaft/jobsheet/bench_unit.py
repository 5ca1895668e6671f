"""Which workplace a notebook stands in, and which unit is on its bench."""

from __future__ import annotations

from pathlib import Path

from twoshaft import DEFAULT_UNIT
from twoshaft.stored.assignment import UNIT, Assignment
from twoshaft.stored.workplace import WORKPLACE, Workplace


def workplace_around(folder: Path) -> tuple[Path, Workplace] | None:
    """The workplace that a folder stands in, and what it says of itself; None outside of one.

    Raises
    ------
    SheetError
        If ``workplace.json`` is there but cannot be read.
    """
    folder = Path(folder).absolute()
    for root in (folder, *folder.parents):
        about = WORKPLACE.read(root / WORKPLACE.file)
        if about is not None:
            return root, about
    return None


def assigned_unit_source(folder: Path, unit: str, digest: str) -> str | Path:
    """What to load the unit from that an assignment was handed out with.

    Parameters
    ----------
    folder : Path
        Of the assignment.
    unit, digest : str
        As `Assignment` has them.

    Returns
    -------
    str or Path
        The id of a shipped unit, which loads once for all, as long as the course ships it as it
        was; else the file that was kept in the folder.
    """
    kept = folder / UNIT
    if not kept.exists():
        return unit
    # What only asks where a notebook stands, as progress does, goes without the schema of units.
    from twoshaft.units.whole_file import shipped_digest

    return unit if digest and shipped_digest(unit) == digest else kept


def unit_source(folder: Path, assignment: Assignment | None = None) -> str | Path:
    """What to load the unit of a notebook from.

    Parameters
    ----------
    folder : Path
        The notebook's folder.
    assignment : Assignment, optional
        What is assigned there; None for lessons and practice copies.

    Returns
    -------
    str or Path
        The assigned unit, if this course ships it as it was handed out; else ``unit.yaml`` beside
        the notebook; else the assigned unit; else, for lessons and practice copies, the unit of the
        workplace around them; else the shipped one.

    Raises
    ------
    SheetError
        If ``workplace.json`` is there but cannot be read.
    """
    folder = Path(folder).absolute()
    if assignment:
        return assigned_unit_source(folder, assignment.unit, assignment.unit_digest)
    if (folder / UNIT).exists():
        return folder / UNIT
    if (found := workplace_around(folder)) is None:
        return DEFAULT_UNIT
    root, about = found
    return root / UNIT if (root / UNIT).exists() else about.unit or DEFAULT_UNIT
