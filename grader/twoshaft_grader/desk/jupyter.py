"""Open JupyterLab on a cohort: its workplace for apprentices, the whole folder for staff."""

from __future__ import annotations

from twoshaft.errors import CohortError
from twoshaft.jupyter.lab import lab_command, run_lab
from twoshaft.jupyter.open_course import released_in
from twoshaft.jupyter.released import cell_digest
from twoshaft.jupyter.settings import Role
from twoshaft.jupyter.startpage import START
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.shared import OPENER
from twoshaft_grader.desk_pages.notebook import DESK, DESK_CELL, write_desk


def jupyter_command(
    cohort: Cohort, role: Role, *, port: int = 0, browser: bool = True
) -> tuple[list[str], dict[str, str]]:
    """The command that opens JupyterLab on a cohort, and the environment it runs in.

    Parameters
    ----------
    role : {"apprentice", "staff"}
    port : int
        0 takes the first free one.
    browser : bool
        Whether a browser window is opened.

    Raises
    ------
    CohortError
        When apprentices have accounts of their own: only from there is it theirs.
    """
    if role == "apprentice" and cohort.own_accounts:
        raise CohortError(
            "apprentices of this cohort have accounts of their own, and this is the instructor's",
            mend=f"let them run {cohort.shared / OPENER}; what staff see opens with --as staff",
        )
    learners = role == "apprentice"
    if not learners:
        write_desk(cohort.root)
    return lab_command(
        cohort.workplace if learners else cohort.root,
        role,
        cohort.root / "settings" / role,
        first_page=START if learners else DESK,
        # What learners hand in must not be run on a member of staff's machine.
        released=released_in(cohort.exchange) if learners else {cell_digest(DESK_CELL)},
        port=port,
        browser=browser,
    )


def open_jupyter(cohort: Cohort, role: Role, *, port: int = 0, browser: bool = True) -> int:
    """Run JupyterLab until it is stopped; returns its exit code, if it returns at all."""
    command, environment = jupyter_command(cohort, role, port=port, browser=browser)
    # Staff work in the cohort folder, where nbgrader finds its configuration.
    folder = cohort.workplace if role == "apprentice" else cohort.root
    return run_lab(command, environment, folder)
