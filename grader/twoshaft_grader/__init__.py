"""Marking, cohorts and records: methods only, never keys."""
