"""How many correct orders there are, and a random one.

Counting linear extensions is #P-complete (Brightwell and Winkler 1991, from memory), so the
exact count has a budget: the rules are split into parts that do not bind each other (parallel)
or follow each other whole (series), and each part is counted over its down-sets. Beyond the
budget the count is an estimate and says so.
"""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from twoshaft.errors import UnitFileError
from twoshaft.models.order.downsets import Downsets, TooManyStates, whole
from twoshaft.models.order.masks import bits
from twoshaft.models.order.task import OrderTask

BUDGET = 60_000
"""States up to which a part is counted exactly; about a second."""
_KEPT = 500
_RUNS = 12
_SEED = 19_910_217


@dataclass(frozen=True)
class Count:
    """A number of correct orders.

    Attributes
    ----------
    value : int
        The count, or its estimate.
    exact : bool
        Whether it is exact.
    low, high : int
        Interval: both equal the value when exact; else the mean minus and plus three standard
        errors of each estimated part.

    Examples
    --------
    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"  # each before the next
    >>> count_orders(OrderTask.from_unit(unit, steps))
    Count(value=1, exact=True, low=1, high=1)
    """

    value: int
    exact: bool
    low: int
    high: int

    def __str__(self) -> str:
        if self.exact:
            return f"{self.value}"
        return f"about {_short(self.value)} (estimate, {_short(self.low)} to {_short(self.high)})"


def _short(value: int) -> str:
    if value < 10_000:
        return str(value)
    digits = len(str(value)) - 1
    return f"{value / 10**digits:.1f}e{digits}"


@dataclass(frozen=True)
class _Part:
    """A node of the decomposition: a leaf, or parts side by side or one after the other."""

    mask: int
    side_by_side: bool = False
    parts: tuple[_Part, ...] = ()


def count_orders(task: OrderTask, budget: int = BUDGET) -> Count:
    """Number of correct orders.

    Parameters
    ----------
    task : OrderTask
        The task; rules with a choice are counted exactly as well.
    budget : int
        Most states to go through in each part before estimating it.

    Returns
    -------
    Count
        Exact within the budget. An estimate is the mean of a few seeded, unbiased runs through
        the down-sets that keep only a sample of each level, guided by the hook formula (Knuth
        1973, from memory). The interval covers sampling error alone.

    Examples
    --------
    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"  # each before the next
    >>> task = OrderTask.from_unit(unit, steps)
    >>> count_orders(task).value
    1
    """
    return _count(task, _decompose(task, (1 << len(task.steps)) - 1), budget)


def _count(task: OrderTask, part: _Part, budget: int) -> Count:
    if not part.parts:
        return _count_leaf(task, part.mask, budget)
    counts = [_count(task, child, budget) for child in part.parts]
    ways = 1
    if part.side_by_side:
        placed = 0
        for child in part.parts:
            placed += child.mask.bit_count()
            ways *= math.comb(placed, child.mask.bit_count())
    return Count(
        value=ways * math.prod(c.value for c in counts),
        exact=all(c.exact for c in counts),
        low=ways * math.prod(c.low for c in counts),
        high=ways * math.prod(c.high for c in counts),
    )


def _count_leaf(task: OrderTask, mask: int, budget: int) -> Count:
    if mask.bit_count() <= 1:
        return Count(1, True, 1, 1)
    try:
        states = Downsets(task, mask)
        value = states.completions(budget).get(states.start, 0)
        return Count(value, True, value, value)
    except TooManyStates:
        return _estimate(task, mask)


def _estimate(task: OrderTask, mask: int) -> Count:
    states, source = Downsets(task, mask), random.Random(_SEED)
    logs = [_thinned(states, source) for _ in range(_RUNS)]
    top = max(logs)
    if top == -math.inf:
        raise UnitFileError("no correct order was found", mend="look at the any_of rules and holds")
    weights = [math.exp(log - top) for log in logs]
    mean = math.fsum(weights) / _RUNS
    spread = math.fsum((w - mean) ** 2 for w in weights) / (_RUNS - 1)
    error = 3 * math.sqrt(spread / _RUNS)
    scale = _exp(top)
    return Count(
        value=round(scale * Fraction(mean)),
        exact=False,
        low=max(1, math.floor(scale * Fraction(max(0.0, mean - error)))),
        high=math.ceil(scale * Fraction(mean + error)),
    )


def _thinned(states: Downsets, source: random.Random) -> float:
    """Logarithm of one unbiased estimate: level by level, a sample of the states is kept.

    A state is kept in proportion to the ways into it times a guess of the ways on (the hook
    formula), and its ways are divided by the chance of keeping it.
    """
    level: dict[int, tuple[float, float, int]] = {states.start: (1.0, 1.0, states.first_ready())}
    log = 0.0
    for _ in states.members:
        following: dict[int, tuple[float, float, int]] = {}
        for state, (ways, guess, ready) in level.items():
            for i in bits(ready):
                new = states.step(state, i)
                if new is None:
                    continue
                if new in following:
                    known = following[new]
                    following[new] = (known[0] + ways, known[1], known[2])
                else:
                    after = states.ready_after(state & states.done_mask, ready, i)
                    following[new] = (ways, guess * states.weight[i], after)
        if not following:
            return -math.inf
        if len(following) > _KEPT:
            following = _thin(following, source)
        total = math.fsum(ways for ways, _, _ in following.values())
        most = max(guess for _, guess, _ in following.values())
        log += math.log(total)
        level = {s: (w / total, g / most, r) for s, (w, g, r) in following.items()}
    return log


def _thin(level: dict, source: random.Random) -> dict:
    """Keep about ``_KEPT`` states, by systematic sampling, without bias."""
    items = list(level.items())
    worth = [ways * guess for _, (ways, guess, _) in items]
    step = math.fsum(worth) / _KEPT
    kept, mark = {}, source.random() * step
    for (state, (ways, guess, ready)), value in zip(items, worth, strict=True):
        if value >= step:
            kept[state] = (ways, guess, ready)
            continue
        mark -= value
        if mark < 0:
            mark += step
            kept[state] = (ways * step / value, guess, ready)
    return kept


def _exp(log: float) -> Fraction:
    """e to the power of a large number, which a float cannot hold."""
    twos = int(log / math.log(2))
    return Fraction(math.exp(log - twos * math.log(2))) * 2**twos


def _draw_once(states: Downsets, source: random.Random) -> tuple[list[int], float] | None:
    """One order and the logarithm of its weight (1 / its probability); None at a dead end."""
    state, ready, order, log = states.start, states.first_ready(), [], 0.0
    while ready:
        ways = [(i, new) for i in bits(ready) if (new := states.step(state, i)) is not None]
        if not ways:
            return None
        total = sum(states.weight[i] for i, _ in ways)
        mark = source.random() * total
        chosen = ways[-1]
        for way in ways:
            mark -= states.weight[way[0]]
            if mark < 0:
                chosen = way
                break
        i, new = chosen
        log += math.log(total / states.weight[i])
        ready = states.ready_after(state & states.done_mask, ready, i)
        state = new
        order.append(i)
    return order, log


def _decompose(task: OrderTask, mask: int) -> _Part:
    return _split_side_by_side(task, mask) or _split_in_series(task, mask) or _Part(mask)


def _tied(task: OrderTask, mask: int) -> list[int]:
    """Sets of steps that one choice ties together."""
    sets = []
    for choice in task.choices:
        tied = 1 << choice.step
        for option in choice.options:
            for i, j in option:
                tied |= 1 << i | 1 << j
        if tied & mask:
            sets.append(tied)
    return sets


def _components(mask: int, neighbours, tied: list[int]) -> list[int]:
    components = []
    while mask:
        low = mask & -mask
        found, fresh = 0, low
        while fresh:
            found |= fresh
            reached = 0
            for i in bits(fresh):
                reached |= neighbours(i)
            for group in tied:
                if group & fresh:
                    reached |= group
            fresh = reached & mask & ~found
        components.append(found)
        mask &= ~found
    return components


def _split_side_by_side(task: OrderTask, mask: int) -> _Part | None:
    tied = _tied(task, mask)
    found = _components(mask, lambda i: task.before[i] | task.after[i], tied)
    if len(found) < 2:
        return None
    return _Part(mask, True, tuple(_decompose(task, part) for part in found))


def _split_in_series(task: OrderTask, mask: int) -> _Part | None:
    tied = _tied(task, mask)
    found = _components(mask, lambda i: ~(task.before[i] | task.after[i] | 1 << i), [])
    found.sort(key=lambda part: (task.before[part.bit_length() - 1] & mask).bit_count())
    # A choice that spans several parts makes one part of them and of all between them.
    spans = [[k for k, part in enumerate(found) if part & group] for group in tied]
    glued = {k for ends in spans for k in range(min(ends), max(ends))}
    parts, current = [], 0
    for k, part in enumerate(found):
        current |= part
        if k not in glued:
            parts.append(current)
            current = 0
    if len(parts) < 2:
        return None
    return _Part(mask, False, tuple(_decompose(task, part) for part in parts))


def quick_order(task: OrderTask, rng) -> tuple[str, ...]:
    """A random correct order, fast and from the whole range, but not uniform.

    Parameters
    ----------
    task, rng
        As in :func:`random_order`.

    Raises
    ------
    UnitFileError
        When no correct order is found.

    Examples
    --------
    >>> import random
    >>> from twoshaft.models.order import plan_slip
    >>> task = OrderTask.from_unit(unit)
    >>> order = quick_order(task, random.Random(1))
    >>> len(order), plan_slip(task, order).size
    (80, 0)
    """
    states = whole(task)
    source = random.Random(_below(rng, 1 << 64))
    for _ in range(200):
        drawn = _draw_once(states, source)
        if drawn is not None:
            return tuple(task.steps[i] for i in drawn[0])
    raise UnitFileError("no correct order was found", mend="look at the any_of rules and the holds")


@lru_cache(maxsize=64)
def _leaf_ways(task: OrderTask, mask: int, budget: int) -> tuple[Downsets, dict[int, int]] | None:
    states = Downsets(task, mask)
    try:
        return states, states.completions(budget)
    except TooManyStates:
        return None


def _draw(task: OrderTask, part: _Part, rng, budget: int) -> list[int]:
    if not part.parts:
        known = _leaf_ways(task, part.mask, budget)
        return _chain(task, part.mask, rng) if known is None else _draw_leaf(*known, rng)
    drawn = [_draw(task, child, rng, budget) for child in part.parts]
    if not part.side_by_side:
        return [i for order in drawn for i in order]
    merged: list[int] = []
    for order in drawn:
        merged = _shuffled_together(merged, order, rng)
    return merged


def _shuffled_together(one: Sequence[int], other: Sequence[int], rng) -> list[int]:
    """Two orders merged, every interleaving alike likely."""
    merged, a, b = [], 0, 0
    while a < len(one) or b < len(other):
        left_one, left_other = len(one) - a, len(other) - b
        if _below(rng, left_one + left_other) < left_one:
            merged.append(one[a])
            a += 1
        else:
            merged.append(other[b])
            b += 1
    return merged


def _draw_leaf(states: Downsets, ways: dict[int, int], rng) -> list[int]:
    state, ready, order = states.start, states.first_ready(), []
    if not ways.get(state):
        raise UnitFileError("no order keeps every rule", mend="look at the any_of rules and holds")
    while ready:
        mark = _below(rng, ways[state])
        for i in bits(ready):
            new = states.step(state, i)
            if new is None:
                continue
            mark -= ways.get(new, 0)
            if mark < 0:
                break
        ready = states.ready_after(state & states.done_mask, ready, i)
        assert new is not None  # the ways left say that one step can be done
        state = new
        order.append(i)
    return order


def _chain(task: OrderTask, mask: int, rng) -> list[int]:
    """Swaps of neighbours from a quick order until the start is forgotten."""
    states = Downsets(task, mask)
    source = random.Random(_below(rng, 1 << 64))
    order = None
    for _ in range(200):
        if (drawn := _draw_once(states, source)) is not None:
            order = drawn[0]
            break
    if order is None:
        raise UnitFileError("no correct order was found", mend="look at the any_of rules and holds")
    count = len(order)
    choices = [c for c in task.choices if mask >> c.step & 1]
    # Changing two neighbours matters to a choice only if it speaks of just these two.
    touchy = {frozenset(pair) for c in choices for option in c.options for pair in option}
    after = task.after
    # Above 150 steps the chain is cut off: a start from a quick order is forgotten only in part.
    for _ in range(min(math.ceil(count**3 * math.log(count)), 15_000_000)):
        k = int(source.random() * 2 * (count - 1))
        if k >= count - 1:
            continue
        i, j = order[k], order[k + 1]
        if after[i] >> j & 1:
            continue
        order[k], order[k + 1] = j, i
        if touchy and frozenset((i, j)) in touchy and not _keeps(choices, order, len(task.steps)):
            order[k], order[k + 1] = i, j
    return order


def _keeps(choices, order: list[int], count: int) -> bool:
    place = [count] * count
    for position, i in enumerate(order):
        place[i] = position
    return all(choice.kept(place) for choice in choices)


def _below(rng, n: int) -> int:
    """A whole number below n from a stream of readings or from random.Random."""
    return rng.integer(n) if hasattr(rng, "integer") else rng.randrange(n)
