"""The order-of-work section: parts, tools, operations and what binds their order.

Ids are lower-case words joined by hyphens; every text is plain and short. In a file, keys are
written with spaces (``any of``, ``minutes to do``), and a list of one may be a single word.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Any, Self

from pydantic import (
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    StringConstraints,
    model_validator,
)

from twoshaft.units.sections.tool_forms import ToolForm, typical_form

Id = Annotated[str, StringConstraints(pattern=r"^[a-z0-9]+(-[a-z0-9]+)*$", max_length=60)]
Text = Annotated[str, StringConstraints(min_length=3, strip_whitespace=True)]


def _listed(value: Any) -> Any:
    return (value,) if isinstance(value, str) else value


Ids = Annotated[tuple[Id, ...], BeforeValidator(_listed)]


def _spoken(name: str) -> str:
    return name.replace("_", " ")


class Section(BaseModel):
    """Base of all entries: unknown keys are refused, so a typing slip is seen.

    A field ``single_use`` is written ``single use`` in a file.
    """

    model_config = ConfigDict(
        extra="forbid",
        frozen=True,
        populate_by_name=True,
        alias_generator=_spoken,
    )

    def __hash__(self) -> int:
        """A hash of the content; worked out once, since sections are large and never change."""
        known = self.__dict__.get("_hash")
        if known is None:
            content = tuple(self.__dict__[name] for name in type(self).model_fields)
            known = self.__dict__["_hash"] = hash((type(self), content))
        return known

    def __copy__(self) -> Self:
        return super().__copy__()._forgetting()

    def __deepcopy__(self, memo: dict[int, Any] | None = None) -> Self:
        return super().__deepcopy__(memo)._forgetting()

    def _forgetting(self) -> Self:
        """A copy may be given another content: what was worked out belongs to the original."""
        for name in self.__dict__.keys() - type(self).model_fields.keys():
            del self.__dict__[name]
        return self


class Part(Section):
    """A part of the unit."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What the workshop calls it."""
    plain: str | None = None
    """The same in plain words, for someone who has never seen one."""
    in_place: bool = False
    """It stands on the bench from the start; no operation fits it."""
    single_use: bool = False
    """It is used up once fitted for good: a new one every time."""
    damaged_by_removal: bool = False
    """It can be fitted again in principle, but does not survive being taken out."""
    orientation_mark: str | None = None
    """The mark on the part that tells which way it goes in."""


class Tool(Section):
    """A tool of the workshop."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What the workshop calls it."""
    form: ToolForm | None = None
    """What it looks like at the bench; left out, a word of its name says it, as dial or press."""

    @property
    def looks(self) -> ToolForm:
        """Its form, or the one that its name usually stands for."""
        return self.form or typical_form(self.name)


class Consumable(Section):
    """Something used up: sealant, locker, grease, oil."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What the workshop calls it."""


class Stage(Section):
    """A sub-assembly or phase; groups operations on screen and in tasks."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The sub-assembly or phase, as a heading."""
    about: str | None = None
    """One or two sentences: what is built here and what it is for."""


class OperationKind(StrEnum):
    """What an operation is.

    fit: a part goes in for good. secure: a part already in is tightened, staked, locked or
    pinned. prepare: a part is cleaned, warmed, oiled or coated, or the work is turned round.
    trial: a part goes in to be measured. remove: what was fitted on trial comes out again.
    measure: a figure is read. check: something is found right or wrong.
    """

    FIT = "fit"
    SECURE = "secure"
    PREPARE = "prepare"
    TRIAL = "trial"
    REMOVE = "remove"
    MEASURE = "measure"
    CHECK = "check"


class WrongWay(Section):
    """A wrong way round in which the parts of an operation can go in all the same.

    What it brings about is never written here: a misbuild of the faults section, or the seal whose
    lip then faces away, lets the models work it out. With neither, the mark alone gives it away.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What faces which way then, in the manner of the operation's own orientation."""
    misbuild: Id | None = None
    """The misbuild of the faults section that this way brings about."""
    seal: Id | None = None
    """The seal of the fits section whose lip then faces away."""
    seen_as: tuple[Text, ...] = ()
    """How that shows without the mark: from another side, or by another feature."""


class Operation(Section):
    """One step of the build.

    ``parts`` names what the step fits or, for *secure*, what it locks. When a fit is taken apart
    again, its single-use parts and those damaged by removal are lost.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Annotated[Text, StringConstraints(max_length=70)]
    """Short, imperative, and clear by itself in a shuffled list."""
    plain: str | None = None
    """The same in plain words, for someone new to the trade."""
    stage: Id
    """The stage that it belongs to."""
    kind: OperationKind = OperationKind.FIT
    """What it is: fit, secure, prepare, trial, remove, measure or check."""
    parts: Ids = ()
    """Parts that it fits or, where it secures, locks."""
    tools: Ids = ()
    """Tools that it needs."""
    consumables: Ids = ()
    """What it uses up."""
    minutes_do: float = Field(gt=0, le=240, alias="minutes to do", allow_inf_nan=False)
    """Time that a trained mechanic takes for it [minutes]."""
    minutes_undo: float = Field(ge=0, le=240, alias="minutes to undo", allow_inf_nan=False)
    """What taking the step apart again takes."""
    orientation: str | None = None
    """What must face which way, where it can be got wrong."""
    seen_as: tuple[Text, ...] = ()
    """How the right way shows without the mark: from another side, or by another feature."""
    wrong_ways: tuple[WrongWay, ...] = ()
    """Other ways round in which it goes in all the same."""
    caution: str | None = None
    """What could hurt somebody here, and what to wear or do."""

    @model_validator(mode="after")
    def _ways_hang_together(self) -> Operation:
        if self.wrong_ways and self.orientation is None:
            raise ValueError(f"'{self.id}' has wrong ways but no 'orientation'; say the right one")
        ids = [way.id for way in self.wrong_ways]
        twice = {way for way in ids if ids.count(way) > 1}
        if twice:
            raise ValueError(f"'{self.id}' lists the wrong way {min(twice)} twice; rename one")
        return self


class RuleKind(StrEnum):
    """Why one step comes before another.

    cannot: the later one is impossible without the earlier.
    buries: the earlier one cannot be reached after the later.
    harms: done the wrong way round, a part is damaged (or, with safety, a person).
    blinds: done the wrong way round, a check is worthless.
    """

    CANNOT = "cannot"
    BURIES = "buries"
    HARMS = "harms"
    BLINDS = "blinds"


class Rule(Section):
    """``earlier`` (or one of ``any of``) comes before ``later``; or ``later`` is done while a
    hold is ``not during``.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    kind: RuleKind
    """Why: cannot, buries, harms or blinds."""
    earlier: Id | None = None
    """The operation that comes first."""
    any_of: Ids = ()
    """At least one of these comes before."""
    not_during: Id | None = None
    """A hold that must not be on while ``later`` is done."""
    later: Id
    """The operation that comes after it."""
    reason: Text
    """One plain sentence that convinces a mechanic."""
    loses: Ids = ()
    """Parts and consumables that are lost when a rule of kind *harms* is broken."""
    safety: bool = False
    """Breaking it could hurt someone or let the unit fail on the road: a must-pass."""

    @model_validator(mode="after")
    def _one_side(self) -> Rule:
        given = [self.earlier is not None, bool(self.any_of), self.not_during is not None]
        if sum(given) != 1:
            raise ValueError(
                "it has none or several of 'earlier', 'any of', 'not during'; give exactly one"
            )
        if self.any_of and len(set(self.any_of)) < 2:
            raise ValueError("'any of' needs at least two operations; for one, write 'earlier'")
        if len(set(self.any_of)) < len(self.any_of):
            raise ValueError("'any of' names an operation twice; name each once")
        if self.later == self.earlier or self.later in self.any_of:
            raise ValueError(
                f"'{self.later}' would have to come before itself; name another operation"
            )
        return self


class Hold(Section):
    """A condition that some operation gives, another ends and others need.

    Each giver turns it on and each ender turns it off. With one giver and one ender it compiles
    into the order (giver, then what needs it, then ender); with several the replay judges it.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The condition, in words."""
    given_by: Ids = Field(min_length=1)
    """Operations that bring it about; each is enough."""
    ended_by: Ids = Field(min_length=1)
    """Operations that end it."""
    needed_by: Ids = Field(min_length=1)
    """Operations that are done only while it is on."""
    reason: Text
    """One plain sentence that says why they need it."""
    safety: bool = False
    """Going on without the hold could hurt someone or let the unit fail on the road."""


class Clock(Section):
    """Once ``starts`` is done, ``ends`` must be done within ``minutes``.

    The time runs from the end of ``starts`` to the end of ``ends``.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What runs out, in words."""
    starts: Id
    """The operation that starts the clock."""
    ends: Id
    """The operation that must be done before the time is up."""
    minutes: float = Field(gt=0, le=1440, allow_inf_nan=False)
    """Time allowed, end to end [minutes]."""
    reason: Text
    """One plain sentence that says why."""
    loses: Ids = ()
    """Parts and consumables that are lost when the time runs out."""
    safety: bool = False
    """Going over the time could hurt someone or let the unit fail on the road."""


class Wait(Section):
    """Once ``starts`` is done, ``ends`` may not begin before ``minutes`` have run.

    A clock of "at least": other work may fill the time; what it does not fill is waited.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What has to run, in words."""
    starts: Id
    """The operation after which it runs."""
    ends: Id
    """The operation that may not begin before."""
    minutes: float = Field(gt=0, le=20160, allow_inf_nan=False)
    """Least time from the end of the one to the beginning of the other [minutes]."""
    reason: Text
    """One plain sentence that says why."""


class Together(Section):
    """Operations that go in as one; marked once, shown as one step."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Annotated[Text, StringConstraints(max_length=70)]
    """The label of the one step, imperative, as an operation's name."""
    plain: str | None = None
    """The same in plain words, for someone new to the trade."""
    operations: Ids = Field(min_length=2)
    """The operations that are one step; at least two."""
    reason: Text
    """One plain sentence that says why they go in as one."""
