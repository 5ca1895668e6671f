"""Where everybody stands: from not fetched to given back."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from twoshaft.jobsheet.gaps import Filled, count_answers
from twoshaft.outcomes import load_outcomes
from twoshaft_grader.cohort.arrival import arrivals, hand_in_time
from twoshaft_grader.cohort.assign import Assigned, assignments_of
from twoshaft_grader.cohort.extensions import due_for
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import MARKED, read_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.observations import by_outcome, observations_of
from twoshaft_grader.cohort.roster import Learner


class Stage(StrEnum):
    """How far a learner has come with an assignment."""

    NOT_FETCHED = "not fetched"
    NOT_BEGUN = "fetched, not begun"
    UNDER_WAY = "under way"
    HANDED_IN = "handed in"
    COLLECTED = "collected"
    UNREADABLE = "cannot be read"
    NOT_YET = "marked, not yet"
    ENOUGH = "marked, enough"
    DAMAGED = "cannot be told"


@dataclass(frozen=True)
class Standing:
    """Where one learner stands with one assignment.

    Attributes
    ----------
    answered, asked : int
        Fields of the learner's own copy with a whole answer, and fields in all.
    unread : int
        Fields with an answer that cannot be read, as the learner's start page counts them.
    points, maximum : float or None
        None until marked.
    late : bool or None
        None where nobody knows.
    given_back : bool
        Whether feedback was returned.
    seen_met, seen_not_yet : int
        Outcomes of the module by the last that was observed of each.
    """

    learner: Learner
    assignment: str
    stage: Stage
    answered: int
    unread: int
    asked: int
    points: float | None
    maximum: float | None
    late: bool | None
    given_back: bool
    seen_met: int
    seen_not_yet: int
    trouble: str = ""
    """Why it cannot be told; empty where it can."""


def progress(cohort: Cohort, assignments: list[Assigned] | None = None) -> list[Standing]:
    """Where everybody stands, by assignment and learner id.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    people = roster_of(cohort)
    standings = []
    for assigned in assignments_of(cohort) if assignments is None else assignments:
        asked = assigned.fields
        if not asked and people:
            from twoshaft_grader.cohort.marking_run import blank_sheet  # of earlier versions only

            asked = len(blank_sheet(cohort, assigned, people[0].id).fields)
        waiting = {one.learner for one in arrivals(cohort, assigned.name)}
        for person in assigned.among(people):
            left: list[NotDone] = []
            with going_on(person.id, left):
                standings.append(_standing(cohort, assigned, person, asked, person.id in waiting))
            standings += [
                Standing(
                    person, assigned.name, Stage.DAMAGED, 0, 0, asked, None, None, None, False,
                    0, 0, one.why,
                )
                for one in left
            ]  # fmt: skip
    return standings


def _standing(
    cohort: Cohort, assigned: Assigned, person: Learner, asked: int, waiting: bool
) -> Standing:
    mark = read_mark(cohort.mark_file(person.id, assigned.name))
    place = cohort.place(person.id, assigned.name)
    filled = count_answers(place) or Filled()  # a sheet that cannot be read counts as none
    if mark is not None and mark.sheet is not None and mark.state == MARKED:
        stage = Stage.ENOUGH if mark.sheet.met else Stage.NOT_YET
    elif mark is not None:
        stage = Stage.UNREADABLE
    elif cohort.submitted(person.id, assigned.name).is_dir():
        stage = Stage.COLLECTED
    elif waiting:
        stage = Stage.HANDED_IN
    elif filled.begun:
        stage = Stage.UNDER_WAY
    elif place.is_dir():
        stage = Stage.NOT_BEGUN
    else:
        stage = Stage.NOT_FETCHED
    asked_for = load_outcomes(module=assigned.module)
    seen = by_outcome(observations_of(cohort, person.id))
    last = [seen[id][-1].met for id in asked_for if id in seen]
    due = due_for(cohort, assigned, person.id)
    moment = hand_in_time(cohort, person.id, assigned.name)
    return Standing(
        person,
        assigned.name,
        stage,
        filled.answered,
        filled.unread,
        asked,
        mark.sheet.points if mark and mark.sheet else None,
        mark.sheet.maximum if mark and mark.sheet else None,
        moment > due if moment and due else None,
        any(cohort.feedback(person.id, assigned.name).glob("*.html")),
        last.count(True),
        last.count(False),
    )
