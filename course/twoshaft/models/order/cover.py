"""The fewest steps that touch every broken pair.

The broken pairs of a submitted order (a before b by the rules, b before a in the order) are
themselves a partial order: whatever breaks (a, b) and (b, c) breaks (a, c). The steps that can
stay are an antichain of it, and the largest antichain is found by a maximum matching in its
bipartite split (Dilworth 1950; König 1931; the weighted form by maximum flow), in polynomial
time. References from memory.
"""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.order.masks import bits


def broken_masks(sequence: Sequence[int], after: Sequence[int]) -> list[int]:
    """By step number: the steps that wrongly stand before it in ``sequence``.

    Examples
    --------
    >>> broken_masks([1, 0], after=[0b10, 0])  # 1 stands before 0 and should come after it
    [2, 0]
    """
    masks, seen = [0] * len(after), 0
    for i in sequence:
        masks[i] = after[i] & seen
        seen |= 1 << i
    return masks


def smallest_cover_size(broken: Sequence[int]) -> int:
    """Size of the smallest set of steps that touches every broken pair.

    Parameters
    ----------
    broken : sequence of int
        Bit masks of a transitive relation, as from :func:`broken_masks`.

    Examples
    --------
    >>> smallest_cover_size([0b110, 0, 0])  # 1 and 2 wrongly before 0: move 0
    1
    """
    return len(_matched(broken))


def chains(broken: Sequence[int]) -> list[int]:
    """The steps in the fewest chains, those of two steps and more, as bit masks.

    In a chain every two steps are a broken pair, so a cover has all of a chain but one. The
    smallest cover has no more than that: what it has after some steps are taken out is at least
    what the rest of the chains asks for.

    Examples
    --------
    >>> [bin(mask) for mask in chains([0b110, 0b100, 0, 0])]
    ['0b111']
    """
    found: list[int] = []
    above = _matched(broken)  # by step: the one above it in its chain
    below = {i: j for j, i in above.items()}
    for j in below.keys() - above.keys():
        mask = 1 << j
        while j in below:
            j = below[j]
            mask |= 1 << j
        found.append(mask)
    return sorted(found)


def _matched(broken: Sequence[int]) -> dict[int, int]:
    """A largest matching of the split: by lower step, the step that it stands wrongly before."""
    partner: dict[int, int] = {}
    free = 0
    for mask in broken:
        free |= mask
    waiting = []
    for i, mask in enumerate(broken):
        if open_ends := mask & free:
            low = open_ends & -open_ends
            free ^= low
            partner[low.bit_length() - 1] = i
        elif mask:
            waiting.append(i)
    dead = 0
    for root in waiting:
        if not free:
            break
        came_from: dict[int, int] = {}
        back = {root: -1}
        seen, queue, found = dead, [root], -1
        for i in queue:
            fresh = broken[i] & ~seen
            if goal := fresh & free:
                found = (goal & -goal).bit_length() - 1
                came_from[found] = i
                break
            seen |= fresh
            for j in bits(fresh):
                came_from[j] = i
                back[partner[j]] = j
                queue.append(partner[j])
        if found < 0:
            dead = seen  # what a failed search saw leads nowhere for any later search
            continue
        free ^= 1 << found
        j = found
        while j >= 0:
            i = came_from[j]
            partner[j] = i
            j = back[i]
    return partner


def lightest_cover(broken: Sequence[int], weights: Sequence[int]) -> int:
    """The cover of least total weight, as a bit mask.

    Parameters
    ----------
    broken : sequence of int
        Bit masks of a transitive relation.
    weights : sequence of int
        Whole positive weights of any size. Where no two covers weigh the same, the answer is
        unique.

    Examples
    --------
    >>> bin(lightest_cover([0b110, 0, 0], weights=[3, 1, 1]))  # moving 1 and 2 weighs less
    '0b110'
    """
    count = len(broken)
    left = [weights[i] if broken[i] else 0 for i in range(count)]
    right = list(weights)
    flow: list[dict[int, int]] = [{} for _ in range(count)]  # flow[j][i]: from i into j
    dead = 0
    roots = [i for i in range(count) if broken[i]]
    for root in roots:
        while left[root]:
            came_from: dict[int, int] = {}
            back: dict[int, int] = {root: -1}
            seen, queue, found = dead, [root], -1
            for i in queue:
                fresh = broken[i] & ~seen
                seen |= fresh
                for j in bits(fresh):
                    came_from[j] = i
                    if right[j]:
                        found = j
                        break
                    for k in flow[j]:
                        if k not in back:
                            back[k] = j
                            queue.append(k)
                if found >= 0:
                    break
            if found < 0:
                dead = seen
                break
            amount, j = min(left[root], right[found]), found
            while True:
                i = came_from[j]
                if back[i] < 0:
                    break
                j = back[i]
                amount = min(amount, flow[j][i])
            left[root] -= amount
            right[found] -= amount
            j = found
            while True:
                i = came_from[j]
                flow[j][i] = flow[j].get(i, 0) + amount
                j = back[i]
                if j < 0:
                    break
                flow[j][i] -= amount
                if not flow[j][i]:
                    del flow[j][i]
    reached_right, seen_left = 0, 0
    queue = [i for i in roots if left[i]]
    for i in queue:
        seen_left |= 1 << i
    for i in queue:
        fresh = broken[i] & ~reached_right
        reached_right |= fresh
        for j in bits(fresh):
            for k in flow[j]:
                if not seen_left >> k & 1:
                    seen_left |= 1 << k
                    queue.append(k)
    cover = reached_right
    for i in roots:
        if not seen_left >> i & 1:
            cover |= 1 << i
    return cover
