"""What the tasks of this module give: a record each. Units stand in the names.

An ``Option`` that is no answer of a question is a step of the build: its id and its name.
"""

from __future__ import annotations

from twoshaft.readings.scenes import Scene
from twoshaft.records import Option, Record, Row


class SubAssembly(Record, frozen=True):
    """A sub-assembly to put in order.

    Attributes
    ----------
    stage : str
        Name of the stage that it belongs to.
    operations : tuple of str
        Its steps, as the unit file names them.
    start : tuple of Option
        The order that they came in, which earns nothing.
    """

    stage: str
    operations: tuple[str, ...]
    start: tuple[Option, ...]


class Group(Row, frozen=True):
    """A stage of the build, and its steps."""

    id: str
    name: str
    steps: tuple[str, ...]


class WholeUnit(Record, frozen=True):
    """The whole build, planned with a few steps out of place.

    Attributes
    ----------
    operations : tuple of str
    start : tuple of Option
        The order as planned.
    groups : tuple of Group
        The stages of the build.
    most_moves : int
        How many steps may be moved at most.
    """

    operations: tuple[str, ...]
    start: tuple[Option, ...]
    groups: tuple[Group, ...]
    most_moves: int


class HalfBuilt(Record, frozen=True):
    """A unit half built, in section.

    Attributes
    ----------
    done : tuple of str
        The steps done so far: all that leave nothing to see in the section, as far as they can be.
    scene : Scene
        What stands there; letters at parts that stand, and at places of parts that do not.
    waits, first : Option
        A step that waits for some of those parts, and one that others of them wait for.
    """

    done: tuple[str, ...]
    scene: Scene
    waits: Option
    first: Option


class NextSteps(Record, frozen=True):
    """A build as far as it has come, in the order done.

    ``options`` are steps that may be ready; ``answers`` that they are, or what they wait for.
    ``half`` is another build; None where the unit is not drawn.
    """

    operations: tuple[str, ...]
    done: tuple[Option, ...]
    options: tuple[Option, ...]
    answers: tuple[Option, ...]
    half: HalfBuilt | None = None


class Buried(Record, frozen=True):
    """A planned order in which one step closes off another.

    Attributes
    ----------
    operations : tuple of str
    sequence : tuple of Option
        The steps as planned.
    scene : Scene
        The build when the turn of the buried step comes; letters stand at parts of the steps.
    """

    operations: tuple[str, ...]
    sequence: tuple[Option, ...]
    scene: Scene


class Repair(Record, frozen=True):
    """A build in which one step was left out.

    Attributes
    ----------
    operations : tuple of str
        The steps of this part of the build.
    built : tuple of Option
        Those done so far, in order.
    late, found_at : Option
        The step left out, and the last one built.
    options : tuple of Option
        Steps that may have to come off.
    answers : tuple of Option
        What becomes of them.
    undo, do : dict of str to float
        Minutes to take apart and to do again, by step.
    """

    operations: tuple[str, ...]
    built: tuple[Option, ...]
    late: Option
    found_at: Option
    options: tuple[Option, ...]
    answers: tuple[Option, ...]
    undo: dict[str, float]
    do: dict[str, float]


class TimedStep(Row, frozen=True):
    """A step with its name and the minutes that it takes."""

    id: str
    name: str
    minutes: float


class Clock(Record, frozen=True):
    """A clock that runs while some steps are done.

    Attributes
    ----------
    clock, name, reason : str
        The unit's clock, what people call it, and why it runs.
    minutes : float
        As many are allowed.
    starts, ends : Option
        The step after which it runs, and the one that must be finished in time.
    steps : tuple of TimedStep
        The options, what has to lie between, and the end.
    options, answers : tuple of Option
    takes : dict of str to float
        Minutes by step.
    """

    clock: str
    name: str
    reason: str
    minutes: float
    starts: Option
    ends: Option
    steps: tuple[TimedStep, ...]
    options: tuple[Option, ...]
    answers: tuple[Option, ...]
    takes: dict[str, float]


class NewParts(Record, frozen=True):
    """Steps that were undone, in that order, parts, and what is done with them."""

    operations: tuple[str, ...]
    stripped: tuple[Option, ...]
    options: tuple[Option, ...]
    answers: tuple[Option, ...]


class Pair(Record, frozen=True):
    """Two steps of which one comes first."""

    earlier: Option
    later: Option


class Why(Record, frozen=True):
    """Pairs of steps, reasons of which one fits each, and the kinds of reason."""

    pairs: tuple[Pair, ...]
    reasons: tuple[Option, ...]
    kinds: tuple[Option, ...]


class SharedStep(Row, frozen=True):
    """A step by its letter: what is done, how long it takes, the letters that it waits for."""

    letter: str
    name: str
    minutes: int
    waits_for: str


class SeveralHands(Record, frozen=True):
    """A part of the build to share out; ``takes`` holds the minutes by step."""

    operations: tuple[str, ...]
    takes: dict[str, int]
    rows: tuple[SharedStep, ...]
    options: tuple[Option, ...]


class Plan(Row, frozen=True):
    """An order of the steps, by its letter."""

    letter: str
    steps: tuple[Option, ...]


class Safe(Record, frozen=True):
    """Plans with one slip or none, and what each may lead to."""

    operations: tuple[str, ...]
    orders: tuple[Plan, ...]
    options: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    sub_assembly: SubAssembly | None = None
    whole_unit: WholeUnit | None = None
    next_steps: NextSteps | None = None
    buried: Buried | None = None
    repair: Repair | None = None
    clock: Clock | None = None
    new_parts: NewParts | None = None
    why: Why | None = None
    several_hands: SeveralHands | None = None
    safe: Safe | None = None
