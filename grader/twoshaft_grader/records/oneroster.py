"""Marks as a OneRoster 1.2 gradebook: CSV files at the root of one ZIP, for a records system.

Columns and their order are those that LongsightGroup/oneroster (MIT) reads for 1.2; the manifest's
heading and versions also those of oat-sa's importer. The files that are absent, and that dates are
written as days, are from memory of the 1EdTech text.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from twoshaft.outcomes import State
from twoshaft_grader.cohort.assign import Assigned, assignments_of
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.records.cells import csv_of
from twoshaft_grader.records.matrix import NOTHING, Matrix
from twoshaft_grader.records.rows import INVENTED, NOT_HANDED_IN, NOT_MARKED, Row

CATEGORIES = ("sourcedId", "status", "dateLastModified", "title", "weight")
LINE_ITEMS = (
    "sourcedId", "status", "dateLastModified", "title", "description", "assignDate", "dueDate",
    "classSourcedId", "categorySourcedId", "academicSessionSourcedId", "resultValueMin",
    "resultValueMax", "schoolSourcedId",
)  # fmt: skip
RESULTS = (
    "sourcedId", "status", "dateLastModified", "lineItemSourcedId", "studentSourcedId",
    "scoreStatus", "score", "scoreDate", "comment", "textScore", "classSourcedId", "inProgress",
    "incomplete", "late", "missing",
)  # fmt: skip
_BULK = ("categories", "lineItems", "results")
_ABSENT = (
    "academicSessions", "classResources", "classes", "courseResources", "courses", "demographics",
    "enrollments", "lineItemLearningObjectiveIds", "lineItemScoreScales", "orgs", "resources",
    "resultLearningObjectiveIds", "resultScoreScales", "roles", "scoreScales", "userProfiles",
    "userResources", "users",
)  # fmt: skip
EXERCISES, OUTCOMES = "exercises", "outcomes"


@dataclass(frozen=True)
class Place:
    """How the records system calls class, school and term; by default the cohort's id."""

    group: str
    school: str
    session: str


def oneroster_zip(cohort: Cohort, rows: Iterable[Row], matrix: Matrix, place: Place) -> bytes:
    """The gradebook: a line item for every assignment, in points, and every outcome, in words.

    Parameters
    ----------
    rows : iterable of Row
        As exported.
    """
    rows = [row for row in rows if row.attempt]
    assigned = assignments_of(cohort)
    files = {
        "manifest.csv": _manifest(cohort),
        "categories.csv": csv_of(CATEGORIES, [
            (f"{cohort.id}-{EXERCISES}", "", "", "Exercises", ""),
            (f"{cohort.id}-{OUTCOMES}", "", "", "Outcomes", ""),
        ]),
        "lineItems.csv": csv_of(LINE_ITEMS, _line_items(cohort, assigned, rows, matrix, place)),
        "results.csv": csv_of(RESULTS, _results(cohort, assigned, rows, matrix, place)),
    }  # fmt: skip
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as packed:
        for name, text in files.items():
            packed.writestr(zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0)), text)
    return out.getvalue()


def _manifest(cohort: Cohort) -> str:
    told = [
        ("manifest.version", "1.0"),
        ("oneroster.version", "1.2"),
        *((f"file.{name}", "bulk" if name in _BULK else "absent")
          for name in sorted((*_BULK, *_ABSENT), key=str.casefold)),
        ("source.systemName", "Twoshaft"),
        ("source.systemCode", f"{cohort.id}{' (invented people)' if cohort.invented else ''}"),
    ]  # fmt: skip
    return csv_of(("propertyName", "value"), told)


def _line_items(
    cohort: Cohort, assigned: list[Assigned], rows: list[Row], matrix: Matrix, place: Place
) -> Iterable[tuple[object, ...]]:
    said = f"{INVENTED}; " if cohort.invented else ""
    begun = _handed_out(cohort)
    for one in assigned:
        most = _sum(rows, one, "maximum")
        day = begun.get(one.name, "")
        due = f"{one.due.astimezone(cohort.zone):%Y-%m-%d}" if one.due else day
        yield (
            f"{cohort.id}-{one.name}", "", "", one.name,
            f"{said}{one.module.replace('-', ' ').capitalize()}, attempt {one.attempt}",
            day or due, due, place.group, f"{cohort.id}-{EXERCISES}", place.session, 0.0, most,
            place.school,
        )  # fmt: skip
    first = min(begun.values(), default="")
    for outcome in matrix.outcomes:
        yield (
            f"{cohort.id}-outcome-{outcome.id}", "", "", matrix.heading(outcome.id),
            f"{said}{outcome.statement}", first, first, place.group, f"{cohort.id}-{OUTCOMES}",
            place.session, 0.0, 1.0, place.school,
        )  # fmt: skip


def _results(
    cohort: Cohort, assigned: list[Assigned], rows: list[Row], matrix: Matrix, place: Place
) -> Iterable[tuple[object, ...]]:
    for person in matrix.learners:
        for one in assigned:
            mine = [r for r in _of(rows, one) if r.learner == person.id]
            if not mine:
                continue
            row = mine[0]
            marked = row.state not in (NOT_HANDED_IN, NOT_MARKED)
            missing = row.state == NOT_HANDED_IN
            status = "fully graded" if marked else "not submitted" if missing else "submitted"
            yield (
                f"{cohort.id}-{one.name}-{person.id}", "", "", f"{cohort.id}-{one.name}",
                person.id, status, sum(r.mark for r in mine) if marked else "",
                (row.marked_at or row.due)[:10], row.note, "", place.group,
                _flag(not marked and not missing), _flag(False),
                _flag(isinstance(row.late_minutes, int) and row.late_minutes > 0), _flag(missing),
            )  # fmt: skip
        for outcome in matrix.outcomes:
            cell = matrix.cells[person.id, outcome.id]
            if cell.state == NOTHING:
                continue
            met = cell.state == State.MET
            yield (
                f"{cohort.id}-outcome-{outcome.id}-{person.id}", "", "",
                f"{cohort.id}-outcome-{outcome.id}", person.id,
                "fully graded" if met else "partially graded", 1.0 if met else 0.0,
                _day(cell.attempts, [o.at for o in cell.seen]), cell.missing, cell.state,
                place.group, _flag(not met), _flag(False), _flag(False), _flag(False),
            )  # fmt: skip


def _of(rows: list[Row], one: Assigned) -> list[Row]:
    return [row for row in rows if (row.module, row.attempt) == (one.module, one.attempt)]


def _sum(rows: list[Row], one: Assigned, what: str) -> float:
    """Points of an assignment, over its outcomes; the same for everybody."""
    mine = _of(rows, one)
    return sum(getattr(row, what) for row in mine if row.learner == mine[0].learner)


def _day(rows: tuple[Row, ...], seen: list[str]) -> str:
    return max([*(row.marked_at for row in rows), *seen], default="")[:10]


def _flag(holds: bool) -> str:
    return "true" if holds else "false"


def _handed_out(cohort: Cohort) -> dict[str, str]:
    """The day that each assignment was handed out, by the trail."""
    found: dict[str, str] = {}
    for line in read_trail(cohort.root):
        if line.act.did == "assign":
            moment = datetime.fromisoformat(line.act.at).astimezone(cohort.zone)
            found[line.act.what] = f"{moment:%Y-%m-%d}"
    return found
