"""What has to be done while a clock runs, and the minutes that are left."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from twoshaft.errors import UnitFileError
from twoshaft.models.order.masks import bits
from twoshaft.models.order.task import OrderTask, TaskClock


@dataclass(frozen=True)
class Window:
    """A clock's window.

    Attributes
    ----------
    inside : tuple of str
        Steps that have to be done between the clock's start and its end.
    optional : tuple of str
        Steps that may be done in it but need not.
    minutes_used : float
        Minutes of the steps that have to be inside, and of the step that ends the clock [min].
    minutes_left : float
        What the clock still allows then; negative when it cannot be kept [min].
    fits : tuple of str
        Optional steps that alone still fit into what is left.

    Examples
    --------
    >>> found = window(OrderTask.from_unit(unit), "sealant-skins")
    >>> found.minutes_used, found.minutes_left
    (17.0, 3.0)
    """

    inside: tuple[str, ...]
    optional: tuple[str, ...]
    minutes_used: float
    minutes_left: float
    fits: tuple[str, ...]


def clock_of(task: OrderTask, clock: str) -> TaskClock:
    """A clock of a task by id; raises UnitFileError when there is none.

    Examples
    --------
    >>> clock_of(OrderTask.from_unit(unit), "sealant-skins").minutes
    20.0
    """
    for candidate in task.clocks:
        if candidate.id == clock:
            return candidate
    raise UnitFileError(f"the task has no clock {clock!r}", mend="take a clock of the unit")


def window(
    task: OrderTask,
    clock: str,
    *,
    minutes: Mapping[str, float] | None = None,
    allowed: float | None = None,
) -> Window:
    """What has to be done while a clock runs.

    Parameters
    ----------
    task : OrderTask
        The task.
    clock : str
        Id of the clock.
    minutes : mapping of str to float, optional
        Minutes by step where they differ from the unit's [min].
    allowed : float, optional
        Minutes the clock allows where they differ from the unit's [min].

    Returns
    -------
    Window
        An optional step is possible between start and end by the rules, given that everything
        it needs itself is done before the clock starts.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> window(task, "sealant-skins").inside
    ('lower-case', 'start-case-bolts', 'start-idler-bolt')
    """
    found = clock_of(task, clock)
    i, j = found.starts, found.ends
    own = minutes or {}

    def takes(k: int) -> float:
        return own.get(task.steps[k], task.minutes_do[k])

    inside = task.after[i] & task.before[j]
    everything = (1 << len(task.steps)) - 1
    fixed = inside | 1 << i | 1 << j | task.before[i] | task.after[j]
    # A step that needs more than what stands or is due inside would bring company along.
    optional = [
        k for k in bits(everything & ~fixed) if not (task.before[k] & task.after[i]) & ~inside
    ]
    used = sum(takes(k) for k in bits(inside)) + takes(j)
    left = (found.minutes if allowed is None else allowed) - used
    return Window(
        inside=tuple(task.steps[k] for k in bits(inside)),
        optional=tuple(task.steps[k] for k in optional),
        minutes_used=used,
        minutes_left=left,
        fits=tuple(task.steps[k] for k in optional if takes(k) <= left + 1e-9),
    )
