"""Making a cohort, the same for the command and the desk; and which ones there are nearby."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from twoshaft import DEFAULT_UNIT
from twoshaft.errors import CohortError
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.folder import LONGEST_ID, Cohort, make_cohort, open_cohort
from twoshaft_grader.cohort.shared import close_keys
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE


@dataclass(frozen=True)
class Founded:
    """A new cohort, and of which folder of content what was closed to other accounts."""

    cohort: Cohort
    content: Path | None
    closed: tuple[str, ...]


def found(
    folder: Path,
    *,
    id: str = "",
    name: str = "",
    college: str = "",
    unit: str = DEFAULT_UNIT,
    timezone: str = "",
    content: str = "",
    shared: Path | None = None,
    gradebook: str = "",
    by: str = "",
) -> Founded:
    """Make a cohort with a unit that has nothing to correct; parameters as of ``make_cohort``.

    Raises
    ------
    CourseError
        When the unit, the place or the database will not do; nothing is made then.
    """
    from twoshaft.models.audit import sound_unit
    from twoshaft.units import load_unit

    if Path(unit).is_file():
        sound_unit(unit)
    elif "." not in unit:  # a file may still be put into the folder; an id is known now or never
        load_unit(unit)
    source = find_content(content, base=folder).root if shared else None
    if gradebook:
        from twoshaft_grader.cohort.database import database_of
        from twoshaft_grader.cohort.gradebook_move import see_that_empty

        see_that_empty(database_of(folder, gradebook))
    cohort = make_cohort(
        folder, id=id, name=name, college=college, unit=unit, timezone=timezone, content=content,
        shared=shared, gradebook=gradebook, by=by,
    )  # fmt: skip
    return Founded(cohort, source, tuple(close_keys(source)) if source else ())


def folder_called(name: str, beside: Path) -> Path:
    """A new folder for a cohort of this name, beside another.

    Raises
    ------
    CohortError
        When no folder can be called after it.
    """
    called = re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")[:LONGEST_ID].strip("-")
    if not called:
        raise CohortError(f'no folder can be called after "{name[:40]}"', mend="name the folder")
    return beside / called


def cohorts_in(places: Iterable[Path]) -> list[Cohort]:
    """Cohorts whose folders lie in these, each once; what cannot be read is none."""
    known: dict[Path, Cohort] = {}
    for place in places:
        try:
            folders = sorted(one for one in place.iterdir() if (one / COHORT_FILE).is_file())
        except OSError:
            continue
        for one in folders:
            try:
                cohort = open_cohort(one)
            except (CohortError, OSError):
                continue
            known.setdefault(cohort.root.resolve(), cohort)
    return list(known.values())
