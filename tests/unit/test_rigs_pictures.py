"""The drawings of the order: checked against networkx, scipy and an XML parser."""

import random
import xml.etree.ElementTree as ET
from itertools import pairwise

import networkx as nx
import numpy as np
import pytest
from scipy.optimize import isotonic_regression

from twoshaft.models.order import OrderTask, model_order
from twoshaft.models.order.snapshot import snapshot
from twoshaft.models.shape import fitted_after
from twoshaft.plots.order import rule_figure, rule_sentences
from twoshaft.plots.rule_layout import drawn_rules, rule_layout, spread
from twoshaft.plots.unit_section import unit_figure
from twoshaft.rigs.build import BuildSimulator
from twoshaft.units import load_unit


@pytest.fixture(scope="module")
def task():
    return OrderTask.from_unit(load_unit("tarnbeck-b5"))


def graph_of(task):
    graph = nx.DiGraph((bond.earlier, bond.later) for bond in task.bonds)
    graph.add_nodes_from(range(len(task.steps)))
    return graph


def test_drawn_rules_are_the_transitive_reduction_of_networkx(task):
    expected = set(nx.transitive_reduction(graph_of(task)).edges)
    assert {(i, j) for i, j, _ in drawn_rules(task)} == expected


def test_layers_are_as_many_as_the_longest_chain_of_networkx(task):
    assert len(rule_layout(task).layers) == len(nx.dag_longest_path(graph_of(task)))


def test_every_step_stands_once_and_every_rule_points_onwards(task):
    layout = rule_layout(task)
    depth = {i: k for k, rank in enumerate(layout.layers) for i in rank}
    assert sorted(depth) == list(range(len(task.steps)))
    assert all(depth[i] < depth[j] for i, j, _ in layout.edges)
    for rank in layout.layers:
        rows = [layout.height[i] for i in rank]
        assert all(b - a >= 1 - 1e-9 for a, b in pairwise(rows))


def test_spread_is_the_least_squares_solution_of_scipy():
    rng = np.random.default_rng(5)
    for _ in range(50):
        wanted = rng.normal(0, 4, size=rng.integers(1, 12))
        ranks = np.arange(len(wanted))
        expected = isotonic_regression(wanted - ranks).x + ranks
        assert spread(list(wanted)) == pytest.approx(list(expected))


@pytest.mark.parametrize("heading", [True, False])
def test_rule_figures_are_well_formed_and_say_their_finding(task, heading):
    whole = ET.fromstring(rule_figure(task, heading=heading))
    names = {node.tag.split("}")[1] for node in whole.iter()}
    assert {"title", "desc"} <= names
    assert sum(node.get("class") == "tsf-step" for node in whole.iter()) == len(task.steps)
    for step in task.steps:
        ET.fromstring(rule_figure(task, step, heading=heading))
        assert rule_sentences(task, step)


def test_kinds_of_rule_differ_by_letter_and_dashes_not_colour_alone():
    from twoshaft.plots.drawing import LINES

    assert len({line.letter for line in LINES.values()}) == len(LINES)
    assert len({line.dashes for line in LINES.values()}) == len(LINES)


def test_names_with_marks_of_markup_do_not_break_a_figure(make_unit):
    unit = make_unit(3, [(0, 1)])
    odd = unit.operations[0].model_copy(update={"name": 'Fit <b>"A&B"</b>'})
    unit = unit.model_copy(update={"operations": (odd, *unit.operations[1:])})
    task = OrderTask.from_unit(unit)
    for figure in (
        rule_figure(task),
        rule_figure(task, "s01"),
        unit_figure(unit, 'A <b>"&'),
    ):
        ET.fromstring(figure)


def test_the_build_is_drawn_as_it_stands(task):
    """The parts of the steps done are fitted, those of the next one lit, whatever the order."""
    rng = random.Random(3)
    for _ in range(6):
        order = list(task.steps)
        rng.shuffle(order)
        rig = BuildSimulator(task, order)
        rig.hear({"type": "go", "position": rng.randrange(1, len(order))})
        looks = rig.view["build"]["looks"]
        bench = snapshot(task, order[: rig.position])
        inside = dict(zip(task.steps, task.members, strict=True))
        coming = inside[order[rig.position]]
        lit = {part for part, look in looks.items() if look == "lit"}
        fits = [op for op in coming if task.unit.operation_by_id[op].kind.value == "fit"]
        assert lit >= {part for op in fits for part in task.unit.operation_by_id[op].parts}
        there = fitted_after(task.unit, [op for step in bench.done for op in inside[step]])
        absent = {part for part, look in looks.items() if look == "absent"}
        assert absent.isdisjoint(there)
        assert absent | there | lit == {part.id for part in task.unit.parts}


def test_plain_copy_of_the_build_shows_it_in_section(task):
    rig = BuildSimulator(task, model_order(task))
    rig.hear({"type": "go", "position": 12})
    copy = rig.plain_copy()
    assert "tsu-absent" in copy and "<svg" in copy
    ET.fromstring(copy[copy.index("<svg") : copy.index("</svg>") + 6])
