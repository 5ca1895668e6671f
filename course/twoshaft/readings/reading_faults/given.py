"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.records import Option, Record, Row


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


class Explain(Record, frozen=True):
    """The record of a unit in which one thing is wrong, and misbuilds that may explain it."""

    record: tuple[Shown, ...]
    options: tuple[Option, ...]


class Met(Row, frozen=True):
    """A misbuild, and in how many of 1000 units it is met."""

    id: str
    name: str
    often: float


class Two(Record, frozen=True):
    """A record that only one of the pairs explains.

    Attributes
    ----------
    record : tuple of Shown
    pairs : tuple of Option
        A pair's id is the ids of its two misbuilds joined by a plus.
    why : tuple of Option
    often : tuple of Met
        Two other misbuilds.
    """

    record: tuple[Shown, ...]
    pairs: tuple[Option, ...]
    why: tuple[Option, ...]
    often: tuple[Met, ...]


class Suspect(Row, frozen=True):
    """A misbuild that may be in the unit: its letter, and in how many of 1000 units it is met."""

    id: str
    letter: str
    name: str
    often: float


class Offered(Row, frozen=True):
    """A check, its time, and what it would show with which suspects."""

    id: str
    name: str
    minutes: float
    shows: str


class Next(Record, frozen=True):
    """Suspects, of which exactly one is in the unit, and checks to choose from.

    Attributes
    ----------
    suspects : tuple of Suspect
    checks : tuple of Offered
    asked, asked_check : str
        Id of the suspect and of the check that are asked about.
    """

    suspects: tuple[Suspect, ...]
    checks: tuple[Offered, ...]
    asked: str
    asked_check: str


class Dead(Record, frozen=True):
    """Suspects that are left, and checks of which some tell nothing about them."""

    suspects: tuple[Option, ...]
    checks: tuple[Option, ...]


class Numbered(Row, frozen=True):
    """A check with its number in the plans, its time, and what it would show."""

    id: str
    number: str
    name: str
    minutes: float
    shows: str


class Plan(Record, frozen=True):
    """Suspects, and checks each of which finds one of them.

    Attributes
    ----------
    suspects : tuple of Suspect
    checks : tuple of Numbered
    plans : pair of Option
        Two orders to work out; the id of an order is the ids of its checks joined by a plus.
    options : tuple of Option
        All orders.
    """

    suspects: tuple[Suspect, ...]
    checks: tuple[Numbered, ...]
    plans: tuple[Option, Option]
    options: tuple[Option, ...]


class Alike(Record, frozen=True):
    """Pairs of misbuilds; a pair's id is their ids joined by a plus. What may be taken apart."""

    pairs: tuple[Option, ...]
    strip: tuple[Option, ...]


class Silent(Record, frozen=True):
    """Misbuilds, and what may make sure that one is not in the unit."""

    options: tuple[Option, ...]
    sure: tuple[Option, ...]


class MeshTeeth(Row, frozen=True):
    """A mesh in words, with the teeth of its two gears."""

    words: str
    driving: int
    driven: int


class Count(Record, frozen=True):
    """Turns counted in one gear.

    Attributes
    ----------
    gear : Named
    wheels : pair of MeshTeeth
        The mesh of the gear, and the final drive.
    turns : float
        Of the wheels, on average, as told.
    seen : float
        Turns of the input shaft, counted.
    step : float
        Least part of a turn that is read.
    says : tuple of Option
    """

    gear: Named
    wheels: tuple[MeshTeeth, MeshTeeth]
    turns: float
    seen: float
    step: float
    says: tuple[Option, ...]


class Cord(Record, frozen=True):
    """A pull on the cord of the closed unit in neutral.

    Attributes
    ----------
    check : Named
    name, other : str
        Names of the pair judged and of the one that turns too.
    shown_n, alone_n : float
        What the scale shows, and what the other one takes of it.
    drum_mm : float
        Radius of the drum.
    low_n, high_n, doubt_n : float
        Limits for the pair judged, and doubt of the reading.
    says : tuple of Option
    false : Option
        How a pull was taken wrongly another time.
    false_says : tuple of Option
    """

    check: Named
    name: str
    other: str
    shown_n: float
    alone_n: float
    drum_mm: float
    low_n: float
    high_n: float
    doubt_n: float
    says: tuple[Option, ...]
    false: Option
    false_says: tuple[Option, ...]


class Blind(Record, frozen=True):
    """Steps in the order in which they were done, one check blinded by it, and reasons."""

    steps: tuple[Option, ...]
    reasons: tuple[Option, ...]


class Own(Record, frozen=True):
    """The learner's own unit.

    Attributes
    ----------
    record : tuple of Shown
        All checks.
    minutes : dict of str to float
        Time of each, by id.
    options, says : tuple of Option
    """

    record: tuple[Shown, ...]
    minutes: dict[str, float]
    options: tuple[Option, ...]
    says: tuple[Option, ...]


class Given(Record, frozen=True):
    """All that a learner is given in this module."""

    stop: Stop
    explain: Explain
    two: Two
    next: Next
    dead: Dead
    plan: Plan
    alike: Alike
    silent: Silent
    count: Count
    cord: Cord
    blind: Blind
    own: Own
