"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.records import Option, Record, Row, Scenes


class Mark(Row, frozen=True):
    """A mark on metal: what it looks like, its middle and its reach [mm]."""

    shape: str
    x_mm: float
    y_mm: float
    long_mm: float
    wide_mm: float


class Look(Record, frozen=True):
    """A picture by its letter, and the marks in it."""

    letter: str
    marks: tuple[Mark, ...]


class Looks(Record, frozen=True):
    """Pictures of damage.

    Attributes
    ----------
    pictures : tuple of Look
    names : tuple of Option
        Damage of which the picture is asked for, by id and name.
    letters : tuple of Option
        Pictures of which it is asked how they came about.
    causes : tuple of Option
    """

    pictures: tuple[Look, ...]
    names: tuple[Option, ...]
    letters: tuple[Option, ...]
    causes: tuple[Option, ...]


class Dogs(Row, frozen=True):
    """Four dog teeth of a gear: flats, broken corners, where flats begin on their scales [mm]."""

    letter: str
    flats_mm: tuple[float, ...]
    chips_mm: tuple[float, ...]
    begins_mm: tuple[float, ...]


class DogTeeth(Record, frozen=True):
    """Dog teeth of four gears, and what may be done with each."""

    gears: tuple[Dogs, ...]
    answers: tuple[Option, ...]


class Held(Row, frozen=True):
    """A mean size against its limit, with its standard uncertainty [mm]."""

    id: str
    what: str
    mean_mm: float
    limit_mm: float
    u_mm: float
    least: bool

    @property
    def text(self) -> str:
        """As it is asked."""
        bound = "at least" if self.least else "at most"
        return (
            f"{self.what}: mean {self.mean_mm:.3f} mm, allowed {bound} {self.limit_mm:g} mm, "
            f"standard uncertainty {self.u_mm:.3f} mm"
        )


class Guard(Record, frozen=True):
    """Own readings of a part that wears, and means of others.

    Attributes
    ----------
    what : str
    readings_mm : tuple of float
    limit_mm, tool_mm : float
        Limit, and standard uncertainty of one reading.
    least : bool
        Whether the limit is the least size allowed.
    others : tuple of Held
    answers : tuple of Option
    """

    what: str
    readings_mm: tuple[float, ...]
    limit_mm: float
    tool_mm: float
    least: bool
    others: tuple[Held, ...]
    answers: tuple[Option, ...]


class Case(Row, frozen=True):
    """A part that may be bad, and what each way costs [hours]."""

    id: str
    bad_percent: float
    renew_h: float
    again_h: float
    look_h: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"Chance that it is bad: {self.bad_percent:g} %. Renewing {self.renew_h:g} h, "
            f"stripping again {self.again_h:g} h, a sure measurement {self.look_h:g} h"
        )


class Cost(Record, frozen=True):
    """A reading near its limit, what errors cost, and other cases.

    Attributes
    ----------
    mean_mm, limit_mm, u_mm : float
        Own reading, the least size allowed, standard uncertainty.
    renew_h, again_h : float
        What it costs to renew the part, and to strip the unit again [hours].
    cases : tuple of Case
    answers : tuple of Option
    """

    mean_mm: float
    limit_mm: float
    u_mm: float
    renew_h: float
    again_h: float
    cases: tuple[Case, ...]
    answers: tuple[Option, ...]


class Found(Row, frozen=True):
    """Another gear: end float found, circlip in it, and the float that is allowed [mm]."""

    id: str
    float_mm: float
    fitted_mm: float
    low_mm: float
    high_mm: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"End float {self.float_mm:.2f} mm with a circlip of {self.fitted_mm:.2f} mm, "
            f"allowed {self.low_mm:.2f} to {self.high_mm:.2f} mm"
        )


class Clip(Record, frozen=True):
    """The end float of an own gear, its circlip, the set, and other gears.

    Attributes
    ----------
    what : str
    float_mm, fitted_mm : float
    allowed_mm : tuple of float
    set_mm : tuple of float
        Thicknesses that there are.
    others_set_mm : tuple of float
        Those of the other gears.
    others : tuple of Found
    answers : tuple of Option
    """

    what: str
    float_mm: float
    fitted_mm: float
    allowed_mm: tuple[float, float]
    set_mm: tuple[float, ...]
    others_set_mm: tuple[float, ...]
    others: tuple[Found, ...]
    answers: tuple[Option, ...]


class Sat(Row, frozen=True):
    """Another ring in its bore: both diameters, and those that are allowed [mm]."""

    id: str
    ring_mm: float
    bore_mm: float
    ring_least_mm: float
    bore_most_mm: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"Ring {self.ring_mm:.3f} mm, at least {self.ring_least_mm:.3f}; "
            f"bore {self.bore_mm:.3f} mm, at most {self.bore_most_mm:.3f}"
        )


class Seats(Record, frozen=True):
    """An own ring in its bore, a gear on its needles, and other rings.

    Attributes
    ----------
    what : str
    bores_mm : tuple of float
        Bore in three directions.
    ring_mm : float
    gear_bore_mm, shaft_mm, needle_mm : float
    others : tuple of Sat
    answers : tuple of Option
    """

    what: str
    bores_mm: tuple[float, ...]
    ring_mm: float
    gear_bore_mm: float
    shaft_mm: float
    needle_mm: float
    others: tuple[Sat, ...]
    answers: tuple[Option, ...]


class Track(Row, frozen=True):
    """Another shaft where its seal runs: diameter beside the groove and in it [mm]."""

    id: str
    beside_mm: float
    groove_mm: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return f"Beside the groove {self.beside_mm:.2f} mm, in it {self.groove_mm:.2f} mm"


class Seal(Record, frozen=True):
    """The own shaft where its seal runs, and others."""

    beside_mm: float
    groove_mm: float
    others: tuple[Track, ...]
    answers: tuple[Option, ...]


class Thread(Record, frozen=True):
    """Steps of a thread repair, and the order in which they are shown."""

    operations: tuple[str, ...]
    start: tuple[Option, ...]


class WornPart(Row, frozen=True):
    """A worn part of the shift in a picture: what wears on it, by how much, and where [mm].

    ``part`` and ``wears`` are ids of ``models.inspect.WEARS``.
    """

    letter: str
    part: str
    wears: str
    wear_mm: float
    at_mm: float


class Parts(Record, frozen=True):
    """Parts on the bench in words, then others in pictures, and what may become of each."""

    lines: tuple[Option, ...]
    answers: tuple[Option, ...]
    pictures: tuple[WornPart, ...]
    drawn: tuple[Option, ...]
    drawn_answers: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that the module's tasks give; None what the unit has nothing for."""

    races: Looks | None = None
    flanks: Looks | None = None
    dogs: DogTeeth | None = None
    guard: Guard | None = None
    cost: Cost | None = None
    clip: Clip | None = None
    seats: Seats | None = None
    seal: Seal | None = None
    thread: Thread | None = None
    parts: Parts | None = None
    safe: Scenes | None = None
