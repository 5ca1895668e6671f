"""The bearings section: bearings, how a shaft's pair is arranged, its shims and what is measured.

Lengths are nominal, in millimetres; the reader of a unit file turns none of them. A setting is an
axial interference of the pair: above zero it is preload, below zero end play.
"""

from __future__ import annotations

import math
from enum import StrEnum
from typing import Annotated, Any, ClassVar, Literal, Self

from pydantic import Field, model_validator

from twoshaft.units.nearest import meant
from twoshaft.units.sections.order import Id, Section, Text
from twoshaft.units.standard_parts import bearing_sizes, filled_in

Length = Annotated[float, Field(gt=0, le=1000)]
Tolerance = Annotated[float, Field(ge=0, le=2)]


class Arrangement(StrEnum):
    """Which rings are pressed towards each other when the pair is set.

    outer-rings-together: the case presses the outer rings inwards (face to face).
    inner-rings-together: the shaft nut presses the inner rings inwards (back to back).
    """

    OUTER_TOGETHER = "outer-rings-together"
    INNER_TOGETHER = "inner-rings-together"


class ShimPlace(StrEnum):
    """Where the shim sits."""

    BEHIND_OUTER = "behind-outer-ring"
    BEHIND_INNER = "behind-inner-ring"
    UNDER_COVER = "under-cover"
    BETWEEN_OUTER = "between-outer-rings"
    BETWEEN_INNER = "between-inner-rings"


class TermKind(StrEnum):
    """What a measured length of the stack spans.

    case: between the two seats of the outer rings. shaft: between the two seats of the inner
    rings. bearing: a bearing's stand, over both rings, seated. plate: the part of a plate or cover
    that reaches in and backs a ring. joint: anything that lifts a cover or case half off its face
    (a gasket, a film).
    """

    CASE = "case"
    SHAFT = "shaft"
    BEARING = "bearing"
    PLATE = "plate"
    JOINT = "joint"


class _Bearing(Section):
    """A bearing; ``standard`` names one whose sizes need not be typed.

    Number and size of its rolling elements are in no catalogue. Left out they follow from the room
    between the rings, by the proportions of usual bearings (common practice, no source).
    """

    FILLED: ClassVar[frozenset[str]] = frozenset()
    MADE: ClassVar[frozenset[str]] = frozenset()
    KIND: ClassVar[str]

    standard: str | None = None
    """A bearing of the tables by its number, as "30206", in quotes; fills in what is not given."""

    @model_validator(mode="before")
    @classmethod
    def _from_the_tables(cls, entry: Any) -> Any:
        if not isinstance(entry, dict):
            return entry
        if entry.get("standard") is not None:
            name = str(entry["standard"])
            entry = filled_in({**entry, "standard": name}, bearing_sizes(name, cls.KIND))
        sizes = [entry.get(key, entry.get(key.replace(" ", "_"))) for key in _ROOM]
        try:
            bore, outside, stand = (float(size) for size in sizes)
        except (TypeError, ValueError):
            return entry  # said of the field itself
        if not 0 < bore < outside < 10 * bore:
            return entry
        return filled_in(entry, cls._proportions(bore, outside, stand))

    @classmethod
    def _proportions(cls, bore_mm: float, outside_mm: float, stand_mm: float) -> dict[str, float]:
        raise NotImplementedError


_ROOM = ("bore mm", "outside mm", "stand mm")
_ROUND_THE_PITCH = 0.88  # share of the pitch circle that the rolling elements take


def _count(bore_mm: float, outside_mm: float, element_mm: float) -> int:
    return int(_ROUND_THE_PITCH * math.pi * (bore_mm + outside_mm) / 2 / element_mm)


class TaperBearing(_Bearing):
    """A single-row taper roller bearing; e and Y follow from the contact angle (ISO 281)."""

    KIND = "taper"
    MADE = frozenset({"rollers", "roller_length_mm", "roller_diameter_mm"})
    FILLED = MADE | {"bore_mm", "outside_mm", "stand_mm", "contact_angle_deg", "dynamic_kn"}

    kind: Literal["taper"] = "taper"
    """taper, for a taper roller bearing."""
    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What it is called, with its size."""
    bore_mm: Length
    """Bore of the inner ring [mm]."""
    outside_mm: Length
    """Outside diameter of the outer ring [mm]."""
    stand_mm: Length
    """Width over both rings, seated [mm]."""
    contact_angle_deg: float = Field(ge=8, le=35)
    """Contact angle of the outer ring [degrees]."""
    rollers: int = Field(ge=8, le=60)
    """Number of rollers."""
    roller_length_mm: Length
    """Working length of a roller [mm]."""
    roller_diameter_mm: Length
    """Mean diameter of a roller [mm]."""
    roller_half_angle_deg: float = Field(default=1.8, ge=0.5, le=5)
    """Half the taper of a roller [degrees]; usually 1.3 to 2.5 (common practice, no source)."""
    rib_arm_mm: float = Field(default=1.4, gt=0, le=10)
    """Arm of the friction at the rib, from the roller's large end [mm]; usually 1 to 2 (common
    practice, no source)."""
    dynamic_kn: float = Field(gt=0, le=2000)
    """Basic dynamic load rating, from the catalogue [kN] (ISO 281)."""

    @classmethod
    def _proportions(cls, bore_mm: float, outside_mm: float, stand_mm: float) -> dict[str, float]:
        roller = round(0.43 * (outside_mm - bore_mm) / 2, 1)
        return {
            "roller diameter mm": roller,
            "roller length mm": round(0.64 * stand_mm, 1),
            "rollers": _count(bore_mm, outside_mm, roller),
        }

    @model_validator(mode="after")
    def _fits_together(self) -> TaperBearing:
        _ring_space(self, self.roller_diameter_mm, self.rollers)
        return self


class BallBearing(_Bearing):
    """A single-row ball bearing with its working contact angle."""

    KIND = "ball"
    MADE = frozenset({"balls", "ball_diameter_mm"})
    FILLED = MADE | {"bore_mm", "outside_mm", "stand_mm", "dynamic_kn"}

    kind: Literal["ball"]
    """ball, for a ball bearing."""
    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What it is called, with its size."""
    bore_mm: Length
    """Bore of the inner ring [mm]."""
    outside_mm: Length
    """Outside diameter of the outer ring [mm]."""
    stand_mm: Length
    """Width over both rings, seated [mm]."""
    contact_angle_deg: float = Field(default=15, ge=5, le=40)
    """Contact angle under load [degrees]; of a deep-groove bearing usually 10 to 15 (common
    practice, no source)."""
    balls: int = Field(ge=5, le=40)
    """Number of balls."""
    ball_diameter_mm: Length
    """Diameter of a ball [mm]."""
    dynamic_kn: float = Field(gt=0, le=2000)
    """Basic dynamic load rating, from the catalogue [kN] (ISO 281)."""

    @classmethod
    def _proportions(cls, bore_mm: float, outside_mm: float, stand_mm: float) -> dict[str, float]:
        ball = round(0.6 * (outside_mm - bore_mm) / 2, 1)
        return {"ball diameter mm": ball, "balls": _count(bore_mm, outside_mm, ball)}

    @model_validator(mode="after")
    def _fits_together(self) -> BallBearing:
        _ring_space(self, self.ball_diameter_mm, self.balls)
        return self


class _FreeBearing(_Bearing):
    """A bearing that lets its shaft move along: it carries no thrust, and sets nothing."""

    FILLED = frozenset({"bore_mm", "outside_mm", "stand_mm", "dynamic_kn"})

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What it is called, with its size."""
    bore_mm: Length
    """Bore of the inner ring; without one, the diameter that the needles run on [mm]."""
    outside_mm: Length
    """Outside diameter of the outer ring [mm]."""
    stand_mm: Length
    """Its width [mm]."""
    dynamic_kn: float | None = Field(default=None, gt=0, le=2000)
    """Basic dynamic load rating, from the catalogue [kN] (ISO 281)."""

    @classmethod
    def _proportions(cls, bore_mm: float, outside_mm: float, stand_mm: float) -> dict[str, float]:
        return {}

    @model_validator(mode="after")
    def _fits_together(self) -> Self:
        if self.outside_mm <= self.bore_mm:
            raise ValueError(f"{self.id}: the outside is not larger than the bore; swap them")
        return self


class RollerBearing(_FreeBearing):
    """A cylindrical roller bearing, whose rings move along each other."""

    KIND = "roller"
    kind: Literal["roller"]
    """roller, for a cylindrical roller bearing."""


class NeedleBearing(_FreeBearing):
    """A needle bearing, with an inner ring or on the shaft itself."""

    KIND = "needle"
    kind: Literal["needle"]
    """needle, for a needle bearing."""


def _ring_space(bearing: TaperBearing | BallBearing, element_mm: float, count: int) -> None:
    room = (bearing.outside_mm - bearing.bore_mm) / 2
    if room <= 0:
        raise ValueError(f"{bearing.id}: the outside is not larger than the bore; swap them")
    if element_mm >= room:
        raise ValueError(f"{bearing.id}: rolling elements of {element_mm} mm do not fit {room} mm")
    pitch = 3.1416 * (bearing.outside_mm + bearing.bore_mm) / 2
    if count * element_mm > pitch:
        raise ValueError(f"{bearing.id}: {count} rolling elements do not fit round the pitch")


class Material(Section):
    """What a case or shaft is made of, for heat and fits."""

    name: Text
    """What it is, in words."""
    expansion_per_k: float = Field(ge=1e-6, le=4e-5)
    """Growth in length for each kelvin, as a part of it [1/K]."""
    elastic_gpa: float = Field(ge=20, le=400)
    """Modulus of elasticity [GPa]."""
    poisson: float = Field(ge=0.1, le=0.45)
    """Poisson's ratio."""


class StackTerm(Section):
    """One length of the stack, with what its measurement is worth."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The length, in words."""
    kind: TermKind
    """What it spans: case, shaft, bearing, plate or joint."""
    nominal_mm: Length
    """Nominal length [mm]."""
    tolerance_mm: Tolerance
    """How far a sound part may be off, either way [mm]."""
    tool: Text
    """What it is measured with."""
    resolution_mm: float = Field(gt=0, le=0.5)
    """Smallest step that the tool shows [mm]."""
    repeat_mm: Tolerance = 0.0
    """How far repeated readings differ, either way [mm]."""
    calibration_mm: Tolerance = 0.0
    """How far the tool itself may be off, either way [mm]."""


class ShimSet(Section):
    """The thicknesses on the shelf; ``at_most`` may be stacked."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The set, in words."""
    thicknesses_mm: tuple[Annotated[float, Field(gt=0, le=10)], ...] = Field(min_length=1)
    """Every thickness on the shelf, thinnest first [mm]."""
    at_most: int = Field(default=1, ge=1, le=2)
    """How many may be stacked: 1 or 2."""

    @model_validator(mode="after")
    def _rises(self) -> ShimSet:
        if list(self.thicknesses_mm) != sorted(set(self.thicknesses_mm)):
            raise ValueError(f"{self.id}: list the thicknesses once each, thinnest first")
        return self


class Target(Section):
    """What the setting must be: an amount of preload or of end play, between two limits."""

    kind: Literal["preload", "end-play"]
    """preload or end-play."""
    low_mm: float = Field(ge=0, le=1)
    """Least amount of it [mm]."""
    high_mm: float = Field(gt=0, le=1)
    """Most of it [mm]."""

    @model_validator(mode="after")
    def _rises(self) -> Target:
        if not self.low_mm < self.high_mm:
            raise ValueError("the target's low limit is not below its high limit; swap them")
        return self


class Drag(Section):
    """Something that is turned besides the bearings, with its torque at its own shaft.

    ``speed_ratio`` is its speed over that of the turned shaft.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What turns, in words."""
    kind: Literal["seal", "mesh", "other-shaft"]
    """seal, mesh or other-shaft."""
    torque_nm: float = Field(ge=0, le=50)
    """Its torque at its own shaft [N·m]."""
    speed_ratio: float = Field(default=1.0, gt=0, le=50)
    """Its speed over that of the shaft with the cord."""


class Warmth(Section):
    """How far each part rises above the bench temperature when the unit runs."""

    case_k: float = Field(ge=-100, le=150)
    """Rise of the case above the bench [K]."""
    shaft_k: float = Field(ge=-100, le=150)
    """Rise of the shaft above the bench [K]."""
    outer_ring_k: float = Field(ge=-100, le=150)
    """Rise of the outer rings above the bench [K]."""
    inner_ring_k: float = Field(ge=-100, le=150)
    """Rise of the inner rings above the bench [K]."""


class Support(Section):
    """One shaft on its pair of opposed bearings.

    ``case_span_mm`` lies between the seats of the outer rings, ``shaft_span_mm`` between those of
    the inner rings, the shim left out of both; they are what heat acts on. ``stack`` is what is
    measured to find the shim.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The shaft, in words."""
    arrangement: Arrangement
    """Which rings are pressed towards each other: outer-rings-together or inner-rings-together."""
    left: Id
    """The bearing on the left, by its id in types."""
    right: Id
    """The bearing on the right, by its id in types."""
    case: Material
    """What the case is made of."""
    shaft: Material
    """What the shaft is made of."""
    case_span_mm: Length
    """Between the seats of the outer rings, without the shim; heat acts on it [mm]."""
    shaft_span_mm: Length
    """Between the seats of the inner rings, without the shim; heat acts on it [mm]."""
    case_wall_mm: Length
    """Thickness of the case round the outer rings [mm]."""
    case_stiffness_n_per_um: float = Field(default=60, ge=10, le=5000)
    """Force that presses the case apart by a micrometre [N/µm]; of a light-alloy case usually 30
    to 150 (common practice, no source)."""
    outer_fit_um: float = Field(ge=-100, le=200)
    """Interference of the outer rings in the case, below zero clearance [µm]."""
    inner_fit_um: float = Field(ge=-100, le=200)
    """Interference of the inner rings on the shaft, below zero clearance [µm]."""
    stack: tuple[StackTerm, ...] = Field(min_length=1)
    """The lengths that are measured to find the shim."""
    shim_place: ShimPlace
    """Where the shim sits: behind-outer-ring, behind-inner-ring, under-cover,
    between-outer-rings or between-inner-rings."""
    shim_set: Id
    """The set that the shim is taken from."""
    target: Target
    """What the setting must be."""
    radial_load_n: tuple[Annotated[float, Field(ge=0)], Annotated[float, Field(ge=0)]]
    """Radial load on the left and on the right bearing when it runs [N]."""
    axial_load_n: float = 0.0
    """Axial load on the shaft when it runs, to the right above zero [N]."""
    speed_rpm: float = Field(gt=0, le=20000)
    """Speed when it runs [1/min]."""
    drags: tuple[Drag, ...] = ()
    """What is turned besides the bearings."""
    cord_radius_mm: Length
    """Radius that the cord pulls at [mm]."""
    running: Warmth
    """How warm the parts get when it runs."""
    trial_operation: Id | None = None
    """The operation that fits it to be measured."""
    final_operation: Id | None = None
    """The operation that fits it for good, with its shim."""


Bearing = TaperBearing | BallBearing | RollerBearing | NeedleBearing


class Bearings(Section):
    """All bearings of the unit, their pairs and the shims on the shelf."""

    types: tuple[Annotated[Bearing, Field(discriminator="kind")], ...]
    """Every bearing, by id; of ball, taper, roller and needle."""
    shim_sets: tuple[ShimSet, ...] = ()
    """The shims on the shelf."""
    supports: tuple[Support, ...] = ()
    """Every shaft on a pair of bearings that is set; none where no pair is."""

    @model_validator(mode="after")
    def _known(self) -> Bearings:
        types, sets = {b.id: b for b in self.types}, {s.id for s in self.shim_sets}
        for entries, word in ((self.types, "bearing"), (self.supports, "support")):
            ids = [entry.id for entry in entries]
            twice = {i for i in ids if ids.count(i) > 1}
            if twice:
                raise ValueError(f"{word} {min(twice)} is listed twice; rename one")
        for support in self.supports:
            for side in (support.left, support.right):
                if side not in types:
                    raise ValueError(
                        f"support {support.id} names an unknown bearing {side}; "
                        f"{meant(side, types)}"
                    )
                if isinstance(types[side], _FreeBearing):
                    raise ValueError(
                        f"support {support.id}: {side} is a {types[side].kind} bearing, which "
                        "carries no thrust; name the ball or taper bearing that holds the shaft"
                    )
            if support.shim_set not in sets:
                raise ValueError(
                    f"support {support.id} names an unknown shim set {support.shim_set}; "
                    f"{meant(support.shim_set, sets)}"
                )
            terms = [term.id for term in support.stack]
            twice = {term for term in terms if terms.count(term) > 1}
            if twice:
                raise ValueError(f"support {support.id} lists {min(twice)} twice; rename one")
        return self

    def type_by_id(self, bearing: str) -> Bearing:
        """The bearing with this id."""
        return next(entry for entry in self.types if entry.id == bearing)

    def set_by_id(self, bearing: str) -> TaperBearing | BallBearing:
        """The bearing with this id, one of a pair that is set."""
        found = self.type_by_id(bearing)
        if isinstance(found, _FreeBearing):
            raise TypeError(f"{bearing} carries no thrust")
        return found

    def support_by_id(self, support: str) -> Support:
        """The support with this id."""
        return next(entry for entry in self.supports if entry.id == support)

    def shim_set_by_id(self, shim_set: str) -> ShimSet:
        """The shim set with this id."""
        return next(entry for entry in self.shim_sets if entry.id == shim_set)
