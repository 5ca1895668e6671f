"""The shift section: the selector mechanism as bodies, and what the hand test must show.

The mechanism is drawn in one plane: ``travel`` is the slide of the selector shaft [mm], ``turn``
its rotation measured at the finger's tip [mm]. Bodies in the same layer touch each other; bodies
in different layers pass. No table of allowed moves stands anywhere: the moves are computed.
"""

from __future__ import annotations

from enum import StrEnum

from pydantic import Field, model_validator

from twoshaft.units.sections.order import Id, Section, Text

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
    name: Text
    layer: Id
    follows: Follows
    pieces: tuple[tuple[Point, ...], ...] = Field(min_length=1)

    @model_validator(mode="after")
    def _pieces_have_area(self) -> Body:
        _check_pieces(self.id, self.pieces)
        return self


class Passive(Section):
    """A body that moves along one axis only, pushed by contact or by its drive.

    ``notches_mm`` are its rest positions under drive *notches*; the ball pulls it home from
    ``snap_mm`` away.
    """

    id: Id
    name: Text
    layer: Id
    axis: Axis
    pieces: tuple[tuple[Point, ...], ...] = Field(min_length=1)
    range_mm: tuple[float, float]
    drive: Drive
    notches_mm: tuple[float, ...] = ()
    snap_mm: float = Field(default=0.0, ge=0)

    @model_validator(mode="after")
    def _hangs_together(self) -> Passive:
        _check_pieces(self.id, self.pieces)
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
    gate: Id
    low: Id | None = None
    high: Id | None = None
    engaged_mm: float = Field(gt=0)


class Gate(Section):
    """A gate: the travel at which one rail can be moved."""

    id: Id
    name: Text
    at_mm: float
    half_width_mm: float = Field(gt=0)


class Interlock(Section):
    """A pin in a cross bore between two rails: it lets one of them leave neutral at a time.

    Each rail has a notch of ``notch_mm`` depth with flanks of ``ramp_deg``; between the rails
    lie ``gap_mm`` of housing. The pin fits while the two notches leave room for its length.
    """

    id: Id
    name: Text
    rails: tuple[Id, Id]
    notch_mm: float = Field(gt=0.2, le=10)
    ramp_deg: float = Field(gt=10, lt=85)
    gap_mm: float = Field(ge=0, le=100)
    length_mm: float = Field(gt=0, le=120)


class MustBlock(Section):
    """A direct shift that the lockout must stop; direct means without leaving the gate."""

    earlier: Id
    later: Id


class Change(Section):
    """What a misbuild does to one body or interlock pin: exactly one of the changes."""

    body: Id
    remove: bool = False
    mirror: Axis | None = None
    shift_mm: Point | None = None
    drive: Drive | None = None
    pieces: tuple[tuple[Point, ...], ...] | None = None
    length_mm: float | None = Field(default=None, gt=0, le=120)

    @model_validator(mode="after")
    def _one(self) -> Change:
        kinds = ("remove", "mirror", "shift_mm", "drive", "pieces", "length_mm")
        given = [kind for kind in kinds if getattr(self, kind) not in (None, False)]
        if len(given) != 1:
            raise ValueError(f"give exactly one of {', '.join(kinds)}")
        if self.pieces is not None:
            _check_pieces(self.body, self.pieces)
        return self


class ShiftMisbuild(Section):
    """A way to put the mechanism together wrongly, or a part that is worn."""

    id: Id
    name: Text
    changes: tuple[Change, ...] = Field(min_length=1)


class Detent(Section):
    """Ball, spring and notch that hold a rail."""

    rail: Id
    spring_force_n: float = Field(gt=0, le=500)
    spring_rate_n_per_mm: float = Field(ge=0, le=200)
    ball_mm: float = Field(gt=2, le=20)
    notch_depth_mm: float = Field(gt=0, le=8)
    ramp_deg: float = Field(gt=10, lt=80)
    friction: float = Field(ge=0, le=0.4)


class Shift(Section):
    """The selector mechanism."""

    travel_mm: tuple[float, float]
    turn_mm: tuple[float, float]
    finger_radius_mm: float = Field(gt=5, le=200)
    start_mm: Point = (0.0, 0.0)
    bodies: tuple[Body, ...] = Field(min_length=1)
    passive: tuple[Passive, ...] = Field(min_length=1)
    gates: tuple[Gate, ...] = Field(min_length=1)
    rails: tuple[Rail, ...] = Field(min_length=1)
    interlocks: tuple[Interlock, ...] = ()
    must_block: tuple[MustBlock, ...] = ()
    detents: tuple[Detent, ...] = ()
    misbuilds: tuple[ShiftMisbuild, ...] = ()

    @model_validator(mode="after")
    def _names_are_known(self) -> Shift:
        passive = {body.id: body for body in self.passive}
        pins = {pin.id: pin for pin in self.interlocks}
        every = set(passive) | {body.id for body in self.bodies} | set(pins)
        gates, gears = {gate.id for gate in self.gates}, set()
        for rail in self.rails:
            if rail.body not in passive or passive[rail.body].axis is not Axis.TURN:
                raise ValueError(f"rail {rail.body} is no passive body that moves with turn")
            if rail.gate not in gates:
                raise ValueError(f"rail {rail.body} names the gate {rail.gate}, which is not there")
            gears |= {rail.low, rail.high}
        for block in self.must_block:
            for gear in (block.earlier, block.later):
                if gear not in gears:
                    raise ValueError(f"must_block names {gear}, which no rail engages")
        for pin in self.interlocks:
            if not set(pin.rails) <= {rail.body for rail in self.rails}:
                raise ValueError(f"interlock {pin.id} lies between rails that are not there")
        for misbuild in self.misbuilds:
            for change in misbuild.changes:
                if change.body not in every:
                    raise ValueError(
                        f"misbuild {misbuild.id} names {change.body}, which is no body"
                    )
                if change.drive is not None and change.body not in passive:
                    raise ValueError(f"misbuild {misbuild.id}: {change.body} has no drive")
                if change.body in pins and not (change.remove or change.length_mm):
                    raise ValueError(f"misbuild {misbuild.id}: a pin is removed or its length set")
                if change.length_mm and change.body not in pins:
                    raise ValueError(f"misbuild {misbuild.id}: {change.body} is no interlock pin")
        for detent in self.detents:
            if detent.rail not in passive:
                raise ValueError(f"a detent names the rail {detent.rail}, which is not there")
        return self


def _check_pieces(name: str, pieces: tuple[tuple[Point, ...], ...]) -> None:
    for corners in pieces:
        pairs = zip(corners, corners[1:] + corners[:1], strict=True)
        doubled_area = sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs)
        if len(corners) < 3 or abs(doubled_area) < 1e-6:
            raise ValueError(f"a piece of {name} has no area")
