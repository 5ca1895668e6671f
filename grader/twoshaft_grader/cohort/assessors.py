"""The register of assessors: whose word counts when something is observed, changed or decided."""

from __future__ import annotations

import re
from dataclasses import replace

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.one_line import one_line
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import alone
from twoshaft_grader.stored.assessors import ASSESSORS, Assessor, Register

_ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


def assessors_of(cohort: Cohort) -> tuple[Assessor, ...]:
    """Everybody who is or was on the register.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    found = ASSESSORS.read_if_any(cohort.root / ASSESSORS.file)
    return found.people if found else ()


def enter_assessor(cohort: Cohort, id: str, name: str, *, role: str = "", by: str = "") -> Assessor:
    """Put somebody on the register.

    Raises
    ------
    CohortError
        When the id will not do, or somebody on the register has id or name.
    """
    name, role = one_line("the name", name), one_line("the role", role)
    if not _ID.fullmatch(id) or len(id) > 40:
        raise CohortError(
            f'the id "{id[:40]}" will not do', mend="use lower-case letters, digits and hyphens"
        )
    if not name:
        raise CohortError("the assessor's name is missing", mend="give it after the id")
    with (
        alone(cohort, "assessors", "the register of assessors"),
        act(cohort.root, "enter an assessor", id, by=by) as told,
    ):
        known = assessors_of(cohort)
        for one in known:
            if not one.until and {one.id, one.name.casefold()} & {id, name.casefold()}:
                raise CohortError(
                    f"{one.name} ({one.id}) is on the register already",
                    mend="choose another id, or take that one off first",
                )
        entered = Assessor(id=id, name=name, role=role, since=stamp(now()))
        ASSESSORS.write(cohort.root / ASSESSORS.file, Register((*known, entered)))
        told.after = f"{name}, {role}" if role else name
    return entered


def withdraw_assessor(cohort: Cohort, id: str, *, by: str = "", why: str = "") -> Assessor:
    """Take somebody off the register; what they signed stays.

    Raises
    ------
    CohortError
        When nobody on the register has this id.
    """
    with (
        alone(cohort, "assessors", "the register of assessors"),
        act(cohort.root, "take off an assessor", id, by=by, why=why) as told,
    ):
        known = assessors_of(cohort)
        found = [one for one in known if one.id == id and not one.until]
        if not found:
            raise CohortError(f'nobody on the register has the id "{id}"', mend=_who(known))
        gone = replace(found[0], until=stamp(now()))
        told.before = gone.name
        people = tuple(gone if one is found[0] else one for one in known)
        ASSESSORS.write(cohort.root / ASSESSORS.file, Register(people))
    return gone


def assessor_named(cohort: Cohort, by: str, *, needed: bool = False) -> str:
    """The name of an assessor from their id or name.

    Parameters
    ----------
    needed : bool
        Whether it must be somebody on the register. If not, any name will do as long as nobody
        is on it.

    Raises
    ------
    CohortError
        When nobody is named, or it is nobody on the register.
    """
    by = " ".join(by.split())
    if not by:
        raise CohortError("nobody is named who saw or decided it", mend="name an assessor")
    known = assessors_of(cohort)
    if not known and not needed:
        return by
    for one in known:
        if not one.until and by.casefold() in (one.id, one.name.casefold()):
            return one.name
    raise CohortError(f'"{by[:80]}" is not on the register of assessors', mend=_who(known))


def _who(known: tuple[Assessor, ...]) -> str:
    on = ", ".join(f"{one.id} ({one.name})" for one in known if not one.until)
    return f"on it: {on}" if on else "put somebody on it first"
