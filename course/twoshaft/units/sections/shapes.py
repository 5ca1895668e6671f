"""The shapes section: where every part lies and what form it has. Geometry, never a drawing.

z runs along the shafts from the joint face of the clutch housing, or from the front of a case that
is split along them, above zero towards the rear end.
A view folds its plane through its axes, one below the other; *across* counts in that plane from
the solid's axis, above zero towards the next axis of the view. Sizes that another section knows
are referred to; what is left out is filled in from usual proportions.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import AfterValidator, Field, model_validator

from twoshaft.units.nearest import meant
from twoshaft.units.sections.order import Id, Ids, Section, Text

MOST_SOLIDS = 600

Place = Annotated[float, Field(ge=-1500, le=1500)]
Radius = Annotated[float, Field(ge=0, le=1000)]
Size = Annotated[float, Field(gt=0, le=1000)]
ProfilePoint = tuple[Place, Radius]
Spot = tuple[Place, Place]


def _rises(span: tuple[float, float]) -> tuple[float, float]:
    if not span[0] < span[1]:
        raise ValueError("the first z is not below the second; give the front end first")
    return span


Way = Literal["rear", "front", "outside", "by-hand"]

Span = Annotated[tuple[Place, Place], AfterValidator(_rises)]


class AxisLine(Section):
    """A line along which parts lie: a shaft, a rail, the axis of a cover."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What it is the axis of, in words."""
    shaft: Id | None = None
    """The shaft of the gear train that turns on it; left out where none does."""
    beside: Id | None = None
    """The axis from which its place is told; left out for the first one."""
    distance_mm: Size | None = None
    """Distance from that axis; left out where the gear train knows it [mm]."""
    angle_deg: float = Field(default=270.0, ge=-360, le=360)
    """Direction from that axis, seen from the rear, from three o'clock upwards [degrees]."""
    square: bool = False
    """It stands square to the shafts: z counts along itself."""


class View(Section):
    """A section whose plane is folded through several axes."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What is seen, as a heading."""
    axes: Ids = Field(min_length=1)
    """The axes, from top to bottom."""


class Solid(Section):
    """What every solid says."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    part: Id | None = None
    """The part it belongs to; left out for what stays outside the unit."""
    name: Text | None = None
    """What it is, where a part is made of several solids."""
    axis: Id
    """The axis it lies on, or from which its places across are counted."""
    way: Way | None = None
    """Where it comes from, where that differs from its step: rear, front, outside, by-hand."""


class Turned(Solid):
    """A turned solid: shafts, sleeves, hubs, rings, nuts, covers."""

    kind: Literal["turned"]
    """turned, for a solid of revolution."""
    outside_mm: tuple[ProfilePoint, ...] = Field(min_length=2)
    """Outline from front to rear, as z and radius [mm]."""
    inside_mm: tuple[ProfilePoint, ...] = ()
    """Outline of its bore, as z and radius; left out where it is solid [mm]."""
    uncut: bool = False
    """It is drawn whole, as shafts are; else cut and hatched."""
    threaded_mm: tuple[Span, ...] = ()
    """Where it has a thread or splines: front and rear end of each [mm]."""


class GearSolid(Solid):
    """A gear; its diameters follow from the gear train."""

    kind: Literal["gear"]
    """gear, for one gear of a mesh."""
    mesh: Id
    """The mesh of the gear train."""
    side: Literal["driving", "driven"]
    """Which gear of the mesh: driving or driven."""
    z_mm: Span
    """Front and rear end of its teeth [mm]."""
    bore_mm: Size
    """Diameter of its bore, or of the shaft that it is one piece with [mm]."""


class BearingSolid(Solid):
    """A bearing or one of its rings; sizes from the bearings section where it is listed there."""

    kind: Literal["bearing"]
    """bearing, for rings with rolling elements."""
    type: Id | None = None
    """The bearing in the bearings section; left out where sizes are given here."""
    at_mm: Place
    """z of its front end [mm]."""
    large_end: Literal["front", "rear"] = "front"
    """Where the large ends of taper rollers lie, or the open side of the outer ring of a ball
    bearing whose rings are told apart: front or rear."""
    ring: Literal["both", "inner", "outer"] = "both"
    """What belongs to this part: both, inner (with its rollers) or outer."""
    elements: Literal["balls", "rollers", "needles"] | None = None
    """Rolling elements, where no type is named."""
    bore_mm: Size | None = None
    """Bore, where no type is named [mm]."""
    outside_mm: Size | None = None
    """Outside diameter, where no type is named [mm]."""
    width_mm: Size | None = None
    """Width, where no type is named [mm]."""

    @model_validator(mode="after")
    def _has_sizes(self) -> BearingSolid:
        own = (self.elements, self.bore_mm, self.outside_mm, self.width_mm)
        if self.type is None and None in own:
            raise ValueError("name a type, or give elements, bore, outside and width")
        if self.type is None and not (self.bore_mm or 0) < (self.outside_mm or 0):
            raise ValueError("the outside is not larger than the bore; swap them")
        return self


class RingSolid(Solid):
    """A thin ring: seal, circlip, shim, gasket, O-ring or washer."""

    kind: Literal["ring"]
    """ring, for what is thin and round."""
    form: Literal["seal", "circlip", "shim", "gasket", "o-ring", "washer"]
    """What it is."""
    z_mm: Span
    """Its front and rear face [mm]."""
    bore_mm: Size | None = None
    """Its inner diameter; a seal that the fits section lists takes its shaft [mm]."""
    outside_mm: Size | None = None
    """Its outer diameter; a seal that the fits section lists takes its own [mm]."""
    lip: Literal["front", "rear"] | None = None
    """The side that the lip of a seal faces: front or rear."""

    @model_validator(mode="after")
    def _larger_outside(self) -> RingSolid:
        if self.bore_mm and self.outside_mm and self.bore_mm >= self.outside_mm:
            raise ValueError("the outside is not larger than the bore; swap them")
        return self


class Slab(Solid):
    """A flat part: fork, lever, plate, cover, flange, seen on its edge or its face."""

    kind: Literal["slab"]
    """slab, for what has one thickness square to the section."""
    outline_mm: tuple[Spot, ...] = Field(min_length=3)
    """Its outline in the plane of the section, as z and place across [mm]."""
    thick_mm: Size | None = None
    """Its thickness square to the section; usual proportions where left out [mm]."""
    uncut: bool = False
    """It is drawn whole, as what lies behind the plane; else cut and hatched."""


class Room(Section):
    """A room inside a shell, round one axis."""

    axis: Id
    """The axis that it lies round."""
    z_mm: Span
    """Its front and rear end [mm]."""
    radius_mm: Size
    """Its radius [mm]."""


class Boss(Section):
    """What a shell has round an axis to carry a ring, a seal or a rail; or only a bore."""

    axis: Id
    """The axis that it lies round."""
    z_mm: Span
    """Its front and rear end [mm]."""
    bore_mm: Size | None = None
    """Diameter of the bore; left out for one that is closed [mm]."""
    outside_mm: Size | None = None
    """Outer diameter of the boss; left out for a bore that only goes through [mm]."""


class Rim(Section):
    """A rim round the open end of a shell."""

    z_mm: Span
    """Its front and rear end [mm]."""
    reach_mm: Size
    """How far it stands out from the wall [mm]."""


class Half(Section):
    """Which half of a case a shell is, where the joint face lies along the shafts."""

    axis: Id
    """The axis that the joint face goes through."""
    side: Literal["above", "below"]
    """Above or below that axis, in the section and in the unit."""
    angle_deg: float = Field(default=0.0, ge=-80, le=80)
    """How far the joint face is turned out of level, seen from the rear, leftwards [degrees]."""


class Shell(Solid):
    """A case or cover: walls round its rooms, drawn cut open."""

    kind: Literal["shell"]
    """shell, for what is hollow and cast."""
    rooms: tuple[Room, ...] = Field(min_length=1)
    """The rooms inside, each round an axis; one on an axis of another section is in space alone."""
    z_mm: Span
    """Its own front and rear end; what of the walls lies beyond is another's [mm]."""
    wall_mm: Size | None = None
    """Thickness of the wall; usual proportions where left out [mm]."""
    bosses: tuple[Boss, ...] = ()
    """Bosses and bores, in the order in which they are made."""
    flanges: tuple[Rim, ...] = ()
    """Rims at its open ends."""
    half: Half | None = None
    """Which half it is; left out where the case is not split along the shafts."""


class Rod(Solid):
    """A pin, bolt, plug, rod or ball between two places in the plane of the section."""

    kind: Literal["rod"]
    """rod, for what is round and not on the axis."""
    form: Literal["pin", "bolt", "plug", "rod", "ball"]
    """What it is."""
    from_mm: Spot
    """One end, as z and place across; for bolts and plugs under the head [mm]."""
    to_mm: Spot
    """The other end, as z and place across [mm]."""
    diameter_mm: Size
    """Its diameter [mm]."""
    head_mm: Size | None = None
    """Width across flats of the head; usual proportions where left out [mm]."""

    @model_validator(mode="after")
    def _has_length(self) -> Rod:
        if self.from_mm == self.to_mm and self.form != "ball":
            raise ValueError("both ends lie in one place; give its length")
        return self


class SpringSolid(Solid):
    """A coil spring between two places in the plane of the section."""

    kind: Literal["spring"]
    """spring, for coils."""
    from_mm: Spot
    """One end, as z and place across [mm]."""
    to_mm: Spot
    """The other end, as z and place across [mm]."""
    coil_mm: Size
    """Outer diameter of the coil [mm]."""

    @model_validator(mode="after")
    def _has_length(self) -> SpringSolid:
        if self.from_mm == self.to_mm:
            raise ValueError("both ends lie in one place; give its length")
        return self


class Box(Solid):
    """A box with the part's name, for what no figures describe."""

    kind: Literal["box"]
    """box, for what is named and not drawn."""
    z_mm: Span
    """Its front and rear end [mm]."""
    across_mm: Span
    """Its upper and lower edge, counted across [mm]."""


AnySolid = Annotated[
    Turned | GearSolid | BearingSolid | RingSolid | Slab | Shell | Rod | SpringSolid | Box,
    Field(discriminator="kind"),
]


class Step(Section):
    """How an operation shows: the way in, or where its tool stands, or why there is nothing."""

    id: Id
    """The id of the operation."""
    way: Way | None = None
    """Where its parts come from: rear, front, outside (across), by-hand (bent round it)."""
    on: Id | None = None
    """The part that they are fitted to while that one is off the unit."""
    passes_mm: float = Field(default=0.0, ge=0, le=50)
    """By how much they give way to what they pass: an opened ring, a tilted shaft or fork [mm]."""
    at: Ids = ()
    """The parts at which it is done, where it fits none."""
    reads: Literal["along", "across"] = "along"
    """How the tip of a gauge stands: along the axis (play, depth) or across it (run-out)."""
    between: Ids = ()
    """The two solids between which a feeler goes, where these are not a part and its neighbour."""
    unseen: Text | None = None
    """Why the section shows nothing of it."""

    @model_validator(mode="after")
    def _two_sides(self) -> Step:
        if self.between and len(self.between) != 2:
            raise ValueError("a feeler goes between two solids; name two under between")
        return self


class WrongLook(Section):
    """How something built wrongly looks, where it does not follow from the rest of the file.

    Without an entry a wrong way turns over the parts of its step, a step left out leaves out its
    own.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    operation: Id | None = None
    """The operation, for one of its wrong ways."""
    way: Id | None = None
    """The wrong way of that operation."""
    misbuild: Id | None = None
    """The misbuild of the faults section."""
    turned: Ids = ()
    """Parts or solids that are turned over, end for end."""
    missing: Ids = ()
    """Parts or solids that are not there."""
    off: Ids = ()
    """Parts or solids that stand off their seat."""
    unseen: Text | None = None
    """Why no section shows it."""

    @model_validator(mode="after")
    def _one_of_each(self) -> WrongLook:
        if (self.misbuild is None) != (self.operation is not None and self.way is not None):
            raise ValueError("name a misbuild, or an operation with one of its wrong ways")
        given = [key for key in ("turned", "missing", "off", "unseen") if getattr(self, key)]
        if len(given) != 1:
            raise ValueError("give exactly one of turned, missing, off, unseen")
        return self


class Shapes(Section):
    """Axes, views, solids and ways in."""

    axes: tuple[AxisLine, ...]
    """Every axis."""
    views: tuple[View, ...]
    """The sections that are drawn."""
    solids: tuple[AnySolid, ...] = Field(max_length=MOST_SOLIDS)
    """Every solid."""
    steps: tuple[Step, ...] = ()
    """How operations show; those left out come from the rear, or show at their own parts."""
    wrong: tuple[WrongLook, ...] = ()
    """How what is built wrongly looks, where that does not follow from the rest."""

    @model_validator(mode="after")
    def _known(self) -> Shapes:
        for entries, word in ((self.axes, "axis"), (self.views, "view"), (self.solids, "solid"),
                              (self.steps, "step"), (self.wrong, "wrong look")):  # fmt: skip
            ids = [entry.id for entry in entries]
            twice = {one for one in ids if ids.count(one) > 1}
            if twice:
                raise ValueError(f"{word} {min(twice)} is listed twice; rename one")
        known: set[str] = set()
        for axis in self.axes:
            if axis.beside is not None and axis.beside not in known:
                raise ValueError(
                    f"axis {axis.id} lies beside {axis.beside}, which is not listed before it"
                )
            known.add(axis.id)
        shown = [id for view in self.views for id in view.axes]
        for id in shown:
            if id not in known:
                raise ValueError(f"a view names an unknown axis {id}")
            if shown.count(id) > 1:
                raise ValueError(f"axis {id} stands in two views; keep one")
        for solid in self.solids:
            named = {solid.axis}
            if isinstance(solid, Shell):
                named |= {room.axis for room in solid.rooms}
                named |= {boss.axis for boss in solid.bosses}
                named |= {solid.half.axis} if solid.half else set()
            missing = named - set(shown)
            if missing:
                raise ValueError(f"solid {solid.id} lies on {min(missing)}, an axis in no view")
        return self

    @model_validator(mode="after")
    def _gaps_known(self) -> Shapes:
        solids = {solid.id for solid in self.solids}
        for step in self.steps:
            for id in step.between:
                if id not in solids:
                    raise ValueError(
                        f"step {step.id} names {id} under between, which is no solid; "
                        f"{meant(id, solids)}"
                    )
        return self

    @model_validator(mode="after")
    def _one_joint(self) -> Shapes:
        halves = {one.id: one.half for one in self.solids
                  if isinstance(one, Shell) and one.half is not None}  # fmt: skip
        if len({(half.axis, half.angle_deg) for half in halves.values()}) > 1:
            raise ValueError(
                f"{' and '.join(halves)} do not share one joint face; give both the same axis and "
                "angle deg"
            )
        if len({half.side for half in halves.values()}) < len(halves):
            raise ValueError(
                f"{' and '.join(halves)} are not two halves; give one the side above, the other "
                "the side below"
            )
        return self

    def axis_by_id(self, axis: str) -> AxisLine:
        """The axis with this id."""
        return next(entry for entry in self.axes if entry.id == axis)

    def step_by_id(self, operation: str) -> Step | None:
        """What is said of an operation, if anything."""
        return next((entry for entry in self.steps if entry.id == operation), None)
