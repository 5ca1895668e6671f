"""What stands round a step of the build in one view: its own solids, and what is placed already."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from twoshaft.models.shape.blocking import Body, bodies
from twoshaft.models.shape.pieces import PRESSED_MM
from twoshaft.models.shape.scene import view_of, views_of_parts
from twoshaft.models.shape.section import Drawn
from twoshaft.models.shape.state import fitted_after, on_the_bench, step_shown
from twoshaft.units.unit import Unit

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

_SEEN_MM2 = 0.5


@dataclass(frozen=True, eq=False)
class Around:
    """A step in one view.

    Attributes
    ----------
    view : str
    heights : dict of str to float
        How far below the first axis each axis of the view lies [mm].
    own : tuple of Drawn
        The solids of the step's parts.
    ways : dict of str to str or None
        Where each of them comes from, by its id.
    placed : tuple of Body
        What stands there already, the step's own parts left out.
    beside : tuple of Body
        The step's own parts.

    Examples
    --------
    >>> here, = around_step(unit, ["fit-input-seal"], [])
    >>> [one.solid.id for one in here.own], here.ways
    (['input-seal'], {'input-seal': 'rear'})
    """

    view: str
    heights: dict[str, float]
    own: tuple[Drawn, ...]
    ways: dict[str, str | None]
    placed: tuple[Body, ...]
    beside: tuple[Body, ...]

    def crossed(
        self, area: BaseGeometry, axis: str, some: Iterable[Body], but: Collection[str] = ()
    ) -> list[Body]:
        """The bodies, of some, that an area on an axis runs into; ``but``: solids left out."""
        core, rows = area.buffer(-PRESSED_MM), list(self.heights)
        row = rows.index(axis)
        return [
            body
            for body in some
            if body.drawn.solid.id not in but
            and (abs(body.row - row) <= 1 or body.drawn.solid.kind == "shell")
            and body.area.intersects(core)
            and body.area.intersection(core).area > _SEEN_MM2
        ]


def around_step(unit: Unit, operations: Sequence[str], done: Collection[str]) -> tuple[Around, ...]:
    """What stands round a step, in each view that shows its parts.

    Parameters
    ----------
    unit : Unit
    operations : sequence of str
        Operations of the step.
    done : collection of str
        Operations that are done, in their order.

    Examples
    --------
    >>> [one.view for one in around_step(unit, ["pin-inner-forks"], [])]
    ['rails']
    """
    done = [one for one in done if one not in operations]
    shown = [step_shown(unit, one) for one in operations]
    parts = tuple(dict.fromkeys(part for one in shown for part in one.parts))
    bench, fitted = on_the_bench(unit, done), fitted_after(unit, done)
    base = next((one.on for one in shown if one.on and one.on not in fitted), None)
    if base is None:  # read or worked at what lies on the bench
        bases = (bench.get(part, part if part in bench.values() else None) for part in parts)
        base = next(filter(None, bases), None)
    if base is not None:
        still = {part for part, under in bench.items() if under == base} | {base}
    else:
        still = set(fitted) - set(bench)
    found = []
    for view in dict.fromkeys(one for part in parts for one in views_of_parts(unit).get(part, ())):
        own = tuple(one for one in view_of(unit, view).drawn if one.solid.part in parts)
        ways = {one.solid.id: _way(shown, one) for one in own}
        near = [body for body in bodies(unit) if body.view == view]
        found.append(
            Around(
                view,
                dict(view_of(unit, view).axes),
                own,
                ways,
                tuple(b for b in near if b.part in still and b.part not in parts),
                tuple(b for b in near if b.part in parts),
            )
        )
    return tuple(found)


def _way(shown, one: Drawn) -> str | None:
    step = next((step for step in shown if one.solid.part in step.parts), shown[0])
    return (one.solid.way or step.way) if step.way else None
