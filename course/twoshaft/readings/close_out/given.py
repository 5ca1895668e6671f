"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.models.closeout import load_road
from twoshaft.readings.scenes import Look, Near
from twoshaft.records import Option, Record, Row, Scenes


class Drum(Row, frozen=True):
    """A drum of oil: what its label still shows, and its data sheet [mm²/s at 40 °C and 100 °C]."""

    id: str
    winter: str
    label: str
    at_40: float
    at_100: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return f"Drum {self.id}: {self.winter}, {self.label}"


class Oil(Record, frozen=True):
    """Drums of oil, and what may be done with each.

    Attributes
    ----------
    drums : tuple of Drum
    read, read_c : str, float
        Drum whose line is read in the chart, and at which temperature [°C].
    grades, answers : tuple of Option
    """

    drums: tuple[Drum, ...]
    read: str
    read_c: float
    grades: tuple[Option, ...]
    answers: tuple[Option, ...]


class Shifted(Row, frozen=True):
    """A shift down with another oil: friction at the cone, drag of the oil, torque of the cone with
    the right oil [N·m]."""

    id: str
    friction: float
    drag_nm: float
    right_nm: float
    right_friction: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"With the right oil (friction {self.right_friction:g}) the cone brakes with "
            f"{self.right_nm:g} N·m. Now: friction {self.friction:g}, drag {self.drag_nm:g} N·m"
        )


class Ring(Record, frozen=True):
    """The work of an own ring, and shifts with other oils.

    Attributes
    ----------
    what : str
    force_n, friction, diameter_mm, angle_deg : float
        Of the cone; the angle is the half angle.
    inertia_kg_m2, speed_rpm : float
        What is brought to speed, and the difference of speed.
    wrong_friction : float
        At the cone, with the wrong oil.
    others : tuple of Shifted
    answers : tuple of Option
    """

    what: str
    force_n: float
    friction: float
    diameter_mm: float
    angle_deg: float
    inertia_kg_m2: float
    speed_rpm: float
    wrong_friction: float
    others: tuple[Shifted, ...]
    answers: tuple[Option, ...]


class Level(Row, frozen=True):
    """What was found at the plug: below zero, oil runs out [mm]; slope [degrees], oil [°C]."""

    id: str
    below_mm: float
    slope_deg: float
    oil_c: float

    @property
    def text(self) -> str:
        """As it is asked."""
        stands = (
            f"The oil stands {self.below_mm:g} mm below the edge"
            if self.below_mm > 0
            else f"The oil stands {-self.below_mm:g} mm above the edge and runs out"
            if self.below_mm < 0
            else "The oil stands at the edge"
        )
        floor = f"on a slope of {self.slope_deg:g}°" if self.slope_deg else "level"
        return f"{stands}. The unit stands {floor}, its oil is at {self.oil_c:g} °C"


class Fill(Record, frozen=True):
    """The filling of an own unit, its level, and levels of others.

    Attributes
    ----------
    can_c : float
        Temperature of the oil that is measured off [°C].
    below_mm : float
        Later, level and cold: how far the oil stands below the edge.
    slope_deg : float
        Slope of a yard, the plug's side high.
    others : tuple of Level
    answers : tuple of Option
    """

    can_c: float
    below_mm: float
    slope_deg: float
    others: tuple[Level, ...]
    answers: tuple[Option, ...]


class Closed(Row, frozen=True):
    """A unit with a blocked breather: temperatures [°C], seal's limit [mbar]."""

    id: str
    closed_c: float
    now_c: float
    seal_mbar: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"Blocked at {self.closed_c:g} °C, now {self.now_c:g} °C; its seals hold "
            f"{self.seal_mbar:g} mbar"
        )


class Breather(Record, frozen=True):
    """An own unit with a blocked breather, and others.

    Attributes
    ----------
    closed_c, hot_c : float
        Temperature when the breather blocked, and on the road [°C].
    outside_mbar : float
    others : tuple of Closed
    answers : tuple of Option
    """

    closed_c: float
    hot_c: float
    outside_mbar: float
    others: tuple[Closed, ...]
    answers: tuple[Option, ...]


class Tested(Row, frozen=True):
    """Another unit under test: leak found, largest leak allowed, uncertainty [mL/min]."""

    id: str
    leak: float
    most: float
    u: float

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"Leak {self.leak:.1f} mL/min, allowed {self.most:g} mL/min, standard uncertainty "
            f"{self.u:.1f} mL/min"
        )


class Foam(Record, frozen=True):
    """The unit in section, and parts of it that keep the oil in."""

    near: Near
    lines: tuple[Option, ...]


class Leak(Record, frozen=True):
    """The leak test of an own unit, and others.

    Attributes
    ----------
    outside_mbar, start_mbar, end_mbar : float
        Outside from vacuum; inside over that outside.
    start_c, end_c : float
        Air in the unit [°C].
    litres, minutes : float
    most, u : float
        Largest leak allowed, standard uncertainty of the leak [mL/min].
    others : tuple of Tested
    answers : tuple of Option
    foam : Foam or None
        Where the soapy water foams; None where too little is drawn.
    """

    outside_mbar: float
    start_mbar: float
    end_mbar: float
    start_c: float
    end_c: float
    litres: float
    minutes: float
    most: float
    u: float
    others: tuple[Tested, ...]
    answers: tuple[Option, ...]
    foam: Foam | None


class Complaint(Row, frozen=True):
    """What a road test found: ids of checks that were so, and of those that were not."""

    id: str
    so: tuple[str, ...]
    not_so: tuple[str, ...]

    @property
    def was_so(self) -> str:
        """What was so, in words."""
        return ". ".join(load_road().checks[check] for check in self.so)

    @property
    def was_not_so(self) -> str:
        """What was not so, in words."""
        return ". ".join(load_road().checks[check] for check in self.not_so) or "–"


class Pair(Row, frozen=True):
    """Two causes that explain what is known so far, by their ids."""

    id: str
    one: str
    other: str

    @property
    def text(self) -> str:
        """As it is asked."""
        causes = load_road().causes
        return f"{causes[self.one]} – or: {causes[self.other]}"


class Road(Record, frozen=True):
    """Complaints with what was tried on the road, pairs of causes, and what may be tried; units
    opened at a seal, and how one of them is built. ``looks`` is empty where no seal is drawn."""

    complaints: tuple[Complaint, ...]
    causes: tuple[Option, ...]
    pairs: tuple[Pair, ...]
    checks: tuple[Option, ...]
    looks: tuple[Look, ...]
    built: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that the module's tasks give; None what the unit has nothing for."""

    oil: Oil | None = None
    ring: Ring | None = None
    fill: Fill | None = None
    breather: Breather | None = None
    leak: Leak | None = None
    joined: Scenes | None = None
    record: Scenes | None = None
    hand: Scenes | None = None
    road: Road | None = None
    safe: Scenes | None = None
