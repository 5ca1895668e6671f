"""What an assessor decides in the place of the marking: a must-pass item, or a whole outcome.

A decision is of the work that it was made on: work that is handed in later is marked anew, and the
decision then is only told.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.marking.outcomes import Decision, Decisions
from twoshaft_grader.stored.lines import CHANGES, Change


def decide(
    cohort: Cohort, assigned: Assigned, learner: str, about: str, *, holds: bool, by: str, why: str
) -> Change:
    """Decide of a must-pass item, or of a whole outcome, in the place of the marking.

    Parameters
    ----------
    about : str
        Name of a must-pass field, or id of an outcome of the assignment.
    holds : bool
        Whether the item is passed, or the outcome enough.
    by : str
        Somebody on the register of assessors.

    Raises
    ------
    CohortError
        When nothing is marked, it is neither, the assessor is not registered, or the reason is
        missing.
    """
    by = assessor_named(cohort, by, needed=True)
    if not why.strip():
        raise CohortError("the reason is missing", mend="say why")
    mark = read_mark(cohort.mark_file(learner, assigned.name))
    if mark is None or mark.sheet is None:
        raise CohortError(f"{learner} has no mark in {assigned.name}", mend="mark it first")
    items = {one.name: one.passed for one in mark.sheet.fields if one.must_pass}
    outcomes = {one.id: one.met for one in mark.sheet.outcomes}
    if about not in items and about not in outcomes:
        known = ", ".join((*outcomes, *items))
        raise CohortError(
            f'{assigned.name} has neither an outcome nor a must-pass item "{about}"',
            mend=f"choose one of these: {known}",
        )
    kind: Literal["must-pass", "outcome"] = "outcome" if about in outcomes else "must-pass"
    earlier = decisions_of(cohort, assigned.name, learner, mark.submission)
    known_of = earlier.outcomes if kind == "outcome" else earlier.fields
    marked = outcomes[about] if kind == "outcome" else items[about]
    before = known_of[about].holds if about in known_of else marked
    what = f"{learner} {assigned.name} {about}"
    with act(cohort.root, f"decide of a {kind}", what, by=by, why=why) as told:
        told.before, told.after = _word(before), _word(holds)
        change = Change(
            at=stamp(now()), assignment=assigned.name, learner=learner, task=about,
            before=float(before), after=float(holds), by=by, why=why.strip(), kind=kind,
            submission=mark.submission,
        )  # fmt: skip
        CHANGES.append(cohort.log("changes"), change)
    return change


def _word(holds: bool) -> str:
    return "enough" if holds else "not yet"


def decisions_of(cohort: Cohort, assignment: str, learner: str, submission: str) -> Decisions:
    """The last decisions on a learner's work; those on other work do not count."""
    return decisions_in(CHANGES.read(cohort.log("changes")), assignment, learner, submission)


def decisions_in(
    lines: Iterable[Change], assignment: str, learner: str, submission: str
) -> Decisions:
    """The same, from the lines of the log."""
    found: dict[str, dict[str, Decision]] = {"must-pass": {}, "outcome": {}}
    for line in lines:
        mine = (line.assignment, line.learner, line.submission)
        if line.kind != "points" and mine == (assignment, learner, submission):
            found[line.kind][line.task] = Decision(line.after == 1, line.by, line.at, line.why)
    return Decisions(found["must-pass"], found["outcome"])


def changes_of(cohort: Cohort) -> list[Change]:
    """Every change made with a name, oldest first."""
    return list(CHANGES.read(cohort.log("changes")))
