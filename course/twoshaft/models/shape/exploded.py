"""A unit, or a stage of its build, taken apart along the ways in: how far each part moves.

Parts are placed in the order in which they are fitted, each outside all that was placed before it
on its way; so on the way together none passes through another that is there already. A part whose
solids have ways of their own (``ways_out.py``) moves as several.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from twoshaft.models.order import OrderTask, model_order
from twoshaft.models.shape.halves import open_side
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.models.shape.state import fitted_after, on_the_bench, step_shown
from twoshaft.models.shape.ways_out import by_way
from twoshaft.units.kept import kept
from twoshaft.units.sections.order import OperationKind
from twoshaft.units.unit import Unit

GAP_MM = 12.0
"""What is left free between neighbours when they are apart."""
_LANE_MM = 0.5  # boxes that share less than this across pass each other
_TOUCH_MM = 0.7

Box = tuple[float, float, float, float]
"""Least z, least height, most z, most height [mm]."""
Shift = tuple[float, float]
"""Along z and across [mm]."""
Seen = tuple[str, Drawn]
"""A solid with the view that shows it."""


@dataclass(frozen=True)
class Mover:
    """Solids that move as one on the way in.

    Attributes
    ----------
    part : str
        The part that is fitted.
    operation : str
    way : str
        Where it comes from: rear, front, outside or by-hand.
    solids : frozenset of str
        Its solids, with those of parts that were fitted to it before.
    parent : int or None
        The mover that it stays with: its own shift counts from there.
    own_mm : tuple of (view, z, across)
        Its own shift in each view in which it has one; across is below zero upwards.

    Examples
    --------
    >>> first = exploded(unit, "clutch-housing").movers[0]
    >>> first.part, first.way, first.own_mm[0][0]
    ('bore-plug', 'rear', 'shafts')
    """

    part: str
    operation: str
    way: str
    solids: frozenset[str]
    parent: int | None
    own_mm: tuple[tuple[str, float, float], ...]


@dataclass(frozen=True)
class Exploded:
    """A unit or a stage of it, to be taken apart and put together.

    Attributes
    ----------
    movers : tuple of Mover
        In the order in which they are fitted.
    still : frozenset of str
        Solids that stay where they are: what the movers stand on, in or round.

    Examples
    --------
    >>> {mover.part for mover in exploded(unit, "clutch-housing").movers} >= {"magnet"}
    True
    """

    movers: tuple[Mover, ...]
    still: frozenset[str]

    def shift(self, mover: int, view: str) -> Shift:
        """How far a mover goes in a view when all is apart, its parents' shifts with its own.

        Parameters
        ----------
        mover : int
        view : str

        Returns
        -------
        tuple of float
            Along z and across [mm].
        """
        one = self.movers[mover]
        z, y = (0.0, 0.0) if one.parent is None else self.shift(one.parent, view)
        for seen, along, across in one.own_mm:
            if seen == view:
                z, y = z + along, y + across
        return z, y


def stages_to_explode(unit: Unit) -> tuple[str, ...]:
    """Stages in which at least one part that has a form is fitted.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> stages_to_explode(unit)[:2]
    ('clutch-housing', 'differential')
    """
    return tuple(stage.id for stage in unit.stages if exploded(unit, stage.id).movers)


@kept()
def exploded(unit: Unit, stage: str | None = None) -> Exploded:
    """Take a stage of the build, or the whole unit, apart along the ways in.

    Parameters
    ----------
    unit : Unit
    stage : str, optional
        The stage; by default the whole unit.

    Returns
    -------
    Exploded
        Empty where no part of it has a form.

    Examples
    --------
    >>> len(exploded(unit).movers) > len(exploded(unit, "gear-train").movers)
    True
    """
    return _Layout(unit, stage).made()


@dataclass(frozen=True)
class _Fitted:
    """A part as an operation fits it."""

    part: str
    operation: str
    way: str
    base: str | None  # what it is fitted to while that one is off the unit
    riders: tuple[str, ...]  # what was fitted to it before, and is not shown on its own


@dataclass(eq=False)
class _Node:
    """A mover as it is placed."""

    fitted: _Fitted
    way: str
    solids: list[Seen]
    side: int = 0  # -1 up, 1 down, 0 where its solids do not tell
    parent: _Node | None = None
    own: dict[str, Shift] = field(default_factory=dict)
    at: dict[str, Shift] = field(default_factory=dict)  # where it stands in its base's frame
    members: list[_Node] = field(default_factory=list)  # fitted to it on the bench

    def deep(self) -> Iterator[tuple[_Node, dict[str, Shift]]]:
        """It and what is fitted to it, each with its place in the frame of this one."""
        yield self, self.at
        for member in self.members:
            for node, at in member.deep():
                yield node, _sum(at, self.at)

    def boxes(self) -> list[tuple[str, Box]]:
        """What it and its members take up in the frame of this one."""
        return [
            (view, _moved(one.bounds, at.get(view)))
            for node, at in self.deep()
            for view, one in node.solids
        ]


class _Layout:
    """Places the parts of a stage one after another."""

    def __init__(self, unit: Unit, stage: str | None) -> None:
        shapes = shapes_of(unit)
        self.unit = unit
        self.square = {view.id: shapes.axis_by_id(view.axes[0]).square for view in shapes.views}
        self.drawn: dict[str, list[Seen]] = {}
        for view in section_of(unit).views:
            for one in view.drawn:
                if one.solid.kind != "box":
                    self.drawn.setdefault(one.solid.part or "", []).append((view.id, one))
        order = _order(unit)
        shown = {part for part in self.drawn if part}
        self.chosen = [one for one in _fitted(unit, stage, order) if one.part in shown]
        self.still = self._still(stage, order)

    def _still(self, stage: str | None, order: list[str]) -> list[Seen]:
        """What stays: parts in place from the start; of a stage, the unit as far as it is built."""
        moved = {part for one in self.chosen for part in (one.part, *one.riders)}
        near = {part.id for part in self.unit.parts if part.in_place} - moved
        if stage is not None and self.chosen:
            bases = {one.base for one in self.chosen if one.base is not None}
            before = order[: max(order.index(one.operation) for one in self.chosen)]
            near = {*fitted_after(self.unit, before)} - {*on_the_bench(self.unit, before)} - moved
            if all(one.base is not None for one in self.chosen):
                near = set()  # all of it is done on the bench
            near |= bases - moved
        return self._solids(part for part in self.drawn if part in near)

    def _solids(self, parts: Iterable[str]) -> list[Seen]:
        return [solid for part in parts for solid in self.drawn.get(part, ())]

    def made(self) -> Exploded:
        """Everything placed."""
        bases = {one.part for one in self.chosen}
        top = [one for one in self.chosen if one.base not in bases]
        nodes = [
            node
            for one in self._frame(top, [(v, d.bounds) for v, d in self.still])
            for node, _ in one.deep()
        ]
        nodes.sort(key=lambda node: self.chosen.index(node.fitted))
        number = {id(node): k for k, node in enumerate(nodes)}
        movers = tuple(
            Mover(
                node.fitted.part,
                node.fitted.operation,
                node.way,
                frozenset(one.solid.id for _, one in node.solids),
                None if node.parent is None else number[id(node.parent)],
                tuple((view, z, y) for view, (z, y) in node.own.items()),
            )
            for node in nodes
        )
        return Exploded(movers, frozenset(one.solid.id for _, one in self.still))

    def _frame(self, items: list[_Fitted], there: list[tuple[str, Box]]) -> list[_Node]:
        """Place parts one after another round what is there already."""
        taken, nodes = list(there), list[_Node]()
        for item in items:
            members = [one for one in self.chosen if one.base == item.part]
            own = self._solids([item.part])
            on_it = self._frame(members, [(v, d.bounds) for v, d in own]) if members else []
            seen = {one.solid.id: view for view, one in own}
            ways = by_way([one for _, one in own], item.way)
            for k, ((way, side), solids) in enumerate(ways.items()):
                node = _Node(item, way, [(seen[one.solid.id], one) for one in solids], side)
                if k == 0:
                    node.solids += self._solids(item.riders)
                    node.members = on_it
                    for member in on_it:
                        member.parent = member.parent or node
                self._place(node, nodes, taken)
                nodes.append(node)
                taken += node.boxes()
        return nodes

    def _place(self, node: _Node, nodes: list[_Node], taken: list[tuple[str, Box]]) -> None:
        """Move a node outwards until it leaves a gap to all that it passes."""
        start: dict[str, Shift] = {}
        for other in nodes:
            for host, at in other.deep():
                sideways = node.way == "outside" or all(
                    at.get(view, (0.0, 0.0))[1] for view, _ in node.solids
                )
                # along the shafts it is enough to stand further out
                if sideways and _touch(host.solids, node.solids):
                    node.parent, start = host, at
        node.at = start
        moving = node.boxes()
        if node.way == "outside":
            for view in dict.fromkeys(view for view, _ in node.solids):
                away = _outwards([b for v, b in moving if v == view],
                                 [b for v, b in taken if v == view],
                                 open_side(self.unit, (one for _, one in node.solids))
                                 or node.side)  # fmt: skip
                node.own[view] = (0.0, away)
        else:
            seen = [view for view, _ in node.solids]
            plain = [view for view, square in self.square.items() if not square]
            along = plain if set(plain) & set(seen) else seen
            pairs = [(a, b) for v, a in moving for w, b in taken if v == w and v in along]
            away = _beyond(pairs, node.way)
            node.own = {view: (away, 0.0) for view in dict.fromkeys(along)}
        node.at = _sum(start, node.own)


def _order(unit: Unit) -> list[str]:
    """Every operation, in a workable order."""
    task = OrderTask.from_unit(unit)
    members = dict(zip(task.steps, task.members, strict=True))
    return [id for step in model_order(task) for id in members[step]]


def _fitted(unit: Unit, stage: str | None, order: list[str]) -> list[_Fitted]:
    """The parts that are fitted, in their order; in one operation, inner ones first.

    A part that a stage fits on trial only is shown too.
    """
    operations = [unit.operation_by_id[id] for id in order]
    fits = [one for one in operations if one.kind is OperationKind.FIT
            and stage in (None, one.stage)]  # fmt: skip
    lasting = {part for one in fits for part in one.parts}
    tries = [one for one in operations if one.kind is OperationKind.TRIAL and one.stage == stage]
    chosen = lasting | {part for one in tries for part in one.parts}
    found: dict[str, _Fitted] = {}
    for one in sorted([*tries, *fits], key=lambda one: order.index(one.id)):
        own = [part for part in one.parts if one in fits or part not in lasting]
        shown, before = step_shown(unit, one.id), order[: order.index(one.id)]
        bench = on_the_bench(unit, before)
        base = shown.on if shown.on not in fitted_after(unit, before) else None
        for part in sorted(own, key=_outward(unit, shown.way)):
            riders = tuple(r for r in bench if r not in chosen and _rides(bench, r, part))
            found[part] = _Fitted(part, one.id, shown.way or "rear", base, riders)
    return list(found.values())


def _rides(bench: Mapping[str, str], rider: str, part: str) -> bool:
    """Whether something stands on a part, or on what stands on it."""
    base = bench.get(rider)
    return base is not None and (base == part or _rides(bench, base, part))


def _outward(unit: Unit, way: str | None) -> Callable[[str], float]:
    """How far out a part reaches on its way in."""

    def reach(part: str) -> float:
        boxes = [one.bounds for view in section_of(unit).views for one in view.drawn
                 if one.solid.part == part]  # fmt: skip
        if not boxes:
            return 0.0
        if way == "front":
            return -min(box[0] for box in boxes)
        if way == "outside":
            return -min(box[1] for box in boxes)
        return max(box[2] for box in boxes)

    return reach


def _touch(some: list[Seen], others: list[Seen]) -> bool:
    """Whether solids touch in a view that shows both."""
    return any(
        view == seen and _near(one.bounds, other.bounds) and _apart_mm(one, other) <= _TOUCH_MM
        for view, one in some
        for seen, other in others
    )


def _near(a: Box, b: Box) -> bool:
    reach = _TOUCH_MM
    return (
        a[0] - reach <= b[2] and b[0] - reach <= a[2]
        and a[1] - reach <= b[3] and b[1] - reach <= a[3]
    )  # fmt: skip


def _apart_mm(one: Drawn, other: Drawn) -> float:
    """How far two solids are apart; a spring, which has no area, by what it takes up."""
    from shapely import box

    a, b = (box(*d.bounds) if d.area.is_empty else d.area for d in (one, other))
    return float(a.distance(b))


def _moved(box: Box, by: Shift | None) -> Box:
    z, y = by or (0.0, 0.0)
    return box[0] + z, box[1] + y, box[2] + z, box[3] + y


def _sum(one: Mapping[str, Shift], other: Mapping[str, Shift]) -> dict[str, Shift]:
    found = dict(one)
    for view, (z, y) in other.items():
        z0, y0 = found.get(view, (0.0, 0.0))
        found[view] = z0 + z, y0 + y
    return found


def _beyond(pairs: list[tuple[Box, Box]], way: str) -> float:
    """Shift along z that takes the first of each pair past the second."""
    past = [(a, b) for a, b in pairs if min(a[3], b[3]) - max(a[1], b[1]) > _LANE_MM]
    if way == "front":
        return -max([GAP_MM, *(a[2] - b[0] + GAP_MM for a, b in past)])
    return max([GAP_MM, *(b[2] - a[0] + GAP_MM for a, b in past)])


def _outwards(own: list[Box], taken: list[Box], side: float) -> float:
    """Shift across that takes boxes past what they face: up, down, or where they are sooner out."""
    pairs = [(a, b) for a in own for b in taken if min(a[2], b[2]) - max(a[0], b[0]) > _LANE_MM]
    up = max([GAP_MM, *(a[3] - b[1] + GAP_MM for a, b in pairs)])
    down = max([GAP_MM, *(b[3] - a[1] + GAP_MM for a, b in pairs)])
    return -up if side < 0 or (not side and up <= down) else down
