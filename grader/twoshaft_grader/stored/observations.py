"""``observations/<learner>.json``: what assessors saw of a learner, oldest first."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.outcomes import Observation
from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True)
class Observations:
    """All of a learner's observations, oldest first."""

    learner: str
    seen: tuple[Observation, ...] = ()


OBSERVATIONS: StaffFile[Observations] = StaffFile(
    record=Observations,
    fault="this holds no observations",
    format=2,
    older={1: None},  # no criteria, bench or day; none was taken back
)
