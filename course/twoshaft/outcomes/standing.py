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
        Who saw it, and when (ISO 8601 in UTC).
    note : str
        What was seen; for ``not yet``, what is missing.
    """

    outcome: str
    met: bool
    kind: Evidence
    by: str
    at: str
    note: str = ""


@dataclass(frozen=True)
class Attempt:
    """What one marked attempt shows of an outcome: enough or not, and as what evidence."""

    enough: bool
    kind: Evidence


@dataclass(frozen=True)
class Standing:
    """A state, and the evidence that is still missing in words; empty when met."""

    state: State
    missing: str = ""


def stand(
    needed: Evidence,
    attempts: Iterable[Attempt] = (),
    observations: Iterable[Observation] = (),
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
        Of this outcome, oldest first.

    Returns
    -------
    Standing

    Examples
    --------
    >>> stand(Evidence.AT_THE_BENCH, [Attempt(True, Evidence.SUPERVISED)])
    Standing(state=<State.ENOUGH: 'enough'>, missing='to be shown at the bench')
    """
    attempts, seen = list(attempts), list(observations)
    enough = [attempt.kind for attempt in attempts if attempt.enough]
    if seen and not seen[-1].met:
        where = "at the bench" if seen[-1].kind == Evidence.AT_THE_BENCH else "under supervision"
        return Standing(State.NOT_YET, f"to be shown again {where}")
    # What was seen before a later "not yet" was taken back with it.
    last_no = max((i for i, one in enumerate(seen) if not one.met), default=-1)
    kinds = [*enough, *(one.kind for one in seen[last_no + 1 :])]
    shown = any(_STRENGTH[kind] >= _STRENGTH[needed] for kind in kinds)
    if enough:
        return Standing(State.MET) if shown else Standing(State.ENOUGH, _TO_SHOW[needed])
    first = "enough marks and every must-pass item in another attempt"
    if not attempts:
        first = "enough marks and every must-pass item in the exercise"
    then = "" if shown or needed == Evidence.OPEN_BOOK else f"; then {_TO_SHOW[needed]}"
    return Standing(State.NOT_YET, first + then)
