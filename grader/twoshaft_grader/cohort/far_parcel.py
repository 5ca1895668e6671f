"""What goes to another machine to be marked, and what comes back: texts, as JSON."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from twoshaft.errors import SheetError
from twoshaft.stored.job_sheet import text_of
from twoshaft.stored.writing import write_file
from twoshaft_grader.cohort.one_sheet import Result, Work, mark_one
from twoshaft_grader.stored.definition import StaffFile
from twoshaft_grader.stored.issued import read_issued

SHEET, ISSUED, UNIT, RULES = "jobsheet.json", "issued.json", "unit.yaml", "rules.yaml"
RESULT: StaffFile[Result] = StaffFile(
    record=Result, numbered=False, fault="a worker sent no mark", mend="see what runs on it"
)


def assignment_parcel(work: Work, levels: Mapping[str, float]) -> str:
    """What all sheets of an assignment have in common, as JSON."""
    notebook, rules = Path(work.notebook), Path(work.rules)
    return json.dumps(
        {
            "notebook": notebook.name,
            "unit": "" if isinstance(work.unit, Path) else work.unit,
            "levels": dict(levels),
            "files": {
                notebook.name: notebook.read_text(encoding="utf-8"),
                **({UNIT: work.unit.read_text("utf-8")} if isinstance(work.unit, Path) else {}),
                **({RULES: rules.read_text("utf-8")} if rules.is_file() else {}),
            },
        }
    )


def sheet_parcel(work: Work) -> str | None:
    """One job sheet and its readings, as JSON; None for what is marked where the command runs:
    code of a learner's, and what is no text.

    Raises
    ------
    CohortError
        When the readings are damaged.
    """
    if work.code:
        return None
    try:
        text = text_of(Path(work.folder) / SHEET)
    except SheetError:
        return None
    issued = read_issued(Path(work.issued))
    return json.dumps({"learner": work.learner, SHEET: text, ISSUED: json.dumps(issued)})


def mark_here(folder: Path, common: str, sheet: str) -> Result:
    """Mark one sheet in this process.

    Parameters
    ----------
    folder : Path
        A temporary one of this process alone.
    """
    from twoshaft.models.order import take_chance_levels

    about, one = json.loads(common), json.loads(sheet)
    take_chance_levels(about["levels"])
    place = folder / hashlib.sha256(common.encode()).hexdigest()
    if not place.is_dir():
        place.mkdir()
        for name, text in about["files"].items():
            write_file(place / name, text, sync=False)
    for name in (SHEET, ISSUED):
        write_file(place / name, one[name], sync=False)
    work = Work(
        one["learner"],
        str(place),
        str(place / ISSUED),
        str(place / about["notebook"]),
        about["unit"] or place / UNIT,
        str(place / RULES),
    )
    return mark_one(work)


def plain_result(answer: str) -> tuple[dict[str, Any], Result]:
    """What :func:`mark_parcel` gave, checked.

    Raises
    ------
    CohortError
        When it is no mark.
    """
    try:
        about, result = json.loads(answer)
    except (ValueError, TypeError):
        about, result = {}, None
    return about, RESULT.of(result)
