"""Notebooks from text: build lessons and solutions, release exercises, check what is built.

``python -m twoshaft_grader.notebooks build`` writes every notebook from its text source,
``python -m twoshaft_grader.notebooks compare`` says which stored ones are out of step.
"""

from twoshaft_grader.notebooks.release import RELEASE_PREPROCESSORS

__all__ = ["RELEASE_PREPROCESSORS"]
