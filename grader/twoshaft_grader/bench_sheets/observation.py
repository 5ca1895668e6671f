"""The observation form on paper: an outcome's criteria as lines to tick while watching."""

from __future__ import annotations

from pathlib import Path

from twoshaft import __version__
from twoshaft.errors import CourseError
from twoshaft.jobsheet.photographs import Photographs
from twoshaft.outcomes import Evidence, Outcome, load_outcomes
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import Column, Sheet, Table
from twoshaft_grader.bench_sheets.modules import recipe_of
from twoshaft_grader.bench_sheets.page import as_page
from twoshaft_grader.bench_sheets.paper import Paper
from twoshaft_grader.bench_sheets.pdf import as_pdf
from twoshaft_grader.bench_sheets.pictured import pictures_of
from twoshaft_grader.cohort import files

_TOLD = {
    Evidence.OPEN_BOOK: "The marked exercise is enough for it; what you see is kept beside it.",
    Evidence.SUPERVISED: "It is to be shown under supervision.",
    Evidence.AT_THE_BENCH: "It is to be shown at the bench.",
}
_HOW = (
    "Tick one box in each line. “Not yet” says in the remark what is missing. Ask before you help, "
    "and write down that you did."
)


def outcomes_named(name: str) -> dict[str, Outcome]:
    """The outcomes that a name means: one, or those of a module.

    Raises
    ------
    CourseError
        When neither an outcome nor a module has this name.
    """
    known = load_outcomes()
    found = {id: one for id, one in known.items() if name == id or name in one.modules}
    if not found:
        modules = dict.fromkeys(module for one in known.values() for module in one.modules)
        raise CourseError(
            f'neither an outcome nor a module is called "{name}"',
            mend=f"use an outcome's id, or a module: {', '.join(modules)}",
        )
    return found


def observation_form(
    name: str,
    unit: Unit,
    *,
    cohort: str = "",
    college: str = "",
    photographs: Photographs | None = None,
) -> Sheet:
    """Make the form of an outcome, or of all outcomes of a module.

    Raises
    ------
    CourseError
        When neither has this name.
    """
    outcomes = outcomes_named(name)
    modules = dict.fromkeys(module for outcome in outcomes.values() for module in outcome.modules)
    work = [block for module in modules for block in recipe_of(module).make(unit)]
    one = next(iter(outcomes.values())).statement if len(outcomes) == 1 else ""
    return Sheet(
        number="",
        module=name,
        title=f"Observation: {one or name.replace('-', ' ')}",
        unit=unit.identity.name,
        unit_version=unit.identity.version,
        course_version=__version__,
        invented=unit.identity.invented,
        cohort=cohort,
        college=college,
        blocks=(
            *(_criteria(outcome) for outcome in outcomes.values()),
            _seen(),
            _signed(),
            *pictures_of(work, unit, photographs or Photographs()),
        ),
    )


def write_form(
    name: str,
    unit: Unit,
    folder: Path,
    *,
    paper: Paper,
    cohort: str,
    college: str,
    photographs: Photographs | None = None,
) -> Path:
    """Write a form as PDF, and HTML beside it; returns the PDF."""
    form = observation_form(name, unit, cohort=cohort, college=college, photographs=photographs)
    pdf = folder / f"observation-{name}-{paper}.pdf"
    files.write_whole(pdf, as_pdf(form, paper))
    files.write_whole(pdf.with_suffix(".html"), as_page(form, paper))
    return pdf


def _criteria(outcome: Outcome) -> Table:
    columns = (
        Column("Criterion", 4.0),
        Column("Seen", 0.6, tick=True),
        Column("Not yet", 0.7, tick=True),
        Column("Not tried", 0.7, tick=True),
        Column("Remark", 2.4),
    )
    rows = [(f"{text}\n{id}",) for id, text in outcome.criteria.items()]
    must = " It must be passed." if outcome.must_pass else ""
    say = f"{outcome.id}. {_TOLD[outcome.evidence]}{must} {_HOW}"
    return Table.begun(outcome.statement, columns, rows, say)


def _seen() -> Table:
    columns = (Column("What", 1.6), Column("As it was", 3.0))
    rows = [
        ("Day it was seen",),
        ("Bench, and what stood on it",),
        ("Prior learning: the evidence, if it was not seen here",),
        ("Day it was entered, and by whom",),
    ]
    return Table.begun("When and where", columns, rows)


def _signed() -> Table:
    columns = (Column("", 1.4), Column("Name", 2.0), Column("Signature", 2.4), Column("Date", 1.0))
    rows = [("Assessor, from the register",), ("Apprentice: I have read this",)]
    return Table.begun("Signatures", columns, rows)
