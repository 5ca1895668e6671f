"""``sittings.json``: supervised attempts, opened and closed by an assessor."""

from __future__ import annotations

from dataclasses import dataclass, field

from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Sitting:
    """A supervised attempt of named learners in a room.

    Parameters
    ----------
    number : int
        Its number, from 1.
    assignment, room : str
    learners : tuple of str
        Ids.
    opened_at, opened_by, closed_at, closed_by : str
        Times are ISO 8601 in UTC; empty while it is open.
    waiting : dict
        By id, the names of the hand-ins that were there already when it was opened.
    saved : dict
        By id, the answers that stood on their sheet when it was opened, with their revisions.
    handed_in : dict
        By id, the SHA-256 of the answers that were handed in between: what counts as supervised.
    before : dict
        By id, the answers among those handed in that were saved before it was opened: the
        outcomes they belong to do not count as supervised.
    note : str
        What happened that an assessor should know.
    """

    number: int
    assignment: str
    room: str
    learners: tuple[str, ...]
    opened_at: str
    opened_by: str
    waiting: dict[str, tuple[str, ...]] = field(default_factory=dict)
    saved: dict[str, dict[str, int]] = field(default_factory=dict)
    closed_at: str = ""
    closed_by: str = ""
    handed_in: dict[str, str] = field(default_factory=dict)
    before: dict[str, tuple[str, ...]] = field(default_factory=dict)
    note: str = ""


@dataclass(frozen=True)
class Sittings:
    """All supervised attempts of a cohort, by number."""

    sittings: tuple[Sitting, ...] = ()


SITTINGS: StaffFile[Sittings] = StaffFile(
    file="sittings.json",
    record=Sittings,
    fault="this holds no supervised attempts",
    format=2,
    older={1: None},  # what was saved before it was opened was not told apart
)
