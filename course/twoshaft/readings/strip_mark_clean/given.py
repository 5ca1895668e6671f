"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.scenes import Hand, Scene
from twoshaft.records import Option, Record, Row, Scenes


class Step(Row, frozen=True):
    """A step of taking apart, by id and name, and whether it was done."""

    id: str
    name: str
    off: bool

    @property
    def words(self) -> str:
        """Whether it was done, in words."""
        return "done" if self.off else "not done yet"


class Half(Record, frozen=True):
    """A unit half apart as a picture, and steps that wait for something in it."""

    scene: Scene
    lines: tuple[Option, ...]


class Apart(Record, frozen=True):
    """Steps to put in order, and a unit half apart.

    Attributes
    ----------
    operations : tuple of str
        Steps and readings to put in order.
    start : tuple of Option
        As they are shown at first.
    state : tuple of Step
        What was done so far, and what was not, of what bears on the next steps.
    lines : tuple of Option
        Steps that may come next.
    answers : tuple of Option
        That a step can be done now, or the step that it waits for.
    half : Half or None
        A unit half apart as a picture; None where too little of it is drawn.
    """

    operations: tuple[str, ...]
    start: tuple[Option, ...]
    state: tuple[Step, ...]
    lines: tuple[Option, ...]
    answers: tuple[Option, ...]
    half: Half | None


class Lost(Record, frozen=True):
    """A unit half apart, and what is read before it is lost.

    Attributes
    ----------
    state : tuple of Step
        What was done so far, and what was not, of what bears on the readings.
    readings : tuple of Option
        Readings to judge.
    when : tuple of Option
        When each can be taken.
    written : tuple of str
        Names of readings that stand on the sheet already.
    taken : tuple of str
        The same by id.
    nexts : tuple of Option
        Steps that may come next.
    firsts : tuple of Option
        What may have to be read first.
    """

    state: tuple[Step, ...]
    readings: tuple[Option, ...]
    when: tuple[Option, ...]
    written: tuple[str, ...]
    taken: tuple[str, ...]
    nexts: tuple[Option, ...]
    firsts: tuple[Option, ...]


class Read(Row, frozen=True):
    """A reading of another unit against its limits.

    ``what`` is read [mm], between ``low_mm`` and ``high_mm``, unsure by ``unsure_mm``.
    """

    id: str
    what: str
    mm: float
    low_mm: float
    high_mm: float
    unsure_mm: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"{self.what} {self.mm:.2f} mm, limits {self.low_mm:.2f} to {self.high_mm:.2f} mm, "
            f"uncertainty {self.unsure_mm:.2f} mm"
        )


class Worked(Record, frozen=True):
    """An end float with its shim, a backlash, and other readings.

    Attributes
    ----------
    pushed_mm, pulled_mm : float
        The dial with the shaft pushed in and pulled out.
    fitted_mm : float
        The shim that was in.
    wanted_mm : float
        The end float that is wanted.
    places_mm : tuple of float
        Travel at the dial in four places of the gear.
    arm_mm, pitch_mm : float
        Radius of the dial's arm, and pitch radius of the gear.
    others : tuple of Read
    verdicts : tuple of Option
    """

    pushed_mm: float
    pulled_mm: float
    fitted_mm: float
    wanted_mm: float
    places_mm: tuple[float, ...]
    arm_mm: float
    pitch_mm: float
    others: tuple[Read, ...]
    verdicts: tuple[Option, ...]


class Drained(Row, frozen=True):
    """Another unit: what it holds, what clings, and what was drained, all cold [litres]."""

    id: str
    capacity_litre: float
    stays_litre: float
    drained_litre: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"Holds {self.capacity_litre:.2f} l; {self.stays_litre:.2f} l clings inside; "
            f"{self.drained_litre:.2f} l was drained"
        )


class OilGiven(Record, frozen=True):
    """The drained oil of the own unit, and of others.

    Attributes
    ----------
    jug_litre : float
        As read in the jug.
    jug_c : float
        Temperature in the jug [°C].
    others : tuple of Drained
    levels : tuple of Option
    """

    jug_litre: float
    jug_c: float
    others: tuple[Drained, ...]
    levels: tuple[Option, ...]


class Rested(Row, frozen=True):
    """Chips of one size, and how long the oil was at rest [minutes]."""

    id: str
    size_um: int
    minutes: int

    @property
    def text(self) -> str:
        """As it is asked."""
        hours, minutes = divmod(self.minutes, 60)
        rest = f"{hours} h {minutes:02} min" if hours else f"{minutes} min"
        return f"Chips of {self.size_um} µm, {rest} at rest"


class Chips(Record, frozen=True):
    """How fast chips sink.

    Attributes
    ----------
    oil_c : float
        Temperature of the oil [°C].
    known_um : int
        A size whose time is known.
    known_minutes : float
        That time, through the whole depth.
    asked_um : int
        The size that is asked for.
    rested : tuple of Rested
    places : tuple of Option
    """

    oil_c: float
    known_um: int
    known_minutes: float
    asked_um: int
    rested: tuple[Rested, ...]
    places: tuple[Option, ...]


class Found(Record, frozen=True):
    """What magnet and pan show, and what the old film shows."""

    debris: Scenes
    film: Scenes


class Marks(Scenes, frozen=True):
    """Parts about to come off, and what is done with each; parts that came out, to be put back.

    ``back`` is None where no section shows them.
    """

    back: Hand | None


class Given(Record, frozen=True, kw_only=True):
    """All that the module's tasks give."""

    apart: Apart | None = None
    lost: Lost | None = None
    worked: Worked | None = None
    oil: OilGiven | None = None
    chips: Chips | None = None
    found: Found | None = None
    marks: Marks | None = None
    clean: Scenes | None = None
    discard: Scenes | None = None
    safe: Scenes | None = None
