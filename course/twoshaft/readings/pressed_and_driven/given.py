"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.staked import StakedNut
from twoshaft.records import BenchRecord, Option, Record, Row, Scenes


class Zone(Row, frozen=True):
    """A zone of ISO 286: its name, and its limits from the nominal size."""

    name: str
    lower_um: int | float
    upper_um: int | float


class Pair(Row, frozen=True):
    """Limits of size of a hole and of the shaft that goes into it, smallest and largest."""

    hole_mm: tuple[float, float]
    shaft_mm: tuple[float, float]


class Limits(BenchRecord, frozen=True):
    """A fit by its name.

    Attributes
    ----------
    size_mm : int or float
        Nominal size.
    codes : str
        Zones of hole and shaft, ``H7/k6``.
    zones : tuple of Zone
        Those two among others.
    kinds : tuple of Option
        What a fit may mean for the work.
    others : tuple of Pair
        Other fits, by their limits of size.
    """

    size_mm: int | float
    codes: str
    zones: tuple[Zone, ...]
    kinds: tuple[Option, ...]
    others: tuple[Pair, ...]


class Gauge(Row, frozen=True):
    """A press at work: the two forces worked out, and the one that its gauge shows."""

    low_kn: float
    high_kn: float
    shown_kn: float


class Press(BenchRecord, frozen=True):
    """A press fit of the unit, measured.

    Attributes
    ----------
    press, name : str
        The unit's press fit, and what people call it.
    size_mm, length_mm : float
        Nominal diameter and length of the seat.
    hole_mm, shaft_mm : float
        As measured.
    mpa_per_um : float
        Pressure in the seat for each micrometre of interference.
    friction : tuple of float
        Lowest and highest that is expected.
    true_friction : float
        What the gauge follows.
    todo : tuple of Option
        What may be done with the force that a gauge shows.
    others : tuple of Gauge
        Other rings in the press.
    least_um, most_um : float, optional
        Interference allowed by the manual; with figures from the real bench only.
    """

    press: str
    name: str
    size_mm: float
    length_mm: float
    hole_mm: float
    shaft_mm: float
    mpa_per_um: float
    friction: tuple[float, float]
    true_friction: float
    todo: tuple[Option, ...]
    others: tuple[Gauge, ...]
    least_um: int | float | None = None
    most_um: int | float | None = None


class Metal(Row, frozen=True):
    """A metal, and by how much a metre of it grows with each degree."""

    name: str
    growth_um: float


class Warming(Row, frozen=True):
    """A part that is being warmed [degC], and the margin for handling [K]."""

    free_c: int
    margin_k: int
    limit_c: int
    now_c: int


class WarmPart(BenchRecord, frozen=True):
    """A part to be warmed.

    Attributes
    ----------
    part, name : str
    size_mm, grip_um : int or float
        Diameter of the seat, and its interference as measured in the room.
    room_c, handling_k : int or float
        Temperature of the room, and the margin for handling.
    limit_c : int or float
        The hottest that the part may get.
    limit_of : str
        Whose limit that is.
    outer, inner : Metal
        The part that is warmed, and what it goes on.
    """

    part: str
    name: str
    size_mm: int | float
    grip_um: int | float
    room_c: int | float
    handling_k: int | float
    limit_c: int | float
    limit_of: str
    outer: Metal
    inner: Metal


class Heat(WarmPart, frozen=True):
    """A part to be warmed, and what may be done with it.

    Attributes
    ----------
    todo : tuple of Option
    others : tuple of Warming
        Other parts, on their way to what they need.
    how : tuple of Option
        How still others are warmed.
    how_todo : tuple of Option
        What may be done with each.
    hole_mm, shaft_mm, oven_c : float, optional
        Hole, part inside it and oven as measured; with figures from the real bench only.
    """

    todo: tuple[Option, ...]
    others: tuple[Warming, ...]
    how: tuple[Option, ...]
    how_todo: tuple[Option, ...]
    hole_mm: int | float | None = None
    shaft_mm: int | float | None = None
    oven_c: int | float | None = None


class Grip(Row, frozen=True):
    """Interference of a seat, from least to most; below zero is play."""

    least_um: int
    most_um: int


class Case(Row, frozen=True):
    """A bearing to be fitted: what is done, and its seats; None where the mate comes later."""

    story: str
    inner: Grip | None
    outer: Grip | None


class Shown(Record, frozen=True):
    """The drawing: the ring under the driver, and the ring whose seat is tight."""

    driven: str
    tight: str


class Driver(Record, frozen=True):
    """Bearings to be fitted.

    Attributes
    ----------
    cases : tuple of Case
    places : tuple of Option
        Where the driver may bear.
    shown : Shown
    paths : Scenes
        Set-ups, and how the force may run in each.
    home : Scenes
        Rings on their way, and what may come next.
    """

    cases: tuple[Case, ...]
    places: tuple[Option, ...]
    shown: Shown
    paths: Scenes
    home: Scenes


class Seal(Record, frozen=True):
    """A shaft seal as somebody left it.

    Attributes
    ----------
    seal, name : str
        The unit's seal, and what people call it.
    lip : str
        What the lip looks at, ``oil`` or ``air``.
    depth_mm, lean_mm : float
        Mean depth below the face (proud as a minus), and the lean right across.
    towards : int
        The place of the gauge at which it is deepest, from 0.
    greased, sleeve_used : bool
    low_mm, high_mm, tilt_mm : float
        Limits of the depth, and of the lean.
    needs_sleeve : bool
        Whether the lip passes splines.
    faults : tuple of Option
    others : Scenes
        Other seals with the same limits, and what may be done with each.
    """

    seal: str
    name: str
    lip: str
    depth_mm: float
    lean_mm: float
    towards: int
    greased: bool
    sleeve_used: bool
    low_mm: float
    high_mm: float
    tilt_mm: float
    needs_sleeve: bool
    faults: tuple[Option, ...]
    others: Scenes


class PinLoad(Row, frozen=True):
    """A spring pin by its size, and what it bears in double shear."""

    size_mm: int | float
    double_shear_kn: int | float


class PinJoint(Row, frozen=True):
    """A joint for a spring pin: force on it, how often it must be borne, what the pins bear."""

    force_kn: float
    margin: int
    one_kn: float
    inner_kn: float


class Driven(Row, frozen=True):
    """A spring pin as somebody drove it in: directions and ends as the model of pins tells them."""

    letter: str
    force_deg: int
    slot_deg: int
    near_mm: float
    far_mm: float
    inner_deg: int | None


class Spring(Record, frozen=True):
    """A spring pin and the force that it passes on.

    Attributes
    ----------
    name : str
    size_mm, inner_mm : int or float
        Size of the hole's pin, and of the one that nests in it.
    loads : tuple of PinLoad
        Of both.
    hand_n : int
        Hardest pull at the knob.
    ratio : float
        Of the lever, knob to pin.
    planes : int
        In which the pin would shear.
    margin : int
        So many times the force the pin must bear.
    todo : tuple of Option
        Which pins may be fitted.
    others : tuple of PinJoint
    fitted : tuple of Driven
        Pins as somebody drove them in.
    asked : tuple of Option
        What is to be found among them.
    """

    name: str
    size_mm: int | float
    inner_mm: int | float
    loads: tuple[PinLoad, PinLoad]
    hand_n: int
    ratio: float
    planes: int
    margin: int
    todo: tuple[Option, ...]
    others: tuple[PinJoint, ...]
    fitted: tuple[Driven, ...]
    asked: tuple[Option, ...]


class Proud(Row, frozen=True):
    """How far a taper pin stands proud when tried by hand, and how far it shall."""

    stands_mm: float
    low_mm: float
    high_mm: float


class Ends(Row, frozen=True):
    """The ends of a taper pin as measured, None where nobody did; whether it is to go in."""

    left_mm: float | None
    right_mm: float | None
    insert: bool


class Taper(Record, frozen=True):
    """A taper pin and its reamed hole.

    Attributes
    ----------
    small_mm, length_mm : float, int
        Small end and length of the pin.
    hole_mm : float
        The hole at its wide end.
    low_mm, high_mm : float
        How far the large end shall stand proud.
    wider_mm : float
        What a further cut takes.
    todo : tuple of Option
        What may be done with a hole.
    others : tuple of Proud
    strikes : tuple of Option
        Where a pin may be struck.
    pins : tuple of Ends
    """

    small_mm: float
    length_mm: int
    hole_mm: float
    low_mm: float
    high_mm: float
    wider_mm: float
    todo: tuple[Option, ...]
    others: tuple[Proud, ...]
    strikes: tuple[Option, ...]
    pins: tuple[Ends, ...]


class Tab(Row, frozen=True):
    """A staked tab: what it holds, what it must, and its state.

    Attributes
    ----------
    state : str
        ``whole``, ``cracked`` or ``undone`` (whole, but its nut was turned back).
    """

    holds_nm: float
    drag_nm: float
    margin: int
    state: str


class Clip(Row, frozen=True):
    """A circlip in its groove, as the model of circlips tells it."""

    letter: str
    bore: bool
    push_left: bool
    sharp_left: bool
    off_mm: float


class Locks(StakedNut, frozen=True):
    """A nut that was staked, and circlips.

    Attributes
    ----------
    todo : tuple of Option
        What may be done with a nut.
    others : tuple of Tab
    clips : tuple of Clip
        Circlips as somebody left them.
    asked : tuple of Option
        What is to be found among them.
    """

    todo: tuple[Option, ...]
    others: tuple[Tab, ...]
    clips: tuple[Clip, ...]
    asked: tuple[Option, ...]


class Order(Record, frozen=True):
    """A fitting job: its name, its steps, and the order that they came in, which earns nothing."""

    job: str
    operations: tuple[str, ...]
    start: tuple[Option, ...]


class Bench(Record, frozen=True):
    """Situations at the bench, and what may be done in each."""

    cautions: tuple[Option, ...]
    safety: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    limits: Limits | None = None
    press: Press | None = None
    heat: Heat | None = None
    driver: Driver | None = None
    seal: Seal | None = None
    spring: Spring | None = None
    taper: Taper | None = None
    locks: Locks | None = None
    order: Order | None = None
    bench: Bench | None = None
