"""What an assessor saw of a learner: evidence that no notebook can give.

``observations/<learner>.json`` holds all of a learner's, oldest first; none is ever taken away,
a later one of the same outcome counts in its place.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from filelock import FileLock

from twoshaft.errors import CohortError
from twoshaft.outcomes import Evidence, Observation, load_outcomes
from twoshaft_grader.cohort.folder import Cohort, now, stamp
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.stored.lines import DOINGS, Doing
from twoshaft_grader.stored.observations import OBSERVATIONS, Observations

FOLDER = "observations"
_LOCK = ".lock"


@dataclass(frozen=True)
class Listed:
    """An observation with its learner; ``last``: no later one of the outcome replaces it."""

    learner: Learner
    seen: Observation
    last: bool


def observe(
    cohort: Cohort,
    learners: list[Learner],
    learner: str,
    outcome: str,
    *,
    by: str,
    met: bool,
    kind: str = Evidence.AT_THE_BENCH,
    note: str = "",
) -> Observation:
    """Record what somebody saw of one outcome; said again on the same day, it stands there once.

    Raises
    ------
    CohortError
        When learner or outcome is not known, nobody is named, or a "not yet" gives no note.
    """
    _check_learner(learners, learner)
    _check_outcome(outcome)
    if not by.strip():
        raise CohortError("nobody is named who saw it", mend="give the name with --by")
    if not met and not note.strip():
        raise CohortError("a “not yet” says what is missing", mend="give it with --note")
    if kind not in (Evidence.SUPERVISED, Evidence.AT_THE_BENCH):
        raise CohortError(
            f'"{kind}" is no kind of observation', mend="use supervised or at-the-bench"
        )
    seen = Observation(outcome, met, Evidence(kind), by.strip(), stamp(now()), note.strip())
    path = _file(cohort, learner)
    path.parent.mkdir(exist_ok=True)
    with FileLock(path.parent / _LOCK, timeout=30):
        before = observations_of(cohort, learner)
        last = next((one for one in reversed(before) if one.outcome == outcome), None)
        # The same once more on the same day: the command was repeated, as after a cut.
        if last and replace(seen, at=last.at) == last and seen.at[:10] == last.at[:10]:
            seen = last
        else:
            OBSERVATIONS.write(path, Observations(learner, (*before, seen)))
        told = Doing(
            at=seen.at, did="observe", learner=learner, outcome=seen.outcome, met=seen.met,
            kind=seen.kind, by=seen.by, note=seen.note,
        )  # fmt: skip
        if told not in DOINGS.read(cohort.log("doings")):
            DOINGS.append(cohort.log("doings"), told)
    return seen


def observations_of(cohort: Cohort, learner: str) -> tuple[Observation, ...]:
    """A learner's observations, oldest first.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    found = OBSERVATIONS.read_if_any(_file(cohort, learner))
    return found.seen if found else ()


def list_observations(
    cohort: Cohort, learners: list[Learner], *, learner: str = "", outcome: str = ""
) -> list[Listed]:
    """Everything that was observed, oldest first: of all, of one learner, of one outcome.

    Raises
    ------
    CohortError
        When learner or outcome is not known, or a stored file is damaged.
    """
    if learner:
        _check_learner(learners, learner)
    if outcome:
        _check_outcome(outcome)
    found = []
    for person in learners:
        if learner in ("", person.id):
            seen = observations_of(cohort, person.id)
            last = {one.outcome: place for place, one in enumerate(seen)}
            found += [
                Listed(person, one, last[one.outcome] == place)
                for place, one in enumerate(seen)
                if outcome in ("", one.outcome)
            ]
    return sorted(found, key=lambda one: one.seen.at)


def by_outcome(seen: tuple[Observation, ...]) -> dict[str, tuple[Observation, ...]]:
    """Observations by outcome, oldest first in each."""
    return {id: tuple(o for o in seen if o.outcome == id) for id in {o.outcome for o in seen}}


def _check_learner(learners: list[Learner], id: str) -> None:
    if id not in {one.id for one in learners}:
        raise CohortError(f'nobody on the roster has the id "{id}"', mend="check the id")


def _check_outcome(id: str) -> None:
    if id not in (known := load_outcomes()):
        module = next((o for o in known.values() if id in o.modules), None)
        names = [o.id for o in known.values() if not module or id in o.modules]
        raise CohortError(f'no outcome is called "{id}"', mend=f"use one of: {_list(names)}")


def _file(cohort: Cohort, learner: str):
    return cohort.root / FOLDER / f"{learner}.json"


def _list(names: list[str]) -> str:
    return ", ".join(names[:12]) + (", …" if len(names) > 12 else "")
