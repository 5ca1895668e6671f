"""Take in what was handed in."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime

from dateutil.parser import parse

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import backbone
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.folder import Cohort, now, stamp
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.stored.lines import DOINGS, Doing


@dataclass(frozen=True)
class Collected:
    """What a collection found for one assignment.

    ``new``, ``newer`` and ``placed`` are learner ids: first work, later work that replaces
    earlier, and work put into ``submitted/`` by hand. ``strangers`` are not on the roster.
    ``refused`` says for each hand-in that could not be taken in why not.
    """

    assignment: str
    new: tuple[str, ...]
    newer: tuple[str, ...]
    placed: tuple[str, ...]
    missing: tuple[str, ...]
    strangers: tuple[str, ...]
    refused: tuple[CohortError, ...]


def collect(cohort: Cohort, assigned: Assigned, learners: Iterable[Learner]) -> Collected:
    """Collect one assignment from the exchange; later work replaces earlier, and what cannot be
    taken in holds up nobody else.
    """
    before = _handed_in(cohort, assigned.name)
    refused = _from_exchange(cohort, assigned.name) if cohort.inbound.is_dir() else ()
    after = _handed_in(cohort, assigned.name)
    roster = [learner.id for learner in learners]
    result = Collected(
        assigned.name,
        new=tuple(sorted(set(after) - set(before))),
        newer=tuple(sorted(id for id in before if after.get(id) != before[id])),
        placed=tuple(sorted(id for id, time in after.items() if not time)),
        missing=tuple(id for id in roster if id not in after),
        strangers=tuple(sorted(set(after) - set(roster))),
        refused=refused,
    )
    told = Doing(
        at=stamp(now()), did="collect", assignment=assigned.name, new=result.new,
        newer=result.newer,
    )  # fmt: skip
    DOINGS.append(cohort.log("doings"), told)
    return result


def hand_in_time(cohort: Cohort, learner: str, assignment: str) -> datetime | None:
    """When collected work was handed in; None where it was placed by hand."""
    path = cohort.submitted(learner, assignment) / "timestamp.txt"
    try:
        moment = parse(path.read_text(encoding="utf-8").strip())
    except (OSError, ValueError, OverflowError, UnicodeDecodeError):
        return None
    return moment.astimezone(UTC) if moment.tzinfo else moment.replace(tzinfo=UTC)


def _from_exchange(cohort: Cohort, assignment: str) -> tuple[CohortError, ...]:
    api = backbone.desk_api(cohort)
    doing = f"collecting {assignment}"
    try:
        backbone.run(cohort, doing, api.collect, assignment, True)
        return ()
    except CohortError:
        # One bad folder stops nbgrader's whole run: go on learner by learner.
        names = {path.name.rsplit("+", 3)[0] for path in cohort.inbound.glob(f"*+{assignment}+*")}
    from nbgrader.utils import temp_attrs

    refused = []
    for learner in sorted(names):
        with temp_attrs(api.coursedir, student_id=learner):
            try:
                backbone.run(cohort, f"{doing} from {learner}", api.collect, assignment, True)
            except CohortError as error:
                refused.append(error)
    return tuple(refused)


def _handed_in(cohort: Cohort, assignment: str) -> dict[str, str]:
    """Learner ids with work of this assignment, and the time in its receipt ("" for none)."""
    found = {}
    for folder in sorted((cohort.root / "submitted").glob(f"*/{assignment}")):
        if folder.is_dir():
            path = folder / "timestamp.txt"
            found[folder.parent.name] = (
                path.read_text(encoding="utf-8", errors="replace").strip() if path.exists() else ""
            )
    return found
