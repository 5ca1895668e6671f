"""When the steps of an order are done: their own minutes, and the waits that must have run."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from twoshaft.models.order.task import OrderTask, TaskWait


@dataclass(frozen=True)
class Waited:
    """A step that had to wait.

    Attributes
    ----------
    wait : TaskWait
        What had to run first.
    minutes : float
        So long nothing could be done but wait [min].

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> [(one.wait.id, one.minutes) for one in times(task, range(len(task.steps))).waited]
    [('sealant-cures', 1330.0)]
    """

    wait: TaskWait
    minutes: float


@dataclass(frozen=True)
class Times:
    """When steps are finished, and what they waited for.

    Attributes
    ----------
    finished : mapping of int to float
        End of each step by its number, from the beginning of the build [min].
    waited : tuple of Waited
        Waits that no other work filled, in order.

    Examples
    --------
    >>> times(OrderTask.from_unit(unit, ["wash-housing"]), [0]).finished
    {0: 12.0}
    """

    finished: Mapping[int, float]
    waited: tuple[Waited, ...]


def wait_before(
    task: OrderTask, i: int, now: float, finished: Mapping[int, float]
) -> tuple[Waited, ...]:
    """The longest wait that a step still has to stand before it may begin; none where all have run.

    Parameters
    ----------
    task : OrderTask
    i : int
        Number of the step.
    now : float
        When it would begin [min].
    finished : mapping of int to float
        End of the steps that are done [min].

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> closed, oil = (task.number[one] for one in ("tighten-case-bolts", "fill-oil"))
    >>> [one.minutes for one in wait_before(task, oil, 100.0, {closed: 60.0})]
    [1400.0]
    """
    open_ones = [
        Waited(wait, finished[wait.starts] + wait.minutes - now)
        for wait in task.waits
        if wait.ends == i and wait.starts in finished
    ]
    longest = max(open_ones, key=lambda one: one.minutes, default=None)
    return (longest,) if longest is not None and longest.minutes > 1e-9 else ()


def times(task: OrderTask, order: Sequence[int]) -> Times:
    """When the steps of an order of step numbers are finished.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-magnet"])
    >>> times(task, [0, 1]).finished
    {0: 12.0, 1: 13.0}
    """
    finished: dict[int, float] = {}
    waited: list[Waited] = []
    now = 0.0
    for i in order:
        stood = wait_before(task, i, now, finished)
        waited += stood
        now += sum(one.minutes for one in stood) + task.minutes_do[i]
        finished[i] = now
    return Times(finished, tuple(waited))
