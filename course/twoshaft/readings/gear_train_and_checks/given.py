"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.scenes import Look, Near
from twoshaft.records import BenchRecord, Option, Record, Row, Scenes


class Named(Row, frozen=True):
    """A gear or a step: its id and its name."""

    id: str
    name: str


class MeshTeeth(Row, frozen=True):
    """A mesh along a path, in words, with the teeth of its two gears."""

    words: str
    driving: int
    driven: int


class Chain(Row, frozen=True):
    """A row of wheels in mesh: its id, and the teeth of each."""

    id: str
    teeth: tuple[int, ...]

    @property
    def text(self) -> str:
        """As it is asked."""
        return f"{', '.join(map(str, self.teeth))} teeth: the last turns"


class Path(BenchRecord, frozen=True):
    """A forward gear and reverse.

    Attributes
    ----------
    gear, reverse : Named
    wheels : tuple of MeshTeeth
        Along the path of the gear, the final drive last.
    back : tuple of MeshTeeth
        Of reverse, from the input shaft by the idler to the output shaft.
    chains : tuple of Chain
        Other rows of wheels.
    ways : tuple of Option
        Which way the last of a row turns.
    """

    gear: Named
    reverse: Named
    wheels: tuple[MeshTeeth, ...]
    back: tuple[MeshTeeth, ...]
    chains: tuple[Chain, ...]
    ways: tuple[Option, ...]


class Count(BenchRecord, frozen=True):
    """Another gear to count.

    Attributes
    ----------
    gear : Named
    wheels : tuple of MeshTeeth
        Along its path, the final drive last.
    held_turns : int
        Turns of the left wheel, the right one held.
    left_turns, right_turns : float
        What the wheels made when both were free.
    """

    gear: Named
    wheels: tuple[MeshTeeth, ...]
    held_turns: int
    left_turns: float
    right_turns: float


class Total(Row, frozen=True):
    """Signed turns of the input shaft, and those of the ring gear that go with them."""

    input: int
    ring_gear: int


class Teeth(Row, frozen=True):
    """A gear and the teeth of its meshes, in words."""

    gear: str
    words: str


class Where(Record, frozen=True):
    """Gears of the unit in section, and wheels of some to be pointed at.

    The id of a line is that of a gear, a hyphen, and the side of its mesh.
    """

    near: Near
    lines: tuple[Option, ...]


class Which(Record, frozen=True):
    """A closed unit with one gear in.

    Attributes
    ----------
    inside : Total
        How the gear that is in turns; which gear has this total is to be found out.
    gears : tuple of Option
    wheels : tuple of Teeth
    ways : tuple of Option
    where : Where or None
        Its gears in section; None where they are not drawn.
    """

    inside: Total
    gears: tuple[Option, ...]
    wheels: tuple[Teeth, ...]
    ways: tuple[Option, ...]
    where: Where | None


class Turns(Row, frozen=True):
    """A gear, and the turns of the input shaft for one of the ring gear, without a sign."""

    gear: str
    turns: float


class AskedPair(Row, frozen=True):
    """Two gears by id, and both in words."""

    one: str
    other: str
    words: str


class Reading(Row, frozen=True):
    """A count: its id, turns of the output, signed turns of the input as read, the least count."""

    id: str
    output_turns: int
    input_turns: float
    step_turns: float

    @property
    def text(self) -> str:
        """As it is asked."""
        way = "the same way" if self.input_turns > 0 else "the other way"
        return (
            f"output {self.output_turns}, input {abs(self.input_turns):g}, {way}; "
            f"read to {self.step_turns:g}"
        )


class Apart(Record, frozen=True):
    """A coarse count.

    Attributes
    ----------
    turns : int
        Turns of the output that are counted.
    step_turns : float
        Least count.
    step_words, counted : str
        The least count in words; the way of counting as ``count_turns`` of the models takes it.
    totals : tuple of Turns
    asked : AskedPair
    readings : tuple of Reading
    answers : tuple of Option
        Every gear, and what else a reading can say.
    """

    turns: int
    step_turns: float
    step_words: str
    counted: str
    totals: tuple[Turns, ...]
    asked: AskedPair
    readings: tuple[Reading, ...]
    answers: tuple[Option, ...]


class Sleeve(Row, frozen=True):
    """A synchroniser, and the gears that its sleeve engages, in words."""

    name: str
    serves: str


class PairOfTeeth(Row, frozen=True):
    """Teeth of the two gears of a mesh."""

    driving: int
    driven: int


class Card(Row, frozen=True):
    """Another unit: its letter, its teeth in words, and the teeth of two of its meshes."""

    letter: str
    words: str
    meshes: tuple[PairOfTeeth, PairOfTeeth]


class Cards(Record, frozen=True):
    """Five other units.

    Attributes
    ----------
    gears, meshes : pair of str
        Ids of the two gears, and of the mesh of each, that the teeth are for.
    sets : tuple of Card
    """

    gears: tuple[str, str]
    meshes: tuple[str, str]
    sets: tuple[Card, ...]


class Lock(Record, frozen=True):
    """Two gears at once.

    Attributes
    ----------
    pairs : tuple of Option
    keys : dict of str to pair of str
        The two gears of each pair, by the pair's id.
    sleeves : tuple of Sleeve
    engaged : pair of Named
    left_turns : float
        Turns of the left wheel by hand, forward.
    first : Scenes
    cards : Cards
    """

    pairs: tuple[Option, ...]
    keys: dict[str, tuple[str, str]]
    sleeves: tuple[Sleeve, ...]
    engaged: tuple[Named, Named]
    left_turns: float
    first: Scenes
    cards: Cards


class Play(BenchRecord, frozen=True):
    """A side gear under the dial indicator.

    Attributes
    ----------
    side : str
        ``left`` or ``right``.
    inwards_mm, outwards_mm : float
        Readings with the gear pushed inwards and pulled outwards.
    fitted_mm : float
        The washer that is in.
    washers : tuple of Option
    limits_mm : pair of float
        Least and most play.
    doubt_mm : float
        How far the play read may be off, either way.
    verdicts : tuple of Option
    when : Scenes
    """

    side: str
    inwards_mm: float
    outwards_mm: float
    fitted_mm: float
    washers: tuple[Option, ...]
    limits_mm: tuple[float, float]
    doubt_mm: float
    verdicts: tuple[Option, ...]
    when: Scenes


class Ring(Record, frozen=True):
    """A synchroniser ring.

    Attributes
    ----------
    id, name : str
        Of its synchroniser.
    new_mm, least_mm : float
        Gap of a new ring, and the least gap.
    half_angle_deg : float
        Of its cone.
    """

    id: str
    name: str
    new_mm: float
    least_mm: float
    half_angle_deg: float


class ReadRing(Ring, frozen=True):
    """A ring with the gap [mm] at each place."""

    readings_mm: tuple[float, ...]

    @property
    def text(self) -> str:
        """As it is asked."""
        places = ", ".join(f"{mm:.2f}" for mm in self.readings_mm)
        return f"new {self.new_mm:.2f}, least {self.least_mm:.2f}; places {places} mm"


class Gap(BenchRecord, frozen=True):
    """Gaps of rings under the feeler.

    Attributes
    ----------
    ring : Ring
        The one to be judged.
    readings_mm : tuple of float
        Its gap at each place.
    blade_mm : float
        Step from one blade to the next.
    decide : tuple of Option
    others : tuple of ReadRing
        Rings whose gaps tell something.
    """

    ring: Ring
    readings_mm: tuple[float, ...]
    blade_mm: float
    decide: tuple[Option, ...]
    others: tuple[ReadRing, ...]


class ConeRing(Ring, frozen=True):
    """A ring with the mean diameter of its cone, and the friction with the right oil."""

    mean_diameter_mm: float
    friction: float


class Cone(Record, frozen=True):
    """A ring that is pressed on its cone.

    Attributes
    ----------
    ring : ConeRing
    force_n : int
        Along the shaft.
    wrong_friction : float
        With oil of another kind.
    fit : Scenes
        Parts as they go in.
    looks : tuple of Look
        The same place of four units; empty where too little is drawn.
    built : tuple of Option
        How one of them is built.
    """

    ring: ConeRing
    force_n: int
    wrong_friction: float
    fit: Scenes
    looks: tuple[Look, ...]
    built: tuple[Option, ...]


class Speed(BenchRecord, frozen=True):
    """Road speed, and a count at the speed drive.

    Attributes
    ----------
    gear : Named
    total : float
        Its ratio with the final drive.
    input_rpm : int
    radius_mm : float
        Rolling radius of the tyre.
    drive : PairOfTeeth
        The speed-drive gear and the right pinion.
    wheel_turns : int
        Turns of both wheels.
    counted_turns, step_turns : float
        Turns counted at the pinion, and the least count.
    pinions, shown : tuple of Option
    """

    gear: Named
    total: float
    input_rpm: int
    radius_mm: float
    drive: PairOfTeeth
    wheel_turns: int
    counted_turns: float
    step_turns: float
    pinions: tuple[Option, ...]
    shown: tuple[Option, ...]


class Bond(Record, frozen=True):
    """Two steps, and true reasons of which one fits them."""

    earlier: Named
    later: Named
    options: tuple[Option, ...]


class Final(Record, frozen=True):
    """The last checks.

    Attributes
    ----------
    operations : tuple of str
        Ids of the steps, in the unit's order.
    start : tuple of Option
        The steps in the order shown.
    pair : Bond
    """

    operations: tuple[str, ...]
    start: tuple[Option, ...]
    pair: Bond


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    path: Path | None = None
    count: Count | None = None
    which: Which | None = None
    apart: Apart | None = None
    lock: Lock | None = None
    play: Play | None = None
    gap: Gap | None = None
    cone: Cone | None = None
    speed: Speed | None = None
    final: Final | None = None
    hands: Scenes | None = None
