"""Pictures of the unit that a learner is given: what stands there, how it lies, from which side."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from twoshaft.models.shape import Lie, lie_of, views_of_parts
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option, Record, Row
from twoshaft.units.unit import Unit

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


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


def lies_row(lie: Lie) -> Lies:
    """How a part lies, as it is stored."""
    ends = (round(one, 3) for one in (*lie.z_mm, lie.reach_mm))
    return Lies(lie.part, lie.heavy, *ends)
