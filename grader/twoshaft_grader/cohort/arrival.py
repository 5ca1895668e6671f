"""When work was handed in, and what waits in the exchange."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from dateutil.parser import parse

from twoshaft.errors import CohortError
from twoshaft.stored.hostile import read_bytes
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.stored.collected import COLLECTED
from twoshaft_grader.stored.handed_in import TIMESTAMP

_LONGEST = 64
# With letters for colons where a name of a folder may hold none.
_TIME = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}[ T][0-9]{2}(?::[0-9]{2}|h[0-9]{2}m)[ -~]*")
_FIRST = datetime(2000, 1, 1, tzinfo=UTC)
AHEAD = timedelta(minutes=5)
"""Clocks of a college's machines may differ by so much: our choice, no source."""


@dataclass(frozen=True)
class Arrival:
    """A hand-in that waits in the exchange: learner's id, its folder, and the time in its name.

    ``name`` and ``learner`` are what somebody called a folder: data from outside.
    """

    learner: str
    name: str
    when: str


def arrivals(cohort: Cohort, assignment: str) -> list[Arrival]:
    """Everything in the exchange that is called a hand-in of an assignment, in no order."""
    if not cohort.inbound.is_dir():
        return []
    return list(_arrivals(os.listdir(cohort.inbound), assignment))


def _arrivals(names: list[str], assignment: str) -> Iterator[Arrival]:
    for name in names:
        learner, _, rest = name.partition(f"+{assignment}+")
        if rest and learner and "+" not in learner:
            yield Arrival(learner, name, rest.partition("+")[0])


def moment_of(text: str) -> tuple[datetime | None, str]:
    """The moment that a text as nbgrader writes it names, or None and why not."""
    moment = moment_said(text)
    if moment is None:
        return None, "its time cannot be read"
    if moment > now() + AHEAD:
        return None, f"its time, {moment:%Y-%m-%d %H:%M} UTC, is still to come"
    if moment < _FIRST:
        return None, f"its time, {text[:16]}, is before any course of this kind"
    return moment, ""


def moment_said(text: str) -> datetime | None:
    """The moment that a text names, whether it can be or not; None if it names none."""
    text = text.strip()
    if len(text) > _LONGEST or not _TIME.fullmatch(text):
        return None
    try:
        moment = parse(text)
        return moment.astimezone(UTC) if moment.tzinfo else moment.replace(tzinfo=UTC)
    except (ValueError, OverflowError):
        return None


def hand_in_time(cohort: Cohort, learner: str, assignment: str) -> datetime | None:
    """When collected work was handed in; None where it was placed by hand."""
    path = cohort.submitted(learner, assignment) / TIMESTAMP
    try:
        text = read_bytes(path, _LONGEST).decode("ascii")
    except (OSError, ValueError):
        return None
    moment, _ = moment_of(text)
    return moment or _collected_then(cohort, learner, assignment, text)


def _collected_then(cohort: Cohort, learner: str, assignment: str, text: str) -> datetime | None:
    """The moment, if work was collected with it: then it had come, and a clock was put back."""
    moment = moment_said(text)
    if moment is None:
        return None
    try:
        taken = COLLECTED.read_if_any(collected_list(cohort, learner, assignment))
    except CohortError:  # told where it is collected
        return None
    counts = taken.counts if taken else None
    return moment if counts and counts.arrived == stamp(moment) else None


def collected_list(cohort: Cohort, learner: str, assignment: str) -> Path:
    """The list of all hand-ins of a learner that were taken in."""
    return cohort.collected(learner, assignment).with_name(f"{learner}.json")
