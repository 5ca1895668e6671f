"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.staked import StakedNut
from twoshaft.records import BenchRecord, Option, Record, Row, Scenes


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


class Seen(Record, frozen=True):
    """A face as a picture: by how much it is turned, bolts that are tight, counted from 1, in
    their order, and letters, each with its bolt."""

    group: str
    turned_deg: int
    pulled: tuple[int, ...]
    spots: tuple[Option, ...]

    def letter(self, bolt: int) -> str:
        """The letter of a bolt, counted from 1."""
        return {spot.text: spot.id for spot in self.spots}[str(bolt)]


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
    seen : Seen or None
        The same face at another bench, some bolts pulled once; None where none of them has lost
        clearly more than the others.
    """

    group: str
    name: str
    torque_nm: float
    target_kn: float
    joint_share: float
    order: tuple[int, ...]
    limit: float
    bolts: tuple[Option, ...]
    seen: Seen | None


class Before(Record, frozen=True):
    """A step of the build, and steps of which some must be done before it."""

    step: Option
    options: tuple[Option, ...]


class Pattern(Record, frozen=True):
    """A face on which some bolts have been pulled."""

    name: str
    seen: Seen
    before: Before


class Nut(Bolt, frozen=True):
    """A shaft nut with its torque, and the length of the wrench to mid grip."""

    torque_nm: float
    length_mm: float


class Stake(StakedNut, frozen=True):
    """A nut that was staked, and what may be done with it."""

    todo: tuple[Option, ...]


class Thread(Row, frozen=True):
    """A thread as it was found: its id, what is seen, and the state that its torque is for."""

    id: str
    text: str
    stated: str


class Hole(Row, frozen=True):
    """A blind hole: its id, its depth, how deep the tip reaches, how high liquid stands [mm]."""

    id: str
    depth_mm: int
    reach_mm: int
    liquid_mm: int

    @property
    def text(self) -> str:
        """As it is asked."""
        return (
            f"{self.depth_mm} mm deep; the tip reaches {self.reach_mm} mm, head down; "
            f"liquid stands {self.liquid_mm} mm high"
        )


class Turn(Row, frozen=True):
    """A shaft nut: its id, thread and torque, whether it is undone, and from where it is seen."""

    id: str
    thread: str
    torque_nm: int
    undo: bool
    from_behind: bool

    @property
    def text(self) -> str:
        """As it is asked."""
        act = "undo from" if self.undo else "tighten to"
        end = "the far end of the shaft" if self.from_behind else "the nut"
        return f"{self.thread}: {act} {self.torque_nm} N·m, seen from {end}"


class Asked(Record, frozen=True):
    """The questions about the work itself: a few scenes each.

    Attributes
    ----------
    threads, holes, turns : tuple of Thread, Hole, Turn
    threads_answers, holes_answers, turns_answers : tuple of Option
        The answers that each of them offers.
    hand_start, blind_do, rounds, lock, again, steps : Scenes
    """

    threads: tuple[Thread, ...]
    threads_answers: tuple[Option, ...]
    holes: tuple[Hole, ...]
    holes_answers: tuple[Option, ...]
    turns: tuple[Turn, ...]
    turns_answers: tuple[Option, ...]
    hand_start: Scenes
    blind_do: Scenes
    rounds: Scenes
    lock: Scenes
    again: Scenes
    steps: Scenes


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    card: Card | None = None
    found: Found | None = None
    state: WrongState | None = None
    alloy: Alloy | None = None
    blind: Blind | None = None
    face: Face | None = None
    pattern: Pattern | None = None
    nut: Nut | None = None
    stake: Stake | None = None
    asked: Asked | None = None
