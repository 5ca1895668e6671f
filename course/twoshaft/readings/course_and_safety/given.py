"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from typing import Any

from twoshaft.records import Option, Record, Row, Scenes


class Link(Row, frozen=True):
    """A field of a marked sheet, its points, and what became of it."""

    name: str
    points: int
    became: str


class Course(Record, frozen=True):
    """Cases of a learner's own work, and fields of which each hangs on the one before."""

    cases: Scenes
    chain: tuple[Link, ...]


class Written(Row, frozen=True):
    """A figure as somebody types it, the unit asked for, and the way it is written."""

    text: str
    unit: str
    way: str


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


class Said(Row, frozen=True):
    """A figure of the lift in words."""

    what: str
    figure: str


class Load(Row, frozen=True):
    """A load to decide on.

    Attributes
    ----------
    id, name : str
    mass_kg : float
        0 where nothing says what it weighs.
    limit_kg : float
        The limit of this lift by hand.
    table_kg : int
        What the lift table at hand is marked for.
    """

    id: str
    name: str
    mass_kg: float
    limit_kg: float
    table_kg: int

    @property
    def said(self) -> str:
        """The load and its figures, in words."""
        weight = f"{self.mass_kg:g} kg" if self.mass_kg else "its weight not marked"
        return (
            f"{self.name}, {weight}. By hand the limit is {self.limit_kg:g} kg; "
            f"the table is marked {self.table_kg} kg."
        )


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
    table_kg : int
        What the lift table at hand is marked for.
    rows : tuple of Said
    others : tuple of Load
        Other loads, to decide on.
    answers : tuple of Option
        What may be done with each load.
    """

    load: str
    mass_kg: float
    reach_cm: int
    height_cm: int
    travel_cm: int
    twist_deg: int
    per_minute: float
    grip: str
    table_kg: int
    rows: tuple[Said, ...]
    others: tuple[Load, ...]
    answers: tuple[Option, ...]

    def sizes(self) -> dict[str, Any]:
        """What the lifting equation asks for, by its names."""
        names = ("reach_cm", "height_cm", "travel_cm", "twist_deg", "per_minute", "grip")
        return {name: getattr(self, name) for name in names}


class Hung(Row, frozen=True):
    """A case on a hoist, as the model of lifting tells it."""

    letter: str
    mass_kg: int
    mark_kg: int
    broken: int
    aside_cm: int
    person: bool


class Acts(Scenes, frozen=True):
    """Places in the workshop and what may be done at each; cases on a hoist, and what is to be
    found among them."""

    hung: tuple[Hung, ...]
    asked: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    course: Course | None = None
    forms: Forms | None = None
    figures: Figures | None = None
    picture: Picture | None = None
    acts: Acts | None = None
    first: First | None = None
    eyes: Scenes | None = None
    why: Scenes | None = None
    lift: Lift | None = None
