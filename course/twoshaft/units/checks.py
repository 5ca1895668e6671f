"""Structural checks of a unit: everything that can be found wrong without a physical model.

Names are checked first; what is said about the order relies on them.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping
from difflib import get_close_matches
from typing import TYPE_CHECKING, Any

from twoshaft.units.findings import Finding
from twoshaft.units.sections.order import OperationKind, RuleKind
from twoshaft.units.unit import Unit

if TYPE_CHECKING:
    import networkx as nx

MOST_CHOICES = 12
LISTS = (
    *("parts", "tools", "consumables", "stages", "operations"),
    *("rules", "holds", "clocks", "waits"),
)
LOSABLE = "parts or consumables"
REFERENCES = {
    "operations": {
        "stage": "stages",
        "parts": "parts",
        "tools": "tools",
        "consumables": "consumables",
    },
    "rules": {
        "earlier": "operations",
        "any_of": "operations",
        "not_during": "holds",
        "later": "operations",
        "loses": LOSABLE,
    },
    "holds": {"given_by": "operations", "ended_by": "operations", "needed_by": "operations"},
    "clocks": {"starts": "operations", "ends": "operations", "loses": LOSABLE},
    "waits": {"starts": "operations", "ends": "operations"},
    "together": {"operations": "operations"},
}
GOES_IN = (OperationKind.FIT, OperationKind.TRIAL)
LOOKS = (OperationKind.CHECK, OperationKind.MEASURE, OperationKind.TRIAL)


def check_unit(unit: Unit) -> tuple[Finding, ...]:
    """Everything that is wrong with the structure of a unit; empty if nothing is.

    Parameters
    ----------
    unit : Unit
        A unit that fits the schema.
    """
    # each group relies on the ones before it having found nothing
    for group in (
        (doubled_ids,),
        (unknown_ids,),
        (
            group_overlaps,
            sides_within_groups,
            needless_entries,
            part_lives,
            blind_rules,
            losses,
            holds,
        ),
        (too_many_choices,),
        (impossible_orders,),
        (clocks, waits),
    ):
        findings = [finding for check in group for finding in check(unit)]
        if findings:
            return tuple(findings)
    return ()


# names


def doubled_ids(unit: Unit) -> Iterator[Finding]:
    """Ids that stand twice in their section, and groups named like an operation."""
    for section in (*LISTS, "together"):
        counted = Counter(entry.id for entry in getattr(unit, section))
        for identifier, times in counted.items():
            if times > 1:
                yield Finding(
                    unit.where(section, identifier),
                    f"'{identifier}' stands {times} times in {section}",
                    "give each entry an id of its own",
                )
    for group in unit.together:
        if group.id in unit.operation_by_id:
            yield Finding(
                unit.where("together", group.id),
                f"the group '{group.id}' has the id of an operation",
                "give the group an id of its own",
            )


def unknown_ids(unit: Unit) -> Iterator[Finding]:
    """Ids that are used but nowhere defined."""
    known = {section: [entry.id for entry in getattr(unit, section)] for section in LISTS}
    known[LOSABLE] = known["parts"] + known["consumables"]
    for section, entry, field, kind, identifiers in _references(unit):
        for identifier in identifiers:
            if identifier in known[kind]:
                continue
            near = get_close_matches(identifier, known[kind], n=1)
            yield Finding(
                unit.where(section, entry, field, identifier),
                f"'{field.replace('_', ' ')}' of '{entry}' names '{identifier}', "
                f"which is not in {kind}",
                f"did you mean '{near[0]}'?" if near else f"add it to {kind} or correct the id",
            )


def _references(unit: Unit) -> Iterator[tuple[str, str, str, str, tuple[str, ...]]]:
    """Yield section, entry, field, the section that the ids should be in, and the ids."""
    for section, fields in REFERENCES.items():
        for entry in getattr(unit, section):
            for field, kind in fields.items():
                value = getattr(entry, field)
                identifiers = (value,) if isinstance(value, str) else value or ()
                yield section, entry.id, field, kind, identifiers


# entries taken one by one


def needless_entries(unit: Unit) -> Iterator[Finding]:
    """Entries that nothing uses: operations without any tie, empty stages, idle tools."""
    tied: set[str] = set()
    for section, _, _, kind, identifiers in _references(unit):
        if kind == "operations" and section != "together":
            tied.update(identifiers)
    for group in unit.together:
        if tied.intersection(group.operations):
            tied.update(group.operations)
    for operation in unit.operations:
        if operation.id not in tied:
            yield Finding(
                unit.where("operations", operation.id),
                f"nothing needs '{operation.id}' and it needs nothing",
                "add the rule that ties it into the order, or remove it",
            )
    for stage, operations in unit.operations_of.items():
        if not operations:
            yield Finding(
                unit.where("stages", stage),
                f"no operation belongs to the stage '{stage}'",
                "give it operations or remove it",
            )
    for section in ("tools", "consumables"):
        used = {identifier for op in unit.operations for identifier in getattr(op, section)}
        for entry in getattr(unit, section):
            if entry.id not in used:
                yield Finding(
                    unit.where(section, entry.id),
                    f"no operation uses '{entry.id}'",
                    f"name it under {section} of an operation, or remove it",
                )


def part_lives(unit: Unit) -> Iterator[Finding]:
    """Parts never fitted, single-use parts used twice, parts fitted twice over."""
    goes_in: dict[str, list[str]] = defaultdict(list)
    comes_out: Counter[str] = Counter()
    ends_up_in: set[str] = set()
    for operation in unit.operations:
        for part in operation.parts:
            if operation.kind in GOES_IN:
                goes_in[part].append(operation.id)
            if operation.kind is OperationKind.FIT:
                ends_up_in.add(part)
            if operation.kind is OperationKind.REMOVE:
                comes_out[part] += 1
    for entry in unit.parts:
        places = goes_in[entry.id]
        if entry.id not in ends_up_in and not entry.in_place:
            yield Finding(
                unit.where("parts", entry.id),
                f"the part '{entry.id}' is never fitted",
                "name it in an operation of kind fit, say 'in place: true', or remove it",
            )
        elif len(places) > 1 and entry.single_use:
            yield Finding(
                unit.where("operations", places[1], "parts", entry.id),
                f"'{entry.id}' can be used only once but goes in twice, "
                f"in '{places[0]}' and in '{places[1]}'",
                "make the trial with another part of its own id, or drop one of the two",
            )
        elif len(places) - comes_out[entry.id] > 1:
            yield Finding(
                unit.where("operations", places[1], "parts", entry.id),
                f"'{entry.id}' goes in in '{places[0]}' and again in '{places[1]}', "
                "and is not taken out in between",
                "add the operation of kind remove, or drop one of the two",
            )


def blind_rules(unit: Unit) -> Iterator[Finding]:
    """Rules of kind blinds in which nothing is looked at."""
    for rule in unit.rules:
        if rule.kind is not RuleKind.BLINDS:
            continue
        sides = [rule.later, *rule.any_of, *([rule.earlier] if rule.earlier else [])]
        if not any(unit.operation_by_id[side].kind in LOOKS for side in sides):
            yield Finding(
                unit.where("rules", rule.id, "kind"),
                f"the rule '{rule.id}' is of kind blinds, but none of its operations is a check, "
                "a measurement or a trial",
                "choose another kind, or correct the kind of the operation",
            )


def losses(unit: Unit) -> Iterator[Finding]:
    """Rules of kind harms that harm nothing, and others that claim to."""
    for rule in unit.rules:
        if rule.kind is RuleKind.HARMS and not (rule.loses or rule.safety):
            yield Finding(
                unit.where("rules", rule.id),
                f"the rule '{rule.id}' is of kind harms but does not say what is damaged",
                "name it under 'loses'",
            )
        if rule.kind is not RuleKind.HARMS and rule.loses:
            yield Finding(
                unit.where("rules", rule.id, "loses"),
                f"the rule '{rule.id}' is of kind {rule.kind}, but only harms has 'loses'",
                "remove it or change the kind",
            )


def holds(unit: Unit) -> Iterator[Finding]:
    """Holds whose giver, ender and needers are confused."""
    for hold in unit.holds:
        for operation in hold.needed_by:
            if operation in hold.given_by:
                yield Finding(
                    unit.where("holds", hold.id, "needed_by", operation),
                    f"'{operation}' needs the hold '{hold.id}' that it gives itself",
                    "let another operation give it, or drop it from 'needed by'",
                )
        for operation in hold.ended_by:
            if operation in hold.given_by:
                yield Finding(
                    unit.where("holds", hold.id, "ended_by", operation),
                    f"'{operation}' both gives and ends the hold '{hold.id}'",
                    "make two operations of it",
                )
        for group in unit.together:
            ends = [operation for operation in hold.ended_by if operation in group.operations]
            gives = [operation for operation in hold.given_by if operation in group.operations]
            if gives and ends and gives != ends:
                yield Finding(
                    unit.where("holds", hold.id, "ended_by", ends[0]),
                    f"the group '{group.id}' gives the hold '{hold.id}' with '{gives[0]}' and "
                    f"ends it with '{ends[0]}', though all of it goes in as one",
                    "take one of the two out of the group",
                )


# groups


def group_overlaps(unit: Unit) -> Iterator[Finding]:
    """Operations that belong to two groups."""
    group_of: dict[str, str] = {}
    for group in unit.together:
        for operation in group.operations:
            if operation in group_of:
                yield Finding(
                    unit.where("together", group.id, "operations", operation),
                    f"'{operation}' belongs to '{group_of[operation]}' and to '{group.id}'",
                    "join the two groups, or leave it in one only",
                )
            group_of.setdefault(operation, group.id)


def sides_within_groups(unit: Unit) -> Iterator[Finding]:
    """Rules, holds, clocks and waits with both ends in the same group."""
    from twoshaft.units.precedence import certain_bonds

    said: set[tuple[str, str]] = set()
    for bond in certain_bonds(unit):
        if bond.earlier == bond.later and (bond.section, bond.entry) not in said:
            said.add((bond.section, bond.entry))
            yield Finding(
                unit.where(bond.section, bond.entry),
                f"'{bond.entry}' orders two operations of the group '{bond.later}', "
                "which go in as one",
                "take one of them out of the group, or remove the entry",
            )


# the order as a whole


def too_many_choices(unit: Unit) -> Iterator[Finding]:
    """More either-or's than an exact search can judge."""
    from twoshaft.units.precedence import choices, search_size

    size = search_size(unit)
    if size > MOST_CHOICES:
        last = choices(unit)[-1]
        yield Finding(
            unit.where(last.section, last.entry),
            f"the unit leaves {size} choices open ('any of', 'not during', holds with several "
            f"givers or enders), more than the {MOST_CHOICES} that can be judged exactly",
            "make some of them plain rules",
        )


def impossible_orders(unit: Unit) -> Iterator[Finding]:
    """Rules that no order can keep: loops, two-way `cannot`, groups split by a step."""
    from twoshaft.units.conflicts import conflicts

    yield from conflicts(unit)


def _order_by_rules(unit: Unit, steps: Mapping[str, str]) -> nx.DiGraph[Any]:
    """Which step comes before which, by what is no clock and no wait itself."""
    import networkx as nx

    from twoshaft.units.precedence import certain_bonds

    bonds = [bond for bond in certain_bonds(unit) if bond.section not in ("clocks", "waits")]
    graph: nx.DiGraph[Any] = nx.DiGraph((bond.earlier, bond.later) for bond in bonds)
    graph.add_nodes_from(steps.values())
    return graph


def clocks(unit: Unit) -> Iterator[Finding]:
    """Clocks that run out in every correct order."""
    import networkx as nx

    from twoshaft.units.precedence import step_of

    if not unit.clocks:
        return
    steps = step_of(unit)
    minutes: dict[str, float] = defaultdict(float)
    for operation in unit.operations:
        minutes[steps[operation.id]] += operation.minutes_do
    graph = _order_by_rules(unit, steps)
    for clock in unit.clocks:
        start, end = steps[clock.starts], steps[clock.ends]
        if not nx.has_path(graph, start, end):
            yield Finding(
                unit.where("clocks", clock.id),
                f"the clock '{clock.id}' starts with '{start}', but no rule says that '{end}' "
                "comes after it",
                "add the rule with its reason",
            )
            continue
        between = nx.descendants(graph, start) & nx.ancestors(graph, end)
        least = sum(minutes[step] for step in between) + minutes[end]
        if least > clock.minutes:
            names = ", ".join(f"'{step}'" for step in sorted(between)) or "nothing"
            yield Finding(
                unit.where("clocks", clock.id, "minutes"),
                f"the clock '{clock.id}' allows {clock.minutes:g} minutes, but '{end}' cannot be "
                f"done within less than {least:g} (between the two must come {names})",
                "allow more time, shorten the operations, or start the clock later",
            )


def waits(unit: Unit) -> Iterator[Finding]:
    """Waits whose end no rule puts behind their start, or that a clock leaves no time for."""
    import networkx as nx

    from twoshaft.units.precedence import step_of

    if not unit.waits:
        return
    steps = step_of(unit)
    graph = _order_by_rules(unit, steps)

    def not_after(start: str, end: str) -> bool:
        return start == end or nx.has_path(graph, start, end)

    for wait in unit.waits:
        start, end = steps[wait.starts], steps[wait.ends]
        if not nx.has_path(graph, start, end):
            yield Finding(
                unit.where("waits", wait.id),
                f"the wait '{wait.id}' begins with '{start}', but no rule says that '{end}' "
                "comes after it",
                "add the rule with its reason",
            )
            continue
        for clock in unit.clocks:
            around = not_after(steps[clock.starts], start) and not_after(end, steps[clock.ends])
            if around and clock.minutes < wait.minutes:
                yield Finding(
                    unit.where("waits", wait.id, "minutes"),
                    f"the wait '{wait.id}' takes {wait.minutes:g} minutes, but the clock "
                    f"'{clock.id}' around it allows {clock.minutes:g}",
                    "shorten the wait, or end the clock before it",
                )
