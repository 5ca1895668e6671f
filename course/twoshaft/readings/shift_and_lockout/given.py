"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from typing import Any

from twoshaft.models.shift import Line
from twoshaft.readings.scenes import Look, Near
from twoshaft.records import Option, Record, Row, Scenes


class Named(Row, frozen=True):
    """A rail, pin or misbuild: its id and its name."""

    id: str
    name: str


class Gate(Record, frozen=True):
    """Which way round the learner's gate is.

    Attributes
    ----------
    mirror : tuple of str
        Axes of the gate that are reversed, "travel" and "turn".
    moves : tuple of Option
        Moves of the hand.
    plan : dict
        What the picture of the gate needs, as :func:`twoshaft.models.shift.gate_plan` gives it.
    """

    mirror: tuple[str, ...]
    moves: tuple[Option, ...]
    plan: dict[str, Any]


class Pulls(Record, frozen=True):
    """Pulls [N] on another rail that left its notch, and the limits there."""

    pulls_n: tuple[int, ...]
    limits_n: tuple[int, int]

    @property
    def text(self) -> str:
        """As it is asked."""
        low, high = self.limits_n
        pulls = ", ".join(map(str, self.pulls_n))
        return f"pulled out of the notch with {pulls} N; limits {low} to {high} N"


class Detent(Record, frozen=True):
    """A spring as measured on the bench, with the notch that its ball lies in.

    Attributes
    ----------
    rail : Named
    rate_n_per_mm, free_mm, fitted_mm : float
        The spring's rate, its free length, and its length with the ball home.
    ramp_deg, friction, depth_mm : float
        Flank of the notch from the rail's axis, friction on it, and depth of the notch.
    limits_n : pair of int
        Least and most force along the rail to leave the notch.
    others : tuple of Pulls
        Other rails.
    verdicts : tuple of Option
    """

    rail: Named
    rate_n_per_mm: float
    free_mm: float
    fitted_mm: float
    ramp_deg: float
    friction: float
    depth_mm: float
    limits_n: tuple[int, int]
    others: tuple[Pulls, ...]
    verdicts: tuple[Option, ...]


class Lever(Record, frozen=True):
    """From the rail to the hand.

    Attributes
    ----------
    rail_n : float
        Force along the rail.
    radius_mm, lever_mm : float
        Of the finger; of the outer lever.
    way_mm : float
        Of the rail from neutral to gear.
    """

    rail_n: float
    radius_mm: float
    lever_mm: float
    way_mm: float


class LeftOut(Record, frozen=True):
    """A gear that is in, and a pin that is left out."""

    gear: str
    missing: Named


class Moved(Record, frozen=True):
    """How far [mm] a rail that should be locked moves, how far it may, how far to its gear."""

    free_mm: float
    limit_mm: float
    gear_mm: float

    @property
    def text(self) -> str:
        """As it is asked."""
        end = "until its gear is in" if self.free_mm >= self.gear_mm else "and stops"
        return f"moves {self.free_mm:.1f} mm {end}; {self.limit_mm:.1f} mm are allowed"


class Interlock(Record, frozen=True):
    """Gears at once; gears that are in and pins that are not; a pin that was measured, and others.

    Attributes
    ----------
    does : Scenes
        What a vehicle does.
    cases : tuple of LeftOut
    rails : tuple of Option
    says : tuple of Option
        What may be said of a rail.
    pin : str
        Name of the pin that was measured.
    notch_mm, gap_mm, length_mm : float
        Depth of one notch, housing between the rails, length of the pin.
    ramp_deg : float
        Flank of the notch from the rail's axis.
    limit_mm : float
        Most free movement of a rail that is locked.
    others : tuple of Moved
        Rails on the benches beside.
    verdicts : tuple of Option
    """

    does: Scenes
    cases: tuple[LeftOut, ...]
    rails: tuple[Option, ...]
    says: tuple[Option, ...]
    pin: str
    notch_mm: float
    gap_mm: float
    length_mm: float
    ramp_deg: float
    limit_mm: float
    others: tuple[Moved, ...]
    verdicts: tuple[Option, ...]


class Written(Row, frozen=True):
    """What was done and what happened, in words."""

    done: str
    happened: str


class HandRecord(Record, frozen=True):
    """A record of a hand test: move by move for the models, and in words, perhaps several moves
    in a row."""

    lines: tuple[Line, ...]
    words: tuple[Written, ...]


class Lockout(Record, frozen=True):
    """The direct shift that must be stopped, by its gears, and records of proofs to be read."""

    earlier: str
    later: str
    records: tuple[HandRecord, ...]
    readings: tuple[Option, ...]


class Reveal(Record, frozen=True):
    """A misbuild to be shown by hand."""

    misbuild: Named


class Suspected(Record, frozen=True):
    """Assembly faults that a section shows, and that section with letters."""

    near: Near
    lines: tuple[Option, ...]


class Symptoms(Record, frozen=True):
    """Three misbuilds, no two with the same symptom, and kinds of symptom.

    ``where`` asks for the places of some; None where too few are drawn.
    """

    misbuilds: tuple[Named, ...]
    kinds: tuple[Option, ...]
    where: Suspected | None


class OneTest(Record, frozen=True):
    """A part of the hand test, which passed: its name, its record, and misbuilds."""

    name: str
    record: HandRecord
    options: tuple[Option, ...]


class Explain(Record, frozen=True):
    """The record of a full hand test of a unit in which one thing is wrong, and misbuilds."""

    record: HandRecord
    options: tuple[Option, ...]


class Order(Record, frozen=True):
    """Steps to be put into order: their ids, and the start order, which earns nothing."""

    operations: tuple[str, ...]
    start: tuple[Option, ...]


class Ends(Record, frozen=True):
    """Another pin: how deep [mm] its ends lie, and how deep each must lie."""

    struck_mm: float
    far_mm: float
    least_mm: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"struck end {self.struck_mm:.2f} mm deep, other end {self.far_mm:.2f} mm; "
            f"least {self.least_mm:.2f} mm"
        )


class Pin(Record, frozen=True):
    """The pin of the finger as measured.

    Attributes
    ----------
    hub_mm, pin_mm : float
        Diameter of the hub, length of the pin.
    struck_mm, least_mm : float
        How deep the struck end lies below the surface, and how deep each end must lie.
    others : tuple of Ends
    verdicts : tuple of Option
    """

    hub_mm: float
    pin_mm: float
    struck_mm: float
    least_mm: float
    others: tuple[Ends, ...]
    verdicts: tuple[Option, ...]


class Unseen(Scenes, frozen=True):
    """How far some units are, and what comes next; four selectors, looked at while it can be
    seen, and how one of them is built. ``looks`` is empty where too little is drawn."""

    looks: tuple[Look, ...]
    built: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    gate: Gate | None = None
    detent: Detent | None = None
    lever: Lever | None = None
    interlock: Interlock | None = None
    lockout: Lockout | None = None
    reveal: Reveal | None = None
    symptoms: Symptoms | None = None
    one_test: OneTest | None = None
    explain: Explain | None = None
    unseen: Unseen | None = None
    order: Order | None = None
    pin: Pin | None = None
    safe: Scenes | None = None
