"""How this program is called, for lines that say what to do next."""

from __future__ import annotations

import os
import shutil
import sys
from pathlib import Path

# Looked up before anything puts this environment's programs on the path for nbgrader's sake.
_FOUND = shutil.which("twoshaft")


def command() -> str:
    """``twoshaft`` where that is found, else the way to the one of this environment."""
    own = Path(sys.executable).with_name("twoshaft.exe" if os.name == "nt" else "twoshaft")
    if (_FOUND and Path(_FOUND).resolve() == own.resolve()) or not own.exists():
        return "twoshaft"
    here = Path.cwd()
    return str(own.relative_to(here)) if own.is_relative_to(here) else str(own)
