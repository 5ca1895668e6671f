"""Outcomes: what passing a module proves, and by which kind of evidence.

Every marked field and every observation maps to one of them.
"""

from twoshaft.outcomes.outcomes import Evidence, Outcome, load_outcomes
from twoshaft.outcomes.rules import Enough, Rules, load_rules
from twoshaft.outcomes.standing import (
    Attempt,
    Observation,
    Seen,
    Standing,
    State,
    TakenBack,
    counting,
    evidence_of,
    stand,
)

__all__ = [
    "Attempt",
    "Enough",
    "Evidence",
    "Observation",
    "Outcome",
    "Rules",
    "Seen",
    "Standing",
    "State",
    "TakenBack",
    "counting",
    "evidence_of",
    "load_outcomes",
    "load_rules",
    "stand",
]
