"""pint's definitions of units, parsed once for all processes of an environment.

Parsing them takes a quarter of a second of every command, kernel and worker. They are kept beside
the packages that they come from, with the same rights, and only there: a Python that is not a
virtual environment of its own is left as it is.
"""

from __future__ import annotations

import os
import shutil
import sys
import tempfile
from importlib.metadata import version
from pathlib import Path

from pint import UnitRegistry


def registry() -> UnitRegistry:
    """A registry of pint's units, from what was parsed before where that can be read."""
    try:
        return UnitRegistry(cache_folder=_kept_parsed())
    except Exception:  # cut short or from another place: as if there were none
        return UnitRegistry()


def _kept_parsed() -> str | None:
    """The folder of what was parsed; made where there is none. None where it cannot be made."""
    if sys.prefix == sys.base_prefix:
        return None
    made = f"python{sys.version_info[0]}.{sys.version_info[1]}-pint{version('pint')}"
    folder = Path(sys.prefix) / "share" / "twoshaft" / "units" / made
    if folder.is_dir():
        return str(folder)
    new = ""
    try:
        folder.parent.mkdir(parents=True, exist_ok=True)
        new = tempfile.mkdtemp(dir=folder.parent, prefix=".new-")
        UnitRegistry(cache_folder=new)
        os.chmod(new, 0o755)  # of everybody who may read the environment
        os.rename(new, folder)  # whole, or not at all
    except OSError:  # no right to write here, or another process was first
        shutil.rmtree(new, ignore_errors=True)
    return str(folder) if folder.is_dir() else None
