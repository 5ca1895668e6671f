"""An apprentice's own readings, the same at every run."""

from twoshaft.readings.issue import MODULES, draw, issue_record
from twoshaft.readings.keyed import Stream

__all__ = ["MODULES", "Stream", "draw", "issue_record"]
