"""How fast shift, gear train and faults answer; ratios within one run, no time is asserted."""

import subprocess
import sys
import time

import networkx as nx
import numpy as np
import pytest

from twoshaft.models import faults
from twoshaft.models.geartrain import count_turns, freedom
from twoshaft.models.geartrain.motion import _null_space
from twoshaft.models.shift import mechanism, prove_by_hand, reach, with_misbuilds
from twoshaft.models.shift.mechanism import mechanism as _mechanism
from twoshaft.units import load_unit

pytestmark = pytest.mark.bench


def best(call, repeats=5):
    """Shortest of some runs [s]."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        call()
        times.append(time.perf_counter() - start)
    return min(times)


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


@pytest.mark.parametrize("misbuild", ["", "lockout-spring-missing", "interlock-pins-missing"])
def test_search_against_networkx(unit, misbuild):
    """Our search against shortest paths of networkx on the same states, once they are a graph."""
    machine = mechanism(with_misbuilds(unit.shift, [misbuild] if misbuild else []))
    starts = machine.starts()
    found = reach(machine)

    def as_graph():
        graph = nx.DiGraph()
        graph.add_edges_from(("start", s) for s in starts)
        graph.add_edges_from((s, t) for s in found.came_from for t in machine.next_states(s))
        return graph

    graph = as_graph()
    lengths = nx.single_source_shortest_path_length(graph, "start")
    assert set(lengths) - {"start"} == set(found.came_from)
    ours = best(lambda: reach(machine))
    search = best(lambda: nx.single_source_shortest_path_length(graph, "start"))
    both = search + best(as_graph, 3)
    print(
        f"\nreach, {misbuild or 'as it should be'}: {ours * 1e3:.0f} ms for "
        f"{len(found.came_from)} states, {ours / both:.2f} times networkx with the graph to make, "
        f"{ours / search:.1f} times networkx on the ready graph"
    )


def test_building_and_proving(unit):
    start = time.perf_counter()
    mechanism(unit.shift, 0.5)
    first = time.perf_counter() - start
    machine = mechanism(unit.shift, 0.5)
    search = best(lambda: reach(machine))
    build = best(lambda: _mechanism.__wrapped__(unit.shift, 0.5), 3)
    proof = best(lambda: prove_by_hand(machine), 3)
    print(
        f"\ntables of a new mechanism: {build / search:.1f} searches ({first * 1e3:.0f} ms first); "
        f"the whole proof by hand: {proof / search:.1f} searches of {search * 1e3:.0f} ms"
    )


def test_gear_train_against_a_dense_rank(unit):
    """Exact fractions against the rank that numpy finds in floats."""
    train = unit.gear_train
    bodies, space = _null_space(train, ("third",), ())
    matrix = np.array([[float(x) for x in row] for row in space])
    dense = best(lambda: np.linalg.matrix_rank(matrix), 20)
    for name, call in (
        ("freedom, two gears", lambda: freedom(train, ("second", "fifth"))),
        ("count of turns", lambda: count_turns(train, "third", 5, "both outputs, averaged")),
    ):
        seconds = best(call, 20)
        print(f"\n{name}: {seconds * 1e3:.2f} ms, {seconds / dense:.0f} times a rank in floats")
    assert len(bodies) == matrix.shape[1]


def test_fault_search(unit):
    """The first call fills the table; then every answer is a look into it."""
    start = time.perf_counter()
    table = faults.outcome_table(unit)
    first = time.perf_counter() - start
    seen = {"prove-lockout": "lockout-fails-fifth-reverse"}
    explained = best(lambda: faults.explain(unit, seen), 20)
    ranked = best(lambda: faults.next_check(unit, seen), 20)
    alike = best(lambda: faults.indistinguishable(unit), 20)
    single = best(lambda: [table.outcomes[c][table.codes[0, c]] for c in range(12)], 20)
    print(
        f"\ntable of {len(table.sets)} sets and {len(table.checks)} checks: {first:.1f} s; then "
        f"explain {explained * 1e3:.2f} ms, next check {ranked * 1e3:.2f} ms, alike "
        f"{alike * 1e3:.2f} ms: {explained / single:.0f}, {ranked / single:.0f} and "
        f"{alike / single:.0f} times reading one row"
    )


def test_importing_the_models():
    """`import twoshaft.models` and each model, against a bare Python with numpy."""

    def run(code):
        return best(lambda: subprocess.run([sys.executable, "-c", code], check=True), 4)

    bare = run("import numpy")
    names = ["twoshaft.models", *(f"twoshaft.models.{m}" for m in ("order", "joint", "faults"))]
    for name in names:
        seconds = run(f"import {name}")
        print(
            f"\nimport {name}: {seconds / bare:.1f} times a bare Python with numpy, "
            f"{(seconds - run('pass')) * 1e3:.0f} ms over a bare Python"
        )
