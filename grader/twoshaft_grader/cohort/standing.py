"""Where a learner stands, as their own start page shows it: their marks given back, and what was
observed. Nobody else's data goes into it.

``returned/<assignment>/<learner>.json`` keeps what was given back, so that a mark which is not
given back yet is told to nobody; ``standing.json`` in the learner's folder follows from it.
"""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from twoshaft.outcomes import (
    Attempt,
    Outcome,
    counting,
    evidence_of,
    load_outcomes,
    load_rules,
    stand,
)
from twoshaft.stored.standing import STANDING, MarkTold, OutcomeTold, OwnStanding
from twoshaft.stored.writing import write_inside
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.first_come import is_theirs
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.observations import by_outcome, observations_of
from twoshaft_grader.cohort.supervised import NOT_WATCHED, Watched
from twoshaft_grader.marking.outcomes import NONE, Decisions, decisions_on
from twoshaft_grader.marking.result import SheetMark
from twoshaft_grader.stored.returned import RETURNED, Returned

FOLDER = "returned"


def keep_returned(
    cohort: Cohort,
    assigned: Assigned,
    learner: str,
    mark: SheetMark,
    decided: Decisions = NONE,
    *,
    watched: Watched = NOT_WATCHED,
) -> None:
    """Keep what a feedback page that is given back says of marks and outcomes."""
    failed = any(outcome.must_pass_failed for outcome in mark.outcomes)
    asked = any(field.must_pass for field in mark.fields)
    told = Returned(
        learner=learner,
        module=assigned.module,
        attempt=assigned.attempt,
        points=mark.points,
        maximum=mark.maximum,
        must_pass=("not held" if failed else "held") if asked else "",
        supervised_by=watched.by,
        unwatched=tuple(id for id, answers in watched.before.items() if answers),
        given_back=stamp(now()),
        outcomes={outcome.id: outcome.met for outcome in mark.outcomes},
        decided={
            outcome.id: " ".join(one.sentence for one in decisions_on(mark, outcome.id, decided))
            for outcome in mark.outcomes
            if decisions_on(mark, outcome.id, decided)
        },
    )
    RETURNED.write(returned_file(cohort, assigned.name, learner), told)


def returned_to(cohort: Cohort, learner: str, assignment: str) -> Returned | None:
    """What was given back to a learner on an assignment; None where nothing was.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    return RETURNED.read_if_any(returned_file(cohort, assignment, learner))


def returned_file(cohort: Cohort, assignment: str, learner: str) -> Path:
    """Where what was given back to a learner on an assignment is kept."""
    return cohort.root / FOLDER / assignment / f"{learner}.json"


def write_standing(
    cohort: Cohort, learner: str, known: Mapping[str, Outcome] | None = None
) -> None:
    """Renew ``standing.json`` in a learner's folder of the workplace.

    ``known`` are the outcomes that ship, where they have been read already.

    Raises
    ------
    CohortError
        When a stored file of the cohort is damaged.
    """
    if not is_theirs(cohort, learner):
        return
    returned = {
        path.parent.name: RETURNED.read(path)
        for path in sorted((cohort.root / FOLDER).glob(f"*/{learner}.json"))
    }
    seen = by_outcome(observations_of(cohort, learner))
    outcomes: dict[str, OutcomeTold | None] = {}
    known = load_outcomes() if known is None else known
    rules = load_rules(cohort.rules)
    known = rules.asked(known)
    for id, outcome in known.items():
        attempts = counting(
            (
                (one.module, one.attempt, _attempt(one, id))
                for one in returned.values()
                if id in one.outcomes
            ),
            latest=rules.latest,
        )
        if attempts or id in seen:
            standing = stand(
                outcome.evidence, attempts, seen.get(id, ()), bench_alone=rules.of(id).bench_alone
            )
            last = seen[id][-1] if id in seen else None
            outcomes[id] = OutcomeTold(
                state=standing.state,
                missing=standing.missing,
                seen=f"{last.day} by {last.by}" if last else "",
                note=" ".join(
                    [*([last.note] if last and last.note else []), *_decided(returned, id)]
                ),
            )
    marks: dict[str, MarkTold | None] = {
        name: MarkTold(one.points, one.maximum, one.must_pass, _watched(one), one.given_back)
        for name, one in returned.items()
    }
    asks = tuple((id, str(kind)) for id, kind in rules.evidence)
    own = OwnStanding(learner, marks, outcomes, rules.numbers, asks)
    text = STANDING.text(own)
    write_inside(cohort.work, f"{learner}/{STANDING.file}", text)


def _attempt(one: Returned, outcome: str) -> Attempt:
    watched = "" if outcome in one.unwatched else one.supervised_by
    return Attempt(one.outcomes[outcome], evidence_of(watched))


def _watched(one: Returned) -> str:
    """Who watched it; nobody where no outcome counts as supervised."""
    return "" if set(one.outcomes) <= set(one.unwatched) else one.supervised_by


def _decided(returned: Mapping[str, Returned], outcome: str) -> list[str]:
    """What was decided of an outcome in the place of the marking."""
    return [one.decided[outcome] for one in returned.values() if outcome in one.decided]
