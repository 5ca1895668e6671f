"""The export: a CSV file for the college's records, through nbgrader's export or our command."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import fields
from pathlib import Path

from nbgrader.api import Gradebook
from nbgrader.plugins import ExportPlugin

from twoshaft.errors import CourseError
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.folder import Cohort, open_cohort
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.trail import act, keep_head
from twoshaft_grader.records.cells import csv_of
from twoshaft_grader.records.rows import Row, outcome_rows

COLUMNS = tuple(field.name for field in fields(Row))
DEFAULT = Path("exports") / "outcomes.csv"


def csv_text(rows: Iterable[Row]) -> str:
    """The rows as CSV: plain numbers, a heading line, nothing a spreadsheet would calculate."""
    return csv_of(COLUMNS, ([getattr(row, column) for column in COLUMNS] for row in rows))


def export_cohort(
    cohort: Cohort,
    to: Path | None = None,
    *,
    learners: Collection[str] = (),
    assignments: Collection[str] = (),
    by: str = "",
) -> tuple[Path, int, list[NotDone]]:
    """Write the export; returns the file, the number of rows, and of whom there are none and why.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    path = (to or cohort.root / DEFAULT).resolve()
    with act(cohort.root, "export", path.name, by=by) as told:
        with backbone.gradebook(cohort) as book:
            rows, left = outcome_rows(cohort, book, learners=learners, assignments=assignments)
        files.write_whole(path, csv_text(rows))
        told.after = f"{len(rows)} rows"
    keep_head(cohort.root)
    return path, len(rows), left


class OutcomeExport(ExportPlugin):
    """One row for each learner, module, attempt and outcome.

    For ``nbgrader export --exporter=twoshaft_grader.records.export.OutcomeExport`` in a cohort
    folder, whose configuration names it already.
    """

    def export(self, gradebook: Gradebook) -> None:
        """Write the export to ``--to``, or to ``exports/outcomes.csv`` in the cohort folder."""
        try:
            cohort = open_cohort(Path(self.parent.coursedir.root))
            path = Path(self.to) if self.to else cohort.root / DEFAULT
            with act(cohort.root, "export", path.name) as told:
                rows, left = outcome_rows(
                    cohort,
                    gradebook,
                    learners=[str(learner) for learner in self.student],
                    assignments=[str(assignment) for assignment in self.assignment],
                )
                files.write_whole(path, csv_text(rows))
                told.after = f"{len(rows)} rows"
        except CourseError as error:
            raise SystemExit(error.sentence) from None
        keep_head(cohort.root)
        for one in left:
            self.log.error("Not exported: %s: %s", one.learner, one.why)
        self.log.info("Wrote %d rows to %s", len(rows), path)
