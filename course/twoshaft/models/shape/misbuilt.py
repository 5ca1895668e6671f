"""What is built wrongly, as it looks in section: turned over, left out, off its seat."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import combinations

from twoshaft.models.shape.scene import (
    Lie,
    around,
    lie_of,
    lying,
    solids_of,
    view_of,
    views_of_parts,
)
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import section_of
from twoshaft.models.shape.state import step_shown
from twoshaft.units.kept import kept
from twoshaft.units.sections.faults import (
    BoltChange,
    FilmChange,
    HubChange,
    LeftOut,
    Misbuild,
    SettingChange,
    SpeedDriveChange,
    WheelChange,
)
from twoshaft.units.sections.order import Operation, WrongWay
from twoshaft.units.sections.shapes import WrongLook
from twoshaft.units.unit import Unit

OFF_MM = 2.5
"""How far a part off its seat is drawn from it: more than it would be, so that it can be seen."""
_SEE = 0.05  # a part turned over differs by at least so much of its area, or nobody sees it
_SEE_MM2 = 1.0  # less of a part than this is not seen
_LIES_APART_MM = 0.2
_SAME_MM = 0.5

_ALIKE = "It looks the same in section both ways round."
_NO_SHAPES = "The unit has no shapes of its own, and a schematic shows no way round."
_NOT_TOLD = "The unit file does not say which part of the section it changes."
_UNSEEN = {
    SettingChange: "It changes a thickness by less than a line of the drawing is wide.",
    BoltChange: "How tight a bolt is, and what is on its thread, no section shows.",
    FilmChange: "A film is thinner than a line of the drawing, and lies in the face.",
    WheelChange: "A tooth more or less changes the gear by little more than a line: it is counted.",
    HubChange: "The wear is less than a line of the drawing is wide: it is measured.",
    SpeedDriveChange: "A tooth more or less cannot be seen in section: it is counted.",
}


@dataclass(frozen=True)
class Built:
    """Something built wrongly, and how that looks.

    Attributes
    ----------
    id : str
        That of the misbuild, or of operation and wrong way with a stroke between them.
    name : str
        What was done, in words.
    how : str
        ``turned``, ``missing`` or ``off``; empty where no section shows it.
    view : str
        The section that shows it.
    parts : tuple of str
        The parts, or solids of a part, that it changes.
    unseen : str
        Why no section shows it.

    Examples
    --------
    >>> next(one for one in listed_misbuilds(unit) if one.id == "magnet-left-out").how
    'missing'
    """

    id: str
    name: str
    how: str = ""
    view: str = ""
    parts: tuple[str, ...] = ()
    unseen: str = ""


@kept()
def listed_misbuilds(unit: Unit) -> tuple[Built, ...]:
    """Every wrong way of the operations and every misbuild of the faults section.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> seal = next(one for one in listed_misbuilds(unit) if one.id.endswith("lip-to-clutch"))
    >>> seal.how, seal.view, seal.parts
    ('turned', 'shafts', ('input-seal',))
    """
    said = {(one.operation, one.way) if one.operation else one.misbuild: one
            for one in shapes_of(unit).wrong}  # fmt: skip
    found = []
    for operation in unit.operations:
        for way in operation.wrong_ways:
            found.append(_wrong_way(unit, operation, way, said.get((operation.id, way.id))))
    for misbuild in unit.faults.misbuilds if unit.has("faults") else ():
        found.append(_misbuild(unit, misbuild, said.get(misbuild.id)))
    return tuple(found)


def shim_and_ring(unit: Unit, support: str) -> tuple[str, str] | None:
    """The shim that sets a pair of bearings and the outer ring that lies on it; None if not drawn.

    Which shim that is, the assembly fault says in which the pair is without it.

    Parameters
    ----------
    unit : Unit
    support : str
        The pair's shaft, by its id.

    Examples
    --------
    >>> shim_and_ring(unit, "differential")
    ('diff-shim', 'diff-rear-ring')
    """
    drawn = {one.id: one for one in listed_misbuilds(unit) if one.how == "missing"}
    for misbuild in unit.faults.misbuilds if unit.has("faults") else ():
        change = misbuild.changes[0]
        if (
            isinstance(change, SettingChange)
            and (change.support, change.without_shim) == (support, True)
            and misbuild.id in drawn
        ):
            view, (shim, *_) = drawn[misbuild.id].view, drawn[misbuild.id].parts
            ends = lie_of(unit, view, shim).z_mm
            for ring in outer_rings(unit):
                if ring.view == view and _touch(ends, lie_of(unit, view, ring.parts[0]).z_mm):
                    return shim, ring.parts[0]
    return None


def _touch(one: tuple[float, float], other: tuple[float, float]) -> bool:
    return min(abs(one[0] - other[1]), abs(one[1] - other[0])) < _LIES_APART_MM


@kept()
def thin_rings(unit: Unit) -> tuple[Built, ...]:
    """What is easily dropped or forgotten, as left out: circlips, shims, seals, washers, O-rings.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> {one.how for one in thin_rings(unit)}
    {'missing'}
    """
    found = []
    for view in section_of(unit).views if section_of(unit).own else ():
        for key in keys_of(unit, view.id):
            own = solids_of(unit, view.id, key)
            if all(one.solid.kind == "ring" for one in own):
                name = f"{own[0].name}: left out"
                found.append(Built(f"without-{key}", name, "missing", view.id, (key,)))
    return tuple(found)


@kept()
def outer_rings(unit: Unit) -> tuple[Built, ...]:
    """Outer rings of bearings and other pressed rings, each off its seat.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> "off-output-rear-ring" in {one.id for one in outer_rings(unit)}
    True
    """
    found = []
    for view in section_of(unit).views if section_of(unit).own else ():
        for key in keys_of(unit, view.id):
            (*others, last) = solids_of(unit, view.id, key)
            if not others and last.solid.kind == "bearing" and last.solid.ring == "outer":
                name = f"{last.name}: off its seat"
                found.append(Built(f"off-{key}", name, "off", view.id, (key,)))
    return tuple(found)


@kept()
def keys_of(unit: Unit, view: str) -> tuple[str, ...]:
    """What lies by itself in a view: its parts, or their solids where these lie apart.

    Examples
    --------
    >>> [key for key in keys_of(unit, "shafts") if key.endswith("-cone")][:2]
    ['diff-front-cone', 'diff-rear-cone']
    """
    return tuple(
        key
        for part, views in views_of_parts(unit).items()
        if view in views
        for key in _split(unit, view, part)
    )


def misbuilt(unit: Unit, wrong: Built) -> tuple[Lie, ...]:
    """The whole unit in the view of something built wrongly, with that in it.

    Parameters
    ----------
    unit : Unit
    wrong : Built
        One that a section shows.

    Examples
    --------
    >>> off = next(one for one in outer_rings(unit) if one.id == "off-output-rear-ring")
    >>> what_is_wrong(unit, "shafts", misbuilt(unit, off))
    {'output-rear-ring': 'off'}
    """
    found = []
    for key in keys_of(unit, wrong.view):
        lie = lie_of(unit, wrong.view, key)
        if key not in wrong.parts:
            found.append(lie)
        elif wrong.how == "turned":
            found.append(turned_over(lie))
        elif wrong.how == "off":
            found.append(_off(unit, wrong.view, lie))
    return tuple(found)


def what_is_wrong(unit: Unit, view: str, lies: Iterable[Lie]) -> dict[str, str]:
    """What lies otherwise in a view than in the unit: turned, off or missing, by part or solid.

    Parameters
    ----------
    unit : Unit
    view : str
    lies : iterable of Lie
        Everything that stands there.

    Examples
    --------
    >>> what_is_wrong(unit, "gate", [lie_of(unit, "gate", key) for key in keys_of(unit, "gate")])
    {}
    """
    found, there = {}, {lie.part: lie for lie in lies}
    for key in keys_of(unit, view):
        home = lie_of(unit, view, key)
        if (lie := there.get(key)) is None:
            found[key] = "missing"
        elif lie.heavy != home.heavy:
            found[key] = "turned"
        elif any(
            abs(one - other) > _SAME_MM
            for one, other in zip(
                (*lie.z_mm, lie.reach_mm), (*home.z_mm, home.reach_mm), strict=True
            )
        ):
            found[key] = "off"  # fmt: skip
    return found


def built_how(unit: Unit, pictures: Mapping[str, tuple[str, Iterable[Lie]]]) -> dict[str, set[str]]:
    """Which of some pictures is built how: their letters by ``right``, ``turned`` and so on.

    Parameters
    ----------
    unit : Unit
    pictures : mapping of str to (str, iterable of Lie)
        By letter: the view, and everything that stands there.

    Examples
    --------
    >>> right = [lie_of(unit, "gate", key) for key in keys_of(unit, "gate")]
    >>> built_how(unit, {"A": ("gate", right), "B": ("gate", right[1:])})
    {'right': {'A'}, 'missing': {'B'}}
    """
    found: dict[str, set[str]] = {}
    for letter, (view, lies) in pictures.items():
        how = min(what_is_wrong(unit, view, lies).values(), default="right")
        found.setdefault(how, set()).add(letter)
    return found


@kept()
def open_places(unit: Unit, view: str) -> tuple[tuple[float, float], ...]:
    """Places inside a view where nothing belongs, each close to what stands there [mm].

    Parameters
    ----------
    unit : Unit
    view : str

    Returns
    -------
    tuple of (float, float)
        z and height.

    Examples
    --------
    >>> len(open_places(unit, "shafts")) > 20
    True
    """
    from shapely import Point, prepare, union_all

    filled = union_all([one.area for one in view_of(unit, view).drawn])
    inside = filled.buffer(15).buffer(-18)
    low_z, low_y, high_z, high_y = inside.bounds
    near, clear = filled.buffer(5), filled.buffer(1.2)
    for area in (inside, near, clear):
        prepare(area)
    step, found = 3.0, []
    for i in range(int((high_z - low_z) / step) + 1):
        for j in range(int((high_y - low_y) / step) + 1):
            at = Point(low_z + i * step, low_y + j * step)
            if inside.contains(at) and near.contains(at) and not clear.contains(at):
                found.append((round(at.x, 1), round(at.y, 1)))
    return tuple(found)


@kept()
def places_seen(unit: Unit, view: str) -> dict[str, tuple[float, float]]:
    """A place in each part, or solid, of a view where nothing covers it: z and height [mm].

    What is covered in full is left out.

    Examples
    --------
    >>> z, _ = places_seen(unit, "shafts")["output-shim"]
    >>> 124 < z < 125
    True
    """
    return _seen(unit, view, keys_of(unit, view))


@kept()
def solids_seen(unit: Unit, view: str) -> dict[str, tuple[float, float]]:
    """A place in each solid of a view, the gears of a shaft one by one: z and height [mm].

    A solid that is called as its part is left out where the part has others, and what is covered.

    Examples
    --------
    >>> "input-third" in solids_seen(unit, "shafts"), "input-third" in places_seen(unit, "shafts")
    (True, False)
    """
    drawn = [one.solid for one in view_of(unit, view).drawn if one.solid.part]
    several = {one.part for one in drawn if one.id != one.part}
    return _seen(unit, view, [one.id for one in drawn if one.id not in several])


def _seen(unit: Unit, view: str, keys: Iterable[str]) -> dict[str, tuple[float, float]]:
    from shapely import union_all

    drawn, found = view_of(unit, view).drawn, {}
    for key in keys:
        own = solids_of(unit, view, key)
        seen = []
        for one in own:
            over = [other.area for other in drawn[drawn.index(one) + 1 :]
                    if other not in own and _meet(other.bounds, one.bounds)]  # fmt: skip
            seen.append(one.area.difference(union_all(over)) if over else one.area)
        pieces = [area for one in seen for area in getattr(one, "geoms", [one])]
        best = max(pieces, key=lambda one: one.area, default=None)
        if best is not None and best.area > _SEE_MM2:
            at = best.representative_point()
            found[key] = round(at.x, 1), round(at.y, 1)
        elif all(one.solid.kind == "spring" for one in own):
            z0, y0, z1, y1 = around(own)
            found[key] = round((z0 + z1) / 2, 1), round((y0 + y1) / 2, 1)
    return found


def _wrong_way(unit: Unit, operation: Operation, way: WrongWay, said: WrongLook | None) -> Built:
    wrong = Built(f"{operation.id}/{way.id}", way.name)
    if said is not None:
        return _told(unit, wrong, said)
    return _shown(unit, wrong, "turned", operation.parts)


def _misbuild(unit: Unit, misbuild: Misbuild, said: WrongLook | None) -> Built:
    wrong = Built(misbuild.id, misbuild.name)
    if said is not None:
        return _told(unit, wrong, said)
    change = misbuild.changes[0]
    if isinstance(change, LeftOut):
        return _shown(unit, wrong, "missing", unit.operation_by_id[change.operation].parts)
    return replace(wrong, unseen=_UNSEEN.get(type(change), _NOT_TOLD))


def _told(unit: Unit, wrong: Built, said: WrongLook) -> Built:
    if said.unseen:
        return replace(wrong, unseen=said.unseen)
    how = next(key for key in ("turned", "missing", "off") if getattr(said, key))
    return _shown(unit, wrong, how, getattr(said, how))


def _shown(unit: Unit, wrong: Built, how: str, parts: Iterable[str]) -> Built:
    """How it looks in the view that shows the most of it."""
    if not section_of(unit).own:
        return replace(wrong, unseen=_NO_SHAPES)
    seen: dict[str, list[str]] = {}
    for view in section_of(unit).views:
        keys = [key for part in parts for key in _split(unit, view.id, part)]
        if how == "turned":
            keys = [key for key in keys if shows_its_way(unit, view.id, key)]
        seen[view.id] = keys
    most = max(seen, key=lambda one: len(seen[one]))
    if not any(key in places_seen(unit, most) for key in seen[most]):
        return replace(wrong, unseen=_ALIKE if how == "turned" else _NOT_TOLD)
    return replace(wrong, how=how, view=most, parts=tuple(seen[most]))


def _split(unit: Unit, view: str, part: str) -> tuple[str, ...]:
    own = solids_of(unit, view, part)
    if own and own[0].solid.part != part:  # one solid of a part
        whole = _split(unit, view, own[0].solid.part or "")
        return (part,) if part in whole else whole
    if len(own) < 2:
        return (part,) if own else ()
    ids = [one.solid.id for one in own]
    if part in ids or any(_meet(one.bounds, other.bounds) for one, other in combinations(own, 2)):
        return (part,)
    return tuple(ids)


def _meet(one: tuple[float, ...], other: tuple[float, ...]) -> bool:
    return all(min(one[k + 2], other[k + 2]) - max(one[k], other[k]) > _LIES_APART_MM
               for k in (0, 1))  # fmt: skip


def where_put(
    unit: Unit, view: str, held: Lie, places: Mapping[str, tuple[float, float]]
) -> tuple[str, str]:
    """Where a part in hand belongs, and which way round.

    Parameters
    ----------
    unit : Unit
    view : str
    held : Lie
        How it is held.
    places : mapping of str to (float, float)
        Where it can be put, by letter: z of its middle, and a height at which it is seen [mm].

    Returns
    -------
    letter : str
        Of the place that is nearest to its own.
    ways : str
        ``1`` as it is held, ``2`` turned over, ``12`` where both are alike.

    Examples
    --------
    >>> shim, ring = (lie_of(unit, "shafts", one) for one in ("diff-shim", "diff-rear-ring"))
    >>> places = {"A": (sum(ring.z_mm) / 2, 210.0), "B": (sum(shim.z_mm) / 2, 210.0)}
    >>> where_put(unit, "shafts", turned_over(ring), places)
    ('A', '2')
    >>> where_put(unit, "shafts", shim, places)
    ('B', '12')
    """
    home, (_, height) = lie_of(unit, view, held.part), places_seen(unit, view)[held.part]
    middle = sum(home.z_mm) / 2
    letter = min(places, key=lambda one: math.dist(places[one], (middle, height)))
    return letter, "12" if not home.heavy else "1" if held.heavy == home.heavy else "2"


def shows_its_way(unit: Unit, view: str, key: str) -> bool:
    """Whether a section shows which way round a part or solid lies.

    Parameters
    ----------
    unit : Unit
    view, key : str

    Examples
    --------
    >>> shows_its_way(unit, "shafts", "input-seal"), shows_its_way(unit, "shafts", "diff-shim")
    (True, False)
    """
    from shapely import union_all

    home = lie_of(unit, view, key)
    if not home.heavy:
        return False
    here, over = (union_all([one.area for one in lying(unit, view, [lie])[key]])
                  for lie in (home, turned_over(home)))  # fmt: skip
    return bool(here.symmetric_difference(over).area > _SEE * here.area)


def turned_over(lie: Lie) -> Lie:
    """How a part lies when it is turned end for end where it is.

    Examples
    --------
    >>> turned_over(lie_of(unit, "shafts", "input-seal")).heavy
    'rear'
    """
    return replace(lie, heavy="rear" if lie.heavy == "front" else "front")


def _off(unit: Unit, view: str, lie: Lie) -> Lie:
    """Off its seat: back on the way on which it came, a ring towards its rollers."""
    way = next(_ways_in(unit, view, lie.part), "rear")
    if way in ("rear", "front"):
        by = OFF_MM if way == "rear" else -OFF_MM
        return replace(lie, z_mm=(lie.z_mm[0] + by, lie.z_mm[1] + by))
    return replace(lie, reach_mm=lie.reach_mm + OFF_MM)


def _ways_in(unit: Unit, view: str, key: str) -> Iterator[str]:
    (first, *_) = solids_of(unit, view, key)
    solid = first.solid
    if solid.kind == "bearing" and solid.ring == "outer":  # its back lies on its seat
        yield solid.large_end
    if solid.kind == "rod":  # out along itself
        (z0, y0), (z1, y1) = solid.from_mm, solid.to_mm
        yield "outside" if abs(y1 - y0) > abs(z1 - z0) else "rear" if z0 > z1 else "front"
    if solid.way:
        yield solid.way
    for operation in reversed(unit.operations):  # after any trial
        if solid.part in operation.parts and (way := step_shown(unit, operation.id).way):
            yield way
