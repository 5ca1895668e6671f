"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.scenes import Hand, Look
from twoshaft.records import Option, Record, Row, Scenes


class Named(Row, frozen=True):
    """A step or gear: its id and its name."""

    id: str
    name: str


class Pace(Record, frozen=True):
    """Minutes on a face: film and bead for 100 mm, wiping a spot, and closing it."""

    film: float
    bead: float
    wipe: float
    close: float


class Spot(Record, frozen=True):
    """Oil or dirt on a face: which, the line that it lies along [mm], and how wide it is."""

    what: str
    points: tuple[tuple[float, float], ...]
    width_mm: float


class Face(Record, frozen=True):
    """What differs on a face, as ``film.Work.of`` of the models takes it."""

    pace: Pace
    spots: tuple[Spot, ...]


class Lies(Record, frozen=True):
    """How parts lie: the wrong way in play, the way in which they lie (empty: right), in words."""

    way: str
    so: str
    seen: str


class Bench(Record, frozen=True):
    """The learner's own unit; as plain data, what ``Job.of`` of the models takes.

    Attributes
    ----------
    asked : tuple of str
        Ids of the decisions that the builder takes.
    lengths_mm : dict of str to dict of str to float
        Measured lengths by support and term.
    found : dict of str to str
        State in which the threads of a group are found.
    faces : dict of str to Face
    lies : dict of str to Lies
        How the parts of an operation lie before they go in, by operation.
    threads : dict of str to str
        What the card says of the threads of a group and what is seen on them, by group.
    worn : tuple of str
        Misbuilds that came with the parts.
    seed : str
        Decides in which order options are shown.
    """

    asked: tuple[str, ...]
    lengths_mm: dict[str, dict[str, float]]
    found: dict[str, str]
    faces: dict[str, Face]
    lies: dict[str, Lies]
    threads: dict[str, str]
    worn: tuple[str, ...]
    seed: str


class Stands(Row, frozen=True):
    """What stands of a stage."""

    stage: str
    words: str


class Plan(Record, frozen=True):
    """Steps stage by stage, those of a stage out of order; the stage's name by step.

    Attributes
    ----------
    start : tuple of Option
    stages : dict of str to str
    done : tuple of str
        Ids of steps that stand in a build that somebody has begun.
    stands : tuple of Stands
        The same in words, stage by stage.
    next : tuple of Option
        Steps of which it is asked whether they can be done then.
    """

    start: tuple[Option, ...]
    stages: dict[str, str]
    done: tuple[str, ...]
    stands: tuple[Stands, ...]
    next: tuple[Option, ...]


class Ways(Record, frozen=True):
    """Parts of another unit of the kind, to be put in; None where no section shows them."""

    into: Hand | None


class Taking(Row, frozen=True):
    """A step by name, and the minutes that it takes."""

    name: str
    minutes: float


class Clock(Record, frozen=True):
    """A clock of the unit with the minutes of this learner's steps.

    Attributes
    ----------
    clock, name : str
        Id and name of the clock.
    minutes : float
        What it allows.
    starts, ends : Named
        Steps with the end of which it starts and ends.
    inside : tuple of Taking
        What must be done inside.
    options : tuple of Option
    takes : dict of str to float
        Minutes of each step named here, by id.
    """

    clock: str
    name: str
    minutes: float
    starts: Named
    ends: Named
    inside: tuple[Taking, ...]
    options: tuple[Option, ...]
    takes: dict[str, float]


class MeshTeeth(Row, frozen=True):
    """A mesh in words, with the teeth of its two gears."""

    words: str
    driving: int
    driven: int


class Turns(Record, frozen=True):
    """A gear to be counted.

    Attributes
    ----------
    gear : Named
    wheels : pair of MeshTeeth
        The mesh of the gear, and the final drive.
    turns : int
        Of one wheel.
    counted : str
        How, as ``count_turns`` of the models takes it.
    step : float
        Least part of a turn that is read.
    """

    gear: Named
    wheels: tuple[MeshTeeth, MeshTeeth]
    turns: int
    counted: str
    step: float


class Doing(Row, frozen=True):
    """A step, and the minutes to undo and to do it."""

    id: str
    name: str
    undo_min: float
    do_min: float


class Seen(Row, frozen=True):
    """A part that went in wrongly and the final checks that were made then: ids, and in words."""

    id: str
    words: str
    operation: str
    way: str
    checks: tuple[str, ...]


class Late(Record, frozen=True):
    """A part seen to be the wrong way round some steps later.

    Attributes
    ----------
    ask, way : str
        Id of the decision, and of what was decided.
    name, words : str
        Name of the part, and what was done wrongly.
    done : tuple of str
        Ids of the steps built so far.
    rows : tuple of Doing
        From the wrong step on.
    options : tuple of Option
        Steps that may have to come off.
    others : tuple of Seen
        Other parts that went in wrongly, and checks that were made.
    shown : tuple of Option
        Whether one of those checks shows it.
    looks : tuple of Look
        One place of four units, before it is covered; empty where too little is drawn.
    built : tuple of Option
        How one of them is built.
    """

    ask: str
    way: str
    name: str
    words: str
    done: tuple[str, ...]
    rows: tuple[Doing, ...]
    options: tuple[Option, ...]
    others: tuple[Seen, ...]
    shown: tuple[Option, ...]
    looks: tuple[Look, ...]
    built: tuple[Option, ...]


class Notes(Record, frozen=True):
    """Lines of a record, checks with who may sign, and cases with what may be done."""

    record: Scenes
    signed: Scenes
    scenes: tuple[Option, ...]
    do: tuple[Option, ...]


class Felt(Record, frozen=True):
    """What proofs of a lockout showed, and what may be made of them."""

    scenes: tuple[Option, ...]
    says: tuple[Option, ...]


class Others(Record, frozen=True):
    """What others have done: flanges after a round, and checks; with what comes next."""

    flange: Scenes
    made: Scenes


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    bench: Bench | None = None
    plan: Plan | None = None
    ways: Ways | None = None
    parts: Scenes | None = None
    clock: Clock | None = None
    turns: Turns | None = None
    late: Late | None = None
    notes: Notes | None = None
    felt: Felt | None = None
    others: Others | None = None
