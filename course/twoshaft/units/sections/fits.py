"""The fits section: what is pressed, driven, pinned, sealed and staked.

Lengths are in millimetres, deviations in micrometres from the nominal size, temperatures in
degrees Celsius. A tolerance is a zone of ISO 286 (``H7``, ``p6``) or two deviations.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Any, ClassVar, Literal

from pydantic import Field, StringConstraints, model_validator

from twoshaft.units.nearest import meant
from twoshaft.units.sections.order import Id, Ids, Section, Text
from twoshaft.units.standard_parts import filled_in, seal_sizes

Mm = Annotated[float, Field(gt=0, le=1000)]
ZoneName = Annotated[str, StringConstraints(pattern=r"^[A-Za-z]{1,2}\d{1,2}$")]
Um = Annotated[float, Field(ge=-1000, le=1000)]
Tolerance = ZoneName | tuple[Um, Um]
Mu = Annotated[float, Field(ge=0.02, le=0.4)]
Proud = Annotated[float, Field(ge=-5, le=20)]


class Metal(Section):
    """A metal of a fit."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The metal, in words."""
    elastic_gpa: float = Field(ge=1, le=500)
    """Modulus of elasticity [GPa]."""
    poisson: float = Field(ge=0, le=0.5)
    """Poisson's ratio."""
    expansion_um_per_m_k: float = Field(ge=0.1, le=100)
    """Growth of a metre for each kelvin [µm/(m·K)]."""
    yield_mpa: float = Field(ge=10, le=3000)
    """Yield strength [MPa]."""


class DriveOn(StrEnum):
    """The ring that the press or driver may bear on: the one that is being fitted."""

    OUTER = "outer"
    INNER = "inner"
    BOTH = "both"
    PART = "part"


class PressFit(Section):
    """Two parts that are pressed together, or slid together warm."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The place, in words."""
    parts: Ids = Field(min_length=1)
    """The parts that are fitted."""
    operations: Ids = Field(min_length=1)
    """The operations that fit them."""
    size_mm: float = Field(gt=0, le=120)
    """Nominal diameter of the seat [mm]."""
    hole: Tolerance
    """Tolerance of the hole: a zone of ISO 286 as H7, or two deviations [µm]."""
    shaft: Tolerance
    """Tolerance of the shaft: a zone of ISO 286 as p6, or two deviations [µm]."""
    outer_mm: Mm
    """Outer diameter of the part round the seat."""
    bore_mm: float = Field(default=0, ge=0, le=1000)
    """Bore of the part inside it."""
    length_mm: Mm
    """Length of the seat [mm]."""
    hub_metal: Id
    """Metal of the outer part, by its id."""
    shaft_metal: Id
    """Metal of the inner part, by its id."""
    friction: tuple[Mu, Mu]
    """Low and high, as the seat is prepared."""
    drive_on: DriveOn
    """The ring that is pressed on: outer, inner, both or part."""
    press_kn: float | None = Field(default=None, gt=0, le=500)
    """Force the press of this workshop can give; left out where it is never pressed cold."""
    warm: Literal["hub", "none"] = "none"
    """The part that is warmed for this fit."""
    warmest_c: float | None = Field(default=None, ge=40, le=300)
    """Hottest it may get."""
    carries_nm: float | None = Field(default=None, gt=0, le=5000)
    """Torque the seat must carry by friction alone."""

    @model_validator(mode="after")
    def _holds_together(self) -> PressFit:
        if not self.bore_mm < self.size_mm < self.outer_mm:
            raise ValueError("'bore mm', 'size mm' and 'outer mm' must rise in this order")
        for name in ("hole", "shaft"):
            given = getattr(self, name)
            if isinstance(given, tuple) and given[0] > given[1]:
                raise ValueError(f"the two deviations of '{name}' must rise")
        if self.friction[0] > self.friction[1]:
            raise ValueError("the two values of 'friction' must rise")
        if (self.warm == "none") != (self.warmest_c is None):
            raise ValueError("give 'warmest c' where a part is warmed, and only there")
        if self.warm == "none" and self.press_kn is None:
            raise ValueError("give 'press kn' or say what is warmed")
        return self


class SpringPinPlace(Section):
    """A slotted spring pin that carries a shift force in shear."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The place, in words."""
    parts: Ids = Field(min_length=1)
    """The parts that are fitted."""
    operations: Ids = Field(min_length=1)
    """The operations that fit them."""
    size_mm: Mm
    """Nominal diameter [mm]."""
    planes: Literal[1, 2] = 2
    """Planes in which it is sheared: 1 or 2."""
    hand_n: float = Field(gt=0, le=2000)
    """Hardest pull at the knob."""
    lever_ratio: float = Field(ge=1, le=20)
    """Travel of the knob over travel of what the pin moves."""
    margin: float = Field(default=2, ge=1, le=20)
    """How many times the force the pin must bear."""
    slot: Text
    """Where the slot points."""


class TaperPinPlace(Section):
    """A taper pin; size is that of its small end."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The place, in words."""
    parts: Ids = Field(min_length=1)
    """The parts that are fitted."""
    operations: Ids = Field(min_length=1)
    """The operations that fit them."""
    size_mm: float = Field(ge=0.6, le=50)
    """Diameter of the small end [mm]."""
    length_mm: float = Field(ge=2, le=400)
    """Its length [mm]."""
    proud_mm: tuple[Proud, Proud]
    """How far the large end may stand out when it is home, low and high."""

    @model_validator(mode="after")
    def _rises(self) -> TaperPinPlace:
        if not self.proud_mm[0] <= self.proud_mm[1]:
            raise ValueError("the two values of 'proud mm' must rise")
        return self


class Seal(Section):
    """A shaft seal and how it must sit; ``standard`` names its size."""

    FILLED: ClassVar[frozenset[str]] = frozenset({"outer_mm", "shaft_mm"})

    standard: str | None = None
    """Its size in the tables, shaft x outside x width, as 35x50x8; fills in what is not given."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The place, in words."""
    parts: Ids = Field(min_length=1)
    """The parts that are fitted."""
    operations: Ids = Field(min_length=1)
    """The operations that fit them."""
    outer_mm: float = Field(ge=8, le=300)
    """Outside diameter [mm]."""
    shaft_mm: Mm
    """Diameter of the shaft that the lip runs on [mm]."""
    lip_towards: Literal["oil", "air"]
    """What the lip faces: oil or air."""
    depth_mm: tuple[float, float]
    """Of its face below the housing's, flush is 0; low and high."""
    tilt_mm: float = Field(gt=0, le=2)
    """Most the depth may differ across it."""
    grease: bool = True
    """Lip and cavity are greased."""
    sleeve: bool = False
    """The lip passes splines or a thread and needs a sleeve."""

    @model_validator(mode="before")
    @classmethod
    def _from_the_tables(cls, entry: Any) -> Any:
        if isinstance(entry, dict) and entry.get("standard") is not None:
            return filled_in(entry, seal_sizes(str(entry["standard"])))
        return entry

    @model_validator(mode="after")
    def _holds_together(self) -> Seal:
        if not -5 <= self.depth_mm[0] <= self.depth_mm[1] <= 50:
            raise ValueError("the two values of 'depth mm' must rise, from -5 to 50")
        if self.shaft_mm >= self.outer_mm:
            raise ValueError("'outer mm' must be larger than 'shaft mm'")
        return self


class StakedNut(Section):
    """The collar of a nut, punched into a slot of its shaft."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The place, in words."""
    parts: Ids = Field(min_length=1)
    """The parts that are fitted."""
    operations: Ids = Field(min_length=1)
    """The operations that fit them."""
    fastener: Id
    """Its group among the fasteners."""
    radius_mm: Mm
    """From the axis to the mouth of the slot."""
    slot_mm: Mm
    """Width of the slot round the shaft."""
    tab_mm: Mm
    """Length of the tab along the shaft."""
    depth_mm: Mm
    """How deep the tab must stand in the slot."""
    yield_mpa: float = Field(ge=50, le=2000)
    """Yield strength of the collar [MPa]."""
    tabs: int = Field(default=1, ge=1, le=6)
    """Number of places that are punched in."""
    drag_nm: float = Field(gt=0, le=1000)
    """Torque that tries to turn the nut once its clamp is gone."""
    margin: float = Field(default=2, ge=1, le=20)
    """How many times the drag the stake must hold."""


class Fits(Section):
    """All that the unit file says about its pressed and driven parts."""

    metals: tuple[Metal, ...] = Field(min_length=1)
    """Metals of the fits."""
    presses: tuple[PressFit, ...] = ()
    """What is pressed together or slid together warm."""
    spring_pins: tuple[SpringPinPlace, ...] = ()
    """Slotted spring pins."""
    taper_pins: tuple[TaperPinPlace, ...] = ()
    """Taper pins."""
    seals: tuple[Seal, ...] = ()
    """Shaft seals."""
    staked_nuts: tuple[StakedNut, ...] = ()
    """Nuts that are staked."""

    @model_validator(mode="after")
    def _ids_known(self) -> Fits:
        for kind in ("metals", "presses", "spring_pins", "taper_pins", "seals", "staked_nuts"):
            ids = [entry.id for entry in getattr(self, kind)]
            doubled = {one for one in ids if ids.count(one) > 1}
            if doubled:
                raise ValueError(f"{sorted(doubled)[0]} stands twice in {kind.replace('_', ' ')}")
        metals = {metal.id for metal in self.metals}
        for press in self.presses:
            for named in (press.hub_metal, press.shaft_metal):
                if named not in metals:
                    raise ValueError(
                        f"'{press.id}' names '{named}', which is not in metals; "
                        f"{meant(named, metals)}"
                    )
        return self

    def entry(self, kind: str, identifier: str) -> Section:
        """Give the entry of a list (``presses``, ``seals`` …) by its id; KeyError if none."""
        for entry in getattr(self, kind):
            if entry.id == identifier:
                return entry
        raise KeyError(identifier)
