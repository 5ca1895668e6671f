"""The sets of steps that can be done at some moment of a build, and the ways to go on from each.

One state is one whole number: the steps done so far, and above them one bit for every way of
keeping a rule with a choice that is still open.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from twoshaft.models.order.masks import bits
from twoshaft.models.order.task import OrderTask


class TooManyStates(Exception):
    """The budget of states is used up."""


class Downsets:
    """States of a part of a task.

    Parameters
    ----------
    task : OrderTask
        The task.
    part : int
        Bit mask of its steps that are looked at; no choice may cross its border.

    Examples
    --------
    >>> states = whole(OrderTask.from_unit(unit, ["wash-housing", "fit-magnet"]))
    >>> bin(states.first_ready())
    '0b1'
    """

    def __init__(self, task: OrderTask, part: int) -> None:
        self.part = part
        self.members = list(bits(part))
        self.before = [mask & part for mask in task.before]
        self.next = [self._covers(task.after, i, part) for i in range(len(task.steps))]
        self.weight = [(task.after[i] & part).bit_count() + 1 for i in range(len(task.steps))]
        count = len(task.steps)
        self.kills: dict[int, list[tuple[int, int]]] = {i: [] for i in self.members}
        self.groups: list[tuple[int, int]] = []
        bit = 1 << count
        for choice in task.choices:
            if not part >> choice.step & 1:
                continue
            group, seconds = 0, 0
            for option in choice.options:
                for first, second in option:
                    self.kills[second].append((1 << first, bit))
                    seconds |= 1 << second
                group |= bit
                bit <<= 1
            self.groups.append((group, seconds))
        self.chosen = sum(1 << i for i, killed in self.kills.items() if killed)
        self.start = sum(group for group, _ in self.groups)
        self.done_mask = (1 << count) - 1

    @staticmethod
    def _covers(after: Sequence[int], i: int, part: int) -> int:
        direct = after[i] & part
        for j in bits(direct):
            direct &= ~after[j]
        return direct

    def first_ready(self) -> int:
        """Steps that can be done first."""
        return sum(1 << i for i in self.members if not self.before[i])

    def ready_after(self, done: int, ready: int, i: int) -> int:
        """Ready steps once ``i`` is done as well."""
        done |= 1 << i
        ready &= ~(1 << i)
        for j in bits(self.next[i]):
            if not self.before[j] & ~done:
                ready |= 1 << j
        return ready

    def step(self, state: int, i: int) -> int | None:
        """State after doing ``i``; None when that breaks the last way to keep a choice."""
        for need, bit in self.kills[i]:
            if not state & need:
                state &= ~bit
        state |= 1 << i
        for group, seconds in self.groups:
            if not state & group:
                return None
            if not seconds & ~state:
                state |= group  # settled: how it was kept no longer matters
        return state

    def possible(self, state: int, ready: int) -> int:
        """Ready steps that leave a way to keep every choice; only steps of a choice can break one.

        Examples
        --------
        >>> states = whole(OrderTask.from_unit(unit, ["wash-housing", "fit-magnet"]))
        >>> bin(states.possible(states.start, 0b1))
        '0b1'
        """
        for i in bits(ready & self.chosen):
            if self.step(state, i) is None:
                ready ^= 1 << i
        return ready

    def after(self, state: int, i: int) -> int:
        """State after doing ``i``, which is known to be possible."""
        new = self.step(state, i)
        assert new is not None
        return new

    def completions(self, budget: int) -> dict[int, int]:
        """Ways to go on from every state that can be reached.

        Raises
        ------
        TooManyStates
            When there are more than ``budget`` states.
        """
        level = {self.start: self.first_ready()}
        levels, total = [level], 1
        for _ in self.members:
            following: dict[int, int] = {}
            for state, ready in level.items():
                for i in bits(ready):
                    new = self.step(state, i)
                    if new is not None and new not in following:
                        following[new] = self.ready_after(state & self.done_mask, ready, i)
                total_now = total + len(following)
                if total_now > budget:
                    raise TooManyStates
            total += len(following)
            levels.append(following)
            level = following
        ways = dict.fromkeys(level, 1)
        for level in reversed(levels[:-1]):
            for state, ready in level.items():
                ways[state] = sum(
                    ways.get(new, 0)
                    for i in bits(ready)
                    if (new := self.step(state, i)) is not None
                )
        return ways


@lru_cache(maxsize=64)
def whole(task: OrderTask) -> Downsets:
    """The states of a whole task.

    Examples
    --------
    >>> states = whole(OrderTask.from_unit(unit, ["wash-housing", "fit-magnet"]))
    >>> states.completions(budget=100)[0]  # one order only
    1
    """
    return Downsets(task, (1 << len(task.steps)) - 1)
