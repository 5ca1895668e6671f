"""Time to judge an order, beside networkx in the same run. Prints ratios, asserts no time."""

import random
import time

import networkx as nx
import pytest

from twoshaft.models.order import OrderTask, mark, plan_slip, replay, zero_mark_slip

pytestmark = pytest.mark.bench


def best_of(repeats, work):
    times = []
    for _ in range(repeats):
        begin = time.perf_counter()
        work()
        times.append(time.perf_counter() - begin)
    return min(times)


def sparse_pairs(count, source):
    """About twice as many rules as steps, each reaching a little way ahead."""
    return [
        (i, j)
        for i in range(count)
        for j in range(i + 1, min(count, i + 14))
        if source.random() < 0.15
    ]


@pytest.mark.parametrize("count", [60, 500])
@pytest.mark.parametrize("kind", ["random", "nearly right"])
def test_judging_an_order(make_unit, count, kind, capsys):
    source = random.Random(count)
    pairs = sparse_pairs(count, source)
    unit = make_unit(count, pairs, stages=8, minutes=(1, 2.5, 0.5))
    task = OrderTask.from_unit(unit)
    begin = time.perf_counter()
    r0 = zero_mark_slip(task)  # found once for a task
    once = time.perf_counter() - begin
    order = list(range(count))
    if kind == "random":
        source.shuffle(order)
    else:
        for _ in range(7):
            order.insert(source.randrange(count), order.pop(source.randrange(count)))
    names = [task.steps[i] for i in order]

    def ours():
        plan_slip(task, names)
        mark(task, names)
        replay(task, names)

    sizes = []

    def theirs():
        # The size of the redo set alone.
        closed = nx.transitive_closure_dag(nx.DiGraph(pairs))
        place = {i: k for k, i in enumerate(order)}
        split = nx.Graph()
        split.add_nodes_from(("left", i) for i in order)
        split.add_edges_from(
            (("left", i), ("right", j)) for i, j in closed.edges if place[j] < place[i]
        )
        matching = nx.bipartite.hopcroft_karp_matching(split, [("left", i) for i in order])
        sizes.append(len(matching) // 2)

    mine, peer = best_of(5, ours), best_of(2, theirs)
    slip = plan_slip(task, names)
    # Blocks moved as one can only make the slip smaller.
    assert slip.size <= sizes[0]
    if not slip.blocks:
        assert slip.size == sizes[0]
    with capsys.disabled():
        print(
            f"\n{count} steps, {kind} (slip {slip.size}, r0 {r0:g} found once in {1000 * once:.0f} ms): "
            f"slip, mark and replay {1000 * mine:.2f} ms; "
            f"networkx, size of the slip alone {1000 * peer:.2f} ms; ratio {peer / mine:.1f}"
        )
