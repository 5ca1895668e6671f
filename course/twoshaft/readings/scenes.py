"""Pictures of the unit that a learner is given: what stands there, how it lies, from which side."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence

from twoshaft.models.shape import (
    Built,
    Lie,
    keys_of,
    lie_of,
    misbuilt,
    open_places,
    places_seen,
    views_of_parts,
)
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option, Record, Row
from twoshaft.units.unit import Unit

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
SPOTS, OPEN = 10, 2
"""How many letters an opened unit has, and how many of them stand where nothing is."""
ROUND_MM = 12.0
"""How much is shown round the letters."""
_APART_MM = 8.0


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


def near_scene(unit: Unit, stream: Stream, view: str, wanted: Sequence[str]) -> Near | None:
    """The built unit round some parts; None where the view shows them covered.

    Parameters
    ----------
    unit : Unit
    stream : Stream
    view : str
    wanted : sequence of str
        What must have a letter.
    """
    homes, stream = places_seen(unit, view), stream.child("near")
    if not set(wanted) <= homes.keys():
        return None
    others = sorted((key for key in homes if key not in wanted),
                    key=lambda key: math.dist(homes[key], homes[wanted[0]]))  # fmt: skip
    named = [*wanted, *stream.shuffled(others[: SPOTS + 2])[: SPOTS - len(wanted)]]
    there = keys_of(unit, view)
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


def lies_row(lie: Lie) -> Lies:
    """How a part lies, as it is stored."""
    ends = (round(one, 3) for one in (*lie.z_mm, lie.reach_mm))
    return Lies(lie.part, lie.heavy, *ends)
