"""The order task: a unit's steps and everything that binds their order, compiled.

Steps are numbered; sets of steps are Python integers used as bit masks, which makes the
closure of sixty steps, and of five hundred, a matter of a few shifts.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import product

from twoshaft.errors import UnitFileError
from twoshaft.models.order.masks import bits, closure, with_pairs
from twoshaft.units.kept import kept
from twoshaft.units.sections.order import Hold, OperationKind, RuleKind
from twoshaft.units.unit import Unit

STANDS_IN_THE_WAY = (RuleKind.CANNOT, RuleKind.BURIES)
"""Kinds of rule through which a fitted step stands in the way of an earlier one."""


@dataclass(frozen=True)
class Reason:
    """Why one step comes before another, or not while a hold is on.

    Attributes
    ----------
    rules : tuple of str
        Ids of the rules (or the hold) behind it; several where steps between are left out.
    kind : RuleKind
        What happens the wrong way round.
    earlier : tuple of str
        The step that comes first; several when any one of them will do; empty for a step that
        has its place outside a hold.
    later : str
        The step that has to wait.
    text : str
        The reason in plain words.
    safety : bool
        Whether breaking it fails a must-pass outcome.
    loses : tuple of str
        Parts that do not survive the wrong order.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "warm-housing"])
    >>> reason = task.bonds[0].reason
    >>> str(reason.kind), reason.safety
    ('harms', True)
    >>> reason.text.partition(";")[0]
    'Old oil and solvent in the pockets give off vapour that can catch fire in the oven'
    """

    rules: tuple[str, ...]
    kind: RuleKind
    earlier: tuple[str, ...]
    later: str
    text: str
    safety: bool = False
    loses: tuple[str, ...] = ()


@dataclass(frozen=True)
class Bond:
    """Step number ``earlier`` comes before step number ``later``.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "warm-housing"])
    >>> [(task.steps[bond.earlier], task.steps[bond.later]) for bond in task.bonds]
    [('wash-housing', 'warm-housing')]
    """

    earlier: int
    later: int
    reason: Reason


@dataclass(frozen=True)
class Choice:
    """A rule that can be kept in several ways: any of several steps, or outside or inside a hold.

    ``step`` is the step the rule binds. Each option is a set of pairs (first, second); the rule
    is kept when in at least one option every ``first`` is done before its ``second``.
    ``givers`` and ``enders`` are those of the hold, if there is one.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> rule = task.choices[0]
    >>> rule.kept(range(len(task.steps))), task.steps[rule.step]
    (True, 'check-output-drag')
    """

    step: int
    options: tuple[tuple[tuple[int, int], ...], ...]
    reason: Reason
    givers: tuple[int, ...] = ()
    enders: tuple[int, ...] = ()

    def kept(self, place: Sequence[int]) -> bool:
        """Whether an order keeps it; ``place[i]`` is the position of step i (large if undone)."""
        return any(all(place[i] < place[j] for i, j in option) for option in self.options)


@dataclass(frozen=True)
class TaskClock:
    """A clock of the unit in step numbers.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> [(clock.id, clock.minutes) for clock in task.clocks][:2]
    [('housing-cools-output', 6.0), ('housing-cools-diff', 6.0)]
    """

    id: str
    name: str
    starts: int
    ends: int
    minutes: float
    reason: Reason

    @property
    def text(self) -> str:
        """Why the time is limited."""
        return self.reason.text

    @property
    def loses(self) -> tuple[str, ...]:
        """Parts that are lost when it runs out."""
        return self.reason.loses


@dataclass(frozen=True)
class TaskWait:
    """A wait of the unit in step numbers: a clock of "at least".

    Examples
    --------
    >>> [(wait.id, wait.minutes) for wait in OrderTask.from_unit(unit).waits]
    [('sealant-cures', 1440.0)]
    """

    id: str
    name: str
    starts: int
    ends: int
    minutes: float
    text: str


@dataclass(frozen=True)
class Block:
    """A named group of steps that can be moved as one.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> [block.id for block in task.blocks][:3]
    ['clutch-housing', 'differential', 'trial-fit']
    """

    id: str
    name: str
    mask: int


@dataclass(frozen=True, eq=False)
class OrderTask:
    """Steps to put in order, with the rules that bind them. Make one with :meth:`from_unit`.

    Attributes
    ----------
    unit : Unit
        The unit the task comes from.
    steps : tuple of str
        Step ids in the order of the unit file; a *together* group is one step.
    members : tuple of tuple of str
        The operations in each step.
    before, after : tuple of int
        Bit masks by step number: all that comes before, all that comes after (transitive).
    bonds : tuple of Bond
        The rules with one earlier step, and holds with one giver and one ender.
    choices : tuple of Choice
        The rules that can be kept in several ways.
    clocks : tuple of TaskClock
        Clocks whose two ends are in the task.
    waits : tuple of TaskWait
        Waits whose two ends are in the task.
    blocks : tuple of Block
        Named groups that count once when misplaced as one.
    start : tuple of str or None
        The order shown at first, which earns nothing.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-magnet"])
    >>> task.steps, task.minutes("wash-housing"), sorted(task.pairs)
    (('wash-housing', 'fit-magnet'), 12.0, [('wash-housing', 'fit-magnet')])
    """

    unit: Unit
    steps: tuple[str, ...]
    members: tuple[tuple[str, ...], ...]
    before: tuple[int, ...]
    after: tuple[int, ...]
    bonds: tuple[Bond, ...]
    choices: tuple[Choice, ...] = ()
    clocks: tuple[TaskClock, ...] = ()
    waits: tuple[TaskWait, ...] = ()
    blocks: tuple[Block, ...] = ()
    start: tuple[str, ...] | None = None

    @classmethod
    def from_unit(
        cls,
        unit: Unit,
        operations: Iterable[str] | None = None,
        *,
        start: Iterable[str] | None = None,
    ) -> OrderTask:
        """Compile the order of a unit, or of some of its operations.

        Order that runs through operations left out is kept. A rule of which too much is left
        out to judge it fairly (an ``any_of`` of which a missing alternative may already be done,
        a hold whose givers or enders are missing) is dropped: it could only charge a right order.

        Parameters
        ----------
        unit : Unit
            A unit.
        operations : iterable of str, optional
            Operation or group ids; all by default. A group comes in whole.
        start : iterable of str or of [id, name], optional
            The order shown at first; it will earn nothing.

        Raises
        ------
        UnitFileError
            When an id is unknown or the rules run in a circle.
        """
        task = _whole_task(unit) if operations is None else _part(unit, frozenset(operations))
        return task if start is None else task.starting_from(start)

    @cached_property
    def number(self) -> dict[str, int]:
        """Step number by step id."""
        return {step: i for i, step in enumerate(self.steps)}

    @cached_property
    def movable(self) -> tuple[tuple[Block, tuple[int, ...]], ...]:
        """Each block that moving as one may save, with its step numbers."""
        return tuple(
            (block, tuple(bits(block.mask))) for block in self.blocks if block.mask.bit_count() > 1
        )

    @cached_property
    def step_of(self) -> dict[str, str]:
        """Step id by operation id (and by step id)."""
        inside = {op: s for s, ops in zip(self.steps, self.members, strict=True) for op in ops}
        return inside | {step: step for step in self.steps}

    @cached_property
    def _labels(self) -> dict[str, str]:
        names = {operation.id: operation.name for operation in self.unit.operations}
        return names | {group.id: group.name for group in self.unit.together}

    def label(self, step: str) -> str:
        """Name of a step as shown on screen."""
        return self._labels[step]

    def stage(self, step: str) -> str:
        """Stage id of a step (of its first operation)."""
        return self.unit.operation_by_id[self.members[self.number[step]][0]].stage

    def labelled(self, steps: Iterable[str]) -> list[list[str]]:
        """``[[id, name], ...]`` of steps, in the order given."""
        return [[step, self.label(step)] for step in steps]

    @cached_property
    def minutes_do(self) -> tuple[float, ...]:
        """Minutes to do each step, by step number."""
        by_id = self.unit.operation_by_id
        return tuple(sum(by_id[op].minutes_do for op in ops) for ops in self.members)

    @cached_property
    def minutes_undo(self) -> tuple[float, ...]:
        """Minutes to take each step apart again, by step number."""
        by_id = self.unit.operation_by_id
        return tuple(sum(by_id[op].minutes_undo for op in ops) for ops in self.members)

    def minutes(self, step: str) -> float:
        """Minutes to do a step."""
        return self.minutes_do[self.number[step]]

    @cached_property
    def parts(self) -> tuple[tuple[str, ...], ...]:
        """Parts of each step, by step number."""
        by_id = self.unit.operation_by_id
        return tuple(
            tuple(dict.fromkeys(part for op in ops for part in by_id[op].parts))
            for ops in self.members
        )

    @cached_property
    def perishable(self) -> tuple[tuple[str, ...], ...]:
        """By step number: parts fitted in it that must be new when it is taken apart."""
        by_id, part_by_id = self.unit.operation_by_id, self.unit.part_by_id
        return tuple(
            tuple(
                dict.fromkeys(
                    part
                    for op in ops
                    if by_id[op].kind is OperationKind.FIT
                    for part in by_id[op].parts
                    if part_by_id[part].single_use or part_by_id[part].damaged_by_removal
                )
            )
            for ops in self.members
        )

    @cached_property
    def is_check(self) -> tuple[bool, ...]:
        """Whether a step checks or measures, by step number."""
        by_id = self.unit.operation_by_id
        looking = (OperationKind.CHECK, OperationKind.MEASURE)
        return tuple(any(by_id[op].kind in looking for op in ops) for ops in self.members)

    @cached_property
    def bonds_into(self) -> tuple[tuple[Bond, ...], ...]:
        """Bonds by the number of their later step."""
        lists: list[list[Bond]] = [[] for _ in self.steps]
        for bond in self.bonds:
            lists[bond.later].append(bond)
        return tuple(map(tuple, lists))

    @cached_property
    def in_the_way(self) -> tuple[int, ...]:
        """By step number: the steps that, once fitted, directly stand in its way."""
        masks = [0] * len(self.steps)
        for bond in self.bonds:
            if bond.reason.kind in STANDS_IN_THE_WAY:
                masks[bond.earlier] |= 1 << bond.later
        return tuple(masks)

    @cached_property
    def pairs(self) -> frozenset[tuple[str, str]]:
        """The closure as pairs of step ids (earlier, later)."""
        return frozenset(
            (self.steps[i], self.steps[j])
            for i in range(len(self.steps))
            for j in bits(self.after[i])
        )

    def directly(self, i: int, j: int) -> bool:
        """Whether nothing has to come between steps i and j, of which i comes before j."""
        return not self.after[i] & self.before[j]

    @cached_property
    def signature(self) -> tuple:
        """What the judgement of an order depends on, hashable; two equal ones mark alike."""
        return (
            self.after,
            tuple((choice.step, choice.options) for choice in self.choices),
            tuple(block.mask for block in self.blocks),
        )

    @property
    def shown(self) -> tuple[str, ...]:
        """The order shown at the start. ValueError where the task has none."""
        if self.start is None:
            raise ValueError("this task has no order to start from")
        return self.start

    def starting_from(self, start: Iterable[str]) -> OrderTask:
        """The same task with another order shown at first, as step ids or [id, name] pairs."""
        return replace(self, start=_ids(start))


def _ids(start: Iterable[str] | Iterable[Sequence[str]]) -> tuple[str, ...]:
    return tuple(step if isinstance(step, str) else step[0] for step in start)


@dataclass(frozen=True)
class _Compiled:
    """All steps of a unit, before any is left out: members by step, the step number of each
    operation or group id, and what binds them."""

    members: dict[str, tuple[str, ...]]
    number: dict[str, int]
    bonds: tuple[Bond, ...]
    before: Sequence[int]
    after: Sequence[int]
    choices: tuple[Choice, ...]

    def at(self, op: str) -> int:
        """Number of the step that an operation or group id stands for."""
        if op not in self.number:
            raise UnitFileError(
                f"there is no operation {op!r}", mend="use an id listed under operations"
            )
        return self.number[op]


@kept()
def _compiled(unit: Unit) -> _Compiled:
    group_of = {op: group.id for group in unit.together for op in group.operations}
    steps: dict[str, list[str]] = {}
    for operation in unit.operations:
        steps.setdefault(group_of.get(operation.id, operation.id), []).append(operation.id)
    names = list(steps)
    number = {step: i for i, step in enumerate(names)}
    number |= {op: number[group] for op, group in group_of.items() if group in number}
    members = {step: tuple(ops) for step, ops in steps.items()}
    whole = _Compiled(members, number, (), (), (), ())
    bonds = _bonds(unit, names, whole.at)
    closed = closure(len(names), ((bond.earlier, bond.later) for bond in bonds))
    if closed is None:
        raise UnitFileError(
            "the rules and holds run in a circle", mend="run the unit checks to see the circle"
        )
    before, after = closed
    choices = _choices(unit, names, whole.at, before, after)
    if not _some_way(choices, before, after):
        raise UnitFileError(
            "the rules that can be kept in several ways contradict each other: "
            + ", ".join(choice.reason.rules[0] for choice in choices),
            mend="drop one of them",
        )
    return replace(whole, bonds=tuple(bonds), before=before, after=after, choices=tuple(choices))


@kept()
def _whole_task(unit: Unit) -> OrderTask:
    return _restricted(unit, range(len(_compiled(unit).members)))


@kept(most=256)  # learners' own windows of the build are among them
def _part(unit: Unit, operations: frozenset[str]) -> OrderTask:
    at = _compiled(unit).at
    return _restricted(unit, sorted({at(operation) for operation in operations}))


def _restricted(unit: Unit, chosen: Sequence[int]) -> OrderTask:
    """The task of some steps, by number."""
    whole = _compiled(unit)
    at, before, after = whole.at, whole.before, whole.after
    names, steps = list(whole.members), whole.members
    bonds, choices = list(whole.bonds), list(whole.choices)
    if len(chosen) < len(names):
        choices = _restrict_choices(choices, chosen, after, bonds, len(names))
        bonds = _restrict_bonds(bonds, chosen, len(names))
    new = {old: i for i, old in enumerate(chosen)}

    def renumber(mask: int) -> int:
        return sum(1 << new[old] for old in bits(mask) if old in new)

    clocks = tuple(
        TaskClock(
            clock.id,
            clock.name,
            new[at(clock.starts)],
            new[at(clock.ends)],
            clock.minutes,
            Reason(
                (clock.id,), RuleKind.HARMS, (names[at(clock.starts)],), names[at(clock.ends)],
                clock.reason, clock.safety, clock.loses,
            ),
        )
        for clock in unit.clocks
        if at(clock.starts) in new and at(clock.ends) in new and at(clock.starts) != at(clock.ends)
    )  # fmt: skip
    waits = tuple(
        TaskWait(
            wait.id, wait.name, new[at(wait.starts)], new[at(wait.ends)], wait.minutes, wait.reason
        )
        for wait in unit.waits
        if at(wait.starts) in new and at(wait.ends) in new
    )
    after_kept = tuple(renumber(after[old]) for old in chosen)
    before_kept = tuple(renumber(before[old]) for old in chosen)
    stage_of = {operation.id: operation.stage for operation in unit.operations}
    blocks = []
    for stage in unit.stages:
        mask = sum(
            1 << i for i, old in enumerate(chosen) if stage_of[steps[names[old]][0]] == stage.id
        )
        # A block can be put back as one only if nothing has to come between its steps.
        outside = [i for i in range(len(chosen)) if not mask >> i & 1]
        convex = not any(before_kept[i] & mask and after_kept[i] & mask for i in outside)
        if mask.bit_count() > 1 and outside and convex:
            blocks.append(Block(stage.id, stage.name, mask))
    return OrderTask(
        unit=unit,
        steps=tuple(names[old] for old in chosen),
        members=tuple(steps[names[old]] for old in chosen),
        before=before_kept,
        after=after_kept,
        bonds=tuple(Bond(new[b.earlier], new[b.later], b.reason) for b in bonds),
        choices=tuple(
            Choice(
                new[c.step],
                tuple(tuple((new[i], new[j]) for i, j in option) for option in c.options),
                c.reason,
                tuple(new[i] for i in c.givers),
                tuple(new[i] for i in c.enders),
            )
            for c in choices
        ),
        clocks=clocks,
        waits=waits,
        blocks=tuple(blocks),
    )


def _bonds(unit: Unit, names: list[str], at) -> list[Bond]:
    """Rules with one earlier step, and holds with one giver and one ender."""
    bonds = []

    def add(i: int, j: int, rule: str, kind: RuleKind, text: str, safety=False, loses=()):
        if i != j:
            reason = Reason((rule,), kind, (names[i],), names[j], text, safety, tuple(loses))
            bonds.append(Bond(i, j, reason))

    for rule in unit.rules:
        if rule.earlier is not None:
            add(
                at(rule.earlier), at(rule.later), rule.id, rule.kind, rule.reason,
                rule.safety, rule.loses,
            )  # fmt: skip
    for hold in unit.holds:
        if _is_simple(hold):
            giver, ender = at(hold.given_by[0]), at(hold.ended_by[0])
            add(giver, ender, hold.id, RuleKind.CANNOT, hold.reason)
            for op in hold.needed_by:
                add(giver, at(op), hold.id, RuleKind.CANNOT, hold.reason, hold.safety)
                # Once the hold is over, what needed it is out of reach.
                add(at(op), ender, hold.id, RuleKind.BURIES, hold.reason, hold.safety)
    return bonds


def _is_simple(hold: Hold) -> bool:
    return len(hold.given_by) == 1 and len(hold.ended_by) == 1


def _choices(unit: Unit, names: list[str], at, before, after) -> list[Choice]:
    choices = []

    def add(step: int, options, reason: Reason, givers=(), enders=()):
        possible = []
        for option in options:
            option = tuple(
                dict.fromkeys(pair for pair in option if not after[pair[0]] >> pair[1] & 1)
            )
            if with_pairs(before, after, option) is not None:
                possible.append(option)
        if not possible:
            raise UnitFileError(
                f"{reason.rules[0]!r} can never be kept: every way contradicts another rule",
                mend="drop it or the rule that contradicts it",
            )
        if all(possible):
            choices.append(Choice(step, tuple(dict.fromkeys(possible)), reason, givers, enders))

    holds = {hold.id: hold for hold in unit.holds}
    for rule in unit.rules:
        step = at(rule.later)
        if rule.any_of:
            ways = [at(op) for op in rule.any_of]
            reason = Reason(
                (rule.id,), rule.kind, tuple(names[i] for i in ways), names[step], rule.reason,
                rule.safety, rule.loses,
            )  # fmt: skip
            if step not in ways:
                add(step, [((i, step),) for i in ways], reason)
        elif rule.not_during is not None:
            hold = holds[rule.not_during]
            givers, enders = _hold_steps(hold, at)
            reason = Reason(
                (rule.id,), rule.kind, (), names[step], rule.reason, rule.safety, rule.loses
            )
            if step not in givers + enders:
                add(step, _off(step, givers, enders), reason, givers, enders)
    for hold in unit.holds:
        if _is_simple(hold):
            continue
        givers, enders = _hold_steps(hold, at)
        for op in hold.needed_by:
            step = at(op)
            reason = Reason(
                (hold.id,), RuleKind.CANNOT, tuple(names[i] for i in givers), names[step],
                hold.reason, hold.safety,
            )  # fmt: skip
            if step not in givers + enders:
                add(step, _on(step, givers, enders), reason, givers, enders)
    return choices


def _some_way(choices: list[Choice], before, after) -> bool:
    """Whether all choices can be kept at once."""
    if not choices:
        return True
    ways = (with_pairs(before, after, option) for option in choices[0].options)
    return any(way is not None and _some_way(choices[1:], *way) for way in ways)


def _hold_steps(hold: Hold, at) -> tuple[tuple[int, ...], tuple[int, ...]]:
    givers = tuple(dict.fromkeys(at(op) for op in hold.given_by))
    return givers, tuple(dict.fromkeys(at(op) for op in hold.ended_by))


def _on(step: int, givers, enders) -> Iterator[tuple[tuple[int, int], ...]]:
    """Ways for a hold to be on at a step: the last of its events before was a giver."""
    for giver in givers:
        for ways in product(*([(e, giver), (step, e)] for e in enders if e != giver)):
            yield ((giver, step), *ways)


def _off(step: int, givers, enders) -> Iterator[tuple[tuple[int, int], ...]]:
    """Ways for a hold to be off: never given yet, or the last of its events was an ender."""
    yield tuple((step, giver) for giver in givers)
    for ender in enders:
        for ways in product(*([(g, ender), (step, g)] for g in givers if g != ender)):
            yield ((ender, step), *ways)


def _restrict_bonds(bonds: list[Bond], kept: Sequence[int], count: int) -> list[Bond]:
    """Bonds among kept steps; a chain through steps left out becomes one bond.

    The steps left out are taken as done in time for what follows them, so the kind of a chain
    is the kind of its first rule.
    """
    inside = sum(1 << i for i in kept)
    leaving: list[list[Bond]] = [[] for _ in range(count)]
    for bond in bonds:
        leaving[bond.earlier].append(bond)
    result = [b for b in bonds if inside >> b.earlier & 1 and inside >> b.later & 1]
    direct = {(b.earlier, b.later) for b in result}
    for i in kept:
        found: dict[tuple[int, RuleKind], tuple[Bond, ...]] = {}
        for first in leaving[i]:
            if inside >> first.later & 1:
                continue
            queue: deque[tuple[int, tuple[Bond, ...]]] = deque([(first.later, (first,))])
            seen = {first.later}
            while queue:
                at, chain = queue.popleft()
                for bond in leaving[at]:
                    if inside >> bond.later & 1:
                        found.setdefault((bond.later, first.reason.kind), (*chain, bond))
                    elif bond.later not in seen:
                        seen.add(bond.later)
                        queue.append((bond.later, (*chain, bond)))
        for (j, kind), chain in found.items():
            if (i, j) not in direct:
                reason = replace(
                    chain[0].reason,
                    rules=tuple(rule for bond in chain for rule in bond.reason.rules),
                    later=chain[-1].reason.later,
                    text=" ".join(dict.fromkeys(_sentence(bond.reason.text) for bond in chain)),
                    kind=kind,
                )
                result.append(Bond(i, j, reason))
    return result


def _sentence(text: str) -> str:
    return text if text.endswith((".", "?")) else text + "."


def _restrict_choices(
    choices: list[Choice], kept: Sequence[int], after: Sequence[int], bonds: list[Bond], count: int
) -> list[Choice]:
    inside = sum(1 << i for i in kept)
    result = []
    for choice in choices:
        touched = {i for option in choice.options for pair in option for i in pair}
        if not inside >> choice.step & 1:
            continue
        if choice.givers or choice.enders:
            if all(inside >> i & 1 for i in touched.union(choice.givers, choice.enders)):
                result.append(choice)
            continue
        # A way that is left out may already be done, unless it comes after the step anyway.
        left_out = [i for i in touched if not inside >> i & 1]
        if any(not after[choice.step] >> i & 1 for i in left_out):
            continue
        options = tuple(o for o in choice.options if all(inside >> i & 1 for p in o for i in p))
        if options:
            result.append(replace(choice, options=options))
    return result
