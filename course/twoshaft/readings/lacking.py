"""A unit that lacks what a task is made of: the error that was met, in a sentence."""

from __future__ import annotations

import traceback
from pathlib import PurePath

from twoshaft.errors import UnitFileError
from twoshaft.units.unit import Unit

LACKING = (
    LookupError,
    ValueError,
    AttributeError,
    TypeError,
    ArithmeticError,
    StopIteration,
    RuntimeError,
)
"""What a model meets where an entry is missing, or a list is shorter than it takes for granted.
A generator turns the end of a search into a RuntimeError."""
_SECTIONS = {
    "order": "operations and rules",
    "joint": "fasteners",
    "fit": "fits",
    "bearing": "bearings",
    "shim": "bearings",
    "film": "faces",
    "shift": "shift",
    "geartrain": "gear train",
    "faults": "faults",
    "strip": "strip",
    "inspect": "inspect",
    "closeout": "close out",
}
"""The section of a unit file that a folder of models works on."""


def lacking(
    error: Exception, unit: Unit, module: str, task: str | None, mend: str
) -> UnitFileError:
    """The sentence for a unit that is sound, and still lacks something that a task is made of.

    Parameters
    ----------
    error : Exception
        What was met; one of ``LACKING``.
    unit, module, task
        The unit, and what was drawn of it; no task where it was not come to yet.
    mend : str
        What to do about it.
    """
    what = (
        f"the module {module!r}" if task is None else f"the task {task!r} of the module {module!r}"
    )
    section = _section(error)
    where = f", in its section '{section}'" if section else ""
    key = error.args[0] if isinstance(error, KeyError) and error.args else None
    missing = f": nothing there is called {key!r}" if isinstance(key, str) and section else ""
    return UnitFileError(
        f"unit {unit.identity.id!r} lacks something that {what} is made of{where}{missing}",
        mend=mend,
    )


def _section(error: Exception) -> str | None:
    """The section of the models that the error came from; the innermost."""
    found = None
    while error:
        for frame, _ in traceback.walk_tb(error.__traceback__):
            parts = PurePath(frame.f_code.co_filename).parts
            if "models" in parts[:-1]:
                found = _SECTIONS.get(parts[parts.index("models") + 1], found)
        if found or not isinstance(error.__cause__, Exception):
            return found
        error = error.__cause__
    return found
