"""``assignment.json``: what the instructor set, beside the notebook it is about."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from typing import Annotated, Any

from pydantic import AfterValidator, BeforeValidator, Field, PlainSerializer, StrictInt

from twoshaft import DEFAULT_UNIT
from twoshaft.stored.definition import LearnersFile, Words
from twoshaft.stored.names import well_named

UNIT = "unit.yaml"
"""The unit's own file beside it, whole."""


def _module(value: str) -> str:
    if not well_named(value):
        raise ValueError("no module's name")
    return value


def _count(value: Any) -> int:
    return value if type(value) is int and value > 0 else 0


def mark_of(assignment: str, learner: str) -> str:
    """What stands for a learner in the list of those who are to have an assignment."""
    return hashlib.sha256(f"{assignment}\n{learner}".encode()).hexdigest()[:16]


@dataclass(frozen=True, kw_only=True)
class Assignment:
    """What the instructor set: a module, an attempt, a unit, a date.

    Parameters
    ----------
    name : str
        ``<module>-<attempt>``.
    salt : str
        Of the cohort's readings.
    unit_digest : str
        Of a shipped unit's files as the course had them (`twoshaft.units.whole_file`); empty for a
        college's own, and where it was handed out before this was noted.
    due : str
        ISO 8601; empty if there is no date.
    supervised_by : str
        Of what was handed out before attempts were opened and closed; says nothing any more.
    fields : int
        How many answers the exercise asks for; 0 if nobody knows.
    bench_readings : bool
        Whether figures from the bench may take the place of drawn ones.
    only : tuple of str
        For whom it is, by :func:`mark_of`, so that nobody's name stands in a file that all can
        read; empty: everybody.
    code_outcome : str
        Of an instructor's own notebook, which is marked by running code: the outcome that it is
        about; empty where answers are given in forms.
    left_out : tuple of str
        Tasks that nobody is given, since the unit has nothing for them.
    no_evidence : tuple of str
        Outcomes of the module that no task is evidence for any more.
    """

    name: Annotated[Words, Field(alias="assignment")] = ""
    cohort: Words = ""
    salt: Words = ""
    module: Annotated[str, AfterValidator(_module)]
    attempt: StrictInt
    unit: Annotated[str, BeforeValidator(lambda value: str(value or DEFAULT_UNIT))] = DEFAULT_UNIT
    unit_version: Words = ""
    unit_digest: Words = ""
    course_version: Words = ""
    due: Annotated[Words, PlainSerializer(lambda due: due or None)] = ""
    supervised_by: Words = ""
    fields: Annotated[int, BeforeValidator(_count)] = 0
    bench_readings: Annotated[bool, BeforeValidator(lambda value: value is True)] = False
    code_outcome: Words = ""
    left_out: tuple[Words, ...] = ()
    no_evidence: tuple[Words, ...] = ()
    only: tuple[str, ...] = ()

    def is_for(self, learner: str) -> bool:
        """Whether a learner is to have it."""
        return not self.only or mark_of(self.name, learner) in self.only

    def __post_init__(self) -> None:
        if not self.name:
            object.__setattr__(self, "name", f"{self.module}-{self.attempt}")


ASSIGNMENT: LearnersFile[Assignment] = LearnersFile(
    file="assignment.json",
    record=Assignment,
    sparse=("unit_digest", "bench_readings", "code_outcome", "left_out", "no_evidence", "only"),
    fault=lambda found: (
        "module or attempt is missing" if found[0]["loc"] else "it holds no table of names"
    ),
    mend="get the assignment again from start-here, or ask your instructor",
)
