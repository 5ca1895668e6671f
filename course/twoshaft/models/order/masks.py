"""Partial orders as bit masks: ``before[i]`` and ``after[i]`` hold all steps before, after i."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence


def bits(mask: int) -> Iterator[int]:
    """Numbers of the set bits, lowest first.

    Examples
    --------
    >>> list(bits(0b1011))
    [0, 1, 3]
    """
    while mask:
        low = mask & -mask
        yield low.bit_length() - 1
        mask ^= low


def with_pairs(
    before: Sequence[int], after: Sequence[int], pairs: Iterable[tuple[int, int]]
) -> tuple[list[int], list[int]] | None:
    """A closure with pairs added, or None when one of them closes a circle.

    Examples
    --------
    >>> before, after = closure(3, [(0, 1)])
    >>> with_pairs(before, after, [(1, 2)])
    ([0, 1, 3], [6, 4, 0])
    >>> with_pairs(before, after, [(1, 0)]) is None  # a circle
    True
    """
    before, after = list(before), list(after)
    for i, j in pairs:
        if after[i] >> j & 1:
            continue
        if i == j or after[j] >> i & 1:
            return None
        low, high = before[i] | 1 << i, after[j] | 1 << j
        for k in bits(low):
            after[k] |= high
        for k in bits(high):
            before[k] |= low
    return before, after


def closure(count: int, pairs: Iterable[tuple[int, int]]) -> tuple[list[int], list[int]] | None:
    """Transitive closure (before, after) of pairs on ``count`` steps; None when circular.

    Examples
    --------
    >>> closure(3, [(0, 1), (1, 2)])
    ([0, 1, 3], [6, 4, 0])
    """
    direct_after, waits = [0] * count, [0] * count
    for i, j in pairs:
        if not direct_after[i] >> j & 1:
            direct_after[i] |= 1 << j
            waits[j] += 1
    order = [i for i in range(count) if not waits[i]]
    for i in order:
        for j in bits(direct_after[i]):
            waits[j] -= 1
            if not waits[j]:
                order.append(j)
    if len(order) < count:
        return None
    before, after = [0] * count, [0] * count
    for i in order:
        for j in bits(direct_after[i]):
            before[j] |= before[i] | 1 << i
    for i in reversed(order):
        for j in bits(direct_after[i]):
            after[i] |= after[j] | 1 << j
    return before, after
