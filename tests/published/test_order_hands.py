"""The shortest time with many hands against networkx's longest path."""

import networkx as nx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft.models.order import OrderTask, needs_directly, with_many_hands
from twoshaft.units import load_unit


def longest(task, takes):
    """Length of the longest chain: each step's minutes on the edge that leads out of it."""
    graph = nx.DiGraph()
    graph.add_nodes_from(task.steps)
    for first, second in task.pairs:
        graph.add_edge(first, second, weight=takes[first])
    for step in task.steps:
        graph.add_edge(step, "end", weight=takes[step])
    return nx.dag_longest_path_length(graph, weight="weight")


@given(st.data())
def test_the_shortest_time_is_the_longest_chain(make_unit, data):
    """Source: networkx 3.6, dag_longest_path_length; the critical path method, Kelley and
    Walker 1959 (from memory): a step has no time to spare when it lies on a longest chain.
    """
    count = data.draw(st.integers(1, 9))
    pairs = [(i, j) for j in range(count) for i in range(j) if data.draw(st.booleans())]
    task = OrderTask.from_unit(make_unit(count, pairs))
    takes = {step: data.draw(st.integers(0, 20)) for step in task.steps}
    plan = with_many_hands(task, takes)
    assert plan.minutes == longest(task, takes)
    for step, spare in plan.spare.items():
        late = {**takes, step: takes[step] + spare}
        assert with_many_hands(task, late).minutes == plan.minutes
        later = {**takes, step: takes[step] + spare + 1}
        assert with_many_hands(task, later).minutes == plan.minutes + 1


def test_direct_needs_are_the_transitive_reduction():
    """Source: networkx 3.6, transitive_reduction."""
    task = OrderTask.from_unit(load_unit("tarnbeck-b5"))
    reduced = nx.transitive_reduction(nx.DiGraph(task.pairs))
    direct = {(need, step) for step, needs in needs_directly(task).items() for need in needs}
    assert direct == set(reduced.edges)


def test_on_the_shipped_unit():
    """Source: networkx 3.6, dag_longest_path_length."""
    task = OrderTask.from_unit(load_unit("tarnbeck-b5"))
    takes = dict(zip(task.steps, task.minutes_do, strict=True))
    plan = with_many_hands(task)
    assert plan.minutes == pytest.approx(longest(task, takes))
    assert plan.alone == pytest.approx(sum(takes.values()))
