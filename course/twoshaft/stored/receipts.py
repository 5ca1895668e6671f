"""``receipts.json``: what a learner has handed in, and when."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.stored.definition import LearnersFile


@dataclass(frozen=True)
class Receipt:
    """What was handed in, and when.

    Parameters
    ----------
    assignment : str
        Name of the assignment.
    code : str
        The short code, as ``3F7A-91C2-04DE``.
    sha256 : str
        SHA-256 of the job sheet's file as handed in.
    handed_in : str
        When, ISO 8601 in UTC.
    answers : int
        How many answers it held.
    """

    assignment: str
    code: str
    sha256: str
    handed_in: str
    answers: int = 0


@dataclass(frozen=True)
class Receipts:
    """A learner's receipts, oldest first."""

    receipts: tuple[Receipt, ...] = ()


RECEIPTS: LearnersFile[Receipts] = LearnersFile(
    file="receipts.json", record=Receipts, indent=1, fault="it holds no receipts"
)
