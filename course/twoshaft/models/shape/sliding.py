"""Gears that are slid into mesh: whether their way brings them to all that they must meet.

A gear that no synchroniser serves is slid in, or held by a sleeve with dogs; the second kind
faces its mate all the time. A sliding idler meets the gears of two shafts at once.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from twoshaft.units.findings import Finding
from twoshaft.units.sections.geartrain import GearEngaged, GearTrain, Mesh
from twoshaft.units.sections.shapes import GearSolid
from twoshaft.units.unit import Unit

LEVER_MOST = 2.0
"""A lever moves a gear at most so many times as far as its rail: common practice, no source."""

Gears = Mapping[tuple[str, str], GearSolid]
"""The solids that are gears, by mesh and side."""


def slid(train: GearTrain) -> dict[str, tuple[Mesh, ...]]:
    """Meshes that a gear may be slid into, by the id of the gear that is selected.

    Parameters
    ----------
    train : GearTrain

    Returns
    -------
    dict
        The meshes it engages; where what slides is an idler, the others of its shaft as well.

    Examples
    --------
    >>> {gear: [mesh.id for mesh in meshes] for gear, meshes in slid(unit.gear_train).items()}
    {'reverse': ['mesh-idler', 'mesh-reverse']}
    """
    synchronised = {gear for one in train.synchronisers for gear in one.gears}
    return {
        gear.id: tuple(_with_idler(train, gear))
        for gear in train.gears
        if gear.id not in synchronised
    }


def _with_idler(train: GearTrain, gear: GearEngaged) -> Iterator[Mesh]:
    engaged = [mesh for mesh in train.meshes if mesh.id in gear.engages]
    idlers = {mesh.loose for mesh in engaged} - {train.input, train.driven_from, train.turned_last}
    for mesh in train.meshes:
        shafts = {mesh.driving.shaft, mesh.driven.shaft}
        if mesh in engaged or (mesh.loose is None and shafts & idlers):
            yield mesh


def missed(unit: Unit, gears: Gears) -> Iterator[Finding]:
    """Sliding gears that cannot get to what they must mesh with.

    Parameters
    ----------
    unit : Unit
        With a gear train; how far rails move is taken from its shift mechanism, where it has one.
    gears : mapping
        Its solids that are gears, by mesh and side.

    Examples
    --------
    >>> list(missed(unit, {}))
    []
    """
    train = unit.gear_train
    for gear, meshes in slid(train).items():
        first = next(mesh for mesh in meshes if mesh.loose is not None)
        shaft = first.loose
        slider = _on(gears, first, shaft)
        if slider is None:
            continue
        least, most = -math.inf, math.inf
        mates = []
        for mesh in meshes:
            moved = _on(gears, mesh, shaft) or slider
            mate = _on(gears, mesh, shaft, other=True)
            touches = shaft in (mesh.driving.shaft, mesh.driven.shaft)
            if mate is None or not touches or moved.part != slider.part:
                continue
            mates.append(mate)
            least = max(least, mate.z_mm[0] - moved.z_mm[1])
            most = min(most, mate.z_mm[1] - moved.z_mm[0])
        where = unit.where("shapes", "solids", slider.id, "z_mm")
        if least >= most:
            yield Finding(
                where,
                f"gear '{slider.id}' slides for {gear}, and at no place does it face "
                f"{' and '.join(repr(one.id) for one in mates)} at the same time",
                "move one of them along the shafts, or give it wider teeth",
            )
            continue
        away, reach = max(least, -most, 0.0), _reach(unit, gear)
        if away and away >= reach * LEVER_MOST:
            yield Finding(
                where,
                f"gear '{slider.id}' must slide more than {away:g} mm to face "
                f"{' and '.join(repr(one.id) for one in mates)}, and the rail of {gear} moves "
                f"{reach:g} mm",
                "correct its z, that of what it meets, or the range of the rail",
            )


def _on(gears: Gears, mesh: Mesh, shaft: str | None, other: bool = False) -> GearSolid | None:
    """The gear of a mesh that sits on a shaft, or the one that does not."""
    side = "driving" if (mesh.driving.shaft == shaft) != other else "driven"
    return gears.get((mesh.id, side))


def _reach(unit: Unit, gear: str) -> float:
    """How far the rail of a gear moves for it [mm]; without a shift mechanism nothing is known."""
    shift = unit.shift_if_any
    if shift is None:
        return math.inf
    ranges = {body.id: body.range_mm for body in shift.passive}
    for rail in shift.rails:
        if gear in (rail.low, rail.high):
            low, high = ranges[rail.body]
            return abs(low if gear == rail.low else high)
    return math.inf
