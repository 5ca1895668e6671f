"""``extensions.json``: later due dates, by assignment and learner, ISO 8601."""

from __future__ import annotations

from twoshaft_grader.stored.definition import StaffFile

EXTENSIONS: StaffFile[dict[str, dict[str, str]]] = StaffFile(
    file="extensions.json",
    record=dict[str, dict[str, str]],
    numbered=False,
    fault="this holds no due dates",
)
