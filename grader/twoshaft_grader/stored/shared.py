"""``shared.json``: whose shared place this is, so that a cohort folder that was moved finds it."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Shared:
    """What a shared place says of itself.

    Parameters
    ----------
    cohort : str
        Id of the cohort.
    mark : str
        Tells cohorts of one id apart; nothing depends on its being secret.
    """

    cohort: str
    mark: str


SHARED: StaffFile[Shared] = StaffFile(
    file="shared.json",
    record=Shared,
    fault="this is no mark of a shared place",
)
