"""Why no order can keep all the rules of a unit, said with the shortest loop of reasons."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import networkx as nx

from twoshaft.units.findings import Finding
from twoshaft.units.precedence import Bond, Choice, certain_bonds, choices
from twoshaft.units.sections.order import RuleKind
from twoshaft.units.unit import Unit


def conflicts(unit: Unit) -> Iterator[Finding]:
    """Findings about orders that cannot exist; none if a correct order exists."""
    bonds = list(certain_bonds(unit))
    pairs = list(_fitted_together(unit, bonds))
    if pairs:
        yield from pairs
        return
    loops = list(_loops(unit, bonds))
    if loops:
        yield from loops
        return
    bonds, dead_end = _follow(bonds, choices(unit))
    if dead_end is not None:
        yield _no_way_left(unit, bonds, dead_end)
        return
    loops = list(_loops(unit, bonds))
    if loops:
        yield from loops
        return
    open_choices = choices(unit)
    if not _solvable(_graph(bonds), open_choices):
        entries = sorted({f"'{choice.entry}'" for choice in open_choices})
        first = open_choices[0]
        yield Finding(
            unit.where(first.section, first.entry),
            f"no order satisfies all of {', '.join(entries)} at once",
            "drop or widen one of them",
        )


def _graph(bonds: Iterable[Bond]) -> nx.DiGraph[str]:
    """Steps joined by bonds; of several bonds between two steps the first is kept."""
    graph: nx.DiGraph[str] = nx.DiGraph()
    for bond in bonds:
        if not graph.has_edge(bond.earlier, bond.later):
            graph.add_edge(bond.earlier, bond.later, bond=bond)
    return graph


def _fitted_together(unit: Unit, bonds: list[Bond]) -> Iterator[Finding]:
    """Two steps that each cannot be done without the other."""
    impossible: dict[tuple[str, str], str] = {}
    for bond in bonds:
        if bond.section != "rules" or unit.rule_by_id[bond.entry].kind is not RuleKind.CANNOT:
            continue
        impossible[bond.earlier, bond.later] = bond.entry
        opposite = impossible.get((bond.later, bond.earlier))
        if opposite is not None:
            yield Finding(
                unit.where("rules", bond.entry),
                f"'{bond.earlier}' and '{bond.later}' each cannot be done without the other "
                f"(rules '{opposite}' and '{bond.entry}')",
                "are they fitted together? Then put both in one group under 'together'; "
                "otherwise remove one of the rules",
            )


def _loops(unit: Unit, bonds: list[Bond]) -> Iterator[Finding]:
    """The shortest loop in each knot of steps that wait for one another."""
    graph = _graph(bonds)
    groups = {group.id: group for group in unit.together}
    for knot in nx.strongly_connected_components(graph):
        if len(knot) < 2:
            continue
        loop = _shortest_loop(graph.subgraph(knot))
        around = [
            graph.edges[step, loop[(index + 1) % len(loop)]]["bond"]
            for index, step in enumerate(loop)
        ]
        where = unit.where(around[-1].section, around[-1].entry)
        told = "; ".join(
            f"'{bond.earlier}' before '{bond.later}' ({bond.entry}: {bond.reason.rstrip('.')})"
            for bond in around
        )
        split = [step for step in loop if step in groups and len(loop) > 1]
        between = [step for step in loop if step not in groups]
        if len(split) == 1 and between and _enters_elsewhere(unit, split[0], around):
            yield Finding(
                where,
                f"the group '{split[0]}' goes in as one, but {_listing(between)} must come "
                f"between its operations: {told}",
                "take an operation out of the group, or correct one of these entries",
            )
        else:
            yield Finding(
                where,
                f"{len(loop)} steps wait for one another: {told}",
                "remove or turn round one of these entries",
            )


def _shortest_loop(knot: nx.DiGraph) -> list[str]:
    """The shortest loop in a strongly connected graph; of several, the first by id."""
    best: list[str] | None = None
    for start in sorted(knot):
        distances = nx.single_source_shortest_path(knot, start)
        for before in sorted(knot.predecessors(start)):
            loop = distances[before]
            if best is None or len(loop) < len(best):
                best = loop
    assert best is not None
    return best


def _enters_elsewhere(unit: Unit, group: str, around: list[Bond]) -> bool:
    """Whether the loop leaves the group by one operation and comes back to another."""
    members = set(next(entry.operations for entry in unit.together if entry.id == group))
    out_of: set[str] = set()
    into: set[str] = set()
    for bond in around:
        if bond.section != "rules":
            continue
        rule = unit.rule_by_id[bond.entry]
        if bond.earlier == group and rule.earlier in members:
            out_of.add(rule.earlier)
        if bond.later == group and rule.later in members:
            into.add(rule.later)
    return bool(out_of and into) and out_of != into


def _listing(steps: list[str]) -> str:
    return " and ".join(f"'{step}'" for step in steps)


def _follow(
    bonds: list[Bond], open_choices: tuple[Choice, ...]
) -> tuple[list[Bond], Choice | None]:
    """Add what each choice makes certain once its other alternatives are ruled out.

    Returns the bonds, and the choice that has no alternative left, if there is one.
    """
    bonds, left = list(bonds), list(open_choices)
    changed = True
    while changed:
        changed = False
        graph = _graph(bonds)
        for choice in list(left):
            possible = [way for way in choice.alternatives if _fits(graph, way)]
            if not possible:
                return bonds, choice
            if len(possible) == 1:
                bonds += possible[0]
                left.remove(choice)
                graph = _graph(bonds)
                changed = True
    return bonds, None


def _fits(graph: nx.DiGraph, way: Iterable[Bond]) -> bool:
    """Whether the bonds of `way` go with the graph without closing a loop."""
    trial = graph.copy()
    for bond in way:
        if bond.earlier == bond.later:
            return False
        trial.add_edge(bond.earlier, bond.later, bond=bond)
    return nx.is_directed_acyclic_graph(trial)


def _no_way_left(unit: Unit, bonds: list[Bond], choice: Choice) -> Finding:
    graph = _graph(bonds)
    told = []
    for way in choice.alternatives:
        for bond in way:
            if bond.later in graph and bond.earlier in graph:
                try:
                    back = nx.shortest_path(graph, bond.later, bond.earlier)
                except nx.NetworkXNoPath:
                    continue
                steps = " then ".join(f"'{step}'" for step in back)
                told.append(f"{steps} is certain, so '{bond.earlier}' cannot come first")
                break
    reasons = "; ".join(dict.fromkeys(told)) or "its alternatives contradict one another"
    return Finding(
        unit.where(choice.section, choice.entry),
        f"'{choice.entry}' ({choice.reason.rstrip('.')}) leaves no way: {reasons}",
        "correct this entry or one of the rules on that way",
    )


def _solvable(graph: nx.DiGraph, left: tuple[Choice, ...]) -> bool:
    """Whether some way through all the choices leaves an order, by search."""
    if not left:
        return True
    choice, rest = left[0], left[1:]
    for way in choice.alternatives:
        if _fits(graph, way):
            trial = graph.copy()
            trial.add_edges_from((bond.earlier, bond.later) for bond in way)
            if _solvable(trial, rest):
                return True
    return False
