"""The workplace: what apprentices open, with a folder and a sign-in word for each."""

from __future__ import annotations

from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner


def prepare_workplace(cohort: Cohort, learners: list[Learner]) -> None:
    """Give every learner a folder."""
    for learner in learners:
        files.write_json(
            cohort.workplace / learner.id / "learner.json",
            {
                "id": learner.id,
                "family_name": learner.family_name,
                "given_name": learner.given_name,
            },
        )
