"""Marking, cohorts and records: methods only, never keys."""

from twoshaft_grader.environment import nbgrader_in_parts

nbgrader_in_parts()
