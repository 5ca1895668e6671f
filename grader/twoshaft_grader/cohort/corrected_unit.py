"""A corrected unit: what changes, whom it touches, and taking it into a cohort.

Lessons, practice and whatever is handed out from then on follow the new unit. What is out keeps
the unit that it was made with, for late comers too, so readings of two states never mix.
"""

from __future__ import annotations

import tempfile
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

from twoshaft.errors import CohortError, CourseError
from twoshaft.models.audit import sound_unit
from twoshaft.stored.assignment import UNIT
from twoshaft.units import Unit
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.arrival import arrivals
from twoshaft_grader.cohort.assign import Assigned, assigned_unit, assignments_of, cohort_unit
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.fit import Fit, fit
from twoshaft_grader.cohort.folder import Cohort, open_cohort
from twoshaft_grader.cohort.intake import roster_alone, roster_of
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.cohort.unit_changes import UnitChange, unit_changes
from twoshaft_grader.cohort.workplace import prepare_workplace
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE
from twoshaft_grader.stored.cohort import read_cohort, write_cohort

_LARGEST = 5_000_000
_SAMPLE = "somebody"  # whose readings show whether a module changes where nobody is on the roster


@dataclass(frozen=True)
class Touched:
    """What is out of a module, and what the correction would change in a fresh attempt.

    Attributes
    ----------
    assignment, unit_version : str
        What is out, and the version of the unit it keeps.
    learners, handed_in, marked : tuple of str
        Ids.
    fresh : str
        Of a fresh attempt, in words.
    """

    assignment: str
    unit_version: str
    learners: tuple[str, ...]
    handed_in: tuple[str, ...]
    marked: tuple[str, ...]
    fresh: str


@dataclass(frozen=True)
class Correction:
    """A corrected unit that was read, and what it would do.

    Attributes
    ----------
    text : bytes
        The file.
    old, new : str
        Name and version of the cohort's unit and of the corrected one.
    changes : tuple of UnitChange
    touched : tuple of Touched
    """

    text: bytes
    old: str
    new: str
    changes: tuple[UnitChange, ...]
    touched: tuple[Touched, ...]


def read_correction(
    cohort: Cohort, file: Path, content: Content, *, step: Callable[[], None] = lambda: None
) -> Correction:
    """Read a corrected unit file, and say what it would change and whom it touches.

    Nothing is written. Each module that is out is tried on both units.

    Parameters
    ----------
    step : callable
        Called when an assignment that is out was looked at.

    Raises
    ------
    UnitFileError
        When there is something to mend in the file, or it needs files beside it.
    CohortError
        When the file differs and says the same version, so that records could not tell them apart.
    """
    text, new = _read(file)
    old = cohort_unit(cohort)
    changes = unit_changes(old, new)
    same = (old.identity.id, str(old.identity.version)) == (
        new.identity.id, str(new.identity.version),
    )  # fmt: skip
    if changes and same:
        raise CohortError(
            f"the file differs from the cohort's unit, and both say version {new.identity.version}",
            where=file.name,
            mend="write a new version into it, so that records can tell the two apart",
        )
    people = [one.id for one in roster_of(cohort)]
    touched = []
    for assigned in assignments_of(cohort):
        mine = tuple(id for id in people if assigned.is_for(id))
        inbound = {one.learner for one in arrivals(cohort, assigned.name)}
        in_ = tuple(o for o in mine if o in inbound or cohort.submitted(o, assigned.name).is_dir())
        marked = tuple(one for one in mine if read_mark(cohort.mark_file(one, assigned.name)))
        fresh = _fresh(cohort, content, assigned, new, mine) if changes else "as before"
        touched.append(Touched(assigned.name, assigned.unit_version, mine, in_, marked, fresh))
        step()
    return Correction(text, _called(old), _called(new), changes, tuple(touched))


def take_correction(cohort: Cohort, correction: Correction, *, by: str = "", why: str = "") -> None:
    """Take a corrected unit into the cohort; a run that was cut short is finished by the same call.

    Raises
    ------
    CohortError
        When the reason is missing, or another command is at work.
    """
    if not why.strip():
        raise CohortError("the reason is missing", mend="say what was wrong in the unit")
    root = cohort.root
    with (
        act(root, "take a corrected unit", correction.new, by=by, why=why) as told,
        turn(cohort),
        roster_alone(cohort),
    ):
        told.before = correction.old
        told.after = f"{len(correction.changes)} changes"
        files.write_whole(root / UNIT, correction.text)
        entries = read_cohort(root / COHORT_FILE)
        if entries.unit != UNIT:  # until now it was a shipped one
            write_cohort(root / COHORT_FILE, replace(entries, unit=UNIT))
        now = open_cohort(root)
        prepare_workplace(now, roster_of(now))  # lessons and practice follow


def _called(unit: Unit) -> str:
    return f"{unit.identity.name}, version {unit.identity.version}"


def _read(file: Path) -> tuple[bytes, Unit]:
    """A unit's file, which must stand without the files beside it and have nothing to correct."""
    try:
        if file.stat().st_size > _LARGEST:
            raise CohortError(f"{file.name} is larger than 5 MB", mend="choose a unit file")
        text = file.read_bytes()
    except OSError as error:
        raise CohortError(f"{file} cannot be read ({error.strerror})", mend="check it") from None
    with tempfile.TemporaryDirectory(prefix="twoshaft-unit-") as folder:
        alone = Path(folder) / file.name
        files.write_whole(alone, text, sync=False)
        return text, sound_unit(alone, called=file.name)


def _fresh(
    cohort: Cohort, content: Content, assigned: Assigned, new: Unit, learners: tuple[str, ...]
) -> str:
    """What the correction changes in another attempt at a module that is out."""
    if assigned.code_outcome:
        return "as before: it is your own notebook"
    solution = content.solution(assigned.module)
    who = list(learners) or [_SAMPLE]

    def fitted(unit: Unit) -> Fit:
        return fit(
            solution, assigned.module, unit, who, salt=cohort.salt, attempt=assigned.attempt,
            work_out=1,
        )  # fmt: skip

    try:
        now = fitted(new)
    except CourseError as error:
        return f"cannot be handed out any more: {error.sentence}"
    was = fitted(assigned_unit(cohort, assigned))
    said = []
    if gone := [title for title in now.without if title not in was.without]:
        said.append(f"without {', '.join(gone)}")
    if come := [title for title in was.without if title not in now.without]:
        said.append(f"with {', '.join(come)}")
    if [_plain(one) for one in was.records] != [_plain(one) for one in now.records]:
        said.append("other readings")
    if _right(was) != _right(now):
        said.append("other right answers")
    return "; ".join(said) or "as before"


def _plain(record: dict) -> dict:
    return {key: value for key, value in record.items() if not key.startswith("unit")}


def _right(fits: Fit) -> dict[str, str]:
    return {name: repr(one.value) for name, one in fits.worked[0].references.items()}
