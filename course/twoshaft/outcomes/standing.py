"""Whether an outcome is met: marks and observations against the kind of evidence it asks for."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from twoshaft.outcomes.outcomes import Evidence

_STRENGTH = {Evidence.OPEN_BOOK: 0, Evidence.SUPERVISED: 1, Evidence.AT_THE_BENCH: 2}
_TO_SHOW = {
    Evidence.SUPERVISED: "to be shown under supervision",
    Evidence.AT_THE_BENCH: "to be shown at the bench",
}


def evidence_of(supervised_by: str) -> Evidence:
    """The kind of evidence that a marked attempt is: open-book, unless somebody watched."""
    return Evidence.SUPERVISED if supervised_by else Evidence.OPEN_BOOK


class State(StrEnum):
    """Where a learner stands with one outcome: the words of every screen, page and export.

    Enough is what marked work reaches; met is enough, with the kind of evidence it asks for.
    """

    MET = "met"
    ENOUGH = "enough"
    NOT_YET = "not yet"


class Seen(StrEnum):
    """What was seen of one criterion."""

    SEEN = "seen"
    NOT_YET = "not yet"
    NOT_TRIED = "not tried"


@dataclass(frozen=True)
class TakenBack:
    """Who took an observation back, when (ISO 8601 in UTC), and why."""

    by: str
    at: str
    why: str


@dataclass(frozen=True)
class Observation:
    """What somebody saw of one outcome, away from the marking.

    Attributes
    ----------
    outcome : str
        Its id.
    met : bool
        Whether what was seen is enough.
    kind : Evidence
        ``supervised`` or ``at-the-bench``.
    by, at : str
        Who saw it, and when it was entered (ISO 8601 in UTC).
    note : str
        What was seen; for ``not yet``, what is missing.
    seen_on : str
        The day it was seen, as 2026-11-27; empty where that is the day of ``at``.
    bench, unit : str
        Which bench, and what stood on it.
    criteria : tuple of (str, Seen)
        What was seen of each criterion of the outcome, by id.
    prior : bool
        Whether it is evidence of prior learning; ``note`` then says which.
    confirmed : str
        The day the learner confirmed it; empty where they have not.
    taken_back : TakenBack or None
        By whom, when and why it was taken back.
    """

    outcome: str
    met: bool
    kind: Evidence
    by: str
    at: str
    note: str = ""
    seen_on: str = ""
    bench: str = ""
    unit: str = ""
    criteria: tuple[tuple[str, Seen], ...] = ()
    prior: bool = False
    confirmed: str = ""
    taken_back: TakenBack | None = None

    @property
    def day(self) -> str:
        """The day it was seen."""
        return self.seen_on or self.at[:10]


@dataclass(frozen=True)
class Attempt:
    """What one marked attempt shows of an outcome: enough or not, and as what evidence."""

    enough: bool
    kind: Evidence


def counting(
    attempts: Iterable[tuple[str, int, Attempt]], *, latest: bool = False
) -> list[Attempt]:
    """Attempts that count: all of them, so the best one decides; or each module's latest.

    Parameters
    ----------
    attempts : iterable of (str, int, Attempt)
        Module, number of the attempt, and what it shows.
    latest : bool
        Whether only the latest of a module counts.

    Examples
    --------
    >>> first, second = Attempt(True, Evidence.OPEN_BOOK), Attempt(False, Evidence.OPEN_BOOK)
    >>> counting([("a", 1, first), ("a", 2, second)], latest=True) == [second]
    True
    """
    found = sorted(attempts, key=lambda one: one[:2])
    if latest:
        found = list({module: (module, number, one) for module, number, one in found}.values())
    return [one for _, _, one in found]


@dataclass(frozen=True)
class Standing:
    """A state, and the evidence that is still missing in words; empty when met."""

    state: State
    missing: str = ""


def stand(
    needed: Evidence,
    attempts: Iterable[Attempt] = (),
    observations: Iterable[Observation] = (),
    *,
    bench_alone: bool = False,
) -> Standing:
    """Say where a learner stands with one outcome.

    It is met with enough in a marked attempt, every must-pass item included, *and* with evidence
    of the kind it asks for or a stronger one: a supervised attempt, or an observation. An
    observation alone does not stand in for the exercise, and the last one that says "not yet"
    holds until a later one says otherwise.

    Parameters
    ----------
    needed : Evidence
        The kind that the outcome asks for.
    attempts : iterable of Attempt
        Marked attempts.
    observations : iterable of Observation
        Of this outcome, oldest first; those that were taken back do not count.
    bench_alone : bool
        Whether, by the college's rule, an outcome to be shown at the bench is met by what was
        seen there, without the exercise.

    Returns
    -------
    Standing

    Examples
    --------
    >>> stand(Evidence.AT_THE_BENCH, [Attempt(True, Evidence.SUPERVISED)])
    Standing(state=<State.ENOUGH: 'enough'>, missing='to be shown at the bench')
    """
    attempts = list(attempts)
    seen = [one for one in observations if one.taken_back is None]
    enough = [attempt.kind for attempt in attempts if attempt.enough]
    if seen and not seen[-1].met:
        where = "at the bench" if seen[-1].kind == Evidence.AT_THE_BENCH else "under supervision"
        return Standing(State.NOT_YET, f"to be shown again {where}")
    # What was seen before a later "not yet" was taken back with it.
    last_no = max((i for i, one in enumerate(seen) if not one.met), default=-1)
    kinds = [*enough, *(one.kind for one in seen[last_no + 1 :])]
    shown = any(_STRENGTH[kind] >= _STRENGTH[needed] for kind in kinds)
    if bench_alone and needed == Evidence.AT_THE_BENCH and shown:
        return Standing(State.MET)
    if enough:
        return Standing(State.MET) if shown else Standing(State.ENOUGH, _TO_SHOW[needed])
    if bench_alone and needed == Evidence.AT_THE_BENCH:
        return Standing(State.NOT_YET, _TO_SHOW[needed])
    first = "enough marks and every must-pass item in another attempt"
    if not attempts:
        first = "enough marks and every must-pass item in the exercise"
    then = "" if shown or needed == Evidence.OPEN_BOOK else f"; then {_TO_SHOW[needed]}"
    return Standing(State.NOT_YET, first + then)
