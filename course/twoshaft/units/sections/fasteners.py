"""The fasteners section: friction, wrenches, and every group of like bolts, nuts or plugs.

Torques are in newton metres, lengths in millimetres, stresses in megapascals. What follows from
them (clamp, scatter, stripping) is computed by the joint model; nothing of it stands here.
"""

from __future__ import annotations

from typing import Annotated, Any, ClassVar, Literal

from pydantic import Field, StringConstraints, model_validator

from twoshaft.units.nearest import meant
from twoshaft.units.sections.order import Id, Ids, Section, Text
from twoshaft.units.standard_parts import bolt_sizes, filled_in

Mu = Annotated[float, Field(ge=0.03, le=0.6)]
Mm = Annotated[float, Field(gt=0, le=2000)]
Torque = Annotated[float, Field(gt=0, le=5000)]
Coordinate = Annotated[float, Field(ge=-5000, le=5000)]
Gap = Annotated[float, Field(ge=0, le=2000)]
ThreadName = Annotated[str, StringConstraints(pattern=r"^M\d+(\.\d+)?(x\d+(\.\d+)?)?(-LH)?$")]


def _rises(what: str, values: tuple[float, ...]) -> None:
    if list(values) != sorted(values):
        raise ValueError(f"{what} must rise from first to last")


class ThreadState(Section):
    """Friction of a thread and of the seat under the head, each low, typical, high."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The state, in words, as dry or oiled."""
    like: Literal["as-delivered", "oiled", "locker", "dry"] | None = None
    """What it is: new with its dry film, oiled, compound put on, or dry; its id where left out."""
    thread: tuple[Mu, Mu, Mu]
    """Friction of the thread: low, typical, high."""
    head: tuple[Mu, Mu, Mu]
    """Friction under the head: low, typical, high."""

    @property
    def known_as(self) -> str:
        """What it is like; its id where nothing is said."""
        return self.like or self.id

    @model_validator(mode="after")
    def _in_order(self) -> ThreadState:
        _rises(f"the friction of the thread in '{self.id}'", self.thread)
        _rises(f"the friction under the head in '{self.id}'", self.head)
        return self


class TappedMetal(Section):
    """A metal that threads are cut into."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The metal, in words."""
    tensile_mpa: float = Field(ge=50, le=2000)
    """Tensile strength [MPa]."""
    elastic_gpa: float = Field(ge=1, le=500)
    """Modulus of elasticity [GPa]."""


class Wrench(Section):
    """A torque wrench with its scale; ``tool`` is its id among the unit's tools."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The wrench, in words."""
    tool: Id
    """Its id among the tools."""
    low_nm: Torque
    """Where its scale begins [N·m]."""
    high_nm: Torque
    """Where its scale ends [N·m]."""
    step_nm: Torque
    """One division of its scale [N·m]."""
    length_mm: Mm
    """From the square drive to the middle of the grip."""
    kind: Literal["setting", "indicating"] = "setting"
    """setting (it clicks) or indicating (it shows)."""
    tool_class: Annotated[str, StringConstraints(pattern=r"^[A-G]$")] = "A"
    """Class of ISO 6789-1, A to G."""

    @model_validator(mode="after")
    def _scale_rises(self) -> Wrench:
        if not self.low_nm < self.high_nm:
            raise ValueError(f"the scale of '{self.id}' must end above its start")
        return self


class Adapter(Section):
    """An open or ring end that sets the bolt off the square drive."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The adapter, in words."""
    reach_mm: Mm
    """From the square drive to the bolt [mm]."""
    angle_deg: float = Field(default=0, ge=0, le=180)
    """0 straight on, 180 folded back over the wrench."""


class Tapped(Section):
    """The thread that a bolt goes into."""

    metal: Id
    """The metal of the hole, by its id."""
    engagement_mm: Mm
    """Length of thread that holds [mm]."""
    boss_mm: Mm | None = None
    """Outer diameter of the boss; left out where the metal round the hole is thick."""
    blind_depth_mm: Mm | None = None
    """Depth of a blind hole; left out where the hole is open at its end."""


class Flange(Section):
    """The flange that a group holds down, for the clamp that each bolt keeps.

    Width and joint may be left out where the group names a sealed face: then they are the face's.
    """

    thickness_mm: float = Field(ge=2, le=100)
    """Its thickness [mm]."""
    elastic_gpa: float = Field(ge=1, le=500)
    """Modulus of elasticity [GPa]."""
    width_mm: float | None = Field(default=None, ge=3, le=200)
    """Its width; left out where the sealed face has it [mm]."""
    joint_n_per_mm3: float | None = Field(default=None, ge=1e-2, le=1e5)
    """Pressure that a millimetre of sinking gives."""
    gap_um: tuple[Gap, ...] = ()
    """Gap of the flange laid on: at bolt 1, midway to bolt 2, at bolt 2 …; flat if empty."""


class FastenerGroup(Section):
    """Like bolts, nuts or plugs that are tightened alike; ``standard`` names their head."""

    FILLED: ClassVar[frozenset[str]] = frozenset({"head_mm", "hole_mm"})

    standard: Literal["hex", "hex-flange", "socket"] | None = None
    """A head of the tables: hex, hex-flange or socket; fills in head and hole by the thread."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The bolts, nuts or plugs, in words."""
    parts: Ids = ()
    """Their id among the parts."""
    operations: Ids = Field(min_length=1)
    """The operations that tighten them."""
    count: int = Field(ge=1, le=60)
    """How many there are."""
    thread: ThreadName
    """Thread by ISO 261, as M8, M10x1.25 or M20x1.5-LH (left-hand)."""
    strength: Literal["4.6", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"]
    """Property class of ISO 898-1."""
    head_mm: Mm
    """Outer diameter of the face that rubs."""
    hole_mm: Mm
    """Hole under it."""
    grip_mm: Mm
    """Thickness of what is clamped [mm]."""
    state: Id
    """The state of thread and seat for which the torque is stated."""
    torque_nm: tuple[Torque, Torque, Torque]
    """Least, aimed at, most that the wrench may be set to."""
    clamp_kn: float = Field(gt=0, le=1000)
    """Least clamp each must leave."""
    wrench: Id
    """The wrench that they are tightened with."""
    adapter: Id | None = None
    """The adapter that is needed to reach them."""
    tapped: Tapped | None = None
    """Left out for a nut."""
    face: Id | None = None
    """The sealed face whose holes they stand in, where the unit file has it."""
    positions_mm: tuple[tuple[Coordinate, Coordinate], ...] = ()
    """In the order in which the flange passes them; left out where the face has them."""
    flange: Flange | None = None
    """The flange that they hold down."""
    spread: float = Field(default=0.1, gt=0, le=1)
    """Largest less smallest clamp over the one aimed at, that the joint allows."""

    @model_validator(mode="before")
    @classmethod
    def _from_the_tables(cls, entry: Any) -> Any:
        if isinstance(entry, dict) and isinstance(entry.get("standard"), str):
            thread = entry.get("thread")
            if isinstance(thread, str):
                return filled_in(entry, bolt_sizes(entry["standard"], thread))
        return entry

    @model_validator(mode="after")
    def _holds_together(self) -> FastenerGroup:
        _rises("'torque nm'", self.torque_nm)
        if self.hole_mm >= self.head_mm:
            raise ValueError("'head mm' must be larger than 'hole mm'")
        if self.positions_mm and self.face:
            raise ValueError("give 'positions mm' or 'face', not both")
        if self.positions_mm and len(self.positions_mm) != self.count:
            raise ValueError(
                f"{len(self.positions_mm)} positions are given for {self.count} pieces"
            )
        if len(set(self.positions_mm)) != len(self.positions_mm):
            raise ValueError("two pieces have the same position")
        self._flange_holds_together()
        tapped = self.tapped
        depth = tapped.blind_depth_mm if tapped else None
        if tapped and depth is not None and depth <= tapped.engagement_mm:
            raise ValueError("'blind depth mm' must be larger than 'engagement mm'")
        return self

    def _flange_holds_together(self) -> None:
        if self.flange is None:
            return
        if self.count < 3 or not (self.positions_mm or self.face):
            raise ValueError("a flange needs the positions of at least 3 bolts")
        given = self.flange.width_mm is not None and self.flange.joint_n_per_mm3 is not None
        if not (given or self.face):
            raise ValueError("a flange without a face needs 'width mm' and 'joint n per mm3'")
        if self.flange.gap_um and len(self.flange.gap_um) != 2 * self.count:
            raise ValueError(f"'gap um' needs {2 * self.count} values, at and between the bolts")


class Fasteners(Section):
    """All that the unit file says about its threaded joints."""

    states: tuple[ThreadState, ...] = Field(min_length=1)
    """States of thread and seat, with their friction."""
    metals: tuple[TappedMetal, ...] = ()
    """Metals that threads are cut into."""
    wrenches: tuple[Wrench, ...] = Field(min_length=1)
    """Torque wrenches of the workshop."""
    adapters: tuple[Adapter, ...] = ()
    """Adapters of the workshop."""
    groups: tuple[FastenerGroup, ...] = Field(min_length=1)
    """Every group of like bolts, nuts or plugs."""

    @model_validator(mode="after")
    def _ids_known(self) -> Fasteners:
        known = {}
        for kind in ("states", "metals", "wrenches", "adapters", "groups"):
            ids = [entry.id for entry in getattr(self, kind)]
            doubled = {one for one in ids if ids.count(one) > 1}
            if doubled:
                raise ValueError(f"{sorted(doubled)[0]} stands twice in {kind}")
            known[kind] = set(ids)
        for group in self.groups:
            named = [("states", group.state), ("wrenches", group.wrench)]
            named += [("adapters", group.adapter)] if group.adapter else []
            named += [("metals", group.tapped.metal)] if group.tapped else []
            for kind, one in named:
                if one not in known[kind]:
                    raise ValueError(
                        f"group '{group.id}' names '{one}', which is not in {kind}; "
                        f"{meant(one, known[kind])}"
                    )
        return self

    def group(self, identifier: str) -> FastenerGroup:
        """Give the group of an id; KeyError if there is none."""
        for group in self.groups:
            if group.id == identifier:
                return group
        raise KeyError(identifier)
