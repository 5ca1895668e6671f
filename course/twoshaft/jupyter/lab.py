"""Run JupyterLab with the course's settings."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterable
from pathlib import Path

from twoshaft import system
from twoshaft.jupyter.settings import Role, write_settings


def lab_command(
    root: Path,
    role: Role,
    settings: Path,
    *,
    first_page: str = "",
    released: Iterable[str] = (),
    port: int = 0,
    browser: bool = True,
) -> tuple[list[str], dict[str, str]]:
    """The command that opens JupyterLab and the environment it runs in.

    Parameters
    ----------
    root : Path
        The folder that is shown.
    role : {"apprentice", "staff"}
    settings : Path
        Where this server's settings are written.
    first_page : str
        The notebook that is open at first, as a path under the root.
    released : iterable of str
        As for :func:`twoshaft.jupyter.settings.write_settings`.
    port : int
        0 takes the first free one.
    browser : bool
        Whether a browser window is opened.
    """
    desk = first_page if role == "staff" else ""
    places = write_settings(settings, role, released=released, desk=desk)
    command = [sys.executable, "-m", "twoshaft.jupyter.server", f"--ServerApp.root_dir={root}"]
    if first_page:
        command.append(f"--LabApp.default_url=/lab/tree/{first_page}")
    if port:
        command += [f"--ServerApp.port={port}", "--ServerApp.port_retries=0"]
    if not browser:
        command.append("--no-browser")
    if system.is_root():
        command.append("--allow-root")
    return command, os.environ | places


def run_lab(command: list[str], environment: dict[str, str], folder: Path) -> int:
    """Run JupyterLab in a folder until it is stopped; its exit code, if it returns at all."""
    if os.name == "posix":
        # In place of this process: whatever stops the one stops the other.
        os.chdir(folder)
        sys.stdout.flush()
        os.execve(command[0], command, environment)
    return subprocess.run(command, env=environment, cwd=folder).returncode
