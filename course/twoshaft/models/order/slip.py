"""The plan slip: how far an order is from a correct one, which alone sets the mark.

The slip is the fewest steps to pull out of the order and put back to make it correct (the redo
set). What the same order would cost at the bench is another question: see ``replay``.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations

from twoshaft.models.order.cover import broken_masks, lightest_cover, smallest_cover_size
from twoshaft.models.order.masks import bits, with_pairs
from twoshaft.models.order.task import Block, OrderTask, Reason


@dataclass(frozen=True)
class PlanSlip:
    """How an order differs from the nearest correct one.

    Attributes
    ----------
    size : int
        The slip: steps (or whole blocks) to pull out and put back, plus one for each step left
        out, each repeat and each step that does not belong.
    redo : tuple of str
        Steps to pull out and put back: of all smallest sets the one with the fewest minutes to
        do and undo, then the first by id.
    blocks : tuple of str
        Ids of named blocks to move as one; their steps are not in ``redo``.
    missing, doubled, foreign : tuple of str
        Steps left out, steps that stand more than once (all their places count as misplaced),
        and ids that are no step of the task.
    broken : tuple of Reason
        The rules broken, in the order of the sequence.
    late : tuple of Reason
        Clocks that run out when every step takes its minutes; they do not count in ``size``.
    """

    size: int
    redo: tuple[str, ...]
    blocks: tuple[str, ...]
    missing: tuple[str, ...]
    doubled: tuple[str, ...]
    foreign: tuple[str, ...]
    broken: tuple[Reason, ...]
    late: tuple[Reason, ...] = ()

    @property
    def broken_safety(self) -> tuple[Reason, ...]:
        """Broken rules, and clocks run out, that guard safety."""
        return tuple(reason for reason in (*self.broken, *self.late) if reason.safety)


@dataclass(frozen=True)
class _Sorted:
    """A submitted order, sorted out."""

    once: list[int]
    first: list[int]
    missing: list[int]
    doubled: dict[int, int]
    foreign: list[str]


def sort_out(task: OrderTask, sequence: Iterable[str]) -> _Sorted:
    """Split a submitted order into steps that stand once, repeats, gaps and foreign ids.

    An operation id of a group stands for its group.
    """
    first, foreign = [], []
    counts: Counter[int] = Counter()
    for key in sequence:
        step = task.step_of.get(key)
        if step is None:
            foreign.append(key)
            continue
        i = task.number[step]
        if not counts[i]:
            first.append(i)
        counts[i] += 1
    return _Sorted(
        once=[i for i in first if counts[i] == 1],
        first=first,
        missing=[i for i in range(len(task.steps)) if not counts[i]],
        doubled={i: n - 1 for i, n in counts.items() if n > 1},
        foreign=foreign,
    )


def late_clocks(task: OrderTask, order: Sequence[int]) -> tuple[Reason, ...]:
    """Clocks of an order of step numbers that run out, as reasons."""
    finished, now = {}, 0.0
    for i in order if task.clocks else ():
        now += task.minutes_do[i]
        finished[i] = now
    return tuple(
        clock.reason
        for clock in task.clocks
        if clock.starts in finished
        and clock.ends in finished
        and finished[clock.ends] - finished[clock.starts] > clock.minutes + 1e-9
    )


def places(count: int, sequence: Sequence[int]) -> list[int]:
    """Position by step number; steps not in the sequence stand after all others, alike."""
    place = [count] * count
    for position, i in enumerate(sequence):
        place[i] = position
    return place


def plan_slip(task: OrderTask, sequence: Iterable[str]) -> PlanSlip:
    """Compare an order with the nearest correct one.

    Parameters
    ----------
    task : OrderTask
        The task.
    sequence : iterable of str
        Step ids in the order submitted; nothing is required of it.

    Returns
    -------
    PlanSlip
        The slip; its ``size`` is 0 exactly for a complete correct order.

    Notes
    -----
    A rule that can be kept in several ways is judged in the way that costs least, by an exact
    search with bounds. A named block is complete and stands together when nothing stands between
    its steps but steps pulled out themselves; it can then be pulled out and put back as one,
    provided that nothing has to come between its steps. A step pulled out of its place within
    such a block is listed in ``redo``.
    """
    return _plan_slip(task, tuple(sequence))


@lru_cache(maxsize=128)
def _plan_slip(task: OrderTask, sequence: tuple[str, ...]) -> PlanSlip:
    """Mark, feedback and replay all ask for the slip of the same order."""
    found = sort_out(task, sequence)
    extra = len(found.missing) + sum(found.doubled.values()) + len(found.foreign)
    by_id = sorted(range(len(task.steps)), key=lambda i: task.steps[i])
    (size, _, ranks), blocks = _Search(task, found.once, _weights(task, by_id)).best()
    steps = task.steps
    return PlanSlip(
        size=size + extra,
        redo=tuple(steps[by_id[rank]] for rank in ranks),
        blocks=tuple(block.id for block in blocks),
        missing=tuple(steps[i] for i in found.missing),
        doubled=tuple(steps[i] for i in sorted(found.doubled)),
        foreign=tuple(found.foreign),
        broken=broken_reasons(task, found.first),
        late=late_clocks(task, found.first),
    )


def slip_size(task: OrderTask, order: Sequence[int]) -> int:
    """The slip of a complete order of step numbers: the size alone, fast."""
    if not task.choices and not task.blocks:
        return smallest_cover_size(broken_masks(order, task.after))
    return _Search(task, order, None).best()[0][0]


def quick_slip(task: OrderTask, sequence: Iterable[str]) -> int:
    """The slip of a complete order with every step moved by itself, at the price of one matching.

    Named blocks moved as one, and rules that can be kept in several ways, are left out of account:
    good for comparing orders with each other, not for marking them.
    """
    return smallest_cover_size(broken_masks([task.number[s] for s in sequence], task.after))


def broken_reasons(task: OrderTask, order: Sequence[int]) -> tuple[Reason, ...]:
    """Every rule broken by an order of step numbers (first places; the undone come last)."""
    place = places(len(task.steps), order)
    broken = [
        (place[bond.later], bond.reason)
        for bond in task.bonds
        if place[bond.later] < place[bond.earlier]
    ]
    broken += [
        (place[choice.step], choice.reason)
        for choice in task.choices
        if place[choice.step] < len(place) and not choice.kept(place)
    ]
    broken.sort(key=lambda pair: pair[0])
    return tuple(reason for _, reason in broken)


@dataclass(frozen=True)
class _Weights:
    """What decides between covers of the same size: minutes, then the first by id."""

    minutes: list[int]
    rank: list[int]
    weights: list[int]


def _weights(task: OrderTask, by_id: list[int]) -> _Weights:
    """Whole weights whose sums compare as (count, minutes, first by id)."""
    count = len(by_id)
    rank = [0] * count
    for k, i in enumerate(by_id):
        rank[i] = k
    minutes = [
        round(1000 * (do + undo))
        for do, undo in zip(task.minutes_do, task.minutes_undo, strict=True)
    ]
    id_unit = (count + 1) << count
    minute_unit = sum(minutes) + 1
    weights = [
        (minute_unit + minutes[i]) * id_unit + (1 << count) - (1 << (count - 1 - rank[i]))
        for i in range(count)
    ]
    return _Weights(minutes, rank, weights)


class _Search:
    """The least cover over the ways to keep each choice and over the blocks moved as one.

    More order never makes a cover cheaper, so the cover with some choices still open is a bound.
    """

    def __init__(self, task: OrderTask, order: Sequence[int], weights: _Weights | None) -> None:
        self.task, self.order, self.weights = task, order, weights
        self.place = places(len(task.steps), order)

    def best(self) -> tuple[tuple[int, int, tuple[int, ...]], tuple[Block, ...]]:
        """Least (count, minutes, ranks by id) and the blocks moved as one."""
        task, whole = self.task, self.order
        best = self._over_choices(task.before, task.after, None)
        moved: tuple[Block, ...] = ()
        movable = []
        for block in task.blocks if best[0] > 1 else ():
            between = self._between(block)
            # Pulling out what stands between must cost less than moving every step by itself.
            if between is not None and between.bit_count() + 1 < block.mask.bit_count():
                movable.append((block, between))
        for size in range(1, len(movable) + 1):
            if size >= best[0]:
                break
            for chosen in combinations(movable, size):
                blocks = tuple(block for block, _ in chosen)
                pulled = inside = 0
                for block, between in chosen:
                    pulled |= between
                    inside |= block.mask
                if pulled & inside or size + pulled.bit_count() >= best[0]:
                    continue
                joined = _joined(task.before, task.after, blocks)
                if joined is None:
                    continue
                self.order = [i for i in whole if not pulled >> i & 1]
                before, after = joined
                cost = self._over_choices(before, after, blocks)
                self.order = whole
                if cost is None:
                    continue
                cost = self._plus(cost, pulled, inside, size)
                if cost < best:
                    best, moved = cost, blocks
        return best, moved

    def _between(self, block: Block) -> int | None:
        """Other steps that stand between the steps of a block; None when one is not there."""
        at = [self.place[i] for i in bits(block.mask)]
        if max(at) >= len(self.place):
            return None
        between = 0
        for i in self.order[min(at) : max(at) + 1]:
            between |= 1 << i
        return between & ~block.mask

    def _plus(self, cost, pulled: int, inside: int, blocks: int):
        """A cost with steps pulled out beforehand and blocks moved as one added."""
        size = cost[0] + pulled.bit_count() + blocks
        if self.weights is None:
            return size, 0, ()
        minutes, rank = self.weights.minutes, self.weights.rank
        return (
            size,
            cost[1] + sum(minutes[i] for i in bits(pulled | inside)),
            tuple(sorted((*cost[2], *(rank[i] for i in bits(pulled))))),
        )

    def _broken(self, after: Sequence[int], blocks: tuple[Block, ...] | None) -> list[int]:
        broken = broken_masks(self.order, after)
        if blocks:
            outside = ~0
            for block in blocks:
                outside &= ~block.mask
                for i in bits(block.mask):
                    broken[i] &= block.mask
            for i in range(len(broken)):
                if outside >> i & 1:
                    broken[i] &= outside
        return broken

    def _cost(self, broken: list[int]) -> tuple[int, int, tuple[int, ...]]:
        if self.weights is None:
            return smallest_cover_size(broken), 0, ()
        cover = list(bits(lightest_cover(broken, self.weights.weights))) if any(broken) else []
        return (
            len(cover),
            sum(self.weights.minutes[i] for i in cover),
            tuple(sorted(self.weights.rank[i] for i in cover)),
        )

    def _beats(self, broken: list[int], best) -> bool:
        """Whether the cover may be, or lead to, less than the best one; sizes are quick to find."""
        if best is None:
            return True
        size = smallest_cover_size(broken)
        return size < best[0] or (size == best[0] and self._cost(broken) < best)

    def _over_choices(self, before, after, blocks):
        """Least cost over the ways to keep every choice; None when there is no way."""
        broken = self._broken(after, blocks)
        if not self.task.choices:
            return self._cost(broken)
        place = self.place
        ranked = [
            sorted(c.options, key=lambda option: any(place[i] >= place[j] for i, j in option))
            for c in self.task.choices
        ]
        # First those the order breaks: they raise the bound soonest.
        ranked.sort(key=lambda options: all(place[i] < place[j] for i, j in options[0]))
        best = None
        kept = with_pairs(before, after, (pair for options in ranked for pair in options[0]))
        if kept is not None:
            best = self._cost(self._broken(kept[1], blocks))
        if not self._beats(broken, best):
            return best

        def descend(depth: int, before, after) -> None:
            nonlocal best
            for option in ranked[depth]:
                more = with_pairs(before, after, option)
                if more is None:
                    continue
                broken = self._broken(more[1], blocks)
                if not self._beats(broken, best):
                    continue
                if depth + 1 < len(ranked):
                    descend(depth + 1, *more)
                else:
                    best = self._cost(broken)

        descend(0, before, after)
        return best


def _joined(before, after, blocks: tuple[Block, ...]):
    """Closure with each block as one step; None when something has to come between."""
    before, after = list(before), list(after)
    for block in blocks:
        low = high = 0
        for i in bits(block.mask):
            low |= before[i]
            high |= after[i]
        low, high = low & ~block.mask, high & ~block.mask
        if low & high:
            return None
        for i in bits(low):
            after[i] |= high | block.mask
        for i in bits(high):
            before[i] |= low | block.mask
        for i in bits(block.mask):
            before[i] |= low
            after[i] |= high
    return before, after
