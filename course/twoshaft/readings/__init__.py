"""An apprentice's own readings, the same at every run."""

from twoshaft.readings.issue import (
    MODULES,
    cannot_be_drawn,
    draw,
    given_in,
    issue_record,
    not_carried,
    whole_units,
)
from twoshaft.readings.keyed import Stream

__all__ = [
    "MODULES",
    "Stream",
    "cannot_be_drawn",
    "draw",
    "given_in",
    "issue_record",
    "not_carried",
    "whole_units",
]
