"""``moderation.json``: which marked work is marked a second time, and the second marks."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Picked:
    """A learner's task that is marked a second time; ``because`` says which part of the rule."""

    learner: str
    assignment: str
    task: str
    because: str


@dataclass(frozen=True, kw_only=True)
class SecondMark:
    """A second mark, with the digest of the work it is of; ``at`` is ISO 8601 in UTC."""

    learner: str
    assignment: str
    task: str
    points: float
    by: str
    at: str
    submission: str
    note: str = ""


@dataclass(frozen=True, kw_only=True)
class Moderation:
    """A sample, how it was drawn, and what was marked of it so far.

    Parameters
    ----------
    rule : str
        How the sample was drawn, in a sentence.
    seed : str
    drawn_at, drawn_by : str
    """

    rule: str
    seed: str
    drawn_at: str
    drawn_by: str
    sample: tuple[Picked, ...]
    marks: tuple[SecondMark, ...] = ()


MODERATION: StaffFile[Moderation] = StaffFile(
    file="moderation.json", record=Moderation, fault="this is no sample for moderation"
)
