"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.staked import StakedNut
from twoshaft.records import BenchRecord, Option, Question, Record, Row


class Zone(Row, frozen=True):
    """A zone of ISO 286: its name, and its limits from the nominal size."""

    name: str
    lower_um: int | float
    upper_um: int | float


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
        What the fit may mean for the work.
    """

    size_mm: int | float
    codes: str
    zones: tuple[Zone, ...]
    kinds: tuple[Option, ...]


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
    least_um: int | float | None = None
    most_um: int | float | None = None


class Metal(Row, frozen=True):
    """A metal, and by how much a metre of it grows with each degree."""

    name: str
    growth_um: float


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
    how : tuple of Option
        Other parts that are being warmed.
    how_todo : tuple of Option
        What may be done with each.
    hole_mm, shaft_mm, oven_c : float, optional
        Hole, part inside it and oven as measured; with figures from the real bench only.
    """

    todo: tuple[Option, ...]
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
    paths : tuple of Option
        How the force may get to the tight seat.
    shown : Shown
    home : Question
        About starting a ring, holding it, and when it is home.
    """

    cases: tuple[Case, ...]
    places: tuple[Option, ...]
    paths: tuple[Option, ...]
    shown: Shown
    home: Question


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
    faults, todo : tuple of Option
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
    todo: tuple[Option, ...]


class PinLoad(Row, frozen=True):
    """A spring pin by its size, and what it bears in double shear."""

    size_mm: int | float
    double_shear_kn: int | float


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
    slot : Question
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
    slot: Question


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
    insert : bool
        Whether the pin is to be driven in, or out again.
    todo, ends : tuple of Option
    """

    small_mm: float
    length_mm: int
    hole_mm: float
    low_mm: float
    high_mm: float
    wider_mm: float
    insert: bool
    todo: tuple[Option, ...]
    ends: tuple[Option, ...]


class Locks(StakedNut, frozen=True):
    """A nut that was staked, and circlips.

    Attributes
    ----------
    todo : tuple of Option
        What may be done with the nut.
    ticks : tuple of Option
        Sentences about circlips.
    pushed : str
        Which way a part pushes on a circlip, ``left`` or ``right``.
    edges : tuple of Option
        Where its sharp edge may face.
    """

    todo: tuple[Option, ...]
    ticks: tuple[Option, ...]
    pushed: str
    edges: tuple[Option, ...]


class Order(Record, frozen=True):
    """A fitting job: its name, its steps, and the order that they came in, which earns nothing."""

    job: str
    operations: tuple[str, ...]
    start: tuple[Option, ...]


class Bench(Record, frozen=True):
    """Situations at the bench, and what may be done in each."""

    cautions: tuple[Option, ...]
    safety: tuple[Option, ...]


class Given(Record, frozen=True):
    """All that a learner is given in this module."""

    limits: Limits
    press: Press
    heat: Heat
    driver: Driver
    seal: Seal
    spring: Spring
    taper: Taper
    locks: Locks
    order: Order
    bench: Bench
