"""The order-of-work section: parts, tools, operations and what binds their order.

Ids are lower-case words joined by hyphens; every text is plain and short.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, model_validator

Id = Annotated[str, StringConstraints(pattern=r"^[a-z0-9]+(-[a-z0-9]+)*$", max_length=60)]
Text = Annotated[str, StringConstraints(min_length=3, strip_whitespace=True)]


class Section(BaseModel):
    """Base of all entries: unknown keys are refused, so a typing slip is seen."""

    model_config = ConfigDict(extra="forbid", frozen=True)


class Part(Section):
    """A part of the unit."""

    id: Id
    name: Text
    single_use: bool = False
    damaged_by_removal: bool = False
    orientation_mark: str | None = None


class Tool(Section):
    """A tool of the workshop."""

    id: Id
    name: Text


class Consumable(Section):
    """Something used up: sealant, locker, grease, oil."""

    id: Id
    name: Text


class Stage(Section):
    """A sub-assembly or phase; groups operations on screen and in tasks."""

    id: Id
    name: Text


class OperationKind(StrEnum):
    """What an operation is."""

    FIT = "fit"
    TRIAL = "trial"
    MEASURE = "measure"
    REMOVE = "remove"
    CHECK = "check"


class Operation(Section):
    """One step of the build.

    ``minutes_undo`` is what taking the step apart again takes. ``orientation`` says what
    must face which way, where it can be got wrong.
    """

    id: Id
    name: Text
    stage: Id
    kind: OperationKind = OperationKind.FIT
    parts: tuple[Id, ...] = ()
    tools: tuple[Id, ...] = ()
    consumables: tuple[Id, ...] = ()
    minutes_do: float = Field(gt=0, le=240)
    minutes_undo: float = Field(ge=0, le=240)
    orientation: str | None = None


class RuleKind(StrEnum):
    """Why one step comes before another.

    cannot: the later one is impossible without the earlier.
    buries: the earlier one cannot be reached after the later.
    harms: done the wrong way round, a part is damaged.
    blinds: done the wrong way round, a check is worthless.
    """

    CANNOT = "cannot"
    BURIES = "buries"
    HARMS = "harms"
    BLINDS = "blinds"


class Rule(Section):
    """``earlier`` (or one of ``any_of``) comes before ``later``; or ``later`` is
    ``not_during`` a hold.

    ``loses`` names parts that do not survive a broken rule of kind *harms*. ``safety`` marks
    a rule whose breach fails a must-pass outcome whatever the mark.
    """

    id: Id
    kind: RuleKind
    earlier: Id | None = None
    any_of: tuple[Id, ...] = ()
    not_during: Id | None = None
    later: Id
    reason: Text
    loses: tuple[Id, ...] = ()
    safety: bool = False

    @model_validator(mode="after")
    def _one_side(self) -> Rule:
        given = [self.earlier is not None, bool(self.any_of), self.not_during is not None]
        if sum(given) != 1:
            raise ValueError("give exactly one of earlier, any_of, not_during")
        if self.any_of and len(set(self.any_of)) < 2:
            raise ValueError("any_of needs at least two different operations")
        return self


class Hold(Section):
    """A condition that some operation gives, another ends and others need.

    With one giver and one ender it compiles into the order; with several the replay judges it.
    """

    id: Id
    name: Text
    given_by: tuple[Id, ...] = Field(min_length=1)
    ended_by: tuple[Id, ...] = Field(min_length=1)
    needed_by: tuple[Id, ...] = Field(min_length=1)
    reason: Text


class Clock(Section):
    """Once ``starts`` is done, ``ends`` must be done within ``minutes``."""

    id: Id
    name: Text
    starts: Id
    ends: Id
    minutes: float = Field(gt=0, le=1440)
    reason: Text
    loses: tuple[Id, ...] = ()


class Together(Section):
    """Operations that go in as one; marked once, shown as one step."""

    id: Id
    name: Text
    operations: tuple[Id, ...] = Field(min_length=2)
    reason: Text
