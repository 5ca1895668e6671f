"""Steps that were moved in a list, and an order mended with few moves."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Iterator, Sequence
from heapq import heapify, heappop, heappush
from itertools import pairwise

from twoshaft.models.order.masks import bits
from twoshaft.models.order.slip import plan_slip, slip_size
from twoshaft.models.order.task import OrderTask


def moved(start: Sequence[str], order: Sequence[str]) -> int:
    """The fewest steps to pull out of a list and put back for it to become another.

    All but the longest run of steps that kept their order (patience sorting; Schensted 1961).

    Parameters
    ----------
    start, order : sequence of str
        The same steps, each once.

    Examples
    --------
    >>> moved("abcde", "bcdea"), moved("abcde", "abcde"), moved("abc", "cba")
    (1, 0, 2)
    """
    place = {step: k for k, step in enumerate(start)}
    ends: list[int] = []
    for step in order:
        k = bisect_left(ends, place[step])
        ends[k : k + 1] = [place[step]]
    return len(start) - len(ends)


def mended(task: OrderTask, order: Sequence[str]) -> tuple[str, ...]:
    """A correct order in which only the steps that stand wrong are moved, where that is enough.

    Parameters
    ----------
    task : OrderTask
    order : sequence of str
        All its steps, some of them out of place.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-magnet"])
    >>> mended(task, ["fit-magnet", "wash-housing"])
    ('wash-housing', 'fit-magnet')
    """
    slip = plan_slip(task, order)
    blocks = {block.id: block.mask for block in task.blocks}
    wrong = {task.number[step] for step in slip.redo}
    wrong |= {i for id in slip.blocks for i in bits(blocks[id])}
    place = {task.number[step]: k for k, step in enumerate(order)}
    before = {i: set(bits(task.before[i])) for i in place}
    for one, next_one in pairwise(sorted(set(place) - wrong, key=lambda i: place[i])):
        before[next_one].add(one)
    after: dict[int, set[int]] = {i: set() for i in place}
    for i, needs in before.items():
        for need in needs:
            after[need].add(i)
    ready = [(place[i], i) for i in place if not before[i]]
    heapify(ready)
    mended: list[int] = []
    while ready:
        _, i = heappop(ready)
        mended.append(i)
        for later in after[i]:
            before[later].discard(i)
            if not before[later]:
                heappush(ready, (place[later], later))
    return _in_time(task, _put_right(task, [task.steps[i] for i in mended]))


def _put_right(task: OrderTask, order: Sequence[str]) -> tuple[str, ...]:
    """What choices and holds still ask for: a step at a time to where fewest stand wrong."""
    for _ in order:
        slip = plan_slip(task, order)
        if not slip.redo:
            break
        order = min(
            _moved_to(order, slip.redo[0], range(len(order))),
            key=lambda way: slip_size(task, [task.number[step] for step in way]),
        )
    return tuple(order)


def _in_time(task: OrderTask, order: tuple[str, ...]) -> tuple[str, ...]:
    """Steps that start a clock which runs out, moved towards its end, where that mends it."""
    for _ in task.clocks:
        late = plan_slip(task, order).late
        if not late:
            break
        end = order.index(late[0].later)
        for way in _moved_to(order, late[0].earlier[0], range(end - 1, -1, -1)):
            slip = plan_slip(task, way)
            if not slip.size and len(slip.late) < len(late):
                order = way
                break
    return order


def _moved_to(order: Sequence[str], step: str, places: Iterable[int]) -> Iterator[tuple[str, ...]]:
    """The order with one step at each of some places."""
    rest = [one for one in order if one != step]
    for place in places:
        yield (*rest[:place], step, *rest[place:])
