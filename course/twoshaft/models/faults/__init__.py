"""Faults: what a misbuild shows in every check, and what the checks say about misbuilds.

A misbuild changes the input of a model; a check reads what the model gives. What is observed is
explained by all single and double misbuilds that show exactly that.
"""

from twoshaft.models.faults.built import AsBuilt, as_built, part_of
from twoshaft.models.faults.checks import reads, run_check
from twoshaft.models.faults.diagnosis import (
    Alike,
    Diagnosis,
    Explanations,
    NextCheck,
    explain,
    indistinguishable,
    next_check,
    told,
)
from twoshaft.models.faults.false_pull import FALSE_PULLS, FalsePull
from twoshaft.models.faults.outcome import PASSES, Outcome, Sign
from twoshaft.models.faults.running import Pull, pull
from twoshaft.models.faults.search import (
    checks_apart,
    expected_minutes,
    met_together,
    minutes_spent,
    quickest_plan,
    suspects_for,
)
from twoshaft.models.faults.table import Table, outcome_table

__all__ = [
    "FALSE_PULLS",
    "PASSES",
    "Alike",
    "AsBuilt",
    "Diagnosis",
    "Explanations",
    "FalsePull",
    "NextCheck",
    "Outcome",
    "Pull",
    "Sign",
    "Table",
    "as_built",
    "checks_apart",
    "expected_minutes",
    "explain",
    "indistinguishable",
    "met_together",
    "minutes_spent",
    "next_check",
    "outcome_table",
    "part_of",
    "pull",
    "quickest_plan",
    "reads",
    "run_check",
    "suspects_for",
    "told",
]
