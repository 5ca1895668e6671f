"""Open the course at a shared place, from a learner's own account of the machine."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.jupyter.lab import lab_command, run_lab
from twoshaft.jupyter.released import digests_in
from twoshaft.jupyter.startpage import START
from twoshaft.stored.writing import NOT_FOR_OTHERS

WORKPLACE = "workplace"


def open_course(shared: Path, *, port: int = 0, browser: bool = True) -> int:
    """Run JupyterLab until it is stopped; returns its exit code, if it returns at all.

    Its settings and its keys lie in the account's own home.

    Parameters
    ----------
    shared : Path
        The folder that holds ``workplace`` and ``exchange``.
    port : int
        0 takes the first free one.
    browser : bool
        Whether a browser window is opened.

    Raises
    ------
    CohortError
        When this is the instructor's account.
    """
    workplace = shared / WORKPLACE
    if workplace.stat().st_uid == system.account():
        raise CohortError(
            "this is the instructor's account, whose work learners could reach from here",
            mend="let each learner open the course from an account of their own",
        )
    os.umask(0o077)  # in many homes a learner's group is everybody's
    for variable, usual in (("XDG_CACHE_HOME", ".cache"), ("XDG_CONFIG_HOME", ".config")):
        # Kernels, which write for staff too, would make these on first drawing.
        (_home(variable, usual) / "matplotlib").mkdir(parents=True, exist_ok=True)
    command, environment = lab_command(
        workplace,
        "apprentice",
        _settings(shared),
        first_page=START,
        released=released_in(shared / "exchange"),
        port=port,
        browser=browser,
    )
    os.umask(NOT_FOR_OTHERS)
    return run_lab(command, environment, workplace)


def released_in(exchange: Path) -> set[str]:
    """Digests of the cells of all that is handed out, which may be run on opening."""
    handed_out = sorted(exchange.glob("*/outbound/*/*.ipynb"))
    return set().union(*(digests_in(path) for path in handed_out))


def _settings(shared: Path) -> Path:
    base = _home("XDG_STATE_HOME", ".local/state")
    return base / "twoshaft" / hashlib.sha256(str(shared).encode()).hexdigest()[:12]


def _home(variable: str, usual: str) -> Path:
    return Path(os.environ.get(variable) or Path.home() / usual)
