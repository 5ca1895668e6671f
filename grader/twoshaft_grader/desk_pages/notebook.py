"""The notebook that staff open first: the desk, and nothing else."""

from __future__ import annotations

from pathlib import Path

from twoshaft.jupyter.startpage import write_page

DESK = "desk.ipynb"
DESK_CELL = "from twoshaft_grader.desk_pages.screen import open_desk\n\nopen_desk()"


def write_desk(root: Path) -> Path:
    """Write the desk's notebook into a cohort folder; returns its path."""
    return write_page(root / DESK, "", DESK_CELL)
