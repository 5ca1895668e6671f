"""Open JupyterLab on a cohort: its workplace for apprentices, the whole folder for staff."""

from __future__ import annotations

import os
import subprocess
import time
from pathlib import Path

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
    if role == "staff":
        return staff_command(cohort, port=port, browser=browser)
    if cohort.own_accounts:
        raise CohortError(
            "apprentices of this cohort have accounts of their own, and this is the instructor's",
            mend=f"let them run {cohort.shared / OPENER}; what staff see opens with --as staff",
        )
    return lab_command(
        cohort.workplace,
        role,
        cohort.root / "settings" / role,
        first_page=START,
        released=released_in(cohort.exchange),
        port=port,
        browser=browser,
    )


def staff_command(
    cohort: Cohort, *, port: int = 0, browser: bool = True
) -> tuple[list[str], dict[str, str]]:
    """As :func:`jupyter_command`, for staff: the desk opens first."""
    write_desk(cohort.root)
    return lab_command(
        cohort.root,
        "staff",
        cohort.root / "settings" / "staff",
        first_page=DESK,
        # What learners hand in must not be run on a member of staff's machine.
        released={cell_digest(DESK_CELL)},
        port=port,
        browser=browser,
    )


def open_jupyter(cohort: Cohort, role: Role, *, port: int = 0, browser: bool = True) -> int:
    """Run JupyterLab until it is stopped; returns its exit code, if it returns at all."""
    command, environment = jupyter_command(cohort, role, port=port, browser=browser)
    # Staff work in the cohort folder, where nbgrader finds its configuration.
    folder = cohort.workplace if role == "apprentice" else cohort.root
    return run_lab(command, environment, folder)


WAIT_S = 90
"""So long a server may take to answer; one on a slow machine needs half a minute."""
_OWN = ("JPY_", "JUPYTER_TOKEN", "JUPYTERHUB_")


def desk_address(cohort: Cohort) -> str:
    """Where the desk of a cohort answers: of its JupyterLab, which is started where none runs.

    It runs by itself, until it is shut down in its menu *File*.

    Raises
    ------
    CohortError
        On a hub, which serves one cohort, or when it does not start.
    """
    if any(name.startswith("JUPYTERHUB_") for name in os.environ):
        raise CohortError(
            "a hub serves one cohort",
            mend="let the person who looks after it write settings for another",
        )
    if address := _running(cohort):
        return address
    command, environment = staff_command(cohort, browser=False)
    clean = {name: value for name, value in environment.items() if not name.startswith(_OWN)}
    log = cohort.root / "settings" / "staff" / "log.txt"
    with open(log, "wb") as said:
        process = subprocess.Popen(
            command, env=clean, cwd=cohort.root, stdin=subprocess.DEVNULL, stdout=said,
            stderr=said, start_new_session=True,
        )  # fmt: skip
    end = time.monotonic() + WAIT_S
    while time.monotonic() < end and process.poll() is None:
        if address := _running(cohort):
            return address
        time.sleep(0.2)
    if process.poll() is None:
        process.terminate()
    raise CohortError("its JupyterLab did not start", mend=f"see why in {log}")


def _running(cohort: Cohort) -> str:
    from jupyter_server.serverapp import list_running_servers

    known = cohort.root / "settings" / "staff" / "runtime"  # as write_settings has it
    for one in list_running_servers(str(known)):
        if Path(one["root_dir"]).resolve() == cohort.root:
            return f"{one['url']}lab/tree/{DESK}?token={one['token']}"
    return ""
