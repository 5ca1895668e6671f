"""What an assessor saw of a learner: evidence that no notebook can give.

``observations/<learner>.json`` holds all of a learner's, oldest first; none is ever taken away.
A later one of the same outcome counts in its place, and one that was taken back says so.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date

from twoshaft.errors import CohortError
from twoshaft.outcomes import Evidence, Observation, Outcome, Seen, State, TakenBack, load_outcomes
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.one_line import one_line
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import alone
from twoshaft_grader.stored.observations import OBSERVATIONS, Observations

FOLDER = "observations"


@dataclass(frozen=True)
class Listed:
    """An observation with its learner and its number among theirs, from 1; ``last``: it counts, no
    later one of the outcome replaces it.
    """

    learner: Learner
    seen: Observation
    last: bool
    number: int


def observe(
    cohort: Cohort,
    learners: list[Learner],
    learner: str,
    outcome: str,
    *,
    by: str,
    met: bool | None = None,
    kind: str = Evidence.AT_THE_BENCH,
    note: str = "",
    criteria: Mapping[str, str] | None = None,
    seen_on: str = "",
    bench: str = "",
    unit: str = "",
    prior: bool = False,
    confirmed: bool = False,
) -> Observation:
    """Record what somebody saw of one outcome; said again on the same day, it stands there once.

    Parameters
    ----------
    by : str
        Id or name of an assessor on the register; any name as long as nobody is on it.
    met : bool, optional
        Whether it is enough; without, every criterion seen is.
    criteria : mapping of str to str
        Of each criterion, by id: seen, not yet or not tried.
    seen_on : str
        The day, as 2026-11-27; today where empty.
    prior : bool
        Evidence of prior learning, which the note names.
    confirmed : bool
        Whether the learner confirms it.

    Raises
    ------
    CohortError
        When learner, outcome or assessor is not known, the form is half filled, or a "not yet"
        gives no note.
    """
    _check_learner(learners, learner)
    asked = _outcome(outcome)
    by = assessor_named(cohort, by)
    if kind not in (Evidence.SUPERVISED, Evidence.AT_THE_BENCH):
        raise CohortError(
            f'"{kind}" is no kind of observation', mend="use supervised or at-the-bench"
        )
    seen_of = _criteria(asked, criteria or {})
    met = _is_met(met, seen_of)
    note = note.strip()
    if not met and not note:
        raise CohortError("a “not yet” says what is missing", mend="write it as the note")
    if prior and not note:
        raise CohortError(
            "prior learning says by what it is shown", mend="name the evidence in the note"
        )
    moment = now()
    today = moment.astimezone(cohort.zone).date()
    seen = Observation(
        outcome, met, Evidence(kind), by, stamp(moment), note, _day(seen_on, today),
        one_line("the bench", bench),
        unit.strip(), seen_of, prior, today.isoformat() if confirmed else "",
    )  # fmt: skip
    about = f"{learner} {outcome}"
    with (
        alone(cohort, FOLDER, "observations"),
        act(cohort.root, "observe", about, by=by, why=note) as told,
    ):
        before = every_observation_of(cohort, learner)
        last = next((o for o in reversed(before) if o.outcome == outcome), None)
        told.before = _word(last) if last else ""
        # The same once more on the same day: the command was repeated, as after a cut.
        if last and replace(seen, at=last.at) == last and seen.at[:10] == last.at[:10]:
            seen = last
        else:
            OBSERVATIONS.write(_file(cohort, learner), Observations(learner, (*before, seen)))
        told.after = f"{_word(seen)}, {kind}, seen on {seen.day}"
    return seen


def take_back(
    cohort: Cohort, learners: list[Learner], learner: str, number: int, *, by: str, why: str
) -> Observation:
    """Take an observation back; it stays in the list, with who took it back and why.

    Parameters
    ----------
    number : int
        Of the observation among the learner's, from 1.

    Raises
    ------
    CohortError
        When there is no such observation, it was taken back before, or the reason is missing.
    """
    _check_learner(learners, learner)
    by = assessor_named(cohort, by)
    if not why.strip():
        raise CohortError("the reason is missing", mend="say why")
    with alone(cohort, FOLDER, "observations"):
        before = every_observation_of(cohort, learner)
        if not 1 <= number <= len(before):
            raise CohortError(
                f"{learner} has no observation {number}",
                mend=f"choose 1 to {len(before)}" if before else "there is none yet",
            )
        seen = before[number - 1]
        if seen.taken_back:
            raise CohortError(
                f"observation {number} of {learner} was taken back by {seen.taken_back.by}",
                mend="leave it, or observe again",
            )
        about = f"{learner} {seen.outcome}, number {number}"
        with act(cohort.root, "take back", about, by=by, before=_word(seen), why=why) as told:
            gone = replace(seen, taken_back=TakenBack(by, stamp(now()), why.strip()))
            kept = (*before[: number - 1], gone, *before[number:])
            OBSERVATIONS.write(_file(cohort, learner), Observations(learner, kept))
            told.after = "taken back"
    return gone


def _outcome(id: str) -> Outcome:
    _check_outcome(id)
    return load_outcomes()[id]


def _criteria(asked: Outcome, said: Mapping[str, str]) -> tuple[tuple[str, Seen], ...]:
    """What was seen of each criterion, in the outcome's order: of all of them, or of none."""
    for id, what in said.items():
        if id not in asked.criteria:
            raise CohortError(
                f'{asked.id} has no criterion "{id}"', mend=f"use {_list(list(asked.criteria))}"
            )
        if what.replace("-", " ") not in set(Seen):
            raise CohortError(
                f'"{what}" says nothing of {id}', mend="write seen, not-yet or not-tried"
            )
    if open := [id for id in asked.criteria if said and id not in said]:
        raise CohortError(
            f"the form is half filled: nothing is said of {_list(open)}",
            mend="say seen, not-yet or not-tried of each",
        )
    return tuple((id, Seen(said[id].replace("-", " "))) for id in asked.criteria if said)


def _is_met(met: bool | None, seen_of: tuple[tuple[str, Seen], ...]) -> bool:
    not_seen = [f"{id} ({what})" for id, what in seen_of if what != Seen.SEEN]
    if met is None:
        if not seen_of:
            raise CohortError(
                "nothing says whether it is met",
                mend="say met or not yet, or fill every criterion in",
            )
        return not not_seen
    if met and not_seen:
        raise CohortError(
            f"“met” needs every criterion seen, and of these it was not: {_list(not_seen)}",
            mend="say not yet, or correct the criterion",
        )
    return met


def _day(text: str, today: date) -> str:
    """A day that is not after today; empty for today."""
    if not text:
        return ""
    try:
        day = date.fromisoformat(text)
    except ValueError:
        raise CohortError(f'"{text[:30]}" is no day', mend="write it as 2026-11-27") from None
    if day > today:
        raise CohortError(
            f"{day} has not come yet: by this machine it is {today}",
            mend="correct the day, or the machine's clock",
        )
    return "" if day == today else day.isoformat()


def _word(seen: Observation) -> str:
    word = State.MET if seen.met else State.NOT_YET
    return f"{word} (taken back)" if seen.taken_back else str(word)


def every_observation_of(cohort: Cohort, learner: str) -> tuple[Observation, ...]:
    """A learner's observations, oldest first, with those that were taken back.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    found = OBSERVATIONS.read_if_any(_file(cohort, learner))
    return found.seen if found else ()


def observations_of(cohort: Cohort, learner: str) -> tuple[Observation, ...]:
    """A learner's observations that stand, oldest first.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    return tuple(o for o in every_observation_of(cohort, learner) if o.taken_back is None)


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
            seen = every_observation_of(cohort, person.id)
            last = {o.outcome: place for place, o in enumerate(seen) if o.taken_back is None}
            found += [
                Listed(person, one, last.get(one.outcome) == place, place + 1)
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
