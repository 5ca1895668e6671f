"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.scenes import Look, Opened
from twoshaft.records import Option, Record, Row, Scenes


class Named(Row, frozen=True):
    """A check or gear: its id and its name."""

    id: str
    name: str


class Shown(Row, frozen=True):
    """What a check showed: its id and name, then the key and the words of what it showed."""

    check: str
    name: str
    key: str
    words: str


class Stop(Record, frozen=True):
    """Checks of finished units, some of which can hurt somebody.

    Attributes
    ----------
    cases : tuple of Option
        Checks as they were made.
    do : tuple of Option
        What is done in each case.
    found : tuple of Option
        What was found: first on the learner's unit, its id the kind of the check; then on others.
    road : tuple of Option
        What each would do on the road.
    """

    cases: tuple[Option, ...]
    do: tuple[Option, ...]
    found: tuple[Option, ...]
    road: tuple[Option, ...]


class Driver(Record, frozen=True):
    """What drivers say.

    Attributes
    ----------
    first : Scenes
        Complaints, and checks with their minutes.
    """

    first: Scenes


class Lettered(Row, frozen=True):
    """A misbuild or a step: its id, its letter on this sheet, and its name."""

    id: str
    letter: str
    name: str

    @property
    def text(self) -> str:
        """As a line asks about it."""
        return f"{self.letter}: {self.name}"


class Explain(Record, frozen=True):
    """The record of a unit in which one thing is wrong, and misbuilds that may explain it.

    Attributes
    ----------
    record : tuple of Shown
    suspects : tuple of Lettered
    answers : tuple of Option
        Whether one of them can be what is wrong.
    """

    record: tuple[Shown, ...]
    suspects: tuple[Lettered, ...]
    answers: tuple[Option, ...]


class Check(Row, frozen=True):
    """A check with its number on this sheet, and its time."""

    id: str
    number: str
    name: str
    minutes: float

    @property
    def text(self) -> str:
        """As a line asks about it."""
        return f"{self.number}: {self.name}"


class Finding(Row, frozen=True):
    """Checks that passed and checks that did not."""

    id: str
    passed: tuple[str, ...]
    failed: tuple[str, ...]
    text: str


class Route(Row, frozen=True):
    """Checks in the order in which they are made, in words as well, and what is wrong."""

    checks: tuple[str, ...]
    words: str
    wrong: str


class Search(Record, frozen=True):
    """Suspects, one of which is in the unit, and checks to tell them apart.

    Attributes
    ----------
    suspects : tuple of Lettered
    checks : tuple of Check
    fails : tuple of Option
        With which of them a check may fail.
    pairs : tuple of Option
        Two that are left; the id is their ids joined by a plus.
    tellers : tuple of Option
        What may tell two apart.
    findings : tuple of Finding
    left : tuple of Option
        Who may be left.
    routes : tuple of Route
    """

    suspects: tuple[Lettered, ...]
    checks: tuple[Check, ...]
    fails: tuple[Option, ...]
    pairs: tuple[Option, ...]
    tellers: tuple[Option, ...]
    findings: tuple[Finding, ...]
    left: tuple[Option, ...]
    routes: tuple[Route, ...]


class Failed(Row, frozen=True):
    """A unit, and what its failed checks showed; every other check passed."""

    letter: str
    record: tuple[Shown, ...]


class Two(Record, frozen=True):
    """Records of units in which one thing is wrong, or two.

    Attributes
    ----------
    units : tuple of Failed
    how : tuple of Option
        How many things may be wrong.
    record : tuple of Shown
        Of a unit in which two of the suspects are.
    suspects : tuple of Lettered
    """

    units: tuple[Failed, ...]
    how: tuple[Option, ...]
    record: tuple[Shown, ...]
    suspects: tuple[Lettered, ...]


class Alike(Record, frozen=True):
    """Misbuilds that some check may tell apart.

    Attributes
    ----------
    suspects : tuple of Lettered
    today : tuple of Named
        Checks for which there is time.
    pairs : tuple of Option
        The id of a pair is the ids of the two joined by a plus.
    tell : tuple of Option
        What tells the two of a pair apart.
    asked : tuple of Option
        Misbuilds by their letters.
    sure : tuple of Option
        What makes sure that one is not in the unit.
    looks : tuple of Look
        Units opened at one place; empty where too little is drawn.
    built : tuple of Option
        How one of them is built.
    """

    suspects: tuple[Lettered, ...]
    today: tuple[Named, ...]
    pairs: tuple[Option, ...]
    tell: tuple[Option, ...]
    asked: tuple[Option, ...]
    sure: tuple[Option, ...]
    looks: tuple[Look, ...]
    built: tuple[Option, ...]


class MeshTeeth(Row, frozen=True):
    """A mesh in words, with the teeth of its two gears."""

    words: str
    driving: int
    driven: int


class Counted(Row, frozen=True):
    """A count: its id, turns of the outputs as told, turns of the input shaft."""

    id: str
    turns: float
    seen: float

    def text(self, outputs: str) -> str:
        """As it is asked of a unit whose outputs are called so."""
        return f"{self.turns:g} turns of {outputs}, {self.seen:g} of the input shaft"


class Count(Record, frozen=True):
    """Turns counted in one gear of a unit with other wheels than the course's.

    Attributes
    ----------
    gear : Named
    wheels : tuple of MeshTeeth
        The mesh of the gear, and the final drive where there is one.
    turns : float
        Of the wheels, on average; of the output shaft where there is no differential.
    step : float
        Least part of a turn that is read.
    counts : tuple of Counted
    says : tuple of Option
    """

    gear: Named
    wheels: tuple[MeshTeeth, ...]
    turns: float
    step: float
    counts: tuple[Counted, ...]
    says: tuple[Option, ...]


class Read(Row, frozen=True):
    """A reading of the scale, and what the other pair takes of it [N]."""

    id: str
    shown_n: float
    alone_n: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"the scale shows {self.shown_n:g} N, of which the other shaft takes {self.alone_n:g} N"
        )


class Cord(Record, frozen=True):
    """Pulls on the cord of a closed unit in neutral.

    Attributes
    ----------
    name, other : str
        Names of the pair judged and of the one that turns too.
    drum_mm : int
        Radius of the drum.
    low_n, high_n, doubt_n : float
        Limits for the pair judged, and doubt of a reading.
    readings : tuple of Read
        The first is worked out, all are judged.
    says : tuple of Option
    taken : Scenes
        How pulls were taken, and what that does to them.
    """

    name: str
    other: str
    drum_mm: int
    low_n: float
    high_n: float
    doubt_n: float
    readings: tuple[Read, ...]
    says: tuple[Option, ...]
    taken: Scenes


class Done(Row, frozen=True):
    """Two steps as they were done, by id and in letters."""

    first: str
    second: str
    text: str

    @property
    def id(self) -> str:
        """As the job sheet stores it."""
        return f"{self.first}+{self.second}"


class Blind(Record, frozen=True):
    """Steps, pairs of them as they were done, and what may have to be made again."""

    steps: tuple[Lettered, ...]
    done: tuple[Done, ...]
    again: tuple[Option, ...]


class Own(Record, frozen=True):
    """The learner's own unit.

    Attributes
    ----------
    record : tuple of Shown
        All checks.
    minutes : dict of str to float
        Time of each, by id.
    suspects : tuple of Lettered
    says : tuple of Option
        What may be in there: the id names the form (``one``, ``two``, ``alike``) and the letters.
    """

    record: tuple[Shown, ...]
    minutes: dict[str, float]
    suspects: tuple[Lettered, ...]
    says: tuple[Option, ...]


class Drawn(Record, frozen=True):
    """Opened units, drawn in section.

    Attributes
    ----------
    units : tuple of Opened
        In each of them one thing is wrong.
    lines : tuple of Option
        The units, to say of each how.
    how : tuple of Option
        Ways to be wrong, as the model of shapes tells them.
    """

    units: tuple[Opened, ...]
    lines: tuple[Option, ...]
    how: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    stop: Stop | None = None
    driver: Driver | None = None
    explain: Explain | None = None
    search: Search | None = None
    two: Two | None = None
    alike: Alike | None = None
    count: Count | None = None
    cord: Cord | None = None
    own: Own | None = None
    blind: Blind | None = None
    opened: Drawn | None = None
