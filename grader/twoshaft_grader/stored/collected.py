"""``collected/<assignment>/<learner>.json``: every hand-in of a learner that was taken in."""

from __future__ import annotations

from dataclasses import dataclass, field

from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Version:
    """One hand-in, kept in ``collected/<assignment>/<learner>/<key>/``.

    Parameters
    ----------
    key : str
        Name of the folder that it is kept in; in the order of the times that they bear.
    arrived_as : str
        Name of its folder in the exchange.
    arrived : str
        When, ISO 8601 in UTC, by the exchange's folder.
    digest : str
        SHA-256 over names and bytes, see ``files.folder_digest``.
    answers : int or None
        How many answers the job sheet holds; None if it cannot be read.
    account : int
        Number of the system's account that owns the exchange's folder.
    batch : int
        Which collection took it in, from 1; 0 in lists of before. Unlike its time, no clock that
        was put back changes it.
    """

    key: str
    arrived_as: str
    arrived: str
    digest: str
    answers: int | None
    account: int
    batch: int = 0


@dataclass(frozen=True, kw_only=True)
class Kept:
    """All of a learner's hand-ins, oldest first; ``taken`` is the key of the one that counts.

    ``refused`` are those that were refused for their time, by a digest of their name: before which
    batch.
    """

    learner: str
    assignment: str
    taken: str = ""
    versions: tuple[Version, ...] = ()
    refused: dict[str, int] = field(default_factory=dict)

    @property
    def counts(self) -> Version | None:
        """The one that lies in ``submitted/``."""
        return next((one for one in self.versions if one.key == self.taken), None)


COLLECTED: StaffFile[Kept] = StaffFile(
    record=Kept,
    fault="this is no list of what was handed in",
    mend="take the file away and collect again",
)
