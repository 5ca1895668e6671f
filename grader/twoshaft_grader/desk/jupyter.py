"""Open JupyterLab on a cohort: its workplace for apprentices, the whole folder for staff."""

from __future__ import annotations

import os
import subprocess
import sys

from twoshaft.jupyter.released import digests_in
from twoshaft.jupyter.settings import Role, write_settings
from twoshaft_grader.cohort.folder import Cohort

FIRST_PAGE = "start-here.ipynb"


def jupyter_command(
    cohort: Cohort, role: Role, *, port: int = 0, browser: bool = True
) -> tuple[list[str], dict[str, str]]:
    """The command that opens JupyterLab and the environment it runs in.

    Parameters
    ----------
    role : {"apprentice", "staff"}
    port : int
        0 takes the first free one.
    browser : bool
        Whether a browser window is opened.
    """
    handed_out = sorted((cohort.exchange / cohort.id / "outbound").glob("*/*.ipynb"))
    released = sorted(set().union(*(digests_in(path) for path in handed_out)))
    settings = write_settings(cohort.root / "settings" / role, role, released=released)
    here = cohort.workplace if role == "apprentice" else cohort.root
    command = [sys.executable, "-m", "jupyterlab", f"--ServerApp.root_dir={here}"]
    if role == "apprentice":
        command.append(f"--LabApp.default_url=/lab/tree/{FIRST_PAGE}")
    if port:
        command += [f"--ServerApp.port={port}", "--ServerApp.port_retries=0"]
    if not browser:
        command.append("--no-browser")
    if hasattr(os, "geteuid") and os.geteuid() == 0:
        command.append("--allow-root")
    return command, os.environ | settings


def open_jupyter(cohort: Cohort, role: Role, *, port: int = 0, browser: bool = True) -> int:
    """Run JupyterLab until it is stopped; returns its exit code, if it returns at all."""
    command, environment = jupyter_command(cohort, role, port=port, browser=browser)
    # Staff work in the cohort folder, where nbgrader finds its configuration.
    folder = cohort.workplace if role == "apprentice" else cohort.root
    if os.name == "posix":
        # In place of this process: whatever stops the one stops the other.
        os.chdir(folder)
        sys.stdout.flush()
        os.execve(command[0], command, environment)
    return subprocess.run(command, env=environment, cwd=folder).returncode
