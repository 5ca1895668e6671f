"""Make the project's own Python environment; needs nothing but Python 3.11 or later."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
import venv
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
VENV = ROOT / ".venv"
BIN = VENV / ("Scripts" if os.name == "nt" else "bin")
PYTHON = BIN / ("python.exe" if os.name == "nt" else "python")


def _stamp(extras: str) -> str:
    """Digest of what decides the environment: when it is the same, nothing is done."""
    digest = hashlib.sha256(f"{ROOT}|{extras}|{sys.version}".encode())
    opener = sorted(p for p in (ROOT / "course/twoshaft/labextension").rglob("*") if p.is_file())
    for path in (ROOT / "pyproject.toml", ROOT / ".ci/constraints.txt", *opener):
        digest.update(path.read_bytes())
    return digest.hexdigest()


def make(extras: str = "") -> Path:
    """Make or renew ``.venv`` and return its Python.

    Parameters
    ----------
    extras : str
        ``""`` for the course alone, ``"[dev]"`` with what the tests need.

    Raises
    ------
    SystemExit
        With one sentence, when Python is too old or the environment cannot be made.
    """
    if sys.version_info < (3, 11):  # noqa: UP036 - this runs before anything is installed
        sys.exit(f"Python {sys.version.split()[0]} is too old; run this with Python 3.11 or later.")
    stamp_file, stamp = VENV / f"twoshaft-stamp{extras}", _stamp(extras)
    if PYTHON.exists() and stamp_file.exists() and stamp_file.read_text() == stamp:
        return PYTHON
    if not PYTHON.exists():
        print(f"Making the environment in {VENV} (about two minutes, once) ...", flush=True)
        try:
            venv.create(VENV, with_pip=True)
        except (subprocess.CalledProcessError, ModuleNotFoundError):
            sys.exit(
                "This Python cannot make environments; install its venv package "
                "(Debian and Ubuntu: apt install python3-venv) and run the same command again."
            )
    print("Installing what the course needs ...", flush=True)
    # pip first: the exact versions are tried with the pip of that list, not with the one at hand.
    for what in (["--upgrade", "pip"], ["--editable", f"{ROOT}{extras}"]):
        pip = [PYTHON, "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
        command = [*pip, "--constraint", ROOT / ".ci/constraints.txt", *what]
        if subprocess.run([str(part) for part in command]).returncode != 0:
            sys.exit(
                "Installing failed (see above); check the network and run the same command again."
            )
    stamp_file.write_text(stamp)
    return PYTHON
