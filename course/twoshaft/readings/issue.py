"""Drawing what one learner is given in one attempt, and the record of what was issued."""

from __future__ import annotations

from twoshaft import __version__
from twoshaft.errors import CourseError
from twoshaft.readings import (
    course_and_safety,
    gear_train_and_checks,
    measuring_and_tools,
    order_of_work,
    sealant_film,
    shift_and_lockout,
    shims_and_preload,
    threaded_joints,
)
from twoshaft.units.unit import Unit

MODULES = {
    "shims-and-preload": shims_and_preload.draw,
    "course-and-safety": course_and_safety.draw,
    "measuring-and-tools": measuring_and_tools.draw,
    "order-of-work": order_of_work.draw,
    "threaded-joints": threaded_joints.draw,
    "gear-train-and-checks": gear_train_and_checks.draw,
    "sealant-film": sealant_film.draw,
    "shift-and-lockout": shift_and_lockout.draw,
}
"""What draws the readings of each module."""


def draw(module: str, unit: Unit, *, salt: str, learner: str, attempt: int) -> dict:
    """Draw what a learner is given.

    Parameters
    ----------
    module : str
        Module id, as ``order-of-work``.
    unit : Unit
        The unit on the bench.
    salt : str
        The cohort's salt.
    learner : str
        Learner id.
    attempt : int
        Number of the attempt; 0 is a practice copy.

    Returns
    -------
    dict
        By task name; plain data that can be written as JSON. It holds no answers.

    Raises
    ------
    CourseError
        When no module has this id.
    UnitFileError
        When the unit is too small for one of the tasks.
    """
    if module not in MODULES:
        known = ", ".join(MODULES)
        raise CourseError(f"there is no module {module!r}", mend=f"use one of: {known}")
    return MODULES[module](unit, salt=salt, learner=learner, attempt=attempt)


def issue_record(module: str, unit: Unit, *, salt: str, learner: str, attempt: int) -> dict:
    """What was issued to a learner, with the versions it was drawn under.

    Parameters
    ----------
    module, unit, salt, learner, attempt
        As in :func:`draw`.

    Returns
    -------
    dict
        Plain data to be kept; marking uses it whatever the course's version has become.
    """
    return {
        "format": 1,
        "learner": learner,
        "module": module,
        "attempt": attempt,
        "unit": unit.identity.id,
        "unit_version": unit.identity.version,
        "course_version": __version__,
        "given": draw(module, unit, salt=salt, learner=learner, attempt=attempt),
    }
