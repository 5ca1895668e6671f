"""An apprentice's own readings, the same at every run."""

from twoshaft.readings.issue import MODULES, draw, given_in, issue_record
from twoshaft.readings.keyed import Stream

__all__ = ["MODULES", "Stream", "draw", "given_in", "issue_record"]
