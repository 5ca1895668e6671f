"""Notebooks from text: build lessons and solutions, release exercises, check what is built.

``python -m twoshaft_grader.notebooks build`` writes every notebook from its text source,
``python -m twoshaft_grader.notebooks compare`` says which stored ones are out of step.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from twoshaft_grader.notebooks.as_released import SANITIZE_PREPROCESSORS
    from twoshaft_grader.notebooks.release import RELEASE_PREPROCESSORS

__all__ = ["RELEASE_PREPROCESSORS", "SANITIZE_PREPROCESSORS"]


def __getattr__(name: str) -> object:
    """For a cohort's nbgrader_config.py; whoever only reads a text source goes without."""
    if name == "RELEASE_PREPROCESSORS":
        from twoshaft_grader.notebooks import release

        return release.RELEASE_PREPROCESSORS
    if name == "SANITIZE_PREPROCESSORS":
        from twoshaft_grader.notebooks import as_released

        return as_released.SANITIZE_PREPROCESSORS
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
