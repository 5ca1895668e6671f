"""Drawing what one learner is given in one attempt, and the record of what was issued."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from functools import cache
from typing import Any

from twoshaft import __version__
from twoshaft.errors import CourseError, UnitFileError
from twoshaft.modules import COURSE
from twoshaft.readings import (
    close_out,
    course_and_safety,
    gear_train_and_checks,
    inspect_and_decide,
    measuring_and_tools,
    order_of_work,
    pressed_and_driven,
    reading_faults,
    sealant_film,
    shift_and_lockout,
    shims_and_preload,
    strip_mark_clean,
    threaded_joints,
    whole_build,
)
from twoshaft.readings.lacking import LACKING, lacking
from twoshaft.readings.lots import Lot
from twoshaft.readings.wanted import wanted
from twoshaft.records import from_json, to_json
from twoshaft.stored.given import ISSUED, Issued
from twoshaft.units.carried import Needed, first_lack
from twoshaft.units.loader import load_unit, shipped_units
from twoshaft.units.unit import Unit

_PACKAGES = {
    package.MODULE: package
    for package in (
        course_and_safety,
        measuring_and_tools,
        order_of_work,
        threaded_joints,
        pressed_and_driven,
        shims_and_preload,
        sealant_film,
        shift_and_lockout,
        gear_train_and_checks,
        reading_faults,
        whole_build,
        strip_mark_clean,
        inspect_and_decide,
        close_out,
    )
}
MODULES = {id: _PACKAGES[id] for id in COURSE}
"""The readings package of each module, in the course's order: its ``Lot``, its ``TASKS``, its
``Given``, the record of what they give, and in ``NEEDS`` what a task needs of the unit."""


def not_carried(module: str, unit: Unit) -> dict[str, Needed]:
    """Tasks that a unit does not carry, and what it lacks for each.

    Parameters
    ----------
    module : str
        Module id.
    unit : Unit
        The unit on the bench.
    """
    needs = getattr(_package(module), "NEEDS", {})
    lacks = {task: first_lack(unit, needed) for task, needed in needs.items()}
    return {task: lack for task, lack in lacks.items() if lack}


@cache
def whole_units() -> tuple[str, ...]:
    """Ids of the shipped units that carry every task: on these every solution is proven whole."""
    return tuple(
        id
        for id in shipped_units()
        if not any(not_carried(module, load_unit(id)) for module in MODULES)
    )


def draw(
    module: str,
    unit: Unit,
    *,
    salt: str,
    learner: str,
    attempt: int,
    left_out: Collection[str] | None = None,
) -> Any:
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
    left_out : collection of str, optional
        Tasks that nobody is given; those that the unit does not carry, if not said, and in a
        practice copy those that cannot be drawn.

    Returns
    -------
    Record
        The module's ``Given``, with a member for each task that is not left out. Units stand in
        the names of figures. It holds no answers: the models find those from it.

    Raises
    ------
    CourseError
        When no module has this id.
    UnitFileError
        When the unit lacks a section, or holds too little for one of the tasks.
    """
    package = _package(module)
    practice = left_out is None and attempt == 0
    if left_out is None:
        left_out = not_carried(module, unit)
    lot = _lot(package, unit, module, salt, learner, attempt)
    drawn = {}
    for name, task in package.TASKS.items():
        if name not in left_out:
            try:
                drawn[name] = _drawn(task, lot, module, name)
            except CourseError:
                if not practice:
                    raise
    return package.Given(**drawn)


def cannot_be_drawn(
    module: str,
    unit: Unit,
    *,
    salt: str,
    learner: str,
    attempt: int,
    left_out: Collection[str] = (),
) -> Iterator[tuple[str, CourseError]]:
    """Tasks that cannot be drawn for a learner, each with the reason.

    Parameters
    ----------
    module, unit, salt, learner, attempt
        As in :func:`draw`.
    left_out : collection of str
        Tasks that are left out anyway.

    Raises
    ------
    UnitFileError
        When the unit lacks what the whole module needs.
    """
    package = _package(module)
    lot = _lot(package, unit, module, salt, learner, attempt)
    for name, task in package.TASKS.items():
        if name not in left_out:
            try:
                _drawn(task, lot, module, name)
            except CourseError as error:
                yield name, error


def _package(module: str) -> Any:
    if module not in MODULES:
        known = ", ".join(MODULES)
        raise CourseError(f"there is no module {module!r}", mend=f"use one of: {known}")
    return MODULES[module]


def given_in(module: str, stored: Any) -> Any:
    """What was issued, as the record that was drawn.

    Parameters
    ----------
    module : str
        Module id.
    stored : dict
        The ``given`` of an issued record.

    Raises
    ------
    CourseError
        When it does not fit this version of the course.
    """
    if module not in MODULES:  # nobody here knows what it is made of
        return stored
    return from_json(MODULES[module].Given, stored, f"what was issued for “{module}”")


def _drawn(task: Callable[[Any], Any], lot: Lot, module: str, name: str) -> Any:
    takes = wanted(module, name) or lot.MEND
    try:
        return task(lot)
    except UnitFileError as error:
        if error.mend != lot.MEND:
            raise
        raise UnitFileError(error.what, where=error.where, mend=takes) from error
    except CourseError:
        raise
    except LACKING as error:
        raise lacking(error, lot.unit, module, name, takes) from error


def _lot(package: Any, unit: Unit, module: str, salt: str, learner: str, attempt: int) -> Any:
    try:
        return package.Lot.of(unit, module, salt, learner, attempt)
    except CourseError:
        raise
    except LACKING as error:
        raise lacking(error, unit, module, None, package.Lot.MEND) from error


def issue_record(
    module: str,
    unit: Unit,
    *,
    salt: str,
    learner: str,
    attempt: int,
    left_out: Collection[str] | None = None,
) -> dict:
    """What was issued to a learner, with the versions it was drawn under.

    Parameters
    ----------
    module, unit, salt, learner, attempt, left_out
        As in :func:`draw`.

    Returns
    -------
    dict
        Plain data to be kept; marking uses it whatever the course's version has become.
    """
    given = draw(module, unit, salt=salt, learner=learner, attempt=attempt, left_out=left_out)
    return record_of(given, module, unit, learner=learner, attempt=attempt)


def record_of(given: Any, module: str, unit: Unit, *, learner: str, attempt: int) -> dict:
    """The record of what was issued, as :func:`issue_record` gives it, of what was drawn already.

    Parameters
    ----------
    given : Record
        What :func:`draw` gave.
    module, unit, learner, attempt
        As in :func:`draw`.
    """
    issued = Issued(
        learner=learner,
        module=module,
        attempt=attempt,
        unit=unit.identity.id,
        unit_version=unit.identity.version,
        course_version=__version__,
        given=to_json(given),
    )
    return ISSUED.plain(issued)
