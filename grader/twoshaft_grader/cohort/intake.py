"""Take a roster into the cohort: list, gradebook, sign-in words, workplace, readings."""

from __future__ import annotations

from dataclasses import dataclass, replace

from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.assign import issue_to_all
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner, read_roster, roster_text
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import roster_alone
from twoshaft_grader.cohort.withdrawn import withdrawn_of, write_withdrawn


@dataclass(frozen=True)
class TakenIn:
    """What an intake did: learner ids, and how many readings were issued."""

    added: tuple[str, ...]
    changed: tuple[str, ...]
    kept: tuple[str, ...]
    issued: int


@dataclass(frozen=True)
class Change:
    """What taking a roster in would do about one learner, who stays or comes as ``learner``."""

    learner: Learner
    before: Learner | None
    withdrawn: bool = False

    @property
    def words(self) -> str:
        """In words: new, comes back, what is corrected, or as before."""
        if self.withdrawn:
            return "was withdrawn, comes back"
        if self.before is None:
            return "new"
        told = []
        if self.before.name != self.learner.name:
            told.append(f"was {self.before.name}")
        if self.before.group != self.learner.group:
            told.append(f"was in group {self.before.group or 'none'}")
        return "; ".join(told) or "as before"


def roster_of(cohort: Cohort) -> list[Learner]:
    """Everybody on the cohort's roster, by id; empty before the first intake.

    Raises
    ------
    RosterError
        When the cohort's own roster file was damaged.
    """
    return read_roster(cohort.roster_file) if cohort.roster_file.exists() else []


def take_in(cohort: Cohort, learners: list[Learner], *, by: str = "") -> TakenIn:
    """Add learners and renew the names of those already there. Nobody is taken off; who was
    withdrawn and is among them comes back.
    """
    with act(cohort.root, "take in a roster", by=by) as told, roster_alone(cohort):
        taken = _take_in(cohort, learners)
        told.what = ", ".join((*taken.added, *taken.changed))
        told.after = f"{len(taken.added)} added, {len(taken.changed)} corrected"
    return taken


def would_change(cohort: Cohort, learners: list[Learner]) -> tuple[list[Change], list[Learner]]:
    """What taking learners in would do about each, and who is on the roster and not among them."""
    known = {learner.id: learner for learner in roster_of(cohort)}
    out = {one.id for one in withdrawn_of(cohort)}
    incoming = _with_known_ids(cohort, learners)
    changes = [Change(one, known.get(one.id), one.id in out) for one in incoming]
    coming = {one.id for one in incoming}
    return changes, [one for id, one in known.items() if id not in coming]


def _with_known_ids(cohort: Cohort, learners: list[Learner]) -> list[Learner]:
    """An id typed with other capitals is the same learner and the same folder."""
    known = [*roster_of(cohort), *withdrawn_of(cohort)]
    by_folded_id = {one.id.casefold(): one.id for one in known}
    return [replace(one, id=by_folded_id.get(one.id.casefold(), one.id)) for one in learners]


def _take_in(cohort: Cohort, learners: list[Learner]) -> TakenIn:
    known = {learner.id: learner for learner in roster_of(cohort)}
    incoming = _with_known_ids(cohort, learners)
    added = tuple(learner.id for learner in incoming if learner.id not in known)
    changed = tuple(
        learner.id for learner in incoming if learner.id in known and known[learner.id] != learner
    )
    issued = enter(cohort, known | {learner.id: learner for learner in incoming})
    taken = {learner.id for learner in incoming}
    return TakenIn(added, changed, tuple(id for id in sorted(known) if id not in taken), issued)


def enter(cohort: Cohort, people: dict[str, Learner]) -> int:
    """Let the roster be these people, by id; returns how many sets of readings were issued.

    Call it under :func:`roster_alone`.
    """
    from twoshaft_grader.cohort.workplace import prepare_workplace

    everybody = [people[id] for id in sorted(people)]
    with backbone.gradebook(cohort) as book:
        for learner in everybody:
            book.update_or_create_student(
                learner.id, first_name=learner.given_name, last_name=learner.family_name
            )
    prepare_workplace(cohort, everybody)
    issued = issue_to_all(cohort, everybody)
    # Last, so that a run cut short is taken for not done and is done again.
    write_roster(cohort, everybody)
    out = withdrawn_of(cohort)
    if any(one.id in people for one in out):
        write_withdrawn(cohort, [one for one in out if one.id not in people])
    return issued


def write_roster(cohort: Cohort, people: list[Learner]) -> None:
    """Write the roster; there is no file where there is nobody."""
    if people:
        files.write_whole(cohort.roster_file, roster_text(people))
    else:
        files.remove(cohort.roster_file)
