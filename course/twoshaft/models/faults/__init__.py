"""Faults: what a misbuild shows in every check, and what the checks say about misbuilds.

A misbuild changes the input of a model; a check reads what the model gives. What is observed is
explained by all single and double misbuilds that show exactly that.
"""

from twoshaft.models.faults.built import AsBuilt, as_built
from twoshaft.models.faults.checks import reads, run_check
from twoshaft.models.faults.diagnosis import (
    Alike,
    Diagnosis,
    Explanations,
    NextCheck,
    explain,
    indistinguishable,
    next_check,
)
from twoshaft.models.faults.outcome import PASSES, Outcome, Sign
from twoshaft.models.faults.table import Table, outcome_table

__all__ = [
    "PASSES",
    "Alike",
    "AsBuilt",
    "Diagnosis",
    "Explanations",
    "NextCheck",
    "Outcome",
    "Sign",
    "Table",
    "as_built",
    "explain",
    "indistinguishable",
    "next_check",
    "outcome_table",
    "reads",
    "run_check",
]
