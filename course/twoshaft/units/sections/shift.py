"""The shift section: the selector mechanism as bodies, and what the hand test must show.

The mechanism is drawn in one plane: ``travel`` is the slide of the selector shaft [mm], ``turn``
its rotation measured at the finger's tip [mm]. Bodies in the same layer touch each other; bodies
in different layers pass. Where the hand can lift something (the collar of the lever), bodies may
have a height, and bodies one above the other pass as well. No table of allowed moves stands
anywhere: the moves are computed.
"""

from __future__ import annotations

from enum import StrEnum

from pydantic import Field, model_validator

from twoshaft.units.nearest import meant
from twoshaft.units.sections.order import Id, Ids, Section, Text

Point = tuple[float, float]


class Follows(StrEnum):
    """What a body moves with."""

    HAND = "hand"
    TRAVEL = "travel"
    TURN = "turn"
    FIXED = "fixed"


class Axis(StrEnum):
    """The direction in which a passive body can move."""

    TRAVEL = "travel"
    TURN = "turn"


class Drive(StrEnum):
    """What moves a passive body when nothing pushes it.

    low, high: a spring towards that end of its range. notches: spring and ball pull it into the
    nearest notch. stays: friction alone.
    """

    LOW = "low"
    HIGH = "high"
    NOTCHES = "notches"
    STAYS = "stays"


class Body(Section):
    """A rigid body: convex pieces, each a list of (travel, turn) corners in its own frame [mm]."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The body, in words."""
    layer: Id
    """Bodies in one layer touch each other; those in others pass."""
    follows: Follows
    """What it moves with: hand, travel, turn or fixed."""
    pieces: tuple[tuple[Point, ...], ...] = Field(min_length=1)
    """Convex pieces, each its corners as pairs travel, turn [mm]."""
    height_mm: tuple[float, float] | None = None
    """From where to where it stands along the lift [mm]; left out: at every height."""
    lifts: bool = False
    """It goes up with what the hand lifts."""

    @model_validator(mode="after")
    def _hangs_together(self) -> Body:
        _check_pieces(self.id, self.pieces)
        _check_height(self.id, self.height_mm)
        if self.lifts and (self.follows is Follows.FIXED or self.height_mm is None):
            raise ValueError(
                f"{self.id} is lifted, so it must move with the hand and have a height"
            )
        return self


class Passive(Section):
    """A body that moves along one axis only, pushed by contact or by its drive.

    ``notches_mm`` are its rest positions under drive *notches*; the ball pulls it home from
    ``snap_mm`` away.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The body, in words."""
    layer: Id
    """Bodies in one layer touch each other; those in others pass."""
    axis: Axis
    """The direction in which it can move: travel or turn."""
    pieces: tuple[tuple[Point, ...], ...] = Field(min_length=1)
    """Convex pieces, each its corners as pairs travel, turn [mm]."""
    range_mm: tuple[float, float]
    """From where to where it can move [mm]."""
    drive: Drive
    """What moves it when nothing pushes: low, high, notches or stays."""
    notches_mm: tuple[float, ...] = ()
    """Its places of rest [mm]."""
    snap_mm: float = Field(default=0.0, ge=0)
    """How near to a notch the ball pulls it home [mm]."""
    height_mm: tuple[float, float] | None = None
    """From where to where it stands along the lift [mm]; left out: at every height."""
    gives_at_n: float = Field(default=0.0, ge=0, le=2000)
    """Push along its axis below which it stands still: a plunger, a strong detent [N]."""

    @model_validator(mode="after")
    def _hangs_together(self) -> Passive:
        _check_pieces(self.id, self.pieces)
        _check_height(self.id, self.height_mm)
        low, high = self.range_mm
        if not low < high:
            raise ValueError(f"the range of {self.id} is reversed")
        if self.drive is Drive.NOTCHES and not self.notches_mm:
            raise ValueError(f"{self.id} is driven into notches but has none")
        if any(not low <= notch <= high for notch in self.notches_mm):
            raise ValueError(f"a notch of {self.id} lies outside its range")
        return self


class Rail(Section):
    """A rail: the passive body it is, its gate, and the gear at each end of its way."""

    body: Id
    """The passive body that it is."""
    gate: Id
    """Its plane of the gate."""
    low: Id | None = None
    """The gear at the low end of its travel."""
    high: Id | None = None
    """The gear at the high end of its travel."""
    engaged_mm: float = Field(gt=0)
    """Travel from which on the gear is engaged [mm]."""

    @model_validator(mode="after")
    def _engages(self) -> Rail:
        if self.low is None and self.high is None:
            raise ValueError(f"rail {self.body} engages no gear; give it 'low' or 'high'")
        return self

    @property
    def gears(self) -> tuple[str, ...]:
        """Its gears, one or two."""
        return tuple(gear for gear in (self.low, self.high) if gear is not None)


class Gate(Section):
    """A gate: the travel at which one rail can be moved."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The plane of the gate, in words."""
    at_mm: float
    """Travel of the selector at which it lies [mm]."""
    half_width_mm: float = Field(gt=0)
    """How far off the selector may be, either way [mm]."""


class Interlock(Section):
    """A pin in a cross bore between two rails: it lets one of them leave neutral at a time.

    Each rail has a notch of ``notch_mm`` depth with flanks of ``ramp_deg``; between the rails
    lie ``gap_mm`` of housing. The pin fits while the two notches leave room for its length.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The pin, in words."""
    rails: tuple[Id, Id]
    """The two rails that it lies between."""
    notch_mm: float = Field(gt=0.2, le=10)
    """Depth of the notch in each rail [mm]."""
    ramp_deg: float = Field(gt=10, lt=85)
    """Slope of the notch's flanks [degrees]."""
    gap_mm: float = Field(ge=0, le=300)
    """Housing between the rails [mm]."""
    length_mm: float = Field(gt=0, le=120)
    """Length of the pin [mm]."""


class MustBlock(Section):
    """A direct shift that a lockout must stop.

    Direct means: the hand leaves neither the gates of the two gears nor what lies between them,
    lifts nothing, and pushes as in any shift.
    """

    earlier: Id
    """The gear that is left."""
    later: Id
    """The gear that must not go in directly."""
    through: Ids = ()
    """Further gates that the hand may go through on this way."""
    lifted: bool = False
    """It must be stopped with the collar lifted, too."""
    firm: bool = False
    """It must be stopped against a firm push, too."""


class Change(Section):
    """What a misbuild does to one body or interlock pin: exactly one of the changes."""

    body: Id
    """The body or interlock pin that is changed."""
    remove: bool = False
    """It is not there."""
    mirror: Axis | None = None
    """It is turned over along this axis: travel or turn."""
    shift_mm: Point | None = None
    """It stands off by this, travel and turn [mm]."""
    drive: Drive | None = None
    """Its spring or notch does this instead."""
    pieces: tuple[tuple[Point, ...], ...] | None = None
    """Its shape is this instead [mm]."""
    length_mm: float | None = Field(default=None, gt=0, le=120)
    """The pin is this long instead [mm]."""
    gives_at_n: float | None = Field(default=None, ge=0, le=2000)
    """It gives way to this push instead [N]."""

    @model_validator(mode="after")
    def _one(self) -> Change:
        kinds = ("remove", "mirror", "shift_mm", "drive", "pieces", "length_mm", "gives_at_n")
        given = [
            kind
            for kind in kinds
            if getattr(self, kind) is not None and getattr(self, kind) is not False
        ]
        if len(given) != 1:
            raise ValueError(f"give exactly one of {', '.join(kinds)}")
        if self.pieces is not None:
            _check_pieces(self.body, self.pieces)
        return self


class ShiftMisbuild(Section):
    """A way to put the mechanism together wrongly, or a part that is worn."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What was done, in words."""
    changes: tuple[Change, ...] = Field(min_length=1)
    """What it changes; at least one."""


class Detent(Section):
    """Ball, spring and notch that hold a rail."""

    rail: Id
    """The rail that it holds."""
    spring_force_n: float = Field(gt=0, le=500)
    """Force of the spring in the notch [N]."""
    spring_rate_n_per_mm: float = Field(ge=0, le=200)
    """Rise of the force for each millimetre [N/mm]."""
    ball_mm: float = Field(gt=2, le=20)
    """Diameter of the ball [mm]."""
    notch_depth_mm: float = Field(gt=0, le=8)
    """Depth of the notch [mm]."""
    ramp_deg: float = Field(gt=10, lt=80)
    """Slope of the notch's flanks [degrees]."""
    friction: float = Field(ge=0, le=0.4)
    """Friction of the rail in its bore."""


class Shift(Section):
    """The selector mechanism."""

    travel_mm: tuple[float, float]
    """From where to where the selector slides [mm]."""
    turn_mm: tuple[float, float]
    """From where to where the finger's tip turns [mm]."""
    finger_radius_mm: float = Field(gt=5, le=200)
    """Radius of the finger's tip [mm]."""
    start_mm: Point = (0.0, 0.0)
    """Where the hand starts, travel and turn [mm]."""
    lift_mm: float = Field(default=0.0, ge=0, le=100)
    """How far the hand can lift the collar or the lever; 0 where it cannot [mm]."""
    lift_name: Text = "the collar of the lever"
    """What the hand lifts, in words."""
    hand_n: float = Field(default=60.0, gt=0, le=500)
    """Push of a shift at the finger's tip, usually 40 to 100 (common practice, no source) [N]."""
    firm_n: float | None = Field(default=None, gt=0, le=2000)
    """Firm push at the finger's tip, where something gives way to that alone; usually 150 to 350
    (common practice, no source) [N]."""
    bodies: tuple[Body, ...] = Field(min_length=1)
    """Bodies that move with the hand or stand still."""
    passive: tuple[Passive, ...] = Field(min_length=1)
    """Bodies that are pushed or sprung."""
    gates: tuple[Gate, ...] = Field(min_length=1)
    """Planes of the gate."""
    rails: tuple[Rail, ...] = Field(min_length=1)
    """Every rail."""
    interlocks: tuple[Interlock, ...] = ()
    """Pins that let one rail move at a time."""
    must_block: tuple[MustBlock, ...] = ()
    """Direct shifts that the lockout must stop."""
    detents: tuple[Detent, ...] = ()
    """Balls and springs that hold the rails."""
    misbuilds: tuple[ShiftMisbuild, ...] = ()
    """Ways to put the mechanism together wrongly."""

    @model_validator(mode="after")
    def _names_are_known(self) -> Shift:
        if self.firm_n is not None and self.firm_n < self.hand_n:
            raise ValueError("the firm push is weaker than that of a shift")
        firm = [body.id for body in self.passive if body.gives_at_n > self.hand_n]
        if firm and self.firm_n is None:
            raise ValueError(f"{firm[0]} stops a shift; say under 'firm n' what overcomes it")
        lifted = [body.id for body in self.bodies if body.lifts]
        if bool(lifted) != bool(self.lift_mm):
            raise ValueError(
                f"{lifted[0]} is lifted; say how far under 'lift mm'"
                if lifted
                else "there is a lift; say of a body that it 'lifts'"
            )
        passive = {body.id: body for body in self.passive}
        pins = {pin.id: pin for pin in self.interlocks}
        every = set(passive) | {body.id for body in self.bodies} | set(pins)
        gates, gears = {gate.id for gate in self.gates}, set()
        for rail in self.rails:
            if rail.body not in passive or passive[rail.body].axis is not Axis.TURN:
                raise ValueError(f"rail {rail.body} is no passive body that moves with turn")
            if rail.gate not in gates:
                raise ValueError(
                    f"rail {rail.body} names the gate {rail.gate}, which is not there; "
                    f"{meant(rail.gate, gates)}"
                )
            gears |= {rail.low, rail.high}
        for block in self.must_block:
            for gear in (block.earlier, block.later):
                if gear not in gears:
                    raise ValueError(f"must_block names {gear}, which no rail engages")
            for gate in block.through:
                if gate not in gates:
                    raise ValueError(
                        f"must_block goes through {gate}, which is no gate; {meant(gate, gates)}"
                    )
        for pin in self.interlocks:
            if not set(pin.rails) <= {rail.body for rail in self.rails}:
                raise ValueError(f"interlock {pin.id} lies between rails that are not there")
        for misbuild in self.misbuilds:
            for change in misbuild.changes:
                if change.body not in every:
                    raise ValueError(
                        f"misbuild {misbuild.id} names {change.body}, which is no body; "
                        f"{meant(change.body, every)}"
                    )
                pushed = change.drive is not None or change.gives_at_n is not None
                if pushed and change.body not in passive:
                    raise ValueError(f"misbuild {misbuild.id}: {change.body} has no drive")
                if change.body in pins and not (change.remove or change.length_mm):
                    raise ValueError(f"misbuild {misbuild.id}: a pin is removed or its length set")
                if change.length_mm and change.body not in pins:
                    raise ValueError(f"misbuild {misbuild.id}: {change.body} is no interlock pin")
        for detent in self.detents:
            if detent.rail not in passive:
                raise ValueError(
                    f"a detent names the rail {detent.rail}, which is not there; "
                    f"{meant(detent.rail, passive)}"
                )
        return self


def _check_height(name: str, height_mm: Point | None) -> None:
    if height_mm is not None and not height_mm[0] < height_mm[1]:
        raise ValueError(f"the height of {name} is reversed")


def _check_pieces(name: str, pieces: tuple[tuple[Point, ...], ...]) -> None:
    for corners in pieces:
        pairs = zip(corners, corners[1:] + corners[:1], strict=True)
        doubled_area = sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs)
        if len(corners) < 3 or abs(doubled_area) < 1e-6:
            raise ValueError(f"a piece of {name} has no area")
