"""Several pairs of hands at one build: the shortest time, and the steps that set it.

With enough hands every step starts as soon as all it needs is done. The longest chain of steps
that wait for each other then sets the time (the critical path method, Kelley and Walker 1959,
from memory). Rules that can be kept in several ways are left out: the time is a lower bound there.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from twoshaft.models.order.masks import bits
from twoshaft.models.order.task import OrderTask


@dataclass(frozen=True)
class Hands:
    """A build done by as many pairs of hands as it can use.

    Attributes
    ----------
    minutes : float
        From the first step to the last [min].
    alone : float
        What one pair of hands takes for the same steps [min].
    start : dict of str to float
        Earliest start of each step [min].
    spare : dict of str to float
        How much later each step may start without the whole taking longer [min].

    Examples
    --------
    >>> plan = with_many_hands(OrderTask.from_unit(unit))
    >>> plan.minutes < plan.alone, plan.no_spare[0]
    (True, 'stone-housing-face')
    """

    minutes: float
    alone: float
    start: dict[str, float]
    spare: dict[str, float]

    @property
    def no_spare(self) -> tuple[str, ...]:
        """Steps that must not wait, in the order of their starts."""
        waits = [step for step, spare in self.spare.items() if spare < 1e-9]
        return tuple(sorted(waits, key=self.start.__getitem__))


def with_many_hands(task: OrderTask, minutes: Mapping[str, float] | None = None) -> Hands:
    """Plan a build for as many pairs of hands as it can use.

    Parameters
    ----------
    task : OrderTask
        The task.
    minutes : mapping of str to float, optional
        Minutes by step where they differ from the unit's [min].

    Returns
    -------
    Hands

    Examples
    --------
    Steps that wait for each other take as long with many hands.

    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"  # each before the next
    >>> task = OrderTask.from_unit(unit, steps)
    >>> plan = with_many_hands(task, dict(zip(steps, (5.0, 7.0, 9.0))))
    >>> plan.minutes, plan.alone
    (21.0, 21.0)
    """
    own = minutes or {}
    takes = [own.get(step, task.minutes_do[i]) for i, step in enumerate(task.steps)]
    # Everything before a step has fewer steps before it than the step itself.
    upwards = sorted(range(len(takes)), key=lambda i: task.before[i].bit_count())
    start, tail = [0.0] * len(takes), [0.0] * len(takes)
    for i in upwards:
        start[i] = max((start[k] + takes[k] for k in bits(task.before[i])), default=0.0)
    for i in reversed(upwards):
        tail[i] = max((takes[k] + tail[k] for k in bits(task.after[i])), default=0.0)
    whole = max((start[i] + takes[i] for i in upwards), default=0.0)
    return Hands(
        minutes=whole,
        alone=sum(takes),
        start={step: start[i] for i, step in enumerate(task.steps)},
        spare={step: whole - start[i] - takes[i] - tail[i] for i, step in enumerate(task.steps)},
    )


def needs_directly(task: OrderTask) -> dict[str, tuple[str, ...]]:
    """Steps that each step waits for, without those that the others wait for already.

    Examples
    --------
    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"
    >>> needs_directly(OrderTask.from_unit(unit, steps))["warm-housing"]
    ('wash-housing',)
    """
    return {
        step: tuple(task.steps[k] for k in bits(task.before[i]) if task.directly(k, i))
        for i, step in enumerate(task.steps)
    }
