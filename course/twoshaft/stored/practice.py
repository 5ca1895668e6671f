"""``practice.json``: what a learner said in lessons, and when; nothing of it is marked."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Annotated, Any

from pydantic import PlainValidator

from twoshaft.stored.definition import LearnersFile
from twoshaft.stored.job_sheet import check_value

KEPT_TRIES = 12
"""Tries that are kept of a question."""


def _value(value: Any) -> Any:
    return check_value(value, "an answer")


@dataclass(frozen=True)
class Try:
    """One answer to a question of a lesson.

    Parameters
    ----------
    value : str, number or list of str
        As a form stores it.
    right : bool
        Whether it agreed with what is so.
    at : str
        When, ISO 8601 in UTC.
    """

    value: Annotated[Any, PlainValidator(_value)]
    right: bool
    at: str


@dataclass(frozen=True)
class Practice:
    """A learner's tries, oldest first, by ``module/question``."""

    tries: dict[str, tuple[Try, ...]] = field(default_factory=dict)


PRACTICE: LearnersFile[Practice] = LearnersFile(
    file="practice.json",
    record=Practice,
    indent=1,
    fault="it holds no practice",
    mend="delete it to begin anew; nothing in it is marked",
)
