"""The programs that came with this Python environment, found without activating it."""

from __future__ import annotations

import os
import sys
from pathlib import Path


def tools_on_path() -> None:
    """Put this environment's programs on the search path: nbgrader calls alembic by name."""
    here = str(Path(sys.executable).parent)
    parts = os.environ.get("PATH", "").split(os.pathsep)
    if here not in parts:
        os.environ["PATH"] = os.pathsep.join([here, *parts])
