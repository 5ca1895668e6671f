"""``standing.json``: a learner's marks that were given back, and where each outcome stands."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Annotated, Any

from pydantic import ValidationError, ValidatorFunctionWrapHandler, WrapValidator

from twoshaft.stored.definition import LearnersFile, Words


def _or_none(value: Any, read: ValidatorFunctionWrapHandler) -> Any:
    """One entry that cannot be read does not hide the others."""
    try:
        return read(value)
    except ValidationError:
        return None


@dataclass(frozen=True)
class MarkTold:
    """A mark as it was given back; ``must_pass`` is ``held``, ``not held`` or empty."""

    points: float
    maximum: float
    must_pass: Words = ""
    supervised_by: Words = ""
    given_back: Words = ""


@dataclass(frozen=True)
class OutcomeTold:
    """A state, what is still missing, and who saw it last with their note."""

    state: str
    missing: Words = ""
    seen: Words = ""
    note: Words = ""


@dataclass(frozen=True)
class OwnStanding:
    """Marks by assignment and outcomes by id, of one learner; None for one that is damaged.

    ``numbers`` are the college's own numbers of outcomes, by id; ``asks`` the kind of evidence,
    where the college wants another.
    """

    learner: Words
    marks: dict[str, Annotated[MarkTold | None, WrapValidator(_or_none)]] = field(
        default_factory=dict
    )
    outcomes: dict[str, Annotated[OutcomeTold | None, WrapValidator(_or_none)]] = field(
        default_factory=dict
    )
    numbers: tuple[tuple[str, Words], ...] = ()
    asks: tuple[tuple[str, Words], ...] = ()


STANDING: LearnersFile[OwnStanding] = LearnersFile(
    file="standing.json",
    record=OwnStanding,
    sparse=("numbers", "asks"),
    fault="your marks and outcomes cannot be read from it",
)
