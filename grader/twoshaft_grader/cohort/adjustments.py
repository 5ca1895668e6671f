"""What is arranged for single learners: more time, a reader, large print, another colour.

``adjustments.json`` in the cohort folder is what counts; the learner's own folder has a copy, from
which their pages take dates and look. Why it was arranged stands in the cohort folder alone.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from twoshaft.errors import CohortError
from twoshaft.stored.adjustments import COLOURS, OWN_ADJUSTMENT, OwnAdjustment
from twoshaft.stored.writing import write_inside
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.first_come import is_theirs
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import alone
from twoshaft_grader.stored.adjustments import ADJUSTMENTS, Adjustment

MOST_DAYS = 60
"""More is a slip of the finger: our choice."""


def adjustments_of(cohort: Cohort) -> Mapping[str, Adjustment]:
    """What is arranged, by learner id.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    return ADJUSTMENTS.read_if_any(cohort.root / ADJUSTMENTS.file) or {}


def adjust(
    cohort: Cohort,
    learners: Iterable[Learner],
    id: str,
    wanted: OwnAdjustment,
    *,
    by: str,
    why: str,
) -> Adjustment:
    """Arrange something for a learner, in the place of what was arranged before.

    Parameters
    ----------
    by : str
        Id or name of an assessor on the register; any name as long as nobody is on it.

    Raises
    ------
    CohortError
        When nobody has this id, days or colour will not do, or the reason is missing.
    """
    if id not in {one.id for one in learners}:
        raise CohortError(f'nobody on the roster has the id "{id}"', mend="check the id")
    by = assessor_named(cohort, by)
    if not why.strip():
        raise CohortError("the reason is missing", mend="say why it is arranged")
    if not 0 <= wanted.more_days <= MOST_DAYS:
        raise CohortError(f"{wanted.more_days} days more", mend=f"give 0 to {MOST_DAYS}")
    if wanted.colour and wanted.colour not in COLOURS:
        raise CohortError(
            f'there is no colour "{wanted.colour}"', mend=f"choose {', '.join(COLOURS)}"
        )
    with (
        alone(cohort, "adjustments", "what is arranged for learners"),
        act(cohort.root, "adjust", id, by=by, why=why) as told,
    ):
        known = dict(adjustments_of(cohort))
        told.before = in_words(known[id]) if id in known else ""
        known[id] = Adjustment(
            more_days=wanted.more_days, reader=wanted.reader, large_print=wanted.large_print,
            colour=wanted.colour, by=by, at=stamp(now()), why=why.strip(),
        )  # fmt: skip
        ADJUSTMENTS.write(cohort.root / ADJUSTMENTS.file, known)
        tell_adjustments(cohort, id)
        told.after = in_words(known[id])
    return known[id]


def in_words(one: OwnAdjustment) -> str:
    """What is arranged, in words."""
    days = f"{one.more_days} day{'' if one.more_days == 1 else 's'} more" if one.more_days else ""
    said = [
        days,
        "a reader" if one.reader else "",
        "large print" if one.large_print else "",
        f"{one.colour} ground" if one.colour else "",
    ]
    return ", ".join(part for part in said if part) or "nothing"


def tell_adjustments(cohort: Cohort, learner: str) -> None:
    """Write what is arranged for a learner into their own folder, if it is there."""
    one = adjustments_of(cohort).get(learner)
    if one is None or not is_theirs(cohort, learner):
        return
    own = OwnAdjustment(
        more_days=one.more_days, reader=one.reader, large_print=one.large_print, colour=one.colour
    )
    text = OWN_ADJUSTMENT.text(own)
    write_inside(cohort.work, f"{learner}/{OWN_ADJUSTMENT.file}", text)


def forget_adjustments(cohort: Cohort, learner: str) -> None:
    """Take away what was arranged for a learner who is taken out."""
    with alone(cohort, "adjustments", "what is arranged for learners"):
        known = dict(adjustments_of(cohort))
        if known.pop(learner, None) is not None:
            ADJUSTMENTS.write(cohort.root / ADJUSTMENTS.file, known)
