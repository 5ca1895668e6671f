"""The college's own sources of the cautions, from the cohort folder to the lessons."""

from __future__ import annotations

from typing import TYPE_CHECKING

from twoshaft.stored.safety_sources import OWN_SOURCES
from twoshaft.stored.writing import FOR_ALL
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.folder import Cohort

if TYPE_CHECKING:
    from twoshaft.safety import OwnSources


def bring_sources(cohort: Cohort) -> OwnSources:
    """Let the lessons show what stands in the cohort's file, or nothing where there is none.

    Raises
    ------
    UnitFileError
        With one sentence (file, line, what, mend) for each thing that is wrong; what the lessons
        showed before stays.
    """
    from twoshaft.safety import load_own_sources

    own = load_own_sources(cohort.safety_sources)
    place = cohort.workplace / OWN_SOURCES
    if cohort.safety_sources.is_file():
        files.write_whole(place, cohort.safety_sources.read_bytes(), mode=FOR_ALL)
    else:
        files.remove(place)
    return own
