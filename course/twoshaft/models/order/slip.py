"""The plan slip: how far an order is from a correct one, which alone sets the mark.

The slip is the fewest steps to pull out of the order and put back to make it correct (the redo
set). What the same order would cost at the bench is another question: see ``replay``.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate
from operator import or_

from twoshaft.models.order.cover import broken_masks, chains, lightest_cover, smallest_cover_size
from twoshaft.models.order.masks import bits, with_pairs
from twoshaft.models.order.task import Block, OrderTask, Reason
from twoshaft.models.order.times import times
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

MOST_WAYS = 64
"""So many ways to keep the choices are all looked at; among more they are searched."""

MOST_LOOKS = 40
"""So many ways to move blocks as one are worked out; an order that would need more is so far off
that its mark is 0 in any case, and the best way found stands."""

Cost = tuple[int, int, tuple[int, ...]]
"""Steps pulled out, their minutes, and their ranks by id."""


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

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-bore-plug"])
    >>> slip = plan_slip(task, ["fit-bore-plug"])
    >>> slip.size, slip.missing
    (1, ('wash-housing',))
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

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-bore-plug"])
    >>> found = sort_out(task, ["wash-housing", "wash-housing", "drink-tea"])
    >>> found.missing, found.doubled, found.foreign
    ([1], {0: 1}, ['drink-tea'])
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
    """Clocks of an order of step numbers that run out, as reasons.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> late_clocks(task, range(len(task.steps)))
    ()
    """
    finished = times(task, order).finished if task.clocks else {}
    return tuple(
        clock.reason
        for clock in task.clocks
        if clock.starts in finished
        and clock.ends in finished
        and finished[clock.ends] - finished[clock.starts] > clock.minutes + 1e-9
    )


def places(count: int, sequence: Sequence[int]) -> list[int]:
    """Position by step number; steps not in the sequence stand after all others, alike.

    Examples
    --------
    >>> places(3, [2, 0])
    [1, 3, 0]
    """
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
    provided that nothing has to come between its steps. A step of its own that stands apart from
    it, or in a wrong place within it, is pulled out by itself and listed in ``redo``. Where more
    than half of the steps would have to be pulled out one by one, only blocks that stand together
    as they are count as such.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-bore-plug"])
    >>> slip = plan_slip(task, ["fit-bore-plug", "wash-housing"])
    >>> slip.size, slip.redo
    (1, ('fit-bore-plug',))
    """
    return _plan_slip(task, tuple(sequence))


@kept(most=16)
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
    """The slip of a complete order of step numbers: the size alone, fast.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-bore-plug"])
    >>> slip_size(task, [0, 1]), slip_size(task, [1, 0])
    (0, 1)
    """
    if not task.choices and not task.blocks:
        return smallest_cover_size(broken_masks(order, task.after))
    return _Search(task, order, None).best()[0][0]


def quick_slip(task: OrderTask, sequence: Iterable[str]) -> int:
    """The slip of a complete order with every step moved by itself, at the price of one matching.

    Named blocks moved as one, and rules that can be kept in several ways, are left out of account:
    good for comparing orders with each other, not for marking them.

    Examples
    --------
    >>> from twoshaft.models.order import model_order
    >>> task = OrderTask.from_unit(unit)
    >>> right = model_order(task)
    >>> quick_slip(task, right), quick_slip(task, [*right[1:], right[0]])
    (0, 1)
    """
    return smallest_cover_size(broken_masks([task.number[s] for s in sequence], task.after))


def broken_reasons(task: OrderTask, order: Sequence[int]) -> tuple[Reason, ...]:
    """Every rule broken by an order of step numbers (first places; the undone come last).

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-bore-plug"])
    >>> [(reason.earlier, reason.later) for reason in broken_reasons(task, [1, 0])]
    [(('wash-housing',), 'fit-bore-plug')]
    """
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
    """The least cover over the ways to keep each choice and over the blocks moved as one."""

    def __init__(self, task: OrderTask, order: Sequence[int], weights: _Weights | None) -> None:
        self.task, self.order, self.weights = task, order, weights
        self.place = places(len(task.steps), order)

    def best(self) -> tuple[Cost, tuple[Block, ...]]:
        """Least (count, minutes, ranks by id) and the blocks moved as one."""
        best = self._least(())
        assert best is not None  # a task whose rules no order keeps is not compiled
        self.found, self.moved, self.looks = best, tuple[Block, ...](), 0
        if best[0] > 1 and self.task.movable:
            self._move(self._candidates(best[0]), (), 0, 0)
        return self.found, self.moved

    def _candidates(self, size: int) -> list[list[tuple[Block, int, int]]]:
        """By block: what can be pulled out so that it stands together, and what that and moving
        it can save at most."""
        self.chains = chains(broken_masks(self.order, self.task.after))
        chained = 0
        for chain in self.chains:
            chained |= chain
        far = 2 * size > len(self.order)
        # What the chains do not account for: the choices, kept in the cheapest way.
        slack = size - sum(chain.bit_count() - 1 for chain in self.chains)
        found = []
        for block, steps in self.task.movable:
            ways = []
            for pulled in self._gathered(block, steps, 0 if far else size - 2):
                # A step saves one at most when pulled out, and nothing where it breaks nothing.
                idle = (pulled & ~chained).bit_count()
                saves = (block.mask & chained & ~pulled).bit_count() - 1 - idle
                if saves > -slack:
                    ways.append((block, pulled, saves))
            if ways:
                found.append(sorted(ways, key=lambda way: (-way[2], way[1])))
        return found

    def _move(
        self,
        open_blocks: list[list[tuple[Block, int, int]]],
        chosen: tuple[Block, ...],
        moved_steps: int,
        pulled: int,
    ) -> None:
        """Try further blocks beside those chosen; keeps the least cost found."""
        hope = sum(max(0, ways[0][2]) for ways in open_blocks)
        for k, ways in enumerate(open_blocks):
            for block, more, _ in ways:
                if self.looks >= MOST_LOOKS:
                    return
                out, inside = pulled | more, moved_steps | block.mask
                cost = len(chosen) + 1 + out.bit_count()
                gone = out | inside
                least = cost  # and what the rest of every chain asks for; looked at most often here
                for chain in self.chains:
                    if rest := chain & ~gone:
                        least += rest.bit_count() - 1
                if least - (hope - max(0, ways[0][2])) >= self._limit:
                    continue
                self.looks += 1
                blocks = (*chosen, block)
                if least < self._limit:
                    self._look(blocks, inside, out)
                self._move(open_blocks[k + 1 :], blocks, inside, out)
            hope -= max(0, ways[0][2])

    @property
    def _limit(self) -> int:
        """Of the same size, one with fewer minutes may still be found."""
        return self.found[0] + (self.weights is not None)

    def _look(self, blocks: tuple[Block, ...], moved_steps: int, pulled: int) -> None:
        """Work out what it costs to move these blocks with these steps pulled out."""
        whole = self.order
        self.order = [i for i in whole if not pulled >> i & 1]
        rest = self.found[0] - pulled.bit_count() - len(blocks)
        cost = self._least(tuple(block.mask for block in blocks), rest)
        self.order = whole
        if cost is not None:
            cost = self._plus(cost, pulled, moved_steps, len(blocks))
            if cost < self.found:
                self.found, self.moved = cost, blocks

    def _gathered(self, block: Block, steps: tuple[int, ...], most: int) -> Iterator[int]:
        """What to pull out so that a block stands together, ``most`` steps at most: its own that
        stand apart, and what stands between the others."""
        at = sorted(self.place[i] for i in steps)
        if at[-1] == len(self.place):
            return
        for i, first in enumerate(at):
            for j in range(i + 1, len(at)):
                apart = i + len(at) - 1 - j
                if apart + at[j] - first - (j - i) <= most:
                    yield block.mask ^ self._up_to[at[j] + 1] ^ self._up_to[first]

    @cached_property
    def _up_to(self) -> list[int]:
        """The steps that stand before each place of the order."""
        return list(accumulate((1 << i for i in self.order), or_, initial=0))

    def _plus(self, cost: Cost, pulled: int, inside: int, blocks: int) -> Cost:
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

    def _least(self, blocks: tuple[int, ...], wanted: int | None = None) -> Cost | None:
        """Least cost over the ways to keep every choice; None when there is no way, or where only
        the size counts and is plainly not less than what is wanted."""
        task = self.task
        options = tuple(choice.options for choice in task.choices)
        ways = _ways(task.unit, task.before, task.after, options, blocks)
        if ways is None:
            return self._searched(blocks)
        if self.weights is None:
            size = self._least_size(ways, blocks, wanted)
            return None if size is None else (size, 0, ())
        broken = [broken_masks(self.order, after) for after in ways]
        sizes = [smallest_cover_size(masks) for masks in broken]
        if not sizes:
            return None
        least = min(sizes)
        return min(self._cost(b) for b, size in zip(broken, sizes, strict=True) if size == least)

    def _least_size(
        self, ways: tuple[tuple[int, ...], ...], blocks: tuple[int, ...], wanted: int | None
    ) -> int | None:
        """Size of the least cover over the ways. What no choice asks for is part of every way:
        a way that costs no more than that is not beaten, and where that is too much all are."""
        task, least = self.task, None
        common = _common(task.unit, task.before, task.after, blocks)
        floor = 0 if common is None else smallest_cover_size(broken_masks(self.order, common))
        if wanted is not None and floor >= wanted:
            return None
        if common is not None and not task.choices:
            return floor  # there is one way, and nothing else that it could ask for
        for after in ways:
            size = smallest_cover_size(broken_masks(self.order, after))
            if least is None or size < least:
                least = size
            if least <= floor:
                break
        return least

    def _cost(self, broken: list[int]) -> Cost:
        if self.weights is None:
            return smallest_cover_size(broken), 0, ()
        cover = list(bits(lightest_cover(broken, self.weights.weights))) if any(broken) else []
        return (
            len(cover),
            sum(self.weights.minutes[i] for i in cover),
            tuple(sorted(self.weights.rank[i] for i in cover)),
        )

    def _searched(self, blocks: tuple[int, ...]) -> Cost | None:
        """As :meth:`_least`, where there are too many ways to look at each.

        More order never makes a cover cheaper, so the cover with some choices still open is a
        bound.
        """
        joined = _joined(self.task.before, self.task.after, blocks)
        if joined is None:
            return None
        before, after = joined
        place = self.place

        def broken_by(after: Sequence[int]) -> list[int]:
            return broken_masks(self.order, _apart(after, blocks))

        ranked = [
            sorted(c.options, key=lambda option: any(place[i] >= place[j] for i, j in option))
            for c in self.task.choices
        ]
        # First those the order breaks: they raise the bound soonest.
        ranked.sort(key=lambda options: all(place[i] < place[j] for i, j in options[0]))
        best = None
        first = [pair for options in ranked for pair in options[0]]
        kept_first = _kept_whole(before, after, first, blocks)
        if kept_first is not None:
            best = self._cost(broken_by(kept_first[1]))
        if not self._beats(broken_by(after), best):
            return best

        def descend(depth: int, before: Sequence[int], after: Sequence[int]) -> None:
            nonlocal best
            for option in ranked[depth]:
                more = _kept_whole(before, after, option, blocks)
                if more is None:
                    continue
                broken = broken_by(more[1])
                if not self._beats(broken, best):
                    continue
                if depth + 1 < len(ranked):
                    descend(depth + 1, *more)
                else:
                    best = self._cost(broken)

        descend(0, before, after)
        return best

    def _beats(self, broken: list[int], best: Cost | None) -> bool:
        """Whether the cover may be, or lead to, less than the best one; sizes are quick to find."""
        if best is None:
            return True
        size = smallest_cover_size(broken)
        return size < best[0] or (size == best[0] and self._cost(broken) < best)


@kept(most=2048)
def _ways(
    unit: Unit,
    before: tuple[int, ...],
    after: tuple[int, ...],
    choices: tuple[tuple[tuple[tuple[int, int], ...], ...], ...],
    blocks: tuple[int, ...],
) -> tuple[tuple[int, ...], ...] | None:
    """The ways to keep every choice, each as what comes after each step; None when too many.

    The same for everybody who orders these steps, so the unit keeps it. A way that asks for all
    that another asks for, and more, is never the cheaper one and is left out. Blocks (masks) are
    moved as one: what binds their steps to others is no longer the order's to break.
    """
    joined = _joined(before, after, blocks)
    if joined is None:
        return ()
    ways = [(list(joined[0]), list(joined[1]))]
    for options in choices:
        more = [_kept_whole(*way, option, blocks) for way in ways for option in options]
        ways = [way for way in more if way is not None]
        if len(ways) > MOST_WAYS:
            return None
        ways = [ways[k] for k in _leanest([after for _, after in ways])]
    apart = [_apart(after, blocks) for _, after in ways]
    return tuple(tuple(apart[k]) for k in _leanest(apart))


@kept(most=2048)
def _common(
    unit: Unit, before: tuple[int, ...], after: tuple[int, ...], blocks: tuple[int, ...]
) -> tuple[int, ...] | None:
    """What comes after each step however the choices are kept, with blocks moved as one."""
    joined = _joined(before, after, blocks)
    return None if joined is None else tuple(_apart(joined[1], blocks))


def _leanest(afters: Sequence[Sequence[int]]) -> list[int]:
    """Numbers of those that ask for no more than needed: no other one is part of them."""

    def is_part(one: Sequence[int], other: Sequence[int]) -> bool:
        return not any(a & ~b for a, b in zip(one, other, strict=True))

    return [
        k
        for k, after in enumerate(afters)
        if not any(
            is_part(other, after) and (m < k or not is_part(after, other))
            for m, other in enumerate(afters)
            if m != k
        )
    ]


def _apart(after: Sequence[int], blocks: tuple[int, ...]) -> list[int]:
    """What comes after each step, within its own block, or outside all of them."""
    outside = ~0
    own: dict[int, int] = {}
    for mask in blocks:
        outside &= ~mask
        own |= dict.fromkeys(bits(mask), mask)
    return [mask & own.get(i, outside) for i, mask in enumerate(after)]


def _kept_whole(
    before: Sequence[int],
    after: Sequence[int],
    pairs: Iterable[tuple[int, int]],
    blocks: tuple[int, ...],
) -> tuple[list[int], list[int]] | None:
    """A closure with pairs added; None when circular, or when a block would be parted."""
    more = with_pairs(before, after, pairs)
    return _joined(*more, blocks) if more and blocks else more


def _joined(
    before: Sequence[int], after: Sequence[int], blocks: tuple[int, ...]
) -> tuple[list[int], list[int]] | None:
    """Closure with each block as one step; None when something has to come between."""
    before, after = list(before), list(after)
    for block in blocks:
        low = high = 0
        for i in bits(block):
            low |= before[i]
            high |= after[i]
        low, high = low & ~block, high & ~block
        if low & high:
            return None
        for i in bits(low):
            after[i] |= high | block
        for i in bits(high):
            before[i] |= low | block
        for i in bits(block):
            before[i] |= low
            after[i] |= high
    return before, after
