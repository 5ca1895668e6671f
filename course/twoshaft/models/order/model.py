"""Correct orders a mechanic would recognise: one that is always the same, and varied ones."""

from __future__ import annotations

from functools import lru_cache

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
        ready = sum(1 << i for i in range(count) if not (done >> i & 1 or before[i] & ~done))
        pick = next(bits(_mindful(task, before, after, done, ready) if mindful else ready))
        done |= 1 << pick
        order.append(pick)
    return order


def _mindful(task: OrderTask, before, after, done: int, ready: int) -> int:
    """Ready steps that keep the clocks in mind: what a running clock needs, or no early start."""
    needed = early = 0
    for clock in task.clocks:
        start, end = 1 << clock.starts, 1 << clock.ends
        if done & start and not done & end:
            needed |= before[clock.ends] | end
        if before[clock.ends] & ~done & ~(after[clock.starts] | start):
            early |= start
    return ready & needed or ready & ~early or ready


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
    states, beside = whole(task), _of_a_stage(task)
    for _ in range(tries):
        state, ready = states.start, states.first_ready()
        order: list[int] = []
        while ready:
            ways = states.possible(state, ready)
            if not ways:
                break
            done = state & states.done_mask
            ways = _mindful(task, task.before, task.after, done, ways)
            if order:
                ways = ways & beside[order[-1]] or ways
            for _ in range(rng.integer(ways.bit_count())):
                ways &= ways - 1  # the lowest is left out
            i = (ways & -ways).bit_length() - 1
            ready = states.ready_after(done, ready, i)
            state = states.after(state, i)
            order.append(i)
        if len(order) == len(task.steps) and not late_clocks(task, order):
            return tuple(task.steps[i] for i in order)
    return model_order(task)


@lru_cache(maxsize=64)
def _of_a_stage(task: OrderTask) -> list[int]:
    """By step: the steps of its stage, itself among them."""
    stages = [task.stage(step) for step in task.steps]
    masks = {
        stage: sum(1 << i for i, one in enumerate(stages) if one == stage) for stage in set(stages)
    }
    return [masks[stage] for stage in stages]
