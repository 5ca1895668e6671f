"""The appeal log: who asked for a mark to be looked at again, and what was ruled and why."""

from __future__ import annotations

from dataclasses import replace

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.trail import account, act
from twoshaft_grader.cohort.turn import alone
from twoshaft_grader.stored.appeals import APPEALS, Appeal, Appeals


def appeals_of(cohort: Cohort) -> tuple[Appeal, ...]:
    """Every appeal, by number.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    found = APPEALS.read_if_any(cohort.root / APPEALS.file)
    return found.appeals if found else ()


def enter_appeal(
    cohort: Cohort, assigned: Assigned, learner: str, *, about: str = "", why: str, by: str = ""
) -> Appeal:
    """Write an appeal down.

    Parameters
    ----------
    about : str
        Task, must-pass item or outcome of the assignment; empty for the whole mark.
    why : str
        The learner's reason.

    Raises
    ------
    CohortError
        When nothing is marked, the mark has no such part, or the reason is missing.
    """
    if not why.strip():
        raise CohortError("the learner's reason is missing", mend="say why")
    mark = read_mark(cohort.mark_file(learner, assigned.name))
    if mark is None or mark.sheet is None:
        raise CohortError(f"{learner} has no mark in {assigned.name}", mend="mark it first")
    sheet = mark.sheet
    parts = [
        *(one.id for one in sheet.tasks),
        *(one.id for one in sheet.outcomes),
        *(one.name for one in sheet.fields if one.must_pass),
    ]
    if about and about not in parts:
        raise CohortError(
            f'the mark has no part "{about}"', mend=f"choose one of these: {', '.join(parts)}"
        )
    what = " ".join(part for part in (learner, assigned.name, about) if part)
    with (
        alone(cohort, "appeals", "appeals"),
        act(cohort.root, "enter an appeal", what, by=by, why=why) as told,
    ):
        known = appeals_of(cohort)
        entered = Appeal(
            number=max((one.number for one in known), default=0) + 1, learner=learner,
            assignment=assigned.name, about=about,
            why=why.strip(), at=stamp(now()), entered_by=by.strip() or account(),
        )  # fmt: skip
        APPEALS.write(cohort.root / APPEALS.file, Appeals((*known, entered)))
        told.after = f"appeal {entered.number}"
    return entered


def rule_on(cohort: Cohort, number: int, *, upheld: bool, by: str, why: str) -> Appeal:
    """Rule on an appeal. What follows from it, as another mark, is changed apart from this.

    Raises
    ------
    CohortError
        When there is no such appeal, it was ruled on, the assessor is not registered, or the
        reason is missing.
    """
    by = assessor_named(cohort, by, needed=True)
    if not why.strip():
        raise CohortError("the reason is missing", mend="say why")
    with alone(cohort, "appeals", "appeals"):
        known = appeals_of(cohort)
        one = next((one for one in known if one.number == number), None)
        if one is None:
            numbers = ", ".join(str(one.number) for one in known)
            raise CohortError(
                f"there is no appeal {number}",
                mend=f"choose one of these: {numbers}" if known else "none is entered yet",
            )
        if one.ruling:
            raise CohortError(
                f"appeal {number} was ruled on by {one.ruled_by}: {one.ruling}",
                mend="enter another appeal",
            )
        what = f"{number}, {one.learner} {one.assignment} {one.about}".strip()
        with act(cohort.root, "rule on an appeal", what, by=by, before="open", why=why) as told:
            ruled = replace(
                one, ruling="upheld" if upheld else "not upheld", ruled_at=stamp(now()),
                ruled_by=by, reason=why.strip(),
            )  # fmt: skip
            kept = tuple(ruled if appeal is one else appeal for appeal in known)
            APPEALS.write(cohort.root / APPEALS.file, Appeals(kept))
            told.after = ruled.ruling
    return ruled
