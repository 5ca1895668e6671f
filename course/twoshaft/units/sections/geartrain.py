"""The gear-train section: who meshes with whom, and what turns with what.

Bodies are the shafts, plus a loose gear for every mesh that a synchroniser or a sliding gear
engages. Tooth counts are data; every ratio is computed.
"""

from __future__ import annotations

from pydantic import Field, model_validator

from twoshaft.errors import UnitFileError
from twoshaft.units.nearest import meant
from twoshaft.units.sections.order import Id, Ids, Section, Text

TYPICAL_MODULE_MM = 2.0
"""Usual in gearboxes of cars, 1.5 to 3 mm (common practice, no source)."""


class Gear(Section):
    """One gear of a mesh: the shaft it sits on and its teeth."""

    shaft: Id
    """The shaft that it sits on."""
    teeth: int = Field(ge=6, le=300)
    """Its number of teeth."""


class Mesh(Section):
    """Two external gears in mesh.

    ``loose`` names the shaft whose gear of this mesh turns freely until it is engaged; left
    out, both gears are fixed on their shafts.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    driving: Gear
    """The gear nearer to the input."""
    driven: Gear
    """The gear that it drives."""
    loose: Id | None = None
    """The shaft whose gear turns freely until it is engaged; left out where both are fixed."""
    module_mm: float | None = Field(default=None, gt=0.5, le=10)
    """Normal module; left out where it is not known: the gear is then drawn by a usual one [mm]."""
    helix_deg: float = Field(default=0.0, ge=0, le=45)
    """Helix angle; 0 for straight teeth [degrees]."""

    @property
    def drawn_module_mm(self) -> float:
        """Module that the gear is drawn by: its own, else a usual one [mm]."""
        return TYPICAL_MODULE_MM if self.module_mm is None else self.module_mm

    @model_validator(mode="after")
    def _loose_is_a_side(self) -> Mesh:
        if self.loose not in (None, self.driving.shaft, self.driven.shaft):
            raise ValueError("loose must be the shaft of one of the mesh's two gears")
        if self.driving.shaft == self.driven.shaft:
            raise ValueError("the two gears of a mesh sit on different shafts")
        return self


class ShaftDistance(Section):
    """Centre distance between two parallel shafts, in mm."""

    between: tuple[Id, Id]
    """The two shafts."""
    mm: float = Field(gt=10, le=500)
    """Centre distance [mm]."""


class GearEngaged(Section):
    """A gear that can be selected: the loose meshes that are engaged for it."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The gear, in words, as third gear."""
    engages: Ids = Field(min_length=1)
    """The loose meshes that are engaged for it."""
    reverse: bool = False
    """It turns the output the other way."""


class SideGearPlay(Section):
    """Axial play that the side gears need, and the thrust washers that set it, all in mm."""

    play_mm: tuple[float, float]
    """Least and most axial play [mm]."""
    washers_mm: tuple[float, ...] = Field(min_length=2)
    """Thicknesses of the thrust washers on the shelf [mm]."""

    @model_validator(mode="after")
    def _in_order(self) -> SideGearPlay:
        low, high = self.play_mm
        if not 0 < low < high <= 2 or not all(0.2 <= one <= 5 for one in self.washers_mm):
            raise ValueError("play_mm needs a low and a higher limit, washers 0.2 to 5 mm")
        return self


class Differential(Section):
    """Bevel differential with equal side gears: the ring gear's case carries two outputs."""

    case: Id
    """The shaft that is its case, with the ring gear."""
    left: Id
    """The output on the left."""
    right: Id
    """The output on the right."""
    side_teeth: int = Field(ge=8, le=60)
    """Teeth of a side gear."""
    pinion_teeth: int = Field(ge=6, le=40)
    """Teeth of a differential pinion."""
    side_gear_play: SideGearPlay | None = None
    """Play of the side gears and the washers that set it."""


class Synchroniser(Section):
    """A synchroniser: ring cones and the ring gap that shows their wear."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The synchroniser, in words."""
    gears: Ids = Field(min_length=1, max_length=2)
    """The gears that it serves, one or two."""
    mean_diameter_mm: float = Field(gt=10, le=300)
    """Mean diameter of the cone [mm]."""
    half_angle_deg: float = Field(gt=2, le=20)
    """Half angle of the cone [degrees]."""
    friction: tuple[float, float, float]
    """Friction of the cone: low, typical, high."""
    ring_gap_new_mm: float = Field(gt=0, le=5)
    """Gap between a new ring and its gear [mm]."""
    ring_gap_least_mm: float = Field(gt=0, le=5)
    """Gap below which the ring is worn out [mm]."""


class SpeedDrive(Section):
    """The drive of the speed sensor or cable: its driving gear and where it sits."""

    shaft: Id
    """The shaft that drives it."""
    driving_teeth: int = Field(ge=1, le=100)
    """Teeth of the driving gear."""
    driven_teeth: int = Field(ge=1, le=200)
    """Teeth of the pinion."""


class GearTrain(Section):
    """Shafts, meshes, gears, synchronisers; final drive and differential where there are any."""

    input: Id
    """The input shaft."""
    output: Id | None = None
    """The shaft that leaves a unit without a differential; left out where there is one."""
    shafts: Ids = Field(min_length=2)
    """Every shaft, the case of the differential among them."""
    meshes: tuple[Mesh, ...] = Field(min_length=2)
    """Every pair of gears in mesh."""
    final_drive: Id | None = None
    """The mesh that drives the case of the differential; left out without a differential."""
    gears: tuple[GearEngaged, ...] = Field(min_length=1)
    """Every gear that can be selected."""
    differential: Differential | None = None
    """The differential; left out where the output shaft leaves the unit as it is."""
    distances: tuple[ShaftDistance, ...] = ()
    """Centre distances, where they are known."""
    synchronisers: tuple[Synchroniser, ...] = ()
    """Every synchroniser."""
    speed_drive: SpeedDrive | None = None
    """Drive of the speed sensor or cable."""
    rolling_radius_mm: float = Field(default=300.0, gt=50, le=1000)
    """Rolling radius of the road wheels [mm]."""
    least_count_turns: float = Field(default=0.125, gt=0, le=1)
    """Smallest part of a turn that is counted by eye."""

    @property
    def turned_last(self) -> str:
        """The shaft whose turns a gear's ratio is about: the differential's case, or the output."""
        last = self.differential.case if self.differential else self.output
        assert last is not None  # the section is not valid without one of them
        return last

    @property
    def outputs(self) -> tuple[str, ...]:
        """The shafts that leave the unit: both sides of the differential, or the output shaft."""
        bevel = self.differential
        return (bevel.left, bevel.right) if bevel else (self.turned_last,)

    @property
    def final_mesh(self) -> Mesh | None:
        """The final drive, None where there is none."""
        return next((mesh for mesh in self.meshes if mesh.id == self.final_drive), None)

    @property
    def driven_from(self) -> str:
        """The shaft that the input drives: with the final drive's pinion, or the output."""
        final, last = self.final_mesh, self.turned_last
        if final is None:
            return last
        return next(gear.shaft for gear in (final.driving, final.driven) if gear.shaft != last)

    def needed_differential(self) -> Differential:
        """The differential; UnitFileError where there is none."""
        if self.differential is None:
            raise UnitFileError(
                "the gear train has no differential", mend="add 'differential' to it"
            )
        return self.differential

    def needed_speed_drive(self) -> SpeedDrive:
        """The speed drive; UnitFileError where there is none."""
        if self.speed_drive is None:
            raise UnitFileError("the gear train has no speed drive", mend="add 'speed drive' to it")
        return self.speed_drive

    def needed_side_gear_play(self) -> SideGearPlay:
        """The play of the side gears; UnitFileError where none is given."""
        play = self.needed_differential().side_gear_play
        if play is None:
            raise UnitFileError(
                "the differential has no side-gear play", mend="add 'side gear play' to it"
            )
        return play

    @model_validator(mode="after")
    def _names_are_known(self) -> GearTrain:
        shafts, meshes = set(self.shafts), {mesh.id: mesh for mesh in self.meshes}
        for mesh in self.meshes:
            for side in (mesh.driving, mesh.driven):
                if side.shaft not in shafts:
                    raise ValueError(
                        f"mesh {mesh.id} sits on {side.shaft}, which is no shaft; "
                        f"{meant(side.shaft, shafts)}"
                    )
        bevel = self.differential
        if (bevel is None) == (self.output is None):
            raise ValueError("give either a differential or, where there is none, the output shaft")
        if bevel is None and self.final_drive is not None:
            raise ValueError("a final drive drives the case of a differential, and there is none")
        sides = () if bevel is None else (bevel.case, bevel.left, bevel.right)
        for shaft in (self.input, *(sides or (self.output,))):
            if isinstance(shaft, str) and shaft not in shafts:
                raise ValueError(f"{shaft} is no shaft; {meant(shaft, shafts)}")
        final = self.final_mesh
        if bevel and (final is None or bevel.case not in (final.driving.shaft, final.driven.shaft)):
            raise ValueError("final_drive must name a mesh with the differential's case")
        for gear in self.gears:
            for mesh_id in gear.engages:
                if mesh_id not in meshes or meshes[mesh_id].loose is None:
                    raise ValueError(
                        f"gear {gear.id} engages {mesh_id}, which is no loose mesh; "
                        f"{meant(mesh_id, [m.id for m in self.meshes if m.loose])}"
                    )
        known = {gear.id for gear in self.gears}
        for synchroniser in self.synchronisers:
            if not set(synchroniser.gears) <= known:
                raise ValueError(
                    f"synchroniser {synchroniser.id} serves a gear that is not there; "
                    f"{meant(next(g for g in synchroniser.gears if g not in known), known)}"
                )
        return self
