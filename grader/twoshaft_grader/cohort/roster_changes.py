"""Move, rename, withdraw and bring back learners of the cohort."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import enter, roster_of, write_roster
from twoshaft_grader.cohort.roster import Learner, checked
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import roster_alone
from twoshaft_grader.cohort.withdrawn import withdrawn_of, write_withdrawn
from twoshaft_grader.cohort.workplace import list_people


def move(cohort: Cohort, ids: Collection[str], group: str, *, by: str = "") -> None:
    """Let learners be of another group; an empty one is none.

    Raises
    ------
    CohortError
        When nobody has one of the ids, or no group can be called so.
    """
    with act(cohort.root, "move to a group", ", ".join(ids), by=by) as told, roster_alone(cohort):
        people = {one.id: one for one in roster_of(cohort)}
        moved = [checked(replace(one, group=group)) for one in _named(people, ids)]
        groups = dict.fromkeys(people[one.id].group or "no group" for one in moved)
        told.before, told.after = ", ".join(groups), group or "no group"
        enter(cohort, people | {one.id: one for one in moved})


def rename(
    cohort: Cohort, id: str, *, family_name: str = "", given_name: str = "", by: str = ""
) -> Learner:
    """Correct a learner's name; the id stays. An empty part stays as it is.

    Raises
    ------
    CohortError
        When nobody has this id, or nobody can be called so.
    """
    with act(cohort.root, "rename", id, by=by) as told, roster_alone(cohort):
        people = {one.id: one for one in roster_of(cohort)}
        (one,) = _named(people, [id])
        new = checked(
            replace(
                one,
                family_name=family_name or one.family_name,
                given_name=given_name or one.given_name,
            )
        )
        told.before, told.after = one.name, new.name
        enter(cohort, people | {id: new})
    return new


def withdraw(cohort: Cohort, ids: Collection[str], *, why: str = "", by: str = "") -> None:
    """Take learners off every list; what they did stays, and they can be brought back.

    They can sign in no more. A run that was cut short is finished by the same call.

    Raises
    ------
    CohortError
        When nobody has one of the ids.
    """
    with act(cohort.root, "withdraw", ", ".join(ids), by=by, why=why), roster_alone(cohort):
        people = {one.id: one for one in roster_of(cohort)}
        gone = _named(people, ids)
        known = {one.id: one for one in withdrawn_of(cohort)} | {one.id: one for one in gone}
        stay = [one for one in people.values() if one not in gone]
        write_withdrawn(cohort, list(known.values()))
        list_people(cohort, stay)
        write_roster(cohort, stay)


def bring_back(cohort: Cohort, ids: Collection[str], *, by: str = "") -> None:
    """Let learners who were withdrawn be of the group again, with a new sign-in word each.

    Raises
    ------
    CohortError
        When nobody who was withdrawn has one of the ids.
    """
    with act(cohort.root, "bring back", ", ".join(ids), by=by), roster_alone(cohort):
        back = _named({one.id: one for one in withdrawn_of(cohort)}, ids, "who was withdrawn")
        people = {one.id: one for one in roster_of(cohort)}
        enter(cohort, people | {one.id: one for one in back})


def _named(
    people: dict[str, Learner], ids: Collection[str], where: str = "on the roster"
) -> list[Learner]:
    if not ids:
        raise CohortError("no learner is chosen", mend="choose one or more")
    for id in ids:
        if id not in people:
            raise CohortError(f'nobody {where} has the id "{id}"', mend="check the id")
    return [people[id] for id in dict.fromkeys(ids)]
