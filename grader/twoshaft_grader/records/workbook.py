"""Marks as a workbook (XLSX): a sheet a module, the matrix, observations and changes."""

from __future__ import annotations

import io
import re
from collections.abc import Iterable, Sequence
from dataclasses import fields

from twoshaft import __version__
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.decisions import changes_of
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.records.cells import cell
from twoshaft_grader.records.matrix import Matrix
from twoshaft_grader.records.rows import INVENTED, Row
from twoshaft_grader.stored.trail import Head

_WIDEST = 60
_NO_NAME = re.compile(r"[\[\]:*?/\\]")
COLUMNS = tuple(field.name for field in fields(Row))


def workbook(cohort: Cohort, rows: Iterable[Row], matrix: Matrix, head: Head) -> bytes:
    """The workbook as bytes; no cell of it is a formula, and text that looks like one stays text.

    Parameters
    ----------
    rows : iterable of Row
        As exported.
    head : Head
        Of the trail, so that a cut-off end shows later.
    """
    import xlsxwriter  # only this export asks for it

    rows = list(rows)
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {
        "in_memory": True, "strings_to_formulas": False, "strings_to_urls": False,
        "strings_to_numbers": False,
    })  # fmt: skip
    book.set_properties({"title": f"Marks of {cohort.name}"})
    bold = book.add_format({"bold": True, "text_wrap": True, "valign": "top"})

    def sheet(name: str, heading: Sequence[str], lines: Iterable[Sequence[object]]) -> None:
        made = book.add_worksheet(_NO_NAME.sub(" ", name)[:31])
        made.write_row(0, 0, heading, bold)
        made.freeze_panes(1, 1)
        widths = [len(text) for text in heading]
        for number, line in enumerate(lines, 1):
            for place, value in enumerate(line):
                if isinstance(value, int | float) and not isinstance(value, bool):
                    made.write_number(number, place, value)
                else:
                    text = cell(value)
                    made.write_string(number, place, text)
                    widths[place] = max(widths[place], len(text))
        for place, width in enumerate(widths):
            made.set_column(place, place, min(_WIDEST, width + 2))

    sheet("About", ("what", "says"), _about(cohort, head))
    sheet(
        "Matrix",
        ["learner", "name", "group", *(matrix.heading(one.id) for one in matrix.outcomes)],
        (
            [person.id, person.name, person.group,
             *(matrix.cells[person.id, one.id].words for one in matrix.outcomes)]
            for person in matrix.learners
        ),
    )  # fmt: skip
    for name in dict.fromkeys(f"{row.module}-{row.attempt}" for row in rows if row.attempt):
        mine = (row for row in rows if f"{row.module}-{row.attempt}" == name)
        sheet(name, COLUMNS, ([getattr(row, column) for column in COLUMNS] for row in mine))
    sheet(
        "Observations",
        ("learner", "outcome", "was", "kind", "prior learning", "seen on", "entered", "by",
         "bench", "unit", "note", "criteria", "confirmed", "taken back"),
        (
            (
                person.id, seen.outcome, "met" if seen.met else "not yet", str(seen.kind),
                "yes" if seen.prior else "no", seen.day, seen.at, seen.by, seen.bench, seen.unit,
                seen.note, "; ".join(f"{id}: {what}" for id, what in seen.criteria),
                seen.confirmed,
                f"{seen.taken_back.by}: {seen.taken_back.why}" if seen.taken_back else "",
            )
            for person in matrix.learners
            for one in matrix.outcomes
            for seen in matrix.cells[person.id, one.id].seen
        ),
    )  # fmt: skip
    sheet(
        "Changes",
        ("at", "assignment", "learner", "of", "kind", "before", "after", "by", "why"),
        ((c.at, c.assignment, c.learner, c.task, c.kind, c.before, c.after, c.by, c.why)
         for c in changes_of(cohort)),
    )  # fmt: skip
    book.close()
    return out.getvalue()


def _about(cohort: Cohort, head: Head) -> list[tuple[str, str]]:
    return [
        ("cohort", f"{cohort.name} ({cohort.id})"),
        ("college", cohort.college),
        *([("people", INVENTED)] if cohort.invented else []),
        ("made", stamp(now())),
        ("by", f"Twoshaft {__version__}"),
        ("head of the trail", str(head)),
        ("✓ met", "enough in marked work, with the kind of evidence that the outcome asks for"),
        ("◐ enough", "enough in marked work; other evidence is still needed"),
        ("○ not yet", "neither"),
    ]
