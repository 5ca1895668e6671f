"""Which unit stands on the bench of a notebook."""

from __future__ import annotations

from pathlib import Path

from twoshaft import DEFAULT_UNIT
from twoshaft.stored.assignment import UNIT, Assignment
from twoshaft.stored.workplace import WORKPLACE


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
        ``unit.yaml`` beside the notebook; else the assigned unit; else, for lessons and practice
        copies, the unit of the workplace around them; else the shipped one.

    Raises
    ------
    SheetError
        If ``workplace.json`` is there but cannot be read.
    """
    folder = Path(folder).absolute()
    if (folder / UNIT).exists():
        return folder / UNIT
    if assignment:
        return assignment.unit
    for root in (folder, *folder.parents):
        about = WORKPLACE.read(root / WORKPLACE.file)
        if about is not None:
            own = root / UNIT
            return own if own.exists() else about.unit or DEFAULT_UNIT
    return DEFAULT_UNIT
