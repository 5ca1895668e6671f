"""``issued/<assignment>/<learner>.json``: the readings that a learner was issued."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from twoshaft.stored.given import ISSUED
from twoshaft_grader.cohort import files


def read_issued(path: Path) -> dict[str, Any]:
    """The issued record as plain data, for the marking.

    Raises
    ------
    CohortError
        When the file is missing, damaged or of a newer format.
    """
    data = files.read_json(path, mend=ISSUED.mend)
    ISSUED.of(data, str(path))
    return data


def write_issued(path: Path, record: Mapping[str, Any], *, bench_readings: bool) -> None:
    """Keep what was issued, with whether figures from the bench may take its place."""
    issued = replace(ISSUED.of(dict(record)), bench_readings=bench_readings)
    files.write_whole(path, ISSUED.text(issued))
