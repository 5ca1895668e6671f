"""The order model against networkx, an independent implementation, and scipy's Kendall tau."""

import itertools
import random

import networkx as nx
import pytest

from twoshaft.models.order import OrderTask, count_orders, plan_slip, ready_steps
from twoshaft.models.order.cover import broken_masks, smallest_cover_size


def random_pairs(source, count, density):
    return [(i, j) for i in range(count) for j in range(i + 1, count) if source.random() < density]


@pytest.fixture(params=range(8))
def drawn(request, make_unit):
    source = random.Random(request.param)
    count = source.randint(4, 8)
    pairs = random_pairs(source, count, 0.3)
    graph = nx.DiGraph(pairs)
    graph.add_nodes_from(range(count))
    task = OrderTask.from_unit(make_unit(count, pairs))
    return source, task, graph


def test_closure_is_that_of_networkx(drawn):
    """Source: networkx 3.6, transitive_closure_dag."""
    _, task, graph = drawn
    closed = nx.transitive_closure_dag(graph)
    pairs = {(task.steps[i], task.steps[j]) for i, j in closed.edges}
    assert task.pairs == pairs


def test_count_is_that_of_all_topological_sorts(drawn):
    """Source: networkx 3.6, all_topological_sorts."""
    _, task, graph = drawn
    assert count_orders(task).value == sum(1 for _ in nx.all_topological_sorts(graph))


def test_correct_orders_are_those_of_networkx(drawn):
    """Source: networkx 3.6, all_topological_sorts."""
    _, task, graph = drawn
    correct = set(map(tuple, nx.all_topological_sorts(graph)))
    for order in itertools.islice(itertools.permutations(range(len(task.steps))), 0, 5000, 7):
        size = plan_slip(task, [task.steps[i] for i in order]).size
        assert (size == 0) == (order in correct)


def test_slip_is_the_hopcroft_karp_matching_of_the_broken_pairs(drawn):
    """Source: networkx 3.6, hopcroft_karp_matching; König's theorem 1931: as large as the
    smallest cover.
    """
    source, task, graph = drawn
    closed = nx.transitive_closure_dag(graph)
    for _ in range(20):
        order = list(range(len(task.steps)))
        source.shuffle(order)
        place = {step: k for k, step in enumerate(order)}
        split = nx.Graph()
        left = [("left", i) for i in order]
        split.add_nodes_from(left)
        split.add_nodes_from(("right", i) for i in order)
        split.add_edges_from(
            (("left", i), ("right", j)) for i, j in closed.edges if place[j] < place[i]
        )
        matching = nx.bipartite.hopcroft_karp_matching(split, left)
        assert plan_slip(task, [task.steps[i] for i in order]).size == len(matching) // 2


def test_kept_steps_are_the_largest_antichain(drawn):
    """Source: Dilworth 1950: a smallest cover leaves a largest antichain of the broken pairs;
    antichains by networkx 3.6.
    """
    source, task, graph = drawn
    closed = nx.transitive_closure_dag(graph)
    order = list(range(len(task.steps)))
    source.shuffle(order)
    place = {step: k for k, step in enumerate(order)}
    broken = nx.DiGraph((i, j) for i, j in closed.edges if place[j] < place[i])
    broken.add_nodes_from(order)
    widest = max(len(chain) for chain in nx.antichains(broken))
    assert plan_slip(task, [task.steps[i] for i in order]).size == len(order) - widest


def test_boolean_lattice_of_three(make_unit):
    """Source: networkx 3.6, run here: the lattice B3 has 12 covers, width 3 and longest chains
    of 4 elements.
    """
    pairs = [(s, s | 1 << k) for s in range(8) for k in range(3) if not s >> k & 1]
    task = OrderTask.from_unit(make_unit(8, pairs))
    graph = nx.DiGraph(pairs)
    assert nx.transitive_reduction(graph).number_of_edges() == len(task.bonds) == 12
    reverse = broken_masks(range(7, -1, -1), task.after)
    assert 8 - smallest_cover_size(reverse) == max(map(len, nx.antichains(graph))) == 3
    assert nx.dag_longest_path_length(graph) == 3


def test_ready_steps_are_the_sources_of_what_is_left(drawn):
    """Source: networkx 3.6, in_degree of the subgraph that is left."""
    _, task, graph = drawn
    order = next(nx.all_topological_sorts(graph))
    for cut in range(len(order) + 1):
        left = graph.subgraph(order[cut:])
        sources = {task.steps[i] for i in left if not left.in_degree(i)}
        assert set(ready_steps(task, [task.steps[i] for i in order[:cut]])) == sources


@pytest.mark.parametrize("order", [[2, 3, 0, 1, 4], [4, 3, 2, 1, 0], [0, 1, 2, 3, 4]])
def test_broken_pairs_of_a_chain_are_kendalls_discordant_pairs(make_unit, order):
    """Source: scipy 1.17, scipy.stats.kendalltau; [1 2 3 4 5] against [3 4 1 2 5] gives 0.2."""
    from scipy.stats import kendalltau  # a second to load, in every worker that collects

    task = OrderTask.from_unit(make_unit(5, list(itertools.pairwise(range(5)))))
    broken = sum(mask.bit_count() for mask in broken_masks(order, task.after))
    place = [order.index(i) for i in range(5)]
    tau = kendalltau(range(5), place).statistic
    assert 1 - 2 * broken / 10 == pytest.approx(tau, abs=1e-6)
