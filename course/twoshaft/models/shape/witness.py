"""What geometry bears witness to, of the rules that say cannot and buries.

Three kinds: *no seat* (the part, or what it goes on, is not there), *way blocked* (its section,
swept along its way, meets what the later step fits) and *covered* (from the place of work no
straight way leads out of the section any more). What rides on a part belongs to its step. Heat,
cleanliness, measuring and safety have no witness in a section.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from twoshaft.models.order import OrderTask, model_order
from twoshaft.models.order.masks import bits
from twoshaft.models.shape.blocking import in_the_way
from twoshaft.models.shape.pieces import Role
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.models.shape.state import fitted_after, on_the_bench, step_shown
from twoshaft.units.kept import kept
from twoshaft.units.sections.order import Rule, RuleKind
from twoshaft.units.unit import Unit

_TOUCH_MM = 0.5
_FAR_MM = 3000.0
_STARTS, _RAYS = 12, 16
_SKIN_MM = 0.2  # what touches does not close a way


@dataclass(frozen=True)
class Witness:
    """What of a section bears out a rule.

    Attributes
    ----------
    kind : str
        ``no seat``, ``way blocked`` or ``covered``.
    by : str
        The part that is missing, or in the way.

    Examples
    --------
    >>> Witness("covered", "end-cover").kind
    'covered'
    """

    kind: str
    by: str


def witness(unit: Unit, rule: Rule) -> Witness | None:
    """What geometry says for a rule of kind cannot or buries; None where it says nothing.

    Parameters
    ----------
    unit : Unit
    rule : Rule

    Examples
    --------
    >>> rule = next(one for one in unit.rules if one.earlier == "fit-speed-gear")
    >>> witness(unit, rule)
    Witness(kind='way blocked', by='diff-bearings')
    """
    if rule.kind not in (RuleKind.CANNOT, RuleKind.BURIES) or rule.earlier is None:
        return None
    if rule.kind is RuleKind.CANNOT:
        return _no_seat(unit, rule) or _cleared(unit, rule) or _in_the_way(unit, rule)
    return _in_the_way(unit, rule) or _covered(unit, rule)


def witnessed(unit: Unit) -> dict[str, Witness | None]:
    """What geometry says for every rule of kind cannot or buries, by the rule's id.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> found = witnessed(unit)
    >>> sum(one is not None for one in found.values()) >= 0.6 * len(found)
    True
    """
    kinds = (RuleKind.CANNOT, RuleKind.BURIES)
    return {rule.id: witness(unit, rule) for rule in unit.rules if rule.kind in kinds}


def unnamed_blocks(unit: Unit) -> tuple[tuple[str, str], ...]:
    """Steps whose way another one blocks, though no rule puts them before it.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of (step, part)
        The operation, and the part that is in its way when all that may come before it is done.

    Examples
    --------
    >>> less = [rule for rule in unit.rules if rule.id != "output-ring-under-ring-gear"]
    >>> unnamed_blocks(unit.with_sections(rules=tuple(less)))[0]
    ('fit-bore-plug', 'ring-gear')
    """
    task = OrderTask.from_unit(unit)
    members = dict(zip(task.steps, task.members, strict=True))
    order = model_order(task)
    found = []
    for operation in unit.operations:
        mine = task.number[task.step_of[operation.id]]
        early = [step for step in order if step != task.steps[mine]
                 and not task.after[mine] >> task.number[step] & 1]  # fmt: skip
        before = [id for step in early for id in members[step]]
        beside = [p for id in members[task.steps[mine]] for p in unit.operation_by_id[id].parts]
        for met in in_the_way(unit, operation.id, before, beside)[:1]:
            found.append((operation.id, met.other.solid.part or met.other.solid.id))
    return tuple(found)


def _no_seat(unit: Unit, rule: Rule) -> Witness | None:
    assert rule.earlier is not None
    earlier, later = step_shown(unit, rule.earlier), step_shown(unit, rule.later)
    if earlier.way is None or earlier.leaves:
        return None
    shared = [part for part in later.parts if part in earlier.parts]
    if shared and later.way is None:
        return Witness("no seat", shared[0])
    if later.way is None:
        return None
    touching, before = _contacts(unit), _state(unit, rule)
    going = set(later.parts) | _riders(unit, before, later.parts)
    for part in (*earlier.parts, *sorted(_riders(unit, before, earlier.parts) - going)):
        if touching.get(part, set()) & going:
            return Witness("no seat", part)
    return None


def _cleared(unit: Unit, rule: Rule) -> Witness | None:
    """A way that only taking something out makes free."""
    assert rule.earlier is not None
    if not step_shown(unit, rule.earlier).leaves:
        return None
    before = _state(unit, rule)
    met = in_the_way(unit, rule.later, before)
    by = met[0].other.solid.part if met else None
    if by is None or in_the_way(unit, rule.later, [*before, rule.earlier]):
        return None
    return Witness("way blocked", by)


def _riders(unit: Unit, before: list[str], parts: Iterable[str]) -> set[str]:
    """Parts on the bench that go in with the part they are fitted to."""
    bases = set(parts)
    return {part for part, base in on_the_bench(unit, before).items() if base in bases}


def _state(unit: Unit, rule: Rule) -> list[str]:
    """What has to be done before the later step, without the earlier one and what waits for it."""
    assert rule.earlier is not None
    task = OrderTask.from_unit(unit)
    members = dict(zip(task.steps, task.members, strict=True))
    one, other = (task.number[task.step_of[id]] for id in (rule.earlier, rule.later))
    mask = task.before[other] & ~(1 << one) & ~task.after[one]
    mask |= task.before[one]
    return [id for k in bits(mask) for id in members[task.steps[k]]]


def _in_the_way(unit: Unit, rule: Rule) -> Witness | None:
    assert rule.earlier is not None
    before = _state(unit, rule)
    if in_the_way(unit, rule.earlier, before):
        return None
    met = in_the_way(unit, rule.earlier, [*before, rule.later])
    by = met[0].other.solid.part if met else None
    return Witness("way blocked", by) if by else None


def _covered(unit: Unit, rule: Rule) -> Witness | None:
    """Whether the place of the earlier step can be reached before the later one, and not after."""
    assert rule.earlier is not None
    earlier, later = step_shown(unit, rule.earlier), step_shown(unit, rule.later)
    if later.leaves or later.way is None or not earlier.parts:
        return None
    before = _state(unit, rule)
    own = set(earlier.parts)
    placed = set(fitted_after(unit, before)) - set(on_the_bench(unit, before)) - own
    coming = (set(later.parts) | _riders(unit, before, later.parts)) - own
    placed -= coming
    for view in section_of(unit).views:
        if not any(one.solid.part in own for one in view.drawn):
            continue
        old, new = (_area(view.drawn, parts) for parts in (placed, placed | coming))
        for one in view.drawn:
            if one.solid.part in own and _ways_out(one, old) and not _ways_out(one, new):
                return Witness("covered", _nearest(one, view.drawn, coming))
    return None


def _area(drawn: Iterable[Drawn], parts: set[str]) -> Any:
    """What some parts fill in a view."""
    from shapely import union_all

    return union_all([_filled(one) for one in drawn if one.solid.part in parts])


def _filled(one: Drawn) -> Any:
    from shapely import Polygon, union_all

    return union_all(
        [
            Polygon(piece.outline, piece.holes).buffer(0)
            for piece in one.pieces
            if piece.closed and piece.role is not Role.BEHIND
        ]
    )


def _nearest(one: Drawn, drawn: Iterable[Drawn], parts: set[str]) -> str:
    """The part among some that lies nearest to a solid in its view."""
    own = _filled(one)
    return (
        min(
            (other for other in drawn if other.solid.part in parts),
            key=lambda other: own.distance(_filled(other)),
        ).solid.part
        or ""
    )


def _ways_out(one: Drawn, others: Any) -> bool:
    """Whether a straight way leads from the skin of a solid out of the section."""
    from shapely import LineString, prepare

    own = _filled(one)
    inner = own.buffer(-_SKIN_MM)
    others = others.buffer(-_SKIN_MM)
    prepare(inner)
    prepare(others)
    for outline in getattr(own, "geoms", [own]):
        for k in range(_STARTS):
            start = outline.exterior.interpolate(k / _STARTS, normalized=True)
            for j in range(_RAYS):
                turn = 2 * math.pi * j / _RAYS
                end = (start.x + _FAR_MM * math.cos(turn), start.y + _FAR_MM * math.sin(turn))
                ray = LineString([(start.x, start.y), end])
                if not ray.intersects(others) and not ray.intersects(inner):
                    return True
    return False


@kept()
def _contacts(unit: Unit) -> dict[str, set[str]]:
    from shapely import STRtree

    touching: dict[str, set[str]] = {}
    for view in section_of(unit).views:
        solids = [(one, _filled(one)) for one in view.drawn]
        tree = STRtree([area for _, area in solids])
        for one, area in solids:
            for k in tree.query(area, predicate="dwithin", distance=_TOUCH_MM):
                part, other = one.solid.part, solids[k][0].solid.part
                if part and other and part != other:
                    touching.setdefault(part, set()).add(other)
    return touching
