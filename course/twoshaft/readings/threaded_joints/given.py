"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.staked import StakedNut
from twoshaft.records import BenchRecord, Option, Question, Record, Row


class Factor(Row, frozen=True):
    """A state of thread and head: its id, its name, and K of T = K F d in it."""

    id: str
    name: str
    k: float


class State(Row, frozen=True):
    """A state of thread and head: its id and its name."""

    id: str
    name: str


class Bolt(BenchRecord, frozen=True):
    """What a job card says of a bolt.

    Attributes
    ----------
    group, name : str
        The unit's group of fasteners, and what people call it.
    thread : str
        As marked, ``M10x1.25-LH``.
    diameter_mm : float
    strength : str
        Strength class, ``8.8``.
    state : State
        The one that the torque is stated for.
    factors : tuple of Factor
        Every state, with its K.
    """

    group: str
    name: str
    thread: str
    diameter_mm: float
    strength: str
    state: State
    factors: tuple[Factor, ...]

    @property
    def k(self) -> float:
        """K in the state that the torque is stated for."""
        return next(one.k for one in self.factors if one.id == self.state.id)


class Wrench(Row, frozen=True):
    """A torque wrench of the drawer: its scale, its marks, its length to mid grip."""

    id: str
    name: str
    low_nm: float
    high_nm: float
    step_nm: float
    length_mm: float


class Card(Bolt, frozen=True):
    """An old job card.

    Attributes
    ----------
    unit : str
        Unit of the torque, as ``lbf·ft``.
    figure : float
        The torque in that unit.
    reach_mm, angle_deg : float
        The adapter.
    wrenches : tuple of Wrench
    """

    unit: str
    figure: float
    reach_mm: float
    angle_deg: float
    wrenches: tuple[Wrench, ...]


class Found(Bolt, frozen=True):
    """A bolt as somebody left it.

    Attributes
    ----------
    setting_nm, length_mm : float
        What the wrench was set to, and how long it is to mid grip.
    reach_mm, angle_deg : int or float
        The adapter; no reach without one.
    yields_kn : float
        Clamp at which the bolt yields in tightening.
    window_nm : tuple of float
        Least and most torque.
    """

    setting_nm: float
    length_mm: float
    reach_mm: int | float
    angle_deg: float
    yields_kn: float
    window_nm: tuple[float, float]


class WrongState(Bolt, frozen=True):
    """A bolt whose thread was found in another state than its torque is stated for."""

    torque_nm: float
    found: State


class Alloy(Bolt, frozen=True):
    """A bolt measured against its hole.

    Attributes
    ----------
    metal : str
        What the hole is in.
    pitch_mm : float
    meets_mm, good_mm : float
        Thread of bolt and hole that meets; good thread in the hole, to its end.
    per_mm_kn : float
        What each millimetre that meets carries before it strips.
    most_kn : float
        Most clamp that the torque can leave.
    safe : float
        So many times the most clamp the hole's thread must carry.
    """

    metal: str
    pitch_mm: float
    meets_mm: float
    good_mm: float
    per_mm_kn: float
    most_kn: float
    safe: float


class Blind(Bolt, frozen=True):
    """A blind hole with liquid in it.

    Attributes
    ----------
    pitch_mm, area_mm2 : float
        Of the thread, and of the hole's section.
    depth_mm, reach_mm : float
        Full depth of the hole; how deep the tip stands with the head down.
    oil_ml : float
        Liquid drawn out of it.
    boss_mm : float
        Outer diameter of what the hole is in.
    torque_nm : float
    """

    pitch_mm: float
    area_mm2: float
    depth_mm: float
    reach_mm: float
    oil_ml: float
    boss_mm: float
    torque_nm: float


class Face(Record, frozen=True):
    """A face to tighten.

    Attributes
    ----------
    group, name : str
    torque_nm, target_kn : float
        Torque of each pull, and the clamp aimed at.
    joint_share : float
        Stiffness of the joint against the unit's own.
    order : tuple of int
        The bolts as they are pulled, counted from 1.
    limit : float
        Spread that the joint bears, as a part of the clamp aimed at.
    bolts : tuple of Option
    """

    group: str
    name: str
    torque_nm: float
    target_kn: float
    joint_share: float
    order: tuple[int, ...]
    limit: float
    bolts: tuple[Option, ...]


class Before(Record, frozen=True):
    """A step of the build, and steps of which some must be done before it."""

    step: Option
    options: tuple[Option, ...]


class Pattern(Record, frozen=True):
    """A face on which some bolts have been pulled, counted from 1; ``options`` are the others."""

    group: str
    name: str
    pulled: tuple[int, ...]
    options: tuple[Option, ...]
    before: Before


class Nut(Bolt, frozen=True):
    """A shaft nut with its torque, and the length of the wrench to mid grip."""

    torque_nm: float
    length_mm: float


class Stake(StakedNut, frozen=True):
    """A nut that was staked: what may be done with it, and what may cost a nut."""

    todo: tuple[Option, ...]
    causes: tuple[Option, ...]


class Asked(Record, frozen=True):
    """One version of each question about the work itself."""

    hand_start: Question
    blind_do: Question
    lock: Question
    again: Question
    rounds: Question


class Job(Record, frozen=True):
    """A report of a finished job: which, its title, and its steps in the order of the work."""

    id: str
    title: str
    steps: tuple[Option, ...]


class Given(Record, frozen=True):
    """All that a learner is given in this module."""

    card: Card
    found: Found
    state: WrongState
    alloy: Alloy
    blind: Blind
    face: Face
    pattern: Pattern
    nut: Nut
    stake: Stake
    asked: Asked
    job: Job
