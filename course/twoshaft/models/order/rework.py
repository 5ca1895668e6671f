"""Taking a build apart again: what has to come off, how long it takes, what must be new."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from twoshaft.models.order.masks import bits
from twoshaft.models.order.replay import in_the_way_of
from twoshaft.models.order.slip import sort_out
from twoshaft.models.order.task import OrderTask


@dataclass(frozen=True)
class Rework:
    """The shortest way to put in a step that was left out.

    Attributes
    ----------
    off : tuple of str
        Steps that have to come off, in the order they come off.
    minutes : float
        Minutes to take them off and put them on again, without the late step itself [min].
    parts : tuple of str
        Parts that must be new.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-bore-plug"])
    >>> rework(task, ["fit-bore-plug"], late="wash-housing")
    Rework(off=('fit-bore-plug',), minutes=2.5, parts=())
    """

    off: tuple[str, ...]
    minutes: float
    parts: tuple[str, ...]


def rework(
    task: OrderTask,
    built: Iterable[str],
    late: str,
    *,
    undo: Mapping[str, float] | None = None,
    do: Mapping[str, float] | None = None,
) -> Rework:
    """Steps that stand in the way of a late one and must come off: no more, no fewer.

    Parameters
    ----------
    task : OrderTask
        The task.
    built : iterable of str
        Steps built so far, in order; the late one is not counted as built.
    late : str
        The step that was left out.
    undo, do : mapping of str to float, optional
        Minutes by step where they differ from the unit's [min].

    Examples
    --------
    The plug covers what the wash must reach, the magnet does not.

    >>> steps = "wash-housing", "fit-bore-plug", "fit-magnet"
    >>> task = OrderTask.from_unit(unit, steps)
    >>> rework(task, ["fit-magnet", "fit-bore-plug"], late="wash-housing").off
    ('fit-bore-plug',)
    """
    number = task.number[late]
    order = [i for i in sort_out(task, built).first if i != number]
    fitted = sum(1 << i for i in order)
    mask = in_the_way_of(task, fitted, number)
    off = [i for i in reversed(order) if mask >> i & 1]
    undo, do = undo or {}, do or {}
    minutes = sum(
        undo.get(task.steps[i], task.minutes_undo[i]) + do.get(task.steps[i], task.minutes_do[i])
        for i in off
    )
    names = tuple(task.steps[i] for i in off)
    return Rework(names, minutes, new_parts(task, names))


def new_parts(task: OrderTask, stripped: Iterable[str]) -> tuple[str, ...]:
    """Parts that must be new when steps are taken apart and done again.

    Parameters
    ----------
    task : OrderTask
        The task.
    stripped : iterable of str
        Steps taken apart.

    Returns
    -------
    tuple of str
        Single-use parts and parts damaged by removal, in the order of the unit file.

    Examples
    --------
    >>> new_parts(OrderTask.from_unit(unit), ["fit-input-seal", "wash-housing"])
    ('input-seal',)
    """
    mask = sum(1 << task.number[task.step_of[step]] for step in dict.fromkeys(stripped))
    return tuple(dict.fromkeys(part for i in bits(mask) for part in task.perishable[i]))
