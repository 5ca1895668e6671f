"""Take a roster into the cohort: list, gradebook, sign-in words, workplace, readings."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.assign import issue_to_all
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner, read_roster, roster_text
from twoshaft_grader.cohort.trail import act


@dataclass(frozen=True)
class TakenIn:
    """What an intake did: learner ids, and how many readings were issued."""

    added: tuple[str, ...]
    changed: tuple[str, ...]
    kept: tuple[str, ...]
    issued: int


def roster_of(cohort: Cohort) -> list[Learner]:
    """Everybody on the cohort's roster, by id; empty before the first intake.

    Raises
    ------
    RosterError
        When the cohort's own roster file was damaged.
    """
    return read_roster(cohort.roster_file) if cohort.roster_file.exists() else []


def take_in(cohort: Cohort, learners: list[Learner], *, by: str = "") -> TakenIn:
    """Add learners and renew the names of those already there. Nobody is taken off."""
    with act(cohort.root, "take in a roster", by=by) as told:
        taken = _take_in(cohort, learners)
        told.what = ", ".join((*taken.added, *taken.changed))
        told.after = f"{len(taken.added)} added, {len(taken.changed)} corrected"
    return taken


def _take_in(cohort: Cohort, learners: list[Learner]) -> TakenIn:
    from twoshaft_grader.cohort.workplace import prepare_workplace

    known = {learner.id: learner for learner in roster_of(cohort)}
    by_folded_id = {id.casefold(): id for id in known}
    # An id typed with other capitals is the same learner and the same folder.
    incoming = [
        Learner(
            by_folded_id.get(learner.id.casefold(), learner.id),
            learner.family_name,
            learner.given_name,
            learner.group,
        )
        for learner in learners
    ]
    added = tuple(learner.id for learner in incoming if learner.id not in known)
    changed = tuple(
        learner.id for learner in incoming if learner.id in known and known[learner.id] != learner
    )
    merged = known | {learner.id: learner for learner in incoming}
    everybody = [merged[id] for id in sorted(merged)]
    with backbone.gradebook(cohort) as book:
        for learner in everybody:
            book.update_or_create_student(
                learner.id, first_name=learner.given_name, last_name=learner.family_name
            )
    prepare_workplace(cohort, everybody)
    issued = issue_to_all(cohort, everybody)
    # Last, so that a run cut short is taken for not done and is done again.
    files.write_whole(cohort.roster_file, roster_text(everybody))
    taken = {learner.id for learner in incoming}
    return TakenIn(added, changed, tuple(id for id in sorted(known) if id not in taken), issued)
