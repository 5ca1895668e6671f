"""The issued record: what one learner was given in one attempt, kept by staff for the marking."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from twoshaft.errors import CohortError
from twoshaft.stored.definition import Definition


@dataclass(frozen=True, kw_only=True)
class Issued:
    """What was issued, and under which versions it was drawn.

    Parameters
    ----------
    given : dict
        By task; its own definition is the module's.
    bench_readings : bool
        Whether figures from the bench may take the place of these.
    """

    learner: str
    module: str
    attempt: int
    unit: str
    unit_version: str
    course_version: str
    given: dict[str, Any]
    bench_readings: bool = False


ISSUED: Definition[Issued] = Definition(
    record=Issued,
    sparse=("bench_readings",),
    fault="this is no issued record",
    mend="take the roster in again",
    error=CohortError,
)
