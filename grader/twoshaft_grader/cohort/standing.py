"""Where a learner stands, as their own start page shows it: their marks given back, and what was
observed. Nobody else's data goes into it.

``returned/<assignment>/<learner>.json`` keeps what was given back, so that a mark which is not
given back yet is told to nobody; ``standing.json`` in the learner's folder follows from it.
"""

from __future__ import annotations

from twoshaft.errors import CohortError
from twoshaft.outcomes import Attempt, evidence_of, load_outcomes, stand
from twoshaft.stored.standing import STANDING
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.folder import Cohort, now, stamp
from twoshaft_grader.cohort.observations import by_outcome, observations_of
from twoshaft_grader.marking.result import SheetMark

FOLDER = "returned"


def keep_returned(cohort: Cohort, assigned: Assigned, learner: str, mark: SheetMark) -> None:
    """Keep what a feedback page that is given back says of marks and outcomes."""
    failed = any(outcome.must_pass_failed for outcome in mark.outcomes)
    asked = any(field.must_pass for field in mark.fields)
    files.write_json(
        cohort.root / FOLDER / assigned.name / f"{learner}.json",
        {
            "format": 1,
            "learner": learner,
            "module": assigned.module,
            "attempt": assigned.attempt,
            "points": mark.points,
            "maximum": mark.maximum,
            "must_pass": ("not held" if failed else "held") if asked else "",
            "supervised_by": assigned.supervised_by,
            "given_back": stamp(now()),
            "outcomes": {outcome.id: outcome.met for outcome in mark.outcomes},
        },
    )


def write_standing(cohort: Cohort, learner: str) -> None:
    """Renew ``standing.json`` in a learner's folder of the workplace.

    Raises
    ------
    CohortError
        When a stored file of the cohort is damaged.
    """
    own = cohort.workplace / learner
    if not own.is_dir():
        return
    returned = {
        path.parent.name: files.read_json(path, mend="give the feedback back again")
        for path in sorted((cohort.root / FOLDER).glob(f"*/{learner}.json"))
    }
    seen = by_outcome(observations_of(cohort, learner))
    outcomes = {}
    try:
        for id, outcome in load_outcomes().items():
            attempts = [
                Attempt(bool(entry["outcomes"][id]), evidence_of(entry["supervised_by"]))
                for entry in returned.values()
                if id in entry["outcomes"]
            ]
            if attempts or id in seen:
                standing = stand(outcome.evidence, attempts, seen.get(id, ()))
                last = seen[id][-1] if id in seen else None
                outcomes[id] = {
                    "state": standing.state,
                    "missing": standing.missing,
                    "seen": f"{last.at[:10]} by {last.by}" if last else "",
                    "note": last.note if last else "",
                }
        marks = {
            name: {
                key: entry[key]
                for key in ("points", "maximum", "must_pass", "supervised_by", "given_back")
            }
            for name, entry in returned.items()
        }
    except (KeyError, TypeError):
        raise CohortError(
            "what was given back cannot be read",
            where=str(cohort.root / FOLDER),
            mend="give the feedback back again",
        ) from None
    files.write_json(
        own / STANDING.file, {"format": 1, "learner": learner, "marks": marks, "outcomes": outcomes}
    )
