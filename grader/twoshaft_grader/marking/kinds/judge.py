"""What the marking knows of a kind of answer, and the register of the judges there are.

A judge is one class under the name of its kind::

    @judges("number")
    class NumberJudge(Judge): ...
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, ClassVar, TypeVar

from twoshaft.errors import CourseError
from twoshaft.jobsheet.kinds import Field
from twoshaft.readings import Stream
from twoshaft.units import Unit

Spread = tuple[tuple[float, float], ...]
"""Shares that a random answer can earn, with their probabilities, lowest share first."""


@dataclass(frozen=True)
class Slip:
    """A typical wrong answer: the part of the marks that it earns, and why it is wrong.

    Parameters
    ----------
    value : object
        The wrong answer (quantity, key, set of keys, order) or a function of the answer that
        says whether it is this slip. For several choices, one key: that option being ticked.
    share : float
        Part of the field's marks, 0 to 1.
    sentence : str
        What to tell the learner.
    safe : bool
        Whether it errs on the safe side: it may cost marks, but does not fail a must-pass item.
    """

    value: Any
    share: float
    sentence: str
    safe: bool = False


@dataclass(frozen=True)
class Reference:
    """What one field is marked against; made by ``ref``."""

    name: str
    value: Any
    outcome: str
    weight: float
    tolerance: Any
    must_pass: bool
    slips: tuple[Slip, ...]
    lesson: str
    shows: tuple[str, ...] = ()
    steps: int = 1


@dataclass(frozen=True)
class Seen:
    """Figures that lie before a learner as they answer a field.

    Attributes
    ----------
    given : record
        What its task gives.
    others : dict of str to object
        What is right of the task's other questions of the same kind, by the question.
    """

    given: Any = None
    others: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Pick:
    """One thing that is picked out of options as an answer is given.

    Attributes
    ----------
    about : str
        What is asked.
    options : dict of str to str
        Text of each option, by its key.
    right : frozenset of str
        Keys of those that are right.
    several : bool
        Whether any number may be picked.
    """

    about: str
    options: dict[str, str]
    right: frozenset[str]
    several: bool = False


@dataclass(frozen=True)
class Judgement:
    """What one answer is worth, and why.

    Attributes
    ----------
    share : float
        Part of the field's marks, 0 to 1.
    sentences : tuple of str
        At most two: what, why.
    cost : str
        What it would have cost at the bench, empty if nothing.
    safe : bool
        Whether a must-pass item is passed.
    slip : str
        Kind of slip that was recognised: "wrong unit", "slip of ten", "reversed sign",
        "listed", or empty.
    details : tuple of str
        Further rules that were broken.
    puzzling : bool
        Whether it says no more than that it is wrong: ``Judge.likely`` may know what was done.
    """

    share: float
    sentences: tuple[str, ...] = ()
    cost: str = ""
    safe: bool = True
    slip: str = ""
    details: tuple[str, ...] = ()
    puzzling: bool = False


class Judge(ABC):
    """What is right of one kind of answer.

    ``asked`` is always a field of the kind, ``reference`` what a solution gives for it, ``value``
    an answer as ``asked.read`` gives it, with parts open where it was answered in part.
    """

    kind: ClassVar[str] = ""
    wanted: ClassVar[str] = ""
    """What a reference must be, in words."""
    tolerates: ClassVar[bool] = False
    """Whether it goes by the tolerance of a reference."""

    @abstractmethod
    def accepts(self, asked: Any, value: Any) -> bool:
        """Whether a reference's value can ever be judged against."""

    @abstractmethod
    def judge(self, asked: Any, reference: Reference, value: Any) -> Judgement:
        """What an answer is worth; listed slips are looked for afterwards."""

    def owns(self, value: Any) -> bool:
        """Whether a reference's value is one that no other kind has."""
        return False

    def clean(self, value: Any) -> Any:
        """What a reference is worth to the working that follows it."""
        return value

    def carried(self, value: Any, own: Any) -> Any:
        """The learner's own value in the form of the reference."""
        return own

    def plausible(self, asked: Any, reference: Reference, own: Any, seen: Seen) -> bool:
        """Whether the working can go on with a learner's own value: whether it can be theirs; not
        with one with parts open."""
        return True

    def likely(self, references: Sequence[Reference], own: Any, seen: Seen) -> str:
        """What was most likely done instead, of an answer that :meth:`judge` finds puzzling; held
        against what each pass wants, the likelier first. Empty where there is nothing to say."""
        return ""

    def drawn(self, asked: Any, reference: Reference, value: Any, unit: Unit) -> str:
        """An answer that is not wholly right as a picture (SVG), with the right place in it; empty
        where a picture says no more than words."""
        return ""

    def is_slip(self, reference: Reference, slip: Slip, value: Any) -> bool:
        """Whether an answer is a listed slip that is given as a value."""
        return value == slip.value

    def slip_answer(self, value: Any) -> Any:
        """A listed slip as an answer to be judged; None for one that is part of an answer."""
        return value

    def picks(self, asked: Any, reference: Reference) -> tuple[Pick, ...]:
        """What is picked out of options; nothing where an answer is given in another way."""
        return ()

    def picked(self, asked: Any, keys: Sequence[Sequence[str]]) -> Any:
        """The stored answer to picks, keys for each of them; None where nothing is picked."""
        return None

    def unexplained(self, asked: Any, reference: Reference) -> Iterable[str]:
        """What no sentence explains of its wrong answers, where they can be listed."""
        return ()

    @abstractmethod
    def solve(self, asked: Any, value: Any) -> Any:
        """A full-mark answer, as a job sheet stores it."""

    @abstractmethod
    def spread(self, asked: Any, reference: Reference) -> Spread:
        """What a random answer earns."""

    def mean_share(self, asked: Any, reference: Reference, skill: float) -> float:
        """What somebody earns on average who gets a step of the work right with a chance of
        ``skill``, and answers at random where a step fails. By default an answer is one step."""
        luck = sum(share * chance for share, chance in self.spread(asked, reference))
        return skill + (1 - skill) * luck

    @abstractmethod
    def guess(self, asked: Any, reference: Reference, source: Any) -> Any:
        """A random answer as a sheet stores it; ``source`` is a ``random.Random``."""

    def spoil(self, asked: Any, stored: Any, stream: Stream) -> Any:
        """A right stored answer with one typical slip in it."""
        return stored

    def mistype(self, asked: Any, stored: Any, stream: Stream) -> Any:
        """A stored answer typed in the wrong unit, without one, or off by ten."""
        return stored


JUDGES: dict[str, Judge] = {}
"""The judge of each kind of answer, by its name."""

J = TypeVar("J", bound=type[Judge])


def judges(kind: str) -> Callable[[J], J]:
    """Register a class as the judge of a kind. ValueError if there is one already."""

    def register(judge: J) -> J:
        if kind in JUDGES:
            raise ValueError(f"the kind of answer {kind!r} has two judges")
        judge.kind = kind
        JUDGES[kind] = judge()
        return judge

    return register


def judge_of(asked: Field) -> Judge:
    """The judge of a field's kind. CourseError when the kind has none."""
    if asked.kind not in JUDGES:
        raise CourseError(
            f"no judge is registered for the kind of answer {asked.kind!r} (field {asked.name!r})",
            mend="write one beside the others in the marking",
        )
    return JUDGES[asked.kind]


def judge(asked: Field, reference: Reference, value: Any) -> Judgement:
    """Judge an answer that could be read.

    Parameters
    ----------
    asked : Field
        The field.
    reference : Reference
        What is right.
    value : object
        The answer, as ``asked.read`` gives it.

    Returns
    -------
    Judgement
        A listed slip earns its share and its sentence; one that errs on the safe side passes a
        must-pass item, and no slip passes one that the answer itself fails otherwise.
    """
    mine = judge_of(asked)
    judged = mine.judge(asked, reference, value)
    if judged.share >= 1:
        return judged
    slip = next((one for one in reference.slips if _matches(mine, reference, one, value)), None)
    if slip is None:
        return judged
    safe = judged.safe or slip.safe
    return Judgement(slip.share, (slip.sentence,), judged.cost, safe, "listed")


def _matches(mine: Judge, reference: Reference, slip: Slip, value: Any) -> bool:
    if not callable(slip.value):
        return mine.is_slip(reference, slip, value)
    try:
        return bool(slip.value(value))
    except Exception:  # it was written for answers of another size or unit
        return False
