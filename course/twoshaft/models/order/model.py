"""Correct orders a mechanic would recognise: one that is always the same, and varied ones."""

from __future__ import annotations

from twoshaft.errors import UnitFileError
from twoshaft.models.order.downsets import whole
from twoshaft.models.order.masks import bits, with_pairs
from twoshaft.models.order.slip import late_clocks
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

    Examples
    --------
    >>> model_order(OrderTask.from_unit(unit, ["fit-magnet", "wash-housing"]))
    ('wash-housing', 'fit-magnet')
    """
    plain = None
    for after in _ways(task, 0, task.before, task.after):
        before = _turned(after)
        for mindful in (False, True):
            order = _greedy(task, before, after, mindful=mindful)
            if not late_clocks(task, order):
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
    done, count = 0, len(task.steps)
    order: list[int] = []
    while len(order) < count:
        ready = [i for i in range(count) if not done >> i & 1 and not before[i] & ~done]
        pick = (_mindful(task, before, after, done, ready) if mindful else ready)[0]
        done |= 1 << pick
        order.append(pick)
    return order


def _mindful(task: OrderTask, before, after, done: int, ready: list[int]) -> list[int]:
    """Ready steps that keep the clocks in mind: what a running clock needs, or no early start."""
    running = [c.ends for c in task.clocks if done >> c.starts & 1 and not done >> c.ends & 1]
    needed = [i for i in ready if any(i == end or after[i] >> end & 1 for end in running)]
    if needed:
        return needed
    early = {
        c.starts for c in task.clocks if before[c.ends] & ~done & ~(after[c.starts] | 1 << c.starts)
    }
    return [i for i in ready if i not in early] or ready


def sensible_order(task: OrderTask, rng, tries: int = 40) -> tuple[str, ...]:
    """A random correct order that stays with a sub-assembly as long as it can.

    Parameters
    ----------
    task : OrderTask
        The task.
    rng : object
        With ``integer(n)``, a whole number below n.
    tries : int
        Orders to try for one that keeps every clock; the model order is the last resort.

    Returns
    -------
    tuple of str
        Step ids.

    Examples
    --------
    >>> from twoshaft.models.order import plan_slip
    >>> from twoshaft.readings.keyed import Stream
    >>> task = OrderTask.from_unit(unit)
    >>> drawn = sensible_order(task, Stream("salt", "ann", "order-of-work", 1), tries=3)
    >>> plan_slip(task, drawn).size
    0
    """
    states, stages = whole(task), [task.stage(step) for step in task.steps]
    for _ in range(tries):
        state, ready = states.start, states.first_ready()
        order: list[int] = []
        while ready:
            ways = [i for i in bits(ready) if states.step(state, i) is not None]
            if not ways:
                break
            done = state & states.done_mask
            ways = _mindful(task, task.before, task.after, done, ways)
            if order:
                ways = [i for i in ways if stages[i] == stages[order[-1]]] or ways
            i = ways[rng.integer(len(ways))]
            ready = states.ready_after(done, ready, i)
            state = states.after(state, i)
            order.append(i)
        if len(order) == len(task.steps) and not late_clocks(task, order):
            return tuple(task.steps[i] for i in order)
    return model_order(task)
