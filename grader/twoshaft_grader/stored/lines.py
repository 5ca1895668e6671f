"""The logs of a cohort folder, ``log/*.jsonl``: one record a line."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft_grader.stored.definition import Log


@dataclass(frozen=True, kw_only=True)
class Doing:
    """``doings``: what a command did; members that do not belong to it are None.

    ``did`` is roster, take-out, assign, extend, collect, give-back or observe.
    """

    at: str
    did: str
    assignment: str | None = None
    learner: str | None = None
    learners: int | None = None
    due: str | None = None
    outcome: str | None = None
    met: bool | None = None
    kind: str | None = None
    by: str | None = None
    note: str | None = None
    added: tuple[str, ...] | None = None
    changed: tuple[str, ...] | None = None
    new: tuple[str, ...] | None = None
    newer: tuple[str, ...] | None = None
    to: tuple[str, ...] | None = None


@dataclass(frozen=True, kw_only=True)
class Change:
    """``changes``: a mark that a person changed, with who and why."""

    at: str = ""
    assignment: str
    learner: str
    task: str
    before: float = 0.0
    after: float
    by: str
    why: str


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
DOINGS: Log[Doing] = Log(record=Doing, fault=_FAULT, sparse=tuple(Doing.__dataclass_fields__)[2:])
CHANGES: Log[Change] = Log(record=Change, fault=_FAULT)
MARK_LINES: Log[MarkLine] = Log(record=MarkLine, fault=_FAULT)
NBGRADER: Log[NbgraderLine] = Log(record=NbgraderLine, fault=_FAULT)
