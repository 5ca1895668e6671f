"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.records import BenchRecord, Option, Record, Row, Scenes


class Micrometer(Record, frozen=True):
    """A part and a micrometer.

    Attributes
    ----------
    part : str
    part_mm, zero_mm : float
        What is really there: the size, and the zero reading with its sign.
    zeros : Scenes
        Zeros of other tools, and what may be done about each.
    """

    part: str
    part_mm: float
    zero_mm: float
    zeros: Scenes


class DepthSet(Row, frozen=True):
    """A depth gauge as somebody set it, as the model of set-ups tells it."""

    letter: str
    left_mm: float
    right_mm: float
    short_mm: float
    aside_mm: float
    round_mm: float
    eye_deg: int


class Depth(Record, frozen=True):
    """A depth and its gauge.

    Attributes
    ----------
    name : str
    depth_mm, zero_mm : float
        What is really there: the depth, and the zero reading with its sign.
    eye : str
        Where the eye is at first, ``left`` or ``right``.
    looks : tuple of DepthSet
        Gauges over other depths.
    asked : tuple of Option
        What is to be found among them.
    """

    name: str
    depth_mm: float
    zero_mm: float
    eye: str
    looks: tuple[DepthSet, ...]
    asked: tuple[Option, ...]


class Repeats(BenchRecord, frozen=True):
    """Readings of one size.

    Attributes
    ----------
    readings_mm : tuple of int or float
    options : tuple of Option
        The readings as ``reading-1`` and so on, and ``none``.
    strays : Scenes
        Other sets of readings, and what may be done about the last one.
    errors : Scenes
        What may be wrong with readings, and what helps against it.
    """

    readings_mm: tuple[int | float, ...]
    options: tuple[Option, ...]
    strays: Scenes
    errors: Scenes


class Job(Row, frozen=True):
    """Something to be measured, and its limits; ``kind`` is outside, depth or movement."""

    name: str
    kind: str
    low_mm: int | float
    high_mm: int | float


class Tool(Row, frozen=True):
    """A measuring tool: its step, and the kinds of job that it can reach."""

    id: str
    name: str
    step_mm: float
    kinds: tuple[str, ...]


class Choose(Record, frozen=True):
    """Jobs, tools to choose from, and the answer that none of them will do."""

    jobs: tuple[Job, ...]
    tools: tuple[Tool, ...]
    none: Option


class Total(Row, frozen=True):
    """A total reading, the largest that is allowed, and the uncertainty either way [mm]."""

    total_mm: float
    limit_mm: float
    doubt_mm: float


class DialSet(Row, frozen=True):
    """A dial indicator as somebody set it up, as the model of set-ups tells it."""

    letter: str
    at_deg: int
    off_deg: int
    pressed_mm: float
    moves_mm: float
    thick_mm: int | float
    rests: float
    by: str


class Dial(Record, frozen=True):
    """A shaft under a dial indicator.

    Attributes
    ----------
    off_mm, high_at_deg : float
        What is really there: how far it runs out of centre, and where it is highest.
    limit_mm, doubt_mm : float
        Largest total reading allowed, and the uncertainty of the total either way.
    set_ups : tuple of DialSet
        Dials that others have set up.
    asked : tuple of Option
        What is to be found among them.
    verdicts : tuple of Option
        What may be said of a total.
    others : tuple of Total
    """

    off_mm: float
    high_at_deg: float
    limit_mm: float
    doubt_mm: float
    set_ups: tuple[DialSet, ...]
    asked: tuple[Option, ...]
    verdicts: tuple[Option, ...]
    others: tuple[Total, ...]


class Pull(Record, frozen=True):
    """A spring scale on a cord.

    Attributes
    ----------
    name : str
    radius_mm : int
        Of the drum.
    zero_n, jerk_n : int
        What the scale shows hanging free, and at the first jerk.
    steady_n : tuple of int
        What it shows while the drum turns.
    pulls : Scenes
        Other pulls, and what each may show.
    """

    name: str
    radius_mm: int
    zero_n: int
    jerk_n: int
    steady_n: tuple[int, ...]
    pulls: Scenes


class TorqueTool(Row, frozen=True):
    """A torque wrench of the drawer: its scale, its marks, its length to mid grip."""

    id: str
    name: str
    low_nm: float
    high_nm: float
    step_nm: float
    length_mm: float


class Window(Row, frozen=True):
    """The torque that a bolt may get at least and at most, and its window [N m]."""

    least_nm: float
    most_nm: float
    low_nm: float
    high_nm: float


class Wrench(Record, frozen=True):
    """An old job card, an adapter and the wrenches.

    Attributes
    ----------
    name : str
        Of the bolt.
    figure : float
        The torque in the card's unit.
    unit : str
        That unit, as ``lbf·ft``.
    reach_mm, angle_deg : float
        The adapter.
    low_nm, high_nm : float
        The window.
    wrenches : tuple of TorqueTool
    others_nm : tuple of float
        Other torques for which a wrench is wanted.
    none : Option
        That none of them suits.
    claims : tuple of Option
        What may be said of a window.
    windows : tuple of Window
        Of other bolts.
    """

    name: str
    figure: float
    unit: str
    reach_mm: float
    angle_deg: float
    low_nm: float
    high_nm: float
    wrenches: tuple[TorqueTool, ...]
    others_nm: tuple[float, ...]
    none: Option
    claims: tuple[Option, ...]
    windows: tuple[Window, ...]


class Claims(Record, frozen=True):
    """What the uncertainty of a mean comes from, and parts near and far from their limits.

    Attributes
    ----------
    step_mm, certificate_mm, sd_mm : float
        Step of the tool, its uncertainty as certified (doubled), standard deviation of readings.
    count : int
        How many readings there are.
    low_mm, high_mm : float
    means_mm : tuple of float
        One for each part.
    says : tuple of Option
        What may be said of a part.
    """

    step_mm: float
    certificate_mm: float
    sd_mm: float
    count: int
    low_mm: float
    high_mm: float
    means_mm: tuple[float, ...]
    says: tuple[Option, ...]


class Care(Record, frozen=True):
    """Situations that could hurt somebody, what may be done in each, and torque wrenches."""

    dangers: tuple[Option, ...]
    safety: tuple[Option, ...]
    kept: Scenes


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    micrometer: Micrometer | None = None
    depth: Depth | None = None
    repeats: Repeats | None = None
    choose: Choose | None = None
    dial: Dial | None = None
    pull: Pull | None = None
    wrench: Wrench | None = None
    claims: Claims | None = None
    care: Care | None = None
