"""What was said of learners before their own account had made their folder."""

from __future__ import annotations

from twoshaft.stored.standing import STANDING
from twoshaft_grader.cohort.adjustments import tell_adjustments
from twoshaft_grader.cohort.extensions import tell_extensions
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.standing import write_standing


def tell_newly_come(cohort: Cohort, learner: str) -> None:
    """Write standing, later dates and adjustments into a learner's folder without a standing.

    Raises
    ------
    CohortError
        When a stored file of the cohort is damaged.
    """
    own = cohort.work / learner
    if cohort.own_accounts and own.is_dir() and not (own / STANDING.file).exists():
        tell_extensions(cohort, learner)
        tell_adjustments(cohort, learner)
        write_standing(cohort, learner)
