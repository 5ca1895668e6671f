"""``own-work.json`` beside what is handed in: the learner states that the work is their own."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.stored.definition import LearnersFile

STATEMENT = "This is my own work. Nobody gave me the answers, and I copied none."


@dataclass(frozen=True, kw_only=True)
class OwnWork:
    """The statement.

    Parameters
    ----------
    learner, assignment : str
    statement : str
        Its words, as the learner was shown them.
    stated : str
        When, ISO 8601 in UTC.
    sheet : str
        SHA-256 of the answers that it is about.
    """

    learner: str
    assignment: str
    statement: str
    stated: str
    sheet: str


OWN_WORK: LearnersFile[OwnWork] = LearnersFile(
    file="own-work.json", record=OwnWork, fault="it holds no statement"
)
