"""What the college around a lesson brings itself."""

from __future__ import annotations

from pathlib import Path

from twoshaft.jobsheet.bench_unit import workplace_around
from twoshaft.jobsheet.photographs import Photographs, photographs_around
from twoshaft.safety import OWN_SOURCES, OwnSources, load_own_sources


def college_sources(folder: str | Path | None = None) -> OwnSources:
    """Where the college says that the cautions can be read up.

    Parameters
    ----------
    folder : path, optional
        The lesson's folder; the working folder if not given.

    Returns
    -------
    OwnSources
        Those of the workplace around the lesson; none outside of one.

    Raises
    ------
    UnitFileError, SheetError
        When the workplace's files cannot be used.
    """
    around = workplace_around(Path.cwd() if folder is None else Path(folder))
    return load_own_sources(around[0] / OWN_SOURCES if around else None)


def college_photographs(folder: str | Path | None = None) -> Photographs:
    """The college's own pictures of parts and operations; none outside of a workplace.

    Parameters
    ----------
    folder : path, optional
        The lesson's folder; the working folder if not given.

    Raises
    ------
    SheetError
        When ``workplace.json`` cannot be used.
    """
    return photographs_around(Path.cwd() if folder is None else Path(folder))
