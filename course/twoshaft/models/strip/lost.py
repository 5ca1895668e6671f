"""What can be read now, what is still covered, and what is lost already."""

from __future__ import annotations

from collections.abc import Collection

from twoshaft.models.order import OrderTask

NOW, COVERED, LOST = "now", "covered", "lost"


def reading_state(task: OrderTask, reading: str, off: Collection[str]) -> str:
    """Whether a reading can be taken with some parts off.

    Parameters
    ----------
    task : OrderTask
        The whole of taking apart (:func:`~twoshaft.models.strip.strip_task`).
    reading : str
        Id of the reading.
    off : collection of str
        Steps undone so far, in any order.

    Returns
    -------
    str
        ``lost`` where something it needs is off, else ``covered`` where something still lies over
        it, else ``now``.

    Examples
    --------
    >>> from twoshaft.models.strip import strip_task
    >>> task = strip_task(unit)
    >>> [reading_state(task, "depth-output", off) for off in ([], ["fit-rear-plate"])]
    ['covered', 'now']
    >>> reading_state(task, "depth-output", ["fit-rear-plate", "tighten-case-bolts"])
    'lost'
    """
    if any(step in off for step in lost_with(task, reading)):
        return LOST
    return NOW if all(step in off for step in covered_by(task, reading)) else COVERED


def covered_by(task: OrderTask, reading: str) -> tuple[str, ...]:
    """Steps that have to be undone before a reading, one by one, in the order of the task.

    Examples
    --------
    >>> from twoshaft.models.strip import strip_task
    >>> covered_by(strip_task(unit), "depth-output")
    ('fit-rear-plate',)
    """
    i = task.number[reading]
    return tuple(dict.fromkeys(task.steps[bond.earlier] for bond in task.bonds_into[i]))


def lost_with(task: OrderTask, reading: str) -> tuple[str, ...]:
    """Steps any of which, undone, ends a reading, in the order of the task.

    Examples
    --------
    >>> from twoshaft.models.strip import strip_task
    >>> lost_with(strip_task(unit), "depth-output")
    ('seat-output-ring', 'tighten-case-bolts')
    """
    i = task.number[reading]
    ends = {bond.later for bond in task.bonds if bond.earlier == i}
    return tuple(task.steps[j] for j in sorted(ends))
