"""One correct order, the same at every run."""

from __future__ import annotations

from twoshaft.errors import UnitFileError
from twoshaft.models.order.masks import bits, with_pairs
from twoshaft.models.order.task import OrderTask


def model_order(task: OrderTask) -> tuple[str, ...]:
    """A correct order, close to the order of the unit file.

    Clocks are respected where an order exists that does: what can wait until after a clock, waits;
    what can be done before it is done before.

    Parameters
    ----------
    task : OrderTask
        The task.

    Returns
    -------
    tuple of str
        Step ids.

    Raises
    ------
    UnitFileError
        When no order keeps every rule.
    """
    plain = None
    for after in _ways(task, 0, task.before, task.after):
        before = _turned(after)
        for mindful in (False, True):
            order = _greedy(task, before, after, mindful=mindful)
            if _in_time(task, order):
                return tuple(task.steps[i] for i in order)
            plain = plain or order
    if plain is None:
        raise UnitFileError(
            "no order keeps every rule", mend="look at the any_of rules and the holds"
        )
    return tuple(task.steps[i] for i in plain)


def _ways(task: OrderTask, depth: int, before, after):
    """Closures with every choice made, in the order of the file."""
    if depth == len(task.choices):
        yield after
        return
    for option in task.choices[depth].options:
        more = with_pairs(before, after, option)
        if more is not None:
            yield from _ways(task, depth + 1, *more)


def _turned(after) -> list[int]:
    before = [0] * len(after)
    for i, mask in enumerate(after):
        for j in bits(mask):
            before[j] |= 1 << i
    return before


def _greedy(task: OrderTask, before, after, *, mindful: bool) -> list[int]:
    done, order, count = 0, [], len(task.steps)
    running: list[int] = []
    while len(order) < count:
        ready = [i for i in range(count) if not done >> i & 1 and not before[i] & ~done]
        pick = ready[0]
        if mindful:
            needed = [i for i in ready if any(i == e or after[i] >> e & 1 for e in running)]
            patient = [i for i in ready if not any(c.starts == i for c in task.clocks)]
            pick = (needed or patient or ready)[0]
        done |= 1 << pick
        order.append(pick)
        running = [e for e in running if e != pick]
        running += [c.ends for c in task.clocks if c.starts == pick and not done >> c.ends & 1]
    return order


def _in_time(task: OrderTask, order: list[int]) -> bool:
    finished, now = {}, 0.0
    for i in order:
        now += task.minutes_do[i]
        finished[i] = now
    return all(finished[c.ends] - finished[c.starts] <= c.minutes for c in task.clocks)
