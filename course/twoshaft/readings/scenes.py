"""Pictures of the unit that a learner is given: what stands there, how it lies, from which side."""

from __future__ import annotations

import math
from collections.abc import Collection, Iterable, Mapping, Sequence

from twoshaft.models.shape import (
    Built,
    Lie,
    around,
    keys_of,
    lie_of,
    misbuilt,
    open_places,
    places_seen,
    solids_of,
    solids_seen,
    turned_over,
    view_of,
    views_of_parts,
)
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option, Record, Row
from twoshaft.units.unit import Unit

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
SPOTS, OPEN = 10, 2
"""How many letters an opened unit has, and how many of them stand where nothing is."""
LEAST, TOLD = 6, 4
"""Fewest letters of a picture; how much beside what may be wrong is described to a hand."""
NEAR_MM = 90.0
"""How far from each other parts may lie that are wrong in the same place."""
ROUND_MM = 12.0
"""How much is shown round the letters."""
_APART_MM, _SAME_MM = 8.0, 0.5


class Lies(Row, frozen=True):
    """How a part lies: the end at which there is more of it, its two ends, how far it reaches."""

    part: str
    heavy: str
    front_mm: float
    rear_mm: float
    reach_mm: float


class Scene(Record, frozen=True):
    """A picture of a part of the unit.

    Attributes
    ----------
    view : str
        The section that it is cut from.
    mirrored, upside : bool
        Whether it is seen from behind the plane, and from below.
    lies : tuple of Lies
        What stands there, and how it lies.
    spots : tuple of Option
        What can be pointed at: its letter in the picture, and the part. A part that does not stand
        there is an outline.
    """

    view: str
    mirrored: bool
    upside: bool
    lies: tuple[Lies, ...]
    spots: tuple[Option, ...] = ()

    def letter(self, part: str) -> str:
        """The letter of a part. KeyError when it has none."""
        return {spot.text: spot.id for spot in self.spots}[part]


class OpenPlace(Row, frozen=True):
    """A letter at a place where nothing stands: z and height in the view."""

    letter: str
    z_mm: float
    height_mm: float


class Opened(Record, frozen=True):
    """A built unit in section, in which one thing is wrong: told by how everything lies.

    Attributes
    ----------
    letter : str
        What the unit is called.
    scene : Scene
        The whole view, with letters at some of what stands there.
    open : tuple of OpenPlace
        Letters where nothing stands; something may belong there.
    window_mm : tuple of float
        What of the view is shown: least z and height, most z and height.
    """

    letter: str
    scene: Scene
    open: tuple[OpenPlace, ...]
    window_mm: tuple[float, ...]


def opened_with(unit: Unit, stream: Stream, letter: str, wrong: Built) -> Opened | None:
    """A unit with something wrong in it, and letters near it; None where too little is near.

    Parameters
    ----------
    unit : Unit
    stream : Stream
    letter : str
        What the unit is called.
    wrong : Built
        What is wrong in it.
    """
    view, stream = wrong.view, stream.child("opened")
    homes, missing = places_seen(unit, view), wrong.how == "missing"
    mine = next((key for key in wrong.parts if key in homes), None)
    if mine is None:
        return None

    def far(key: str, other: str) -> float:
        return math.dist(homes[key], homes[other])

    others = sorted((key for key in homes if key not in wrong.parts), key=lambda k: far(k, mine))
    middle = stream.choice([mine, *others[: SPOTS // 2]])  # what is wrong is not in the middle
    others.sort(key=lambda key: far(key, middle))
    near = others[: SPOTS + 2]
    stands = [] if missing else [key for key in wrong.parts if key in homes]
    stands += stream.shuffled(near)[: SPOTS - OPEN - len(stands)]
    taken = [homes[key] for key in {*stands, *wrong.parts} & homes.keys()]
    empty = [homes[mine]] if missing else []
    reach = max(far(key, middle) for key in stands)
    for at in stream.shuffled(open_places(unit, view)):
        clear = all(math.dist(at, one) > _APART_MM for one in (*taken, *empty))
        if len(empty) < OPEN and clear and math.dist(at, homes[middle]) < reach:
            empty.append(at)
    if len(stands) + len(empty) < SPOTS:
        return None
    named = stream.shuffled([(homes[key], key) for key in stands] + [(at, "") for at in empty])
    letters = list(zip(LETTERS, named, strict=False))
    scene = Scene(
        view,
        mirrored=bool(stream.integer(2)),
        upside=bool(stream.integer(2)),
        lies=tuple(lies_row(lie) for lie in misbuilt(unit, wrong)),
        spots=tuple(Option(at, key) for at, (_, key) in letters if key),
    )
    places = tuple(OpenPlace(at, *place) for at, (place, key) in letters if not key)
    return Opened(letter, scene, places, _round([place for place, _ in named]))


class Near(Record, frozen=True):
    """The built unit round some parts, with letters at them and at what stands near.

    Attributes
    ----------
    scene : Scene
    window_mm : tuple of float
        What of the view is shown: least z and height, most z and height.
    """

    scene: Scene
    window_mm: tuple[float, ...]


def near_scene(
    unit: Unit, stream: Stream, view: str, wanted: Sequence[str], among: Sequence[str] | None = None
) -> Near | None:
    """The built unit round some parts; None where the view shows them covered.

    Parameters
    ----------
    unit : Unit
    stream : Stream
    view : str
    wanted : sequence of str
        What must have a letter.
    among : sequence of str, optional
        What else may have one, parts or single solids; left out, whatever stands near.
    """
    homes, stream = places_seen(unit, view), stream.child("near")
    if among is not None:
        homes = homes | solids_seen(unit, view)
        homes = {key: homes[key] for key in (*wanted, *among) if key in homes}
    if not set(wanted) <= homes.keys():
        return None
    others = sorted((key for key in homes if key not in wanted),
                    key=lambda key: math.dist(homes[key], homes[wanted[0]]))  # fmt: skip
    named = [*wanted, *stream.shuffled(others[: SPOTS + 2])[: SPOTS - len(wanted)]]
    if len(named) < LEAST:
        return None
    there = dict.fromkeys([*keys_of(unit, view), *named])
    scene = Scene(
        view,
        mirrored=bool(stream.integer(2)),
        upside=bool(stream.integer(2)),
        lies=tuple(lies_row(lie_of(unit, view, key)) for key in there),
        spots=tuple(
            Option(letter, key)
            for letter, key in zip(LETTERS, stream.shuffled(named), strict=False)
        ),
    )
    return Near(scene, _round([homes[key] for key in named]))


class Hand(Record, frozen=True):
    """Parts in hand, and the unit without them and without others of their kind.

    Attributes
    ----------
    near : Near
        The unit without them; no part in it has a letter.
    places : tuple of OpenPlace
        Where they can be put.
    parts : tuple of Lies
        Each as it is held at first.
    lines : tuple of Option
        The same, by id and name.
    """

    near: Near
    places: tuple[OpenPlace, ...]
    parts: tuple[Lies, ...]
    lines: tuple[Option, ...]


def hand_scene(
    unit: Unit,
    stream: Stream,
    view: str,
    hand: Sequence[str],
    taken: Sequence[str],
    without: Collection[str] = (),
) -> Hand | None:
    """Rings in hand, to be put into the unit; None where the view does not show all their places.

    Parameters
    ----------
    unit : Unit
    stream : Stream
    view : str
    hand : sequence of str
        What is in hand.
    taken : sequence of str
        What else is not in the unit: its places are offered too.
    without : collection of str
        What is not shown at all.
    """
    homes, stream = places_seen(unit, view), stream.child("hand")
    away = [*hand, *(one for one in taken if one not in hand)]
    away = [one for one in dict.fromkeys(away) if one in homes and _round_its_axis(unit, view, one)]
    if not set(hand) <= set(away) or len(away) < len(hand) + 2:
        return None
    near = sorted(away[len(hand) :], key=lambda key: math.dist(homes[key], homes[hand[0]]))
    away = [*hand, *near[: SPOTS - len(hand)]]
    places = []
    for letter, key in zip(LETTERS, stream.shuffled(away), strict=False):
        ends = lie_of(unit, view, key).z_mm
        places.append(OpenPlace(letter, round(sum(ends) / 2, 2), homes[key][1]))
    held = []
    for key in hand:
        lie = lie_of(unit, view, key)
        held.append(lies_row(turned_over(lie) if lie.heavy and stream.integer(2) else lie))
    scene = Scene(
        view,
        mirrored=bool(stream.integer(2)),
        upside=bool(stream.integer(2)),
        lies=tuple(lies_row(lie_of(unit, view, key))
                   for key in keys_of(unit, view) if key not in away and key not in without),
    )  # fmt: skip
    window = _round([(one.z_mm, one.height_mm) for one in places])
    lines = tuple(Option(key, solids_of(unit, view, key)[0].name) for key in hand)
    return Hand(Near(scene, window), tuple(places), tuple(held), lines)


class Look(Record, frozen=True):
    """One of several pictures to choose from: a place of the unit, built by somebody.

    Attributes
    ----------
    letter : str
    near : Near
        No part in it has a letter.
    told : tuple of str
        What is described to a hand, in an order of its own.
    """

    letter: str
    near: Near
    told: tuple[str, ...]


def four_looks(
    unit: Unit, stream: Stream, first: Built, others: Sequence[Built]
) -> tuple[Look, ...] | None:
    """A place of the unit four times: built rightly, with one thing turned over, with another
    turned over, with one left out; None where too little can be wrong near the first.

    Parameters
    ----------
    unit : Unit
    stream : Stream
    first : Built
        Something turned over that the place is chosen for.
    others : sequence of Built
        What else can be wrong; the nearest are taken.
    """
    view, homes = first.view, places_seen(unit, first.view)
    if first.parts[0] not in homes:
        return None
    near = sorted(
        (one for one in others
         if one.view == view and one.parts != first.parts and one.parts[0] in homes
         and one.how in ("turned", "missing")),
        key=lambda one: math.dist(homes[one.parts[0]], homes[first.parts[0]]),
    )  # fmt: skip
    near = [one for one in near
            if math.dist(homes[one.parts[0]], homes[first.parts[0]]) < NEAR_MM]  # fmt: skip
    missing = next((one for one in near if one.how == "missing"), None)
    more = next((one for one in near if one.how == "turned"), None)
    if missing is None or more is None:
        return None
    wrongs = [(one.how, one.parts) for one in (first, missing, more)]
    return _looks(unit, stream, view, [("right", ()), *wrongs])


def looks_in_turn(
    unit: Unit, stream: Stream, firsts: Sequence[Built], others: Sequence[Built]
) -> tuple[Look, ...] | None:
    """Four looks at the first place that has them; None where no place has."""
    turned = [one for one in firsts if one.how == "turned"]
    return next(filter(None, (four_looks(unit, stream, one, others) for one in turned)), None)


def _looks(
    unit: Unit, stream: Stream, view: str, wrongs: Sequence[tuple[str, tuple[str, ...]]]
) -> tuple[Look, ...] | None:
    """The same place of the unit several times, each time built otherwise; None where covered."""
    homes = places_seen(unit, view)
    stream, keys = stream.child("looks"), [key for _, some in wrongs for key in some]
    if not keys or not set(keys) <= homes.keys():
        return None
    middle = (sum(homes[key][0] for key in keys) / len(keys), homes[keys[0]][1])
    rest = sorted((key for key in homes if key not in keys),
                  key=lambda key: math.dist(homes[key], middle))  # fmt: skip
    told = list(dict.fromkeys([*keys, *rest[:TOLD]]))
    ends = {key: around(solids_of(unit, view, key)) for key in keys}
    window = _round([(z, homes[key][1]) for key in keys for z in (ends[key][0], ends[key][2])])
    mirrored, upside = bool(stream.integer(2)), bool(stream.integer(2))
    made = []
    for letter, (how, some) in zip(LETTERS, stream.shuffled(list(wrongs)), strict=False):
        lies = []
        for key in keys_of(unit, view):
            lie = lie_of(unit, view, key)
            if key in some and how == "missing":
                continue
            lies.append(lies_row(turned_over(lie) if key in some else lie))
        scene = Scene(view, mirrored, upside, tuple(lies))
        made.append(Look(letter, Near(scene, window), tuple(stream.shuffled(told))))
    return tuple(made)


def _round_its_axis(unit: Unit, view: str, key: str) -> bool:
    """Whether a part lies round one axis, as a ring does."""
    own = solids_of(unit, view, key)
    axes = {one.solid.axis for one in own}
    _, low, _, high = around(own)
    height = dict(view_of(unit, view).axes)
    return len(axes) == 1 and abs((low + high) / 2 - height[own[0].solid.axis]) < _SAME_MM


def _round(places: Sequence[tuple[float, float]]) -> tuple[float, ...]:
    """What is shown round some places."""
    zs, ys = zip(*places, strict=True)
    window = (min(zs) - ROUND_MM, min(ys) - ROUND_MM, max(zs) + ROUND_MM, max(ys) + ROUND_MM)
    return tuple(round(one, 1) for one in window)


def scene_of(
    unit: Unit,
    stream: Stream,
    view: str,
    there: Iterable[str],
    spots: Iterable[str] = (),
    lies: Mapping[str, Lie] | None = None,
) -> Scene:
    """A picture from a side of the learner's own, its letters in an order of their own.

    Parameters
    ----------
    unit : Unit
    stream : Stream
    view : str
        The section.
    there : iterable of str
        The parts that stand there; those that the view does not show are left out.
    spots : iterable of str
        The parts that can be pointed at.
    lies : mapping of str to Lie, optional
        Those that lie otherwise than in the unit.
    """
    shown, others = views_of_parts(unit), lies or {}
    stream = stream.child("scene")
    found = [others.get(part) or lie_of(unit, view, part)
             for part in there if view in shown.get(part, ())]  # fmt: skip
    named = stream.shuffled([part for part in spots if view in shown.get(part, ())])
    return Scene(
        view,
        mirrored=bool(stream.integer(2)),
        upside=bool(stream.integer(2)),
        lies=tuple(lies_row(one) for one in found),
        spots=tuple(Option(LETTERS[k], part) for k, part in enumerate(named)),
    )


def lies_in(scene: Scene) -> tuple[Lie, ...]:
    """How everything in a scene lies, as the models take it."""
    return tuple(
        Lie(one.part, one.heavy, (one.front_mm, one.rear_mm), one.reach_mm) for one in scene.lies
    )


def held_in(hand: Hand) -> dict[str, Lie]:
    """How each part in hand is held, as the models take it."""
    return {one.part: Lie(one.part, one.heavy, (one.front_mm, one.rear_mm), one.reach_mm)
            for one in hand.parts}  # fmt: skip


def lies_row(lie: Lie) -> Lies:
    """How a part lies, as it is stored."""
    ends = (round(one, 3) for one in (*lie.z_mm, lie.reach_mm))
    return Lies(lie.part, lie.heavy, *ends)
