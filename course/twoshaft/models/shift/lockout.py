"""What brings a lockout about: tried by leaving everything else out."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from twoshaft.models.shift.mechanism import mechanism
from twoshaft.models.shift.proof import lock_with
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Body, Follows, MustBlock, Passive, Shift

STEP_MM = 1.0
"""Half as fine as the rig's grid: what stops a shift stops it on either."""
Part = Body | Passive


@dataclass(frozen=True)
class Stopped:
    """What stops a direct shift.

    Attributes
    ----------
    devices : tuple of tuple of str
        Lockouts of which each stops it by itself; where only all of them together do, one that
        holds them all. A lockout is named by its bodies that stand still or are pushed. Empty:
        nothing but rails and finger is needed, so no lockout brings it about.

    Examples
    --------
    >>> what_stops(unit.shift, unit.shift.must_block[0]).devices
    (('lockout-plate',),)
    """

    devices: tuple[tuple[str, ...], ...]


@kept()
def what_stops(shift: Shift, block: MustBlock) -> Stopped:
    """Which bodies bring it about that a direct shift is stopped.

    The mechanism is searched with rails, finger and interlock alone, and again with each lockout
    by itself. A lockout is what shares a layer without rails; or, in a layer with rails, one body
    that no hand carries and that is no rail.

    Parameters
    ----------
    shift : Shift
    block : MustBlock

    Examples
    --------
    >>> from twoshaft.units.sections.shift import MustBlock
    >>> what_stops(unit.shift, MustBlock(earlier="first", later="second")).devices
    ()
    """
    rails = {rail.body for rail in shift.rails}
    layers = {body.layer for body in shift.passive if body.id in rails}
    groups: dict[str, list[Part]] = {}
    every: tuple[Part, ...] = (*shift.bodies, *shift.passive)
    for body in every:
        if body.id in rails or (body.layer in layers and _carried(body)):
            continue
        groups.setdefault(body.id if body.layer in layers else body.layer, []).append(body)

    def stops(chosen: Callable[[str], bool]) -> bool:
        left = {body.id for id, group in groups.items() if not chosen(id) for body in group}
        only = shift.model_copy(
            update={
                "bodies": tuple(body for body in shift.bodies if body.id not in left),
                "passive": tuple(body for body in shift.passive if body.id not in left),
            }
        )
        return lock_with(mechanism(only, STEP_MM), block).verdict == "holds"

    if not groups or stops(lambda _: False):
        return Stopped(())
    alone = [id for id in groups if stops(id.__eq__)]
    if not alone and not stops(lambda _: True):
        return Stopped(())
    devices = [groups[id] for id in alone] or [[b for group in groups.values() for b in group]]
    return Stopped(tuple(tuple(body.id for body in d if not _carried(body)) for d in devices))


def _carried(body: Part) -> bool:
    return isinstance(body, Body) and body.follows is not Follows.FIXED


def name_of(shift: Shift, device: tuple[str, ...]) -> str:
    """The name of a lockout: its bodies in words.

    Examples
    --------
    >>> name_of(unit.shift, ("lockout-plate",))
    'Lockout plate'
    """
    every: tuple[Part, ...] = (*shift.bodies, *shift.passive)
    return " and ".join(body.name for body in every if body.id in device)
