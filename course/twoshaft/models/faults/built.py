"""The unit as it was built: every model's input with the changes that misbuilds made to it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.models.shift import with_misbuilds
from twoshaft.units.sections.faults import (
    BoltChange,
    FaultChange,
    FilmChange,
    HubChange,
    LeftOut,
    Misbuild,
    SettingChange,
    ShiftChange,
    SpeedDriveChange,
    WheelChange,
)
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.sections.shift import Shift
from twoshaft.units.unit import Unit

Touched = frozenset[str]
"""Models' inputs: ``shift``, ``train``, ``order``, ``setting ID`` and ``joint ID``."""

PARTS = ("shift", "setting", "joint", "train", "order")


C = TypeVar("C")


@dataclass(frozen=True)
class AsBuilt:
    """A unit as it was built.

    Attributes
    ----------
    unit : Unit
        As it should be.
    shift_if_any : Shift or None
        The mechanism with its misbuilds.
    train_if_any : GearTrain or None
        With the wheels that were fitted.
    settings, bolts, films, hubs : tuple
        Changes of bearing pairs, bolts, films and synchronisers.
    left_out : frozenset of str
        Operations not done.

    Examples
    --------
    >>> as_built(unit, [unit.faults.misbuild_by_id("magnet-left-out")]).left_out
    frozenset({'fit-magnet'})
    """

    unit: Unit
    shift_if_any: Shift | None
    train_if_any: GearTrain | None
    settings: tuple[SettingChange, ...] = ()
    bolts: tuple[BoltChange, ...] = ()
    films: tuple[FilmChange, ...] = ()
    hubs: tuple[HubChange, ...] = ()
    left_out: frozenset[str] = frozenset()

    @property
    def shift(self) -> Shift:
        """The mechanism; UnitFileError where the unit has none."""
        return self.shift_if_any or self.unit.shift

    @property
    def train(self) -> GearTrain:
        """The gear train; UnitFileError where the unit has none."""
        return self.train_if_any or self.unit.gear_train


def as_built(unit: Unit, misbuilds: Iterable[Misbuild]) -> AsBuilt:
    """Build a unit with some misbuilds in it; their order does not matter.

    Parameters
    ----------
    unit : Unit
    misbuilds : iterable of Misbuild
        Entries of its faults section, no two of which exclude each other.

    Examples
    --------
    >>> built = as_built(unit, [unit.faults.misbuild_by_id("interlocks-left-out")])
    >>> len(built.shift.interlocks), len(unit.shift.interlocks)
    (0, 3)
    """
    wanted = {one.id for one in misbuilds}
    changes = [c for one in unit.faults.misbuilds if one.id in wanted for c in one.changes]
    shift_ids = {change.misbuild for change in changes if isinstance(change, ShiftChange)}
    shift = unit.shift_if_any
    if shift_ids:
        known = [one.id for one in unit.shift.misbuilds]
        in_order = [one for one in known if one in shift_ids]
        shift = with_misbuilds(unit.shift, [*in_order, *sorted(shift_ids - set(known))])
    train = unit.gear_train_if_any
    for change in changes:
        if isinstance(change, WheelChange):
            train = _with_wheel(train or unit.gear_train, change)
        elif isinstance(change, SpeedDriveChange):
            train = _with_speed_drive(train or unit.gear_train, change)

    def of(kind: type[C]) -> tuple[C, ...]:
        return tuple(change for change in changes if isinstance(change, kind))

    left_out = frozenset(change.operation for change in of(LeftOut))
    bolts, films, hubs = of(BoltChange), of(FilmChange), of(HubChange)
    return AsBuilt(unit, shift, train, of(SettingChange), bolts, films, hubs, left_out)


def touches(unit: Unit, misbuild: Misbuild) -> Touched:
    """Give the models' inputs that a misbuild changes.

    Examples
    --------
    >>> sorted(touches(unit, unit.faults.misbuild_by_id("diff-ring-not-home")))
    ['setting differential']
    """
    return frozenset(_input_of(unit, change) for change in misbuild.changes)


def part_of(unit: Unit, misbuild: str) -> str:
    """Name the part of the work that a misbuild belongs to.

    Returns
    -------
    str
        ``shift``, ``setting``, ``joint``, ``train`` or ``order``; of a misbuild that touches
        several, the first of these.

    Raises
    ------
    KeyError
        A misbuild that the unit does not have.

    Examples
    --------
    >>> part_of(unit, "plug-loose"), part_of(unit, "third-wheel-swapped")
    ('joint', 'train')
    """
    parts = {one.split()[0] for one in touches(unit, unit.faults.misbuild_by_id(misbuild))}
    return next(one for one in PARTS if one in parts)


def joint_of(unit: Unit, group: str) -> str:
    """Name the joint of a fastener group: bolts and film of one face act on each other.

    Examples
    --------
    >>> joint_of(unit, "case-bolts"), joint_of(unit, "oil-plugs")
    ('joint case-joint', 'joint oil-plugs')
    """
    return f"joint {unit.fasteners.group(group).face or group}"


def exclude(unit: Unit, one: Misbuild, other: Misbuild) -> bool:
    """Whether two misbuilds cannot be in one unit: both say what the same single thing is.

    Examples
    --------
    >>> thin, without, loose = (
    ...     unit.faults.misbuild_by_id(one)
    ...     for one in ("output-shim-too-thin", "output-shim-left-out", "plug-loose")
    ... )
    >>> exclude(unit, thin, without), exclude(unit, thin, loose)
    (True, False)
    """
    return bool(_said_by(unit, one) & _said_by(unit, other))


def _input_of(unit: Unit, change: FaultChange) -> str:
    if isinstance(change, ShiftChange):
        return "shift"
    if isinstance(change, SettingChange):
        return f"setting {change.support}"
    if isinstance(change, BoltChange):
        return joint_of(unit, change.group)
    if isinstance(change, FilmChange):
        return f"joint {change.face}"
    return "order" if isinstance(change, LeftOut) else "train"


def _with_wheel(train: GearTrain, change: WheelChange) -> GearTrain:
    mesh = next(mesh for mesh in train.meshes if mesh.id == change.mesh)
    gear = getattr(mesh, change.side).model_copy(update={"teeth": change.teeth})
    changed = mesh.model_copy(update={change.side: gear})
    meshes = tuple(changed if one is mesh else one for one in train.meshes)
    return train.model_copy(update={"meshes": meshes})


def _with_speed_drive(train: GearTrain, change: SpeedDriveChange) -> GearTrain:
    if train.speed_drive is None:
        raise UnitFileError(
            "an assembly fault changes the speed drive, and the unit has none",
            mend="add 'speed drive' to the gear train, or leave the assembly fault out",
        )
    drive = train.speed_drive.model_copy(update={f"{change.side}_teeth": change.teeth})
    return train.model_copy(update={"speed_drive": drive})


def _said_by(unit: Unit, misbuild: Misbuild) -> set[tuple]:
    """The single things that a misbuild says something about."""
    said: set[tuple] = set()
    for change in misbuild.changes:
        said |= _said(unit, change)
    return said


def _said(unit: Unit, change: FaultChange) -> set[tuple]:
    if isinstance(change, ShiftChange):
        bodies = next(m for m in unit.shift.misbuilds if m.id == change.misbuild).changes
        return {thing for body in bodies for thing in _said_of_body(body)}
    if isinstance(change, SettingChange):
        return {("ring" if change.ring_off_mm else "shim", change.support)}
    if isinstance(change, BoltChange):
        count = unit.fasteners.group(change.group).count
        what = "torque" if change.torque_share else "state"
        return {(what, change.group, n) for n in change.numbers or range(1, count + 1)}
    if isinstance(change, FilmChange):
        if change.smear is not None:
            return {("smear", change.face, one) for one in change.smear.segments}
        single = "wait" if change.waited_minutes else "thickness"
        return {("coat", change.face, s) for s in change.without_segments} or {
            (single, change.face)
        }
    if isinstance(change, WheelChange):
        return {("teeth", change.mesh, change.side)}
    if isinstance(change, HubChange):
        return {("wear" if change.wear_mm else "way round", change.synchroniser)}
    if isinstance(change, SpeedDriveChange):
        return {("speed drive", change.side)}
    return {("done", change.operation)}


def _said_of_body(change) -> set[tuple]:
    """What is not there has neither a shape nor a spring."""
    if change.remove:
        return {(change.body, what) for what in ("there", "shape", "spring")}
    return {(change.body, "spring" if change.drive is not None else "shape")}
