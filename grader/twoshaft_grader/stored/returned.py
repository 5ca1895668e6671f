"""``returned/<assignment>/<learner>.json``: a mark as it was given back."""

from __future__ import annotations

from dataclasses import dataclass, field

from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Returned:
    """What the feedback page that was given back says of marks and outcomes.

    Parameters
    ----------
    must_pass : str
        ``held``, ``not held``, or empty where nothing is a must-pass item.
    supervised_by : str
        Who watched the work, if anybody.
    unwatched : tuple of str
        Ids of outcomes with an answer that was saved before the supervised attempt was opened.
    given_back : str
        When, ISO 8601 in UTC.
    outcomes : dict
        By id, whether the sheet is enough.
    decided : dict
        By id, what an assessor decided in the place of the marking, in a sentence.
    """

    learner: str = ""
    module: str = ""
    attempt: int = 0
    points: float
    maximum: float
    must_pass: str
    supervised_by: str
    given_back: str
    outcomes: dict[str, bool]
    decided: dict[str, str] = field(default_factory=dict)
    unwatched: tuple[str, ...] = ()


RETURNED: StaffFile[Returned] = StaffFile(
    record=Returned,
    fault="what was given back cannot be read",
    mend="give the feedback back again",
    format=3,
    older={1: None, 2: None},  # 1: nothing was decided by hand; 2: all or nothing was supervised
)
