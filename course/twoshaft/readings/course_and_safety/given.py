"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from typing import Any

from twoshaft.records import Option, Record, Row


class Link(Row, frozen=True):
    """A field of a marked sheet, its points, and what became of it."""

    name: str
    points: int
    became: str


class Course(Record, frozen=True):
    """Sentences about the course to tick, and fields of which each hangs on the one before."""

    options: tuple[Option, ...]
    chain: tuple[Link, ...]


class Written(Row, frozen=True):
    """A figure as somebody types it, and the unit that the field asks for."""

    text: str
    unit: str


class Forms(Record, frozen=True):
    """Figures to tick, and what is ``written`` in each, by the option's id."""

    options: tuple[Option, ...]
    written: dict[str, Written]


class Figures(Record, frozen=True):
    """Figures to bring into another unit.

    Attributes
    ----------
    torque_nm : int
        For a wrench whose scale is in lbf·ft.
    shim_mm : float
    foil_thou : int
        In thousandths of an inch.
    spacer_in : str
        In inches, as ``3/32``.
    turns : str
        As ``1 1/4``.
    degrees : int
        What comes on top of the turns.
    oil_l : float
        What the unit takes.
    jug_ml, jugs : int
        What a jug holds, and how many are in.
    """

    torque_nm: int
    shim_mm: float
    foil_thou: int
    spacer_in: str
    turns: str
    degrees: int
    oil_l: float
    jug_ml: int
    jugs: int


class Picture(Record, frozen=True):
    """The workshop: number of the view at each place, and the places as options."""

    views: dict[str, int]
    options: tuple[Option, ...]


class Danger(Record, frozen=True):
    """A place at which something is wrong.

    Attributes
    ----------
    place : Option
        Its id, its number and name.
    seen : str
        What can be seen there, said without judging it.
    acts, whys : tuple of Option
        What may be done, and reasons for it.
    """

    place: Option
    seen: str
    acts: tuple[Option, ...]
    whys: tuple[Option, ...]


class Acts(Record, frozen=True):
    """Places at which something is wrong on another day."""

    places: tuple[Danger, ...]


class First(Record, frozen=True):
    """A dangerous job to put in order.

    Attributes
    ----------
    job : str
    operations : tuple of str
        Its steps, as the file of jobs names them.
    start : tuple of Option
        The order that they came in, which earns nothing.
    """

    job: str
    operations: tuple[str, ...]
    start: tuple[Option, ...]


class Eyes(Record, frozen=True):
    """Jobs, for some of which eye protection is worn."""

    options: tuple[Option, ...]


class Caution(Record, frozen=True):
    """A caution, and reasons of which one is its own."""

    caution: Option
    options: tuple[Option, ...]


class Why(Record, frozen=True):
    """Cautions to give the reason for."""

    cautions: tuple[Caution, ...]


class Said(Row, frozen=True):
    """A figure of the lift in words."""

    what: str
    figure: str


class Lift(Record, frozen=True):
    """A lift to judge.

    Attributes
    ----------
    load : str
        What is lifted.
    mass_kg : float
    reach_cm, height_cm, travel_cm, twist_deg : int
        As ``models.lifting`` names them.
    per_minute : float
    grip : str
    rows : tuple of Said
    decisions, reasons, changes : tuple of Option
    """

    load: str
    mass_kg: float
    reach_cm: int
    height_cm: int
    travel_cm: int
    twist_deg: int
    per_minute: float
    grip: str
    rows: tuple[Said, ...]
    decisions: tuple[Option, ...]
    reasons: tuple[Option, ...]
    changes: tuple[Option, ...]

    def sizes(self) -> dict[str, Any]:
        """What the lifting equation asks for, by its names."""
        names = ("reach_cm", "height_cm", "travel_cm", "twist_deg", "per_minute", "grip")
        return {name: getattr(self, name) for name in names}


class Given(Record, frozen=True):
    """All that a learner is given in this module."""

    course: Course
    forms: Forms
    figures: Figures
    picture: Picture
    acts: Acts
    first: First
    eyes: Eyes
    why: Why
    lift: Lift
