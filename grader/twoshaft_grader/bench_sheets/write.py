"""Bench sheets as files."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from twoshaft.errors import CourseError
from twoshaft.jobsheet.photographs import Photographs
from twoshaft.readings.issue import MODULES
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.build import bench_sheet
from twoshaft_grader.bench_sheets.page import as_page
from twoshaft_grader.bench_sheets.paper import Paper
from twoshaft_grader.bench_sheets.pdf import as_pdf
from twoshaft_grader.cohort import files

ALL = "all"


def modules_named(name: str) -> tuple[str, ...]:
    """The modules that a name means: one, or every one of the course for ``all``.

    Raises
    ------
    CourseError
        When no module has this id.
    """
    if name == ALL:
        return tuple(MODULES)
    if name not in MODULES:
        known = ", ".join(MODULES)
        raise CourseError(f"there is no module {name!r}", mend=f"use {ALL} or one of: {known}")
    return (name,)


def write_sheets(
    modules: tuple[str, ...],
    unit: Unit,
    folder: Path,
    *,
    paper: Paper = Paper.A4,
    cohort: str = "",
    college: str = "",
    photographs: Photographs | None = None,
) -> Iterator[tuple[Path, Path]]:
    """Write sheets as PDF and HTML, each file whole or not at all.

    Yields
    ------
    tuple of Path, Path
        The PDF and the HTML page.
    """
    if folder.exists() and not folder.is_dir():
        raise CourseError("this is a file, not a folder", where=str(folder), mend="name a folder")
    for module in modules:
        sheet = bench_sheet(module, unit, cohort=cohort, college=college, photographs=photographs)
        name = "-".join(part for part in (sheet.number, module, unit.identity.id, paper) if part)
        pdf, page = folder / f"{name}.pdf", folder / f"{name}.html"
        files.write_whole(pdf, as_pdf(sheet, paper))
        files.write_whole(page, as_page(sheet, paper))
        yield pdf, page
