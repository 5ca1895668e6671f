"""How this program is called, for lines that say what to do next."""

from __future__ import annotations

import os
import shutil
import sys
from pathlib import Path


def command() -> str:
    """``twoshaft`` where that is found, else the way to the one of this environment."""
    own = Path(sys.executable).with_name("twoshaft.exe" if os.name == "nt" else "twoshaft")
    found = shutil.which("twoshaft")
    if (found and Path(found).resolve() == own.resolve()) or not own.exists():
        return "twoshaft"
    here = Path.cwd()
    return str(own.relative_to(here)) if own.is_relative_to(here) else str(own)
