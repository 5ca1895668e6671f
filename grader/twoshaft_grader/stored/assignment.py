"""``assignment.json``, as staff read it: every entry must be there."""

from __future__ import annotations

from twoshaft.stored import assignment
from twoshaft.stored.assignment import Assignment
from twoshaft_grader.stored.definition import StaffFile

ASSIGNMENT: StaffFile[Assignment] = StaffFile(
    file=assignment.ASSIGNMENT.file,
    record=Assignment,
    sparse=("unit_digest", "bench_readings", "code_outcome", "left_out", "no_evidence", "only"),
    fault=lambda found: (
        f"an entry is missing or cannot be read ({'.'.join(map(str, found[0]['loc']))})"
    ),
)
