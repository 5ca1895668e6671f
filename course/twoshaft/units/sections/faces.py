"""The faces section: sealed faces with their outlines, holes and sealants.

Coordinates are in millimetres in the face's own plane, seen from the side that is coated.
"""

from __future__ import annotations

from enum import StrEnum
from itertools import pairwise
from typing import Annotated, Any, ClassVar

from pydantic import Field, ValidationError, model_validator

from twoshaft.units.nearest import meant
from twoshaft.units.sections.order import Id, Section, Text
from twoshaft.units.sections.round_face import Point, RoundFace
from twoshaft.units.standard_parts import filled_in

Polygon = Annotated[tuple[Point, ...], Field(min_length=3)]


_SOME = RoundFace(outside_mm=100, inside_mm=70, bolt_circle_mm=85, bolts=6, hole_mm=7, clamp_n=1,
                  head_mm=10)  # fmt: skip


class SealantKind(StrEnum):
    """How the sealant cures.

    anaerobic: between metal faces, away from air. moisture: in air, from its surface inwards, so
    it grows a skin.
    """

    ANAEROBIC = "anaerobic"
    MOISTURE = "moisture"


class Sealant(Section):
    """A formed-in-place sealant; ``consumable`` is its name in the order of work, if it has one."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What it is called."""
    consumable: Id | None = None
    """Its id among the consumables of the order of work."""
    kind: SealantKind
    """How it cures: anaerobic or moisture."""
    largest_gap_mm: float = Field(gt=0, le=10)
    """Largest gap that it fills [mm]."""
    open_minutes: float = Field(gt=0, le=240)
    """Time from laying it to closing the joint [minutes]."""
    skin_minutes: float | None = Field(default=None, gt=0, le=240)
    """Time until it has a skin; for one that cures in air [minutes]."""
    viscosity_pa_s: float = Field(default=80, gt=0, le=5000)
    """Viscosity of the paste [Pa·s]; usually 30 to 200 (common practice, no source)."""
    yield_stress_pa: float = Field(default=120, ge=0, le=10000)
    """Stress below which the paste stands still [Pa]; usually 50 to 300 (common practice, no
    source)."""
    cure_hours: float = Field(gt=0, le=168)
    """Time until it may meet oil [hours]."""

    @model_validator(mode="after")
    def _skin_by_kind(self) -> Sealant:
        if (self.kind is SealantKind.MOISTURE) != (self.skin_minutes is not None):
            raise ValueError(f"{self.id}: give skin_minutes for a moisture-curing sealant only")
        return self


class CavityKind(StrEnum):
    """What is behind an opening in the face: oil, nothing, or the open air."""

    OIL = "oil"
    CLOSED = "closed"
    OPEN = "open"


class Cavity(Section):
    """An opening in the face's outline."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The opening, in words."""
    kind: CavityKind
    """What is behind it: oil, closed (nothing) or open (the open air)."""
    outline: Polygon
    """Its corners in order, as pairs x, y [mm]."""


class Hole(Section):
    """A bolt or dowel hole; ``open`` if it leads to the outside under the bolt's head."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    x_mm: float
    """Its place along x [mm]."""
    y_mm: float
    """Its place along y [mm]."""
    diameter_mm: float = Field(gt=0, le=60)
    """Its diameter [mm]."""
    clamp_n: float = Field(default=0.0, ge=0, le=500000)
    """Clamp of its bolt [N]; 0 for a dowel."""
    head_mm: float = Field(default=0.0, ge=0, le=100)
    """Outer diameter of the bolt's head or washer [mm]."""
    open: bool = False
    """It leads to the open air under the bolt's head."""
    blind: bool = False
    """It ends in the metal."""


class Guide(Section):
    """An oil guide, jet or magnet that a lump of sealant must not reach.

    A lump within ``reach_mm`` that is larger than ``largest_lump_mm`` endangers it.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The guide, jet or magnet, in words."""
    x_mm: float
    """Its place along x [mm]."""
    y_mm: float
    """Its place along y [mm]."""
    reach_mm: float = Field(gt=0, le=200)
    """A lump nearer than this can get to it [mm]."""
    largest_lump_mm: float = Field(default=1.0, gt=0, le=20)
    """Largest lump that does no harm there [mm]."""


class Scratch(Section):
    """A score across the face."""

    points: tuple[Point, ...] = Field(min_length=2)
    """Its course, as pairs x, y [mm]."""
    width_mm: float = Field(gt=0, le=20)
    """Its width [mm]."""
    depth_um: float = Field(gt=0, le=2000)
    """Its depth [µm]."""


class Form(Section):
    """How far the two faces together are from flat, before they are clamped.

    The gap is a bow along x, a bow along y and a twist, in these shares, over a roughness floor.
    ``bed_n_per_mm3`` is the clamp pressure that closes a millimetre of it.
    """

    flatness_um: float = Field(ge=0, le=500)
    """How far the faces together are from flat, before clamping [µm]."""
    bow_x: float = Field(default=1.0, ge=-1, le=1)
    """Share of it that is a bow along x, -1 to 1."""
    bow_y: float = Field(default=0.0, ge=-1, le=1)
    """Share of it that is a bow along y, -1 to 1."""
    twist: float = Field(default=0.0, ge=-1, le=1)
    """Share of it that is a twist, -1 to 1."""
    roughness_um: float = Field(default=8, gt=0, le=100)
    """Gap that the roughness leaves when all is clamped [µm]; of milled faces usually 4 to 15
    (common practice, no source)."""
    bed_n_per_mm3: float = Field(default=300, gt=0, le=1e6)
    """Clamp pressure that closes a millimetre of gap [N/mm³]; usually 200 to 500 (common practice,
    no source)."""
    flange_mm: float = Field(gt=0, le=100)
    """Thickness of the flange [mm]."""


class Segment(Section):
    """A stretch of the face that can be coated in one go; ends meet the next segment's start."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The stretch, in words."""
    points: tuple[Point, ...] = Field(min_length=2)
    """Its course, as pairs x, y; it ends where the next one starts [mm]."""


class Face(Section):
    """A face that is sealed by a film; ``round`` tells a round one by its circles."""

    FILLED: ClassVar[frozenset[str]] = frozenset({"outline", "cavities"})
    FILLED_BY: ClassVar[str] = "round"

    round: RoundFace | None = None
    """Its circles and bolts, where it is round; outline, cavities, holes and segments follow."""
    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The joint, in words."""
    outline: Polygon
    """Corners of the outside edge in order, as pairs x, y [mm]."""
    cavities: tuple[Cavity, ...] = Field(min_length=1)
    """Openings inside the outline."""
    islands: tuple[Polygon, ...] = ()
    """Raised places inside that are sealed too, each a list of corners [mm]."""
    holes: tuple[Hole, ...] = ()
    """Bolt and dowel holes."""
    guides: tuple[Guide, ...] = ()
    """Places that a lump of sealant must not reach."""
    scratches: tuple[Scratch, ...] = ()
    """Scores across the face."""
    form: Form
    """How far it is from flat."""
    sealant: Id
    """The sealant, by its id."""
    film_mm: float = Field(gt=0, le=3)
    """Thickness that the maker asks for [mm]."""
    film_width_mm: float = Field(gt=0, le=60)
    """Width of the film [mm]."""
    segments: tuple[Segment, ...] = ()
    """Stretches in which it is coated, one after the other round the face."""
    lay_operation: Id | None = None
    """The operation that lays the film."""
    close_operation: Id | None = None
    """The operation that closes the joint."""

    @model_validator(mode="before")
    @classmethod
    def _from_its_circles(cls, entry: Any) -> Any:
        if isinstance(entry, dict) and isinstance(entry.get("round"), dict):
            try:
                circles = RoundFace.model_validate(entry["round"])
            except ValidationError:  # told where it stands; that nothing follows is not told too
                circles = _SOME
            return filled_in(entry, circles.told())
        return entry

    @model_validator(mode="after")
    def _well_formed(self) -> Face:
        outlines = {"outline": self.outline}
        outlines |= {f"cavity {cavity.id}": cavity.outline for cavity in self.cavities}
        outlines |= {f"island {i + 1}": island for i, island in enumerate(self.islands)}
        for name, polygon in outlines.items():
            crossing = crossing_edges(polygon)
            if crossing:
                a, b = crossing
                raise ValueError(
                    f"face {self.id}: the {name} crosses itself at its edges {a + 1} and {b + 1}; "
                    "list its corners in order"
                )
        ids = [hole.id for hole in self.holes]
        twice = {i for i in ids if ids.count(i) > 1}
        if twice:
            raise ValueError(f"face {self.id}: hole {min(twice)} is listed twice; rename one")
        return self


class Faces(Section):
    """All sealed faces of the unit and the sealants on the shelf."""

    sealants: tuple[Sealant, ...] = Field(min_length=1)
    """The sealants on the shelf."""
    faces: tuple[Face, ...] = Field(min_length=1)
    """Every sealed face."""

    @model_validator(mode="after")
    def _known(self) -> Faces:
        known = {sealant.id for sealant in self.sealants}
        for face in self.faces:
            if face.sealant not in known:
                raise ValueError(
                    f"face {face.id} names an unknown sealant {face.sealant}; "
                    f"{meant(face.sealant, known)}"
                )
        return self

    def face_by_id(self, face: str) -> Face:
        """The face with this id."""
        return next(entry for entry in self.faces if entry.id == face)

    def sealant_by_id(self, sealant: str) -> Sealant:
        """The sealant with this id."""
        return next(entry for entry in self.sealants if entry.id == sealant)


def crossing_edges(polygon: tuple[Point, ...]) -> tuple[int, int] | None:
    """Give the first two edges of a closed polygon that cross or touch, or None.

    Neighbouring edges share a corner and are not compared, unless one folds back on the other.
    """
    edges = [*pairwise(polygon), (polygon[-1], polygon[0])]
    boxes = [_box(edge) for edge in edges]
    for i, first in enumerate(edges):
        if first[0] == first[1]:
            return i, i
        for j in range(i + 1, len(edges)):
            neighbours = j == i + 1 or (i == 0 and j == len(edges) - 1)
            if neighbours:
                shared, a, b = _shared_corner(first, edges[j], after=j == i + 1)
                if _side(a, shared, b) == 0 and _dot(a, shared, b) > 0:
                    return i, j
            elif _meet(boxes[i], boxes[j]) and _cross(first, edges[j]):
                return i, j
    return None


def _box(edge: tuple[Point, Point]) -> tuple[float, float, float, float]:
    (ax, ay), (bx, by) = edge
    return min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)


def _meet(one: tuple[float, ...], other: tuple[float, ...]) -> bool:
    """Whether two boxes share a point: edges far apart, nearly all, need no closer look."""
    return one[0] <= other[2] and other[0] <= one[2] and one[1] <= other[3] and other[1] <= one[3]


def _shared_corner(first, second, *, after):
    return (first[1], first[0], second[1]) if after else (first[0], first[1], second[0])


def _dot(a: Point, corner: Point, b: Point) -> float:
    return (a[0] - corner[0]) * (b[0] - corner[0]) + (a[1] - corner[1]) * (b[1] - corner[1])


def _side(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _cross(first, second) -> bool:
    (a, b), (c, d) = first, second
    sides = _side(a, b, c), _side(a, b, d), _side(c, d, a), _side(c, d, b)
    if sides[0] * sides[1] < 0 and sides[2] * sides[3] < 0:
        return True
    touching = ((sides[0], a, b, c), (sides[1], a, b, d), (sides[2], c, d, a), (sides[3], c, d, b))
    return any(s == 0 and _dot(p, r, q) <= 0 for s, p, q, r in touching)
