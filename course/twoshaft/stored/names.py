"""Names of fields, tasks and modules in stored files."""

from __future__ import annotations

import re
from typing import Any

NAME = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")


def well_named(name: Any) -> bool:
    """Whether a field's or task's name is small letters, figures and single hyphens."""
    return isinstance(name, str) and len(name) <= 64 and bool(NAME.fullmatch(name))
