"""A right build from beginning to end, with what each check of it then shows."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from twoshaft.models.order import model_order
from twoshaft.models.wholebuild.asks import GO_ON, OPEN, Ask, asks_of
from twoshaft.models.wholebuild.checking import outcomes_at
from twoshaft.models.wholebuild.decisions import Do
from twoshaft.models.wholebuild.job import Job
from twoshaft.models.wholebuild.right import right_choice
from twoshaft.units.kept import kept


def right_values(job: Job, ask: Ask) -> dict[str, Any]:
    """A right decision, worked out by the models: values by field name.

    For a shim the one that ``shim.choose_for`` takes, for a joint the group's own wrench, state
    and setting with the first sequence and the fewest rounds that make the clamp even enough, for
    a film ``Work.good_passes``, for the proof ``lockout_moves``; of a check it is what the unit,
    built rightly with the parts of this job, shows.

    Parameters
    ----------
    job : Job
    ask : Ask

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> f"{right_values(job, asks_of(job)[0])['shim-differential']:.2f}"
    '1.15 millimeter'
    """
    return dict(_right_check(job, ask) if ask.kind == "check" else right_choice(job, ask))


@kept()
def _right_check(job: Job, ask: Ask) -> dict[str, Any]:
    plain = _unchecked(job)
    place = next(k for k, one in enumerate(plain) if one.step == ask.step)
    shown = outcomes_at(job, plain[: place + 1], ask.step)
    return {f"verdict-{ask.step}": GO_ON if all(one.passes for one in shown) else OPEN}


@kept()
def _unchecked(job: Job) -> tuple[Do, ...]:
    return right_decisions(job, checks=False)


def right_decisions(
    job: Job, order: Sequence[str] | None = None, *, checks: bool = True
) -> tuple[Do, ...]:
    """A right build from beginning to end.

    Parameters
    ----------
    job : Job
    order : sequence of str, optional
        Steps in a correct order; the model order if absent.
    checks : bool
        Whether what to do after each check is decided as well.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> build = right_decisions(Job.of(unit, {"asked": ["shim-differential"]}))
    >>> len(build), [one.step for one in build if one.choices]
    (80, ['fit-diff-shim'])
    """
    steps = model_order(job.task) if order is None else order
    asks = [ask for ask in asks_of(job) if checks or ask.kind != "check"]
    choices: dict[str, dict[str, Any]] = {step: {} for step in steps}
    for ask in asks:
        if ask.step in choices:
            choices[ask.step] |= right_values(job, ask)
    return tuple(Do(step, choices[step]) for step in steps)
