"""``adjustments.json``: what was arranged for single learners, with who, when and why."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.stored.adjustments import OwnAdjustment
from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Adjustment(OwnAdjustment):
    """What was arranged, by whom, when (ISO 8601 in UTC), and why."""

    by: str
    at: str
    why: str


ADJUSTMENTS: StaffFile[dict[str, Adjustment]] = StaffFile(
    file="adjustments.json",
    record=dict[str, Adjustment],
    numbered=False,
    fault="this holds no adjustments",
)
