"""The bench sheet of a module and unit."""

from __future__ import annotations

from twoshaft import __version__
from twoshaft.jobsheet.photographs import Photographs
from twoshaft.modules import COURSE
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import Sheet
from twoshaft_grader.bench_sheets.frame import cautions, signatures, watched
from twoshaft_grader.bench_sheets.modules import recipe_of
from twoshaft_grader.bench_sheets.pictured import pictures_of


def bench_sheet(
    module: str,
    unit: Unit,
    *,
    cohort: str = "",
    college: str = "",
    photographs: Photographs | None = None,
) -> Sheet:
    """Make the bench sheet of a module for a unit.

    Parameters
    ----------
    module : str
        Module id, as ``threaded-joints``.
    unit : Unit
    cohort, college : str, optional
        As the heading is to name them; left to be written in where empty.
    photographs : Photographs, optional
        The college's own, of what the sheet names.

    Returns
    -------
    Sheet
        Without a figure of the unit: what the maker's manual says is written in by hand.
    """
    recipe, known = recipe_of(module), COURSE.get(module)
    made = recipe.make(unit)
    return Sheet(
        number=f"{known.number:02}" if known else "",
        module=module,
        title=known.title if known else module.replace("-", " ").capitalize(),
        unit=unit.identity.name,
        unit_version=unit.identity.version,
        course_version=__version__,
        invented=unit.identity.invented,
        cohort=cohort,
        college=college,
        blocks=(
            cautions(recipe.cautions, unit),
            *made,
            *pictures_of(made, unit, photographs or Photographs()),
            *watched(module),
            signatures(),
        ),
    )
