"""The logs of a cohort folder, ``log/*.jsonl``: one record a line."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from twoshaft_grader.stored.definition import Log


@dataclass(frozen=True, kw_only=True)
class Change:
    """``changes``: a mark that a person changed, with who and why.

    ``kind`` says of what: points of a task, whether a must-pass item is passed, whether an outcome
    is enough; ``task`` is the id of task, field or outcome, before and after are points or 0 and 1.
    ``submission`` is the digest of the work that was decided on.
    """

    at: str = ""
    assignment: str
    learner: str
    task: str
    before: float = 0.0
    after: float
    by: str
    why: str
    kind: Literal["points", "must-pass", "outcome"] = "points"
    submission: str = ""


@dataclass(frozen=True, kw_only=True)
class MarkLine:
    """``marks``: a mark that was stored; the digests say of what, and by which solution."""

    id: str
    at: str
    marked_at: str
    who: str
    version: str
    assignment: str
    learner: str
    state: str
    submission: str
    sheet: str
    solution: str
    mark: float | None
    maximum: float | None


@dataclass(frozen=True, kw_only=True)
class NbgraderLine:
    """``nbgrader``: what one of nbgrader's functions logged."""

    at: str
    doing: str
    success: bool
    log: str
    error: str


_FAULT = "a line cannot be read"
CHANGES: Log[Change] = Log(record=Change, fault=_FAULT, sparse=("kind", "submission"))
MARK_LINES: Log[MarkLine] = Log(record=MarkLine, fault=_FAULT)
NBGRADER: Log[NbgraderLine] = Log(record=NbgraderLine, fault=_FAULT)
