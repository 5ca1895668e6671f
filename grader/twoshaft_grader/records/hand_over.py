"""What is handed over: workbook, OneRoster gradebook, records on paper, the matrix."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path
from typing import Any

from nbgrader.api import Gradebook
from nbgrader.plugins import ExportPlugin

from twoshaft.errors import CohortError, CourseError
from twoshaft_grader.bench_sheets.paper import Paper
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.folder import Cohort, open_cohort
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.trail import act, head_of, keep_head
from twoshaft_grader.records.learner_record import record_pdf
from twoshaft_grader.records.matrix import matrix_csv, matrix_of, matrix_page
from twoshaft_grader.records.oneroster import Place, oneroster_zip
from twoshaft_grader.records.rows import outcome_rows
from twoshaft_grader.records.workbook import workbook

EXPORTS = "exports"


def write_workbook(
    cohort: Cohort, to: Path | None = None, *, by: str = ""
) -> tuple[Path, list[NotDone]]:
    """Write marks, matrix, observations and changes as XLSX; who is not in it, and why.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    path = (to or cohort.root / EXPORTS / f"{cohort.id}.xlsx").resolve()
    with act(cohort.root, "export", path.name, by=by):
        with backbone.gradebook(cohort) as book:
            rows, left = outcome_rows(cohort, book)
        matrix, _ = matrix_of(cohort)
        files.write_whole(path, workbook(cohort, rows, matrix, head_of(cohort.root)))
    keep_head(cohort.root)
    return path, left


def write_oneroster(
    cohort: Cohort, to: Path | None = None, *, place: Place | None = None, by: str = ""
) -> tuple[Path, list[NotDone]]:
    """Write marks and outcomes as a OneRoster 1.2 gradebook; who is not in it, and why.

    Parameters
    ----------
    place : Place, optional
        How the records system calls class, school and term; by default the cohort's id.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    path = (to or cohort.root / EXPORTS / f"{cohort.id}-oneroster.zip").resolve()
    place = place or Place(cohort.id, cohort.id, cohort.id)
    with act(cohort.root, "export", path.name, by=by):
        with backbone.gradebook(cohort) as book:
            rows, left = outcome_rows(cohort, book)
        matrix, _ = matrix_of(cohort)
        files.write_whole(path, oneroster_zip(cohort, rows, matrix, place))
    keep_head(cohort.root)
    return path, left


def write_records(
    cohort: Cohort,
    to: Path | None = None,
    *,
    learners: Collection[str] = (),
    paper: Paper = Paper.A4,
    by: str = "",
) -> tuple[list[Path], list[NotDone]]:
    """Write a record on paper for each learner; of whom there is none, and why.

    Parameters
    ----------
    learners : collection of str
        Only these; empty means all.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged, or nobody has an id that is named.
    """
    folder = (to or cohort.root / EXPORTS / "records").resolve()
    with act(cohort.root, "export", "records on paper", by=by) as told:
        with backbone.gradebook(cohort) as book:
            rows, _ = outcome_rows(cohort, book)
        matrix, left = matrix_of(cohort)
        known = {person.id for person in matrix.learners} | {one.learner for one in left}
        if unknown := sorted(set(learners) - known):
            raise CohortError(f'nobody on the roster has the id "{unknown[0]}"', mend="check it")
        head, written = head_of(cohort.root), []
        for person in matrix.learners:
            if not learners or person.id in learners:
                path = folder / f"{person.id}.pdf"
                files.write_whole(path, record_pdf(cohort, matrix, rows, person, head, paper))
                written.append(path)
        told.after = f"{len(written)} records"
    keep_head(cohort.root)
    return written, left


def write_matrix(
    cohort: Cohort, *, csv: Path | None = None, page: Path | None = None, by: str = ""
) -> tuple[list[Path], list[NotDone]]:
    """Write the matrix as CSV, as a page, or both; who is not in it, and why.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    written = [path.resolve() for path in (csv, page) if path]
    with act(cohort.root, "export", ", ".join(path.name for path in written), by=by):
        matrix, left = matrix_of(cohort)
        if csv:
            files.write_whole(csv.resolve(), matrix_csv(matrix))
        if page:
            files.write_whole(page.resolve(), matrix_page(matrix, cohort, page.resolve()))
    keep_head(cohort.root)
    return written, left


class _Plugin(ExportPlugin):
    """An export of ours, for ``nbgrader export --exporter=…`` in a cohort folder."""

    def _write(self, cohort: Cohort, to: Path | None) -> tuple[Path, list[NotDone]]:
        raise NotImplementedError

    def export(self, gradebook: Gradebook) -> None:
        """Write the export to ``--to``, or to its place in the cohort folder."""
        settings: Any = self.parent
        try:
            cohort = open_cohort(Path(settings.coursedir.root))
            path, left = self._write(cohort, Path(self.to) if self.to else None)
        except CourseError as error:
            raise SystemExit(error.sentence) from None
        for one in left:
            self.log.error("Not exported: %s: %s", one.learner, one.why)
        self.log.info("Wrote %s", path)


class WorkbookExport(_Plugin):
    """The workbook: a sheet a module, the matrix, observations and changes."""

    def _write(self, cohort: Cohort, to: Path | None) -> tuple[Path, list[NotDone]]:
        return write_workbook(cohort, to)


class OneRosterExport(_Plugin):
    """A OneRoster 1.2 gradebook."""

    def _write(self, cohort: Cohort, to: Path | None) -> tuple[Path, list[NotDone]]:
        return write_oneroster(cohort, to)
