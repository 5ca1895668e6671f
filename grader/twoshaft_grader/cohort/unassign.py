"""Take an assignment back while nobody has begun it."""

from __future__ import annotations

import contextlib
from typing import TYPE_CHECKING

from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.jobsheet.gaps import count_answers
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.arrival import arrivals
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.extensions import forget_extensions
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import roster_alone, turn

if TYPE_CHECKING:
    from nbgrader.api import Gradebook


def who_has_begun(cohort: Cohort, assigned: Assigned, learners: list[Learner]) -> list[str]:
    """Ids of those who have answered something, or handed it in."""
    waiting = {one.learner for one in arrivals(cohort, assigned.name)}
    return [one.id for one in learners if one.id in waiting or _begun(cohort, assigned, one.id)]


def _begun(cohort: Cohort, assigned: Assigned, learner: str) -> bool:
    place = cohort.place(learner, assigned.name)
    filled = count_answers(place)
    own_code = bool(assigned.code_outcome) and place.is_dir()  # who writes code leaves no sheet
    return (
        own_code
        or bool(filled and filled.begun)
        or cohort.submitted(learner, assigned.name).exists()
        or cohort.mark_file(learner, assigned.name).exists()
    )


def take_assignment_back(
    cohort: Cohort, assigned: Assigned, learners: list[Learner], *, by: str = "", why: str = ""
) -> list[str]:
    """Take an assignment back; returns who still has a copy that only they can take away.

    Raises
    ------
    CohortError
        When somebody has begun it: who; or another run is under way.
    """
    name = assigned.name
    with (
        act(cohort.root, "take an assignment back", name, by=by, why=why),
        turn(cohort),
        roster_alone(cohort),
    ):
        out = cohort.outbound(name)
        aside, goes = out.with_name(f".{name}.part"), out.with_name(f".{name}.goes.part")
        if out.exists():  # else a run that was cut short has put it aside
            files.remove(aside)
            files.remove(goes)
            system.rename(out, aside)  # from here on nobody gets it
        if aside.exists():
            if begun := who_has_begun(cohort, assigned, learners):
                system.rename(aside, out)
                raise CohortError(
                    f"{name} stays, since somebody has begun it: {', '.join(begun)}",
                    mend="give a later date, or hand out a further attempt",
                )
            system.rename(aside, goes)  # from here on it goes, whoever begins
        left = [one.id for one in learners if not _copy_goes(cohort, one.id, name)]
        forget_extensions(cohort, name)
        with backbone.gradebook(cohort) as book:
            _from_gradebook(book, name)
        for place in (goes, cohort.root / "release" / name, cohort.root / "issued" / name):
            files.remove(place)
        # Last, and at once: until then a run cut short is finished by the same call.
        last = cohort.root / ".taken-back.part"
        files.remove(last)
        system.rename(cohort.source(name), last)
        files.remove(last)
    return left


def _copy_goes(cohort: Cohort, learner: str, name: str) -> bool:
    """Take a learner's untouched copy away; False where it belongs to their own account."""
    place = cohort.place(learner, name)
    try:
        files.remove(place)
    except PermissionError:
        return False
    return True


def _from_gradebook(book: Gradebook, name: str) -> None:
    from nbgrader.api import MissingEntry

    with contextlib.suppress(MissingEntry):
        book.remove_assignment(name)
