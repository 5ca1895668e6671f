"""One group of fasteners of a unit file, ready for the joint model."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from twoshaft.errors import UnitFileError
from twoshaft.models.joint.blind import BlindHole
from twoshaft.models.joint.face import Face, bolt_stiffness
from twoshaft.models.joint.friction import (
    ClampBounds,
    ClampSample,
    Friction,
    clamp_bounds,
    clamp_sample,
    worst_utilisation,
)
from twoshaft.models.joint.stripping import Strip, strip_loads
from twoshaft.models.joint.threads import Seat, Strength, Thread, limits_6g6h, strength
from twoshaft.models.joint.tools import TorqueWrench, setting_with_adapter, torque_at_bolt
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.fasteners import Adapter, FastenerGroup, Tapped, TappedMetal
from twoshaft.units.unit import Unit


@dataclass(frozen=True, eq=False)
class Fastening:
    """A group of like fasteners with its thread, friction, wrench and what it goes into.

    Attributes
    ----------
    group : FastenerGroup
        The entry of the unit file.
    states : dict of Friction
        Every state of the unit file by id; the torque is stated for ``group.state``.
    positions_m : (n, 2) array
        Empty where the unit file has none.
    width_m, joint_n_m3 : float or None
        Of the flange, where there is one.

    Examples
    --------
    >>> bolts = Fastening.of(unit, "case-bolts")
    >>> bolts.thread.name, f"{bolts.torque.m_as('N*m'):g} N·m", bolts.wrench.name
    ('M8', '27 N·m', 'Middle torque wrench')
    >>> f"{bolts.bounds().typical:.1f}", f"{bolts.worst_use('oiled'):.2f} of yield when oiled"
    ('16.8 kilonewton', '0.84 of yield when oiled')
    """

    group: FastenerGroup
    thread: Thread
    seat: Seat
    steel: Strength
    states: dict[str, Friction]
    wrench: TorqueWrench
    adapter: Adapter | None
    metal: TappedMetal | None
    positions_m: np.ndarray
    width_m: float | None
    joint_n_m3: float | None

    @classmethod
    def of(cls, unit: Unit, identifier: str) -> Fastening:
        """Take a group from a unit; cached, so that its flange keeps what it has solved.

        Raises
        ------
        UnitFileError
            If the unit has no such group, or the group names a face that the unit lacks.
        OutOfRangeError
            If a figure of the group lies outside the joint model.
        """
        return _fastening(unit, identifier)

    @property
    def friction(self) -> Friction:
        """Friction of the state that the torque is stated for."""
        return self.states[self.group.state]

    @property
    def torque(self) -> Q:
        """The torque to aim at [N·m]."""
        return Q(self.group.torque_nm[1], "N*m")

    @property
    def setting(self) -> Q:
        """What to set on the wrench, its adapter allowed for [N·m]."""
        if self.adapter is None:
            return self.torque
        length, reach = Q(self.wrench.length_m, "m"), Q(self.adapter.reach_mm, "mm")
        return setting_with_adapter(self.torque, length, reach, Q(self.adapter.angle_deg, "degree"))

    def torque_at(self, setting: Q) -> Q:
        """Torque at the fastener [N·m] for a setting of the wrench, its adapter allowed for."""
        if self.adapter is None:
            return setting
        length, reach = Q(self.wrench.length_m, "m"), Q(self.adapter.reach_mm, "mm")
        return torque_at_bolt(setting, length, reach, Q(self.adapter.angle_deg, "degree"))

    def bounds(self, state: str | None = None, torque: Q | None = None) -> ClampBounds:
        """Give the clamp that a torque leaves, wrench in order, for a state of the threads.

        Left out, the state is the one that the torque is stated for and the torque the one to aim
        at.
        """
        friction = self.states[state or self.group.state]
        return clamp_bounds(
            self.torque if torque is None else torque,
            self.thread,
            self.seat,
            friction,
            self.wrench.tolerance,
        )

    def sample(
        self, count: int, seed: int, state: str | None = None, torque: Q | None = None
    ) -> ClampSample:
        """Tighten so many of them, see `clamp_sample`; state and torque as for `bounds`."""
        return clamp_sample(
            self.torque if torque is None else torque,
            self.thread,
            self.seat,
            self.states[state or self.group.state],
            self.wrench.tolerance,
            count=count,
            seed=seed,
        )

    def worst_use(self, state: str | None = None, torque: Q | None = None) -> float:
        """Largest share of yield: wrench reading low, worst friction; state as for `bounds`.

        Left out, the torque is the most of the window.
        """
        return worst_utilisation(
            Q(self.group.torque_nm[2], "N*m") if torque is None else torque,
            self.thread,
            self.seat,
            self.steel,
            self.states[state or self.group.state],
            self.wrench.tolerance,
        )

    def least_clamp(self, state: str | None = None) -> Q:
        """Smallest clamp: least torque of the window, wrench reads high, high friction [kN]."""
        return self.bounds(state, Q(self.group.torque_nm[0], "N*m")).low

    def most_clamp(self, state: str | None = None) -> Q:
        """Largest clamp: most torque of the window, wrench reads low, low friction [kN]."""
        return self.bounds(state, Q(self.group.torque_nm[2], "N*m")).high

    @property
    def tapped(self) -> Tapped:
        """The thread that the bolts go into; UnitFileError where they go into nuts."""
        if self.group.tapped is None:
            raise UnitFileError(
                f"the fastener group '{self.group.id}' is not tapped into a part",
                mend="add 'tapped' to it",
            )
        return self.group.tapped

    @property
    def tapped_metal(self) -> TappedMetal:
        """The metal that the bolts are tapped into; UnitFileError where they go into nuts."""
        if self.metal is None:
            raise UnitFileError(
                f"the fastener group '{self.group.id}' is not tapped into a part",
                mend="add 'tapped' to it",
            )
        return self.metal

    def strip(self) -> Strip | None:
        """Loads at which bolt and threads fail, 6g bolt in a 6H hole; None for a nut."""
        tapped = self.group.tapped
        if tapped is None or self.metal is None:
            return None
        return strip_loads(
            self.thread,
            self.steel,
            Q(self.metal.tensile_mpa, "MPa"),
            Q(tapped.engagement_mm, "mm"),
            None if tapped.boss_mm is None else Q(tapped.boss_mm, "mm"),
            limits_6g6h(self.thread),
        )

    def blind_hole(self) -> BlindHole | None:
        """The hole, where it is blind; a boss of unknown size is taken as three diameters."""
        tapped = self.group.tapped
        if tapped is None or tapped.blind_depth_mm is None or self.metal is None:
            return None
        boss = tapped.boss_mm / 1e3 if tapped.boss_mm else 3 * self.thread.d_m
        return BlindHole(
            tapped.blind_depth_mm / 1e3,
            tapped.engagement_mm / 1e3,
            boss,
            self.metal.elastic_gpa * 1e9,
            tensile_pa=self.metal.tensile_mpa * 1e6,
        )

    def face(self) -> Face:
        """The flange that they hold down.

        Raises
        ------
        UnitFileError
            If the unit file gives the group no flange.
        """
        return self._face

    @cached_property
    def _face(self) -> Face:
        flange = self.group.flange
        if flange is None:
            raise UnitFileError(
                f"the fastener group '{self.group.id}' has no flange",
                mend="add 'flange' with its thickness",
            )
        assert self.width_m is not None and self.joint_n_m3 is not None  # a flange brings both
        return Face(
            bolts_m=self.positions_m,
            width_m=self.width_m,
            thickness_m=flange.thickness_mm / 1e3,
            bolt_stiffness_n_m=bolt_stiffness(self.thread, Q(self.group.grip_mm, "mm")).m_as("N/m"),
            joint_stiffness_n_m3=self.joint_n_m3,
            gap_m=np.array(flange.gap_um) * 1e-6 if flange.gap_um else None,
            elastic_pa=flange.elastic_gpa * 1e9,
        )


@kept()
def _fastening(unit: Unit, identifier: str) -> Fastening:
    section = unit.fasteners_if_any
    if section is None or identifier not in {group.id for group in section.groups}:
        raise UnitFileError(
            f"the unit has no fastener group '{identifier}'",
            where=unit.where("fasteners"),
            mend="add it to the groups under fasteners",
        )
    group = section.group(identifier)
    thread = Thread.named(group.thread)
    wrench = _by_id(section.wrenches, group.wrench)
    points, width, joint = _flange_of(unit, group)
    return Fastening(
        group=group,
        thread=thread,
        seat=Seat(group.head_mm / 1e3, group.hole_mm / 1e3),
        steel=strength(group.strength, Q(thread.d_m, "m")),
        states={s.id: Friction(s.name, s.thread, s.head, "unit file") for s in section.states},
        wrench=TorqueWrench.of(wrench),
        adapter=_by_id(section.adapters, group.adapter) if group.adapter else None,
        metal=_by_id(section.metals, group.tapped.metal) if group.tapped else None,
        positions_m=points,
        width_m=width,
        joint_n_m3=joint,
    )


def _by_id(entries, identifier: str):
    return next(entry for entry in entries if entry.id == identifier)


def _flange_of(unit: Unit, group: FastenerGroup) -> tuple[np.ndarray, float | None, float | None]:
    """Positions [m], width [m] and joint stiffness [N/m³], from the group or its face."""
    points = np.array(group.positions_mm, dtype=float).reshape(-1, 2) * 1e-3
    width = joint = None
    if group.face is not None:
        faces = () if unit.faces_if_any is None else unit.faces.faces
        face = next((one for one in faces if one.id == group.face), None)
        if face is None:
            raise UnitFileError(
                f"the fasteners '{group.id}' name the face '{group.face}', which is not there",
                where=unit.where("fasteners", "groups", group.id, "face"),
                mend="add the face or give 'positions mm'",
            )
        holes = [hole for hole in face.holes if hole.clamp_n > 0]
        points = np.array([(hole.x_mm, hole.y_mm) for hole in holes]).reshape(-1, 2) * 1e-3
        width, joint = face.form.flange_mm * 1e-3, face.form.bed_n_per_mm3 * 1e9
    if group.flange is not None:
        if group.flange.width_mm is not None:
            width = group.flange.width_mm * 1e-3
        if group.flange.joint_n_per_mm3 is not None:
            joint = group.flange.joint_n_per_mm3 * 1e9
    return points, width, joint
