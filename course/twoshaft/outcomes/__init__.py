"""Outcomes: what passing a module proves, and by which kind of evidence.

Every marked field and every observation maps to one of them.
"""

from twoshaft.outcomes.outcomes import Evidence, Outcome, load_outcomes

__all__ = ["Evidence", "Outcome", "load_outcomes"]
