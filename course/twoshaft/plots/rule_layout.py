"""Where the steps stand in the picture of the rules."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from twoshaft.models.order.task import OrderTask, Reason


@dataclass(frozen=True)
class RuleLayout:
    """Where the steps stand in the picture of the rules.

    Attributes
    ----------
    layers : tuple of tuple of int
        Step numbers by layer, from the first to the last; within a layer from top to bottom.
    height : dict of int to float
        Vertical place of each step, in rows.
    edges : tuple of (int, int, Reason)
        Rules that no chain of other rules makes needless.
    routes : dict of (int, int) to tuple of (layer, row)
        Points each edge runs through.
    """

    layers: tuple[tuple[int, ...], ...]
    height: dict[int, float]
    edges: tuple[tuple[int, int, Reason], ...]
    routes: dict[tuple[int, int], tuple[tuple[int, float], ...]]

    @property
    def rows(self) -> float:
        """Rows needed."""
        values = [row for route in self.routes.values() for _, row in route]
        return max([*values, *self.height.values()], default=0.0) + 1


def drawn_rules(task: OrderTask) -> tuple[tuple[int, int, Reason], ...]:
    """The rules that no chain of others makes needless, one for each pair of steps."""
    kept: dict[tuple[int, int], Reason] = {}
    for bond in task.bonds:
        i, j = bond.earlier, bond.later
        if task.directly(i, j):
            kept.setdefault((i, j), bond.reason)
    return tuple((i, j, reason) for (i, j), reason in kept.items())


def rule_layout(task: OrderTask) -> RuleLayout:
    """Place the steps of a task in layers with few crossings.

    Parameters
    ----------
    task : OrderTask
        The task.

    Returns
    -------
    RuleLayout
        Layers by the longest chain of rules; order within a layer by barycentres (Sugiyama,
        Tagawa and Toda 1981), keeping the arrangement with the fewest crossings met.
    """
    edges = drawn_rules(task)
    layer = _layers(task, edges)
    chains, above, below = _chains(edges, layer)
    ranks: list[list] = [[] for _ in range(max(layer.values(), default=0) + 1)]
    for i in range(len(task.steps)):
        ranks[layer[i]].append(i)
    for points in chains.values():
        for depth, point in points[1:-1]:
            ranks[depth].append(point)
    ranks = _uncrossed(ranks, above, below)
    height = _heights(ranks, above, below)
    routes = {
        pair: tuple((depth, height[point]) for depth, point in points)
        for pair, points in chains.items()
    }
    steps = {i: height[i] for i in range(len(task.steps))}
    layers = tuple(tuple(p for p in rank if isinstance(p, int)) for rank in ranks)
    return RuleLayout(layers, steps, edges, routes)


def _layers(task: OrderTask, edges) -> dict[int, int]:
    count = len(task.steps)
    order = sorted(range(count), key=lambda i: task.before[i].bit_count())
    into: dict[int, list[int]] = {i: [] for i in range(count)}
    out: dict[int, list[int]] = {i: [] for i in range(count)}
    for i, j, _ in edges:
        into[j].append(i)
        out[i].append(j)
    layer: dict[int, int] = {}
    for i in order:
        layer[i] = 1 + max((layer[k] for k in into[i]), default=-1)
    for i in reversed(order):  # what has more after it than before it stands close to what follows
        if len(out[i]) > len(into[i]):
            layer[i] = min(layer[k] for k in out[i]) - 1
    return layer


def _chains(edges, layer):
    """Edges as chains of points, one in each layer; neighbours of every point."""
    chains, above, below = {}, {}, {}
    for i, j, _ in edges:
        points = [(layer[i], i)]
        points += [(depth, (i, j, depth)) for depth in range(layer[i] + 1, layer[j])]
        points.append((layer[j], j))
        chains[i, j] = points
        for (_, p), (_, q) in pairwise(points):
            above.setdefault(q, []).append(p)
            below.setdefault(p, []).append(q)
    return chains, above, below


def _uncrossed(ranks, above, below):
    best, fewest = [list(rank) for rank in ranks], None
    for sweep in range(16):
        downwards = sweep % 2 == 0
        line = ranks if downwards else ranks[::-1]
        near = above if downwards else below
        for fixed, moved in pairwise(line):
            place = {point: k for k, point in enumerate(fixed)}
            own = {point: k for k, point in enumerate(moved)}

            def centre(point, place=place, own=own, near=near):
                spots = [place[p] for p in near.get(point, ()) if p in place]
                return sum(spots) / len(spots) if spots else own[point]

            moved.sort(key=centre)
        crossings = sum(_crossings(a, b, below) for a, b in pairwise(ranks))
        if fewest is None or crossings < fewest:
            best, fewest = [list(rank) for rank in ranks], crossings
    return best


def _crossings(upper, lower, below) -> int:
    place = {point: k for k, point in enumerate(lower)}
    ends = [sorted(place[q] for q in below.get(point, ()) if q in place) for point in upper]
    line = [spot for spots in ends for spot in spots]
    return sum(a > b for k, a in enumerate(line) for b in line[k + 1 :])


def _heights(ranks, above, below) -> dict:
    height = {point: float(k) for rank in ranks for k, point in enumerate(rank)}
    widest = max(map(len, ranks), default=0)
    for rank in ranks:
        for k, point in enumerate(rank):
            height[point] = k + (widest - len(rank)) / 2
    for sweep in range(12):
        for rank in ranks if sweep % 2 == 0 else ranks[::-1]:
            wanted = []
            for point in rank:
                near = [height[p] for p in (*above.get(point, ()), *below.get(point, ()))]
                wanted.append(sum(near) / len(near) if near else height[point])
            for point, spot in zip(rank, spread(wanted), strict=True):
                height[point] = spot
    low = min(height.values(), default=0.0)
    return {point: spot - low for point, spot in height.items()}


def spread(wanted: list[float]) -> list[float]:
    """The places nearest to the wanted ones (least squares) that are at least one row apart."""
    groups: list[list[float]] = []  # [sum, count] of wanted places less their rank
    for k, spot in enumerate(wanted):
        groups.append([spot - k, 1])
        while len(groups) > 1 and groups[-2][0] / groups[-2][1] > groups[-1][0] / groups[-1][1]:
            total, count = groups.pop()
            groups[-1][0] += total
            groups[-1][1] += count
    flat = [total / count for total, count in groups for _ in range(int(count))]
    return [spot + k for k, spot in enumerate(flat)]
