"""The mark of an order: 1 - slip / r0, never below nothing.

``r0`` is the largest slip at which an order put together at random still earns 5 % or less on
average, so that guessing earns about nothing whatever the task's length.
"""

from __future__ import annotations

import hashlib
import math
import random
import statistics
from bisect import bisect_right
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from pathlib import Path

from twoshaft.errors import UnitFileError
from twoshaft.models.order.model import model_order
from twoshaft.models.order.slip import plan_slip, slip_size
from twoshaft.models.order.task import OrderTask

CHANCE = 0.05
"""What a random order may earn on average."""
LEAST_R0 = 3.0
"""A task on which three slips earn less than nothing is too coarse to mark."""
SEED = 20_000_101
_misplaced: dict[tuple, dict[int, list[int]]] = {}
_known: dict[tuple, float] = {}
_start_slips: dict[tuple, float] = {}
_levels: dict[str, float] = {}


def chance_slips(task: OrderTask, draws: int | None = None, seed: int = SEED) -> Counter[int]:
    """Slips of random orders, by a seeded sample that is the same at every run.

    Parameters
    ----------
    task : OrderTask
        The task.
    draws : int, optional
        Number of orders; by default 4000 for short lists, fewer for long ones, whose slips
        hardly vary.
    seed : int
        Seed of the sample.

    Examples
    --------
    >>> chance_slips(OrderTask.from_unit(unit, ["wash-housing", "fit-magnet"]), draws=100)
    Counter({1: 52, 0: 48})
    """
    count = len(task.steps)
    if draws is None:
        draws = 4000 if count <= 16 else 600 if count <= 120 else 100
    source = random.Random(seed)
    order = list(range(count))
    slips: Counter[int] = Counter()
    for _ in range(draws):
        # Own shuffle: only random() is promised to stay the same from version to version.
        for i in range(count - 1, 0, -1):
            j = int(source.random() * (i + 1))
            order[i], order[j] = order[j], order[i]
        slips[slip_size(task, order)] += 1
    return slips


def chance_r0(task: OrderTask) -> float:
    """The largest r0, to a tenth of a step, at which random orders earn 5 % or less on average.

    The sample's mean plus three standard errors is kept below 5 %.

    Examples
    --------
    >>> chance_r0(OrderTask.from_unit(unit, [one.id for one in unit.operations][:10]))
    3.4
    """
    key = task.signature
    if key not in _known:
        level = _level_id(key)
        if level not in _levels:
            _levels[level] = _chance_r0(task)
        _known[key] = _levels[level]
    return _known[key]


def _chance_r0(task: OrderTask) -> float:
    slips = chance_slips(task)
    tenths = 10 * max(slips)
    low, high = 0, 2 * tenths + 10
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (middle, high) if _earns(slips, middle / 10) <= CHANCE else (low, middle)
    return low / 10


def chance_levels() -> dict[str, float]:
    """Every :func:`chance_r0` worked out or taken over so far, by a digest of all that it depends
    on: the task's rules, and the code. A long list takes a second, so they are worth keeping.

    Examples
    --------
    >>> all(level >= 0 for level in chance_levels().values())
    True
    """
    return dict(_levels)


def take_chance_levels(kept: Mapping[str, float]) -> None:
    """Take over what :func:`chance_levels` gave to another run; of other code it is not used.

    Examples
    --------
    >>> take_chance_levels(chance_levels())
    """
    _levels.update(kept)


def _level_id(signature: tuple) -> str:
    return hashlib.sha256(f"{_code()} {signature!r}".encode()).hexdigest()


@cache
def _code() -> str:
    digest = hashlib.sha256()
    for path in sorted(Path(__file__).parent.glob("*.py")):
        digest.update(path.read_bytes())
    return digest.hexdigest()


def _earns(slips: Counter[int], r0: float) -> float:
    """Upper bound of the mean mark of a sample of slips."""
    draws = slips.total()
    marks = [(max(0.0, 1 - slip / r0), n) for slip, n in slips.items()]
    mean = sum(m * n for m, n in marks) / draws
    spread = sum((m - mean) ** 2 * n for m, n in marks) / (draws - 1)
    return mean + 3 * math.sqrt(spread / draws)


def zero_mark_slip(task: OrderTask) -> float:
    """The slip at which a task's mark reaches nothing (r0).

    The smaller of :func:`chance_r0` and the slip of the order shown at first, which therefore
    earns nothing.

    Raises
    ------
    UnitFileError
        When it is below 3: one slip would cost more than a third of the mark.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, [one.id for one in unit.operations][:10])
    >>> r0 = zero_mark_slip(task)
    >>> r0, share(task, r0), round(share(task, 1), 2)
    (3.4, 0.0, 0.71)
    """
    r0 = chance_r0(task)
    if task.start is not None:
        r0 = min(r0, _start_slip(task))
    if r0 < LEAST_R0:
        raise UnitFileError(
            f"an order of {len(task.steps)} steps with so few rules (r0 {r0:g}) cannot be marked",
            mend="take more steps, steps with more rules, or a start order with more slips",
        )
    return r0


def _start_slip(task: OrderTask) -> float:
    """The slip of the order shown at first; every pass of a marking asks for it."""
    key = task.signature, task.start
    if key not in _start_slips:
        shown = [task.number[step] for step in task.start or ()]
        _start_slips[key] = float(slip_size(task, shown))
    return _start_slips[key]


def mark(task: OrderTask, sequence: Iterable[str], *, start: Iterable[str] | None = None) -> float:
    """Mark an order.

    Parameters
    ----------
    task : OrderTask
        The task.
    sequence : iterable of str
        Step ids in the order submitted.
    start : iterable of str, optional
        The order shown at first, which earns nothing; the task's own by default.

    Returns
    -------
    float
        From 0 to 1; 1 for every correct order.

    Raises
    ------
    UnitFileError
        When the task is too short to be marked (r0 below 3).

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, [one.id for one in unit.operations][:10])
    >>> mark(task, task.steps), round(mark(task, [*task.steps[1:], task.steps[0]]), 2)
    (1.0, 0.71)
    """
    if start is not None:
        task = task.starting_from(start)
    return share(task, plan_slip(task, sequence).size)


def share(task: OrderTask, slip: float) -> float:
    """The mark for a slip of a given size.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, [one.id for one in unit.operations][:10])
    >>> share(task, 0), round(share(task, 2), 2)
    (1.0, 0.41)
    """
    return max(0.0, 1.0 - slip / zero_mark_slip(task))


def mean_mark(task: OrderTask, skill: float, draws: int = 10) -> float:
    """What somebody earns on average who puts each step in its place with a chance of ``skill``.

    A step that is not lands anywhere in an order that is right otherwise.

    Parameters
    ----------
    task : OrderTask
        The task.
    skill : float
        The chance, 0 to 1.
    draws : int
        Orders drawn for each number of misplaced steps, by a seeded sample; of a long list not
        each number has its own, but lies on the line between its neighbours.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, [one.id for one in unit.operations][:10])
    >>> mean_mark(task, 1.0), mean_mark(task, 0.9) > mean_mark(task, 0.6)
    (1.0, True)
    """
    count = len(task.steps)
    slips = _misplaced_slips(task, draws)
    numbers = sorted(slips)
    marks = [statistics.mean(share(task, slip) for slip in slips[number]) for number in numbers]
    chances = [
        math.comb(count, out) * (1 - skill) ** out * skill ** (count - out)
        for out in range(count + 1)
    ]
    return sum(chance * _between(numbers, marks, out) for out, chance in enumerate(chances))


def _between(at: Sequence[int], values: Sequence[float], x: int) -> float:
    """The value at x on the line through the neighbours; beyond the last one, the last."""
    after = bisect_right(at, x)
    if after == len(at):
        return values[-1]
    part = (x - at[after - 1]) / (at[after] - at[after - 1])
    return values[after - 1] + part * (values[after] - values[after - 1])


def _misplaced_slips(task: OrderTask, draws: int) -> dict[int, list[int]]:
    """Slips of orders, by how many of their steps were pulled out and put back anywhere."""
    key = task.signature, draws
    if key in _misplaced:
        return _misplaced[key]
    count, none_left = len(task.steps), chance_r0(task)
    right = [task.number[step] for step in model_order(task)]
    source = random.Random(SEED)
    slips = {0: [0]}
    out, every = 0, max(1, round(none_left / 10))
    while out < count and min(slips[out]) < none_left:
        out = min(count, out + every)
        slips[out] = []
        for _ in range(draws):
            order = list(right)
            for _ in range(out):
                step = order.pop(int(source.random() * count))
                order.insert(int(source.random() * count), step)
            slips[out].append(slip_size(task, order))
    return _misplaced.setdefault(key, slips)


def starting_order(task: OrderTask, stream) -> tuple[str, ...]:
    """A shuffled order to show at first: complete, and with a slip of at least r0.

    Parameters
    ----------
    task : OrderTask
        The task.
    stream : object
        With ``shuffled(sequence)``, such as a stream of readings.

    Examples
    --------
    >>> from twoshaft.readings.keyed import Stream
    >>> task = OrderTask.from_unit(unit, [one.id for one in unit.operations][:10])
    >>> mark(task, starting_order(task, Stream("salt", "ann", "order-of-work", 1)))
    0.0
    """
    need = chance_r0(task)
    best: tuple[str, ...] = task.steps
    best_slip = -1
    for _ in range(200):
        order = tuple(stream.shuffled(task.steps))
        slip = slip_size(task, [task.number[step] for step in order])
        if slip >= need:
            return order
        if slip > best_slip:
            best, best_slip = order, slip
    return best
